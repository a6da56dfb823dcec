using Gradus.Domain;

namespace Gradus.Planning;

/// <summary>Where each page and file of a site stands.</summary>
public static class PagePath
{
    public const string Ending = ".html";

    public const string Home = "index.html";
    public const string BeforeYouStart = "before-you-start.html";
    public const string Weeks = "weeks.html";

    /// <summary>What was measured; only where something was.</summary>
    public const string Progress = "progress.html";

    public const string Calendar = "calendar.ics";

    /// <summary>Every other page in one that needs no other file.</summary>
    public const string AllPages = "all-pages.html";

    /// <summary>What asks for the passphrase of a locked site.</summary>
    public const string Lock = "lock.html";

    /// <summary>The edition and each file, for a site on a host.</summary>
    public const string FileList = "files.txt";

    /// <summary>W3C Web Application Manifest.</summary>
    public const string Manifest = "site.webmanifest";

    /// <param name="number">Of the session, from 1.</param>
    public static string Session(int number) => FormattableString.Invariant($"session-{number}{Ending}");

    public static string Exercise(ExerciseId exercise) => $"exercise-{exercise}{Ending}";
}
