using Progression.Core.Library;
using Progression.Core.Measures;
using Progression.Core.People;
using Progression.Records.Cases;
using Progression.Records.Library;

namespace Progression.Records.Tests.Cases;

/// <summary>The documented example, read against the shipped library.</summary>
public sealed class CaseExampleTests
{
    private static readonly ClinicalLibrary Shipped = LibraryReader.Default();
    private static readonly string Path = System.IO.Path.Combine(AppContext.BaseDirectory, "case.yaml");

    private static CaseFileResult Read() => CaseFileReader.Read(Path, Shipped, new DateOnly(2026, 3, 6));

    [Fact]
    public void It_is_read_without_a_problem_or_a_question()
    {
        CaseFileResult result = Read();

        Assert.Empty(result.Problems);
        Assert.Empty(result.Queries);
    }

    [Fact]
    public void It_shows_a_knee_on_post_op_day_four_with_every_question_answered()
    {
        Case read = Read().Case!;

        Assert.Equal(4, PostOpWeek.DayOf(read.Operation.Date, read.Assessments.Single().Date));
        Assert.Equal(Shipped.Screening.Select(item => item.Id).Order(), read.Screening.Answers.Keys.Order());
        Assert.Equal(Signs.Questions.Keys, read.Assessments[0].SignsSeen.Keys);
        Assert.Equal((84, 52, 33), (read.PreOp!.Value("quadriceps_torque"), read.Assessments[0].Value("quadriceps_force"), read.Assessments[0].Value("lever_arm")));
    }

    [Fact]
    public void Written_and_read_again_it_is_the_same_case()
    {
        Case read = Read().Case!;

        byte[] written = System.Text.Encoding.UTF8.GetBytes(CaseFileWriter.Write(read, Shipped));

        Assert.Equal(CaseJson.Write(read), CaseJson.Write(CaseFileReader.Read("again", written, Shipped, new DateOnly(2026, 3, 6)).Case!));
    }

    [Fact]
    public void It_shows_trials_a_correction_a_session_without_stim_and_a_closed_flag()
    {
        Case read = Read().Case!;

        Assert.Equal([82, 86, 84], read.PreOp!.Readings[MeasureIds.QuadricepsTorque].Each);
        Assert.Equal(new Correction(7, new DateOnly(2026, 3, 6), "KL", "A digit was left out."), read.Assessments[0].Readings[MeasureIds.FlexionPassive].Corrected.Single());
        Assert.Equal(["quad-set", "walk-with-aid"], read.Sessions[0].Exercises.Select(done => done.Exercise));
        Assert.Equal(new DateOnly(2026, 3, 6), read.StimSessions.Single().Date);
        Assert.Equal("clot-leg", read.FlagNotes.Single().Flag);
    }

    // Each measure of the shipped library can be written and read at both ends of its range.
    [Fact]
    public void Every_measure_can_be_entered_in_its_unit()
    {
        foreach (Measure measure in Shipped.Measures.Values.Where(measure => !MeasureIds.Computed.Contains(measure.Id)))
        {
            Assert.Equal(measure.Least, MeasureText.Read(measure, measure.Id, MeasureText.Write(measure, measure.Least)).Value?.Value);
            Assert.Equal(measure.Most, MeasureText.Read(measure, measure.Id, MeasureText.Write(measure, measure.Most)).Value?.Value);
        }
    }
}
