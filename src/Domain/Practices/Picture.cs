namespace Gradus.Domain;

/// <summary>A picture of the practice, ready to be handed over.</summary>
/// <param name="Path">Inside the practice, with <c>/</c> between folders.</param>
/// <param name="Bytes">Without what a camera or a program noted in it.</param>
/// <param name="Width">In pixels, as a page shows it.</param>
/// <param name="Height">In pixels, as a page shows it.</param>
public sealed record Picture(string Path, ReadOnlyMemory<byte> Bytes, int Width, int Height);
