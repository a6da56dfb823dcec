using Gradus.Tests.House;

namespace Gradus.Tests.Browser;

/// <summary>ESLint on the theme's scripts, with its recommended rules and a few more.</summary>
public sealed class ScriptLintTests
{
    internal sealed record Script(string Name, string Text);

    private static IEnumerable<Script> Scripts() =>
        Repository
            .Files("themes", ".js")
            .Order(StringComparer.Ordinal)
            .Select(f => new Script(Path.GetFileName(f), File.ReadAllText(f)));

    [Fact]
    public async Task It_has_nothing_to_say_of_the_themes_scripts()
    {
        Assert.True(Scripts().Count() > 10);
        Assert.Empty(await Said(Scripts()));
    }

    [Theory]
    [InlineData("'use strict'; var old = 1; window.old = old;", "no-var")]
    [InlineData("'use strict'; if (window.a == 1) window.b = 2;", "eqeqeq")]
    [InlineData("'use strict'; window.a = nobodyKnows;", "no-undef")]
    [InlineData("'use strict'; const unused = 1;", "no-unused-vars")]
    public async Task It_would_say_so(string text, string rule) =>
        Assert.Contains(rule, Assert.Single(await Said([new("planted.js", text)])), StringComparison.Ordinal);

    private static Task<string[]> Said(IEnumerable<Script> scripts) =>
        Node.Ask<IEnumerable<Script>, string[]>("lint-scripts.mjs", scripts);
}
