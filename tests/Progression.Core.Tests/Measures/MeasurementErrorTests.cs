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

    [Theory] // Part 1.3 [C]: 10 % on each leg; 36.2 % then carries 5.1 points and is detectable from 11.9 points on at 90 %.
    [InlineData(36.2, 5.1, 11.9)]
    [InlineData(71.9, 10.2, 23.7)]
    public void Error_of_an_index_comes_from_both_legs(double index, double points, double detectable)
    {
        double error = index * MeasurementError.OfQuotient(0.10, 0.10);

        Assert.Equal(points, error, 0.05);
        Assert.Equal(detectable, MeasurementError.DetectableChange(error, 90), 0.05);
    }

    [Theory] // Worked example 6 and part 1.2 [C]: Lenssen 2007, limits of agreement between two raters, in degrees.
    [InlineData(-6.7, 12.1, 3.391)]
    [InlineData(-16.2, 19.0, 6.35)]
    [InlineData(-6.2, 10.6, 3.03)]
    public void Standard_error_comes_from_limits_of_agreement(double lower, double upper, double expected) =>
        Assert.Equal(expected, MeasurementError.FromAgreement(lower, upper), 5e-3);

    [Theory]
    [InlineData(79, 95, 28.50)] // example 8, Naylor 2014, six-minute walk between days [C]
    [InlineData(4, 90, 1.720)] // example 10, Beard 2015, knee score [C]
    [InlineData(9, 90, 3.869)] // Binkley 1999 [C]
    [InlineData(0.3126, 95, 0.1128)] // example 9, Naylor 2014: ln 1.367, timed up and go [C]
    public void Standard_error_comes_from_a_detectable_change(double change, double level, double expected) =>
        Assert.Equal(expected, MeasurementError.FromDetectable(change, level), 6e-4 * expected);

    [Theory] // Published pairs of part 1.1, rounded in the papers: within 2.5 %.
    [InlineData(12.00, 33.09, 95)] // hand-held, within raters; the paper multiplied by 1.95
    [InlineData(8.70, 23.99, 95)]
    [InlineData(7.78, 21.45, 95)]
    [InlineData(2.00, 5.55, 95)] // Karaguven 2023, two-minute walk
    [InlineData(1.07, 2.49, 90)] // Kennedy 2005, timed up and go, from memory
    [InlineData(26.29, 61.34, 90)] // Kennedy 2005, six-minute walk, from memory
    [InlineData(2.35, 5.49, 90)] // Kennedy 2005, stairs, from memory
    [InlineData(0.82, 2.27, 95)] // Yuksel 2017, timed up and go, from memory
    public void Published_pairs_agree_within_rounding(double standardError, double published, double level) =>
        Assert.Equal(published, MeasurementError.DetectableChange(standardError, level), 0.025 * published);

    [Fact] // Worked example 13, Binkley 1999: one score is good to 5.3 points at 90 %, which would make 7.50 detectable; published is 9.
    public void Two_figures_of_one_paper_do_not_agree()
    {
        double one = 5.3 / MeasurementError.Z(90);

        Assert.Equal(3.22, one, 5e-3);
        Assert.Equal(7.50, MeasurementError.DetectableChange(one, 90), 5e-3);
        Assert.NotInRange(MeasurementError.DetectableChange(one, 90), 0.975 * 9, 1.025 * 9);
    }

    [Fact] // Worked example 4: 28.80 by the normal distribution; the published 28.65 is met at 0.6 % only.
    public void A_paper_with_another_multiplier_is_met_at_six_in_a_thousand_only()
    {
        double detectable = MeasurementError.DetectableChange(10.39, 95);

        Assert.InRange(Math.Abs(detectable - 28.65) / 28.65, 0.005, 0.006);
    }

    [Theory] // Jacobson and Truax 1991, from memory: over 1.645 or 1.96 is the same test as the detectable change at 90 or 95 %.
    [InlineData(28.50, 66.2, 90, false)]
    [InlineData(28.50, 66.4, 90, true)]
    [InlineData(28.50, 78.9, 95, false)]
    [InlineData(28.50, 79.1, 95, true)]
    public void Reliable_change_index_is_the_same_test(double standardError, double difference, double level, bool reliable)
    {
        Assert.Equal(reliable, MeasurementError.ReliableChange(difference, standardError, standardError) >= (level == 90 ? 1.644854 : 1.959964));
        Assert.Equal(reliable, difference >= MeasurementError.DetectableChange(standardError, level));
    }

    [Theory] // Part 5.1 [C]: 1 - 0.9^6 is 47 %.
    [InlineData(1, 90, 0.10)]
    [InlineData(6, 90, 0.47)]
    [InlineData(6, 95, 0.26)]
    public void Many_readings_raise_the_chance_of_a_false_alarm(int readings, double level, double chance) =>
        Assert.Equal(chance, MeasurementError.FalseAlarm(readings, level), 0.005);

    [Fact]
    public void Errors_of_derived_measures_come_from_what_is_behind_them()
    {
        KneeState state = KneeState.At(Look.Well.On(21), Knee.Well.Case);

        Assert.Equal(4.243, MeasurementError.Of(state, MeasureIds.Lag, Knee.Library, false)!.Value, 5e-4);
        Assert.Equal(0.1414, MeasurementError.Of(state, MeasureIds.Index, Knee.Library, false)!.Value, 5e-5);
        Assert.Equal(0.10, MeasurementError.Of(state, MeasureIds.PreOpShare, Knee.Library, false)); // the pre-op value is in both shares
        Assert.Null(MeasurementError.Of(state, MeasureIds.Lag, Without(MeasureIds.ExtensionActive), false));
    }

    [Fact] // sqrt(3^2 + 3.75^2) = 4.802: between raters 10.4 deg at 95 % of passive extension.
    public void Errors_grow_when_the_measuring_changed() =>
        Assert.Equal(4.802, MeasurementError.Of(KneeState.At(Look.Well.On(21), Knee.Well.Case), MeasureIds.Lag, Knee.Library, true)!.Value, 5e-4);

    private static ClinicalLibrary Without(string measure) => Knee.Library with
    {
        Measures = Knee.Library.Measures.SetItem(measure, Knee.Library.Measures[measure] with { StandardError = null }),
    };
}
