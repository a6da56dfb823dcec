using Gradus.Auditing.Sources;
using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Auditing;

public sealed class PainCameBack : IObjectionRule
{
    public IEnumerable<Finding> Check(Practice practice, Client client, Training training, DateOnly today)
    {
        // A sign that cannot wait is another rule's.
        var unasked = ReturnedPains.Unasked(client, training.Rules);
        if (unasked.Count > 0)
            return unasked
                .Where(p => p.Kind != PainKind.Now)
                .DistinctBy(p => (p.Kind, p.Place))
                .Select(p => Unasked(client, p, today));
        return ReturnedPains.Unseen(client, training.Rules).DistinctBy(p => (p.Kind, p.Place)).SelectMany(Unseen);

        IEnumerable<Finding> Unseen(ReturnedPain pain) =>
            pain.Kind == PainKind.SameDay
                ?
                [
                    this.Found(
                        Level.Error,
                        client.Id,
                        pain.Entry.At,
                        $"{client.Name} told of {ReturnWords.Of(pain)} on {pain.Day.Iso()}, and nobody has written that a "
                            + "clinician looked at it.",
                        Seen(client, "Send nothing until a clinician has seen it.")
                    ),
                ]
                : from use in training.Uses
                where use.Weeks.Count > 0 && pain.Place.IsLoadedBy(use)
                select this.Found(
                    Level.Error,
                    client.Id,
                    use.At,
                    $"'{practice.TitleOf(use)}' loads {PlaceOf(pain.Place)}, and {client.Name} told of "
                        + $"{ReturnWords.Of(pain.Kind)} there again on {pain.Day.Iso()}: a clinician looks at it before it is "
                        + "done again.",
                    Seen(client, "Take it out until a clinician has seen it."),
                    use.Exercise.Id.Text.Length
                );
    }

    private Finding Unasked(Client client, ReturnedPain pain, DateOnly today) =>
        this.Found(
            Level.Error,
            client.Id,
            pain.Entry.At,
            $"{client.Name} told of {ReturnWords.Of(pain)} on {pain.Day.Iso()}, and the answers about health are of "
                + $"{client.Answered.Iso()}: nobody knows what hurts now.",
            $"{AdviceFor(pain)} Ask again before the next publishing: write the new date under 'answered', and what hurts now "
                + $"under 'pain-now'.{CameBackSentences.Guardian(client)}{CameBackSentences.Clock(pain.Entry, today)}"
        );

    private static string AdviceFor(ReturnedPain pain) =>
        pain switch
        {
            { Kind: PainKind.SameDay } => "A clinician sees it the same day.",
            { Step: PainStep.Clinician } => "It came again: a clinician looks at it before what loads the place is done again.",
            { Kind: PainKind.Stopped } => "The exercise, and what loads the place, stays out until then.",
            { Step: PainStep.Out } => $"It came again: leave out for {ReturnedPains.OutFor} days what loads the place.",
            { Kind: PainKind.NextMorning } => "Next time a smaller dose of all that loads the place.",
            _ => "Train nothing with it.",
        };

    private static string Seen(Client client, string first) =>
        $"{first} Write what was said as a clearance for pain-now, or under 'restrictions', in client.yaml, dated after that day."
        + CameBackSentences.Guardian(client);

    private static string PlaceOf(PainPlace place) => place.Where is null ? place.ToString() : $"the {place}";
}
