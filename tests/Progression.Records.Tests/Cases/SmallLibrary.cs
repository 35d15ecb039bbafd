using System.Collections.Immutable;
using Progression.Core.Library;
using Progression.Core.Quantities;
using Progression.Records.Library;

namespace Progression.Records.Tests.Cases;

/// <summary>A library just large enough to read cases against; the figures are those of the shipped one where a test reads them.</summary>
internal static class SmallLibrary
{
    private static readonly Source Source = new("Made for tests", Standing.CommonPractice);

    public static ClinicalLibrary Value { get; } = new()
    {
        Limits = LibraryReader.Default().Limits,
        Ladder = [],
        Regimens = ImmutableSortedDictionary<string, Regimen>.Empty.Add("strong-15-twice-daily", Regimen("strong-15-twice-daily")),
        DefaultRegimen = "strong-15-twice-daily",
        Exercises = new[] { Exercise("quad-set"), Exercise("brisk-walk") }
            .ToImmutableSortedDictionary(exercise => exercise.Id, exercise => exercise, StringComparer.Ordinal),
        Milestones = [],
        RedFlags = LibraryReader.Default().RedFlags,
        Screening =
        [
            Item("active-implant", ScreeningKind.Contraindication, true), Item("infection", ScreeningKind.Contraindication, false),
            Item("sensitive-skin", ScreeningKind.Precaution, true), Item("metal-implant", ScreeningKind.NoConcern, false),
        ],
        Measures = new[]
        {
            Measure(MeasureIds.FlexionActive, "deg", 0, 160), Measure(MeasureIds.FlexionPassive, "deg", 0, 160),
            Measure(MeasureIds.ExtensionActive, "deg", -15, 60) with { StandardError = 3 }, Measure(MeasureIds.ExtensionPassive, "deg", -15, 60) with { StandardError = 3 },
            Measure(MeasureIds.Lag, "deg", -5, 60) with { StandardError = 4.2 },
            Measure(MeasureIds.QuadricepsTorque, "Nm", 0, 400), Measure(MeasureIds.OtherTorque, "Nm", 0, 400),
            Measure(MeasureIds.QuadricepsForce, "N", 0, 1000), Measure(MeasureIds.OtherForce, "N", 0, 1000), Measure(MeasureIds.LeverArm, "cm", 5, 60),
            Measure(MeasureIds.PreOpShare, "%", 0, 300), Measure(MeasureIds.Index, "%", 0, 200),
            Measure(MeasureIds.StraightLegRaises, "1", 0, 50) with { Whole = true }, Measure(MeasureIds.Effusion, "1", 0, 4) with { Whole = true },
            Measure(MeasureIds.PainRest, "1", 0, 10) with { Whole = true }, Measure(MeasureIds.PainActivity, "1", 0, 10) with { Whole = true },
            Measure(MeasureIds.PainNextMorning, "1", 0, 10) with { Whole = true },
            Measure("timed_up_and_go", "s", 3, 120), Measure("gait_speed", "m/s", 0, 3), Measure("stairs_up", "s", 2, 180),
            Measure("muscle_test", "1", 0, 5) with { Scale = ErrorScale.Ordinal },
        }.ToImmutableSortedDictionary(measure => measure.Id, measure => measure, StringComparer.Ordinal),
        Version = "small",
    };

    private static Measure Measure(string id, string unit, double least, double most) => new()
    {
        Id = id,
        Title = id,
        Unit = unit,
        Better = Direction.HigherIsBetter,
        Least = least,
        Most = most,
        Scale = ErrorScale.Linear,
        Source = Source,
    };

    private static Exercise Exercise(string id) => new()
    {
        Id = id,
        Title = id,
        Short = id[..4],
        PatientName = id,
        Muscle = MuscleGroup.Quadriceps,
        Purpose = "None",
        Slot = ActiveSlot.QuadsStrength,
        Rank = 1,
        Position = "Any",
        Contraction = ContractionType.Isometric,
        Needs = new ExerciseNeeds(),
        Start = ExerciseDose.InRepetitions(3, 10),
        Progression = new DoseProgression(ProgressionMethod.Steady, 0, 1, 0),
        RepetitionSeconds = 4,
        Resisted = false,
        Source = Source,
    };

    private static ScreeningItem Item(string id, ScreeningKind kind, bool canBeCleared) => new()
    {
        Id = id,
        Question = id + "?",
        Kind = kind,
        Where = "Local",
        Action = "Ask.",
        CanBeCleared = canBeCleared,
        Source = Source,
    };

    private static Regimen Regimen(string id) => new()
    {
        Id = id,
        Title = id,
        Population = "Nobody",
        Contractions = Stated<int>.As(15, Standing.Seen),
        SessionLength = Stated<Duration>.Open,
        On = Stated<Duration>.Open,
        Off = Stated<Duration>.Open,
        RampUp = Stated<Duration>.Open,
        RampDown = Stated<Duration>.Open,
        Ramps = Stated<RampPlacement>.Open,
        Rate = Stated<Frequency>.Open,
        Width = Stated<PulseWidth>.Open,
        WidthIs = Stated<WidthBasis>.Open,
        Waveform = Stated<Waveform>.Open,
        Carrier = Stated<Frequency>.Open,
        BurstDuty = Stated<Percentage>.Open,
        Pad = Stated<PadSize>.Open,
        Position = Stated<string>.Open,
        Isometric = Stated<bool>.Open,
        Intensity = Stated<string>.Open,
        SessionsPerDay = Stated<int>.Open,
        DaysPerWeek = Stated<int>.Open,
        Weeks = Stated<int>.Open,
        ActiveWork = Stated<string>.Open,
        Outcome = "None",
        Source = Source,
    };
}
