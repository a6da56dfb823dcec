using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>text → Practice. Reading never stops at a mistake: it says it, leaves out what could not be bound, and goes
/// on.</summary>
public static class PracticeReader
{
    /// <summary>The practice in a folder, or null (with findings) where practice.md is missing or cannot be bound.</summary>
    public static PracticeReading Read(SourceFolder folder, Findings findings)
    {
        foreach (var link in folder.Links)
        {
            findings.Add(
                new(
                    Faults.FileUnreadable,
                    Level.Error,
                    null,
                    Location.Whole(link),
                    "This is a link to another place, so it was not read.",
                    "Put the file itself here: a practice is whole in its own folder."
                )
            );
        }

        var exerciseIds = Ids(folder, "exercises", ".md", findings);
        var media = new MediaFiles(folder, findings);
        var words = WordsReader.Read(folder, findings);
        var card = One(folder, "practice.md", findings) is { } practice
            ? PracticeCardReader.Read(practice, exerciseIds.ToHashSet(StringComparer.Ordinal), media)
            : null;
        var settings = (card?.Settings ?? PracticeSettings.Default).Dose;
        var conditions = ConditionReader.Read(
            One(folder, "conditions.yaml", findings),
            words.In(card?.Language ?? WordsReader.First, WordsReader.First),
            findings
        );
        var sportIds = Ids(folder, "sports", ".yaml", findings);
        var cautionIds = Ids(folder, "cautions", ".md", findings);
        var known = new KnownIds(
            exerciseIds.ToHashSet(StringComparer.Ordinal),
            cautionIds.ToHashSet(StringComparer.Ordinal),
            conditions,
            sportIds.ToHashSet(StringComparer.Ordinal),
            MotionReader.Read(Optional(folder, "motions.yaml", findings), findings),
            media,
            card?.Emergency.Select(e => e.Country).ToSeries()
        );

        var sports = Each(sportIds, "sports/{0}.yaml", (sheet, id) => SportReader.Read(sheet, new(id), known));
        var cautions = Each(cautionIds, "cautions/{0}.md", (sheet, id) => CautionReader.Read(sheet, new(id), known));
        var exercises = Each(exerciseIds, "exercises/{0}.md", (sheet, id) =>
            ExerciseReader.Read(sheet, new(id), known, settings)
        );
        var translations = Each(Translated("cautions"), "cautions/{0}.md", (sheet, name) =>
                TranslationReader.OfCaution(sheet, name, known)
            )
            .Concat(
                Each(Translated("exercises"), "exercises/{0}.md", (sheet, name) =>
                    TranslationReader.OfExercise(sheet, name, known)
                )
            )
            .ToSeries();
        var clientIds = ClientIds(folder, findings);
        var clients = clientIds
            .Select(id => ClientIn(folder, new(id), known, settings, words, findings))
            .OfType<Client>()
            .ToSeries();
        var glossary = Optional(folder, "glossary.yaml", findings) is { } explained ? GlossaryReader.Read(explained) : [];
        var accepted = Optional(folder, "accepted.yaml", findings) is { } listed ? AcceptedReader.Read(listed) : [];
        var all = clientIds.Select(id => new ClientId(id)).ToSeries();
        return new(
            card is null
                ? null
                : new(
                    card,
                    conditions.Bound,
                    sports,
                    cautions,
                    exercises,
                    clients,
                    known.Measures.Values.OrderBy(m => m.Motion.Name, StringComparer.Ordinal).ToSeries(),
                    media.ScaledPictures(),
                    media.Clips,
                    glossary,
                    accepted,
                    translations,
                    words
                ),
            all
        );

        IEnumerable<string> Translated(string part) => folder.Names(part, ".md").Where(Translation.IsName);

        Series<T> Each<T>(IEnumerable<string> ids, string path, Func<SourceFile, string, T?> read)
            where T : class
        {
            var things = new List<T>();
            foreach (var id in ids)
            {
                var file = path.Replace("{0}", id, StringComparison.Ordinal);
                if (SourceFile.Of(folder, file, findings) is { } sheet && read(sheet, id) is { } thing)
                    things.Add(thing);
            }

            return things.ToSeries();
        }
    }

    private static Client? ClientIn(
        SourceFolder folder,
        ClientId id,
        KnownIds known,
        DoseSettings settings,
        WordBook words,
        Findings findings
    )
    {
        var programme = One(folder, $"clients/{id}/programme.md", findings) is { } letter
            ? ProgrammeReader.Read(letter, known, settings)
            : null;
        if (One(folder, $"clients/{id}/client.yaml", findings) is not { } sheet)
            return null;
        var readings = Optional(folder, $"clients/{id}/readings.csv", findings) is { } measured
            ? ReadingsReader.Read(measured, known)
            : [];
        foreach (
            var stray in folder.Paths.Where(p =>
                p.StartsWith($"clients/{id}/", StringComparison.Ordinal) && IsStrayAnswer(p[$"clients/{id}/".Length..])
            )
        )
        {
            findings.Add(
                new(
                    Faults.FileNameWrong,
                    Level.Error,
                    id,
                    Location.Whole(stray),
                    "This looks like answers, and it is not read.",
                    $"Name the newest sheet {AnswersFile.Name}, and take the others away: an answer that nobody "
                        + "reads protects nobody."
                )
            );
        }

        var told = Optional(folder, $"clients/{id}/{AnswersFile.Name}", findings);
        var (editions, last) = EditionReader.Read(folder, id, findings);
        return ClientReader.Read(sheet, told, id, known, programme, readings, words) is { } client
            ? client with
            {
                Log = KeptLogReader.Read(folder, id, findings),
                Editions = editions,
                LastEdition = last,
            }
            : null;
    }

    private static bool IsStrayAnswer(string file) =>
        file != AnswersFile.Name && file.StartsWith("answers", StringComparison.OrdinalIgnoreCase);

    private static SourceFile? Optional(SourceFolder folder, string path, Findings findings) =>
        folder.Has(path) ? SourceFile.Of(folder, path, findings) : null;

    private static SourceFile? One(SourceFolder folder, string path, Findings findings)
    {
        if (folder.Has(path))
            return SourceFile.Of(folder, path, findings);
        findings.Add(
            new(
                Faults.FileMissing,
                Level.Error,
                null,
                Location.Whole(path),
                $"There is no {path}.",
                "Write this file. 'gradus begin FOLDER' writes a practice in which it stands, each key explained."
            )
        );
        return null;
    }

    private static List<string> Ids(SourceFolder folder, string part, string ending, Findings findings) =>
        Valid(folder.Names(part, ending).Where(name => !Translation.IsName(name)), id => $"{part}/{id}{ending}", findings);

    private static List<string> ClientIds(SourceFolder folder, Findings findings) =>
        Valid(folder.Folders("clients"), id => $"clients/{id}", findings);

    private static List<string> Valid(IEnumerable<string> names, Func<string, string> path, Findings findings)
    {
        var valid = new List<string>();
        foreach (var name in names)
        {
            if (Id.IsValid(name))
                valid.Add(name);
            else
            {
                findings.Add(
                    new(
                        Faults.FileNameWrong,
                        Level.Error,
                        null,
                        Location.Whole(path(name)),
                        $"{Quote.Of(name)} cannot be a name here, so this was not read.",
                        "Rename it: small letters, digits and hyphens, a letter first, at most 64 characters; no device "
                            + "name, as con or nul."
                    )
                );
            }
        }

        return valid;
    }
}

/// <summary>What reading brought home.</summary>
/// <param name="Practice">Null where practice.md could not be bound, which a finding says.</param>
/// <param name="Clients">Everybody who has a folder, whether or not it could be bound.</param>
public sealed record PracticeReading(Practice? Practice, Series<ClientId> Clients);
