using System.Reflection;
using System.Runtime.Loader;

namespace Gradus.Tests.Mutants;

/// <summary>One test, or one row of one, that can be run again and again.</summary>
/// <param name="Class">Name of its class.</param>
/// <param name="Name">As somebody would look for it: class, method and what it is given.</param>
internal sealed record JudgeCase(string Class, string Name, Action Run)
{
    public string Namespace { get; init; } = "";

    /// <summary>All tests of the classes in some namespaces, read here because xunit runs an assembly only once. Of its means
    /// these tests use facts, theories with rows, and the output.</summary>
    /// <param name="isWanted">Whether the rows of a class are made at all: some take their time.</param>
    public static IEnumerable<JudgeCase> In(
        AssemblyLoadContext context,
        Func<string, bool> isWanted,
        params string[] namespaces
    ) =>
        from type in context.LoadFromAssemblyName(new("Gradus.Tests")).GetTypes()
        where type is { IsPublic: true, IsAbstract: false } && namespaces.Contains(type.Namespace) && isWanted(type.Name)
        orderby type.FullName
        from method in type.GetMethods().OrderBy(m => m.Name, StringComparer.Ordinal)
        let fact = method.GetCustomAttribute<FactAttribute>()
        where fact is { Skip: null }
        from row in fact is TheoryAttribute
            ? RowsOf(method)
            :
            [
                [],
            ]
        select new JudgeCase(type.Name, $"{type.Name}.{method.Name}({string.Join(", ", row)})", () => Once(type, method, row))
        {
            Namespace = type.Namespace ?? "",
        };

    private static IEnumerable<object?[]> RowsOf(MethodInfo method) =>
        method
            .GetCustomAttributes<InlineDataAttribute>()
            .Select(row => row.Data ?? [])
            .Concat(method.GetCustomAttributes<MemberDataAttribute>().SelectMany(source => RowsOf(method, source)));

    private static IEnumerable<object?[]> RowsOf(MethodInfo method, MemberDataAttribute source)
    {
        const BindingFlags Any = BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.GetProperty;
        var owner = source.MemberType ?? method.DeclaringType;
        var rows = owner?.InvokeMember(
            source.MemberName,
            Any | BindingFlags.GetField | BindingFlags.InvokeMethod,
            binder: null,
            target: null,
            source.Arguments,
            System.Globalization.CultureInfo.InvariantCulture
        );
        return ((System.Collections.IEnumerable)(rows ?? Array.Empty<object>()))
            .Cast<object?>()
            .Select(row => row is ITheoryDataRow told ? told.GetData() : row as object?[] ?? [row]);
    }

    private static void Once(Type type, MethodInfo method, object?[] row)
    {
        try
        {
            var silent = type.GetConstructors().Single().GetParameters().Select(_ => (object?)new Silence()).ToArray();
            var instance = method.IsStatic ? null : Activator.CreateInstance(type, silent);
            var missing = method.GetParameters().Skip(row.Length).Select(p => p.DefaultValue);
            if (method.Invoke(instance, [.. row, .. missing]) is Task task)
                task.GetAwaiter().GetResult();
            (instance as IDisposable)?.Dispose();
        }
        catch (TargetInvocationException e) when (e.InnerException is { } inner)
        {
            throw inner;
        }
    }

    /// <summary>Nobody reads what a test says about a mutant.</summary>
    private sealed class Silence : ITestOutputHelper
    {
        public string Output => "";

        public void Write(string message) { }

        public void Write(string format, params object[] args) { }

        public void WriteLine(string message) { }

        public void WriteLine(string format, params object[] args) { }
    }
}
