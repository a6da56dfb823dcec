using System.Text;

namespace Gradus.Tests.Reading;

/// <summary>One to four small accidents to the bytes of one file.</summary>
internal static class Mutation
{
    private static readonly string[] Scraps =
    [
        "---\n",
        "[",
        "]",
        "{",
        "}",
        ": ",
        ":",
        "- ",
        "\n",
        "\n  ",
        "\t",
        " #",
        "\"",
        "'",
        "&a ",
        "*a",
        "!!x ",
        "|",
        ">",
        "%YAML",
        "?",
        ",",
        "\0",
        "\r",
        "é",
        "\uFEFF",
        "\u2028",
        "```",
        "](",
        "![",
        "<b>",
        "<!--",
        "\\",
        "\\0",
        "999999999999",
        "-1",
        "1e9",
        "{hold}",
        "> > > ",
        "&#1;",
        "yes, left",
        "each side",
        "0x10",
        "٣",
    ];

    public static byte[] Of(byte[] file, Chance chance)
    {
        var bytes = file.ToList();
        for (var accidents = 1 + chance.Below(4); accidents > 0; accidents--)
            Happen(bytes, chance);
        return [.. bytes];
    }

    /// <summary>Mostly a character that a keyboard has.</summary>
    private static byte Byte(Chance chance) => (byte)(chance.Below(8) == 0 ? chance.Below(256) : ' ' + chance.Below(95));

    private static void Happen(List<byte> bytes, Chance chance)
    {
        var at = chance.Below(bytes.Count + 1);
        var length = chance.Below(Math.Min(40, bytes.Count - at) + 1);
        switch (chance.Below(7))
        {
            case 0 when at < bytes.Count:
                bytes[at] = Byte(chance);
                break;
            case 1:
                bytes.Insert(at, Byte(chance));
                break;
            case 2:
                bytes.RemoveRange(at, length);
                break;
            case 3:
                bytes.InsertRange(chance.Below(bytes.Count + 1), bytes.GetRange(at, length));
                break;
            case 4 when chance.Below(6) == 0:
                bytes.RemoveRange(at, bytes.Count - at);
                break;
            default:
                bytes.InsertRange(at, Encoding.UTF8.GetBytes(chance.Of(Scraps)));
                break;
        }
    }
}
