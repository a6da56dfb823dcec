using System.Security.Cryptography;
using System.Text;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Tests.Trainings;

/// <summary>How a value is written before it is hashed: each kind in one way, so that two values never look the same.</summary>
public sealed class FingerprintTests
{
    private static readonly Func<object, string> Of = typeof(Training)
        .Assembly.GetType("Gradus.Trainings.Fingerprint", throwOnError: true)!
        .GetMethod("Of")!
        .CreateDelegate<Func<object, string>>();

    public static readonly TheoryData<object, string> Values = new()
    {
        { new object?[] { null }, "[-;];" },
        { "ab", "2:ab;" },
        { true, "True;" },
        { Side.Left, "Left;" },
        { new DateOnly(2027, 1, 4), "2027-01-04;" },
        { new DateTime(2027, 1, 4, 18, 30, 0), "2027-01-04T18:30:00.0000000;" },
        { new TimeOnly(18, 30), "18:30:00.0000000;" },
        { 1.50m, "1.5;" },
        { 3, "3;" },
        { 4L, "4;" },
        { new object[] { "a", new[] { 1, 2 }, "b" }, "[1:a;[1;2;];1:b;];" },
        { Aside.Of("x"), ";" },
        { new ExerciseId("sway"), "ExerciseId{<Text>k__BackingField=4:sway;};" },
        { new DayRules(1, 2, 3, 4), DayRulesText },
    };

    /// <summary>By the names of the fields, in whatever order the machine lists them.</summary>
    private const string DayRulesText =
        "DayRules{<DaysBackOneWeek>k__BackingField=1;<DaysBackToFirst>k__BackingField=2;<EaseOffAbove>k__BackingField=3;"
        + "<StopAbove>k__BackingField=4;};";

    [Theory, MemberData(nameof(Values))]
    public void Each_kind_is_written_in_one_way(object value, string text) =>
        Assert.Equal(Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text))), Of(value));

    [Fact]
    public void What_is_not_known_is_no_value()
    {
        Assert.Throws<NotSupportedException>(() => Of(new Version(1, 2)));
        Assert.NotEqual(Of(new Refusal.TooLong(new("sway"), 1)), Of(new Refusal.TooLong(new("sway"), 2)));
    }
}
