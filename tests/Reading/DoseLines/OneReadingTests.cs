using Gradus.Domain;
using Gradus.Reading;

namespace Gradus.Tests.Reading;

/// <summary>A dose has one reading (dose-line.md): shown against a recogniser that is not told which way to go.</summary>
[Trait("Slow", "yes")]
public sealed class OneReadingTests(ITestOutputHelper output)
{
    private const int Lines = 4000;

    private static readonly Lazy<GeneratedLine[]> Generated = new(() => GeneratedLines.Take(Lines, seed: 20261207).ToArray());

    [Fact]
    public void Every_generated_line_has_exactly_one_meaning_and_is_read_as_that()
    {
        foreach (var line in Generated.Value)
        {
            var meanings = DoseGrammar.Meanings(line.Text);
            Assert.True(meanings.Count == 1, $"{line.Text} has {meanings.Count} meanings");
            Assert.Equal(meanings.Single(), DoseMeaning.Of(DoseOf.Line(line.Text)));
        }

        GeneratedLines.ShowSpread(Generated.Value, output);
    }

    [Fact]
    public void Without_the_rule_that_the_first_count_is_the_sets_the_recogniser_notices_two_meanings()
    {
        Assert.Equal(2, DoseGrammar.MeaningsWithoutTheRuleOfSets("3 x hold 30 s").Count);
        Assert.Single(DoseGrammar.Meanings("3 x hold 30 s"));
        var ambiguous = Generated.Value.Count(line => DoseGrammar.MeaningsWithoutTheRuleOfSets(line.Text).Count > 1);
        output.WriteLine($"{ambiguous} of {Lines} lines would have two meanings.");
        Assert.True(ambiguous > Lines / 10);
    }

    [Fact]
    public void What_is_printed_reads_back_to_the_same_dose_and_prints_the_same()
    {
        foreach (var line in Generated.Value)
        {
            var dose = DoseOf.Line(line.Text);
            var printed = DosePrinter.Print(dose);
            Assert.Equal(dose, DoseOf.Line(printed));
            Assert.Equal(printed, DosePrinter.Print(DoseOf.Line(printed)));
            Assert.Matches("^[0-9]", printed);
            foreach (var end in new[] { dose.Low(), dose.High() })
                Assert.Equal(end, DoseOf.Line(DosePrinter.Print(end)));
        }
    }

    [Fact]
    public void A_line_with_one_character_changed_is_read_where_it_is_lawful_and_otherwise_refused_at_a_place_within_it()
    {
        var dice = new Dice(77);
        var (read, refused, kinds) = (0, 0, new SortedDictionary<string, int>(StringComparer.Ordinal));
        foreach (var line in Generated.Value)
        {
            var (kind, text) = Mutated(line.Text, dice);
            var lawful = DoseGrammar.LawfulMeanings(text);
            var reading = DoseLine.Read(text, DoseSettings.Default);
            if (reading is DoseLineResult.Understood(var dose))
            {
                Assert.True(lawful.Count == 1, $"read, though the law gives {lawful.Count} meanings: {text}");
                Assert.Equal(lawful.Single(), DoseMeaning.Of(dose));
                read++;
            }
            else
            {
                var fault = ((DoseLineResult.Refused)reading).Fault;
                Assert.True(lawful.Count == 0, $"refused ({fault.Message}), though lawful: {text}");
                Assert.InRange(fault.Column, 0, text.Length);
                Assert.InRange(fault.Column + fault.Length, fault.Column + 1, Math.Max(text.Length, fault.Column + 1));
                Assert.All(new[] { fault.Message, fault.Help }, sentence =>
                    Assert.EndsWith(".", sentence, StringComparison.Ordinal)
                );
                refused++;
            }

            kinds[kind] = kinds.GetValueOrDefault(kind) + 1;
        }

        output.WriteLine($"{read} read, {refused} refused; {string.Join(", ", kinds.Select(k => $"{k.Key} {k.Value}"))}");
        Assert.True(read > 200 && refused > 1000 && kinds.Count == 4);
    }

    [Theory]
    [InlineData(1_000_000)]
    public void A_very_long_line_is_read_or_refused_without_delay(int length)
    {
        Assert.IsType<DoseLineResult.Refused>(DoseLine.Read(new string('x', length), DoseSettings.Default));
        Assert.IsType<DoseLineResult.Refused>(DoseLine.Read(new string('9', length), DoseSettings.Default));
        Assert.IsType<DoseLineResult.Refused>(DoseLine.Read(new string('(', length), DoseSettings.Default));
        Assert.IsType<DoseLineResult.Refused>(DoseLine.Read("hold 30 s" + new string(',', length), DoseSettings.Default));
        Assert.IsType<DoseLineResult.Refused>(
            DoseLine.Read($"hold {new string('9', length)}-{new string('9', length)} min", DoseSettings.Default)
        );
        var spaced = new string(' ', length);
        Assert.IsType<DoseLineResult.Understood>(
            DoseLine.Read($"{spaced}3{spaced}x{spaced}hold 30 s{spaced}", DoseSettings.Default)
        );
        var many = string.Join(" then ", Enumerable.Repeat("hold 1 s", 14_400));
        Assert.IsType<DoseLineResult.Understood>(DoseLine.Read($"({many})", DoseSettings.Default));
        Assert.IsType<DoseLineResult.Refused>(DoseLine.Read($"({many} then hold 1 s)", DoseSettings.Default));
    }

    private static (string Kind, string Text) Mutated(string line, Dice dice)
    {
        var at = dice.Between(0, line.Length - 1);
        var other = dice.Between(0, line.Length - 1);
        var c = dice.Pick(" 0123456789abcdefghijklmnopqrstuvwxyz×–-%(),.:\u0000\ud800".ToCharArray());
        return dice.Between(0, 3) switch
        {
            0 => ("deleted", line.Remove(at, 1)),
            1 => ("inserted", line.Insert(at, c.ToString())),
            2 => ("replaced", line.Remove(at, 1).Insert(at, c.ToString())),
            _ => ("swapped", Swapped(line, at, other)),
        };
    }

    private static string Swapped(string line, int one, int other)
    {
        var letters = line.ToCharArray();
        (letters[one], letters[other]) = (letters[other], letters[one]);
        return new(letters);
    }
}
