using System.Collections.Concurrent;
using System.Globalization;
using System.Text.RegularExpressions;
using Gradus.Domain;

namespace Gradus.Figures;

/// <summary>Reads a pose, item by item. <c>pose.md</c> is its grammar; every item has at most one reading.</summary>
public sealed partial class PoseReader
{
    /// <summary>Far more than any pose needs.</summary>
    public const int MostItems = 40;

    private static readonly ConcurrentDictionary<(string Base, BodySide Front), Dictionary<SidedAngle, double>> KnownUsual =
        new();

    private readonly List<PoseFault> faults = [];
    private readonly Dictionary<SidedAngle, double> angles = [];
    private readonly Dictionary<SidedPart, Contact> contacts = [];
    private readonly HashSet<object> said = [];
    private readonly List<Thing> things = [];
    private readonly List<Push> pushes = [];
    private readonly PoseBase @base;
    private readonly BodySide front;

    /// <summary>Which leg stands ahead, as was said before the items; null where nobody said.</summary>
    private readonly BodySide? known;
    private double? lean;
    private SidedPart? moves;
    private bool movesBoth;
    private View? view;
    private int item;

    private PoseReader(PoseBase @base, BodySide front, BodySide? known) =>
        (this.@base, this.front, this.known) = (@base, front, known);

    /// <summary>The items of a pose that is written on one line, and where each begins, from 0.</summary>
    public static Series<(string Text, int Column)> Items(string line)
    {
        var items = new List<(string, int)>();
        var column = 0;
        foreach (var part in line.Split(','))
        {
            items.Add((part.Trim(), column + part.Length - part.TrimStart().Length));
            column += part.Length + 1;
        }

        return items.ToSeries();
    }

    /// <summary>Nothing that is in an item makes it throw.</summary>
    /// <param name="cue">Where the working leg is, as the exercise says it.</param>
    public static ReadPose Start(IReadOnlyList<string> items, SideCue? cue)
    {
        if (items.Count == 0 || items[0].Length == 0)
            return Refused(0, 1, "Here a pose is missing.", $"Begin with what the body rests on: {Names()}.");
        var named = PoseBase.All.FirstOrDefault(b => b.Name == Simple(items[0]));
        if (named is null)
        {
            return Refused(
                0,
                items[0].Length,
                $"'{Shown(items[0])}' is no base of a pose.",
                Nearest.Ask(items[0], PoseBase.All.Select(b => b.Name), $"Begin with one of: {Names()}.")
            );
        }

        BodySide? known =
            cue is null ? null
            : cue == SideCue.FootInFront ? BodySide.Working
            : BodySide.Other;
        // Whatever stands before it in the pose is of the same leg.
        var said = items.Select(i => LegAhead(Simple(i))).FirstOrDefault(leg => leg is not null);
        var reader = Usually(named, known ?? said ?? BodySide.Working, known);
        reader.angles.Clear();
        reader.ReadAll(items, 1);
        return reader.Done();
    }

    /// <summary>What a joint is near to where nobody says anything else, in degrees; where it is not named, 0.</summary>
    internal static IReadOnlyDictionary<SidedAngle, double> Usual(PoseBase @base, BodySide front) =>
        KnownUsual.GetOrAdd((@base.Name, front), _ => Usually(@base, front, front).angles);

    private static PoseReader Usually(PoseBase @base, BodySide front, BodySide? known)
    {
        var reader = new PoseReader(@base, front, known);
        foreach (var (usual, _) in Items(@base.Usual))
        {
            reader.Read(usual);
            reader.said.Clear();
        }

        return reader.faults.Count == 0
            ? reader
            : throw new InvalidOperationException($"The usual of '{@base.Name}': {reader.faults[0].Message}");
    }

    /// <summary>The end of a movement: whatever it does not say is as it was at the start.</summary>
    public static ReadPose End(IReadOnlyList<string> items, Pose start)
    {
        if (items.Count == 0 || items[0].Length == 0)
            return new(start, [new(0, 0, 1, "Here the end of the movement is missing.", "Say what is other than at the start.")]);
        var reader = new PoseReader(start.Base, start.Front, start.Front) { view = start.View, moves = start.Moves };
        foreach (var contact in start.Contacts)
            reader.contacts[contact.Part] = contact;
        reader.things.AddRange(start.Things);
        var skip = Simple(items[0]) == start.Base.Name ? 1 : 0;
        reader.ReadAll(items, skip);
        return reader.Done();
    }

    private static string Names() => string.Join(", ", PoseBase.All.Select(b => b.Name));

    private static ReadPose Refused(int column, int length, string message, string help) =>
        new(null, [new(0, column, Math.Max(1, length), message, help)]);

    private ReadPose Done() =>
        new(
            new(
                @base,
                angles.Select(a => new SaidAngle(a.Key, a.Value)).ToSeries(),
                contacts.Values.ToSeries(),
                view ?? @base.View
            )
            {
                Lean = lean,
                Things = things.ToSeries(),
                Moves = moves,
                MovesBoth = movesBoth,
                Pushes = pushes.ToSeries(),
                Front = front,
            },
            faults.ToSeries()
        );

    private void ReadAll(IReadOnlyList<string> items, int from)
    {
        for (item = from; item < items.Count; item++)
        {
            if (item >= MostItems)
            {
                Fault(items[item], $"This pose has {items.Count} items, and {MostItems} are the most.", "Say less of it.");
                return;
            }

            Read(items[item]);
        }
    }

    private void Read(string written)
    {
        var text = Simple(written);
        if (text.Length == 0)
            Fault(written, "Nothing stands after this comma.", "Take it out, or say something.");
        else if (PoseWords.Views.TryGetValue(text, out var seen))
            Once(written, typeof(View), () => view = seen);
        else if (@base.HasFront && LegAhead(text) is { } leg)
            Once(written, typeof(BodySide), () => Stand(written, leg));
        else if (Leaning().Match(text) is { Success: true } leaning)
            Once(written, typeof(double), () => lean = LeanOf(leaning));
        else if (Angled().Match(text) is { Success: true } angled)
            Angle(written, angled);
        else if (Held().Match(text) is { Success: true } held && IsThing(held))
            Hold(written, held);
        else if (Resting().Match(text) is { Success: true } resting)
            Rest(written, resting);
        else if (Moving().Match(text) is { Success: true } moving)
            Move(written, moving);
        else
            Unknown(written, text);
    }

    /// <summary>Which side's leg stands ahead; null where the item does not say.</summary>
    private static BodySide? LegAhead(string text) =>
        text switch
        {
            "front leg works" => BodySide.Working,
            "rear leg works" => BodySide.Other,
            _ => null,
        };

    private void Stand(string written, BodySide ahead)
    {
        if (known is { } before && before != ahead)
            Fault(
                written,
                $"'{Shown(written)}' is against what was said before.",
                "Take it out: the start of the pose, or the exercise's 'cue', says where the working leg is."
            );
    }

    /// <summary>Whatever is in, under or between something is meant as a thing; what is on something may be a part of the
    /// body.</summary>
    private static bool IsThing(Match found) =>
        found.Groups["how"].Value != "on" || PoseWords.Things.ContainsKey(PoseWords.One(found.Groups["thing"].Value));

    /// <summary>The words, small and with one blank between them.</summary>
    private static string Simple(string written) => Blanks().Replace(written.Trim().ToLowerInvariant(), " ");

    private static string Shown(string written) => written.Length <= 60 ? written : written[..60] + "…";

    private void Fault(string written, string message, string help) =>
        faults.Add(new(item, 0, Math.Max(1, written.Length), message, help));

    private void Once(string written, object key, Action take)
    {
        if (said.Add(key))
            take();
        else
            Fault(written, $"'{Shown(written)}' says again what was said already.", "Say it once.");
    }

    private static double LeanOf(Match found) =>
        found.Groups["how"].Value switch
        {
            "upright" => 0,
            "level" => 90,
            _ => Number(found) * (found.Groups["how"].Value.Contains("back", StringComparison.Ordinal) ? -1 : 1),
        };

    private static double Number(Match found) => double.Parse(found.Groups["n"].Value, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"\s+", RegexOptions.CultureInvariant)]
    private static partial Regex Blanks();

    [GeneratedRegex(@"^trunk (?<how>upright|level|leaning (ahead|back) (?<n>[0-9]{1,3}))$", RegexOptions.CultureInvariant)]
    private static partial Regex Leaning();

    [GeneratedRegex(
        @"^((?<which>working|other|both|front|rear|top|lower) )?(?<motion>[a-z]+( [a-z-]+){1,2}) (?<n>[0-9]{1,3})"
            + "( degrees)?( to the (?<to>working|other) side)?$",
        RegexOptions.CultureInvariant
    )]
    private static partial Regex Angled();

    [GeneratedRegex(
        @"^((?<which>working|other|both|front|rear|top|lower) )?(?<part>[a-z]+) ((?<n>[0-9]{1,3}) cm (?=off))?"
            + "(?<how>on|off) (the )?((?<whose>working|other|own|front|rear|top|lower) )?(?<under>[a-z]+( [a-z]+)?)$",
        RegexOptions.CultureInvariant
    )]
    private static partial Regex Resting();

    [GeneratedRegex(
        @"^(?<thing>[a-z]+) (?<how>in|on|under|between) (the )?"
            + "((?<which>working|other|both|front|rear|top|lower) )?(?<part>[a-z]+)$",
        RegexOptions.CultureInvariant
    )]
    private static partial Regex Held();

    [GeneratedRegex(
        @"^((?<which>working|other|both|front|rear|top|lower) )?(?<part>[a-z]+) (?<how>moves?|push(es)? (?<to>[a-z]+))$",
        RegexOptions.CultureInvariant
    )]
    private static partial Regex Moving();
}
