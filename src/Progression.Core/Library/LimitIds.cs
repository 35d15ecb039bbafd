using System.Collections.Immutable;

namespace Progression.Core.Library;

/// <summary>The thresholds that the rules read, each with the unit it must be given in. A library without one of them is refused.</summary>
public static class LimitIds
{
    /// <summary>Extension lag at or under which the lag counts as closed.</summary>
    public const string LagClosed = "ladder.lag-closed";
    /// <summary>Shortest time between the two assessments that confirm a closed lag.</summary>
    public const string LagConfirmedAfter = "ladder.lag-confirmed-after";
    /// <summary>Guard band for one reading alone, in standard errors of measurement.</summary>
    public const string LagGuardSems = "ladder.lag-guard-sems";
    /// <summary>Passive extension deficit over which a small lag is not recovery.</summary>
    public const string PassiveDeficit = "ladder.passive-deficit";
    /// <summary>Repetitions of the straight-leg raise asked for.</summary>
    public const string StraightLegRaises = "ladder.straight-leg-raises";
    /// <summary>Shortest stay on a rung.</summary>
    public const string DaysOnRung = "ladder.days-on-rung";
    /// <summary>Sessions after which familiarising ends with a note.</summary>
    public const string FamiliariseSessions = "ladder.familiarise-sessions";
    /// <summary>Post-op day from which the response to stim is judged.</summary>
    public const string ResponseDay = "ladder.response-day";
    /// <summary>Quadriceps index that opens the step from high volume to reduced.</summary>
    public const string HighToReducedIndex = "ladder.high-to-reduced-index";
    /// <summary>Share of pre-op strength that opens the step from reduced to low volume.</summary>
    public const string ReducedToLowPreOp = "ladder.reduced-to-low-pre-op";
    /// <summary>Quadriceps index that opens the step from reduced to low volume.</summary>
    public const string ReducedToLowIndex = "ladder.reduced-to-low-index";
    /// <summary>Share of pre-op strength at which stim may stop.</summary>
    public const string StopPreOp = "ladder.stop-pre-op";
    /// <summary>Quadriceps index at which stim may stop.</summary>
    public const string StopIndex = "ladder.stop-index";
    /// <summary>Rise of lag that, seen on two readings, steps back.</summary>
    public const string LagRise = "ladder.lag-rise";
    /// <summary>Time over which no detectable change counts as a plateau.</summary>
    public const string PlateauAfter = "ladder.plateau-after";
    /// <summary>Post-op week in which criteria met without a step are warned of.</summary>
    public const string StimReviewWeek = "ladder.stim-review-week";
    /// <summary>Post-op week of the hard review of stim.</summary>
    public const string HardReviewWeek = "ladder.hard-review-week";
    /// <summary>Confidence level of a detectable change, in percent.</summary>
    public const string ChangeLevel = "change.level";
    /// <summary>Correlation assumed between the errors of active and passive extension.</summary>
    public const string LagErrorCorrelation = "change.lag-error-correlation";
    /// <summary>Share of the detectable change from which a fall is told as possible worsening.</summary>
    public const string EarlyWorsening = "change.early-worsening";
    /// <summary>Extension beyond straight that is asked back as a sign turned round.</summary>
    public const string BeyondStraight = "entry.beyond-straight";
    /// <summary>How close to the factor of another unit two strengths must be for the unit to be asked back.</summary>
    public const string UnitTolerance = "entry.unit-tolerance";
    /// <summary>Effusion grades risen at once that count as irritation.</summary>
    public const string EffusionRise = "irritation.effusion-rise";
    /// <summary>Pain points risen that count as irritation.</summary>
    public const string PainRise = "irritation.pain-rise";
    /// <summary>Girth risen against the visit before that counts as irritation.</summary>
    public const string GirthRise = "irritation.girth-rise";
    /// <summary>Pain at rest that counts as irritation by itself.</summary>
    public const string PainRestHigh = "irritation.pain-rest";
    /// <summary>Rise of lag that, with full passive extension, refers.</summary>
    public const string RedFlagLagRise = "red-flag.lag-rise";
    /// <summary>Passive extension deficit that still counts as full extension.</summary>
    public const string RedFlagPassiveFull = "red-flag.passive-full";
    /// <summary>Flexion under which the surgeon is told.</summary>
    public const string FlexionFloor = "red-flag.flexion-floor";
    /// <summary>Post-op week from which the flexion floor holds.</summary>
    public const string FlexionFloorWeek = "red-flag.flexion-floor-week";
    /// <summary>Flexion under which an early warning is given.</summary>
    public const string FlexionEarly = "red-flag.flexion-early";
    /// <summary>Post-op week from which the early warning of flexion holds.</summary>
    public const string FlexionEarlyWeek = "red-flag.flexion-early-week";
    /// <summary>Guard band over the flexion floor within which a knee may be under it, in standard errors.</summary>
    public const string FlexionGuardSems = "red-flag.flexion-guard-sems";
    /// <summary>Active flexion in the first two weeks under which an early warning is given.</summary>
    public const string FlexionFirst = "red-flag.flexion-first";
    /// <summary>First post-op day of that warning.</summary>
    public const string FlexionFirstFrom = "red-flag.flexion-first-from";
    /// <summary>Last post-op day of that warning.</summary>
    public const string FlexionFirstTo = "red-flag.flexion-first-to";
    /// <summary>Chance of reaching the flexion floor under which the surgeon is told.</summary>
    public const string FlexionChance = "red-flag.flexion-chance";
    /// <summary>Post-op week for which that chance is asked.</summary>
    public const string FlexionChanceWeek = "red-flag.flexion-chance-week";
    /// <summary>Post-op week from which flexion must gain.</summary>
    public const string FlexionStallFrom = "red-flag.flexion-stall-from";
    /// <summary>How far from that week the reading may lie that stands for it.</summary>
    public const string FlexionStallNear = "red-flag.flexion-stall-near";
    /// <summary>Flexion under which a missing gain is told.</summary>
    public const string FlexionStallUnder = "red-flag.flexion-stall-under";
    /// <summary>Passive extension deficit over which the surgeon is told, from the week of the flexion floor on.</summary>
    public const string ExtensionCeiling = "red-flag.extension-ceiling";
    /// <summary>Most stimulated contractions to one voluntary contraction in a week.</summary>
    public const string PairingRatio = "pairing.ratio";
    /// <summary>Most change of quadriceps contraction time from one week to the next.</summary>
    public const string LoadRise = "load.weekly-rise";
    /// <summary>Most minutes a day asked of the patient.</summary>
    public const string MinutesPerDay = "load.minutes-per-day";
    /// <summary>Rest between two sets, for the time asked of the patient.</summary>
    public const string RestBetweenSets = "load.rest-between-sets";
    /// <summary>The step in which weights can be put together.</summary>
    public const string LoadStep = "load.step";
    /// <summary>Current density that asks for the operator's attention.</summary>
    public const string CurrentDensity = "stim.current-density";
    /// <summary>Power density that should not be reached.</summary>
    public const string PowerDensity = "stim.power-density";
    /// <summary>Skin resistance on which power density and energy are reckoned.</summary>
    public const string LoadResistance = "stim.load-resistance";
    /// <summary>Output current at or under 400 Hz into the load.</summary>
    public const string OutputLow = "stim.output-low";
    /// <summary>Output current over 400 and up to 1500 Hz into the load.</summary>
    public const string OutputMiddle = "stim.output-middle";
    /// <summary>Output current over 1500 Hz into the load.</summary>
    public const string OutputHigh = "stim.output-high";
    /// <summary>Energy of one pulse into the load.</summary>
    public const string PulseEnergy = "stim.pulse-energy";
    /// <summary>Output over which the maximum at the recommended pads must be stated.</summary>
    public const string OutputStated = "stim.output-stated";
    /// <summary>Usual aim for evoked torque as a share of the maximal voluntary torque.</summary>
    public const string TrainingIntensity = "stim.training-intensity";
    /// <summary>Earliest post-op day of stim.</summary>
    public const string StimFirstDay = "stim.first-day";
    /// <summary>How far a reading may lie from its forecast, in standard deviations, before it is to be measured again.</summary>
    public const string ForecastSurprise = "forecast.surprise";
    /// <summary>Scored forecasts from which a clinic's hit rate is shown.</summary>
    public const string ForecastsScored = "forecast.scored-at-least";
    /// <summary>Share of readings inside the 80 % band under which a clinic is warned.</summary>
    public const string ForecastHitRate = "forecast.hit-rate-at-least";

    /// <summary>Days after the operation on which the first reassessment is due.</summary>
    public const string FirstReassessment = "caseload.first-reassessment";
    /// <summary>Days after the operation on which the second is due.</summary>
    public const string SecondReassessment = "caseload.second-reassessment";
    /// <summary>Days from one reassessment to the next after these two.</summary>
    public const string ReassessmentEvery = "caseload.reassessment-every";
    /// <summary>How early a visit may be and still count as the reassessment that is due.</summary>
    public const string ReassessmentEarly = "caseload.reassessment-early";
    /// <summary>Days of treatment after which a reassessment is due whatever the calendar says.</summary>
    public const string TreatmentDays = "caseload.treatment-days";
    /// <summary>How long after its day a date is still told that nobody can report as done.</summary>
    public const string DueNotice = "caseload.notice";
    /// <summary>Fewest people a figure of the clinic may rest on.</summary>
    public const string SummaryLeast = "summary.least-people";

    /// <summary>Days from the first treatment to the first certification of the plan of care; optional, as the law of the place has it.</summary>
    public const string CertifyWithin = "caseload.certify-within";
    /// <summary>Longest time a certification holds, counted from the first treatment; optional.</summary>
    public const string CertifyEvery = "caseload.certify-every";
    /// <summary>Days from one progress note to the next, counted from the first treatment; optional, for payers that count days besides treatment days.</summary>
    public const string ReportEvery = "caseload.report-every";
    /// <summary>Torque per body mass that opens the step from high volume to reduced where the other knee is no yardstick; optional.</summary>
    public const string HighToReducedPerMass = "ladder.high-to-reduced-torque-per-mass";
    /// <summary>The same for the step from reduced to low volume; optional.</summary>
    public const string ReducedToLowPerMass = "ladder.reduced-to-low-torque-per-mass";
    /// <summary>The same for stopping stim; optional.</summary>
    public const string StopPerMass = "ladder.stop-torque-per-mass";

    /// <summary>Thresholds that a clinic may set and that nothing is shipped for, with their unit: no published figure was found, or the law of the place gives it.</summary>
    public static ImmutableSortedDictionary<string, string> OptionalUnits { get; } = new Dictionary<string, string>
    {
        [HighToReducedPerMass] = "Nm/kg",
        [ReducedToLowPerMass] = "Nm/kg",
        [StopPerMass] = "Nm/kg",
        [CertifyWithin] = "d",
        [CertifyEvery] = "d",
        [ReportEvery] = "d",
    }.ToImmutableSortedDictionary(StringComparer.Ordinal);

    /// <summary>Every threshold that must be present, with its unit.</summary>
    public static ImmutableSortedDictionary<string, string> Units { get; } = new Dictionary<string, string>
    {
        [LagClosed] = "deg",
        [LagConfirmedAfter] = "d",
        [LagGuardSems] = "1",
        [PassiveDeficit] = "deg",
        [StraightLegRaises] = "1",
        [DaysOnRung] = "d",
        [FamiliariseSessions] = "1",
        [ResponseDay] = "d",
        [HighToReducedIndex] = "%",
        [ReducedToLowPreOp] = "%",
        [ReducedToLowIndex] = "%",
        [StopPreOp] = "%",
        [StopIndex] = "%",
        [LagRise] = "deg",
        [PlateauAfter] = "d",
        [StimReviewWeek] = "wk",
        [HardReviewWeek] = "wk",
        [ChangeLevel] = "%",
        [LagErrorCorrelation] = "1",
        [EarlyWorsening] = "1",
        [BeyondStraight] = "deg",
        [UnitTolerance] = "%",
        [EffusionRise] = "1",
        [PainRise] = "1",
        [GirthRise] = "cm",
        [PainRestHigh] = "1",
        [RedFlagLagRise] = "deg",
        [RedFlagPassiveFull] = "deg",
        [FlexionFloor] = "deg",
        [FlexionFloorWeek] = "wk",
        [FlexionEarly] = "deg",
        [FlexionEarlyWeek] = "wk",
        [FlexionGuardSems] = "1",
        [FlexionFirst] = "deg",
        [FlexionFirstFrom] = "d",
        [FlexionFirstTo] = "d",
        [FlexionChance] = "%",
        [FlexionChanceWeek] = "wk",
        [FlexionStallFrom] = "wk",
        [FlexionStallNear] = "wk",
        [FlexionStallUnder] = "deg",
        [ExtensionCeiling] = "deg",
        [PairingRatio] = "1",
        [LoadRise] = "%",
        [MinutesPerDay] = "min",
        [RestBetweenSets] = "s",
        [LoadStep] = "kg",
        [CurrentDensity] = "mA/cm2",
        [PowerDensity] = "W/cm2",
        [LoadResistance] = "ohm",
        [OutputLow] = "mA",
        [OutputMiddle] = "mA",
        [OutputHigh] = "mA",
        [PulseEnergy] = "mJ",
        [OutputStated] = "mA",
        [TrainingIntensity] = "%",
        [StimFirstDay] = "d",
        [ForecastSurprise] = "1",
        [ForecastsScored] = "1",
        [ForecastHitRate] = "%",
        [FirstReassessment] = "d",
        [SecondReassessment] = "d",
        [ReassessmentEvery] = "d",
        [ReassessmentEarly] = "d",
        [TreatmentDays] = "1",
        [DueNotice] = "d",
        [SummaryLeast] = "1",
    }.ToImmutableSortedDictionary(StringComparer.Ordinal);
}
