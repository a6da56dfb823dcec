using Gradus.Domain;

namespace Gradus.Planning;

/// <summary>What a page says, part by part. A theme lays it out; it adds nothing, and changes the order only of what may stand in
/// any order. What one part says comes together: nothing of another part stands between.</summary>
public abstract record Wording
{
    private Wording(int needed, ulong beginnings) => (Needed, Beginnings) = (needed, beginnings);

    /// <summary>How many texts are missing where all of it is.</summary>
    public int Needed { get; }

    /// <summary>How its texts begin, a bit for each of <see cref="BeginningsOf"/>: whoever looks for a text passes by, without
    /// going in, whatever has none that begins so.</summary>
    public ulong Beginnings { get; }

    /// <summary>With which beginnings a text may stand at the beginning of this one: with its first letter alone, and with its
    /// first two. The bits of different letters may be the same.</summary>
    public static ulong BeginningsOf(ReadOnlySpan<char> text) =>
        text.Length == 0 ? 0 : Bit(text[0], '\0') | (text.Length > 1 ? Bit(text[0], text[1]) : 0);

    private static ulong Beginning(string text) =>
        text.Length switch
        {
            0 => ulong.MaxValue,
            1 => Bit(text[0], '\0'),
            _ => Bit(text[0], text[1]),
        };

    private static ulong Bit(char first, char second) => 1UL << (int)(((((uint)first << 16) | second) * 2654435769U) >> 26);

    private static int NeededIn(Series<Wording> parts)
    {
        var needed = 0;
        for (var part = 0; part < parts.Count; part++)
            needed += parts[part].Needed;
        return needed;
    }

    private static ulong All(Series<string> texts)
    {
        var all = 0UL;
        for (var text = 0; text < texts.Count; text++)
            all |= Beginning(texts[text]);
        return all;
    }

    private static ulong All(Series<Wording> parts)
    {
        var all = 0UL;
        for (var part = 0; part < parts.Count; part++)
            all |= parts[part].Beginnings;
        return all;
    }

    /// <summary>One text: a line of its own, or one of several in a line.</summary>
    /// <param name="Texts">One of these, with single blanks; where several are given, it is worded in the one or the other
    /// way.</param>
    /// <param name="IsNeeded">Whether a page without it is wrong, and a page that keeps it from somebody.</param>
    /// <param name="Mark">What the element that it stands in tells the scripts, as <see cref="PageMark"/> writes it; empty where
    /// that is nothing.</param>
    /// <param name="Moves">Of which exercise it tells somebody what to do; null where it does not.</param>
    public sealed record Line(Series<string> Texts, bool IsNeeded, string Mark, ExerciseId? Moves)
        : Wording(IsNeeded ? 1 : 0, All(Texts))
    {
        /// <summary>Whether a rule of its own says that it is missing, or other.</summary>
        public bool IsGuarded { get; init; }

        /// <summary>Whether a printed page may leave it out.</summary>
        public bool IsOnScreenAlone { get; init; }

        /// <summary>Where the links in it lead: https, mailto and tel.</summary>
        public Series<string> Leads { get; init; } = [];

        /// <summary>Its figures, with what they are in each week, as <see cref="WeekData.Whole"/> has it.</summary>
        public Series<string> Figures { get; init; } = [];
    }

    public sealed record InOrder(Series<Wording> Parts) : Wording(NeededIn(Parts), All(Parts));

    public sealed record InAnyOrder(Series<Wording> Parts) : Wording(NeededIn(Parts), All(Parts));

    /// <summary>A part that is there whole or not at all.</summary>
    public sealed record Optional(Wording Part) : Wording(0, Part.Beginnings);

    /// <summary>A text that must be there.</summary>
    public static Wording Must(string text, string mark = "", ExerciseId? moves = null) => One(text, true, mark, moves);

    /// <summary>A text that must be there, and whose absence a rule of its own tells: a sign, a step, which side is
    /// which.</summary>
    public static Wording Guarded(string text, ExerciseId? moves = null) => One(text, true, "", moves, isGuarded: true);

    /// <summary>A text that must be there on a screen; what is printed has another in its place.</summary>
    public static Wording MustOnScreen(string text) => Must(text) is Line line ? line with { IsOnScreenAlone = true } : Order();

    /// <summary>The same for every text of a part.</summary>
    public static Wording Guarded(Wording part) =>
        part switch
        {
            Line line => line with { IsGuarded = true },
            InOrder order => Order(order.Parts.Select(Guarded)),
            InAnyOrder any => AnyOrder(any.Parts.Select(Guarded)),
            Optional optional => new Optional(Guarded(optional.Part)),
            _ => throw new NotSupportedException(part.GetType().Name),
        };

    /// <summary>A text that a theme may leave out.</summary>
    public static Wording May(string text, string mark = "", ExerciseId? moves = null) => One(text, false, mark, moves);

    private static readonly Wording None = new InOrder([]);

    public static Wording Order(params IEnumerable<Wording> parts) => new InOrder(parts.ToSeries());

    public static Wording AnyOrder(params IEnumerable<Wording> parts) => new InAnyOrder(parts.ToSeries());

    public static Wording WholeOrNot(params IEnumerable<Wording> parts) => new Optional(Order(parts));

    /// <summary>A coach's text, each of its lines.</summary>
    /// <param name="elsewhere">What stands behind a clip that is not in this form of the site.</param>
    public static Wording Must(Prose prose, string elsewhere, ExerciseId? moves = null) =>
        Order(
            prose
                .TextsAsked()
                .Zip(prose.With(inline => Told(inline, elsewhere)).Texts())
                .Select(text => Pressed([text.First.Text, text.Second], MarkOf(text.First.Asks), moves))
        );

    /// <summary>A text with links in it, all of which must be there to press.</summary>
    public static Wording Must(Series<Inline> text, string mark = "") => Pressed([text], mark, null);

    private static string MarkOf(string asks) => asks.Length > 0 ? PageMark.Of((PageData.Asks, asks)) : "";

    private static Wording Pressed(Series<Series<Inline>> ways, string mark, ExerciseId? moves) =>
        ways.Select(Prose.PlainOf).Where(text => text.Length > 0).Distinct(StringComparer.Ordinal).ToSeries()
            is { Count: > 0 } texts
            ? new Line(texts, true, mark, moves)
            {
                Leads = Prose.Inlines(ways[0]).OfType<Inline.Link>().Select(l => l.Address).ToSeries(),
                Figures = Prose
                    .Inlines(ways[0])
                    .OfType<Inline.Figure>()
                    .Select(f => WeekData.Whole(f.Words, WeekData.Of(f)))
                    .ToSeries(),
            }
            : Order();

    private static Inline Told(Inline inline, string elsewhere) =>
        inline is Inline.Clip { Said.Length: > 0 } clip ? clip with { Said = $"{clip.Said} {elsewhere}" } : inline;

    private static Wording One(string text, bool isNeeded, string mark, ExerciseId? moves, bool isGuarded = false) =>
        Spacing.Collapse(text) is { Length: > 0 } said ? new Line([said], isNeeded, mark, moves) { IsGuarded = isGuarded } : None;
}
