using System.Runtime.CompilerServices;

// How a stylesheet is cut and judged is tested where it is done, not through whole sites alone.
[assembly: InternalsVisibleTo("Gradus.Tests")]
[assembly: InternalsVisibleTo("Gradus.Tests.Browser")]

// Where an audit takes its time is measured part by part.
[assembly: InternalsVisibleTo("Gradus.Tests.Benchmarks")]
