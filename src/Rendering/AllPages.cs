using System.Globalization;
using System.Text.RegularExpressions;
using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Rendering;

/// <summary>A plan as one page shows it that holds all others: links lead to places in it, and pictures stand in it.</summary>
internal static partial class AllPages
{
    /// <summary>With more than this, in characters, a page that holds its clips opens slowly on a phone; it shows their stills
    /// then.</summary>
    public const int MostWithClips = 10 * 1024 * 1024;

    /// <summary>What a page asks for of the client's own files. No text of a coach can look like it: quotation marks are escaped
    /// there.</summary>
    [GeneratedRegex("(?<=\\b(?:src|poster)=\")(?:pictures|clips)/[^\"]*(?=\")", RegexOptions.CultureInvariant)]
    private static partial Regex OwnFile();

    /// <summary>The place of a page: session-1.html stands at #session-1.</summary>
    public static string AddressOf(string path) => "#" + PageId.Page(path);

    /// <param name="clips">Whether clips play in it, or only their stills are shown.</param>
    public static Plan Of(Plan plan, bool clips)
    {
        return plan with
        {
            Publisher = plan.Publisher with { Scope = plan.Publisher.Scope.With(Moved) },
            Programme = plan.Programme with { Letter = plan.Programme.Letter.With(Moved) },
            Sessions = plan
                .Sessions.Select(s =>
                    s with
                    {
                        Path = AddressOf(s.Path),
                        Uses = s.Uses.Select(u => u with { Text = u.Text.With(Moved) }).ToSeries(),
                    }
                )
                .ToSeries(),
            Exercises = plan.Exercises.Select(e => e with { Path = AddressOf(e.Path), Text = e.Text.With(Moved) }).ToSeries(),
            Cautions = plan.Cautions.Select(c => c with { Body = c.Body.With(Moved) }).ToSeries(),
        };

        Inline Moved(Inline inline) =>
            inline switch
            {
                Inline.ExerciseLink link => new Inline.Link(AddressOf(PagePath.Exercise(link.Exercise)), link.Text, link.At),
                Inline.Picture picture => picture with { Sizes = Smallest(picture.Sizes) },
                Inline.Clip clip => clip with { Path = clips ? clip.Path : "", Stills = Smallest(clip.Stills) },
                _ => inline,
            };
    }

    /// <summary>One size in one format, because every byte of it is carried in a message: what is wide enough for a phone, as
    /// WebP.</summary>
    private static Series<PictureSize> Smallest(Series<PictureSize> sizes) => [sizes[0] with { Jpeg = null }];

    /// <summary>The finished page with every picture and clip written out in it. It is put in behind the templates, which are
    /// held to what a page of words may take.</summary>
    public static string WithFiles(string html, Plan plan)
    {
        var files = FilesOf(plan).ToDictionary(f => Html.Escape(f.Path), DataOf, StringComparer.Ordinal);
        return files.Count == 0 ? html : OwnFile().Replace(html, asked => files.GetValueOrDefault(asked.Value, asked.Value));
    }

    /// <summary>How long the page becomes by that, in characters.</summary>
    public static long LengthWithFiles(string html, Plan plan)
    {
        var lengths = FilesOf(plan)
            .ToDictionary(f => Html.Escape(f.Path), f => (f.Bytes.Length + 2L) / 3 * 4, StringComparer.Ordinal);
        return html.Length + OwnFile().Matches(html).Sum(asked => lengths.GetValueOrDefault(asked.Value));
    }

    /// <summary>A file written out in an address.</summary>
    public static string DataOf(Asset file, string type) =>
        string.Create(CultureInfo.InvariantCulture, $"data:{type};base64,{Convert.ToBase64String(file.Bytes.Span)}");

    private static IEnumerable<Asset> FilesOf(Plan plan) =>
        plan
            .Pictures.Select(p => p.Sizes[0].WebP)
            .DistinctBy(f => f.Path)
            .Concat(plan.Clips.Select(c => new Asset(c.Path, c.Bytes)));

    private static string DataOf(Asset file) =>
        DataOf(
            file,
            Path.GetExtension(file.Path).ToLowerInvariant() switch
            {
                ".png" => "image/png",
                ".webp" => "image/webp",
                ".mp4" => "video/mp4",
                ".webm" => "video/webm",
                _ => "image/jpeg",
            }
        );
}
