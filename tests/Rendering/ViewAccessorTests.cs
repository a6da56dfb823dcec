using System.Collections;
using System.Reflection;
using Gradus.Domain;
using Gradus.Rendering;
using Scriban.Runtime;

namespace Gradus.Tests.Rendering;

/// <summary>What templates read of a view without reflection, held against reflection.</summary>
public sealed class ViewAccessorTests(ITestOutputHelper output)
{
    private static readonly Type[] Views =
    [
        .. typeof(SiteRenderer).Assembly.GetTypes().Where(t => t.Name.EndsWith("View", StringComparison.Ordinal)),
        typeof(Html),
        typeof(KeyValuePair<string, object>),
    ];

    public static TheoryData<Type> Kinds => new(Views);

    private int made;

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Each_part_of_a_view_has_its_name_and_its_value(Type kind)
    {
        var view = Filled(kind);
        var accessor = ViewAccessor.Of(view);
        var parts = kind.GetProperties(BindingFlags.Instance | BindingFlags.Public);
        Assert.NotEmpty(parts);
        Assert.Equal(
            parts.Select(p => StandardMemberRenamer.Rename(p.Name)).Order(StringComparer.Ordinal),
            accessor.GetMembers(null!, default, view).Order(StringComparer.Ordinal)
        );
        Assert.Equal(parts.Length, accessor.GetMemberCount(null!, default, view));
        foreach (var part in parts)
        {
            var name = StandardMemberRenamer.Rename(part.Name);
            Assert.True(accessor.HasMember(null!, default, view, name));
            Assert.True(accessor.TryGetValue(null!, default, view, name, out var value));
            Assert.NotNull(value);
            Assert.Equal(part.GetValue(view), value);
            Assert.False(accessor.TrySetValue(null!, default, view, name, value));
        }

        Assert.False(accessor.TryGetValue(null!, default, view, "equality_contract", out var nothing));
        Assert.Null(nothing);
        output.WriteLine($"{kind.Name}: {parts.Length} parts");
    }

    /// <summary>A list of numbers would be no list of objects, and no template could count it.</summary>
    [Fact]
    public void Each_list_in_a_view_can_be_counted_and_read_by_place()
    {
        var lists = Views.SelectMany(v => v.GetProperties()).Select(p => p.PropertyType).Where(IsSeries).Distinct().ToArray();
        Assert.NotEmpty(lists);
        foreach (var list in lists.Select(Filled))
        {
            var accessor = ViewAccessor.Of(list);
            Assert.Equal(["count"], accessor.GetMembers(null!, default, list));
            Assert.True(accessor.TryGetValue(null!, default, list, "count", out var count));
            Assert.Equal(1, count);
            Assert.True(accessor.TryGetItem(null!, default, list, 0, out var first));
            Assert.Equal(((IEnumerable)list).Cast<object>().First(), first);
            Assert.False(accessor.TrySetItem(null!, default, list, 0, first!));
            Assert.Throws<ThemeException>(() => accessor.TryGetItem(null!, default, list, 1, out _));
            Assert.Throws<ThemeException>(() => accessor.TryGetItem(null!, default, list, -1, out _));
        }

        output.WriteLine($"{lists.Length} kinds of list");
    }

    [Fact]
    public void What_is_no_view_has_no_parts()
    {
        Assert.Empty(ViewAccessor.Of(PlainTheme.Plan).GetMembers(null!, default, PlainTheme.Plan));
        Assert.Empty(ViewAccessor.Of(typeof(string)).GetMembers(null!, default, typeof(string)));
    }

    private static bool IsSeries(Type type) => type.IsGenericType && type.GetGenericTypeDefinition() == typeof(Series<>);

    /// <summary>A view in which every part is there and no two texts are the same.</summary>
    private object Filled(Type type)
    {
        if (type == typeof(string) || type == typeof(object))
            return FormattableString.Invariant($"text {++made}");
        if (type == typeof(bool))
            return true;
        if (type == typeof(int))
            return ++made;
        if (IsSeries(type))
            return Listed(type.GetGenericArguments()[0]);
        var maker = type.GetConstructors(BindingFlags.Instance | BindingFlags.Public).Single(c => c.GetParameters().Length > 0);
        return maker.Invoke([.. maker.GetParameters().Select(p => Part(p.ParameterType, type))]);
    }

    /// <summary>A view that holds others of its own kind holds none here.</summary>
    private object Part(Type part, Type inside) =>
        IsSeries(part) && part.GetGenericArguments()[0] == inside ? part.GetField("Empty")!.GetValue(null)! : Filled(part);

    private object Listed(Type item)
    {
        var one = Array.CreateInstance(item, 1);
        one.SetValue(Filled(item), 0);
        return typeof(Series).GetMethod(nameof(Series.ToSeries))!.MakeGenericMethod(item).Invoke(null, [one])!;
    }
}
