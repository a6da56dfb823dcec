using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>What came back from the client, held against a use.</summary>
internal static class CameBack
{
    /// <summary>Pain that came back on the day of the answers or later stops everything until the client was asked again: what is
    /// not known is not "no". What a clinician must look at first stops what loads the place until one did, and after what asks
    /// for one on the same day everything.</summary>
    public static IEnumerable<Objection> Against(PracticeSettings settings, Client client, Use use, Aside<Location> at)
    {
        if (client.Log.Count == 0)
            return [];
        var rules = DayRules.Of(settings);
        if (ReturnedPains.Unasked(client, rules) is [var unasked, ..])
            return [Of(unasked, false)];
        return
            ReturnedPains.Unseen(client, rules).FirstOrDefault(p => p.Kind == PainKind.SameDay || p.Place.IsLoadedBy(use))
                is { } unseen
            ? [Of(unseen, true)]
            : [];

        Objection Of(ReturnedPain pain, bool isAsked) =>
            new Objection.CameBack(AlwaysAsked.PainNow, pain.Kind, pain.Place, pain.Day, isAsked, Aside.Of(pain.Entry.At), at);
    }
}
