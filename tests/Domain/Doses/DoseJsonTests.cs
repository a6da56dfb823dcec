using System.Text.Json;
using Gradus.CommandLine;

namespace Gradus.Tests.Domain;

/// <summary>Worked out by hand after dose-line.md, JSON.</summary>
public sealed class DoseJsonTests
{
    private const string Raises = """
        {
          "low": {
            "seconds": 21,
            "about": false,
            "stretchSeconds": 0,
            "contractionSeconds": 16,
            "effortSeconds": 12,
            "reps": 2,
            "steps": [
              {
                "kind": "raise",
                "side": null,
                "seconds": 8,
                "effort": 75
              },
              {
                "kind": "pause",
                "side": null,
                "seconds": 5,
                "effort": null
              },
              {
                "kind": "raise",
                "side": null,
                "seconds": 8,
                "effort": 75
              }
            ]
          },
          "high": {
            "seconds": 21,
            "about": false,
            "stretchSeconds": 0,
            "contractionSeconds": 16,
            "effortSeconds": 12,
            "reps": 2,
            "steps": [
              {
                "kind": "raise",
                "side": null,
                "seconds": 8,
                "effort": 75
              },
              {
                "kind": "pause",
                "side": null,
                "seconds": 5,
                "effort": null
              },
              {
                "kind": "raise",
                "side": null,
                "seconds": 8,
                "effort": 75
              }
            ]
          }
        }
        """;

    [Fact]
    public void A_settled_dose_has_two_equal_ends_with_their_steps_laid_out_line_by_line() =>
        Assert.Equal(Raises, Write("1 x 2 x raise 8 s at 75%, pause 5 s"));

    [Theory]
    [InlineData(
        "1-2 x hold 30-60 s, rest 20 s, alternate sides",
        """
            {"low":{"seconds":70,"about":false,"stretchSeconds":60,"contractionSeconds":0,"effortSeconds":0,"reps":0,
              "steps":[
                {"kind":"hold","side":"first","seconds":30,"effort":null},
                {"kind":"switch","side":"second","seconds":10,"effort":null},
                {"kind":"hold","side":"second","seconds":30,"effort":null}]},
            "high":{"seconds":280,"about":false,"stretchSeconds":240,"contractionSeconds":0,"effortSeconds":0,"reps":0,
              "steps":[
                {"kind":"hold","side":"first","seconds":60,"effort":null},
                {"kind":"switch","side":"second","seconds":10,"effort":null},
                {"kind":"hold","side":"second","seconds":60,"effort":null},
                {"kind":"rest","side":"first","seconds":20,"effort":null},
                {"kind":"hold","side":"first","seconds":60,"effort":null},
                {"kind":"switch","side":"second","seconds":10,"effort":null},
                {"kind":"hold","side":"second","seconds":60,"effort":null}]}}
            """
    )]
    [InlineData(
        "press 4-8 s at 10 to 15% in 4 steps",
        """
            {"low":{"seconds":4,"about":false,"stretchSeconds":0,"contractionSeconds":4,"effortSeconds":0.5,"reps":0,
              "steps":[
                {"kind":"press","side":null,"seconds":1,"effort":10},
                {"kind":"press","side":null,"seconds":1,"effort":11.67},
                {"kind":"press","side":null,"seconds":1,"effort":13.33},
                {"kind":"press","side":null,"seconds":1,"effort":15}]},
            "high":{"seconds":8,"about":false,"stretchSeconds":0,"contractionSeconds":8,"effortSeconds":1,"reps":0,
              "steps":[
                {"kind":"press","side":null,"seconds":2,"effort":10},
                {"kind":"press","side":null,"seconds":2,"effort":11.67},
                {"kind":"press","side":null,"seconds":2,"effort":13.33},
                {"kind":"press","side":null,"seconds":2,"effort":15}]}}
            """
    )]
    public void Every_number_is_the_one_worked_out_by_hand(string line, string json) =>
        Assert.Equal(Compact(json), Compact(Write(line)));

    [Theory]
    [InlineData("press 3 s at 11 to 14% in 3 steps", "0.38")]
    [InlineData("press 1 s at 5%", "0.05")]
    [InlineData("2 x press 10 s at 50%, both sides", "20")]
    [InlineData("10 x press 10 s at 100%", "100")]
    public void Effort_seconds_are_rounded_to_two_places_half_up_and_have_no_zeros_at_the_end(string line, string shown) =>
        Assert.Contains($"\"effortSeconds\": {shown},", Write(line), StringComparison.Ordinal);

    [Fact]
    public void Weeks_show_how_the_dose_grows() =>
        Assert.EndsWith(
            """
              "weeks": [
                {
                  "week": 1,
                  "dose": "1 x move 6 reps, each side",
                  "seconds": 58,
                  "about": true,
                  "stretchSeconds": 0,
                  "contractionSeconds": 0,
                  "effortSeconds": 0,
                  "reps": 12,
                  "lighter": false,
                  "ratio": null
                },
                {
                  "week": 2,
                  "dose": "1 x move 7 reps, each side",
                  "seconds": 66,
                  "about": true,
                  "stretchSeconds": 0,
                  "contractionSeconds": 0,
                  "effortSeconds": 0,
                  "reps": 14,
                  "lighter": false,
                  "ratio": 1.17
                },
                {
                  "week": 3,
                  "dose": "1 x move 8 reps, each side",
                  "seconds": 74,
                  "about": true,
                  "stretchSeconds": 0,
                  "contractionSeconds": 0,
                  "effortSeconds": 0,
                  "reps": 16,
                  "lighter": false,
                  "ratio": 1.14
                }
              ],
              "notes": []
            }
            """,
            Write("1 x move 6-8 reps, each side", 3),
            StringComparison.Ordinal
        );

    [Fact]
    public void Reps_without_a_tempo_are_about_and_both_sides_count_them_twice()
    {
        using var json = JsonDocument.Parse(Write("2 x move 8 reps, both sides"));
        var low = json.RootElement.GetProperty("low");
        Assert.True(low.GetProperty("about").GetBoolean());
        Assert.Equal(64, low.GetProperty("seconds").GetInt32());
        Assert.Equal(32, low.GetProperty("reps").GetInt32());
        Assert.Equal(JsonValueKind.Null, low.GetProperty("steps")[0].GetProperty("side").ValueKind);
    }

    [Fact]
    public void Text_with_quotes_and_letters_of_other_alphabets_stays_readable_and_valid()
    {
        using var json = JsonDocument.Parse(Write("2 x move 8 reps, load \"grüne\" <Hantel> \\ 5 kg", 1));
        Assert.Equal(
            "2 x move 8 reps, load \"grüne\" <Hantel> \\ 5 kg",
            json.RootElement.GetProperty("weeks")[0].GetProperty("dose").GetString()
        );
    }

    [Fact]
    public void Lines_end_as_on_every_machine_and_generated_doses_give_valid_json_with_the_same_seconds()
    {
        foreach (var line in GeneratedLines.Take(300, seed: 3))
        {
            var text = Write(line.Text, 3);
            Assert.DoesNotContain('\r', text);
            using var json = JsonDocument.Parse(text);
            foreach (var end in new[] { "low", "high" })
            {
                var dose = json.RootElement.GetProperty(end);
                Assert.Equal(
                    dose.GetProperty("seconds").GetInt32(),
                    dose.GetProperty("steps").EnumerateArray().Sum(s => s.GetProperty("seconds").GetInt32())
                );
            }

            var weeks = json.RootElement.GetProperty("weeks").EnumerateArray().ToArray();
            Assert.Equal([1, 2, 3], weeks.Select(w => w.GetProperty("week").GetInt32()));
            Assert.All(weeks, w =>
                Assert.Equal(w.GetProperty("seconds").GetInt32(), DoseOf.Seconds(w.GetProperty("dose").GetString()!))
            );
        }
    }

    private static string Write(string line, int? weeks = null) =>
        DoseJson.Write(DoseOf.Line(line), DoseOf.Usual, weeks is { } last ? new(last, []) : null);

    private static string Compact(string json)
    {
        using var document = JsonDocument.Parse(json);
        return JsonSerializer.Serialize(document);
    }
}
