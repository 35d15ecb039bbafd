using Progression.Core.Library;
using Progression.Records.Library;

namespace Progression.Records.Tests.Library;

/// <summary>The shipped files against the publications they name. Every expected figure is a literal from the publication or its reference note.</summary>
public sealed class ShippedLibraryTests
{
    private static readonly ClinicalLibrary Shipped = LibraryReader.Default();

    [Fact]
    public void The_shipped_files_have_no_problem() => Assert.Empty(LibraryReader.Read(null).Problems);

    [Fact]
    public void There_is_enough_to_plan_with()
    {
        Assert.True(Shipped.Regimens.Count >= 8);
        Assert.True(Shipped.Exercises.Count >= 26);
        Assert.Equal(5, Shipped.Ladder.Length);
        Assert.True(Shipped.Screening.Length >= 20);
        Assert.Equal(LimitIds.Units.Keys, Shipped.Limits.Keys);
        Assert.True(Shipped.Measures.Count > MeasureIds.All.Count);
    }

    [Fact]
    public void Every_entry_says_where_it_comes_from()
    {
        IEnumerable<Source> sources =
        [
            .. Shipped.Limits.Values.Select(each => each.Source), .. Shipped.Ladder.Select(each => each.Source),
            .. Shipped.Regimens.Values.Select(each => each.Source), .. Shipped.Exercises.Values.Select(each => each.Source),
            .. Shipped.Milestones.Select(each => each.Source), .. Shipped.Screening.Select(each => each.Source),
            .. Shipped.Measures.Values.Select(each => each.Source), .. Shipped.RedFlags.Select(each => each.Source),
            .. Shipped.Priors.Values.Select(each => each.Source), Shipped.OwnReadings!.Source,
        ];
        Assert.All(sources, source => Assert.True(source.Text.Length > 10, source.Text));
    }

    // Units and bounds as the reference note on measures gives them (part 1.2): extension -15 to 60, flexion 0 to 160.
    [Theory]
    [InlineData("extension_active", "deg", -15, 60, 3)]
    [InlineData("extension_passive", "deg", -15, 60, 3)]
    [InlineData("flexion_active", "deg", 0, 160, 4)]
    [InlineData("six_minute_walk", "m", 0, 900, 28.5)] // Naylor 2014: MDC95 79 m, so 28.50 m
    [InlineData("stairs_up_and_down", "s", 2, 180, 1.14)] // Almeida 2010
    [InlineData("stairs_up", "s", 2, 180, 0.82)] // Almeida 2010
    [InlineData("timed_up_and_go", "s", 3, 120, 0.113)] // Naylor 2014: 36.7 %, so 0.1128 on the logarithmic scale
    [InlineData("oxford_knee_score", "1", 0, 48, 1.719)] // Beard 2015: MDC90 4, so 1.7196, cut so that a change of 4 counts
    [InlineData("lower_extremity_score", "1", 0, 80, 3.869)] // Binkley 1999: MDC90 9, so 3.8690
    [InlineData("girth", "cm", 25, 80, 0.644)] // 1.5 cm at 90 %, assumed: 0.6448
    [InlineData("koos_pain", "1", 0, 100, 7.29)] // Naylor 2014: MDC95 20.2
    [InlineData("gait_speed", "m/s", 0, 3, 0.058)] // Arch Physioter 2024;14:90
    [InlineData("quadriceps_torque_per_mass", "Nm/kg", 0, 5, 0.083)] // MDC95 0.23 Nm/kg
    public void Measures_have_their_published_error(string id, string unit, double least, double most, double error)
    {
        Measure measure = Shipped.Measures[id];

        Assert.Equal((unit, least, most, (double?)error), (measure.Unit, measure.Least, measure.Most, measure.StandardError));
    }

    [Theory]
    [InlineData("six_minute_walk", 26.0, null, Standing.Seen)] // Naylor 2016, m
    [InlineData("timed_up_and_go", 1.4, null, Standing.Seen)] // Wright 2011, s
    [InlineData("chair_stands", 2.6, null, Standing.Seen)] // Wright 2011
    [InlineData("gait_speed", 0.115, null, Standing.Derived)] // worked example 32, Gilbert 2021: 6.9 m/min is 0.115 m/s
    [InlineData("pain_rest", 2.0, 2.91, Standing.FromMemory)] // loss: Danoff 2018, 29.1 mm of 100
    [InlineData("koos_jr", 6.8, null, Standing.FromMemory)] // Darrith 2021, second-hand
    [InlineData("oxford_knee_score", 7.0, null, Standing.Seen)] // Beard 2015, one person
    [InlineData("lower_extremity_score", 9.0, null, Standing.Seen)] // Binkley 1999
    [InlineData("flexion_active", null, null, null)] // none published
    [InlineData("quadriceps_torque", null, null, null)]
    public void Changes_that_matter_are_as_published(string id, double? gain, double? loss, Standing? standing)
    {
        Measure measure = Shipped.Measures[id];

        Assert.Equal((gain, loss, standing), (measure.ImportantGain?.Amount, measure.ImportantLoss?.Amount, measure.ImportantGain?.Source.Standing));
    }

    [Theory]
    [InlineData("flexion_passive", 6.0)] // part 1.2: 6 when rater or position changes
    [InlineData("extension_passive", 3.75)] // MDC95 10.4 deg between raters
    [InlineData("quadriceps_torque", 0.111)] // Koblbauer 2011: 36.2 %, ln 1.362 / 2.7718 = 0.1115
    [InlineData("flexion_active", null)]
    public void Errors_between_raters_are_as_published(string id, double? error) => Assert.Equal(error, Shipped.Measures[id].Changed?.StandardError);

    [Fact]
    public void Measures_are_told_in_the_order_of_the_file() =>
        Assert.Equal(
            ["flexion_active", "flexion_passive", "extension_active", "extension_passive", "extension_lag"],
            Shipped.Measures.Values.OrderBy(measure => measure.Place).Take(5).Select(measure => measure.Id));

    [Theory]
    [InlineData(LimitIds.EarlyWorsening, 0.6, Standing.CommonPractice)] // part 5.1, assumed
    [InlineData(LimitIds.LagClosed, 5, Standing.Derived)] // Stillman 2004: healthy adults 5.0 deg after 5 s
    [InlineData(LimitIds.ResponseDay, 7, Standing.Seen)] // Spector 2016: responsiveness after one week
    [InlineData(LimitIds.FlexionFloor, 90, Standing.Seen)] // Tibbo 2019
    [InlineData(LimitIds.CurrentDensity, 2, Standing.Seen)] // IEC 60601-2-10:2012, 201.7.9.2
    [InlineData(LimitIds.PowerDensity, 0.25, Standing.Seen)] // FDA guidance 1999
    [InlineData(LimitIds.OutputLow, 50, Standing.FromMemory)] // IEC 60601-2-10:2012, not seen
    [InlineData(LimitIds.OutputMiddle, 80, Standing.FromMemory)]
    [InlineData(LimitIds.OutputHigh, 100, Standing.FromMemory)]
    [InlineData(LimitIds.PulseEnergy, 300, Standing.FromMemory)]
    [InlineData(LimitIds.OutputStated, 10, Standing.Seen)] // AS 60601.2.10:2018 extract
    [InlineData(LimitIds.LoadResistance, 500, Standing.FromMemory)]
    [InlineData(LimitIds.TrainingIntensity, 30, Standing.FromMemory)]
    [InlineData(LimitIds.LagGuardSems, 1.28, Standing.FromMemory)] // z of 90 %, JCGM 106
    [InlineData(LimitIds.RedFlagLagRise, 10, Standing.Derived)] // MDC90 of lag 9.87 deg
    [InlineData(LimitIds.StopPreOp, 55, Standing.CommonPractice)]
    [InlineData(LimitIds.ForecastSurprise, 2, Standing.CommonPractice)] // |z| > 2
    [InlineData(LimitIds.ForecastsScored, 30, Standing.CommonPractice)]
    [InlineData(LimitIds.ForecastHitRate, 70, Standing.CommonPractice)]
    [InlineData(LimitIds.PairingRatio, 1, Standing.CommonPractice)]
    public void Limits_have_their_value_and_standing(string id, double value, Standing standing)
    {
        Assert.Equal(value, Shipped.Limit(id).Value);
        Assert.Equal(standing, Shipped.Limit(id).Source.Standing);
    }

    [Fact]
    public void The_usual_regimen_is_fifteen_strong_contractions_twice_a_day()
    {
        // Stevens-Lapsley 2012 with the settings of Conley 2021, table 5; days a week and ramp placement from memory, ramp down not given.
        Regimen usual = Shipped.Regimens[Shipped.DefaultRegimen];

        Assert.Equal((15, 2, 6), (usual.Contractions.Value, usual.SessionsPerDay.Value, usual.Weeks.Value));
        Assert.Equal((15, 45, 3), (usual.On.Value.Seconds, usual.Off.Value.Seconds, usual.RampUp.Value.Seconds));
        Assert.Equal((50, 250), (usual.Rate.Value.Hertz, usual.Width.Value.Microseconds));
        Assert.Equal(96.52, usual.Pad.Value.SquareCentimetres, 3);
        Assert.Equal("7 (from memory)", usual.DaysPerWeek.ToString());
        Assert.Equal(Standing.FromMemory, usual.Ramps.Standing);
        Assert.True(usual.RampDown.IsOpen && usual.WidthIs.IsOpen && usual.SessionLength.IsOpen);
        Assert.True(usual.Isometric.Value);
    }

    [Fact]
    public void Other_regimens_keep_what_is_seen_apart_from_what_is_not()
    {
        Assert.Equal(7200, Shipped.Regimens["two-hours-twice-daily"].SessionLength.Value.Seconds); // Avramidis 2003: 2 h twice daily
        Assert.True(Shipped.Regimens["two-hours-twice-daily"].On.IsOpen); // on and off time not seen
        Assert.Equal(10, Shipped.Regimens["burst-10-weaker-leg"].Contractions.Value); // Stevens 2004
        Assert.Equal(Standing.FromMemory, Shipped.Regimens["burst-10-weaker-leg"].Off.Standing);
        Assert.Equal((45 * 60, 100, 1000), (Shipped.Regimens["strong-45-minutes"].SessionLength.Value.Seconds, Shipped.Regimens["strong-45-minutes"].Rate.Value.Hertz, Shipped.Regimens["strong-45-minutes"].Width.Value.Microseconds)); // Yoshida 2017
        Assert.Equal((65, 300), (Shipped.Regimens["quarter-hour-daily"].Rate.Value.Hertz, Shipped.Regimens["quarter-hour-daily"].Width.Value.Microseconds)); // Valdes 2010
        Assert.Equal(5, Shipped.Regimens["half-hour-five-days"].DaysPerWeek.Value); // Demircioglu 2015
        Assert.Equal(Waveform.BurstTriangle, Shipped.Regimens["ligament-burst-10"].Waveform.Value); // Fitzgerald 2003
        Assert.Equal(Waveform.Asymmetric, Shipped.Regimens["ligament-half-hour"].Waveform.Value); // Lieber 1996
    }

    [Fact]
    public void Weekly_sessions_of_the_usual_regimen_fall_from_fourteen_to_seven_to_three()
    {
        double[] sessions = [.. Shipped.Ladder.Select(rung => Math.Ceiling(14 * rung.SessionShare.Percent / 100))];

        Assert.Equal([7, 14, 7, 3, 0], sessions);
        Assert.Equal([1, 2, 2, 3, null], Shipped.Ladder.Select(rung => rung.ExpectedWeeks));
    }

    // Recovery curve derived from Kornuijt 2019, Mizner 2005 and Vuorenmaa 2008, rounded; week 2 flexion from protocol sheets.
    [Theory]
    [InlineData(MeasureIds.FlexionActive, 1, 80)]
    [InlineData(MeasureIds.FlexionActive, 2, 90)]
    [InlineData(MeasureIds.FlexionActive, 8, 110)]
    [InlineData(MeasureIds.PreOpShare, 1, 21)]
    [InlineData(MeasureIds.PreOpShare, 6, 48)]
    [InlineData(MeasureIds.PreOpShare, 12, 71)]
    [InlineData(MeasureIds.ExtensionPassive, 8, 3)]
    [InlineData(MeasureIds.Lag, 3, 5)]
    public void Leading_milestones_follow_the_published_course(string measure, double week, double target) =>
        Assert.Equal(target, Shipped.Milestones.Single(each => each.Drives && each.Measure == measure && each.Week == week).Target);

    [Theory]
    [InlineData(MeasureIds.FlexionActive)]
    [InlineData(MeasureIds.ExtensionPassive)]
    [InlineData(MeasureIds.Lag)]
    [InlineData(MeasureIds.PreOpShare)]
    public void Each_leading_course_reaches_from_week_1_past_week_12_to_week_26(string measure)
    {
        double[] weeks = [.. Shipped.Milestones.Where(each => each.Drives && each.Measure == measure).Select(each => each.Week)];

        Assert.Equal((1, 26), (weeks[0], weeks[^1]));
        Assert.Contains(12, weeks);
    }

    [Fact] // Two-level scores as the guideline tables print them: leg likely from 2, lung likely over 4 in steps of a half.
    public void The_scores_of_the_clot_flags_are_the_printed_ones()
    {
        RedFlag leg = Shipped.RedFlags.Single(flag => flag.Id == FlagIds.ClotLeg);
        RedFlag lung = Shipped.RedFlags.Single(flag => flag.Id == FlagIds.ClotLung);

        Assert.Equal((2, 4.5), (leg.Score!.LikelyFrom, lung.Score!.LikelyFrom));
        Assert.Equal([-2, 1, 1, 1, 1, 1, 1, 1, 1, 1], leg.Questions.Select(one => one.Points).OfType<double>().Order());
        Assert.Equal([1, 1, 1.5, 1.5, 1.5, 3, 3], lung.Questions.Select(one => one.Points).OfType<double>().Order());
        Assert.Equal((84, 28), (leg.Questions.Single(one => one.Id == "bedridden").TrueUntilDay, lung.Questions.Single(one => one.Id == "still_or_operated").TrueUntilDay)); // 12 and 4 weeks
    }

    [Fact]
    public void Screening_bars_stim_for_an_active_implant_and_not_for_the_knee_replacement()
    {
        ScreeningItem implant = Shipped.Screening.Single(item => item.Id == "active-implant");
        ScreeningItem metal = Shipped.Screening.Single(item => item.Id == "metal-implant");

        Assert.Equal((ScreeningKind.Contraindication, true), (implant.Kind, implant.CanBeCleared));
        Assert.Equal(ScreeningKind.NoConcern, metal.Kind);
        Assert.Equal(1, Shipped.Screening.Single(item => item.Id == "impaired-sensation").SessionsPerDayAtMost);
    }
}
