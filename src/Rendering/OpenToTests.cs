using System.Runtime.CompilerServices;

// That a template reads each view as it is, is held view by view.
[assembly: InternalsVisibleTo("Gradus.Tests")]
