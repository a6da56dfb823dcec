using System.Text.RegularExpressions;
using Gradus.Domain;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;
using Inline = Gradus.Domain.Inline;

namespace Gradus.Reading;

/// <summary>The running text of a paragraph, heading or list item.</summary>
internal sealed partial class ProseInlines(SourceFile sheet, int firstLine, ProseRules rules)
{
    [GeneratedRegex(@"\{([a-z]+)(: ?[a-z][^{}\n]*)?\}", RegexOptions.CultureInvariant)]
    private static partial Regex PlaceholderShape();

    public Series<Inline> Of(ContainerInline? container) => container is null ? [] : container.SelectMany(Each).ToSeries();

    private IEnumerable<Inline> Each(Markdig.Syntax.Inlines.Inline inline)
    {
        switch (inline)
        {
            case LiteralInline literal:
                return Words(BlanksInNames.GivenBack(literal.Content.ToString()), literal);
            case CodeInline code:
                return [new Inline.Plain(BlanksInNames.GivenBack(code.Content))];
            case HtmlEntityInline entity:
                return
                [
                    new Inline.Plain(
                        new([
                            .. entity
                                .Transcoded.ToString()
                                .Select(c => ControlCharacters.Contains(c) || UnseenLetters.Contains(c) ? '\uFFFD' : c),
                        ])
                    ),
                ];
            case LineBreakInline:
                return [new Inline.Plain(" ")];
            case EmphasisInline emphasis:
                return [new Inline.Emphasis(emphasis.DelimiterCount > 1, Of(emphasis))];
            case HtmlInline html:
                sheet.Warn(
                    Faults.HtmlInText,
                    Place(html, 0),
                    "This is HTML; the page shows it as the text it is.",
                    "Take it out; write *word* to stress something.",
                    html.Tag.Length
                );
                return [new Inline.Plain(html.Tag)];
            case AutolinkInline auto:
                return Link((auto.IsEmail ? "mailto:" : "") + auto.Url, [new Inline.Plain(auto.Url)], Place(auto, 0));
            case LinkInline footnote when LaidOut.IsFootnote(footnote):
                return Of(footnote);
            case LinkInline { IsImage: false } link:
                return Link(link.Url ?? "", Of(link), Place(link, 0));
            case LinkInline picture:
                return Picture(picture);
            case DelimiterInline delimiter:
                return Of(delimiter).Prepend(new Inline.Plain(delimiter.ToLiteral()));
            case ContainerInline container:
                return Of(container);
            default:
                return [];
        }
    }

    private List<Inline> Words(string text, LiteralInline literal)
    {
        var inlines = new List<Inline>();
        var at = 0;
        foreach (Match match in PlaceholderShape().Matches(text))
        {
            var name = match.Groups[1].Value;
            var range = RangeFigures.Is(match.Value) ? rules.Ranges : null;
            if (range is null && (match.Groups[2].Success || !rules.Fills(name)))
                continue;
            if (match.Index > at)
                inlines.Add(new Inline.Plain(text[at..match.Index]));
            var place = Place(literal, match.Index);
            inlines.Add(range is null ? new Inline.Placeholder(name, place) : RangeFigures.Of(sheet, match.Value, place, range));
            at = match.Index + match.Length;
        }

        if (at < text.Length)
            inlines.Add(new Inline.Plain(text[at..]));
        return inlines;
    }

    private IEnumerable<Inline> Link(string address, Series<Inline> text, Location at)
    {
        if (Uri.TryCreate(address, UriKind.Absolute, out var uri) && uri.Scheme is "https" or "mailto" or "tel")
            return [new Inline.Link(uri.AbsoluteUri, text, at)];
        if (ExerciseIn(address) is { } id)
        {
            if (rules.Exercises.Contains(id))
                return [new Inline.ExerciseLink(new(id), text, at)];
            sheet.Fault(
                Faults.LinkBroken,
                at,
                $"This link leads to an exercise that there is not: {Quote.Of(id)}.",
                Nearest.Ask(
                    address,
                    rules.Exercises.Order(StringComparer.Ordinal).Select(known => known + ".md"),
                    $"Write exercises/{id}.md, or take the link out."
                )
            );
            return text;
        }

        sheet.Fault(
            Faults.AddressRefused,
            at,
            address.Length == 0 ? "This link leads nowhere." : $"A link cannot lead to {Quote.Of(address)}.",
            Nearest.Ask(
                address,
                rules.Exercises.Order(StringComparer.Ordinal).Select(id => id + ".md"),
                "Link to another exercise's file, by its name and .md, or to an address that begins with https, mailto or tel."
            )
        );
        return text;
    }

    private IEnumerable<Inline> Picture(LinkInline picture)
    {
        var mention = new MediaMention(sheet, BlanksInNames.GivenBack(picture.Url ?? ""), Place(picture, 0), picture.Span.Length);
        var shows = Prose.PlainOf(Of(picture));
        if (shows.Length == 0)
            mention.Fault(
                Faults.PictureWithoutText,
                $"Nothing says in words what this {(mention.IsClip ? "clip" : "picture")} shows.",
                "Write it between the square brackets: ![The heel is down](ankle-rock.jpg)."
            );
        if (!mention.IsClip)
            return
            [
                rules.Media.FindPicture(mention) is { } found
                    ? new Inline.Picture(found, shows, [], mention.At)
                    : new Inline.Plain(shows),
            ];
        if (!rules.Clips)
            mention.Fault(
                Faults.AddressRefused,
                "A clip can stand only in the text of an exercise.",
                "Put it below '## Do' of the exercise that it shows."
            );
        return
        [
            rules.Media.FindClip(mention) is { } clip && rules.Clips
                ? new Inline.Clip(clip.Path, clip.Still, [], shows, clip.Width, clip.Height, null, "", mention.At)
                : new Inline.Plain(shows),
        ];
    }

    private static string? ExerciseIn(string address)
    {
        var file =
            address.StartsWith("../exercises/", StringComparison.Ordinal) ? address["../exercises/".Length..]
            : address.StartsWith("../../exercises/", StringComparison.Ordinal) ? address["../../exercises/".Length..]
            : address;
        return file.EndsWith(".md", StringComparison.Ordinal) && Id.IsValid(file[..^3]) ? file[..^3] : null;
    }

    private Location Place(MarkdownObject written, int offset) => sheet.At(firstLine + written.Line, written.Column + 1 + offset);
}
