using System.Text.Json;
using Gradus.Rendering;

namespace Gradus.Tests.Auditing;

public sealed class ThemeBrokenPageTests
{
    [Fact]
    public void It_lists_every_name_that_a_template_may_use()
    {
        var page = SiteRenderer.Pages().Single().Text;
        var views = typeof(SiteRenderer)
            .Assembly.GetTypes()
            .Where(t => t.Name.EndsWith("View", StringComparison.Ordinal))
            .ToArray();
        Assert.NotEmpty(views);
        var names = views
            .SelectMany(v => v.GetProperties())
            .Select(p => JsonNamingPolicy.SnakeCaseLower.ConvertName(p.Name))
            .Distinct();
        Assert.All(names, name => Assert.Contains($"`{name}`", page, StringComparison.Ordinal));
    }
}
