using System.Globalization;
using System.Text;
using Gradus.Domain;

namespace Gradus.CommandLine;

/// <summary>A review as one page for the coach alone: who needs them first and why, then client by client. Bars stand beside the
/// numbers that they draw, and no colour is a verdict.</summary>
internal static class ReviewHtml
{
    private static readonly string Style = BuiltIn.Text(typeof(ReviewHtml).Assembly, "ReviewHtml.css");

    public static string Write(Practice practice, IReadOnlyList<ClientReview> reviews, DateOnly today)
    {
        var html = new StringBuilder();
        html.Append($"<p class=\"aside\">As of {today.Iso()}. {Escape(ReviewSentences.NoRanking)}</p>\n");
        Needs(html, [.. reviews.SelectMany(r => ReviewNeed.Of(practice, r))]);
        if (reviews.Any(r => r.StoppedOn is not null))
        {
            html.Append("<section>\n<h2>Stopped</h2>\n<ul class=\"told\">\n");
            foreach (var (client, on) in ReviewSentences.StoppedOf(reviews))
                html.Append($"<li id=\"{AnchorOf(client)}\">{NameOf(client)}: {Escape(on)}</li>\n");
            html.Append("</ul>\n</section>\n");
        }

        var going = reviews.Where(r => r.StoppedOn is null).ToArray();
        if (going.Length > 1)
        {
            html.Append("<nav aria-label=\"Clients\">\n<ul>\n");
            foreach (var review in going)
                html.Append($"<li><a href=\"#{AnchorOf(review.Client)}\">{NameOf(review.Client)}</a></li>\n");
            html.Append("</ul>\n</nav>\n");
        }

        foreach (var review in going)
            Client(html, practice, review);
        return CoachPage.Of("What came back", Style, html.ToString());
    }

    private static void Needs(StringBuilder html, ReviewNeed[] needs)
    {
        html.Append("<section>\n<h2>Who needs you first, and why</h2>\n");
        if (needs.Length == 0)
            html.Append("<p>Nobody.</p>\n");
        foreach (var kind in needs.GroupBy(n => n.Kind).OrderBy(g => g.Key))
        {
            html.Append($"<h3>{Escape(ReviewNeed.TitleOf(kind.Key))}</h3>\n");
            var first = kind.Key is NeedKind.Now or NeedKind.SameDay ? " first" : "";
            foreach (var need in kind)
                html.Append($"<div class=\"need{first}\">\n")
                    .Append($"<p><a href=\"#{AnchorOf(need.Client)}\">{NameOf(need.Client)}</a>: {Escape(need.Says)}</p>\n")
                    .Append($"<p>{Escape(need.Do)}</p>\n</div>\n");
        }

        html.Append("</section>\n");
    }

    private static void Client(StringBuilder html, Practice practice, ClientReview review)
    {
        var programme = review.Client.Programme;
        html.Append($"<section id=\"{AnchorOf(review.Client)}\">\n<h2>{NameOf(review.Client)}</h2>\n")
            .Append($"<p class=\"aside\">{Escape(programme.Title)}, {programme.Start.Iso()} to {programme.End.Iso()}")
            .Append($"{Escape(ReviewSentences.PausesOf(programme))}</p>\n");
        foreach (var part in ReviewPart.Of(practice, review))
        {
            html.Append($"<h3>{Escape(part.Title)}</h3>\n");
            if (part.Note is { } note)
                html.Append($"<p class=\"aside\">{Escape(note)}</p>\n");
            html.Append("<ul class=\"told\">\n");
            foreach (var line in part.Lines)
                html.Append($"<li>{Escape(line.Text)}{(line.Share is { } share ? Bar(share) : "")}</li>\n");
            html.Append("</ul>\n");
        }

        html.Append("</section>\n");
    }

    /// <summary>Hidden from whoever listens: the text beside it says the same.</summary>
    private static string Bar(decimal share) =>
        "<svg class=\"bar\" viewBox=\"0 0 100 4\" preserveAspectRatio=\"none\" aria-hidden=\"true\" focusable=\"false\">"
        + "<rect class=\"whole\" width=\"100\" height=\"4\"/>"
        + string.Create(CultureInfo.InvariantCulture, $"<rect class=\"part\" width=\"{100 * share:0.#}\" height=\"4\"/></svg>");

    private static string AnchorOf(Client client) => $"client-{Escape(client.Id.Text)}";

    private static string NameOf(Client client) => Escape($"{client.Name} ({client.Id})");

    private static string Escape(string text) => CoachPage.Escape(text);
}
