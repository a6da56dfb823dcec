using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.CommandLine;

/// <summary>What came back of one client beside what is asked of them.</summary>
internal sealed record ClientReview(Client Client, Training Training, ClientReturn Came, ClientRanges Ranges)
{
    public static ClientReview Of(Practice practice, Client client, Training training, DateOnly today) =>
        new(
            client,
            training,
            ClientReturn.Of(practice, client, training, today),
            ClientRanges.Of(practice, client, training, today)
        );

    /// <summary>Since when the client trains no more by what the coach writes; null where they do.</summary>
    public DateOnly? StoppedOn => Client.HasStopped(Came.Today) ? Client.Stopped?.On : null;

    /// <summary>What nobody has answered yet: a sign without a leave, what came after the answers, what a clinician has not seen,
    /// and what rises or lasts; worst first.</summary>
    public IEnumerable<ReturnedPain> OpenPains
    {
        get
        {
            var waiting = ReturnedPains
                .Unasked(Client, Training.Rules)
                .Concat(ReturnedPains.Unseen(Client, Training.Rules))
                .ToHashSet();
            return Came.Pains.Where(p => waiting.Contains(p) || !p.Overtakes || (p.Kind == PainKind.Now && !IsCleared));
        }
    }

    /// <summary>The last day of which anything came back, or the first of the programme, where that is longer ago than the days
    /// after which the pages offer an earlier week; null where it is not, the programme is over or still to begin, or the coach
    /// wrote a pause: its days are none of them.</summary>
    public DateOnly? QuietSince
    {
        get
        {
            var (last, today) = (Came.Log.Until ?? Client.Programme.Start, Came.Today);
            var pauses = Client.Programme.Pauses;
            var from = pauses.Where(p => p.Until < today).Select(p => p.Until).Append(last).Max();
            return
                today <= Client.Programme.End
                && today > from.AddDays(Training.Rules.DaysBackOneWeek)
                && !pauses.Any(p => p.Has(today))
                ? last
                : null;
        }
    }

    /// <summary>Whether what came back stops the next publishing.</summary>
    public bool IsUnsettled => OpenPains.Any(p => p.Overtakes || p.Step == PainStep.Clinician);

    private bool IsCleared =>
        Client.SignFor(AlwaysAsked.Symptoms) is not { } sign
        || Client.Clearances.Any(c => c.Condition == AlwaysAsked.Symptoms && c.On > sign.Day);
}
