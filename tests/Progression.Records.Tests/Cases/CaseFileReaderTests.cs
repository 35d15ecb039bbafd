using Progression.Core.Library;
using Progression.Core.People;
using Progression.Records.Cases;
using Progression.Records.Yaml;

namespace Progression.Records.Tests.Cases;

public sealed class CaseFileReaderTests
{
    [Fact]
    public void A_whole_case_is_read()
    {
        CaseFileResult result = CaseText.Read(CaseText.Good);

        Assert.Empty(result.Problems);
        Assert.Empty(result.Queries);
        Case read = result.Case!;
        Assert.Equal("AB-12", read.Code.Text);
        Assert.Equal(new Operation(new DateOnly(2026, 3, 2), Side.Left, "Knee replacement"), read.Operation);
        Assert.Equal((new DateOnly(1957, 5, 14), 82, "7.6 x 12.7 cm"), (read.Born, read.BodyMass!.Kilograms, read.Pads!.ToString()));
        Assert.Equal(("strong-15-twice-daily", 6, null), (read.Regimen, read.Weeks, read.PlanFrom));
        Assert.Equal(new ScreeningAnswer("infection", Answer.No, null), read.Screening.Answers["infection"]);
        Assert.Equal(84, read.PreOp!.Value(MeasureIds.QuadricepsTorque));
        Assert.Equal([18, 8], [read.Assessments[0].Value(MeasureIds.ExtensionActive), read.Assessments[0].Value(MeasureIds.ExtensionPassive)]);
        Assert.False(read.Assessments[0].Sign(Signs.ClotSigns));
        Assert.Equal(3, read.Assessments[1].Value(MeasureIds.Effusion));
        Assert.Equal((10, 38), (read.Sessions[0].Contractions, read.Sessions[0].Peak!.Milliamperes));
    }

    [Fact]
    public void What_the_file_leaves_out_is_not_known()
    {
        Case read = CaseText.Read("schema: case-file/1\ncode: ab-12\noperation: {date: 2026-03-02, side: right, procedure: Knee replacement}\n").Case!;

        Assert.Equal((null, null, null, null), (read.Born, read.BodyMass, read.WeightBearing, read.Pads));
        Assert.Equal((OtherKnee.NotKnown, SurgeonLimits.NotStated, Screening.NotDone), (read.OtherKnee, read.Surgeon, read.Screening));
        Assert.Equal((null, null, null), (read.PreOp, read.Regimen, read.Weeks));
        Assert.Empty(read.Assessments);
        Assert.Empty(read.Sessions);
    }

    [Fact]
    public void A_measure_that_was_not_taken_has_no_value() =>
        Assert.Null(CaseText.Read(CaseText.Good).Case!.Assessments[0].Value(MeasureIds.PainRest));

    [Fact]
    public void Assessments_come_oldest_first_whatever_their_order_in_the_file()
    {
        string text = CaseText.Good.Replace("date: 2026-03-05\n    readings", "date: 2026-03-08\n    readings", StringComparison.Ordinal);

        Assert.Equal([new DateOnly(2026, 3, 6), new DateOnly(2026, 3, 8)], CaseText.Read(text).Case!.Assessments.Select(assessment => assessment.Date));
    }

    [Theory]
    [InlineData("-3 deg", -3)]
    [InlineData("-3°", -3)]
    [InlineData("18.5 degrees", 18.5)]
    public void An_angle_may_be_written_in_several_ways(string written, double degrees) =>
        Assert.Equal(degrees, CaseText.Read(CaseText.Good.Replace("18 deg", written, StringComparison.Ordinal)).Case!.Assessments[0].Value(MeasureIds.ExtensionActive));

    [Theory]
    [InlineData("none", 0)]
    [InlineData("trace", 1)]
    [InlineData("1+", 2)]
    [InlineData("3+", 4)]
    public void Effusion_is_written_as_it_is_spoken(string grade, double step) =>
        Assert.Equal(step, CaseText.Read(CaseText.Good.Replace("2+", grade, StringComparison.Ordinal)).Case!.Assessments[1].Value(MeasureIds.Effusion));

    // Reference: a lag is asked back when it lies under zero beyond the error of one reading, 90 %: 1.645 x 4.2 deg = 6.9 deg.
    [Theory]
    [InlineData("1.2 deg", false)]
    [InlineData("1 deg", true)]
    [InlineData("-12 deg", true)]
    public void A_lag_under_zero_beyond_its_error_is_asked_back_and_the_case_still_read(string active, bool asked)
    {
        CaseFileResult result = CaseText.Read(CaseText.Good.Replace("18 deg", active, StringComparison.Ordinal));

        Assert.NotNull(result.Case);
        Assert.Equal(asked ? 1 : 0, result.Queries.Length);
        Assert.All(result.Queries, query => Assert.Contains("check the signs", query.Wrong, StringComparison.Ordinal));
        Assert.All(result.Queries, query => Assert.Equal((25, "assessments[1].readings"), (query.Line, query.Field)));
    }

    [Theory]
    [InlineData("{each: [60 deg, 62 deg, 64 deg]}", 62, 3)]
    [InlineData("{each: [60 deg, 62 deg, 65 deg], value: 62.3 deg, trials: 3}", 62.333333, 3)]
    [InlineData("{each: [60 deg, 61 deg], value: 61 deg}", 60.5, 2)]
    [InlineData("{value: 62 deg, trials: 3}", 62, 3)]
    public void Several_trials_are_averaged_and_a_mean_may_have_been_rounded(string written, double mean, int trials)
    {
        Reading read = CaseText.Read(CaseText.Good.Replace("62 deg", written, StringComparison.Ordinal)).Case!.Assessments[0].Readings[MeasureIds.FlexionActive];

        Assert.Equal((mean, trials), (read.Value, read.Trials));
    }

    [Fact]
    public void A_case_file_stays_flexion_positive_however_deficits_are_typed()
    {
        Case read = CaseText.Read(CaseText.Good + "deficit_written: negative\n").Case!;

        Assert.Equal((DeficitSign.Negative, 18), (read.DeficitWritten, read.Assessments[0].Value(MeasureIds.ExtensionActive)));
    }

    [Fact]
    public void A_session_is_read_with_its_sets()
    {
        string more = "peak: 38 mA\n    exercises:\n      - {exercise: quad-set, sets: [10, 8 @ 5 kg, done, done @ 2.5 kg]}\n      - {exercise: brisk-walk, time: 5 min}";
        SessionLog read = CaseText.Read(CaseText.Good.Replace("peak: 38 mA", more, StringComparison.Ordinal)).Case!.Sessions[0];

        Assert.Equal([(10, null), (8, 5), (null, null), (null, 2.5)], read.Exercises[0].Sets.Select(set => (set.Repetitions, set.Load?.Kilograms)));
        Assert.Equal(300, read.Exercises[1].Time!.Seconds);
    }

    [Fact]
    public void A_clearance_is_read_where_the_library_allows_one()
    {
        string text = CaseText.Good.Replace(
            "active-implant: no", "active-implant:\n      answer: yes\n      clearance: {by: Cardiology, on: 2026-03-04, text: Thigh only}", StringComparison.Ordinal);

        Assert.Equal(
            new ScreeningAnswer("active-implant", Answer.Yes, new Clearance("Cardiology", new DateOnly(2026, 3, 4), "Thigh only")),
            CaseText.Read(text).Case!.Screening.Answers["active-implant"]);
    }

    [Fact]
    public void Every_problem_is_told_at_once_in_the_order_of_the_file()
    {
        CaseFileResult result = CaseText.Read(CaseText.Good
            .Replace("82 kg", "180 lb", StringComparison.Ordinal)
            .Replace("side: left", "side: lfet", StringComparison.Ordinal)
            .Replace("peak: 38 mA", "peak: 38", StringComparison.Ordinal));

        Assert.Null(result.Case);
        Assert.Equal(
            [(6, "operation.side"), (8, "body_mass"), (38, "sessions[1].peak")], result.Problems.Select(problem => (problem.Line ?? 0, problem.Field)));
    }

    [Fact]
    public void The_file_is_named_in_each_problem()
    {
        CaseFileResult result = CaseFileReader.Read("no/such/case.yaml", SmallLibrary.Value, CaseText.Today);

        FileProblem problem = Assert.Single(result.Problems);
        Assert.Equal(("no/such/case.yaml", "There is no such file."), (problem.File, problem.Wrong));
    }
}
