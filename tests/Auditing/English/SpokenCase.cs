using System.Globalization;
using Gradus.Auditing;
using Gradus.Domain;
using Gradus.Reading;
using Gradus.Tests.House;

namespace Gradus.Tests.Auditing;

/// <summary>A sentence as a coach writes it, the dose in force, and how somebody who knows both reads it.</summary>
/// <param name="Verdict">agrees, disagrees or not-a-dose.</param>
/// <param name="Figures">"time 30-60; !sets 3": what belongs to the dose, with <c>!</c> before what disagrees with it.</param>
internal sealed record SpokenCase(string Verdict, string Line, string Figures, string Sentence)
{
    public Dose Dose { get; } = Assert.IsType<DoseLineResult.Understood>(DoseLine.Read(Line, DoseSettings.Default)).Dose;

    public static Series<SpokenCase> In(string file) =>
        File.ReadLines(Repository.Path("tests", "Auditing", "Prose", file))
            .Where(line => line.Length > 0 && line[0] != '#')
            .Select(line => line.Split('\t'))
            .Select(cells => new SpokenCase(cells[0], cells[1], cells[2], cells[3]))
            .ToSeries();

    /// <summary>The figures that belong to the dose, as this sentence is read.</summary>
    public string Read() =>
        string.Join(
            "; ",
            Judged(Sentence).Select(j => (j.Verdict.Agreement == SpokenAgreement.Disagrees ? "!" : "") + Written(j.Figure))
        );

    public string Result() => VerdictOf(Sentence);

    /// <summary>The verdict on another sentence beside the same dose.</summary>
    public string VerdictOf(string sentence) =>
        Judged(sentence).Select(j => j.Verdict.Agreement).Append(SpokenAgreement.NotADose).Min() switch
        {
            SpokenAgreement.Disagrees => "disagrees",
            SpokenAgreement.Agrees => "agrees",
            _ => "not-a-dose",
        };

    public IEnumerable<(SpokenValue Figure, SpokenVerdict Verdict)> Judged(string sentence) =>
        SpokenValues
            .In(sentence)
            .Select(f => (f, SpokenVerdict.Against(f, Dose)))
            .Where(j => j.Item2.Agreement != SpokenAgreement.NotADose);

    private static string Written(SpokenValue figure)
    {
        var (kind, number) = (KindOf(figure.Kind), figure.Number);
        return figure.Kind == SpokenKind.Side
            ? $"side {figure.Side.ToString().ToLowerInvariant()}"
            : figure.Bound switch
            {
                SpokenBound.AtLeast => string.Create(CultureInfo.InvariantCulture, $"{kind} >={number.Low}"),
                SpokenBound.AtMost => string.Create(CultureInfo.InvariantCulture, $"{kind} <={number.High}"),
                _ => $"{kind} {number}",
            };
    }

    private static string KindOf(SpokenKind kind) =>
        kind switch
        {
            SpokenKind.Repetitions or SpokenKind.Efforts => "reps",
            SpokenKind.Percent => "effort",
            _ => kind.ToString().ToLowerInvariant(),
        };
}
