using System.Text;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Records.Cases;
using Progression.Records.Library;

namespace Progression.Records.Tests.Cases;

/// <summary>A visit read into the case it belongs to.</summary>
public sealed class AssessmentFileTests
{
    private static readonly Case Patient = CaseText.Read(CaseText.Good).Case!;

    [Fact]
    public void A_visit_goes_into_its_place_and_the_rest_of_the_case_stays()
    {
        AssessmentFileResult result = Read("date: 2026-03-08\nrater: KL\nreadings: {flexion_active: 70 deg}\nsigns: {clot_signs: no}");

        Assert.Equal((70, "KL", false), (result.Assessment!.Value(MeasureIds.FlexionActive), result.Assessment.Rater, result.Assessment.Sign(Signs.ClotSigns)));
        Assert.Equal(["2026-03-05", "2026-03-06", "2026-03-08"], result.Case!.Assessments.Select(visit => $"{visit.Date:yyyy-MM-dd}"));
        Assert.Equal(CaseJson.Write(Patient), CaseJson.Write(result.Case with { Assessments = Patient.Assessments }));
    }

    [Fact]
    public void A_visit_entered_late_stands_before_the_later_ones()
    {
        AssessmentFileResult result = Read("date: 2026-03-03\nreadings: {pain_rest: 5}");

        Assert.Equal(new DateOnly(2026, 3, 3), result.Case!.Assessments[0].Date);
        Assert.Same(result.Assessment, result.Case.Assessments[0]);
    }

    // Convention of the reference, part 1.3: stored flexion-positive, 5 is 5 short of straight.
    [Theory]
    [InlineData("positive", "9 deg", "4 deg")]
    [InlineData("negative", "-9 deg", "-4 deg")]
    public void Deficits_are_stored_flexion_positive_however_they_are_written(string sign, string active, string passive)
    {
        Case read = Read($"deficit_sign: {sign}\ndate: 2026-03-08\nreadings: {{extension_active: {active}, extension_passive: {{each: [{passive}, {passive}]}}}}").Case!;

        Reading twice = read.Assessments[^1].Readings[MeasureIds.ExtensionPassive];
        Assert.Equal((9, 4, 4, 4), (read.Assessments[^1].Value(MeasureIds.ExtensionActive), twice.Value, twice.Each[0], twice.Each[1]));
        Assert.Equal(sign == "positive" ? DeficitSign.Positive : DeficitSign.Negative, read.DeficitWritten);
    }

    [Fact]
    public void Once_it_is_said_how_deficits_are_written_a_file_need_not_say_it()
    {
        AssessmentFileResult result = Read("date: 2026-03-08\nreadings: {extension_active: -7 deg}", Patient with { DeficitWritten = DeficitSign.Negative });

        Assert.Equal((7, DeficitSign.Negative), (result.Assessment!.Value(MeasureIds.ExtensionActive), result.Case!.DeficitWritten));
    }

    [Fact]
    public void A_straight_knee_is_zero_in_either_sign()
    {
        Case read = Read("deficit_sign: negative\ndate: 2026-03-08\nreadings: {extension_active: 0 deg}").Case!;

        Assert.Contains("\"extension_active\":{\"value\":0}", CaseJson.Write(read), StringComparison.Ordinal);
    }

    [Fact]
    public void A_wrong_reading_is_put_right_and_what_stood_there_is_kept()
    {
        AssessmentFileResult result = Read("""
            correct:
              - {date: 2026-03-05, measure: flexion_active, value: 26 deg, by: KL, why: Digits turned round}
              - {date: 2026-02-16, measure: quadriceps_torque, value: 48 Nm, by: MB}
            """);

        Reading flexion = result.Case!.Assessments[0].Readings[MeasureIds.FlexionActive];
        Assert.Equal((26, new Correction(62, CaseText.Today, "KL", "Digits turned round")), (flexion.Value, flexion.Corrected.Single()));
        Assert.Equal(new Correction(84, CaseText.Today, "MB", null), result.Case.PreOp!.Readings[MeasureIds.QuadricepsTorque].Corrected.Single());
        Assert.Null(result.Assessment);
        Assert.Equal(2, result.Case.Assessments.Length);
    }

    [Fact]
    public void A_reading_put_right_twice_keeps_both_wrong_values_in_order()
    {
        Case once = Read("correct: [{date: 2026-03-05, measure: flexion_active, value: 26 deg, by: KL}]").Case!;
        Case twice = Read("correct: [{date: 2026-03-05, measure: flexion_active, value: 66 deg, by: KL}]", once).Case!;

        Assert.Equal([62, 26], twice.Assessments[0].Readings[MeasureIds.FlexionActive].Corrected.Select(one => one.Was));
        Assert.Equal(CaseJson.Write(twice), CaseJson.Write(CaseText.Read(CaseFileWriter.Write(twice, SmallLibrary.Value)).Case!));
    }

    [Fact]
    public void A_red_flag_is_closed_by_a_note_with_a_name() =>
        Assert.Equal(
            [new FlagNote("clot-leg", new DateOnly(2026, 3, 9), "Ward physician", "Looked at, no clot.")],
            Read("flag_notes: [{flag: clot-leg, on: 2026-03-09, by: Ward physician, text: \"Looked at, no clot.\"}]").Case!.FlagNotes);

    [Fact]
    public void The_documented_example_goes_into_the_documented_case()
    {
        ClinicalLibrary library = LibraryReader.Default();
        string folder = AppContext.BaseDirectory;
        Case patient = CaseFileReader.Read(Path.Combine(folder, "case.yaml"), library, new DateOnly(2026, 3, 16)).Case!;

        AssessmentFileResult result = AssessmentFileReader.Read(Path.Combine(folder, "assessment.yaml"), patient, library, new DateOnly(2026, 3, 16));

        Assert.Empty(result.Problems);
        Assert.Empty(result.Queries);
        Assert.Equal((2, 81, 4), (result.Case!.Assessments.Length, result.Assessment!.Value(MeasureIds.QuadricepsForce), result.Case.Assessments[0].Value(MeasureIds.PainRest)));
    }

    [Fact]
    public void A_negative_lag_beyond_its_error_is_asked_back_and_the_visit_still_read()
    {
        AssessmentFileResult result = Read("deficit_sign: positive\ndate: 2026-03-08\nreadings: {extension_active: 0 deg, extension_passive: 8 deg}");

        Assert.NotNull(result.Case);
        Assert.Contains("check the signs", Assert.Single(result.Queries).Wrong, StringComparison.Ordinal);
    }

    private static AssessmentFileResult Read(string text, Case? patient = null) => AssessmentFileReader.Read(
        WrittenFile.Of("visit.yaml", Encoding.UTF8.GetBytes("schema: assessment-file/1\n" + text)), patient ?? Patient, SmallLibrary.Value, CaseText.Today);
}
