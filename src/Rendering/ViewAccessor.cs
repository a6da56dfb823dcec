using System.Collections.Concurrent;
using Scriban;
using Scriban.Parsing;
using Scriban.Runtime;

namespace Gradus.Rendering;

/// <summary>How templates read one kind of view, or a list: by name, a list by place too. Nothing is looked up while the program
/// runs, and nothing can be set.</summary>
internal sealed class ViewAccessor : IObjectAccessor
{
    private static readonly ConcurrentDictionary<Type, ViewAccessor> Kinds = new();

    private static readonly ViewAccessor List = new(
        new(StringComparer.Ordinal) { ["count"] = list => ((IReadOnlyList<object>)list).Count }
    );

    private readonly Dictionary<string, Func<object, object?>> parts;

    private ViewAccessor(Dictionary<string, Func<object, object?>> parts) => this.parts = parts;

    public bool HasIndexer => this == List;

    public Type? IndexType => HasIndexer ? typeof(int) : null;

    /// <param name="target">A view, or a list of views or texts.</param>
    public static ViewAccessor Of(object target) =>
        target is IReadOnlyList<object> ? List : Kinds.GetOrAdd(target.GetType(), OfKind);

    private static ViewAccessor OfKind(Type kind) =>
        new(
            (ViewParts.Default.GetTypeInfo(kind)?.Properties ?? []).ToDictionary(
                p => p.Name,
                p => p.Get ?? (_ => null),
                StringComparer.Ordinal
            )
        );

    public int GetMemberCount(TemplateContext context, SourceSpan span, object target) => parts.Count;

    public IEnumerable<string> GetMembers(TemplateContext context, SourceSpan span, object target) => parts.Keys;

    public bool HasMember(TemplateContext context, SourceSpan span, object target, string member) => parts.ContainsKey(member);

    public bool TryGetValue(TemplateContext context, SourceSpan span, object target, string member, out object? value)
    {
        var found = parts.TryGetValue(member, out var part);
        value = part?.Invoke(target);
        return found;
    }

    public bool TryGetItem(TemplateContext context, SourceSpan span, object target, object index, out object? value)
    {
        value =
            target is IReadOnlyList<object> list && index is int place && place >= 0 && place < list.Count
                ? list[place]
                : throw ThemeException.In(span, "This list has no such place.");
        return true;
    }

    public bool TrySetValue(TemplateContext context, SourceSpan span, object target, string member, object? value) => false;

    public bool TrySetItem(TemplateContext context, SourceSpan span, object target, object index, object? value) => false;
}
