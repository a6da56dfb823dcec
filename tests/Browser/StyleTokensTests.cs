using System.Text.Json;
using Gradus.Auditing;
using Gradus.Tests.Auditing;
using Gradus.Tests.House;

namespace Gradus.Tests.Browser;

/// <summary>Where a stylesheet is cut held against npm css-tree: the theme's files, the tables of styles, and mutated
/// sheets.</summary>
public sealed class StyleTokensTests(ITestOutputHelper output)
{
    private static readonly int Mutants = LongProof.Cases(40_000);

    private static readonly string[] Signs =
    [
        "{",
        "}",
        "(",
        ")",
        "[",
        "]",
        "\"",
        "'",
        "\\",
        "\n",
        "\r\n",
        "\f",
        "/*",
        "*/",
        "url(",
        "URL( ",
        "<!--",
        "-->",
        "@",
        "#",
        "!",
        ";",
        ":",
        ",",
        "-",
        "--",
        "+",
        ".",
        "e",
        "1",
        "%",
        "\\69 ",
        "\\000041x",
        "é",
        "😀",
        "U+2?",
        "!important",
        "\u0001",
        "\u007f",
    ];

    private static readonly Dictionary<string, CssKind> Kinds = new(StringComparer.Ordinal)
    {
        ["ident-token"] = CssKind.Ident,
        ["function-token"] = CssKind.Function,
        ["at-keyword-token"] = CssKind.AtKeyword,
        ["hash-token"] = CssKind.Hash,
        ["string-token"] = CssKind.Text,
        ["bad-string-token"] = CssKind.BadText,
        ["url-token"] = CssKind.Url,
        ["bad-url-token"] = CssKind.BadUrl,
        ["delim-token"] = CssKind.Delim,
        ["number-token"] = CssKind.Number,
        ["percentage-token"] = CssKind.Percentage,
        ["dimension-token"] = CssKind.Dimension,
        ["whitespace-token"] = CssKind.Blank,
        ["CDO-token"] = CssKind.Cdo,
        ["CDC-token"] = CssKind.Cdc,
        ["colon-token"] = CssKind.Colon,
        ["semicolon-token"] = CssKind.Semicolon,
        ["comma-token"] = CssKind.Comma,
        ["[-token"] = CssKind.OpenSquare,
        ["]-token"] = CssKind.CloseSquare,
        ["(-token"] = CssKind.OpenRound,
        [")-token"] = CssKind.CloseRound,
        ["{-token"] = CssKind.OpenCurly,
        ["}-token"] = CssKind.CloseCurly,
        ["comment-token"] = CssKind.Comment,
    };

    [Fact]
    public async Task A_sheet_is_cut_where_another_reader_cuts_it()
    {
        string[] whole =
        [
            .. Repository.Files("themes", ".css").Select(File.ReadAllText),
            .. StyleTable.Read("breaks.txt").Select(r => r.Line),
            .. StyleTable.Read("former-faults.txt").Select(r => r.Line),
        ];
        string[] sheets = [.. whole, .. Mutated(whole)];
        var theirs = await Node.Ask<string[], JsonElement[][][]>("cut-styles.mjs", sheets);
        var apart = new List<string>();
        var kinds = new HashSet<CssKind>();
        foreach (var (css, its) in sheets.Zip(theirs))
        {
            CssToken[] ours = [.. CssTokens.Of(css)];
            kinds.UnionWith(ours.Select(t => t.Kind));
            if (!Joined(ours, css).SequenceEqual(Joined([.. its.Select(Token)], css)))
                apart.Add(css);
        }

        output.WriteLine($"{sheets.Length} sheets, {kinds.Count} kinds of tokens, {apart.Count} cut otherwise.");
        Assert.Empty(apart.Take(3));
        Assert.Equal(Kinds.Count, kinds.Count);
    }

    private static CssToken Token(JsonElement[] token) =>
        new(Kinds[token[0].GetString() ?? ""], token[1].GetInt32(), token[2].GetInt32());

    /// <summary>css-tree counts the end of the line to a text that it cuts short; the specification leaves it where it is (CSS
    /// Syntax 3, 4.3.5). So blanks behind such a text belong to nobody here.</summary>
    private static IEnumerable<CssToken> Joined(CssToken[] tokens, string css)
    {
        for (var i = 0; i < tokens.Length; i++)
        {
            var bad = tokens[i].Kind == CssKind.BadText;
            if (tokens[i].Kind == CssKind.Blank && i > 0 && tokens[i - 1].Kind == CssKind.BadText)
                continue;
            yield return bad ? tokens[i] with { Until = tokens[i].From + tokens[i].In(css).TrimEnd("\n\r\f").Length } : tokens[i];
        }
    }

    /// <summary>Pieces of the sheets with signs put in, taken out and doubled, the same on every machine.</summary>
    private static IEnumerable<string> Mutated(string[] whole)
    {
        var state = 20_261_129u;
        for (var i = 0; i < Mutants; i++)
        {
            var css = whole[Next(whole.Length)];
            var from = Next(css.Length);
            css = css.Substring(from, Math.Min(css.Length - from, 20 + Next(180)));
            for (var change = Next(5); change >= 0 && css.Length > 0; change--)
            {
                var at = Next(css.Length);
                css = Next(3) switch
                {
                    0 => css.Remove(at, 1),
                    1 => css.Insert(at, css.Substring(at, Math.Min(css.Length - at, 1 + Next(4)))),
                    _ => css.Insert(at, Signs[Next(Signs.Length)]),
                };
            }

            yield return new(css.EnumerateRunes().SelectMany(r => r.ToString()).ToArray());
        }

        // Numerical Recipes' generator: the same sheets on every machine.
        int Next(int below)
        {
            state = unchecked((state * 1_664_525u) + 1_013_904_223u);
            return (int)((state >> 8) % (uint)below);
        }
    }
}
