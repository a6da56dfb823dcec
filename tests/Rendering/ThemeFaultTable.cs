namespace Gradus.Tests.Rendering;

/// <summary>Themes with a mistake, or worse, and what is said of them.</summary>
public static class ThemeFaultTable
{
    private const string Usual =
        "Mend the template there; its page in the documentation lists every name that a template may use.";
    private const string Names = "The page of this rule lists every name that a template may use.";

    /// <summary>A row is a template and what is written in it (<c>⏎</c> is the end of a line), then the place, the sentence and
    /// the remedy; rows stand between empty lines.</summary>
    public static TheoryData<string> Mistakes =>
        Rows(
            $$$"""
            index.html: <h1>{{ home.title }}</h1>⏎<p>{{ sesion }}</p>
            index.html:2:7
            There is no 'sesion' here.
            {{{Names}}}

            index.html: <p>{{ hoem.title }}</p>
            index.html:1:7
            There is no 'hoem' here.
            Did you mean 'home'?

            index.html: <p>{{ home.titel }}</p>
            index.html:1:12
            There is no 'titel' here.
            Did you mean 'title'?

            session.html: <ol>{{ for step in session.steps }}{{ end }}</ol>
            session.html:1:28
            There is no 'steps' here.
            {{{Names}}}

            index.html: {{ words.before_you_begin }}
            index.html:1:10
            There is no 'before_you_begin' here.
            Did you mean 'before_you_start'?

            index.html: {{ include 'caution.html' }}
            index.html:1:4
            There is no template 'caution.html'.
            Did you mean 'cautions.html'?

            index.html: {{ include }}
            index.html:1:11
            Invalid number of arguments `0` passed to `include` while expecting `1` arguments
            {{{Usual}}}

            foot.html: </main>⏎  {{ site.foto }}
            foot.html:2:11
            There is no 'foto' here.
            {{{Names}}}

            foot.html: </main>⏎{{ include 'legend.html' }}
            foot.html:2:4
            There is no template 'legend.html'.
            Write a file with that name; templates end in .html and lie at the top of the theme.

            foot.html: </main>⏎<p>{{ if }}</p>
            foot.html:2:10
            Error while parsing if statement: Expecting <expression> instead of `}}` in: if <expression> ... end|else|else if
            {{{Usual}}}

            index.html: {{ for s in home.sessions }}⏎<p>{{ s.name }}</p>
            index.html:2:16
            Error while parsing for statement: The <end> statement was not found in: for <variable> in <expression> ... end
            {{{Usual}}}

            index.html: <p>⏎{{ end }}
            index.html:2:6
            Error while parsing ScriptPage: Found <end> statement without a corresponding beginning of a block in: ...
            {{{Usual}}}

            index.html: <h1>{{ home }}</h1>
            index.html:1:8
            This is no text but several things together.
            Name one of its parts, or go through them with 'for'.

            index.html: <h1>x</h1>⏎{{ home.sessions }}
            index.html:2:4
            This is no text but several things together.
            Name one of its parts, or go through them with 'for'.

            index.html: {{ home.sessions[7].name }}
            index.html:1:18
            This list has no such place.
            {{{Usual}}}

            index.html: {{ site.name = 'Nobody' }}
            index.html:1:9
            Cannot set a value for the readonly member: site.name
            {{{Usual}}}

            index.html: {{ site = 'Nobody' }}
            index.html:1:4
            Cannot set the readonly variable `site`
            {{{Usual}}}

            index.html: {{ words.home = 'Nowhere' }}
            index.html:1:10
            Cannot set a value for the readonly member: words.home
            {{{Usual}}}
            """
        );

    public static TheoryData<string> Endless =>
        Rows(
            $$$"""
            index.html: <p>⏎{{ while true }}{{ end }}
            index.html:2:4
            This page is not finished after half a million steps; perhaps a loop never ends.
            {{{Usual}}}

            index.html: {{ for i in 1..900 }}{{ for j in 1..900 }}{{ for k in 1..900 }}x{{ end }}{{ end }}{{ end }}
            index.html:1:55
            This page is not finished after half a million steps; perhaps a loop never ends.
            {{{Usual}}}

            index.html: {{ for i in 1..9000000000 }}{{ end }}
            index.html:1:14
            This page is not finished after half a million steps; perhaps a loop never ends.
            {{{Usual}}}

            index.html: {{ func f(n); if n > 0; f(n - 1); f(n - 1); f(n - 1); end; end }}{{ f 18 }}
            index.html:1:18
            This page is not finished after half a million steps; perhaps a loop never ends.
            {{{Usual}}}

            cautions.html: <section>{{ include 'cautions.html' }}</section>
            cautions.html:1:13
            Templates include each other here more than 20 deep; perhaps one includes itself.
            {{{Usual}}}

            index.html: {{ func f; f; end }}{{ f }}
            index.html:1:12
            Templates include each other here more than 20 deep; perhaps one includes itself.
            {{{Usual}}}

            index.html: {{ for i in 1..100000 }}{{ home.letter }}{{ end }}
            index.html:1:23
            This page is longer than four million characters.
            {{{Usual}}}

            index.html: {{ x = 'a'; while true; x = x + x; end }}
            index.html:1:29
            A text that is put together here is longer than half a million characters.
            {{{Usual}}}

            index.html: {{ x = 'a' * 500000; while true; y = x + x; end }}
            index.html:1:40
            This page is not finished after half a million steps; perhaps a loop never ends.
            {{{Usual}}}

            index.html: {{ x = [1, 2] * 100000000 }}
            index.html:1:15
            This page is not finished after half a million steps; perhaps a loop never ends.
            {{{Usual}}}

            index.html: {{ x = 3; while true; x = x * x; end }}
            index.html:1:23
            A number here has more than 18 digits.
            {{{Usual}}}
            """
        );

    /// <summary>Ways to the machine, to the day, to chance, and to files that are no part of the theme.</summary>
    public static TheoryData<string> WaysOut =>
        new([
            "date.now",
            "date",
            "math.random 1 10",
            "math.uuid",
            "object.eval '1 + 1'",
            "object.eval_template 'x'",
            "object.typeof site",
            "regex.match 'a' 'a'",
            "string.upcase 'a'",
            "array.size home.sessions",
            "html.strip 'a'",
            "timespan.zero",
            "include_join ['foot.html'] ','",
            "empty",
            "'a' | string.append 'b'",
            "site.get_type",
            "site.GetType",
            "site.equality_contract",
            "site.to_string",
            "home.sessions.get_type",
            "home.title.get_type",
            "home.title.length",
            "home.start.iso.get_type",
            "words.get_type",
            "this.plan",
            "plan",
            "practice",
            "@include",
            "this",
            "include '../../content/practice.md'",
            "include '/etc/passwd'",
            "include 'look.css'",
            "include 'README.md'",
            "include 'C:\\\\windows\\\\win.ini'",
            "include 'file:///etc/passwd'",
        ]);

    private static TheoryData<string> Rows(string table) => new(table.Split("\n\n"));
}
