using Progression.Core.Library;
using Progression.Core.Measures;
using Progression.Core.People;

namespace Progression.Core.Tests.Measures;

/// <summary>What another rater, device, position or number of trials does to a comparison.</summary>
public sealed class ChangeCircumstancesTests
{
    private static readonly Reading Passive = new(MeasureIds.FlexionPassive, 80);

    [Theory] // Part 1.2: 4 deg same rater, 6 when rater or position changes: 9.30 and 13.96 deg at 90 % [C].
    [InlineData("KL", "KL", 9.30, ChangeClass.Improved)]
    [InlineData("KL", "kl ", 9.30, ChangeClass.Improved)]
    [InlineData("KL", "MB", 13.96, ChangeClass.NoDetectableChange)]
    [InlineData("KL", null, 9.30, ChangeClass.Improved)] // not stated is not another
    public void Another_rater_takes_the_error_between_raters(string old, string? now, double detectable, ChangeClass expected)
    {
        Change change = Compared(Visit.On(7, old).With(Passive), Visit.On(28, now).With(Passive with { Value = 92 }));

        Assert.Equal(detectable, change.Detectable!.Value, 5e-3);
        Assert.Equal(expected, change.Class);
    }

    [Fact]
    public void The_rater_of_a_reading_goes_before_that_of_the_visit() =>
        Assert.Contains("rater KL, then MB: the error for that is taken", Compared(
            Visit.On(7, "KL").With(Passive), Visit.On(28, "KL").With(Passive with { Rater = "MB" })).Notes);

    [Fact]
    public void Another_device_or_position_is_told_too()
    {
        Change change = Compared(
            Visit.On(7).With(Passive with { Device = "Long goniometer", Position = "Sitting" }),
            Visit.On(28).With(Passive with { Device = "Inclinometer", Position = "Supine" }));

        Assert.Equal(["device Long goniometer, then Inclinometer", "position Sitting, then Supine"], change.Notes.Take(2).Select(note => note.Split(':')[0]));
        Assert.StartsWith("Lenssen 2007", change.Source.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_no_error_is_published_for_it_the_usual_one_is_taken_and_the_doubt_told()
    {
        Change change = Compared(
            Visit.With(7, MeasureIds.FlexionActive, 80).With(new Reading(MeasureIds.FlexionActive, 80) { Rater = "KL" }),
            Visit.On(28).With(new Reading(MeasureIds.FlexionActive, 92) { Rater = "MB" }), MeasureIds.FlexionActive);

        Assert.Equal(9.30, change.Detectable!.Value, 5e-3);
        Assert.Contains(change.Notes, note => note.Contains("compare with care", StringComparison.Ordinal));
    }

    [Theory] // Almeida 2010: 11 steps.
    [InlineData(11, 11, true)]
    [InlineData(null, null, true)]
    [InlineData(11, 9, false)]
    [InlineData(11, null, false)]
    public void Stairs_compare_on_the_same_stairs_only(int? old, int? now, bool comparable)
    {
        Change change = Compared(
            Visit.On(7).With(new Reading("stairs_up", 20) { Steps = old }), Visit.On(28).With(new Reading("stairs_up", 12) { Steps = now }), "stairs_up");

        Assert.Equal(comparable ? ChangeClass.Improved : null, change.Class);
        Assert.Equal(comparable, change.WhyNot is null);
    }

    [Fact] // Part 1.0: k repeats averaged have SEM / sqrt(k); two errors of 4 deg, of one trial and of the mean of four: 1.645 x sqrt(16 + 4) = 7.36.
    public void A_mean_of_trials_is_surer_only_where_the_error_is_that_of_one_trial()
    {
        Visit one = Visit.With(7, MeasureIds.FlexionActive, 80), four = Visit.On(28).With(Reading.OfTrials(MeasureIds.FlexionActive, [88, 87, 89, 88]));
        ClinicalLibrary ofOne = Visit.Library(MeasureIds.FlexionActive, measure => measure with { ErrorOfOneTrial = true });

        Assert.Equal(7.36, Compared(one, four, MeasureIds.FlexionActive, ofOne).Detectable!.Value, 5e-3);
        Assert.Equal(9.30, Compared(one, four, MeasureIds.FlexionActive).Detectable!.Value, 5e-3);
    }

    [Fact] // Part 4.3: two equal values with SEM s are one with s / sqrt(2).
    public void Two_equal_trials_are_one_with_the_error_over_root_two()
    {
        ClinicalLibrary ofOne = Visit.Library(MeasureIds.FlexionActive, measure => measure with { ErrorOfOneTrial = true });
        ClinicalLibrary finer = Visit.Library(MeasureIds.FlexionActive, measure => measure with { StandardError = 2.8284271247 });

        Assert.Equal(
            Visit.Change(MeasureIds.FlexionActive, 80, 88, finer).Detectable!.Value,
            Compared(Visit.On(7).With(Reading.OfTrials(MeasureIds.FlexionActive, [80, 80])), Visit.On(28).With(Reading.OfTrials(MeasureIds.FlexionActive, [88, 88])), MeasureIds.FlexionActive, ofOne).Detectable!.Value,
            1e-6);
    }

    private static Change Compared(Visit old, Visit now, string measure = MeasureIds.FlexionPassive, ClinicalLibrary? library = null) =>
        Changes.Between(old.State(), now.State(), measure, library ?? Knee.Library)!;
}
