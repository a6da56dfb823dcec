using System.Globalization;
using Gradus.Domain;

namespace Gradus.Reading;

/// <summary><c>clients/ID/editions/N.yaml</c> → what was published. Whatever is wrong with a record is a warning, and the
/// record is passed over: it is for comparing, and no page may be held up by it.</summary>
internal static class EditionReader
{
    private const string Help =
        "Put back the file that Gradus wrote, or delete it: what is published next is compared with the one before.";

    private static readonly (string, CautionKind)[] Kinds =
    [
        .. Enum.GetValues<CautionKind>().Select(kind => (Kebab.Of(kind.ToString()), kind)),
    ];

    /// <summary>Those of a client, in the order of their numbers, and the highest number that any file has, read or not; 0
    /// where there is none.</summary>
    public static (Series<Edition> Editions, int Last) Read(SourceFolder folder, ClientId client, Findings findings)
    {
        var (editions, last) = (new List<Edition>(), 0);
        var beginning = $"clients/{client}/{Edition.Folder}/";
        foreach (var path in folder.Below(beginning))
        {
            if (NumberOf(path[beginning.Length..]) is not { } number)
            {
                findings.Add(
                    new(
                        Faults.FileNameWrong,
                        Level.Warning,
                        null,
                        Location.Whole(path),
                        "This is no record of an edition, and it is not read.",
                        "Take it out: Gradus alone writes in this folder."
                    )
                );
                continue;
            }

            last = Math.Max(last, number);
            var mistakes = new Findings();
            var read = SourceFile.Of(folder, path, mistakes) is { } sheet ? Read(sheet, number) : null;
            findings.AddRange(mistakes.Select(m => m with { Level = Level.Warning, Help = Help }));
            if (read is not null && mistakes.Count == 0)
                editions.Add(read);
        }

        return (editions.OrderBy(e => e.Number).ToSeries(), last);
    }

    /// <summary>The number of a file's name, null where it has none: "12" of "12.yaml".</summary>
    private static int? NumberOf(string name) =>
        name.EndsWith(Edition.Ending, StringComparison.Ordinal)
        && name[..^Edition.Ending.Length] is { Length: > 0 and < 7 } digits
        && digits.All(char.IsAsciiDigit)
        && digits[0] != '0'
            ? int.Parse(digits, CultureInfo.InvariantCulture)
            : null;

    private static Edition? Read(SourceFile sheet, int number)
    {
        if (Fields.Of(sheet, YamlReader.Read(sheet, sheet.Text, 1), "an edition") is not { } fields)
            return null;
        var said = fields.NeedWhole("edition", 1, 999_999);
        var date = fields.NeedDate("date");
        var training = fields.NeedText("training");
        var plan = fields.NeedText("plan");
        var content = ContentIn(fields);
        fields.Done();
        if (said is null || date is null || training is null || plan is null || content is null)
            return null;
        var edition = new Edition(number, date.Value, training, plan, content, sheet.Whole);
        if (said == number && EditionText.Print(edition) == sheet.Text && EditionText.HashOf(content) == plan)
            return edition;
        sheet.Warn(
            Faults.ValueWrong,
            sheet.Whole,
            "This is not what Gradus wrote: somebody has changed it, or it is not whole.",
            Help
        );
        return null;
    }

    private static EditionContent? ContentIn(Fields fields)
    {
        var key = fields.NeedText("programme");
        var title = fields.NeedText("title");
        var start = fields.NeedDate("start");
        var weeks = fields.NeedWhole("weeks", 1, 999);
        var pauses = fields.Groups("pauses", "a pause of an edition").Select(PauseIn).OfType<Pause>().ToSeries();
        var sessions = fields.Groups("sessions", "a session of an edition").Select(Session).ToArray();
        var exercises = fields.Groups("exercises", "an exercise of an edition").Select(Exercise).ToArray();
        var cautions = fields.Groups("cautions", "a caution of an edition").Select(Caution).ToArray();
        var clearances = fields.Texts("clearances").Select(c => c.Value).ToSeries();
        var restrictions = fields.Texts("restrictions").Select(c => c.Value).ToSeries();
        var others = fields.Groups("others", "a part of an edition").Select(Part).ToArray();
        return key is null || title is null || start is null || weeks is null
            ? null
            : new(
                key,
                title,
                start.Value,
                weeks.Value,
                sessions.OfType<EditionSession>().ToSeries(),
                exercises.OfType<EditionExercise>().ToSeries(),
                cautions.OfType<EditionCaution>().ToSeries(),
                clearances,
                restrictions,
                others.OfType<EditionPart>().ToSeries()
            )
            {
                Pauses = pauses,
            };
    }

    private static Pause? PauseIn(Fields fields)
    {
        var (from, until) = (fields.NeedDate("from"), fields.NeedDate("until"));
        fields.Done();
        return from is null || until is null ? null : new(from.Value, until.Value);
    }

    private static EditionSession? Session(Fields fields)
    {
        var name = fields.NeedText("name");
        var days = fields.NeedText("days");
        var instead = fields.Text("instead-of") ?? "";
        var times = fields.NeedTexts("times").Select(t => Whole(fields, t)).ToArray();
        var uses = fields.Groups("uses", "an exercise in an edition").Select(Use).OfType<EditionUse>().ToSeries();
        fields.Done();
        return name is null || days is null ? null : new(name, days, instead, times.Select(t => t ?? 0).ToSeries(), uses);
    }

    private static int? Whole(Fields fields, Mention<string> written)
    {
        if (int.TryParse(written.Value, NumberStyles.None, CultureInfo.InvariantCulture, out var number))
            return number;
        fields.SourceFile.Fault(Faults.ValueWrong, written.At, $"{Quote.Of(written.Value)} is no whole number.", Help);
        return null;
    }

    private static EditionUse? Use(Fields fields)
    {
        var exercise = IdIn(fields, "exercise");
        var rounds = fields.Text("rounds") ?? "";
        var kept = fields.Flag("kept");
        var moveOn = fields.Text("move-on") ?? "";
        var asks = fields.Groups("asks", "what weeks ask").Select(Dose).OfType<EditionDose>().ToSeries();
        fields.Done();
        return exercise is null ? null : new(new(exercise), rounds, kept, moveOn, asks);
    }

    private static EditionDose? Dose(Fields fields)
    {
        var weeks = fields.NeedMention("weeks");
        var side = fields.Text("side") ?? "";
        var dose = fields.NeedText("dose");
        fields.Done();
        if (weeks is null || dose is null)
            return null;
        var ends = weeks.Value.Split('-').Select(w => Whole(fields, new(w, weeks.At))).OfType<int>().ToArray();
        return ends is [var from, ..] ? new(from, ends[^1], side, dose) { Asked = Aside.Of(Settled(dose, side)) } : null;
    }

    /// <summary>Null where the line is not understood: a record of long ago may hold words that are gone.</summary>
    private static SettledDose? Settled(string dose, string side)
    {
        var line = side.Length == 0 ? dose : $"{dose}, {(side is "left" or "right" ? "on " : "")}{side}";
        return DoseLine.Read(line, DoseSettings.Default) is DoseLineResult.Understood({ IsSettled: true } read)
            ? read.Settled()
            : null;
    }

    private static EditionExercise? Exercise(Fields fields)
    {
        var (id, title, words) = (IdIn(fields, "id"), fields.NeedText("title"), fields.NeedText("words"));
        fields.Done();
        return id is null || title is null || words is null ? null : new(new(id), title, words);
    }

    private static EditionCaution? Caution(Fields fields)
    {
        var id = IdIn(fields, "id");
        var kind = fields.NeedChoice("kind", Kinds);
        var (title, words) = (fields.NeedText("title"), fields.NeedText("words"));
        var exercises = fields.NeedTexts("exercises").Select(e => Checked(fields, e)).OfType<string>();
        var carrying = exercises.Select(e => new ExerciseId(e)).ToSeries();
        fields.Done();
        return id is null || kind is null || title is null || words is null
            ? null
            : new(new(id), kind.Value, title, words, carrying);
    }

    private static EditionPart? Part(Fields fields)
    {
        var (name, words) = (fields.NeedText("part"), fields.NeedText("words"));
        fields.Done();
        return name is null || words is null ? null : new(name, words);
    }

    private static string? IdIn(Fields fields, string key) =>
        fields.NeedMention(key) is { } written ? Checked(fields, written) : null;

    private static string? Checked(Fields fields, Mention<string> written)
    {
        fields.SourceFile.Note(written, IdShape.Kind);
        if (Id.IsValid(written.Value))
            return written.Value;
        fields.SourceFile.Fault(Faults.ValueWrong, written.At, $"{Quote.Of(written.Value)} is no id.", Help);
        return null;
    }
}
