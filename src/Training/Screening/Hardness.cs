using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>How hard a dose is, as far as it says so.</summary>
public static class Hardness
{
    /// <summary>Per cent of the hardest from which training is vigorous, inclusive: a felt effort of 7 of 10; common practice, no
    /// source.</summary>
    private const int VigorousPercent = 70;

    /// <summary>How long somebody who is not regularly active does no vigorous work; common practice, no source.</summary>
    public const int GentleWeeks = 4;

    private const int Unknown = int.MaxValue;

    /// <summary>Whether some of it is harder than that, or may be, because nobody stated how hard it is.</summary>
    /// <param name="percent">1 to 100.</param>
    public static bool IsBeyond(Dose dose, int percent) => dose.Actions.Any(a => Of(a, dose.Terms) > percent);

    public static bool IsVigorous(Drill exercise, Dose dose) =>
        IsBeyond(dose, VigorousPercent - 1) || exercise.Properties.Contains(WorkProperty.Jumping);

    /// <summary>The first vigorous week among those in which somebody who is not regularly active does gentle work only; null
    /// where there is none.</summary>
    public static WeekDose? TooEarly(Use use) =>
        use.Weeks.FirstOrDefault(w => w.Week <= GentleWeeks && IsVigorous(use.Exercise, w.Dose.AsDose));

    /// <summary>The first week in which a client under 18 is asked for more than the practice allows at that age, or for nobody
    /// knows how much; null where there is none, and for everybody else.</summary>
    public static WeekDose? BeyondYouthLimit(Practice practice, Client client, Use use) =>
        client.Born.IsIn(AgeBand.Under18, client.Programme)
            ? use.Weeks.FirstOrDefault(w => IsBeyond(w.Dose.AsDose, practice.Card.Settings.YouthEffort))
            : null;

    /// <summary>Per cent of the hardest: stated, felt at ten per cent a point, or by the repetitions left undone, each ten per
    /// cent (a set that leaves 2 is felt as 8 of 10: Zourdos MC et al. 2016, J Strength Cond Res 30:267-75, from memory); the
    /// highest of these. A contraction, or work with a load, that says none of them may be as hard as it likes.</summary>
    private static int Of(DoseAction action, DoseTerms terms)
    {
        var stated = action.Effort?.Match<int?>(
            steady => steady.Percent.High,
            ramp => Math.Max(ramp.First.High, ramp.Last.High),
            felt => felt.Rating.High * 10
        );
        int? left = action.Verb == Verb.Move && terms.Leave is { } leave ? Math.Max(0, 10 - leave) * 10 : null;
        if (stated is null && left is null)
            return
                action.Verb.IsContraction()
                || action.Verb == Verb.Carry
                || (terms.Load is not null && action.Verb != Verb.Breathe)
                ? Unknown
                : 0;
        return Math.Max(stated ?? 0, left ?? 0);
    }
}
