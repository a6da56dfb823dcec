using Gradus.Domain;
using Gradus.Planning;

namespace Gradus.Auditing;

public sealed class ThemeUnchecked : IThemeRule
{
    /// <summary>Long enough to have somebody look at it, too short to forget it.</summary>
    public int? AcceptedDays => 30;

    public IEnumerable<Finding> Check(ThemeSeen theme)
    {
        if (theme.Checked is null)
            yield return Said($"Nobody has checked in a browser that every caution is seen with the theme '{theme.Name}'.");
        else if (theme.Checked != theme.Digest)
            yield return Said($"The theme '{theme.Name}' was changed after it was checked in a browser.");
    }

    private Finding Said(string message) =>
        this.Found(
            Level.Warning,
            null,
            Location.Whole(CheckedTheme.Path),
            message,
            "Run 'dotnet run --project src/ThemeCheck -- DIR' with the folder of the theme; it takes a minute."
        );
}
