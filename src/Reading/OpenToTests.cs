using System.Runtime.CompilerServices;

// What the schemas are made from is held against the page of the format.
[assembly: InternalsVisibleTo("Gradus.Tests")]
