using System.Net;
using Scriban;
using Scriban.Parsing;
using Scriban.Runtime;

namespace Gradus.Tests.Benchmarks;

/// <summary>Scriban with nothing around it but escaping: one template, one context, rows that stand ready. Its pages have as many
/// steps as a finished page has times, and cautions up to the same size.</summary>
internal sealed class BareTemplate
{
    private static readonly string Source = string.Join(
        '\n',
        [
            "<!doctype html>",
            "<html lang=\"{{ page.language }}\">",
            "<head>",
            "<meta charset=\"utf-8\">",
            "<title>{{ page.title }}</title>",
            "</head>",
            "<body>",
            "<main>",
            "<h1>{{ page.title }}</h1>",
            "<section>",
            "{{~ for caution in page.cautions ~}}",
            "<div class=\"caution\">\n<h4>{{ caution.title }}</h4>\n{{ caution.body }}\n<p class=\"belongs\">{{ "
                + "caution.exercises }}</p>\n</div>",
            "{{~ end ~}}",
            "</section>",
            "<ol>",
            "{{~ for step in page.steps ~}}",
            "<li class=\"step {{ step.kind }}\"><span class=\"what\">{{ step.words }}</span> <span class=\"detail\">{{ "
                + "step.detail }}</span> <time datetime=\"{{ step.iso }}\">{{ step.time }}</time></li>",
            "{{~ end ~}}",
            "</ol>",
            "</main>",
            "<p>{{ page.rest }}</p>",
            "</body>",
            "</html>",
            "",
        ]
    );

    private static readonly BareCaution Caution = new(
        "A pinch in the ankle & below",
        new("<p>Come back a little until the ankle is free of it, and stay there. If it comes again, do one set less today.</p>"),
        "Belongs to: Quiet ankle dorsiflexion stretch, Steady hip extension round"
    );

    private static readonly BareStep Step = new(
        "hold",
        "Hold: Quiet ankle dorsiflexion stretch, left leg",
        "Set 1 of 2",
        "PT45S",
        "45 seconds"
    );

    private readonly Template template = Template.Parse(Source);
    private readonly Escaping context = new();
    private readonly int head;
    private readonly int caution;
    private readonly int step;

    public BareTemplate()
    {
        head = Fill(View(0, 0, 0)).Length;
        caution = Fill(View(1, 0, 0)).Length - head;
        step = Fill(View(0, 1, 0)).Length - head;
    }

    /// <summary>The view of a page like that one.</summary>
    public BareView Like(string page)
    {
        var steps = page.AsSpan().Count("<time ");
        var left = page.Length - head - (steps * step);
        while (left < 0)
            (steps, left) = (steps - 1, left + step);
        return View(left / caution, steps, left % caution);
    }

    public string Fill(BareView view)
    {
        context.PushGlobal(new ScriptObject { ["page"] = view });
        var page = template.Render(context);
        context.PopGlobal();
        return page;
    }

    private static BareView View(int cautions, int steps, int rest) =>
        new(
            "en",
            "Ankles and hips",
            [.. Enumerable.Repeat(Caution, cautions)],
            [.. Enumerable.Repeat(Step, steps)],
            new string('x', rest)
        );

    private sealed class Escaping : TemplateContext
    {
        public Escaping() => (StrictVariables, LoopLimit) = (true, 100_000);

        public override TemplateContext Write(SourceSpan span, object? textAsObject)
        {
            if (textAsObject is BareHtml html)
                return Write(html.Markup);
            if (textAsObject is not null)
                Write(WebUtility.HtmlEncode(ObjectToString(textAsObject) ?? ""));
            return this;
        }
    }
}

internal sealed record BareView(
    string Language,
    string Title,
    IReadOnlyList<BareCaution> Cautions,
    IReadOnlyList<BareStep> Steps,
    string Rest
);

internal sealed record BareCaution(string Title, BareHtml Body, string Exercises);

internal sealed record BareHtml(string Markup);

internal sealed record BareStep(string Kind, string Words, string Detail, string Iso, string Time);
