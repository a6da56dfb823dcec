using System.Reflection;
using Gradus.Domain;
using Gradus.Planning;
using Gradus.Trainings;

namespace Gradus.Auditing;

/// <summary>All rules, in the order an author should meet them.</summary>
public static class RuleBook
{
    public static readonly Series<IRule> Rules =
    [
        new DoseUnreadable(),
        new TermWithoutEffect(),
        new HoldCountsAsStretch(),
        new ProsePlaceholderWrong(),
        new ProseAgainstDose(),
        new TextAsksForPain(),
        new ReadingTooHard(),
        new FigureOutOfBalance(),
        new ExerciseWithoutStopSign(),
        new ExerciseWithoutExpectSign(),
        new ExerciseWithoutContraindication(),
        new MeasureUnguarded(),
        new YouthWithoutSign(),
        new PropertyWithoutCaution(),
        new EquipmentInNoExercise(),
        new TranslationMissing(),
        new ClipWithoutCaptions(),
        new EasierInACircle(),
        new ContactNotYours(),
        new EmergencyNumberUnusual(),
        new EmergencyTextMissing(),
        new RolesOnOneSide(),
        new SideUnresolved(),
        new SideSaidTwice(),
        new VersionMissing(),
        new RoundWithOneUse(),
        new RoundsAgainstDose(),
        new ConditionNotAsked(),
        new ContraindicatedExercise(),
        new ClearanceMissing(),
        new ClearanceExpired(),
        new EditionOutlivesClearance(),
        new PainWhereLoaded(),
        new PainAboveStop(),
        new SignCameBack(),
        new PainCameBack(),
        new MoreAfterPain(),
        new ClientTooYoung(),
        new RestrictionBroken(),
        new YesWithoutEffect(),
        new AgreementMissing(),
        new EffortAboveYouthLimit(),
        new AnswersStale(),
        new DoseOutsideEnvelope(),
        new DoseTooLong(),
        new SessionOverTime(),
        new DayOverTime(),
        new DayNotAvailable(),
        new LighterFirstWeek(),
        new LighterNotLighter(),
        new LineOutOfUse(),
        new UseTwice(),
        new WeekWithoutTraining(),
        new ControlBeforeGain(),
        new GainWithoutControl(),
        new StrengthenUnmeasured(),
        new DaysTooClose(),
        new LargeStep(),
        new TwoThingsAtOnce(),
        new GrowthUnfinished(),
        new GrowthCoarse(),
        new SessionGrowsFast(),
        new UnderDosedStretch(),
        new HoldShortForAge(),
        new LongInOnePosition(),
        new EquipmentMissing(),
        new RangeBelowNeed(),
        new NeedUnmeasured(),
        new RangeNearNeed(),
        new ReadingInFuture(),
        new ReadingsFarApart(),
        new DemandUnmeasured(),
        new DemandWithoutWork(),
        new WorkWithoutDemand(),
        new HealthNewsCameBack(),
        new TrainedWhileOut(),
        new RetestMissing(),
        new RangeLost(),
        new RangeNumberMissing(),
        new LetterGreetsAnother(),
        new TooManyCautions(),
        new PastWeekChanged(),
        new StartPassed(),
        new ProgrammeOver(),
        new CautionUnused(),
        new ExerciseUnused(),
        new AnswerUnused(),
        new TranslationUnused(),
        new GlossaryUnused(),
        new ThemeUnchecked(),
        new NotAsPublished(),
        new PageWithoutCautions(),
        new CautionAltered(),
        new CautionHidden(),
        new CautionAfterInstruction(),
        new WeekMissing(),
        new TimesDoNotAddUp(),
        new TimeAgainstText(),
        new SideNamedWrong(),
        new StanceMissing(),
        new StepAltered(),
        new PlanWordsAltered(),
        new TextNotPlanned(),
        new MarkupNotKnown(),
        new UnexplainedTerm(),
        new CalendarAgainstPlan(),
        new BarDrawnWrong(),
        new FigureToldWrong(),
        new RangeToldWrong(),
        new PageUnplanned(),
        new FileUnplanned(),
        new MetadataHandedOver(),
        new SiteTooHeavy(),
        new GoodUntilMissing(),
        new CautionNotInSession(),
        new GuideToldWrong(),
        new WeekToldWrong(),
        new FileListWrong(),
        new LinkBrokenOnPage(),
        new AddressToNetwork(),
        new PolicyWeak(),
        new LockWrong(),
        new LinkShared(),
        new ScriptOrStyleFromAuthor(),
        new ScriptAskedWrong(),
        new StyleNotKnown(),
        new LanguageMissing(),
        new LabelMissing(),
        new HeadingSkipped(),
        new ContrastTooLow(),
        new OtherClientNamed(),
        new AcceptanceRefused(),
        new AcceptanceEnded(),
        new AcceptanceUnused(),
    ];

    private static readonly HashSet<RuleId> ToldOnce = [.. Rules.OfType<IToldOnceRule>().Select(rule => rule.Id)];

    /// <summary>Practice → findings.</summary>
    /// <param name="trainings">One of each client of the practice.</param>
    /// <param name="today">Decides findings only, never a page.</param>
    /// <param name="whole">Whether every file of the practice could be read; what is unused is judged only then.</param>
    public static IEnumerable<Finding> Check(
        Practice practice,
        IReadOnlyDictionary<ClientId, Training> trainings,
        DateOnly today,
        bool whole = true
    )
    {
        foreach (var finding in CheckShared(practice, whole))
            yield return finding;
        foreach (var client in practice.Clients)
        foreach (var finding in Check(practice, client, trainings[client.Id], today, whole))
            yield return finding;
    }

    /// <summary>The part of <see cref="Check(Practice, IReadOnlyDictionary{ClientId, Training}, DateOnly, bool)"/> that is about
    /// what all clients share.</summary>
    public static IEnumerable<Finding> CheckShared(Practice practice, bool whole = true) =>
        Rules.OfType<IPracticeRule>().Where(rule => whole || rule is not IWholeRule).SelectMany(rule => rule.Check(practice));

    /// <summary>The part of it that is about one client.</summary>
    public static IEnumerable<Finding> Check(
        Practice practice,
        Client client,
        Training training,
        DateOnly today,
        bool whole = true
    ) =>
        Rules
            .OfType<IClientRule>()
            .Where(rule => whole || rule is not IWholeRule)
            .Where(rule => training.IsCountable || rule is not ICountingRule)
            .SelectMany(rule => rule.Check(practice, client, training, today));

    /// <summary>Plan + finished site → findings.</summary>
    /// <param name="others">The names of the other clients, for the one rule that looks for them.</param>
    public static IEnumerable<Finding> Audit(Plan plan, Site site, IEnumerable<string> others) =>
        Audit(plan, site, new AuditRun(others));

    /// <summary>The same, for one of many sites.</summary>
    public static IEnumerable<Finding> Audit(Plan plan, Site site, AuditRun run) =>
        from reading in SiteSeen.Of(plan, site, run)
        from rule in Rules.OfType<ISiteRule>()
        from finding in rule.Check(plan, reading)
        select finding;

    /// <summary>A site that was published earlier + the one that the sources make now → findings.</summary>
    public static IEnumerable<Finding> Compare(Plan plan, Site found, Site made) =>
        Rules.OfType<IPublishedRule>().SelectMany(rule => rule.Check(plan, found, made));

    /// <summary>A locked site that nobody opened, and of which nothing tells that it is the one that the sources make
    /// now.</summary>
    /// <param name="path">What the file is called.</param>
    public static Finding NotKnown(ClientId client, string path) => NotAsPublished.Locked(client, path);

    /// <summary>A theme that a folder holds → findings. What comes with Gradus needs none.</summary>
    public static IEnumerable<Finding> Judge(ThemeSeen theme) => Rules.OfType<IThemeRule>().SelectMany(rule => rule.Check(theme));

    /// <summary>A finished intake sheet + the theme that it was made with → findings.</summary>
    /// <param name="page">The whole page.</param>
    public static IEnumerable<Finding> Audit(IntakeSheet sheet, string page, ThemeSeen theme)
    {
        var seen = IntakeSheetSeen.Of(page, theme);
        return Rules.OfType<ISheetRule>().SelectMany(rule => rule.Check(sheet, seen));
    }

    /// <summary>Everything that was found, without the warnings and notes that a coach accepts, and with what is wrong about
    /// accepting them. Errors stay. What is left and has one cause is said once: an acceptance names one of its places.</summary>
    /// <param name="findings">Those of reading, rendering and the rules together.</param>
    /// <param name="pages">Those of every rule, wherever it is judged: what has no page cannot be accepted.</param>
    /// <param name="today">An acceptance holds until the end of its last day.</param>
    public static IEnumerable<Finding> Accept(
        IEnumerable<Finding> findings,
        Series<Acceptance> acceptances,
        IEnumerable<RulePage> pages,
        DateOnly today
    )
    {
        var found = findings.ToSeries();
        var accepted = Accepted.Of(acceptances, found, pages);
        var taken = accepted.Where(a => a.Holds(today)).SelectMany(a => a.Fits).ToHashSet();
        var left = found.Where(f => !taken.Contains(f)).ToLookup(f => ToldOnce.Contains(f.Rule));
        return left[true]
            .OncePerCause(f => $"{f.Rule} {f.Message}")
            .Concat(left[false])
            .Concat(Rules.OfType<IAcceptanceRule>().SelectMany(rule => rule.Check(accepted, today)));
    }

    /// <summary>What would stop those uses today beside what screening itself holds against them: ages, days, ranges, youth and
    /// restrictions. Errors alone.</summary>
    /// <param name="training">With the uses that are asked about; with none for what stops whatever is done.</param>
    public static IEnumerable<Finding> StopsToday(Practice practice, Client client, Training training, DateOnly today) =>
        Rules
            .OfType<IStoppingRule>()
            .SelectMany(rule => rule.Check(practice, client, training, today))
            .Where(f => f.Level == Level.Error);

    /// <summary>The page of every rule, in the same order.</summary>
    public static IEnumerable<RulePage> Pages() => Rules.Select(rule => RulePage.Of(rule.Id, Assembly.GetExecutingAssembly()));
}
