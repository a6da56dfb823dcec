using System.Buffers.Binary;
using System.Globalization;

namespace Gradus.Media;

/// <summary>A file while it is taken apart: what is kept of it, what is left out, and what stands in its place.</summary>
internal sealed class FileInParts(ReadOnlyMemory<byte> file)
{
    private readonly List<ReadOnlyMemory<byte>> kept = [];

    public int Length => file.Length;

    public ReadOnlySpan<byte> All => file.Span;

    public int Width { get; set; }

    public int Height { get; set; }

    public bool Sounds { get; set; }

    /// <summary>Which way up it is: Exif 3.0, tag 0x0112.</summary>
    public int Orientation { get; private set; } = 1;

    /// <summary>Whether anything is left out or put in so far.</summary>
    public bool IsChanged { get; private set; }

    public string? Trouble { get; private set; }

    public List<string> Tells { get; } = [];

    public void Keep(int from, int length)
    {
        if (length > 0)
            kept.Add(file.Slice(from, length));
    }

    public void Drop(string what)
    {
        Tells.Add(what);
        IsChanged = true;
    }

    /// <summary>Bytes that the file does not have.</summary>
    public void Put(byte[] bytes)
    {
        kept.Add(bytes);
        IsChanged = true;
    }

    /// <summary>Puts bytes in front of everything.</summary>
    public void PutFirst(byte[] bytes)
    {
        kept.Insert(0, bytes);
        IsChanged = true;
    }

    /// <summary>The width and the height, turned by a quarter where the orientation is one of those that do (Exif 3.0, tag
    /// 0x0112).</summary>
    public void Turn(int orientation)
    {
        Orientation = Math.Max(1, orientation);
        if (orientation >= 5)
            (Width, Height) = (Height, Width);
    }

    public void Fail(string trouble) => Trouble ??= trouble;

    /// <param name="at">From 0.</param>
    public void Fail(string trouble, long at) => Fail(string.Create(CultureInfo.InvariantCulture, $"{trouble} at byte {at}"));

    public uint Big32(int at) => BinaryPrimitives.ReadUInt32BigEndian(All[at..]);

    public uint Little32(int at) => BinaryPrimitives.ReadUInt32LittleEndian(All[at..]);

    /// <summary>What is kept, whole.</summary>
    public ReadOnlyMemory<byte> Rest()
    {
        if (!IsChanged)
            return file;
        var rest = new byte[kept.Sum(part => part.Length)];
        var at = 0;
        foreach (var part in kept)
        {
            part.CopyTo(rest.AsMemory(at));
            at += part.Length;
        }

        return rest;
    }
}
