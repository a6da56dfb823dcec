using Gradus.Domain;

namespace Gradus.Figures;

/// <summary>Works out a pose: angles that are said are kept to the letter, hands and feet reach what they rest on, nothing goes
/// through the floor, and whatever nobody said stays near to what is usual.</summary>
public sealed class PoseSolver
{
    /// <summary>How near to a surface is on it, in heights of the body.</summary>
    public const double Near = 0.005;

    /// <summary>Likewise on a part of the body, which gives way.</summary>
    private const double NearBody = 0.03;

    /// <summary>How many degrees beyond its range a joint may be taken that nobody said: what a drawing does not show.</summary>
    private const double Supple = 5;

    private const double Contacting = 300,
        Leaning = 100,
        Sinking = 200,
        Straining = 20,
        Staying = 25,
        Balancing = 12;

    private const int RootNumbers = 9;

    private readonly Pose pose;
    private readonly Posed? start;
    private readonly JointAngles angles = new();
    private readonly SidedAngle[] free;
    private readonly double[] wished;
    private readonly double[] stiffness;
    private readonly (double Least, double Most)[] ranges;

    /// <summary>What the body stands on; null where something else holds it.</summary>
    private readonly SidedPart[]? standsOn;

    /// <summary>What no part of the body goes through.</summary>
    private readonly Surface[] solid;
    private readonly List<(SidedPart Part, int Index, Spot At, bool[] Along)> stay = [];

    private PoseSolver(Pose pose, Posed? start)
    {
        (this.pose, this.start) = (pose, start);
        var usual = start is null ? PoseReader.Usual(pose.Base, pose.Front) : null;
        foreach (var angle in JointAngles.All)
            angles[angle] = start is not null ? start.Angles[angle] : usual?.GetValueOrDefault(angle) ?? 0;
        if (start is null)
            foreach (var contact in pose.Contacts.Where(c => c.Part.Part == BodyPart.Hand))
            foreach (var (angle, degrees) in Habits.Reaching(contact))
                angles[new(angle, contact.Part.Side)] = degrees;
        foreach (var said in pose.Angles)
            angles[said.Of] = said.Degrees;
        free = [.. JointAngles.All.Except(pose.Angles.Select(a => a.Of))];
        wished = [.. free.Select(f => double.DegreesToRadians(angles[f]))];
        stiffness = [.. free.Select(f => Habits.Stiffness(f.Angle))];
        ranges =
        [
            .. free.Select(f => JointRange.Of(f.Angle))
                .Select(r => (double.DegreesToRadians(r.Least), double.DegreesToRadians(r.Most))),
        ];
        standsOn = Balance.StandsOn(pose);
        solid =
        [
            Surface.Floor,
            .. pose
                .Contacts.OfType<Contact.On>()
                .Select(c => c.Surface)
                .Where(s => s is Surface.Wall or Surface.BackWall)
                .Distinct(),
        ];
        foreach (var contact in pose.Contacts.OfType<Contact.On>())
            if (start is not null && start.Pose.Contacts.Contains(contact) && !IsMoved(contact.Part))
                foreach (var (index, place) in BodyParts.Resting(start.Body, contact.Part).Index())
                    stay.Add((contact.Part, index, place.At, Along(contact.Surface)));
    }

    /// <summary>A hand that slides along the floor rests there, and does not stay.</summary>
    private bool IsMoved(SidedPart part) =>
        pose.Moves is { } moved && moved.Part == part.Part && (moved.Side == part.Side || pose.MovesBoth);

    /// <param name="start">Where the movement began: what rests there and still rests stays where it is.</param>
    public static Posed Solve(Pose pose, Posed? start = null) => new PoseSolver(pose, start).Solve();

    private Posed Solve()
    {
        var values = new double[RootNumbers + free.Length];
        var (root, walls) = (start?.Root, start?.Walls ?? Walls.Usual);
        var frame = root?.Frame ?? BaseFrame();
        (values[0], values[1], values[2]) = root is null ? (0, 0, pose.Base.HipHeight) : (root.Hips.X, root.Hips.Y, root.Hips.Z);
        (values[6], values[7], values[8]) = (walls.Ahead, walls.Beside, walls.Behind);
        wished.CopyTo(values, RootNumbers);
        var first = (double[])values.Clone();
        LeastSquares.Settle(values, Misses(values, first, frame, []), (now, misses) => Misses(now, first, frame, misses));
        var (body, found) = (BodyAt(values, frame), WallsAt(values));
        var kept = angles.Copy();
        return new(pose, body, kept, new(body.Hips, body.Pelvis), found, Unmet(body, found));
    }

    private Frame BaseFrame() =>
        pose.Base switch
        {
            { WorksBelow: true } => new(new(0, -1, 0), new(0, 0, 1), new(-1, 0, 0)),
            { IsSideLying: true } => new(new(0, -1, 0), new(0, 0, -1), new(1, 0, 0)),
            _ => Frame.Upright.Bowed(double.DegreesToRadians(pose.Base.Bow)),
        };

    private Skeleton BodyAt(double[] values, Frame frame)
    {
        for (var i = 0; i < free.Length; i++)
            angles[free[i].Angle, free[i].Side] = values[RootNumbers + i];
        return new(new(values[0], values[1], values[2]), frame.Bowed(values[3]).Rolled(values[4]).Turned(values[5]), angles);
    }

    private static Walls WallsAt(double[] values) => new(values[6], values[7], values[8]);

    /// <summary>How far everything wished for is missed, weighted.</summary>
    /// <returns>How many wishes there are.</returns>
    private int Misses(double[] values, double[] first, Frame frame, double[] misses)
    {
        var (body, walls, count) = (BodyAt(values, frame), WallsAt(values), 0);
        foreach (var contact in pose.Contacts)
        foreach (var miss in Contacts(body, walls, contact))
            Add(miss * Contacting);
        foreach (var (part, index, at, along) in stay)
        {
            var away = BodyParts.Resting(body, part)[index].At - at;
            Add(along[0] ? away.X * Staying : 0);
            Add(along[1] ? away.Y * Staying : 0);
            Add(along[2] ? away.Z * Staying : 0);
        }

        if (pose.Lean is { } lean)
            Add((LeanOf(body) - double.DegreesToRadians(lean)) * Leaning);
        else if (start is not null && pose.Base.Bow == 0 && !pose.Base.IsSideLying)
            Add((LeanOf(body) - LeanOf(start.Body)) * 2);
        foreach (var (_, place) in BodyParts.Everywhere(body))
        foreach (var surface in solid)
            Add(Math.Min(0, walls.From(surface, place.At, BodySide.Working) - place.Radius) * Sinking);
        for (var i = 0; i < free.Length; i++)
        {
            var value = values[RootNumbers + i];
            var (least, most) = ranges[i];
            Add((value - wished[i]) * stiffness[i]);
            Add((Math.Min(0, value - least) + Math.Max(0, value - most)) * Straining);
        }

        // Nobody falls over who is not held: the middle of the mass is wished above what stands.
        Add(Balance.Falling(body, standsOn) * Balancing);
        Add(values[3] * 0.7);
        Add(values[4] * 4);
        Add(values[5] * 4);
        for (var i = 0; i < 3; i++)
            Add((values[i] - first[i]) * 0.3);
        for (var i = 6; i < RootNumbers; i++)
            Add((values[i] - first[i]) * (start is null ? 60 : Contacting));
        return count;

        void Add(double miss)
        {
            if (count < misses.Length)
                misses[count] = miss;
            count++;
        }
    }

    private static double[] Contacts(Skeleton body, Walls walls, Contact contact)
    {
        if (contact is Contact.OnBody(var hand, var under))
        {
            var away = BodyParts.Middle(body, hand) - BodyParts.UnderHand(body, under, hand.Side);
            return [away.X, away.Y, away.Z];
        }

        var on = (Contact.On)contact;
        return Array.ConvertAll(BodyParts.Resting(body, on.Part), place =>
            walls.From(on.Surface, place.At, on.Part.Side) - place.Radius - on.Off
        );
    }

    /// <summary>Which of the three directions run along a surface.</summary>
    private static bool[] Along(Surface surface) =>
        surface switch
        {
            Surface.Wall or Surface.BackWall => [false, true, true],
            Surface.SideWall => [true, false, true],
            _ => [true, true, false],
        };

    /// <summary>How far hips and shoulders lean ahead, in radians.</summary>
    private static double LeanOf(Skeleton body)
    {
        var trunk = body.Shoulders - body.Hips;
        return Math.Atan2(trunk.X, trunk.Z);
    }

    private Series<Unmet> Unmet(Skeleton body, Walls walls)
    {
        var unmet = new List<Unmet>();
        foreach (var contact in pose.Contacts)
            if (Contacts(body, walls, contact).Any(miss => Math.Abs(miss) > (contact is Contact.OnBody ? NearBody : Near)))
                unmet.Add(new(PoseSentences.OutOfReach(contact), contact.Part));
        foreach (var angle in free)
            if (JointRange.Of(angle.Angle).Beyond(angles[angle]) > Supple)
                unmet.Add(new(PoseSentences.TooFar(angle, angles[angle]), Habits.Reaches(angle)));
        if (pose.Lean is { } lean && Math.Abs(double.RadiansToDegrees(LeanOf(body)) - lean) > 1)
            unmet.Add(new("the trunk cannot lean as it is said", null));
        foreach (var surface in solid)
            unmet.AddRange(
                BodyParts
                    .Everywhere(body)
                    .Where(p => walls.From(surface, p.At.At, BodySide.Working) - p.At.Radius < -Near)
                    .Select(p => p.Part)
                    .Distinct()
                    .Select(part => new Unmet(PoseSentences.Through(part, surface), part))
            );
        return unmet.ToSeries();
    }
}
