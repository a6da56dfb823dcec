using System.Diagnostics;
using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using Gradus.Figures;
using Gradus.Tests.House;

namespace Gradus.Tests.Figures;

/// <summary>2,000 made poses: each that is taken is drawn as it was said, and whatever is drawn otherwise is seen.</summary>
[Trait("Slow", "yes")]
public sealed partial class FiguresProof(ITestOutputHelper output)
{
    /// <summary>What one drawing, the start or the end, may weigh.</summary>
    private const int MostBytes = 4096;

    [GeneratedRegex(@"-?[0-9]+(?:\.[0-9]+)?", RegexOptions.CultureInvariant)]
    private static partial Regex Number();

    [Fact]
    public void What_is_taken_is_drawn_as_it_was_said()
    {
        var (worst, spread, faults) = (
            new Worst(),
            new SortedDictionary<string, int>(StringComparer.Ordinal),
            new List<string>()
        );
        var (taken, tried, largest, watch) = (0, 0, 0, Stopwatch.StartNew());
        for (; taken < LongProof.Cases(2000); tried++)
        {
            var made = MadePose.Of((ulong)tried);
            if (Movement.Read(made.Written, null).Movement is not { } movement)
                continue;
            taken++;
            foreach (var kind in made.Kinds.Distinct())
                spread[kind] = spread.GetValueOrDefault(kind) + 1;
            var said = $"[{string.Join(", ", made.Written.Start)}] [{string.Join(", ", made.Written.End)}]";
            faults.AddRange(
                Drawn(movement).SelectMany(d => DrawnBody.Faults(d.Posed, d.Shapes, worst)).Select(f => $"{said}: {f}")
            );
            faults.AddRange(Mirrored(movement).Select(f => $"{said}: {f}"));
            if (FigureFile.Element(movement.Figure, "x", "R") != FigureFile.Element(Again(movement), "x", "R"))
                faults.Add($"{said}: other bytes the second time");
            foreach (var (_, shapes) in Drawn(movement))
            {
                largest = Math.Max(largest, Encoding.UTF8.GetByteCount(shapes));
                if (Encoding.UTF8.GetByteCount(shapes) > MostBytes)
                    faults.Add($"{said}: {Encoding.UTF8.GetByteCount(shapes)} bytes");
            }
        }

        output.WriteLine($"{taken} taken of {tried}; {worst}; largest drawing {largest} bytes; {watch.Elapsed.TotalSeconds:0} s");
        output.WriteLine(string.Join(", ", spread.Select(s => $"{s.Key} {s.Value}")));
        Assert.True(faults.Count == 0, $"{faults.Count} faults:\n{string.Join('\n', faults.Take(40))}");
        Assert.All(PoseBase.All, b => Assert.True(spread.ContainsKey(b.Name), $"no pose begins with '{b.Name}'"));
    }

    /// <summary>Each kind of fault is put into drawings that have none, and each is seen.</summary>
    [Theory]
    [InlineData("sides swapped")]
    [InlineData("angle ")]
    [InlineData("below the floor")]
    [InlineData("length of ")]
    [InlineData("contact of ")]
    public void A_planted_fault_is_seen(string kind)
    {
        var planted = 0;
        for (var seed = 0UL; planted < LongProof.Cases(200); seed++)
        {
            var read = Movement.Read(MadePose.Of(seed).Written, null);
            if (read.Movement is not { Start: var posed } movement || Planted(kind, posed, movement) is not { } shapes)
                continue;
            planted++;
            Assert.Contains(DrawnBody.Faults(posed, shapes), f => f.Contains(kind, StringComparison.Ordinal));
        }
    }

    /// <returns>Null where such a fault cannot be put there.</returns>
    private static string? Planted(string kind, Posed posed, Movement movement)
    {
        var shapes = FigureSvg.Shapes(movement.Figure.Start);
        switch (kind)
        {
            case "sides swapped":
                return Swapped(shapes);
            case "angle ":
                var said = posed.Pose.Angles.FirstOrDefault(a =>
                    a.Of.Angle
                        is JointAngle.KneeFlexion
                            or JointAngle.HipFlexion
                            or JointAngle.ElbowFlexion
                            or JointAngle.TrunkFlexion
                    && a.Degrees is > 8 and < 110
                );
                if (said is null)
                    return null;
                var angles = posed.Angles.Copy();
                angles[said.Of] += 5;
                return Redrawn(posed, posed.Root, angles);
            case "below the floor":
                return posed.Pose.Contacts.Any(c => c is Contact.On { Surface: Surface.Floor }) ? Lifted(posed, -0.05) : null;
            case "contact of ":
                return posed.Pose.Contacts.Any(c =>
                    c is Contact.On { Surface: not (Surface.Wall or Surface.SideWall or Surface.BackWall) }
                )
                    ? Lifted(posed, 0.012)
                    : null;
            default:
                return Regex.Replace(
                    shapes,
                    "(data-part=\"working-shank\" data-near=\")([^\"]*)(\" stroke-width=\"[^\"]*\" d=\"M)([^\"]*)",
                    m =>
                    {
                        var (near, places) = (Numbers(m.Groups[2].Value), Numbers(m.Groups[4].Value));
                        return $"{m.Groups[1].Value}{Numbers([near[0], Longer(near[0], near[1])])}{m.Groups[3].Value}"
                            + Numbers([places[0], places[1], Longer(places[0], places[2]), Longer(places[1], places[3])]);
                    }
                );
        }
    }

    /// <summary>A twentieth further on.</summary>
    private static double Longer(double from, double to) => to + ((to - from) / 20);

    private static string Numbers(double[] numbers) =>
        string.Join(' ', numbers.Select(n => n.ToString("0.0", CultureInfo.InvariantCulture)));

    private static string Swapped(string shapes) =>
        shapes
            .Replace("data-part=\"working-", "data-part=\"kept-", StringComparison.Ordinal)
            .Replace("data-part=\"other-", "data-part=\"working-", StringComparison.Ordinal)
            .Replace("data-part=\"kept-", "data-part=\"other-", StringComparison.Ordinal);

    private static string Lifted(Posed posed, double by) =>
        Redrawn(posed, posed.Root with { Hips = posed.Root.Hips + new Spot(0, 0, by) }, posed.Angles);

    private static string Redrawn(Posed posed, Standing root, JointAngles angles) =>
        FigureSvg.Shapes(FigureDrawer.Draw(posed with { Body = new(root.Hips, root.Frame, angles) }, null).Start);

    private static IEnumerable<(Posed Posed, string Shapes)> Drawn(Movement movement)
    {
        yield return (movement.Start, FigureSvg.Shapes(movement.Figure.Start));
        if (movement is { End: { } end, Figure.End: { } drawn })
            yield return (end, FigureSvg.Shapes(drawn));
    }

    /// <summary>Worked out and drawn once more, past whatever is kept.</summary>
    private static Figure Again(Movement movement)
    {
        var start = PoseSolver.Solve(movement.Start.Pose);
        return FigureDrawer.Draw(start, movement.End is { } end ? PoseSolver.Solve(end.Pose, start) : null);
    }

    /// <summary>The left is the mirror image of the right, and its mirror image is the right again: place by place, the letter
    /// too.</summary>
    private static IEnumerable<string> Mirrored(Movement movement)
    {
        var (bounds, figure) = (movement.Figure.Bounds, movement.Figure);
        var (right, left) = (Places(FigureFile.Element(figure, "x", "R")), Places(FigureFile.Element(figure, "x", "L")));
        if (right.Length != left.Length)
            yield return "the mirror image has other places";
        foreach (var (at, mirrored) in right.Zip(left))
        {
            // Start and end stand beside each other, 14 apart, each mirrored in itself.
            var own = at.IsEnd ? bounds.Width + 14 : 0;
            if (Math.Abs(own + bounds.Width - (mirrored.X - own) - at.X) > 0.11 || Math.Abs(mirrored.Y - at.Y) > 1e-9)
                yield return $"the mirror image of {at} is {mirrored}";
        }
    }

    /// <summary>All places of paths, and the letters, where they stand on the paper.</summary>
    private static (double X, double Y, bool IsEnd)[] Places(string svg)
    {
        var places = new List<(double, double, bool)>();
        foreach (var (which, figure) in svg.Split("<g class=\"figure\">").Skip(1).Index())
        {
            var shift = Regex.Match(figure, "transform=\"([a-z]+)\\(([^)]*)\\)");
            var numbers = Numbers(shift.Groups[2].Value);
            var (turn, x, y) =
                shift.Groups[1].Value == "matrix" ? (numbers[0], numbers[4], numbers[5]) : (1, numbers[0], numbers[1]);
            foreach (Match path in Regex.Matches(figure, " d=\"([^\"]*)\""))
            foreach (var at in Numbers(path.Groups[1].Value).Chunk(2))
                places.Add(((at[0] * turn) + x, at[1] + y, which == 1));
            var letter = Regex.Match(figure, "<text x=\"([^\"]*)\" y=\"([^\"]*)\"");
            places.Add((Numbers(letter.Groups[1].Value)[0], Numbers(letter.Groups[2].Value)[0], which == 1));
        }

        return [.. places];
    }

    private static double[] Numbers(string text) =>
        [.. Number().Matches(text).Select(m => double.Parse(m.Value, CultureInfo.InvariantCulture))];
}
