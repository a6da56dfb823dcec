namespace Gradus.Domain;

public static class AnswersFile
{
    /// <summary>What an intake sheet saves, by the name under which the practice reads it beside client.yaml.</summary>
    public const string Name = "answers.yaml";
}
