using System.Reflection;
using Gradus.Domain;
using Gradus.Planning;
using Gradus.Trainings;

namespace Gradus.Tests.Planning;

/// <summary>A hash of a plan says that the same is shown only where nothing that is shown can change behind its back: every kind
/// of value in a plan writes down all that it holds.</summary>
public sealed class PlanHashTests(ITestOutputHelper output)
{
    private const BindingFlags Own =
        BindingFlags.Instance | BindingFlags.NonPublic | BindingFlags.Public | BindingFlags.DeclaredOnly;

    /// <summary>Those that write themselves in a way of their own, which tests of theirs hold to say all: names by their text,
    /// places and numbers as they are read, doses as the dose line, catalogues by a hash.</summary>
    private static readonly HashSet<Type> OnTheirOwn =
    [
        typeof(ClientId),
        typeof(ExerciseId),
        typeof(CautionId),
        typeof(ConditionId),
        typeof(Location),
        typeof(Dose),
        typeof(SettledDose),
        typeof(Count),
        typeof(Seconds),
        typeof(Tempo),
        typeof(SideName.Role),
        typeof(SideName.Body),
        typeof(Mention<SideTerm>),
        typeof(Mention<ExerciseId>),
        typeof(Words),
    ];

    private static readonly Type[] Plain =
    [
        typeof(string),
        typeof(decimal),
        typeof(DateOnly),
        typeof(DateTime),
        typeof(TimeOnly),
        // Of pictures and clips, whose bytes are counted beside what they write.
        typeof(ReadOnlyMemory<byte>),
    ];

    [Fact]
    public void Every_kind_of_value_in_a_plan_writes_all_that_it_holds()
    {
        var (seen, faults) = Walk(typeof(Plan));
        output.WriteLine($"{seen} kinds of values.");
        Assert.True(seen > 100);
        Assert.Empty(faults);
    }

    /// <summary>What would be missed: a class that writes its name, a part that nobody outside sees, a list of another
    /// kind.</summary>
    [Theory]
    [InlineData(typeof(HoldsClass), "Silent")]
    [InlineData(typeof(HoldsField), "hidden")]
    [InlineData(typeof(HoldsList), "List")]
    public void A_kind_that_does_not_is_seen(Type kind, string named) =>
        Assert.Contains(Walk(kind).Faults, f => f.Contains(named, StringComparison.Ordinal));

    [Fact]
    public void Texts_that_read_alike_in_a_row_are_told_apart()
    {
        Assert.NotEqual(((Series<string>)["a, b"]).ToString(), ((Series<string>)["a", "b"]).ToString());
        Assert.NotEqual(((Series<string>)["a, 1:b"]).ToString(), ((Series<string>)["a", "b"]).ToString());
        Assert.NotEqual(((Series<string>)[]).ToString(), ((Series<string>)[""]).ToString());
    }

    [Fact]
    public void A_plan_has_one_hash_and_what_is_changed_in_it_another()
    {
        var plan = Example();
        var hash = plan.Hash();
        Assert.Equal(hash, Example().Hash());
        Assert.Equal(64, hash.Length);
        var picture = new Picture("a.png", [new(1, 1, new("pictures/a.webp", new byte[] { 1 }), null)]);
        var other = new Picture("a.png", [new(1, 1, new("pictures/a.webp", new byte[] { 2 }), null)]);
        Plan[] changed =
        [
            plan with
            {
                ClientName = plan.ClientName + " ",
            },
            plan with
            {
                Edition = plan.Edition + 1,
            },
            plan with
            {
                Sessions = [.. plan.Sessions.Reverse()],
            },
            plan with
            {
                Emergency = plan.Emergency with { Call = "0" },
            },
            plan with
            {
                Pictures = [picture],
            },
            plan with
            {
                Pictures = [other],
            },
        ];
        Assert.Equal(changed.Length + 1, changed.Select(p => p.Hash()).Append(hash).Distinct().Count());
    }

    private static Plan Example()
    {
        var practice = Reading.LittlePractice.Golden.Read();
        return Planned.For(practice, practice.Clients[0]);
    }

    private static (int Seen, List<string> Faults) Walk(Type from)
    {
        var all = new[] { typeof(Practice), typeof(Training), typeof(Plan) }.SelectMany(t => t.Assembly.GetTypes()).ToArray();
        var (seen, faults, open) = (new HashSet<Type>(), new List<string>(), new Stack<Type>([from]));
        while (open.TryPop(out var kind))
        {
            if (!seen.Add(kind) || kind.IsPrimitive || kind.IsEnum || Plain.Contains(kind) || OnTheirOwn.Contains(kind))
                continue;
            foreach (var argument in kind.IsGenericType ? kind.GetGenericArguments() : [])
                open.Push(argument);
            if (IsOf(kind, typeof(Series<>)) || IsOf(kind, typeof(Nullable<>)) || IsOf(kind, typeof(Aside<>)))
                continue;
            if (kind.Name.StartsWith("ValueTuple`", StringComparison.Ordinal))
                continue;
            if (kind.GetMethod("PrintMembers", Own) is null)
                faults.Add($"{kind} is no record.");
            if (
                !kind.IsAbstract
                && kind.GetMethod("ToString", Own)?.IsDefined(typeof(System.Runtime.CompilerServices.CompilerGeneratedAttribute))
                    != true
            )
                faults.Add($"{kind} writes itself in a way of its own.");
            foreach (var field in kind.GetFields(Own))
            {
                open.Push(field.FieldType);
                var property = field.Name is ['<', .. var rest]
                    ? kind.GetProperty(rest[..rest.IndexOf('>', StringComparison.Ordinal)])
                    : null;
                if (property?.GetMethod?.IsPublic != true && !field.IsPublic)
                    faults.Add($"{kind} does not write '{field.Name}'.");
            }

            if (kind.BaseType is { } basis && basis != typeof(object) && basis != typeof(ValueType))
                open.Push(basis);
            foreach (var derived in all.Where(t => t.BaseType == kind))
                open.Push(derived);
        }

        return (seen.Count, faults);
    }

    private static bool IsOf(Type kind, Type open) => kind.IsGenericType && kind.GetGenericTypeDefinition() == open;

    internal sealed class Silent(int number)
    {
        public int Number => number;
    }

    internal sealed record HoldsClass(Silent Inside);

    internal sealed record HoldsField(int Number)
    {
        private readonly int hidden = Number * 2;

        public int Twice() => hidden;
    }

    internal sealed record HoldsList(List<int> Numbers);
}
