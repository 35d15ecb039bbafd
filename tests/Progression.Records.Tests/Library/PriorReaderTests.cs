using Progression.Core.Library;
using Progression.Records.Library;
using Progression.Records.Yaml;

namespace Progression.Records.Tests.Library;

public sealed class PriorReaderTests
{
    private const string Ours = """
        priors:
          our-flexion:
            title: Active flexion in our clinic
            measure: flexion_active
            use: yes
            early: { week: 1, value: 84 deg, sd: 12 }
            late: { week: 10, value: 112 deg, sd: 9 }
            correlation: 0.8
            rates: 3, 5
            weights: 1, 2
            misfit: { sd: 3, weeks: 4 }
            horizon: 10
            source: Our own follow-up
            standing: seen
            spread_standing: derived
        """;

    private static readonly ClinicalLibrary Shipped = LibraryReader.Default();

    [Theory] // Part 4.1 of the project's reference: the illustrative prior and its wide variant.
    [InlineData("flexion-wide", true, 15, 13, 0.75, 4.5, 5.0)]
    [InlineData("flexion-narrow", false, 13, 10.9, 0.85, 3, 4.0)]
    public void Flexion_starts_from_the_published_means_and_is_wide_by_default(
        string id, bool inUse, double early, double late, double correlation, double misfit, double error)
    {
        RecoveryPrior prior = Shipped.Priors[id];

        Assert.Equal((inUse, (double?)error, 12), (prior.InUse, prior.Error, prior.HorizonWeek));
        Assert.Equal((new RecoveryAnchor(1, 80, early), new RecoveryAnchor(12, 114.3, late)), (prior.Curve.Early, prior.Curve.Late));
        Assert.Equal((correlation, misfit, 4), (prior.Curve.Correlation, prior.Curve.MisfitSpread, prior.Curve.MisfitWeeks));
        Assert.Equal([(2, 1), (3, 2), (4.2, 3), (6, 2), (8.5, 1)], prior.Curve.Rates.Select(rate => (rate.Weeks, rate.Weight)));
    }

    [Fact]
    public void Only_what_has_a_published_course_has_a_prior()
    {
        Assert.Equal(["extension_passive", "flexion_active", "quadriceps_pre_op_share"], Shipped.Priors.Values.Select(prior => prior.Measure).Distinct().Order(StringComparer.Ordinal));
        Assert.Equal("flexion-wide", Shipped.PriorOf(MeasureIds.FlexionActive)!.Id);
        Assert.Null(Shipped.PriorOf("timed_up_and_go"));
        Assert.Equal(3, Shipped.OwnReadings!.LeastReadings); // part 2.2: at least three of the person's own
    }

    [Fact]
    public void Spreads_that_nobody_published_say_so() =>
        Assert.All(Shipped.Priors.Values.Where(prior => prior.InUse), prior => Assert.Equal(Standing.CommonPractice, prior.SpreadStanding));

    [Fact]
    public void A_clinic_s_prior_goes_before_the_shipped_one()
    {
        using ClinicFolder clinic = ClinicFolder.With("forecasts", Ours);
        ClinicalLibrary library = clinic.Read().Library!;

        Assert.Equal(("our-flexion", true), (library.PriorOf(MeasureIds.FlexionActive)!.Id, library.PriorOf(MeasureIds.FlexionActive)!.IsClinic));
        Assert.True(library.Priors.ContainsKey("flexion-wide"));
    }

    [Theory]
    [InlineData("measure: flexion_active", "measure: effusion", "measure", "A measure in steps cannot be forecast.")]
    [InlineData("measure: flexion_active", "measure: extension_lag", "measure", "The lag is forecast from active and passive extension.")]
    [InlineData("measure: flexion_active", "measure: flexion", "measure", "This is none of the known words.")]
    [InlineData("value: 84 deg", "value: 84 mm", "value", "")]
    [InlineData("value: 84 deg", "value: 840 deg", "value", "")]
    [InlineData("sd: 12", "sd: 0", "sd", "The number is out of range.")]
    [InlineData("week: 10", "week: 1", "late", "It is not after the early week.")]
    [InlineData("correlation: 0.8", "correlation: 1", "correlation", "The number is out of range.")]
    [InlineData("weights: 1, 2", "weights: 1", "weights", "There are not as many as rates.")]
    [InlineData("rates: 3, 5", "rates: 3 5", "rates", "These are not numbers as asked for.")]
    [InlineData("rates: 3, 5", "rates: 0, 5", "rates", "These are not numbers as asked for.")]
    [InlineData("horizon: 10", "", "horizon", "This field is missing.")]
    [InlineData("spread_standing: derived", "", "spread_standing", "This field is missing.")]
    [InlineData("use: yes", "use: yes\n    shape: round", "shape", "There is no such field here.")]
    public void A_slip_is_told_with_its_field(string piece, string by, string field, string wrong)
    {
        using ClinicFolder clinic = ClinicFolder.With("forecasts", Ours.Replace(piece, by, StringComparison.Ordinal));
        FileProblem problem = Assert.Single(clinic.Read().Problems);

        Assert.Equal(field, problem.Field.Split('.')[^1]);
        Assert.StartsWith(wrong, problem.Wrong, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_priors_of_a_clinic_cannot_both_be_in_use()
    {
        string two = Ours + Ours["priors:".Length..].Replace("our-flexion", "our-other", StringComparison.Ordinal);
        using ClinicFolder clinic = ClinicFolder.With("forecasts", two);

        Assert.Equal("our-flexion is in use for this measure.", Assert.Single(clinic.Read().Problems).Wrong);
    }

    [Fact]
    public void The_start_from_own_readings_cannot_be_taken_away()
    {
        using ClinicFolder clinic = ClinicFolder.With("forecasts", "priors:\n  own-readings: { remove: yes }");

        Assert.Equal("This entry is needed by the program.", Assert.Single(clinic.Read().Problems).Wrong);
    }

    [Fact]
    public void A_prior_of_a_measure_that_was_taken_away_is_refused()
    {
        using ClinicFolder clinic = ClinicFolder.With("forecasts", Ours.Replace("flexion_active", "gait_speed", StringComparison.Ordinal)).And("measures", "measures:\n  gait_speed: { remove: yes }");

        Assert.Contains(clinic.Read().Problems, problem => problem.Wrong == "This measure has been taken away.");
    }
}
