using System.Collections;
using System.Diagnostics.CodeAnalysis;
using System.Numerics;
using Gradus.Domain;
using Scriban;
using Scriban.Parsing;
using Scriban.Runtime;
using Scriban.Syntax;

namespace Gradus.Rendering;

/// <summary>One template filled with one view. It fails closed: an unknown name is an error, everything is escaped that is not
/// typed as HTML, and a page that never ends is given up. Of the functions that Scriban brings along there is none: some of them
/// know the day, draw lots, or read templates out of texts.</summary>
internal sealed class TemplateRun : TemplateContext
{
    /// <summary>More than the plain theme takes for a session of two years in which every week has a hundred steps of its own,
    /// and done within a second.</summary>
    private const int StepLimit = 500_000;

    /// <summary>In characters, of a whole page.</summary>
    private const int PageLimit = 4 * 1024 * 1024;

    /// <summary>In characters, of one text that a template puts together; no source file of a practice is longer.</summary>
    private const int TextLimit = 512 * 1024;

    private const int CharactersOfAStep = 256;
    private const int NestingLimit = 20;
    private const string Endless = "This page is not finished after half a million steps; perhaps a loop never ends.";

    /// <summary>What Scriban says of its limits, by a word of it, and what a theme's author is told.</summary>
    private static readonly (string Word, string Sentence)[] Limits =
    [
        ("OutputLimit", "This page is longer than four million characters."),
        ("LimitToString", "A text that is put together here is longer than half a million characters."),
        ("LoopLimit", Endless),
        ("iteration limit", Endless),
        ("recursive depth limit", "Templates include each other here more than 20 deep; perhaps one includes itself."),
    ];

    private readonly IReadOnlyDictionary<string, object> views;
    private int steps;

    /// <summary>The statement that was evaluated last: it is what is being written, which the span of a write does not
    /// tell.</summary>
    private SourceSpan evaluated;

    private TemplateRun(Theme theme, IReadOnlyDictionary<string, object> views)
        : base(new ScriptObject(StringComparer.Ordinal))
    {
        this.views = views;
        StrictVariables = true;
        EnableRelaxedMemberAccess = false;
        EnableRelaxedTargetAccess = false;
        EnableRelaxedFunctionAccess = false;
        EnableRelaxedIndexerAccess = false;
        LoopLimit = StepLimit;
        RecursiveLimit = NestingLimit;
        LimitToString = TextLimit;
        OutputLimit = PageLimit;
        OnStringLimit = ScriptLimitBehavior.Throw;
        OnOutputLimit = ScriptLimitBehavior.Throw;
        NewLine = "\n";
        TryGetVariable = NoVariable;
        TryGetMember = NoMember;
        BuiltinObject.SetValue("include", new Included(theme), readOnly: true);
        var globals = new ScriptObject(StringComparer.Ordinal);
        foreach (var (name, view) in views)
            globals.SetValue(name, view, readOnly: true);
        PushGlobal(globals);
    }

    /// <summary>The page.</summary>
    /// <exception cref="ThemeException">The template is missing, broken, endless, or asks for what there is not.</exception>
    public static string Fill(Theme theme, string template, IReadOnlyDictionary<string, object> views)
    {
        var run = new TemplateRun(theme, views);
        try
        {
            return theme.Find(template, default).Render(run);
        }
        catch (ScriptRuntimeException broken)
        {
            var said = Limits
                .FirstOrDefault(limit => broken.OriginalMessage.Contains(limit.Word, StringComparison.Ordinal))
                .Sentence;
            throw broken.InnerException as ThemeException ?? ThemeException.In(broken.Span, said ?? broken.OriginalMessage);
        }
    }

    public override TemplateContext Write(SourceSpan span, object? textAsObject) =>
        textAsObject switch
        {
            null => this,
            Html html => Write(html.Markup),
            IConvertible text => Write(Html.Escape(ObjectToString(text) ?? "")),
            _ => throw ThemeException.In(
                evaluated,
                "This is no text but several things together.",
                "Name one of its parts, or go through them with 'for'."
            ),
        };

    protected override IObjectAccessor? GetMemberAccessorImpl(object target) =>
        target is IScriptObject or IConvertible or IList ? base.GetMemberAccessorImpl(target) : ViewAccessor.Of(target);

    public override object? Evaluate(ScriptNode? scriptNode, bool aliasReturnedFunction)
    {
        Count(1);
        var value = base.Evaluate(scriptNode, aliasReturnedFunction);
        if (scriptNode is ScriptExpressionStatement)
            evaluated = scriptNode.Span;
        return value is BigInteger ? throw ThemeException.In(CurrentSpan, "A number here has more than 18 digits.") : value;
    }

    public override string? ObjectToString(object? value, bool nested = false)
    {
        var text = base.ObjectToString(value, nested);
        Count((text?.Length ?? 0) / CharactersOfAStep);
        return text;
    }

    /// <summary>Counts what is done, not the time it takes, so that a theme is refused on every machine or on none.</summary>
    private void Count(int done)
    {
        steps += done;
        if (steps > StepLimit)
            throw ThemeException.In(CurrentSpan, Endless);
    }

    private bool NoVariable(
        TemplateContext context,
        SourceSpan span,
        ScriptVariable variable,
        [MaybeNullWhen(false)] out object value
    ) => throw NoName(span, variable.Name, views.Keys.Order(StringComparer.Ordinal));

    private static bool NoMember(
        TemplateContext context,
        SourceSpan span,
        object target,
        string member,
        [MaybeNullWhen(false)] out object value
    ) =>
        throw NoName(
            span,
            member,
            context.GetMemberAccessor(target).GetMembers(context, span, target).Order(StringComparer.Ordinal)
        );

    private static ThemeException NoName(SourceSpan span, string name, IEnumerable<string> known) =>
        ThemeException.In(
            span,
            $"There is no '{name}' here.",
            Nearest.Ask(name, known, "The page of this rule lists every name that a template may use.")
        );

    /// <summary>Another template of the theme, written where it is named.</summary>
    private sealed class Included(Theme theme) : IScriptCustomFunction
    {
        public int RequiredParameterCount => 1;

        public int ParameterCount => 1;

        public ScriptVarParamKind VarParamKind => ScriptVarParamKind.None;

        public Type ReturnType => typeof(object);

        public ScriptParameterInfo GetParameterInfo(int index) => new(typeof(string), "name");

        public object? Invoke(
            TemplateContext context,
            ScriptNode? callerContext,
            ScriptArray arguments,
            ScriptBlockStatement? blockStatement
        )
        {
            var from = callerContext ?? new ScriptBlockStatement();
            var template = theme.Find(context.ObjectToString(arguments[0]) ?? "", from.Span);
            context.EnterRecursive(from);
            try
            {
                context.PushOutput();
                if (template.Page is { } page)
                    context.Evaluate(page);
                return new Html(context.PopOutput().ToString() ?? "");
            }
            finally
            {
                context.ExitRecursive(from);
            }
        }

        public ValueTask<object?> InvokeAsync(
            TemplateContext context,
            ScriptNode? callerContext,
            ScriptArray arguments,
            ScriptBlockStatement? blockStatement
        ) => ValueTask.FromResult(Invoke(context, callerContext, arguments, blockStatement));
    }
}
