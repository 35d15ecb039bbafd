using System.Collections.Immutable;
using Progression.Core.Library;
using Progression.Core.Quantities;

namespace Progression.App.Tests.Grid;

/// <summary>A small invented library, so that pictures of the grid do not move with the shipped data.</summary>
internal static class SampleLibrary
{
    private static readonly Source Practice = new("Invented for the tests", Standing.CommonPractice);

    public static ClinicalLibrary Library { get; } = new()
    {
        Version = "sample-1",
        Limits = new[] { Limit(LimitIds.RestBetweenSets, 60, "s"), Limit(LimitIds.PairingRatio, 1, "1"), Limit(LimitIds.LoadRise, 50, "%"), Limit(LimitIds.MinutesPerDay, 90, "min") }
            .ToImmutableSortedDictionary(limit => limit.Id, limit => limit, StringComparer.Ordinal),
        Ladder =
        [
            new(Rung.Familiarise, "Familiarise", "Get used", Percentage.FromPercent(50), 1, Practice),
            new(Rung.HighVolume, "High volume", "High", Percentage.FromPercent(100), 2, Practice),
            new(Rung.Reduced, "Reduced", "Reduced", Percentage.FromPercent(60), 2, Practice),
            new(Rung.LowVolume, "Low volume", "Low", Percentage.FromPercent(30), 2, Practice),
            new(Rung.Stopped, "Stopped", "Stopped", Percentage.FromPercent(0), null, Practice),
        ],
        Regimens = Sorted(Regimen, regimen => regimen.Id),
        DefaultRegimen = "sample-course",
        Exercises = Exercises.ToImmutableSortedDictionary(exercise => exercise.Id, exercise => exercise, StringComparer.Ordinal),
        Milestones = [new("bend-two", "Bends to 80 deg", MeasureIds.FlexionActive, 2, 80, true, Practice)],
        Screening = [],
        RedFlags = [],
        Measures = Measures.ToImmutableSortedDictionary(measure => measure.Id, measure => measure, StringComparer.Ordinal),
    };

    private static Limit Limit(string id, double value, string unit) => new(id, id, value, unit, Practice);

    private static IEnumerable<Measure> Measures =>
    [
        Measure(MeasureIds.FlexionActive, "Active flexion", "deg", 0, 160, Direction.HigherIsBetter),
        Measure(MeasureIds.ExtensionPassive, "Passive extension deficit", "deg", -15, 60, Direction.LowerIsBetter),
        Measure(MeasureIds.Lag, "Extension lag", "deg", -15, 60, Direction.LowerIsBetter),
        Measure(MeasureIds.PreOpShare, "Quadriceps, of pre-op", "%", 0, 200, Direction.HigherIsBetter),
    ];

    private static IEnumerable<Exercise> Exercises =>
    [
        Exercise("set-with-stim", "Quad set along with stim", "Set + stim", ActiveSlot.QuadsWithStim, MuscleGroup.Quadriceps),
        Exercise("quad-set", "Quad set", "Quad set", ActiveSlot.QuadsStrength, MuscleGroup.Quadriceps),
        Exercise("leg-raise", "Straight-leg raise", "Leg raise", ActiveSlot.QuadsStrength, MuscleGroup.Quadriceps) with { Rank = 2 },
        Exercise("sit-to-stand", "Sit to stand", "Sit-stand", ActiveSlot.QuadsFunction, MuscleGroup.Quadriceps) with { Contraction = ContractionType.Dynamic },
        Exercise("heel-slide", "Heel slide", "Heel slide", ActiveSlot.Bend, MuscleGroup.None) with { Contraction = ContractionType.Dynamic },
        Exercise("heel-prop", "Heel prop", "Heel prop", ActiveSlot.Straighten, MuscleGroup.None) with { Contraction = ContractionType.Passive },
        Exercise("ankle-pump", "Ankle pump", "Ankle pump", ActiveSlot.Calf, MuscleGroup.Calf) with { Contraction = ContractionType.Dynamic },
        Exercise("walk", "Walking with a frame", "Walk frame", ActiveSlot.Walking, MuscleGroup.None) with { Contraction = ContractionType.Dynamic },
    ];

    private static Regimen Regimen => new()
    {
        Id = "sample-course",
        Title = "Sample course",
        Population = "invented",
        Contractions = Stated<int>.As(15, Standing.CommonPractice),
        SessionLength = Stated<Duration>.Open,
        On = Stated<Duration>.As(Duration.FromSeconds(10), Standing.CommonPractice),
        Off = Stated<Duration>.As(Duration.FromSeconds(50), Standing.CommonPractice),
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
        Isometric = Stated<bool>.As(true, Standing.CommonPractice),
        Intensity = Stated<string>.Open,
        SessionsPerDay = Stated<int>.As(2, Standing.CommonPractice),
        DaysPerWeek = Stated<int>.As(7, Standing.CommonPractice),
        Weeks = Stated<int>.As(6, Standing.CommonPractice),
        ActiveWork = Stated<string>.Open,
        Outcome = "none",
        Source = Practice,
    };

    private static Measure Measure(string id, string title, string unit, double least, double most, Direction better) => new()
    {
        Id = id,
        Title = title,
        Unit = unit,
        Better = better,
        Least = least,
        Most = most,
        Scale = ErrorScale.Linear,
        Source = Practice,
    };

    private static Exercise Exercise(string id, string title, string brief, ActiveSlot slot, MuscleGroup muscle) => new()
    {
        Id = id,
        Title = title,
        Short = brief,
        PatientName = title,
        Muscle = muscle,
        Purpose = "for the tests",
        Slot = slot,
        Rank = 1,
        Position = "lying",
        Contraction = ContractionType.Isometric,
        Needs = new(),
        Start = ExerciseDose.InRepetitions(3, 10),
        Progression = new(ProgressionMethod.Steady, 0, 1, 0),
        RepetitionSeconds = 3,
        Resisted = false,
        Source = Practice,
    };

    private static ImmutableSortedDictionary<string, T> Sorted<T>(T only, Func<T, string> id) =>
        new[] { only }.ToImmutableSortedDictionary(id, item => item, StringComparer.Ordinal);
}
