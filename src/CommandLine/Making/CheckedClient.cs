using Gradus.Auditing;
using Gradus.Domain;
using Gradus.HandingOver;
using Gradus.Planning;
using Gradus.Trainings;
using Asked = Gradus.Domain.Asked;

namespace Gradus.CommandLine;

/// <summary>What is worked out of one client's sources: each thing when it is asked for, and not where it is recorded from the
/// same sources. One thread at a time, but for letting go.</summary>
internal sealed class CheckedClient
{
    private readonly Practice practice;
    private readonly Client client;
    private readonly ClientRecord? record;
    private readonly string judged;
    private readonly Func<Training, IEnumerable<Finding>> check;
    private readonly Asked asked = new();
    private readonly HeldTrainings held;
    private Training? training;
    private Series<Finding>? found;
    private string? planHash;
    private string? editionHash;

    /// <param name="record">What is recorded of the same sources; null where nothing is.</param>
    /// <param name="whole">Whether every file of the practice could be read.</param>
    /// <param name="held">That of the whole run.</param>
    public CheckedClient(Practice practice, Client client, ClientRecord? record, DateOnly today, bool whole, HeldTrainings held)
    {
        (this.practice, this.client, this.record, this.held) = (practice.Noting(asked), client, record, held);
        judged = $"{today.Iso()} {(whole ? "whole" : "in part")}";
        check = of => RuleBook.Check(this.practice, client, of, today, whole);
        found = record?.Judged == judged ? record.Found : null;
        planHash = record is { Plan.Length: > 0 } ? record.Plan : null;
        editionHash = record is { Edition.Length: > 0 } ? record.Edition : null;
        if (record is not null)
            asked.Add(record.Asked);
    }

    public Training Training
    {
        get
        {
            if (training is { } known)
                return known;
            var made = Training.Of(practice, client);
            training = made;
            held.Hold(this);
            return made;
        }
    }

    /// <summary>The training is worked out again when it is asked for again. May be called by any thread.</summary>
    public void LetGo() => training = null;

    /// <summary>What the rules on sources find.</summary>
    public Series<Finding> Found => found ??= check(Training).ToSeries();

    /// <summary>Made anew each time: it is large.</summary>
    public Plan Plan() =>
        Planning.Plan.For(Training, Texts.Of(practice, client), ClientRanges.ForPages(practice, client, Training));

    /// <param name="plan">Is asked for where its hash is not known.</param>
    public string PlanHash(Func<Plan> plan) => planHash ??= plan().Hash();

    /// <summary>What the sources ask of the client, and say, as an edition holds it.</summary>
    public EditionContent Content => EditionContents.Of(Training, Texts.Of(practice, client));

    public string EditionHash => editionHash ??= EditionText.HashOf(Content);

    /// <summary>What there is to record; null where it is recorded.</summary>
    /// <param name="isReady">Whether there is a plan.</param>
    public ClientRecord? Record(SourceKeys keys, bool isReady)
    {
        var (all, plan, edition) = (Found, isReady ? PlanHash(Plan) : planHash ?? "", isReady ? EditionHash : editionHash ?? "");
        return record is not null && record.Judged == judged && record.Plan == plan && record.Edition == edition
            ? null
            : new(keys.Of(client.Id, asked), asked, plan, edition, judged, all);
    }
}
