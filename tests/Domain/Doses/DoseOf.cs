using Gradus.Domain;
using Gradus.Reading;

namespace Gradus.Tests.Domain;

/// <summary>Doses of lines that are known to be right.</summary>
internal static class DoseOf
{
    public static readonly DoseSettings Usual = DoseSettings.Default;

    /// <summary>A practice that counts everything in another way.</summary>
    public static readonly DoseSettings Unusual = new(new(9), new(7), new(3), new(2));

    public static Dose Line(string line) =>
        DoseLine.Read(line, Usual) switch
        {
            DoseLineResult.Understood(var dose) => dose,
            DoseLineResult.Refused(var fault) => throw new ArgumentException(
                $"{line}: {fault.Column} {fault.Message}",
                nameof(line)
            ),
            _ => throw new ArgumentException(line, nameof(line)),
        };

    public static DoseMeasures Measures(string line) => DoseMeasures.Of(Line(line).Settled(), Usual);

    public static int Seconds(string line) => Measures(line).Seconds.Value;
}
