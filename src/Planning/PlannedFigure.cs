using Gradus.Domain;

namespace Gradus.Planning;

/// <summary>A drawing that pages show.</summary>
/// <param name="Id">Its id on a page.</param>
/// <param name="Exercise">Of which exercise.</param>
/// <param name="Paper">Left, top, width and height of what it is drawn on.</param>
/// <param name="Shapes">Markup of its shapes: somebody who works with the right.</param>
public sealed record PlannedFigure(string Id, ExerciseId Exercise, string Paper, string Shapes);
