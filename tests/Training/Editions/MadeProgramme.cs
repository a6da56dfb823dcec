using System.Globalization;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Tests.Trainings;

/// <summary>A programme that chance has made, as text: everything of it that an edition records can be written anew.</summary>
internal sealed record MadeProgramme(
    DateOnly Start,
    int Weeks,
    Series<WrittenSession> Sessions,
    Series<WrittenExercise> Library,
    Series<int> SignTexts,
    Series<string> Clearances,
    Series<string> Restrictions,
    int Letter
)
{
    public const string Member = "ansel";

    /// <summary>As the programme's file has it; empty for none.</summary>
    public string Pause { get; init; } = "";

    public static readonly Series<string> Days = ["[Mon]", "[Tue, Fri]", "every 2 days", "3 a week, a day between"];

    private static readonly Series<string> Sides = ["left", "right", "each side", "both sides"];

    public static MadeProgramme Of(Chance chance)
    {
        var weeks = 3 + chance.Below(8);
        return new(
            new DateOnly(2027, 1, 4).AddDays(chance.Below(60)),
            weeks,
            Enumerable.Range(0, 1 + chance.Below(3)).Select(_ => Session(chance, weeks)).ToSeries(),
            Enumerable.Range(0, 10).Select(e => new WrittenExercise(0, Signs(chance).Append(8 + e).ToSeries())).ToSeries(),
            Enumerable.Repeat(0, 18).ToSeries(),
            [],
            [],
            0
        );
    }

    public static WrittenUse Use(Chance chance, int exercise, int weeks)
    {
        var second = 2 + chance.Below(weeks - 1);
        WrittenLine[] lines = [new(1, Dose(chance)), new(second, Dose(chance))];
        return new(exercise, chance.Of(Sides), lines.Take(1 + chance.Below(2)).ToSeries());
    }

    public static string Dose(Chance chance) => $"{1 + chance.Below(4)} x hold {5 * (1 + chance.Below(12))} s";

    public static string OtherSide(Chance chance, string side) => chance.Of([.. Sides.Where(s => s != side)]);

    public EditionContent Content() => Content(Read());

    public static EditionContent Content(Practice practice)
    {
        var client = practice.Clients.Single();
        return EditionContents.Of(Training.Of(practice, client), Texts.Of(practice, client));
    }

    public Practice Read() => Files().Read();

    public LittlePractice Files()
    {
        var files = Library
            .Index()
            .Aggregate(Club.Empty, (p, e) =>
                p.Exercise(
                    $"e{e.Index}",
                    "1-9 x hold 5-90 s",
                    signs: string.Join(", ", e.Item.Signs.Select(s => $"s{s}")),
                    body: $"## Do\nGo on, {e.Item.Text} times."
                )
            );
        foreach (var (index, text) in SignTexts.Index())
            files = files.With($"cautions/s{index}.md", $"---\ntitle: Sign {index}\nkind: stop\n---\nStop {text} times.\n");
        files = files.Member(Member, [], clearances: $"[{string.Join(", ", Clearances)}]");
        var client = files[$"clients/{Member}/client.yaml"].TrimEnd('\n');
        return files
            .With($"clients/{Member}/client.yaml", $"{client}\nrestrictions: [{string.Join(", ", Restrictions)}]\n")
            .With($"clients/{Member}/programme.md", ProgrammeText());
    }

    private string ProgrammeText() =>
        $"---\ntitle: Footwork\nstart: {Start.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)}\nweeks: {Weeks}\n"
        + $"{Pause}sessions:\n"
        + string.Concat(
            Sessions.Select(
                (s, i) => $"  - name: Session {i + 1}\n    days: {s.Days}\n    do:\n{string.Concat(s.Uses.Select(UseText))}"
            )
        )
        + $"---\nTrain {Letter} times.\n";

    private static string UseText(WrittenUse use) =>
        $"      - use: e{use.Exercise}\n        side: {use.Side}\n        by-week:\n"
        + string.Concat(use.Lines.Select(l => $"          {l.Week}: {l.Dose}\n"));

    private static WrittenSession Session(Chance chance, int weeks) =>
        new(
            chance.Of(Days),
            Enumerable
                .Range(0, 10)
                .Where(_ => chance.Below(2) == 0)
                .Append(chance.Below(5))
                .Append(5 + chance.Below(5))
                .Distinct()
                .Select(e => Use(chance, e, weeks))
                .ToSeries()
        );

    private static Series<int> Signs(Chance chance) =>
        Enumerable.Range(0, 8).Where(_ => chance.Below(4) == 0).Append(chance.Below(8)).Distinct().ToSeries();
}

internal sealed record WrittenSession(string Days, Series<WrittenUse> Uses);

internal sealed record WrittenUse(int Exercise, string Side, Series<WrittenLine> Lines);

/// <param name="Week">The first that has it.</param>
internal sealed record WrittenLine(int Week, string Dose);

/// <param name="Text">What its instruction says, as a number.</param>
internal sealed record WrittenExercise(int Text, Series<int> Signs);
