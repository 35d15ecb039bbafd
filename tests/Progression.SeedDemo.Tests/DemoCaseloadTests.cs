using System.Collections.Immutable;
using System.Text;
using Progression.Core.Checks;
using Progression.Core.Doses;
using Progression.Core.Drafting;
using Progression.Core.Entry;
using Progression.Core.Findings;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Core.Rules;
using Progression.Records.Cases;
using Progression.Records.Library;

namespace Progression.SeedDemo.Tests;

public sealed class DemoCaseloadTests
{
    private static readonly ClinicalLibrary Library = LibraryReader.Default();
    private static readonly DateOnly Today = new(2026, 11, 25);
    private static readonly ImmutableArray<Case> Caseload = DemoCaseload.Make(Today, Library);

    public static TheoryData<string> Codes => [.. Caseload.Select(one => one.Code.Text)];

    /// <summary>The finding each situation is there to show. Contraindications, clearance and red flags as in the gate's rules.</summary>
    public static TheoryData<string, string, Severity> Situations => new()
    {
        { "PLOVER-02", "SCREEN-CONTRAINDICATION", Severity.Stop },
        { "HERON-05", "SCREEN-CLEARED", Severity.Note },
        { "STORK-09", LadderRules.Irritation.Id, Severity.Warning },
        { "CRANE-12", LadderRules.ReferStiff.Id, Severity.Severe },
        { "DUNLIN-04", LadderRules.Refer.Id, Severity.Stop },
        { "SNIPE-08", "SCREEN-OPEN", Severity.Stop },
        { "AVOCET-10", "SCREEN-PRECAUTION", Severity.Warning },
    };

    [Fact]
    public void Has_about_a_dozen_cases_with_codes_of_their_own_and_the_showcase_first()
    {
        Assert.InRange(Caseload.Length, 10, 14);
        Assert.Equal(Caseload.Length, Caseload.Select(one => one.Code).Distinct().Count());
        Assert.Equal(DemoCaseload.Showcase, Caseload[0].Code.Text);
    }

    [Theory]
    [InlineData(2026, 11, 25)]
    [InlineData(2028, 2, 29)]
    public void The_same_day_gives_the_same_caseload(int year, int month, int day)
    {
        DateOnly today = new(year, month, day);
        Assert.Equal(DemoCaseload.Make(today, Library).Select(CaseJson.Write), DemoCaseload.Make(today, Library).Select(CaseJson.Write));
    }

    [Fact]
    public void Another_day_moves_the_dates_and_nothing_else()
    {
        Case later = DemoCaseload.Make(Today.AddDays(40), Library)[2];
        Assert.Equal(Caseload[2].Operation.Date.AddDays(40), later.Operation.Date);
        Assert.Equal(Caseload[2].Assessments[^1].Value(MeasureIds.FlexionActive), later.Assessments[^1].Value(MeasureIds.FlexionActive));
    }

    [Theory]
    [MemberData(nameof(Codes))]
    public void Every_case_drafts_a_plan_with_no_stim_week_without_quadriceps_work(string code)
    {
        PlanRevision plan = Drafted(Of(code));
        Assert.All(PlanFigures.Of(plan, Library).Where(week => week.StimContractions > 0), week => Assert.True(week.Quads.Contractions > 0));
    }

    [Theory]
    [MemberData(nameof(Codes))]
    public void Every_case_is_read_back_from_a_case_file_and_from_json(string code)
    {
        Case made = Of(code);
        CaseFileResult read = CaseFileReader.Read(code, Encoding.UTF8.GetBytes(CaseFileWriter.Write(made, Library)), Library, Today);
        Assert.Empty(read.Problems);
        Assert.Empty(read.Queries);
        Assert.Equal(CaseJson.Write(made), CaseJson.Write(read.Case!));
        Assert.Equal(CaseJson.Write(made), CaseJson.Write(CaseJson.Read(CaseJson.Write(made))));
    }

    [Theory]
    [MemberData(nameof(Situations))]
    public void Each_situation_has_the_finding_it_is_there_for(string code, string rule, Severity severity) =>
        Assert.Contains(Findings(Of(code)), finding => finding.Rule == rule && finding.Severity == severity);

    [Theory]
    [MemberData(nameof(Situations))]
    public void No_other_case_but_that_one_has_it(string code, string rule, Severity severity) => Assert.Equal(
        [code], Caseload.Where(one => Findings(one).Any(finding => finding.Rule == rule && finding.Severity == severity)).Select(one => one.Code.Text));

    [Fact]
    public void The_showcase_has_weeks_behind_it_and_weeks_ahead()
    {
        PlanRevision plan = Redraft.Of(Drafted(DemoCaseload.AtFirstVisit(Caseload[0])), Caseload[0], Library).Value!;
        Assert.Equal((1, 3, 4, 6), (plan.FirstWeek, plan.FirstOpenWeek, PostOpWeek.Of(plan.Operation, Today), plan.Weeks));
        Assert.Equal(3, Caseload[0].Assessments.Length);
        Assert.Equal(Rung.HighVolume, Course(Caseload[0]).Rung);
    }

    [Fact]
    public void A_reassessment_of_the_showcase_today_can_open_the_step_down()
    {
        Assessment last = Caseload[0].Assessments[^1];
        Assessment today = last with { Date = Today, Readings = last.Readings.SetItem(MeasureIds.QuadricepsTorque, new Reading(MeasureIds.QuadricepsTorque, 1.4 * last.Value(MeasureIds.QuadricepsTorque)!.Value)) };

        Assert.Equal(6, Today.DayNumber - last.Date.DayNumber);
        Assert.Equal(LadderOutcome.StepDown, Course(Caseload[0].With(today)).Latest!.Outcome);
    }

    [Fact]
    public void Sessions_are_logged_with_exercises_pain_comfort_and_skin()
    {
        SessionLog[] logs = [.. Caseload.SelectMany(one => one.Sessions)];
        Assert.True(logs.Length > 150);
        Assert.All(logs, log => Assert.All(log.Exercises, done => Assert.Contains(done.Exercise, Library.Exercises.Keys)));
        Assert.All(logs, log => Assert.True(log is { PainBefore: not null, PainAfter: not null, Exercises.IsEmpty: false }));
        Assert.All(logs, log => Assert.Equal(log.Contractions > 0, log is { Comfort: not null, Skin: not null }));
        Assert.Contains(logs, log => log.Exercises.Any(done => done.Sets.Any(set => set.Load is not null)));
        Assert.NotEmpty(Of("OWL-01").Sessions.Where(log => log.Contractions == 0));
    }

    [Fact]
    public void Only_the_irritated_knee_hurts_more_the_next_morning() =>
        Assert.Equal(["STORK-09"], Caseload.Where(one => one.Sessions.Any(log => log.PainNextMorning > log.PainBefore)).Select(one => one.Code.Text));

    [Fact]
    public void Strength_is_the_mean_of_three_trials() => Assert.All(
        Caseload.SelectMany(one => one.Assessments).Select(visit => visit.Readings[MeasureIds.QuadricepsTorque]), reading => Assert.Equal((3, 3), (reading.Trials, reading.Each.Length)));

    [Fact]
    public void Only_the_responder_steps_down_at_the_last_assessment()
    {
        Assert.Equal(Rung.Reduced, Course(Of("WREN-07")).Rung);
        Assert.Equal(["WREN-07"], Caseload.Where(one => Course(one).Latest?.Outcome == LadderOutcome.StepDown).Select(one => one.Code.Text));
    }

    [Fact]
    public void A_painful_other_knee_is_not_taken_for_a_yardstick() => Assert.Contains(
        Course(Of("LINNET-06")).Latest!.Results.SelectMany(result => result.Conditions),
        condition => condition.Margin?.Contains("the other knee is not sound", StringComparison.Ordinal) == true);

    [Fact]
    public void The_case_ten_weeks_out_has_stopped_and_its_plan_has_no_stim()
    {
        Case owl = Of("OWL-01");
        Assert.Equal((11, Rung.Stopped), (PostOpWeek.Of(owl.Operation.Date, Today), Course(owl).Rung!.Value));
        Assert.All(PlanFigures.Of(Drafted(owl), Library), week => Assert.Equal(0, week.StimContractions));
    }

    [Theory]
    [MemberData(nameof(Codes))]
    public void Every_reading_is_in_the_range_of_its_measure_and_no_knee_goes_beyond_its_passive_end(string code)
    {
        foreach (Assessment visit in Of(code).Assessments)
        {
            Assert.All(visit.Readings.Values, reading => Assert.InRange(reading.Value, Library.Measures[reading.Measure].Least, Library.Measures[reading.Measure].Most));
            Assert.True(visit.Value(MeasureIds.ExtensionActive) >= visit.Value(MeasureIds.ExtensionPassive));
            Assert.True(visit.Value(MeasureIds.FlexionPassive) >= visit.Value(MeasureIds.FlexionActive));
        }
    }

    private static Case Of(string code) => Caseload.Single(one => one.Code.Text == code);

    private static PlanRevision Drafted(Case patient)
    {
        Entered<PlanRevision> drafted = PlanDraft.Draft(patient, Library);
        Assert.Empty(drafted.Problems);
        return drafted.Value!;
    }

    private static ImmutableArray<Finding> Findings(Case patient) => PlanCheck.Check(patient, Drafted(patient), Library);

    private static LadderCourse Course(Case patient) => LadderCourse.Of(patient, Library, Today);
}
