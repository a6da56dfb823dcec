using Gradus.Auditing.Sources;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class WorkWithoutDemand : ICountingRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today)
    {
        var demands = JudgedDemand.Of(practice, training);
        return demands.Count == 0
            ? []
            : from trained in Trained.Of(client, training)
            where trained.Stage == Stage.Gain
            let ways = practice.WaysToMeasure(trained.Motion).ToArray()
            where ways.Length > 0 && !demands.Any(d => ways.Contains(d.Measure))
            group trained by trained.Motion into motion
            let use = motion.First().Use
            select this.Found(
                Level.Note,
                client.Id,
                use.At,
                $"'{practice.TitleOf(use)}' gains {motion.Key.Name}, and no position of what {client.Name} plays asks for it.",
                "Write down under 'demands' of the sport what asks for it, or leave it if it is done for another reason.",
                use.Exercise.Id.Text.Length
            );
    }
}
