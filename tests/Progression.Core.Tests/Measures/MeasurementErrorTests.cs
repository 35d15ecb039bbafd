using Progression.Core.Library;
using Progression.Core.Measures;

namespace Progression.Core.Tests.Measures;

/// <summary>Published pairs of standard error and detectable change; figures are the papers' unless marked [C], computed from theirs.</summary>
public sealed class MeasurementErrorTests
{
    [Theory] // Two-sided multipliers times the root of two: standard normal tables.
    [InlineData(90, 2.326174)]
    [InlineData(95, 2.771808)]
    public void One_standard_error_gives_the_multiplier(double level, double multiplier) =>
        Assert.Equal(multiplier, MeasurementError.DetectableChange(1, level), 5e-7);

    [Theory]
    [InlineData(1.14, 90, 2.652, 2.6)] // Almeida 2010, 11 stairs up and down
    [InlineData(0.82, 90, 1.907, 1.9)] // Almeida 2010, up
    [InlineData(13.0, 95, 36.03, 36.1)] // Jakobsen 2013, six-minute walk
    [InlineData(10.39, 95, 28.80, 28.65)] // hand-held dynamometer after revision; the paper multiplied by 1.95
    [InlineData(0.46, 95, 1.275, 1.28)] // Karaguven 2023, timed up and go
    [InlineData(3.391, 95, 9.40, 9.4)] // Lenssen 2007, flexion, standard error from limits of agreement [C]
    [InlineData(28.50, 95, 79.0, 79)] // Naylor 2014, six-minute walk between days [C]
    [InlineData(28.50, 90, 66.3, 66.3)] // the same at the other level [C]
    [InlineData(1.720, 90, 4.0, 4)] // Beard 2015, knee score [C]
    public void Detectable_change_agrees_with_the_paper(double standardError, double level, double exact, double published)
    {
        double detectable = MeasurementError.DetectableChange(standardError, level);

        Assert.Equal(exact, detectable, 0.0006 * exact);
        Assert.Equal(published, detectable, 0.025 * published);
    }

    [Fact] // Two-sided z as printed in tables.
    public void Levels_have_the_usual_z()
    {
        Assert.Equal(1.644854, MeasurementError.Z(90), 5e-7);
        Assert.Equal(1.959964, MeasurementError.Z(95), 5e-7);
    }

    [Fact] // Worked example 16: active 8, passive 2, errors 3 and 3 [C].
    public void One_measured_lag_of_6_cannot_be_told_from_none()
    {
        double error = MeasurementError.OfDifference(3, 3, 0);

        Assert.Equal(4.243, error, 5e-4);
        Assert.Equal(-0.98, 6 - (MeasurementError.Z(90) * error), 5e-3);
        Assert.Equal(12.98, 6 + (MeasurementError.Z(90) * error), 5e-3);
    }

    [Theory] // Part 5.2 of the reference [C]: shared landmark error makes the lag more certain.
    [InlineData(3, 3, 0.5, 3.0)]
    [InlineData(2, 2, 0, 2.828)]
    [InlineData(3, 3, 1, 0)]
    public void Error_of_a_difference_falls_with_the_correlation(double first, double second, double correlation, double expected) =>
        Assert.Equal(expected, MeasurementError.OfDifference(first, second, correlation), 5e-4);

    [Fact] // Standard deviations add as squares: 3, 4 gives 5.
    public void Unlike_errors_add_as_squares() =>
        Assert.Equal(5 * 1.644854, MeasurementError.DetectableChange(3, 4, 90), 5e-6);

    [Fact] // Shipped errors 3 and 3 deg without correlation: 4.243 deg.
    public void Lag_error_of_the_shipped_library_comes_from_both_extensions() =>
        Assert.Equal(4.243, MeasurementError.OfLag(Knee.Library)!.Value, 5e-4);

    [Fact]
    public void Lag_error_is_not_known_without_the_error_of_one_extension() =>
        Assert.Null(MeasurementError.OfLag(Without(MeasureIds.ExtensionPassive)));

    [Theory] // Worked example 17: lag 12 to 4 with errors 3 and 3; detectable 9.87 uncorrelated, 6.98 at 0.5 [C].
    [InlineData(0, ChangeClass.NoDetectableChange)]
    [InlineData(0.5, ChangeClass.Improved)]
    public void Eight_degrees_of_lag_are_real_only_with_shared_error(double correlation, ChangeClass expected) =>
        Assert.Equal(expected, Class(MeasureIds.Lag, 12, 4, Knee.LibraryWith(LimitIds.LagErrorCorrelation, correlation)));

    [Theory] // Gotlin 1994: 7.5 to 5.7 and 5.3 to 8.3 are group means; within one person neither is detectable.
    [InlineData(7.5, 5.7, ChangeClass.NoDetectableChange)]
    [InlineData(5.3, 8.3, ChangeClass.NoDetectableChange)]
    [InlineData(3, 12.86, ChangeClass.NoDetectableChange)] // 9.86 < 9.87
    [InlineData(3, 12.88, ChangeClass.Worse)]
    [InlineData(12.88, 3, ChangeClass.Improved)]
    public void Lag_changes_against_its_own_error(double old, double now, ChangeClass expected) =>
        Assert.Equal(expected, Class(MeasureIds.Lag, old, now, Knee.Library));

    [Theory] // Worked example 9: timed up and go, 36.7 % at 95 % is 0.1128 on the logarithm (Naylor 2014).
    [InlineData(10.0, 13.5, ChangeClass.NoDetectableChange)]
    [InlineData(10.0, 14.0, ChangeClass.Worse)]
    [InlineData(14.0, 10.0, ChangeClass.Improved)]
    [InlineData(10.0, 10.0, ChangeClass.NoDetectableChange)]
    [InlineData(0, 10.0, null)]
    [InlineData(10.0, 0, null)]
    public void Logarithmic_scale_compares_ratios(double old, double now, ChangeClass? expected) =>
        Assert.Equal(expected, Class(Made(ErrorScale.Logarithmic, 0.1128, Direction.LowerIsBetter), old, now, 95));

    [Theory]
    [InlineData(1.720, 90, 24, 29, ChangeClass.Improved)] // example 11, knee score, Beard 2015
    [InlineData(3.869, 90, 40, 47, ChangeClass.NoDetectableChange)] // example 12, Binkley 1999: 7 < 9
    [InlineData(3.869, 90, 40, 49, ChangeClass.Improved)] // 9 reaches 9
    [InlineData(13.0, 95, 380, 420, ChangeClass.Improved)] // example 14, same day, Jakobsen 2013
    [InlineData(28.50, 95, 380, 420, ChangeClass.NoDetectableChange)] // example 14, between days, Naylor 2014
    [InlineData(28.50, 95, 420, 340, ChangeClass.Worse)]
    public void The_setting_decides_what_is_a_change(double standardError, double level, double old, double now, ChangeClass expected) =>
        Assert.Equal(expected, Class(Made(ErrorScale.Linear, standardError, Direction.HigherIsBetter), old, now, level));

    [Fact]
    public void Nothing_is_said_without_an_error() =>
        Assert.Null(Class(Made(ErrorScale.Linear, null, Direction.HigherIsBetter), 1, 100, 90));

    [Fact]
    public void Nothing_is_said_of_steps() =>
        Assert.Null(Class(Made(ErrorScale.Ordinal, 1, Direction.HigherIsBetter), 1, 4, 90));

    private static ChangeClass? Class(string measure, double old, double now, ClinicalLibrary library) =>
        MeasurementError.Class(library.Measures[measure], old, now, library);

    private static ChangeClass? Class(Measure measure, double old, double now, double level) =>
        MeasurementError.Class(measure, old, now, Knee.LibraryWith(LimitIds.ChangeLevel, level));

    private static Measure Made(ErrorScale scale, double? standardError, Direction better) =>
        Knee.Library.Measures[MeasureIds.FlexionActive] with { Id = "made", Scale = scale, StandardError = standardError, Better = better };

    private static ClinicalLibrary Without(string measure) => Knee.Library with
    {
        Measures = Knee.Library.Measures.SetItem(measure, Knee.Library.Measures[measure] with { StandardError = null }),
    };
}
