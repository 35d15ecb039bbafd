using Progression.Core.People;
using Progression.Exchange.Import;
using static Progression.Exchange.Tests.Import.SomeKnee;

namespace Progression.Exchange.Tests.Import;

public sealed class ReadingImportTests
{
    private static readonly DateOnly Day = new(2026, 3, 12);

    private static string Wrong(ImportResult result)
    {
        Assert.Null(result.Case);
        return Assert.Single(result.Problems).ToString();
    }

    [Fact]
    public void New_visits_come_in_by_date_whatever_their_order_in_the_file()
    {
        ImportResult result = Coming(Found(2, Day, "flexion_active", 95), Found(3, new DateOnly(2026, 2, 19), "flexion_active", 78));
        Assert.Equal(["2026-02-12", "2026-02-19", "2026-02-26", "2026-03-12"], result.Case!.Assessments.Select(visit => $"{visit.Date:yyyy-MM-dd}"));
        Assert.Equal(95, result.Case.Assessments[^1].Value("flexion_active"));
        Assert.Equal(2, result.Coming);
    }

    [Fact]
    public void A_measure_that_a_visit_lacks_is_added_to_it_and_what_stands_there_stays()
    {
        Case now = Coming(Found(2, new DateOnly(2026, 2, 26), "pain_rest", 2)).Case!;
        Assert.Equal(85, now.Assessments[^1].Value("flexion_active"));
        Assert.Equal(2, now.Assessments[^1].Value("pain_rest"));
        Assert.Equal("KL", now.Assessments[^1].Rater);
    }

    [Fact]
    public void The_same_value_of_the_same_day_is_said_and_left_out()
    {
        ImportResult result = Coming(Found(2, new DateOnly(2026, 2, 26), "flexion_active", 85));
        Assert.Null(result.Case);
        Assert.Empty(result.Problems);
        Assert.Equal(ImportFate.IsThere, Assert.Single(result.Lines).Fate);
        Assert.Equal("KNEE-1: nothing that the case has not already.", ImportPreview.Lines(result, "KNEE-1")[0]);
    }

    [Fact]
    public void Another_value_of_the_same_day_is_refused_and_points_to_the_correction_form() => Assert.Equal(
        "row 2, flexion_active: The case has another value of this day. A wrong value is put right with the correction form, not by an import. Allowed: 85 deg. Found: \"86 deg\".",
        Wrong(Coming(Found(2, new DateOnly(2026, 2, 26), "flexion_active", 86))));

    [Fact]
    public void Two_values_for_one_measure_and_day_in_the_file_are_refused() => Assert.Equal(
        "row 3, flexion_active: The file has another value for this measure and day (row 2). Allowed: one value for a measure and a day. Found: \"96 deg\".",
        Wrong(Coming(Found(2, Day, "flexion_active", 95), Found(3, Day, "flexion_active", 96))));

    [Fact]
    public void A_row_that_is_there_twice_is_taken_once()
    {
        ImportResult result = Coming(Found(2, Day, "flexion_active", 95), Found(3, Day, "flexion_active", 95));
        Assert.Equal(1, result.Coming);
        Assert.Equal(ImportFate.Repeated, result.Lines[1].Fate);
    }

    [Fact]
    public void A_day_to_come_is_refused() => Assert.Contains(
        "The day lies in the future. Allowed: a day from 2000-01-01 to 2026-03-20. Found: \"2026-03-21\".", Wrong(Coming(Found(2, Today.AddDays(1), "flexion_active", 95))), StringComparison.Ordinal);

    [Fact]
    public void Today_and_the_day_of_the_operation_are_taken()
    {
        Assert.NotNull(Coming(Found(2, Today, "flexion_active", 95)).Case);
        Assert.Equal(3, Coming(Found(2, Operated, "pain_rest", 4)).Case!.Assessments.Length);
    }

    [Fact]
    public void The_baseline_takes_more_measures_of_its_own_day()
    {
        Case now = Coming(Found(2, new DateOnly(2026, 1, 20), "quadriceps_torque", 90)).Case!;
        Assert.Equal(90, now.PreOp!.Value("quadriceps_torque"));
        Assert.Equal(110, now.PreOp.Value("flexion_active"));
    }

    [Fact]
    public void A_second_baseline_is_refused() => Assert.Equal(
        "row 2, flexion_active: A case has one visit before the operation. Allowed: readings of 2026-01-20, or since the operation. Found: \"2026-01-10\".",
        Wrong(Coming(Found(2, new DateOnly(2026, 1, 10), "flexion_active", 100))));

    [Theory]
    [InlineData(0, true)]
    [InlineData(-0.1, false)]
    [InlineData(160, true)]
    [InlineData(160.1, false)]
    [InlineData(double.NaN, false)]
    [InlineData(double.PositiveInfinity, false)]
    public void Only_the_measures_own_range_is_taken(double flexion, bool taken) =>
        Assert.Equal(taken, Coming(Found(2, Day, "flexion_active", flexion)).Case is not null);

    [Fact]
    public void One_bad_reading_keeps_all_others_out()
    {
        ImportResult result = Coming(Found(2, Day, "flexion_active", 95), Found(3, Day, "flexion_passive", 900));
        Assert.Null(result.Case);
        Assert.Equal("row 3, flexion_passive", Assert.Single(result.Problems).Place.ToString());
    }

    [Fact]
    public void What_is_computed_is_not_imported() => Assert.Contains("computed from other readings", Wrong(Coming(Found(2, Day, "extension_lag", 5))), StringComparison.Ordinal);

    [Fact]
    public void A_measure_that_is_not_known_is_refused() => Assert.Contains("no such measure", Wrong(Coming(Found(2, Day, "happiness", 5))), StringComparison.Ordinal);

    [Fact]
    public void A_force_without_its_lever_arm_is_refused() => Assert.Contains("lever arm", Wrong(Coming(Found(2, Day, "quadriceps_force", 200))), StringComparison.Ordinal);

    [Fact]
    public void What_looks_like_a_slip_is_asked_back_where_it_stands_and_can_still_come_in()
    {
        ImportResult result = Coming(Found(4, Day, "extension_active", -20 + 6), Found(5, Day, "extension_passive", 8));
        Assert.NotNull(result.Case);
        Assert.StartsWith("row 4, extension_active: The active extension deficit is less than the passive one", Assert.Single(result.Queries).ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void What_a_correction_took_out_does_not_come_back()
    {
        Case patient = Patient with
        {
            Assessments = [Patient.Assessments[0] with { Corrected = [new VisitCorrection.TakenOut("pain_rest", 9, Day, "KL", null)] }],
        };
        ImportResult result = ReadingImport.Of(new ImportGround(patient, Library, Today), [Found(2, new DateOnly(2026, 2, 12), "pain_rest", 9)], []);
        Assert.Contains("taken out of the visit by a correction", Wrong(result), StringComparison.Ordinal);
    }

    [Fact]
    public void Another_persons_code_is_refused_and_the_own_one_is_not()
    {
        Assert.Null(Ground.OtherPerson(ImportPlace.Row(2, "code"), "knee-1"));
        Assert.Equal("row 2, code: This is of another person. Allowed: the code KNEE-1. Found: \"KNEE-2\".", Ground.OtherPerson(ImportPlace.Row(2, "code"), "KNEE-2")!.ToString());
    }

    [Fact]
    public void The_preview_tells_everything_by_row_and_field()
    {
        ImportResult result = Coming(
            Found(2, Day, "flexion_active", 95), Found(3, Day, "pain_rest", 2), Found(4, new DateOnly(2026, 2, 26), "flexion_active", 85), Found(5, Day, "lever_arm", 0));
        Assert.Equal(
            """
            KNEE-1: 1 refusal, so nothing comes in.
            Would come in, 2026-03-12, week 6:
              row 2  Active flexion         95 deg
              row 3  Pain at rest, 0 to 10  2
            In the case already, left out, 2026-02-26, week 4, a visit that is there:
              row 4  Active flexion  85 deg
            Refused:
              row 5, lever_arm: The value is out of range. Allowed: a number with cm, mm or m, from 5 to 60 cm. Found: "0 cm".
            """,
            string.Join('\n', ImportPreview.Lines(result, "KNEE-1")));
    }
}
