using System.Text.Json.Nodes;
using static Gradus.Tests.Browser.GuideScripts;

namespace Gradus.Tests.Browser;

/// <summary>How long a session took: from start to end, pauses of more than five minutes taken out, as session load is reckoned
/// (Foster 1998, Med Sci Sports Exerc 30:1164-8, takes the duration of the training; five minutes: common practice, no
/// source).</summary>
public sealed class GuideWatchTests
{
    [Theory]
    [InlineData("[]", 17.6, "17.5")]
    [InlineData("[[true, 5], [false, 9]]", 20, "20")]
    [InlineData("[[true, 5], [false, 10]]", 20, "20")]
    [InlineData("[[true, 5], [false, 15]]", 20, "10")]
    [InlineData("[[true, 5], [true, 7], [false, 15]]", 20, "10")]
    [InlineData("[[true, 12]]", 30, "12")]
    [InlineData("[[true, 2], [false, 12], [true, 14], [false, 40]]", 41, "5")]
    public async Task Long_pauses_are_taken_out(string still, double end, string minutes) => Assert.Equal(minutes, (
                await Ask<double>([
                    new JsonObject
                    {
                        ["kind"] = "watch",
                        ["still"] = JsonNode.Parse(still),
                        ["end"] = end,
                    },
                ])
            )[0].ToString(System.Globalization.CultureInfo.InvariantCulture));
}
