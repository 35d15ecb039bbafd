using Progression.Core.Doses;
using Progression.Core.Library;
using Progression.Core.Quantities;

namespace Progression.Core.Tests.Doses;

/// <summary>Sets x repetitions x times a day; figures reckoned by hand.</summary>
public sealed class ActiveDoseTests
{
    [Fact] // 3 x 10 x 2 = 60 repetitions of 6 s, 120 kg repetitions at 2 kg.
    public void A_moving_repetition_counts_its_movement_and_its_hold()
    {
        MuscleWork work = ActiveDose.OfDay(Known("straight-leg-raise"), Dose(3, 10, 2, hold: 2, kilograms: 2)); // 4 s + 2 s

        Assert.Equal(new MuscleWork(60, 360, 120), work);
    }

    [Theory]
    [InlineData(7.0, 140)]
    [InlineData(null, 100)] // its repetition time, 5 s
    public void A_held_repetition_counts_its_hold(double? hold, double seconds) =>
        Assert.Equal(new MuscleWork(20, seconds, 0), ActiveDose.OfDay(Known("quad-set"), Dose(2, 10, 1, hold)));

    [Theory]
    [InlineData("heel-prop")] // passive
    [InlineData("heel-slide")] // of no muscle
    public void Range_work_is_no_work_of_a_muscle(string exercise) =>
        Assert.Equal(MuscleWork.None, ActiveDose.OfDay(Known(exercise), Dose(3, 10, 1, hold: 5)));

    [Fact]
    public void Minutes_add_time_for_the_patient_but_no_contractions()
    {
        ExerciseDose dose = ExerciseDose.InTime(Duration.FromSeconds(300), 3);

        Assert.Equal(MuscleWork.None, ActiveDose.OfDay(Known("sit-to-stand"), dose));
        Assert.Equal(900, ActiveDose.SecondsOfDay(Known("sit-to-stand"), dose, 60));
    }

    [Fact] // Twice a day 3 sets of 10 at 5 s and two rests of 60 s: 2 x (150 + 120) = 540 s.
    public void Time_of_the_patient_counts_rest_between_sets_only() =>
        Assert.Equal(540, ActiveDose.SecondsOfDay(Known("long-arc-part"), Dose(3, 10, 2), 60));

    [Fact]
    public void Work_adds_up()
    {
        MuscleWork day = new(10, 50, 5);

        Assert.Equal(new MuscleWork(30, 150, 15), day.Times(2).Plus(day));
        Assert.Equal(MuscleWork.None, day.Times(0));
    }

    private static Exercise Known(string id) => Knee.Library.Exercises[id];

    private static ExerciseDose Dose(int sets, int repetitions, int times, double? hold = null, double? kilograms = null) =>
        ExerciseDose.InRepetitions(sets, repetitions, times) with
        {
            Hold = hold is double seconds ? Duration.FromSeconds(seconds) : null,
            Load = kilograms is double mass ? ExerciseLoad.Of(Mass.FromKilograms(mass)) : null,
        };
}
