using Gradus.Domain;

namespace Gradus.Tests.Auditing;

public sealed class LabelMissingTests
{
    public static readonly Series<PlantedFault> Faults =
    [
        Body("<img src='look.css'>"),
        Body("<svg role='img'></svg>"),
        Body("<input type='image' src='look.css'>"),
        Body("<map><area href='session-1.html'></map>"),
        Body("<a href='session-1.html'></a>"),
        Body("<a href='session-1.html'> <b> </b> </a>"),
        Body("<a href='session-1.html'><img src='look.css' alt=''></a>"),
        Body("<a href='session-1.html'><span aria-hidden='true'>x</span></a>"),
        Body("<button></button>"),
        Body("<button aria-label=' '></button>"),
        Body("<input type='button'>"),
        Body("<details open><summary></summary>x</details>"),
        Body("<div role='button'></div>"),
        Body("<input>"),
        Body("<input placeholder='x'>"),
        Body("<input type='checkbox'> x"),
        Body("<select><option>x</option></select>"),
        Body("<textarea>x</textarea>"),
        Body("<label for='b'>x</label><input id='a'>"),
        Body("<label><input></label>"),
        Body("<label for='a'></label><input id='a'>"),
        Body("<progress></progress>"),
        Body("<section role='region'>x</section>"),
        Body("<div role='dialog'>x</div>"),
        Body("<nav aria-label='a'>x</nav><nav>y</nav>"),
        Body("<section aria-labelledby='nowhere'>x</section>"),
        Body("<p id='a'></p><nav aria-labelledby='a'>x</nav>"),
    ];

    public static readonly Series<PlantedFault> Fine = new[]
    {
        "<img src='look.css' alt=''>",
        "<img src='look.css' alt='x'>",
        "<svg><title>x</title></svg>",
        "<a href='session-1.html'><img src='look.css' alt='x'></a>",
        "<a id='x'></a>",
        "<button aria-label='x'></button>",
        "<button title='x'></button>",
        "<button hidden></button>",
        "<div aria-hidden='true'><button></button></div>",
        "<template><input></template>",
        "<p id='a'>x</p><button aria-labelledby='a'></button>",
        "<input type='submit'>",
        "<input type='hidden'>",
        "<label>x <input></label>",
        "<label for='a'>x</label><input id='a'>",
        "<input aria-label='x'>",
        "<nav>x</nav>",
        "<nav aria-label='a'>x</nav><nav aria-label='b'>y</nav>",
        "<section>x</section>",
        "<img role='presentation' src='look.css'>",
        "<table role='none'></table>",
        "<div role='group'>x</div>",
    }
        .Select(html => Body(html) with { Rules = "" })
        .ToSeries();

    public static TheoryData<PlantedFault> All => new(Faults.Concat(Fine));

    [Theory]
    [MemberData(nameof(All))]
    public void It_is_found_in_whatever_a_screen_reader_stops_at(PlantedFault fault) => fault.MustBeFound();

    private static PlantedFault Body(string html) => new(html, "index.html", "</body>", html + "</body>", "label-missing");
}
