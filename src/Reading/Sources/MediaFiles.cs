using Gradus.Domain;

namespace Gradus.Reading;

/// <summary>The pictures and the clips of a practice, each read once, and kept without what cameras and programs note in
/// them.</summary>
internal sealed class MediaFiles(SourceFolder folder, Findings findings, KeptPictures kept)
{
    /// <summary>More would take more memory than they save time.</summary>
    private const int MostAtOnce = 4;

    private readonly SortedDictionary<string, List<MediaMention>> pictures = new(StringComparer.Ordinal);
    private readonly SortedDictionary<string, Clip> clips = new(StringComparer.Ordinal);
    private readonly List<MediaUse> uses = [];

    /// <summary>Every time that a text asked for a picture or a clip so far.</summary>
    public IReadOnlyList<MediaUse> Uses => uses;

    /// <summary>Those that some text shows, in the order of their paths.</summary>
    public Series<Clip> Clips => clips.Values.ToSeries();

    /// <summary>The path of the picture at an address, as a text writes it; null (and a finding) where there is no such
    /// file.</summary>
    public string? FindPicture(MediaMention mention)
    {
        if (PathOf(mention, Faults.PictureMissing) is { } path)
            return FindPicture(mention, path);
        uses.Add(new(mention, null, null, []));
        return null;
    }

    /// <summary>As if a text that was read before asked once more for what it found then.</summary>
    public void FindAgain(MediaUse use)
    {
        if (use.Picture is { } picture)
            FindPicture(use.Mention, picture);
        else
            uses.Add(use);
        if (use.Clip is { } clip)
            clips[clip.Path] = clip;
        findings.AddRange(use.Said);
    }

    /// <summary>Every picture that some text shows and that can be shown, in the order of their paths; the others are findings
    /// wherever a text shows them. Photographs of one content are scaled once.</summary>
    public Series<Picture> ScaledPictures()
    {
        var reader = new PictureReader(folder, kept);
        var read = new PictureRead[pictures.Count];
        Parallel.ForEach(pictures.Keys.Index(), new ParallelOptions { MaxDegreeOfParallelism = MostAtOnce }, path =>
            read[path.Index] = reader.Read(path.Item)
        );
        foreach (var (mentions, picture) in pictures.Values.Zip(read))
            findings.AddRange(mentions.Select(picture.FoundAt).OfType<Finding>());
        return read.Select(r => r.Picture).OfType<Picture>().ToSeries();
    }

    /// <summary>The clip at an address, as a text writes it, with its still and its captions; null (and a finding) where there is
    /// none to show.</summary>
    public Clip? FindClip(MediaMention mention)
    {
        var said = new Findings();
        var clip = PathOf(mention, Faults.ClipMissing) is { } path
            ? clips.GetValueOrDefault(path) ?? Read(mention, path, said)
            : null;
        uses.Add(new(mention, null, clip, said.ToSeries()));
        findings.AddRange(said);
        return clip;
    }

    private Clip? Read(MediaMention mention, string path, Findings said)
    {
        var still = StillOf(mention, path);
        if (ClipReader.Read(folder, mention, path) is not { } file || still is null)
            return null;
        SeeThatPathsDiffer(mention, path, clips.Keys);
        return clips[path] = new(
            path,
            file.Bytes,
            file.Width,
            file.Height,
            file.Sounds,
            still,
            CaptionsBeside(path, said).ToSeries()
        );
    }

    private string FindPicture(MediaMention mention, string path)
    {
        if (!pictures.TryGetValue(path, out var mentions))
            pictures[path] = mentions = [];
        mentions.Add(mention);
        uses.Add(new(mention, path, null, []));
        return path;
    }

    private static void SeeThatPathsDiffer(MediaMention mention, string path, IEnumerable<string> others)
    {
        if (others.FirstOrDefault(other => string.Equals(other, path, StringComparison.OrdinalIgnoreCase)) is { } alike)
            mention.Fault(
                Faults.ClipMissing,
                $"{Quote.Of(path)} and {Quote.Of(alike)} differ in capital letters alone, so some phones would show one "
                    + "for both.",
                "Give one of the two clips another name."
            );
    }

    private string? StillOf(MediaMention mention, string clip)
    {
        var name = clip[..clip.LastIndexOf('.')];
        if (new[] { ".jpg", ".jpeg", ".png", ".webp" }.Select(ending => name + ending).FirstOrDefault(folder.Has) is { } still)
            return FindPicture(mention, still);
        mention.Fault(
            Faults.ClipWithoutStill,
            $"There is no still for {Quote.Of(clip)}: a picture that stands for it until it plays, and on paper.",
            $"Save one moment of it as {Path.GetFileName(name)}.jpg, .png or .webp beside it."
        );
        return null;
    }

    private IEnumerable<Captions> CaptionsBeside(string clip, Findings said)
    {
        var (before, after) = (clip[..(clip.LastIndexOf('.') + 1)], ".vtt");
        foreach (
            var path in folder.Paths.Where(p =>
                p.StartsWith(before, StringComparison.Ordinal)
                && p.EndsWith(after, StringComparison.Ordinal)
                && p.Length > before.Length + after.Length
            )
        )
            yield return new(
                path[before.Length..^after.Length],
                SourceFile.Of(folder, path, said) is { } sheet ? CaptionsReader.Read(sheet) : []
            );
    }

    /// <summary>The path inside the practice of a file that is there; null (and a finding) otherwise.</summary>
    private string? PathOf(MediaMention mention, RuleId missing)
    {
        var thing = mention.IsClip ? "clip" : "picture";
        if (PathIn(folder, mention) is not { } path || OfSomebodyElse(path, mention.SourceFile.Path))
        {
            mention.Fault(
                Faults.AddressRefused,
                $"A {thing} cannot come from {Quote.Of(mention.Address)}.",
                "Put it beside this file, or elsewhere in the practice, and write the way to it: "
                    + $"{(mention.IsClip ? "ankle-rock.mp4" : "ankle-rock.jpg")}."
            );
            return null;
        }

        if (folder.Has(path))
            return path;
        var near = folder
            .Paths.Where(p => Path.GetDirectoryName(p) == Path.GetDirectoryName(path))
            .Select(p => Path.GetFileName(p));
        mention.Fault(
            missing,
            $"There is no {thing} {Quote.Of(path)}.",
            Nearest.Ask(Path.GetFileName(path), near, "Put it there, or take it out of the text.")
        );
        return null;
    }

    /// <summary>A name as it is comes before one that is written as in an address, with <c>%20</c> for a blank.</summary>
    private static string? PathIn(SourceFolder folder, MediaMention mention) =>
        PathFrom(mention.SourceFile.Path, mention.Address) is { } path && folder.Has(path)
            ? path
            : PathFrom(mention.SourceFile.Path, Uri.UnescapeDataString(mention.Address));

    /// <summary>Null where the address leads out of the practice, or anywhere else.</summary>
    private static string? PathFrom(string sheet, string address)
    {
        if (
            address.Length == 0
            || address.Contains(':', StringComparison.Ordinal)
            || address.StartsWith('/')
            || address.Contains('\\', StringComparison.Ordinal)
        )
            return null;
        var parts = sheet.Split('/')[..^1].ToList();
        foreach (var part in address.Split('/'))
        {
            if (part is "" or ".")
                continue;
            if (part != "..")
                parts.Add(part);
            else if (parts.Count > 0)
                parts.RemoveAt(parts.Count - 1);
            else
                return null;
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

/// <summary>One time that a text asked for a picture or a clip, and what it got.</summary>
/// <param name="Picture">The path of the picture; null where there is none.</param>
/// <param name="Clip">Null where there is none.</param>
/// <param name="Said">What was found in the clip's captions, which are read with it.</param>
internal sealed record MediaUse(MediaMention Mention, string? Picture, Clip? Clip, Series<Finding> Said);
