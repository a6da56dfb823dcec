using System.Runtime.CompilerServices;

// The two renames stand in for the exchange on other systems only; a test on Linux reaches them from inside.
[assembly: InternalsVisibleTo("Gradus.Tests")]
