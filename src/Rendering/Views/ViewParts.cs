using System.Text.Json.Serialization;

namespace Gradus.Rendering;

/// <summary>What every view has, under the names that templates use. The compiler writes it out: the generator for JSON names the
/// properties and makes a getter for each, from the views named here to all that they hold. No JSON is ever made of it.</summary>
[JsonSourceGenerationOptions(
    GenerationMode = JsonSourceGenerationMode.Metadata,
    PropertyNamingPolicy = JsonKnownNamingPolicy.SnakeCaseLower
)]
[JsonSerializable(typeof(AllPagesView))]
[JsonSerializable(typeof(BeforeView))]
[JsonSerializable(typeof(ExerciseView))]
[JsonSerializable(typeof(HomeView))]
[JsonSerializable(typeof(IntakeSheetView))]
[JsonSerializable(typeof(ProgrammeWeeksView))]
[JsonSerializable(typeof(ProgressView))]
[JsonSerializable(typeof(SessionView))]
[JsonSerializable(typeof(SinceView))]
[JsonSerializable(typeof(SiteView))]
[JsonSerializable(typeof(TermView))]
[JsonSerializable(typeof(KeyValuePair<string, object>), TypeInfoPropertyName = "OfScriptObject")]
internal sealed partial class ViewParts : JsonSerializerContext;
