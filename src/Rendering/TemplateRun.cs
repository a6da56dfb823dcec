using Gradus.Domain;
using Scriban;
using Scriban.Parsing;
using Scriban.Runtime;
using Scriban.Syntax;

namespace Gradus.Rendering;

/// <summary>One template filled with one view. It fails closed: an unknown name is an error, and everything is escaped that is not
/// typed as HTML.</summary>
internal sealed class TemplateRun : TemplateContext
{
    private const int LoopLimitOfThemes = 100_000;

    private TemplateRun(Theme theme)
    {
        StrictVariables = true;
        EnableRelaxedMemberAccess = false;
        EnableRelaxedTargetAccess = false;
        EnableRelaxedFunctionAccess = false;
        EnableRelaxedIndexerAccess = false;
        LoopLimit = LoopLimitOfThemes;
        RecursiveLimit = 20;
        LimitToString = 4 * 1024 * 1024;
        NewLine = "\n";
        BuiltinObject.SetValue("include", new Included(theme), readOnly: true);
    }

    /// <summary>The page.</summary>
    /// <exception cref="ThemeException">The template is missing, broken, or asks for what there is not.</exception>
    public static string Fill(Theme theme, string template, IReadOnlyDictionary<string, object> views)
    {
        var globals = new ScriptObject(StringComparer.Ordinal);
        foreach (var (name, view) in views) globals.SetValue(name, view, readOnly: true);
        var run = new TemplateRun(theme);
        run.PushGlobal(globals);
        try
        {
            return Found(theme, template, Location.Whole(template)).Render(run);
        }
        catch (ScriptRuntimeException broken)
        {
            throw new ThemeException(At(broken.Span), broken.OriginalMessage);
        }
    }

    public override TemplateContext Write(SourceSpan span, object? textAsObject)
    {
        if (textAsObject is Html html) return Write(html.Markup);
        if (textAsObject is not null) Write(Html.Escape(ObjectToString(textAsObject) ?? ""));
        return this;
    }

    private static Template Found(Theme theme, string name, Location from)
    {
        var template = theme.Find(name) ?? throw new ThemeException(from, $"The theme '{theme.Name}' has no template '{name}'.");
        if (!template.HasErrors) return template;
        var first = template.Messages[0];
        throw new ThemeException(At(first.Span), first.Message);
    }

    private static Location At(SourceSpan span) => new(span.FileName ?? "theme", span.Start.Line + 1, span.Start.Column + 1);

    /// <summary>Another template of the theme, written where it is named.</summary>
    private sealed class Included(Theme theme) : IScriptCustomFunction
    {
        public int RequiredParameterCount => 1;

        public int ParameterCount => 1;

        public ScriptVarParamKind VarParamKind => ScriptVarParamKind.None;

        public Type ReturnType => typeof(object);

        public ScriptParameterInfo GetParameterInfo(int index) => new(typeof(string), "name");

        public object? Invoke(TemplateContext context, ScriptNode? callerContext, ScriptArray arguments, ScriptBlockStatement? blockStatement)
        {
            var from = callerContext ?? new ScriptBlockStatement();
            var template = Found(theme, context.ObjectToString(arguments[0]) ?? "", At(from.Span));
            context.EnterRecursive(from);
            try
            {
                context.PushOutput();
                if (template.Page is { } page) context.Evaluate(page);
                return new Html(context.PopOutput().ToString() ?? "");
            }
            finally
            {
                context.ExitRecursive(from);
            }
        }

        public ValueTask<object?> InvokeAsync(TemplateContext context, ScriptNode? callerContext, ScriptArray arguments, ScriptBlockStatement? blockStatement) =>
            ValueTask.FromResult(Invoke(context, callerContext, arguments, blockStatement));
    }
}
