using System.Text.RegularExpressions;
using Gradus.Domain;

namespace Gradus.Figures;

/// <summary>What each kind of item says.</summary>
public sealed partial class PoseReader
{
    private void Angle(string written, Match found)
    {
        var (motion, to) = (found.Groups["motion"].Value, found.Groups["to"].Value);
        if (!PoseWords.Motions.TryGetValue(motion, out var known))
        {
            Fault(
                written,
                $"'{motion}' is no motion of a joint that a figure has.",
                Nearest.Ask(motion, PoseWords.Motions.Keys, $"Write one of: {string.Join(", ", PoseWords.Motions.Keys)}.")
            );
            return;
        }

        var toASide = PoseWords.ToASide.Contains(motion);
        if (toASide != (to.Length > 0))
        {
            Fault(
                written,
                toASide ? $"'{Shown(written)}' does not say to which side." : $"{motion} goes to no side.",
                toASide ? "Write 'to the working side' or 'to the other side' behind it." : "Take out the side behind it."
            );
            return;
        }

        var degrees = Number(found) * known.Sign * (to == "other" ? -1 : 1);
        var range = JointRange.Of(known.Angle);
        if (!range.Holds(degrees))
        {
            var most = Math.Abs(degrees > 0 ? range.Most : range.Least);
            Fault(
                written,
                FormattableString.Invariant($"No joint of a person goes so far: {motion} {Math.Abs(degrees)}."),
                FormattableString.Invariant($"The most that a figure shows is {most}.")
            );
            return;
        }

        var paired = new SidedAngle(known.Angle, BodySide.Working).IsPaired;
        if (!paired && found.Groups["which"].Success)
            Fault(written, $"There are not two of what does {motion}.", "Take out the word before it.");
        else if (SidesOf(written, found.Groups["which"].Value, known.Angle >= JointAngle.HipFlexion) is { } sides)
            foreach (var side in paired ? sides : [BodySide.Working])
                Once(written, new SidedAngle(known.Angle, side), () => angles[new(known.Angle, side)] = degrees);
    }

    private void Rest(string written, Match found)
    {
        if (PartsOf(written, found) is not { } parts)
            return;
        var (under, off) = (found.Groups["under"].Value, found.Groups["how"].Value == "off");
        Surface? surface =
            under == "mat" ? Surface.Floor
            : PoseWords.Surfaces.TryGetValue(under, out var known) ? known
            : null;
        var away = found.Groups["n"].Success ? Number(found) / Proportions.HeightInCentimetres : 0;
        if (surface is null && PoseWords.Parts.TryGetValue(PoseWords.One(under), out var body))
        {
            if (off && away == 0 && parts[0].Part == BodyPart.Hand)
                Leave(written, parts, c => c is Contact.OnBody on && on.Under.Part == body);
            else if (off || parts[0].Part != BodyPart.Hand)
                Fault(written, "Only a hand is laid on a part of the body.", "Say on which thing it rests instead.");
            else
                foreach (var part in parts)
                    LayOn(written, part, new(body, part.Side), found.Groups["whose"].Value);
        }
        else if (surface is not { } on)
            Fault(
                written,
                $"'{under}' is nothing that a body may rest on here.",
                Nearest.Ask(under, PoseWords.Surfaces.Keys, $"Write one of: {string.Join(", ", PoseWords.Surfaces.Keys)}.")
            );
        else if (off && away == 0)
            Leave(written, parts, c => c is Contact.On resting && resting.Surface == on);
        else
            foreach (var part in parts)
                Once(written, (part, "rests"), () => Put(new Contact.On(part, on) { Off = away }));
    }

    private void LayOn(string written, SidedPart hand, SidedPart under, string whose)
    {
        var side = whose.Length == 0 || whose == "own" ? hand.Side : SidesOf(written, whose, under.IsOfLeg)?[0] ?? hand.Side;
        Once(written, (hand, "rests"), () => Put(new Contact.OnBody(hand, under with { Side = side })));
    }

    /// <summary>What rests takes the place of what rested there: a heel on the step that of the whole foot.</summary>
    private void Put(Contact contact)
    {
        foreach (var same in contacts.Keys.Where(k => SameEnd(k, contact.Part)).ToArray())
            if (!said.Contains((same, "rests")) || same == contact.Part)
                contacts.Remove(same);
        contacts[contact.Part] = contact;
    }

    /// <param name="meant">Whether a contact is one with what the parts leave.</param>
    private void Leave(string written, SidedPart[] parts, Func<Contact, bool> meant)
    {
        foreach (var part in parts)
        {
            // A foot leaves with whatever of it rests; of a foot that is flat the heel alone may leave.
            var resting = contacts
                .Values.Where(meant)
                .Where(c =>
                    c.Part == part
                    || (part.Part == BodyPart.Foot && SameEnd(c.Part, part))
                    || (part.Part == BodyPart.Heel && c.Part == part with { Part = BodyPart.Foot })
                )
                .ToArray();
            if (resting.Length == 0)
            {
                Fault(written, $"'{Shown(written)}': it does not rest there.", "Take it out.");
                return;
            }

            Once(written, (part, "rests"), () =>
            {
                foreach (var left in resting)
                    contacts.Remove(left.Part);
                if (part.Part == BodyPart.Heel && resting[0] is Contact.On { Part.Part: BodyPart.Foot } flat)
                    Put(flat with { Part = part with { Part = BodyPart.Ball } });
            });
        }
    }

    private static bool SameEnd(SidedPart a, SidedPart b) => a.Side == b.Side && End(a.Part) == End(b.Part);

    /// <summary>Parts of one hand or one foot, of which the last that is said counts; all others stand for themselves.</summary>
    private static BodyPart End(BodyPart part) =>
        part switch
        {
            BodyPart.Heel or BodyPart.Ball or BodyPart.Instep => BodyPart.Foot,
            _ => part,
        };

    private void Hold(string written, Match found)
    {
        var named = PoseWords.One(found.Groups["thing"].Value);
        if (!PoseWords.Things.TryGetValue(named, out var kind))
            Fault(
                written,
                $"'{named}' is no thing that a figure can show.",
                Nearest.Ask(named, PoseWords.Things.Keys, $"Write one of: {string.Join(", ", PoseWords.Things.Keys)}.")
            );
        else if (PartsOf(written, found) is not { } parts)
            return;
        else if (kind == ThingKind.Backpack && parts[0].Part == BodyPart.Back)
            Once(written, kind, () => things.Add(new(kind, new(BodyPart.Back, BodySide.Working))));
        else if (kind == ThingKind.Backpack)
            Fault(written, "A backpack is worn on the back.", "Write 'backpack on back'.");
        else if (kind != ThingKind.Cushion && parts[0].Part != BodyPart.Hand)
            Fault(written, $"A {named} is held in a hand.", $"Write '{named} in working hand', or in the other, or in both.");
        else
            foreach (var part in kind == ThingKind.Cushion ? parts.Take(1) : parts)
                Once(written, (part, kind), () => things.Add(new(kind, part)));
    }

    private void Move(string written, Match found)
    {
        if (PartsOf(written, found) is not { } parts)
            return;
        if (!found.Groups["to"].Success)
            Once(written, "moves", () => (moves, movesBoth) = (parts[0], parts.Length > 1));
        else if (PoseWords.Directions.TryGetValue(found.Groups["to"].Value, out var direction))
            foreach (var part in parts)
                Once(written, (part, "pushes"), () => pushes.Add(new(part, direction)));
        else
            Fault(
                written,
                $"'{found.Groups["to"].Value}' is no direction.",
                $"Write one of: {string.Join(", ", PoseWords.Directions.Keys)}."
            );
    }

    private SidedPart[]? PartsOf(string written, Match found)
    {
        var (named, which) = (found.Groups["part"].Value, found.Groups["which"].Value);
        if (!PoseWords.Parts.TryGetValue(PoseWords.One(named), out var part))
        {
            Fault(
                written,
                $"'{named}' is no part of the body that a figure knows.",
                Nearest.Ask(named, PoseWords.Parts.Keys, $"Write one of: {string.Join(", ", PoseWords.Parts.Keys)}.")
            );
            return null;
        }

        var known = new SidedPart(part, BodySide.Working);
        if (known.IsPaired || part == BodyPart.Flank)
            return SidesOf(written, which, known.IsOfLeg)?.Select(side => new SidedPart(part, side)).ToArray();
        if (which.Length == 0)
            return [known];
        Fault(written, $"There are not two of the part '{named}'.", "Take out the word before it.");
        return null;
    }

    /// <summary>Null, and a fault, where the word does not fit the base.</summary>
    private BodySide[]? SidesOf(string written, string which, bool isOfLeg)
    {
        switch (which)
        {
            case "" or "both":
                return [BodySide.Working, BodySide.Other];
            case "working":
                return [BodySide.Working];
            case "other":
                return [BodySide.Other];
            case "front" or "rear" when @base.HasFront && isOfLeg:
                return [which == "front" ? front : Opposite(front)];
            case "top" or "lower" when @base.IsSideLying:
                return [(which == "top") == @base.WorksBelow ? BodySide.Other : BodySide.Working];
            default:
                Fault(
                    written,
                    which is "front" or "rear"
                        ? $"'{which}' says nothing here: no leg stands ahead of the other, or no leg is meant."
                        : $"'{which}' says nothing here: nobody lies on a side.",
                    "Write 'working' or 'other'."
                );
                return null;
        }
    }

    private static BodySide Opposite(BodySide side) => side == BodySide.Working ? BodySide.Other : BodySide.Working;

    private void Unknown(string written, string text)
    {
        var last = text.Split(' ')[^1];
        if (PoseWords.Motions.Keys.FirstOrDefault(m => text.EndsWith(m, StringComparison.Ordinal)) is { } motion)
            Fault(written, $"Behind '{motion}' a number is missing.", "Write the degrees behind it.");
        else if (PoseBase.All.Any(b => b.Name == text))
            Fault(written, $"'{text}' is a base, and a pose has one.", "Keep the first.");
        else
            Fault(
                written,
                $"'{Shown(written)}' says nothing that a figure can show.",
                Nearest.Ask(
                    text,
                    PoseWords.Views.Keys.Concat(["trunk upright", "trunk level", "trunk leaning ahead 30"]),
                    last is "degrees" or "°"
                        ? "Write an angle as in 'knee flexion 90'."
                        : "Write an angle (knee flexion 90), what rests on what (hands on wall), what is held (bottle in working "
                            + "hand), what moves (working knee moves), or where it is seen from (seen from above)."
                )
            );
    }
}
