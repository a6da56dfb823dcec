using Gradus.Domain;
using static Gradus.Tests.Auditing.Proof.Places;
using static Gradus.Tests.Auditing.Proof.Sketch;

namespace Gradus.Tests.Auditing.Proof;

/// <summary>What a screen reader says is not what is written.</summary>
internal static class HeardBreaks
{
    private static readonly Series<Place> Heard = [Title, Body, Emergency, Steps, Doing];

    public static readonly Series<Sketch> All =
    [
        .. Set("label over the block", ("role", "group"), ("aria-label", "Nothing to read here")),
        .. Set("described otherwise", ("aria-description", "Only for beginners")),
        .. Set("no role", ("role", "none")),
        .. Set("a picture by role", ("role", "img"), ("aria-label", "Decoration")),
        .. Set("a button by role", ("role", "button")),
        .. Set("another language", ("lang", "fi")),
        .. Set("role described otherwise", ("aria-roledescription", "example")),
        .. Set("title on top", ("title", "Only for beginners")),
        .. AtEach("named by another element", Heard, (spot, e) =>
        {
            var other = spot.All("h1, h2").First();
            other.SetAttribute("id", other.GetAttribute("id") ?? "other-heading");
            e.SetAttribute("aria-labelledby", other.Id);
            e.SetAttribute("role", "img");
        }),
        .. AtEach("owned by another element", Heard, (spot, e) =>
        {
            e.Id = "taken-along";
            Content(spot).LastElementChild!.SetAttribute("aria-owns", "taken-along");
        }),
    ];

    private static IEnumerable<Sketch> Set(string name, params (string Name, string Value)[] attributes) =>
        AtEach(name, Heard, (_, e) =>
        {
            foreach (var (attribute, value) in attributes)
                e.SetAttribute(attribute, value);
        });
}
