namespace Gradus.Tests.Domain;

/// <summary>A slip in the second reading of the rules, to see that the made cases would notice it.</summary>
internal enum RangeSlip
{
    None,
    BaselineIsTheFirst,
    BaselineIsTheLatest,
    AfterTrainingCounts,
    DaysOfAWeekStayApart,
    OneRaterForAll,
    NinetyAsItStands,
    TriesDoNotMatter,
    DaysDoNotMatter,
    OwnPairsNever,
    OwnPairsFromTwo,
    OwnPairsInTraining,
    LeaningPairsCount,
    ErrorIsLeftOut,
    EveryMoreIsGain,
    SidesOfOtherDays,
    InstrumentsTogether,
    LessIsNotSaid,
    OldIsGood,
    RoleIsRightHanded,
    ModesTogether,
}

/// <param name="Work">What the programme gains: the motion, the side, the first and the last week.</param>
internal sealed record SecondClient(
    string Csv,
    DateOnly Start,
    int Weeks,
    bool IsRightHanded,
    bool IsVeryMobile,
    (string Motion, string Side, int From, int Until)[] Work
);
