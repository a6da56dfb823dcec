using System.CommandLine;
using Gradus.Domain;
using Gradus.Reading;

namespace Gradus.CommandLine;

/// <summary><c>gradus new exercise|caution|client|programme|group|sport ID</c>, <c>gradus new words LANG</c></summary>
internal static class NewCommand
{
    private static readonly string[] Kinds = ["exercise", "caution", "client", "programme", "group", "sport", "words"];

    public static Command Words()
    {
        var kind = new Argument<string>("KIND") { Description = "exercise, caution, client, programme, group, sport or words." };
        var id = new Argument<string>("ID")
        {
            Description =
                "Its name among files: small letters, digits and hyphens, a letter first; of words the two letters of "
                + "the language.",
        };
        var folder = new Option<string>("--in")
        {
            Description = "The practice's folder; the default is the one you are in.",
            HelpName = "FOLDER",
            DefaultValueFactory = _ => ".",
        };
        var today = Options.Today();
        today.Description = "Let a client's programme begin on the Monday after this day; the default is today.";
        var command = new Command(
            "new",
            "Adds an exercise, a caution, a client, a programme for several clients, a group that trains together, a sport "
                + "or the words of a language to a practice, with every key explained."
        )
        {
            kind,
            id,
            folder,
            today,
        };
        command.SetAction(asked =>
            Run(
                asked.GetRequiredValue(kind),
                asked.GetRequiredValue(id),
                asked.GetRequiredValue(folder),
                asked.GetValue(today) ?? Clock.Today()
            )
        );
        return command;
    }

    private static int Run(string kind, string id, string folder, DateOnly today)
    {
        if (!Kinds.Contains(kind))
            throw new IOException(
                $"'new' cannot add '{kind}'. " + $"{Nearest.Ask(kind, Kinds, $"It adds one of: {string.Join(", ", Kinds)}.")}"
            );
        if (kind == "words" && !Translation.IsLanguage(id))
            throw new IOException($"'{id}' is no language. Write its two small letters, as fr.");
        if (!Id.IsValid(id))
            throw new IOException($"'{id}' cannot be an id. {Remedy(id)}");
        var source = SourceFolder.Open(folder);
        if (!source.Has("practice.md"))
            throw new IOException(
                $"'{folder}' is no practice: there is no practice.md in it. Name one with --in, or begin one with 'gradus begin'."
            );
        var place = kind switch
        {
            "client" => $"clients/{id}",
            "words" => $"words/{id}.yaml",
            "group" => Group.PathOf(id),
            "sport" => $"sports/{id}.yaml",
            _ => $"{kind}s/{id}.md",
        };
        var there = folder == "." ? place : Path.Combine(folder, place);
        if (File.Exists(there) || Directory.Exists(there))
            throw new IOException($"{there} is there already, and nothing is written over. Choose another id.");
        if (PracticeReader.Read(source, new()).Practice is not { } practice)
            throw new IOException(
                $"The practice.md in '{folder}' has mistakes. 'gradus audit' says which; put them right first."
            );
        Console.Out.WriteLine(Add(kind, id, there, practice, today));
        return Commands.Fine;
    }

    /// <summary>Writes what is new, and says what to do with it.</summary>
    private static string Add(string kind, string id, string there, Practice practice, DateOnly today)
    {
        switch (kind)
        {
            case "exercise":
                FreshFiles.WriteFile(there, NewExercise.Text(new(id), practice));
                return $"{there} is there. Put your own words and values in it; 'gradus audit' then says what does not fit.";
            case "caution":
                FreshFiles.WriteFile(there, StarterFiles.Text("new/caution.md", ("title", StarterFiles.Title(id))));
                return $"{there} is there. Put your own words in it, and name {id} under 'signs' of the exercises that "
                    + "it belongs to.";
            case "programme":
                FreshFiles.WriteFile(
                    there,
                    StarterFiles.Text(
                        "new/programme.md",
                        ("id", id),
                        ("title", StarterFiles.Title(id)),
                        ("exercise", practice.Exercises.Count > 0 ? practice.Exercises[0].Id.Text : "an-exercise")
                    )
                );
                return $"{there} is there. Write its sessions, and in the programme.md of each client who follows it "
                    + $"'from: {id}', 'start' and what is the client's own.";
            case "group":
                FreshFiles.WriteFile(there, EditorSchemas.Named(new($"groups/{id}.yaml", NewGroup.Text(id, practice))).Text);
                return $"{there} is there. Say who trains together, and when; then 'gradus group' makes the sheet of a class.";
            case "sport":
                FreshFiles.WriteFile(
                    there,
                    EditorSchemas
                        .Named(new($"sports/{id}.yaml", StarterFiles.Text("new/sport.yaml", ("title", StarterFiles.Title(id)))))
                        .Text
                );
                return $"{there} is there. Put the sport's own words for its sides in it, and name {id} under 'sport' of who "
                    + "plays it.";
            case "words":
                FreshFiles.WriteFile(there, EditorSchemas.Named(new($"words/{id}.yaml", FreshWords.Text(id))).Text);
                return FreshWords.IsBuiltIn(id)
                    ? $"{there} is there, with all words of a site in '{id}' behind #. Take the # from those that you "
                        + "want to say in your own way."
                    : $"{there} is there. Write behind each key what stands above it, in '{id}'; 'gradus audit' says "
                        + "what is missing, and until then no site is made in it.";
            default:
                FreshFiles.WriteFolder(
                    there,
                    NewClient
                        .Files(new(id), practice, today)
                        .Select(file => EditorSchemas.Named(file, $"clients/{id}/"))
                        .ToSeries()
                );
                return $"{there} is there. Fill in born, stance, agreed, answered and the answers in "
                    + $"{Path.Combine(there, "client.yaml")}: until then nothing is handed over.\n"
                    + $"Then write the sessions in {Path.Combine(there, "programme.md")}.";
        }
    }

    private static string Remedy(string id)
    {
        const string Shape = "Use small letters, digits and hyphens, a letter first, at most 64 characters.";
        var letters = id.ToLowerInvariant().Select(c => char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c) ? c : ' ');
        var near = string.Join('-', string.Concat(letters).Split(' ', StringSplitOptions.RemoveEmptyEntries));
        if (Id.IsValid(near))
            return $"Did you mean '{near}'?";
        return near == id && id.Length <= 64 && char.IsAsciiLetter(id[0])
            ? "Some systems keep that name for a device. Choose another."
            : Shape;
    }
}
