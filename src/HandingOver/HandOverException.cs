namespace Gradus.HandingOver;

/// <summary>A hand-over that could not be carried out, or a handed-over site that could not be read back. The message is one line
/// for the person at the keyboard: the sentence, then the remedy. Whatever was handed over before still stands whole.</summary>
public sealed class HandOverException : Exception
{
    public HandOverException(string sentence, string remedy, Exception? cause = null)
        : base($"{sentence} {remedy}", cause)
    {
        Sentence = sentence;
        Remedy = remedy;
    }

    /// <summary>What went wrong, one sentence.</summary>
    public string Sentence { get; }

    /// <summary>The one thing to do about it.</summary>
    public string Remedy { get; }
}
