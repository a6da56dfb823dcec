using System.Runtime.CompilerServices;

// A disk that vanishes in the middle of a write cannot be had on demand; a test takes it away from inside.
[assembly: InternalsVisibleTo("Gradus.Tests")]

// What is written for other programs and as a page is held against a schema, and opened, there.
[assembly: InternalsVisibleTo("Gradus.Tests.Browser")]
