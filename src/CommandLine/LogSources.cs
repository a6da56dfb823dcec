using Gradus.Reading;

namespace Gradus.CommandLine;

/// <summary>Where a log comes from: a file, or what is pasted in.</summary>
/// <param name="Name">As it is told of.</param>
internal sealed record LogSource(string Name, Func<LogReading> Read);

internal static class LogSources
{
    private const string Pasted = "-";

    private static readonly string[] Endings = [".csv", ".txt"];

    /// <summary>In the order in which they are named; those of a folder in that of their names.</summary>
    /// <exception cref="IOException">One of them is not there, or a folder has none in it.</exception>
    public static IEnumerable<LogSource> Of(string[] files) =>
        (files.Length == 0 ? [Pasted] : files).Distinct(StringComparer.Ordinal).SelectMany(Of).ToArray();

    private static IEnumerable<LogSource> Of(string file)
    {
        if (file == Pasted)
            return [new("what was pasted in", () => LogReader.Read("-", 0, Console.OpenStandardInput))];
        if (Directory.Exists(file))
            return InFolder(file);
        if (!File.Exists(file))
            throw new FileNotFoundException($"There is no file '{file}'.");
        return [OfFile(file)];
    }

    private static LogSource[] InFolder(string folder)
    {
        var files = Directory
            .EnumerateFiles(folder)
            .Where(f => Endings.Any(e => f.EndsWith(e, StringComparison.OrdinalIgnoreCase)))
            .Order(StringComparer.Ordinal)
            .Select(OfFile)
            .ToArray();
        return files.Length > 0
            ? files
            : throw new FileNotFoundException($"There is no log in '{folder}': no file whose name ends in .csv or .txt.");
    }

    private static LogSource OfFile(string file) =>
        new(file, () => LogReader.Read(file, new FileInfo(file).Length, () => File.OpenRead(file)));
}
