using System.CommandLine;
using Gradus.Reading;

namespace Gradus.CommandLine;

/// <summary><c>gradus schemas FOLDER</c></summary>
internal static class SchemasCommand
{
    public static Command Words()
    {
        var folder = Options.Folder();
        var command = new Command(
            "schemas",
            $"Writes into '{PracticeSchemas.Folder}' what an editor checks the files of a practice by, in place of what an "
                + "earlier Gradus wrote there."
        )
        {
            folder,
        };
        command.SetAction(asked => Run(asked.GetRequiredValue(folder)));
        return command;
    }

    private static int Run(string folder)
    {
        if (!SourceFolder.Open(folder).Has("practice.md"))
            throw new IOException($"'{folder}' is no practice: there is no practice.md in it.");
        var files = EditorSchemas.Files().ToArray();
        var place = Path.Combine(folder, PracticeSchemas.Folder);
        Directory.CreateDirectory(place);
        foreach (var file in files)
            Put(Path.Combine(folder, file.Path), file.Text);
        Console.Out.WriteLine(
            $"{place}: {files.Length} schemas. A .yaml file names its own in its first line: "
                + $"# yaml-language-server: $schema={PracticeSchemas.Folder}/conditions{PracticeSchemas.Ending}"
        );
        return Commands.Fine;
    }

    /// <summary>In one step, so that an editor never reads half of it.</summary>
    private static void Put(string path, string text)
    {
        var beside = path + ".new";
        File.WriteAllText(beside, text);
        File.Move(beside, path, overwrite: true);
    }
}
