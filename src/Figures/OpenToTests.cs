using System.Runtime.CompilerServices;

// The words of a pose are held against its page, and what is worked out against what is drawn.
[assembly: InternalsVisibleTo("Gradus.Tests")]
