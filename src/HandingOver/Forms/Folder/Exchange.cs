namespace Gradus.HandingOver;

/// <summary>Puts a finished new folder in the place of the site. The site of before then stands at <see cref="Places.New"/>, to
/// be removed.</summary>
internal static class Exchange
{
    /// <summary>In one step where the system has one; else by two renames, which leave a moment with no site.</summary>
    public static void Put(Places places)
    {
        if (!Directory.Exists(places.Site))
            PutFirst(places);
        else if (SystemCalls.TryExchange(places.New, places.Site))
            FlushTarget(places);
        else
            PutByTwoRenames(places);
    }

    /// <summary>For systems without an exchange. A publish killed between the renames leaves a whole <see cref="Places.Old"/> and
    /// no site, which <see cref="Leftovers.PutRight"/> puts back.</summary>
    public static void PutByTwoRenames(Places places)
    {
        if (!Directory.Exists(places.Site))
        {
            PutFirst(places);
            return;
        }
        Directory.Move(places.Site, places.Old);
        try
        {
            Directory.Move(places.New, places.Site);
        }
        catch
        {
            Directory.Move(places.Old, places.Site);
            throw;
        }
        FlushTarget(places);
        Directory.Move(places.Old, places.New);
    }

    private static void PutFirst(Places places)
    {
        Directory.Move(places.New, places.Site);
        FlushTarget(places);
    }

    private static void FlushTarget(Places places)
    {
        if (Path.GetDirectoryName(places.Site) is { } target)
            SystemCalls.FlushFolder(target);
    }
}
