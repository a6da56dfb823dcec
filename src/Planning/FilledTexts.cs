using Gradus.Domain;
using Gradus.Trainings;

namespace Gradus.Planning;

/// <summary>Coach-written text → text for one client: placeholders filled, links kept only where the client has the
/// page.</summary>
internal sealed class FilledTexts(Texts texts, IReadOnlySet<ExerciseId> pages, Stances stances, ClientRanges ranges)
{
    private readonly Words words = texts.Words;

    private readonly SortedDictionary<string, Picture> shown = new(StringComparer.Ordinal);

    private readonly SortedDictionary<string, Clip> played = new(StringComparer.Ordinal);

    /// <summary>The pictures of all texts planned so far, and the stills of their clips, in the order of their paths.</summary>
    public Series<Picture> Pictures => shown.Values.ToSeries();

    public Series<Clip> Clips => played.Values.ToSeries();

    public Words Words => words;

    public Prose Linked(Prose prose) => prose.With(Link);

    /// <param name="letter">What its session calls it.</param>
    /// <param name="beside">All uses of the same session, this one among them.</param>
    public PlannedUse Use(Use use, string letter, string sessionName, IReadOnlyList<Use> beside)
    {
        var limb = use.Exercise.Trains.Limb;
        var exercise = texts.Of(use.Exercise.Id);
        var sides = use.Weeks.Select(w => SideWords.Of(w, limb, exercise.Cue, texts)).Distinct(StringComparer.Ordinal).ToArray();
        return new(
            exercise.Id,
            letter,
            exercise.Title,
            use.Session,
            sessionName,
            sides is [var same] ? same : "",
            UseNotes.Of(use, beside, texts).ToSeries(),
            use.Written.MoveOn,
            Filled(exercise, [use]),
            Doses(use, limb).ToSeries(),
            DoseRows.Of(use, limb, exercise.Cue, texts).ToSeries(),
            UseLoads.Written(use),
            exercise.Measure is null ? "" : HomeTest.Unit
        );
    }

    /// <summary>One for each run of weeks with the same dose.</summary>
    private IEnumerable<PlannedDose> Doses(Use use, Limb limb)
    {
        var weeks = use.Weeks;
        for (var (first, next) = (0, 0); first < weeks.Count; first = next)
        {
            for (next = first + 1; next < weeks.Count && GoesOn(weeks[first], weeks[next - 1], weeks[next]); )
                next++;
            var week = weeks[first];
            yield return new(
                weeks.Skip(first).Take(next - first).Select(w => w.Week).ToSeries(),
                ChangeWords.Of(weeks, first, limb, texts),
                week.Measures.Seconds,
                week.Measures.About,
                week.Dose
            );
        }
    }

    private static bool GoesOn(WeekDose first, WeekDose before, WeekDose week) =>
        week.Week == before.Week + 1 && week.IsLighter == first.IsLighter && week.Dose == first.Dose && week.Role == first.Role;

    /// <summary>The exercise's text with the figures over all weeks of those uses. A figure that no week has (the rest of a dose
    /// with one set) is the exercise's own.</summary>
    public ExerciseText Filled(Exercise exercise, IReadOnlyList<Use> uses)
    {
        SettledDose[] doses = [.. uses.SelectMany(u => u.Weeks).Select(w => w.Dose)];
        Dose[] own = exercise.Dose.Dose is { } dose ? [dose] : [];
        var text = exercise.Text with { Do = exercise.Text.Do.Asking(item => AskedBy(item, exercise.Dose.Dose)) };
        var filled = text.With(inline =>
            inline is Inline.Placeholder { Name: not EmergencyNumber.Placeholder } placeholder
                ? ByWeek(placeholder.Name)
                : Link(inline)
        );
        // Whatever picture the coach made goes before a figure.
        return filled.Pair.Any() ? filled : FigureWords.WithFigures(filled, exercise, doses, words);

        // Where a text is for several uses, a week may ask two things of one exercise.
        Inline ByWeek(string name)
        {
            var over = ValueOf(name, doses);
            if (uses is not [var one])
                return new Inline.Plain(over);
            var weeks = one.Weeks.Select(w => (w.Week, Said: ValueOf(name, [w.Dose]))).ToArray();
            return weeks.All(w => w.Said == over) ? new Inline.Plain(over) : new Inline.Figure(over, SaidInWeeks.Of(weeks));
        }

        // In rounds the rest is that of the round, and another one after each exercise: the list of steps has it.
        string ValueOf(string name, IReadOnlyList<SettledDose> of) =>
            name == "side" ? SideWords.Filled(of, exercise.Trains.Limb, words)
            : name == "rest" && uses.Any(u => u.Written.Rounds is not null) ? words.Say("rest-in-rounds")
            : (
                Placeholders.Over(of.Select(d => d.AsDose), name)
                ?? Placeholders.Over(doses.Select(d => d.AsDose), name)
                ?? Placeholders.Over(own, name)
            )?.Say(words) ?? throw new ArgumentException($"'{{{name}}}' names nothing in the dose.", nameof(name));
    }

    /// <summary>The kinds of step whose number stands in an item: "press" of "Push for {press}".</summary>
    private static string AskedBy(Prose item, Dose? dose)
    {
        var names = item.Inlines().OfType<Inline.Placeholder>().Select(p => p.Name).ToHashSet(StringComparer.Ordinal);
        return string.Join(
            ' ',
            (dose?.Actions ?? [])
                .Where(a =>
                    names.Contains(Kebab.Of(a.Verb.ToString()))
                    || (a.Amount is Amount.Breaths && names.Contains("breaths"))
                    || (a.Amount is Amount.Reps && names.Contains("reps"))
                )
                .Select(a => Kebab.Of(a.Verb.ToString()))
                .Distinct()
        );
    }

    /// <summary>"Monday and Thursday", "every 2 days", "instead of Ankles and hips, on a day with little time".</summary>
    public string Days(ProgrammeSession session) =>
        session is { InsteadOf: { } other, Kind: { } kind }
            ? words.Say("instead-of-" + kind.ToString().ToLowerInvariant(), ("session", other.Value))
            : Days(session.Days);

    private string Days(SessionDays days) =>
        days switch
        {
            SessionDays.On on => words.And([.. on.Weekdays.Select(words.Weekday)]),
            SessionDays.EveryDays every => words.Say("every-days", ("n", every.Days)),
            SessionDays.TimesAWeek times => words.Say(times.DayBetween ? "times-a-week" : "times-a-week-any", ("n", times.Times)),
            SessionDays.BeforePlay => words.Say("before-play"),
            _ => throw new NotSupportedException(days.GetType().Name),
        };

    private Inline Link(Inline inline) =>
        inline switch
        {
            Inline.Placeholder { Name: EmergencyNumber.Placeholder } placeholder => EmergencyWords.Link(
                EmergencyWords.NumberFor(texts),
                placeholder.At
            ),
            Inline.RangeFigure figure => new Inline.Plain(RangeWords.Of(figure, stances, ranges, words)),
            Inline.ExerciseLink link when !pages.Contains(link.Exercise) => new Inline.Plain(Prose.PlainOf(link.Text)),
            Inline.Picture picture => Shown(picture.Path) is { Count: > 0 } sizes
                ? picture with
                {
                    Sizes = sizes,
                }
                : new Inline.Plain(picture.Shows),
            Inline.Clip clip => Shown(clip.Still) is { Count: > 0 } stills ? Played(clip, stills) : new Inline.Plain(clip.Shows),
            _ => inline,
        };

    /// <summary>The sizes of a picture of the practice; none where it is too large to be shown, and its words stand in its
    /// place.</summary>
    private Series<PictureSize> Shown(string path)
    {
        if (texts.Pictures.FirstOrDefault(p => p.Path == path) is not { } picture)
            return [];
        shown[path] = picture;
        return picture.Sizes;
    }

    /// <summary>A clip with its captions in the client's language, and the same as text for those who cannot play or hear
    /// it.</summary>
    private Inline.Clip Played(Inline.Clip clip, Series<PictureSize> stills)
    {
        var known = texts.Clips.First(c => c.Path == clip.Path);
        var placed = "clips/" + clip.Path;
        played.TryAdd(placed, known with { Path = placed });
        var captions = known.CaptionsIn(words.Language);
        return clip with
        {
            Path = placed,
            Stills = stills,
            Captions = captions,
            Said = captions is null ? "" : words.Say("said-in-clip", ("words", captions.Text)),
        };
    }
}
