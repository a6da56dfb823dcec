using System.Diagnostics.CodeAnalysis;
using System.Reflection;
using Gradus.Domain;

namespace Gradus.Trainings;

/// <summary>The fields of every type of which a training is made. They are named here, type by type, so that native compilation
/// leaves them where they are: without them a training would have another hash there.</summary>
internal static class FactFields
{
    private const BindingFlags Declared =
        BindingFlags.Instance | BindingFlags.NonPublic | BindingFlags.Public | BindingFlags.DeclaredOnly;

    private static readonly Dictionary<Type, FieldInfo[]> Types = new([
        Of<Amount>(),
        Of<Amount.Breaths>(),
        Of<Amount.Metres>(),
        Of<Amount.Reps>(),
        Of<Amount.Span>(),
        Of<CautionId>(),
        Of<ClearanceLimit>(),
        Of<ClearanceLimit.EffortAtMost>(),
        Of<ClearanceLimit.HoldAtMost>(),
        Of<ClearanceLimit.NoEndRangeTrunkBending>(),
        Of<ClearanceLimit.NotLyingOnTheFront>(),
        Of<ClearanceLimit.NotLyingOnTheBack>(),
        Of<ClientId>(),
        Of<CoarseStep>(),
        Of<ConditionId>(),
        Of<Count>(),
        Of<DayRules>(),
        Of<Dose>(),
        Of<DoseAction>(),
        Of<DoseMeasures>(),
        Of<DosePart>(),
        Of<DosePart.Group>(),
        Of<DosePart.Single>(),
        Of<DoseTerms>(),
        Of<Drill>(),
        Of<Effort>(),
        Of<Effort.Felt>(),
        Of<Effort.Ramp>(),
        Of<Effort.Steady>(),
        Of<ExerciseId>(),
        Of<LoadedRegion>(),
        Of<Motion>(),
        Of<Objection>(),
        Of<Objection.BeyondLimit>(),
        Of<Objection.CameBack>(),
        Of<Objection.ClearanceShort>(),
        Of<Objection.Forbidden>(),
        Of<Objection.Loaded>(),
        Of<Objection.NotAsked>(),
        Of<Objection.NotCleared>(),
        Of<Objection.Painful>(),
        Of<Objection.TooEarly>(),
        Of<Objection.Unread>(),
        Of<Pain>(),
        Of<PainPlace>(),
        Of<PlayedRole>(),
        Of<PlayedSport>(),
        Of<Plus>(),
        Of<Refusal>(),
        Of<Refusal.SideUnresolved>(),
        Of<Refusal.SportUnread>(),
        Of<Refusal.TooLong>(),
        Of<Region>(),
        Of<RestrictionBreach>(),
        Of<RoleMeant>(),
        Of<Seconds>(),
        Of<SessionDays>(),
        Of<SessionDays.BeforePlay>(),
        Of<SessionDays.EveryDays>(),
        Of<SessionDays.On>(),
        Of<SessionDays.TimesAWeek>(),
        Of<SessionStep>(),
        Of<SettledAction>(),
        Of<SettledDose>(),
        Of<SettledEffort>(),
        Of<SettledEffort.Felt>(),
        Of<SettledEffort.Ramp>(),
        Of<SettledEffort.Steady>(),
        Of<SettledPart>(),
        Of<SideName>(),
        Of<SideName.Body>(),
        Of<SideName.Role>(),
        Of<SideTerm>(),
        Of<SideTerm.Alternate>(),
        Of<SideTerm.Both>(),
        Of<SideTerm.Each>(),
        Of<SideTerm.On>(),
        Of<SportId>(),
        Of<Stances>(),
        Of<StepPlace>(),
        Of<StepWork>(),
        Of<Tempo>(),
        Of<TimedWeeks>(),
        Of<TimelineStep>(),
        Of<TimelineStep.Pause>(),
        Of<TimelineStep.Rest>(),
        Of<TimelineStep.Switch>(),
        Of<TimelineStep.Work>(),
        Of<TrainedDate>(),
        Of<TrainedExercise>(),
        Of<TrainedSession>(),
        Of<TrainedWeek>(),
        Of<Training>(),
        Of<UnbrokenTime>(),
        Of<Use>(),
        Of<UseGrowth>(),
        Of<WeekDose>(),
        Of<WeekLoad>(),
        Of<WeekSession>(),
        Of<WorkMeasures>(),
        Of<WorkedSides>(),
    ]);

    /// <summary>Those that the type itself declares; those of the type that it is derived from have their own line.</summary>
    /// <exception cref="NotSupportedException">It is none of them.</exception>
    public static FieldInfo[] DeclaredBy(Type type) =>
        Types.TryGetValue(type, out var fields) ? fields : throw new NotSupportedException($"No fingerprint of {type}.");

    private static KeyValuePair<Type, FieldInfo[]> Of<
        [DynamicallyAccessedMembers(DynamicallyAccessedMemberTypes.PublicFields | DynamicallyAccessedMemberTypes.NonPublicFields)]
            T
    >() => new(typeof(T), typeof(T).GetFields(Declared));
}
