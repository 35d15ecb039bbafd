using System.Collections.Immutable;
using System.Text;
using Progression.Core.People;
using Progression.Records.Cases;
using Progression.Records.Yaml;

namespace Progression.Records.Tests.Cases;

/// <summary>Each slip of an assessment or session file gives one message with what is wrong, what is allowed and what was found, and nothing is entered.</summary>
public sealed class EntryFileRefusalTests
{
    private static readonly Case Patient = CaseText.Read(CaseText.Good).Case!;

    [Theory]
    [InlineData("date: 2026-03-01\nreadings: {pain_rest: 3}", "date", "before the operation", "a day from 2026-03-02 to 2026-03-09", "2026-03-01")]
    [InlineData("date: 2026-03-10\nreadings: {pain_rest: 3}", "date", "in the future", "a day from 2026-03-02 to 2026-03-09", "2026-03-10")]
    [InlineData("date: 2026-03-06\nreadings: {pain_rest: 3}", "date", "put right under \"correct\"", "a day without an assessment", "2026-03-06")]
    [InlineData("readings: {pain_rest: 3}", "date", "missing", "required", "")]
    [InlineData("date: 2026-03-08", "date", "Nothing was measured or seen", "readings or signs", "2026-03-08")]
    [InlineData("side: right\ndate: 2026-03-08\nreadings: {pain_rest: 3}", "side", "sides were swapped", "left", "right")]
    [InlineData("code: AB-13\ndate: 2026-03-08\nreadings: {pain_rest: 3}", "code", "another case", "AB-12", "AB-13")]
    [InlineData("date: 2026-03-08\nreadings: {pain_rest: 11}", "readings.pain_rest", "out of range", "from 0 to 10", "11")]
    [InlineData("date: 2026-03-08\nreadings: {extension_active: 8 deg}", "deficit_sign", "has not been said", "positive (5 deg is 5 deg short of straight", "")]
    [InlineData("date: 2026-03-08\ndeficit_sign: neg\nreadings: {extension_active: 8 deg}", "deficit_sign", "none of the known words", "positive, negative", "neg")]
    [InlineData("date: 2026-03-08\ndeficit_sign: negative\nreadings: {extension_active: 18 deg}", "readings.extension_active", "out of range", "from -60 to 15 deg", "18 deg")]
    [InlineData("# nothing", "", "nothing that could be entered", "readings, signs, correct or flag_notes", "")]
    [InlineData("reading: {pain_rest: 3}\ncorrect: []", "reading", "Did you mean \"readings\"?", "schema, code, side, deficit_sign, date, rater, readings, signs, correct, flag_notes", "reading")]
    [InlineData("flag_notes: [{flag: clot-legg, on: 2026-03-08, by: KL, text: Seen.}]", "flag_notes[1].flag", "Did you mean \"clot-leg\"?", "clot-leg, clot-lung", "clot-legg")]
    [InlineData("date: 2026-03-08\nsigns: {foot_dropp: yes}", "signs.foot_dropp", "Did you mean \"foot_drop\"?", "contraction_visible", "foot_dropp")]
    public void Visits_that_cannot_be(string text, string field, string wrong, string allowed, string found) =>
        Check(Visit(text), (field, wrong, allowed, found));

    [Theory]
    [InlineData("{date: 2026-03-04, measure: pain_rest, value: 3, by: KL}", "date", "no assessment of this day", "2026-02-16, 2026-03-05, 2026-03-06", "2026-03-04")]
    [InlineData("{date: 2026-03-05, measure: pain_rest, value: 3, by: KL}", "measure", "not measured on that day", "extension_active, extension_passive, flexion_active", "pain_rest")]
    [InlineData("{date: 2026-03-05, measure: flexion_active, value: 62 deg, by: KL}", "value", "stands there already", "another value than 62 deg", "62 deg")]
    [InlineData("{date: 2026-03-05, measure: flexion_activ, value: 62 deg, by: KL}", "measure", "Did you mean \"flexion_active\"?", "flexion_active", "flexion_activ")]
    [InlineData("{date: 2026-03-05, measure: flexion_active, value: 620 deg, by: KL}", "value", "out of range", "from 0 to 160 deg", "620 deg")]
    [InlineData("{date: 2026-03-05, measure: flexion_active, value: 66 deg}", "by", "missing", "required", "")]
    public void Corrections_that_cannot_be(string correction, string field, string wrong, string allowed, string found) =>
        Check(Visit($"correct: [{correction}]"), ($"correct[1].{field}", wrong, allowed, found));

    [Fact]
    public void A_reading_is_put_right_once_in_a_file() => Check(
        Visit("correct: [{date: 2026-03-05, measure: flexion_active, value: 66 deg, by: KL}, {date: 2026-03-05, measure: flexion_active, value: 67 deg, by: KL}]"),
        ("correct[2].measure", "put right twice", "each reading once", "flexion_active"));

    [Fact]
    public void A_corrected_deficit_needs_its_sign_said_too() => Check(
        Visit("correct: [{date: 2026-03-05, measure: extension_active, value: 8 deg, by: KL}]"), ("deficit_sign", "has not been said", "negative (-5 deg is 5 deg short", ""));

    [Fact]
    public void A_sign_other_than_that_of_the_case_is_refused() => Check(
        Visit("deficit_sign: positive\ndate: 2026-03-08\nreadings: {extension_active: 8 deg}", Patient with { DeficitWritten = DeficitSign.Negative }),
        ("deficit_sign", "written the other way: -5 deg is 5 deg short of straight", "negative, or left out", "positive"));

    [Theory]
    [InlineData("sessions: [{date: 2026-03-01, contractions: 10}]", "sessions[1].date", "before the operation", "from 2026-03-02 to 2026-03-09", "2026-03-01")]
    [InlineData("sessions: [{date: 2026-03-10, contractions: 10}]", "sessions[1].date", "in the future", "to 2026-03-09", "2026-03-10")]
    [InlineData("sessions: [{date: 2026-03-08}]", "sessions[1].contractions", "missing", "required", "")]
    [InlineData("sessions: [{date: 2026-03-09, contractions: 10, pain_next_morning: 3}]", "sessions[1].pain_next_morning", "has not come yet", "completes the session later", "3")]
    [InlineData("side: right\nsessions: [{date: 2026-03-08, contractions: 10}]", "side", "sides were swapped", "left", "right")]
    [InlineData("complete: [{date: 2026-03-07, pain_next_morning: 3}]", "complete[1].date", "No session is logged", "the day of a logged session", "2026-03-07")]
    [InlineData("complete: [{date: 2026-03-06}]", "complete[1].date", "Nothing is given", "pain_next_morning, skin", "2026-03-06")]
    [InlineData("complete: [{date: 2026-03-06, session: 2, skin: clear}]", "complete[1].session", "out of range", "a whole number from 1 to 1", "2")]
    [InlineData("sessions: [{date: 2026-03-06, contractions: 15}]\ncomplete: [{date: 2026-03-06, skin: clear}]", "complete[1].session", "say which one", "from 1 to 2", "")]
    [InlineData("sessions: [{date: 2026-03-08, contractions: 15, skin: clear}]\ncomplete: [{date: 2026-03-08, skin: damaged}]", "complete[1].skin", "not written over", "left out", "clear")]
    [InlineData("# nothing", "", "nothing that could be logged", "sessions or complete", "")]
    public void Sessions_that_cannot_be(string text, string field, string wrong, string allowed, string found)
    {
        SessionFileResult result = SessionFileReader.Read(File("session-file/1", text), Patient, SmallLibrary.Value, CaseText.Today);

        Assert.Null(result.Case);
        Assert.Empty(result.Logged);
        Check(result.Problems, (field, wrong, allowed, found));
    }

    [Fact]
    public void A_file_that_is_not_there_is_named()
    {
        Assert.Equal("There is no such file.", Assert.Single(AssessmentFileReader.Read("no/visit.yaml", Patient, SmallLibrary.Value, CaseText.Today).Problems).Wrong);
        Assert.Equal("There is no such file.", Assert.Single(SessionFileReader.Read("no/session.yaml", Patient, SmallLibrary.Value, CaseText.Today).Problems).Wrong);
    }

    private static ImmutableArray<FileProblem> Visit(string text, Case? patient = null)
    {
        AssessmentFileResult result = AssessmentFileReader.Read(File("assessment-file/1", text), patient ?? Patient, SmallLibrary.Value, CaseText.Today);

        Assert.Null(result.Case);
        Assert.Null(result.Assessment);
        return result.Problems;
    }

    private static WrittenFile File(string schema, string text) => WrittenFile.Of("entry.yaml", Encoding.UTF8.GetBytes($"schema: {schema}\n{text}\n"));

    private static void Check(ImmutableArray<FileProblem> problems, (string Field, string Wrong, string Allowed, string Found) expected)
    {
        FileProblem problem = Assert.Single(problems);
        Assert.Equal(("entry.yaml", expected.Field, expected.Found), (problem.File, problem.Field, problem.Found));
        Assert.Contains(expected.Wrong, problem.Wrong, StringComparison.Ordinal);
        Assert.Contains(expected.Allowed, problem.Allowed, StringComparison.Ordinal);
    }
}
