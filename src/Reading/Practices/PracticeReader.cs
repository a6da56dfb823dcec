using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>text → Practice. Reading never stops at a mistake: it says it, leaves out what could not be bound, and goes
/// on.</summary>
public static class PracticeReader
{
    /// <summary>The practice in a folder, or null (with findings) where practice.md is missing or cannot be bound.</summary>
    /// <param name="kept">What was read of it before, by whoever reads it again and again.</param>
    public static PracticeReading Read(SourceFolder folder, Findings findings, KeptReadings? kept = null)
    {
        kept ??= new();
        while (true)
        {
            var run = kept.Begin(folder);
            var reading = Read(run);
            if (!kept.Keep(run))
                continue;
            findings.AddRange(run.Findings);
            return reading;
        }
    }

    private static PracticeReading Read(ReadingRun run)
    {
        var (folder, findings, media) = (run.Folder, run.Findings, run.Media);
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
        var listed = string.Join('\n', exerciseIds);
        var words = run.Part("words", said => WordsReader.Read(folder, said), run.VersionsBelow("words/"));
        var card = run.Part(
            "practice.md",
            said =>
                One(folder, "practice.md", said) is { } practice
                    ? PracticeCardReader.Read(practice, exerciseIds.ToHashSet(StringComparer.Ordinal), media)
                    : null,
            run.Version("practice.md"),
            listed
        );
        var settings = (card?.Settings ?? PracticeSettings.Default).Dose;
        var language = card?.Language ?? WordsReader.First;
        var conditions = run.Part(
            Condition.File,
            said => ConditionReader.Read(One(folder, Condition.File, said), words.In(language, WordsReader.First), said),
            run.Version(Condition.File),
            words,
            language
        );
        var sportIds = Ids(folder, "sports", ".yaml", findings);
        var cautionIds = Ids(folder, "cautions", ".md", findings);
        var measures = run.Part(
            "motions.yaml",
            said => MotionReader.Read(Optional(folder, "motions.yaml", said), said),
            run.Version("motions.yaml")
        );
        var countries = card?.Emergency.Select(e => e.Country).ToSeries();
        var known = new KnownIds(
            exerciseIds.ToHashSet(StringComparer.Ordinal),
            cautionIds.ToHashSet(StringComparer.Ordinal),
            conditions,
            sportIds.ToHashSet(StringComparer.Ordinal),
            measures,
            media,
            countries
        );
        // The same object as long as the same is known: what was read under it need not be read again.
        var under = run.Part(
            "known",
            _ => new object(),
            listed,
            string.Join('\n', cautionIds),
            conditions,
            string.Join('\n', sportIds),
            measures,
            countries,
            settings
        );

        var sports = Each(sportIds, "sports/{0}.yaml", (sheet, id) => SportReader.Read(sheet, new(id), known));
        var cautions = Each(cautionIds, "cautions/{0}.md", (sheet, id) => CautionReader.Read(sheet, new(id), known));
        var exercises = Each(exerciseIds, "exercises/{0}.md", (sheet, id) => ExerciseReader.Read(sheet, new(id), known, settings))
            .Select(e => TraitsReader.Concerned(e, conditions.Bound))
            .ToSeries();
        var translations = Each<Translation>(Translated("cautions"), "cautions/{0}.md", (sheet, name) =>
                TranslationReader.OfCaution(sheet, name, known)
            )
            .Concat(
                Each<Translation>(Translated("exercises"), "exercises/{0}.md", (sheet, name) =>
                    TranslationReader.OfExercise(sheet, name, known)
                )
            )
            .ToSeries();
        var programmeIds = Ids(folder, "programmes", ".md", findings);
        var programmes = Each(programmeIds, "programmes/{0}.md", (sheet, id) =>
            ProgrammeReader.ReadShared(sheet, id, known, settings)
        );
        var shared = programmeIds.ToDictionary(
            id => id,
            id => programmes.FirstOrDefault(p => p.Id == id),
            StringComparer.Ordinal
        );
        var clientIds = ClientIds(folder, findings);
        var clients = clientIds
            .Select(id =>
                run.Part(
                    $"clients/{id}",
                    said => ClientIn(folder, new(id), known, settings, words, shared, said),
                    run.VersionsBelow($"clients/{id}/").Concat(run.VersionsBelow("programmes/")).Prepend(words).Prepend(under)
                )
            )
            .OfType<Client>()
            .ToSeries();
        var groups = Ids(folder, "groups", ".yaml", findings)
            .Select(id =>
                run.Part(
                    Group.PathOf(id),
                    said =>
                        SourceFile.Of(folder, Group.PathOf(id), said) is { } sheet
                            ? GroupReader.Read(sheet, id, clients, clientIds, shared)
                            : null,
                    run.Version(Group.PathOf(id)),
                    clients,
                    programmes,
                    string.Join('\n', clientIds)
                )
            )
            .OfType<Group>()
            .ToSeries();
        var glossary = run.Part(
            "glossary.yaml",
            said => Optional(folder, "glossary.yaml", said) is { } sheet ? GlossaryReader.Read(sheet) : [],
            run.Version("glossary.yaml")
        );
        var accepted = run.Part(
            "accepted.yaml",
            said => Optional(folder, "accepted.yaml", said) is { } sheet ? AcceptedReader.Read(sheet) : [],
            run.Version("accepted.yaml")
        );
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
                )
                {
                    Programmes = programmes,
                    Groups = groups,
                },
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
                var thing = run.Part(
                    file,
                    said => SourceFile.Of(folder, file, said) is { } sheet ? read(sheet, id) : null,
                    run.Version(file),
                    under
                );
                if (thing is not null)
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
        IReadOnlyDictionary<string, SharedProgramme?> shared,
        Findings findings
    )
    {
        var programme = One(folder, $"clients/{id}/programme.md", findings) is { } letter
            ? ProgrammeReader.Read(letter, known, settings, shared)
            : null;
        if (One(folder, $"clients/{id}/client.yaml", findings) is not { } sheet)
            return null;
        var readings = Optional(folder, $"clients/{id}/readings.csv", findings) is { } measured
            ? ReadingsReader.Read(measured, known)
            : [];
        StrayAnswers.Find(folder, id, findings);
        var told = Optional(folder, $"clients/{id}/{AnswersFile.Name}", findings);
        var (editions, last) = EditionReader.Read(folder, id, findings);
        var link = Optional(folder, SiteLink.PathOf(id), findings) is { } kept ? LinkReader.Read(kept) : null;
        return ClientReader.Read(sheet, told, id, known, programme, readings, words) is { } client
            ? client with
            {
                Programme = FollowedReader.Addressed(client),
                Minutes = client.Programme.From?.Minutes ?? client.Minutes,
                Log = KeptLogReader.Read(folder, id, findings),
                Link = link,
                Editions = editions,
                LastEdition = last,
            }
            : null;
    }

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
