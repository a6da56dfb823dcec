using Gradus.Domain;
using Gradus.Reading;

namespace Gradus.Tests.Reading;

/// <summary>Bad lines as a coach sees them: the line, the place under it, what is wrong, what to do. Rows stand between empty
/// lines.</summary>
internal static class LineFaultTable
{
    public static TheoryData<string, string> Rows(string table)
    {
        var rows = new TheoryData<string, string>();
        foreach (var row in table.Split("\n\n"))
        {
            var line = row[..row.IndexOf('\n', StringComparison.Ordinal)];
            rows.Add(line, row);
        }

        return rows;
    }

    /// <summary>The fault of a line in the form of a row.</summary>
    public static string Show(string line)
    {
        var refused = Assert.IsType<DoseLineResult.Refused>(DoseLine.Read(line, DoseSettings.Default));
        var fault = refused.Fault;
        return $"{line}\n{new string(' ', fault.Column)}{new string('^', fault.Length)}\n{fault.Message}\n{fault.Help}";
    }
}
