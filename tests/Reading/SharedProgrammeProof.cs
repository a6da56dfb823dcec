using System.Globalization;
using System.Text;
using Gradus.Domain;
using Gradus.Reading;
using Gradus.Tests.House;

namespace Gradus.Tests.Reading;

/// <summary>A shared programme with differences against the same written in full: the same training, by its hash, and the same
/// sessions. What is written in full is made here from the items themselves, line by line, and knows nothing of how a
/// difference is applied.</summary>
[Trait("Slow", "yes")]
public sealed class SharedProgrammeProof(ITestOutputHelper output)
{
    private const int Weeks = 6;

    private static readonly string[] Sides = ["rear leg", "front leg", "each side"];

    private static readonly string[] Kinds = ["leave-out", "instead", "change", "add"];

    private static readonly (string Exercise, string[] Doses)[] Exercises =
    [
        ("wall-calf-stretch", ["2 x hold 30 s", "2 x hold 45 s", "1 x hold 30 s"]),
        ("calf-press", ["2 x press 10 s at 50%", "3 x press 10 s at 50%", "1 x press 10 s at 40%"]),
    ];

    /// <summary>A short session that is some uses of the first, with a share of their sets.</summary>
    /// <param name="Items">As the client does them, written out.</param>
    private sealed record Taken(string[] Uses, int Share, List<WrittenUse> Items)
    {
        public string Written =>
            $"alternate:\n  - {{ name: Less, of: Session 1, kind: short, uses: [{string.Join(", ", Uses)}], share: {Share} }}\n";

        public string InFull =>
            $"alternate:\n  - name: Less\n    instead-of: Session 1\n    kind: short\n    do:\n"
            + string.Concat(Items.Select(i => i.OfSets(Share).Written(named: false)));
    }

    private sealed record Case(
        List<(string Session, List<WrittenUse> Items)> Shared,
        List<(string Session, List<WrittenUse> Items)> Full,
        List<string> Differences,
        List<string> Kinds,
        Taken? Less
    );

    [Fact]
    public void A_shared_programme_with_differences_is_the_same_written_in_full()
    {
        var chance = new Chance(20261130);
        var (kinds, cases, equal, told) = (
            new SortedDictionary<string, int>(StringComparer.Ordinal),
            LongProof.Cases(2000),
            0,
            0
        );
        for (var n = 0; n < cases; n++)
        {
            var made = Made(chance);
            var (shared, full) = (Read(made, inFull: false), Read(made, inFull: true));
            Assert.True(
                shared.Hash == full.Hash,
                $"{n}: {string.Join("\n", made.Differences)}\n{shared.Sessions}\n{full.Sessions}"
            );
            Assert.Equal(full.Sessions, shared.Sessions);
            equal++;
            foreach (var kind in made.Kinds)
                kinds[kind] = kinds.GetValueOrDefault(kind) + 1;
            // The same without its differences is another training, so that the hash can tell.
            if (made.Differences.Count > 0 && n % 10 == 0)
                told += Read(made with { Differences = [] }, inFull: false).Hash == full.Hash ? 0 : 1;
        }

        foreach (var (kind, count) in kinds)
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{count, 6}  {kind}"));
        output.WriteLine($"{equal} of {cases} pairs are equal; of every tenth, {told} are others without their differences");
        Assert.True(kinds.Count >= 12, $"{kinds.Count} kinds");
        Assert.True(told > cases / 20);
    }

    private static Case Made(Chance chance)
    {
        var shared = Enumerable.Range(1, 1 + chance.Below(2)).Select(n => ($"Session {n}", Items(chance))).ToList();
        var full = shared.Select(s => (s.Item1, s.Item2.ToList())).ToList();
        var (differences, kinds, about) = (new List<string>(), new List<string>(), new HashSet<string>(StringComparer.Ordinal));
        var less = chance.Below(3) == 0 ? Less(chance, shared[0].Item2) : null;
        if (less is not null)
            kinds.Add("a session taken from another");
        for (var count = chance.Below(3); count > 0; count--)
        {
            var names = shared.SelectMany(s => s.Item2).Select(i => i.Name).Distinct().Where(n => !about.Contains(n)).ToArray();
            if (names.Length == 0)
                break;
            var (name, kind) = (chance.Of(names), chance.Of(Kinds));
            var within =
                chance.Below(3) == 0
                    ? chance.Of([.. shared.Where(s => s.Item2.Any(i => i.Name == name)).Select(s => s.Item1)])
                    : null;
            int? from = kind != "add" && chance.Below(3) == 0 ? 2 + chance.Below(Weeks - 1) : null;
            var other = One(chance, $"other-{count}") with { From = kind is "leave-out" or "change" ? null : from, Until = null };
            var before = chance.Below(2) == 0;
            // What would hold in no week is refused.
            if (
                shared
                    .Where(s => within is null || s.Item1 == within)
                    .SelectMany(s => s.Item2)
                    .All(i => i.Name != name || i.Until < from)
            )
                continue;
            var next = full.Select(s => (s.Item1, s.Item2.ToList())).ToList();
            foreach (var (session, items) in next)
                if (within is null || session == within)
                    Apply(kind, items, name, from, other, before);
            var taken = less is null ? null : less with { Items = [.. less.Items] };
            if (taken is not null && within is null or "Session 1")
                Apply(kind, taken.Items, name, from, other, before);
            // Something is left of every session.
            if (next.Any(s => s.Item2.Count == 0) || taken is { Items.Count: 0 })
                continue;
            (full, less) = (next, taken);
            about.Add(name);
            kinds.Add(kind + (within is null ? "" : ", in a session") + (from is null ? "" : ", from a week"));
            differences.Add(Written(kind, name, within, from, other, before));
        }

        return new(shared, full, differences, kinds, less);
    }

    private static Taken Less(Chance chance, List<WrittenUse> items)
    {
        var uses = items.Select(i => i.Name).Where(_ => chance.Below(3) > 0).Distinct().ToArray();
        return new(uses, chance.Of([30, 50, 60, 100]), [.. items.Where(i => uses.Length == 0 || uses.Contains(i.Name))]);
    }

    /// <summary>As a coach would write it out: from the last line up, so that nothing that is put in is met again.</summary>
    private static void Apply(string kind, List<WrittenUse> items, string name, int? from, WrittenUse other, bool before)
    {
        for (var at = items.Count - 1; at >= 0; at--)
        {
            var item = items[at];
            if (item.Name != name)
                continue;
            if (kind == "add")
            {
                items.Insert(before ? at : at + 1, other);
                continue;
            }

            if (from > item.Until)
                continue;
            var later = from is { } week && week > (item.From ?? 1);
            items.RemoveAt(at);
            if (kind != "leave-out")
                items.Insert(
                    at,
                    kind == "instead"
                        ? other with
                        {
                            From = later ? from : item.From,
                            Until = item.Until,
                            Side = other.Side ?? item.Side,
                        }
                        : item with
                        {
                            From = later ? from : item.From,
                            Side = other.Side ?? item.Side,
                            Weeks = other.Weeks,
                        }
                );
            if (later)
                items.Insert(at, item with { Until = from - 1 });
        }
    }

    private static string Written(string kind, string name, string? within, int? from, WrittenUse other, bool before)
    {
        var text = new StringBuilder();
        text.Append(
            kind switch
            {
                "leave-out" => $"  - leave-out: {name}\n",
                "instead" => $"  - instead: {name}\n    use: {other.Exercise}\n{other.Rest("    ")}",
                "change" => $"  - change: {name}\n{other.Rest("    ")}",
                _ => $"  - add: {other.Exercise}\n    {(before ? "before" : "after")}: {name}\n{other.Rest("    ")}",
            }
        );
        if (within is not null)
            text.Append(CultureInfo.InvariantCulture, $"    in: {within}\n");
        if (from is not null && kind is "leave-out" or "change" && from is not null)
            text.Append(CultureInfo.InvariantCulture, $"    from-week: {from}\n");
        return text.Append("    because: so it was agreed\n").ToString();
    }

    private static List<WrittenUse> Items(Chance chance) =>
        [.. Enumerable.Range(0, 1 + chance.Below(4)).Select(n => One(chance, chance.Below(2) == 0 ? $"use-{n}" : null))];

    private static WrittenUse One(Chance chance, string? name)
    {
        var (exercise, doses) = chance.Of(Exercises);
        var weeks = new SortedDictionary<int, string> { [1] = chance.Of(doses) };
        if (chance.Below(2) == 0)
            weeks[2 + chance.Below(Weeks - 1)] = chance.Of(doses);
        int? from = chance.Below(4) == 0 ? 1 + chance.Below(3) : null;
        int? until = chance.Below(4) == 0 ? 4 + chance.Below(3) : null;
        return new(exercise, name, chance.Below(3) == 0 ? null : chance.Of(Sides), weeks, from, until);
    }

    private static (string Hash, string Sessions) Read(Case made, bool inFull)
    {
        var head = string.Create(CultureInfo.InvariantCulture, $"title: A longer lunge\nweeks: {Weeks}\n");
        string Sessions(List<(string Session, List<WrittenUse> Items)> sessions, bool named) =>
            "sessions:\n"
            + string.Concat(
                sessions.Select(s =>
                    $"  - name: {s.Session}\n    days: [Mon, Thu]\n    do:\n"
                    + $"{string.Concat(s.Items.Select(i => i.Written(named)))}"
                )
            );
        var own = inFull
            ? $"---\n{head}start: 2026-12-07\n{Sessions(made.Full, named: false)}{made.Less?.InFull}---\nHello."
            : $"---\nfrom: lunge\nstart: 2026-12-07\n"
                + $"{(made.Differences.Count == 0 ? "" : "differences:\n" + string.Concat(made.Differences))}---\n";
        var files = Auditing
            .LittlePractice.Files.Where(f => f.Key != "clients/tess/programme.md")
            .Append(KeyValuePair.Create("clients/tess/programme.md", own))
            .Append(
                KeyValuePair.Create(
                    "programmes/lunge.md",
                    $"---\n{head}{Sessions(made.Shared, named: true)}{made.Less?.Written}---\nHello."
                )
            );
        var findings = new Findings();
        var practice = PracticeReader
            .Read(SourceFolder.Of(files.Select(f => KeyValuePair.Create(f.Key, Encoding.UTF8.GetBytes(f.Value)))), findings)
            .Practice;
        Assert.Empty(findings.Select(f => $"{f.At} {f.Message}\n{own}"));
        var tess = practice?.Find(new ClientId("tess"));
        Assert.NotNull(practice);
        Assert.NotNull(tess);
        return (
            Planned.Trainings(practice)[tess.Id].Hash(),
            string.Join(
                '\n',
                tess.Programme.Sessions.SelectMany(s =>
                    s.Do.Select(u =>
                        $"{s.Name}: {u.Exercise.Value} {u.Side?.Value.Written} {u.FromWeek}-{u.UntilWeek} "
                        + $"{string.Join(", ", u.ByWeek.Select(l => $"{l.Week} {l.Dose.Line}"))}"
                    )
                )
            )
        );
    }
}
