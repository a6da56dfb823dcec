using System.Runtime.CompilerServices;

// The check itself is held by tests that plant what it must see.
[assembly: InternalsVisibleTo("Gradus.Tests")]
[assembly: InternalsVisibleTo("Gradus.Tests.Browser")]
