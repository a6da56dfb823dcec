using System.Globalization;
using System.Text;
using Gradus.Domain;
using Gradus.Figures;
using Gradus.Reading;

namespace Gradus.CommandLine;

/// <summary>One page with the figures of all exercises of a practice.</summary>
internal static class FigureSheet
{
    private static readonly string Style =
        FigureFile.Style
        + ".figures{display:grid;grid-template-columns:repeat(auto-fill,minmax(17rem,1fr));gap:1rem;list-style:none;padding:0}"
        + ".figures svg{display:block;width:100%;height:11rem}";

    public static int Write(string folder, string to, string letter, bool titled)
    {
        var source = SourceFolder.Open(folder);
        if (!source.Has("practice.md"))
            throw new IOException($"'{folder}' is no practice: there is no practice.md in it.");
        var findings = new Findings();
        var reading = PracticeReader.Read(source, findings);
        var exercises = reading.Practice?.Exercises ?? [];
        var (drawn, without) = (new List<(Exercise Exercise, Movement Movement)>(), new List<string>());
        foreach (var exercise in exercises)
            if (exercise.Pose is { } pose && Movement.Read(pose, exercise.Cue).Movement is { } movement)
                drawn.Add((exercise, movement));
            else
                without.Add(exercise.Id.Text);
        var main = new StringBuilder("<ul class=\"figures\">\n");
        foreach (var (number, (exercise, movement)) in drawn.Index())
        {
            var name = titled ? exercise.Title : (number + 1).ToString(CultureInfo.InvariantCulture);
            main.Append("<li>").Append(CoachPage.Escape(name));
            main.Append(FigureFile.Element(movement.Figure, name, letter)).Append("</li>\n");
        }

        var page = CoachPage.Of("Figures", Style, main.Append("</ul>\n").ToString(), namesClients: false);
        FigureTarget.Write(to, "--sheet", ".html", page);
        Console.Out.WriteLine(
            $"{to}: {drawn.Count} figures" + (without.Count > 0 ? $"; without a pose: {string.Join(", ", without)}" : "")
        );
        var wrong = findings.InOrder().Where(f => f.Rule == Faults.PoseWrong).ToArray();
        foreach (var error in wrong)
            Console.Out.WriteLine(FindingText.FirstLine(error));
        return wrong.Length > 0 ? Commands.ErrorsFound : Commands.Fine;
    }
}
