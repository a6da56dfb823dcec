using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>The pictures of a practice, each read once, when a text first shows it.</summary>
internal sealed class PictureShelf(SourceFolder folder)
{
    /// <summary>Above this a picture is slow to open on a phone, in bytes.</summary>
    private const int Heavy = 1024 * 1024;

    /// <summary>Above this it is not read at all, in bytes.</summary>
    private const int TooHeavy = 10 * 1024 * 1024;

    private readonly SortedDictionary<string, Picture?> pictures = new(StringComparer.Ordinal);

    /// <summary>Those that some text shows, in the order of their paths.</summary>
    public Series<Picture> Shown => pictures.Values.OfType<Picture>().ToSeries();

    /// <summary>The picture at an address, as a text on that sheet writes it; null (and a finding) where there is none to show.</summary>
    /// <param name="length">How much of the line is marked where something is wrong.</param>
    public Picture? Find(Sheet sheet, string address, Location at, int length)
    {
        if (PathOf(sheet.Path, address) is not { } path || OfSomebodyElse(path, sheet.Path))
        {
            sheet.Fault(Faults.AddressRefused, at, $"A picture cannot come from {Quote.Of(address)}.", "Put it beside this file, or elsewhere in the practice, and write the way to it: ankle-rock.jpg.", length);
            return null;
        }

        if (!folder.Has(path))
        {
            var near = folder.Paths.Where(p => Path.GetDirectoryName(p) == Path.GetDirectoryName(path)).Select(p => Path.GetFileName(p));
            sheet.Fault(Faults.PictureMissing, at, $"There is no picture {Quote.Of(path)}.", Nearest.Ask(Path.GetFileName(path), near, "Put it there, or take it out of the text."), length);
            return null;
        }

        if (pictures.TryGetValue(path, out var picture)) return picture;
        if (pictures.Keys.FirstOrDefault(other => string.Equals(other, path, StringComparison.OrdinalIgnoreCase)) is { } alike)
            sheet.Fault(Faults.PictureMissing, at, $"{Quote.Of(path)} and {Quote.Of(alike)} differ in capital letters alone, so some phones would show one for both.", "Give one of the two pictures another name.", length);
        return pictures[path] = Read(sheet, path, at, length);
    }

    private Picture? Read(Sheet sheet, string path, Location at, int length)
    {
        var bytes = folder.Read(path);
        if (bytes.Length > TooHeavy)
        {
            sheet.Fault(Faults.PictureTooHeavy, at, $"{Quote.Of(path)} has {bytes.Length / 1024 / 1024} MiB; the most a picture may have is 10.", "Make it smaller: 1200 pixels on the longer side are enough.", length);
            return null;
        }

        if (PictureSize.Of(bytes) is not { } size)
        {
            sheet.Fault(Faults.PictureMissing, at, $"{Quote.Of(path)} is no JPEG, PNG or WebP picture.", "Save it again as one of these.", length);
            return null;
        }

        if (bytes.Length > Heavy)
            sheet.Warn(Faults.PictureTooHeavy, at, $"{Quote.Of(path)} has {bytes.Length / 1024} KiB, which is slow to open on a phone.", "Make it smaller: 1200 pixels on the longer side are enough.", length);
        return new(path, bytes, size.Width, size.Height);
    }

    /// <summary>The path inside the practice; null where the address leads out of it, or anywhere else.</summary>
    private static string? PathOf(string sheet, string address)
    {
        if (address.Length == 0 || address.Contains(':', StringComparison.Ordinal) || address.StartsWith('/') || address.Contains('\\', StringComparison.Ordinal)) return null;
        var parts = sheet.Split('/')[..^1].ToList();
        foreach (var part in Uri.UnescapeDataString(address).Split('/'))
        {
            if (part is "" or ".") continue;
            if (part != "..") parts.Add(part);
            else if (parts.Count > 0) parts.RemoveAt(parts.Count - 1);
            else return null;
        }

        return string.Join('/', parts);
    }

    /// <summary>A picture in one client's folder is for that client's own texts.</summary>
    private static bool OfSomebodyElse(string path, string sheet)
    {
        var owner = path.Split('/');
        return owner.Length > 2 && owner[0] == "clients" && !sheet.StartsWith($"clients/{owner[1]}/", StringComparison.Ordinal);
    }
}
