using System.Globalization;
using System.Text;
using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Rendering;

/// <summary>A clip → a player that asks for nothing until somebody plays it, its still for paper, and what is said in it. Where a
/// form of the site holds no clips, the still and where the clip is.</summary>
internal static class ClipHtml
{
    /// <param name="words">Of the client's language.</param>
    public static string Of(Inline.Clip clip, Words words)
    {
        var html = new StringBuilder();
        var (shows, size) = (
            Html.Escape(clip.Shows),
            string.Create(CultureInfo.InvariantCulture, $"width=\"{clip.Width}\" height=\"{clip.Height}\"")
        );
        var plays = clip.Path.Length > 0;
        if (plays)
            html.Append(
                CultureInfo.InvariantCulture,
                $"<video controls preload=\"none\" playsinline src=\"{Html.Escape(clip.Path)}\" "
                    + $"poster=\"{clip.Stills[^1].WebP.Path}\" aria-label=\"{shows}\" {size}>{Track(clip, words)}</video>"
            );
        html.Append(PictureHtml.Of(clip.Stills, clip.Shows, plays ? $" class=\"{PageClass.Still}\"" : " loading=\"lazy\""));
        if (clip.Said.Length > 0)
            html.Append(CultureInfo.InvariantCulture, $" <span class=\"{PageClass.Said}\">{Html.Escape(clip.Said)}</span> ");
        if (!plays)
            html.Append(
                CultureInfo.InvariantCulture,
                $" <span class=\"{PageClass.Said}\">{Html.Escape(words.Say("clip-elsewhere"))}</span> "
            );
        return html.ToString();
    }

    /// <summary>Written out in the page: a browser does not load a file of captions over file://, not even from the same
    /// folder.</summary>
    private static string Track(Inline.Clip clip, Words words) =>
        clip.Captions is { Cues.Count: > 0 } captions
            ? $"<track kind=\"captions\" srclang=\"{Html.Escape(captions.Language)}\" "
                + $"label=\"{Html.Escape(words.Say("captions"))}\" default "
                + $"src=\"data:text/vtt;base64,{Convert.ToBase64String(Encoding.UTF8.GetBytes(captions.Written()))}\">"
            : "";
}
