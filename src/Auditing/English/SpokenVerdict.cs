using Gradus.Domain;

namespace Gradus.Auditing;

/// <summary>What a figure in a text is to the dose in force.</summary>
/// <param name="Things">What it was held against; empty where the dose has nothing of the kind.</param>
public sealed record SpokenVerdict(SpokenAgreement Agreement, Series<SpokenThing> Things)
{
    private static readonly SpokenVerdict NoDose = new(SpokenAgreement.NotADose, []);

    /// <summary>A figure agrees with an exercise's dose that says the same range.</summary>
    public static SpokenVerdict Against(SpokenValue figure, Dose dose) => Of(figure, [dose], Equal);

    /// <summary>A figure agrees with the doses of some weeks if none of them lies outside it.</summary>
    public static SpokenVerdict Against(SpokenValue figure, IReadOnlyList<Dose> weeks) => Of(figure, weeks, Holds);

    private static SpokenVerdict Of(SpokenValue figure, IReadOnlyList<Dose> doses, Func<SpokenValue, Count, bool> agree)
    {
        if (figure.Kind == SpokenKind.Side)
            return new(doses.Select(d => OfSide(figure.Side, d.Terms.Side)).Append(SpokenAgreement.NotADose).Min(), []);
        var all = SpokenThing.Of(doses);
        var things = Candidates(figure, all).ToSeries();
        if (things.Any(t => agree(figure, t.Number)))
            return new(SpokenAgreement.Agrees, things);
        if (things.Count > 0)
            return new(SpokenAgreement.Disagrees, things);
        return IsMissed(figure, all) ? new(SpokenAgreement.Disagrees, []) : NoDose;
    }

    private static bool Equal(SpokenValue figure, Count number) =>
        (figure.Bound == SpokenBound.AtMost || figure.Number.Low == number.Low)
        && (figure.Bound == SpokenBound.AtLeast || figure.Number.High == number.High);

    private static bool Holds(SpokenValue figure, Count number) =>
        (figure.Bound == SpokenBound.AtMost || figure.Number.Low <= number.Low)
        && (figure.Bound == SpokenBound.AtLeast || figure.Number.High >= number.High);

    private static IEnumerable<SpokenThing> Candidates(SpokenValue figure, Series<SpokenThing> things)
    {
        return figure.Kind switch
        {
            SpokenKind.Time => Times(),
            SpokenKind.Pause => Or(Of(SpokenKind.Pause), Of(SpokenKind.Rest)),
            SpokenKind.Wait => things.Where(t =>
                t.Kind is SpokenKind.Rest or SpokenKind.Pause or SpokenKind.Switch or SpokenKind.Wait
            ),
            SpokenKind.Sets => Of(SpokenKind.Sets).Concat(Of(SpokenKind.Times)),
            SpokenKind.Repetitions => Repetitions(),
            SpokenKind.Efforts => Or(Repetitions(), Of(SpokenKind.Sets)),
            SpokenKind.Times => Repetitions().Concat(figure.IsAsked ? Of(SpokenKind.Sets) : []),
            var kind => Of(kind),
        };

        IEnumerable<SpokenThing> Of(SpokenKind kind) => things.Where(t => t.Kind == kind);
        IEnumerable<SpokenThing> Or(IEnumerable<SpokenThing> some, IEnumerable<SpokenThing> others) => some.Any() ? some : others;
        IEnumerable<SpokenThing> Repetitions() => Of(SpokenKind.Repetitions).Concat(Of(SpokenKind.Times));
        IEnumerable<SpokenThing> Times()
        {
            foreach (var verb in figure.Verbs)
                if (things.Any(t => t.Verb == verb))
                    return Of(SpokenKind.Time).Concat(Of(SpokenKind.Wait)).Where(t => t.Verb == verb);
            return Of(SpokenKind.Time).Concat(Of(SpokenKind.Wait));
        }
    }

    /// <summary>Whether the sentence asks for work in an amount that the dose has not, or for a rest where it gives
    /// none.</summary>
    private static bool IsMissed(SpokenValue figure, Series<SpokenThing> things) =>
        figure.Kind switch
        {
            SpokenKind.Time or SpokenKind.Repetitions => figure.IsAsked,
            SpokenKind.Breaths => figure.IsAsked
                && things.Any(t => t is { Kind: SpokenKind.Time, Verb: Verb.Hold or Verb.Breathe }),
            SpokenKind.Rest => things.Any(t => t is { Kind: SpokenKind.Sets, Number.High: > 1 }),
            _ => false,
        };

    private static SpokenAgreement OfSide(SpokenSide said, SideTerm? term) =>
        (said, term) switch
        {
            (_, null) => SpokenAgreement.NotADose,
            (SpokenSide.Left, SideTerm.On(SideName.Body(Side.Left))) => SpokenAgreement.Agrees,
            (SpokenSide.Right, SideTerm.On(SideName.Body(Side.Right))) => SpokenAgreement.Agrees,
            (SpokenSide.Left or SpokenSide.Right, SideTerm.On(SideName.Body) or SideTerm.Both) => SpokenAgreement.NotADose,
            (SpokenSide.Each, SideTerm.Each or SideTerm.Alternate) => SpokenAgreement.Agrees,
            (SpokenSide.All, SideTerm.Each or SideTerm.Alternate or SideTerm.Both) => SpokenAgreement.Agrees,
            (SpokenSide.Both, SideTerm.Both) or (SpokenSide.One, SideTerm.On) => SpokenAgreement.Agrees,
            _ => SpokenAgreement.Disagrees,
        };
}

/// <summary>In the order of weight: of several, the first counts.</summary>
public enum SpokenAgreement
{
    Disagrees,
    Agrees,
    NotADose,
}
