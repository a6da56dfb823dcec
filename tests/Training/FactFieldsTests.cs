using System.Collections;
using System.Reflection;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Tests.Trainings;

/// <summary>Native compilation keeps the fields of those types alone that are named: each type of which a training can be made
/// must be.</summary>
public sealed class FactFieldsTests(ITestOutputHelper output)
{
    private const BindingFlags Declared =
        BindingFlags.Instance | BindingFlags.NonPublic | BindingFlags.Public | BindingFlags.DeclaredOnly;

    private static readonly Type[] House = [.. typeof(Training).Assembly.GetTypes(), .. typeof(Practice).Assembly.GetTypes()];

    private static readonly MethodInfo DeclaredBy = typeof(Training)
        .Assembly.GetType("Gradus.Trainings.FactFields", throwOnError: true)!
        .GetMethod("DeclaredBy")!;

    [Fact]
    public void Every_type_of_which_a_training_can_be_made_is_named()
    {
        var types = Reached(typeof(Training));
        Assert.Empty(types.Where(t => Named(t)?.SequenceEqual(t.GetFields(Declared)) != true).Select(t => t.ToString()));
        Assert.True(types.Count > 90);
        output.WriteLine($"{types.Count} types, {types.Sum(t => t.GetFields(Declared).Length)} fields");
    }

    [Fact]
    public void A_type_that_is_not_named_would_be_found() => Assert.Contains(Reached(typeof(Practice)), t => Named(t) is null);

    private static FieldInfo[]? Named(Type type)
    {
        try
        {
            return (FieldInfo[])DeclaredBy.Invoke(null, [type])!;
        }
        catch (TargetInvocationException missing) when (missing.InnerException is NotSupportedException)
        {
            return null;
        }
    }

    /// <summary>The types of the house that a value of this one may hold, with those they are derived from, and those that are
    /// derived from them.</summary>
    private static HashSet<Type> Reached(Type first)
    {
        var (reached, open) = (new HashSet<Type>(), new Queue<Type>([first]));
        while (open.TryDequeue(out var type))
        {
            if (type.IsGenericType && type.GetGenericTypeDefinition() == typeof(Aside<>))
                continue;
            if (type.IsGenericType || typeof(IEnumerable).IsAssignableFrom(type))
            {
                foreach (var held in type.GetGenericArguments())
                    open.Enqueue(held);
                continue;
            }

            if (!House.Contains(type) || type.IsEnum || !reached.Add(type))
                continue;
            var near = type.GetFields(Declared).Select(f => f.FieldType).Concat(House.Where(t => t.BaseType == type));
            foreach (var next in type.BaseType is { } above ? near.Append(above) : near)
                open.Enqueue(next);
        }

        return reached;
    }
}
