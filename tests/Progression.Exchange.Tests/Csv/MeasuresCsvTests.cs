using System.Text;
using Progression.Core.People;
using Progression.Exchange.Csv;
using Progression.Exchange.Import;
using Progression.Exchange.Tests.Import;

namespace Progression.Exchange.Tests.Csv;

public sealed class MeasuresCsvTests
{
    private static ImportResult Read(string text, CsvChoices? choices = null) => Read(Encoding.UTF8.GetBytes(text), choices);

    private static ImportResult Read(byte[] bytes, CsvChoices? choices = null) => CsvImport.Read(bytes, CsvContent.Measures, SomeKnee.Ground, _ => choices ?? CsvChoices.None).Result;

    private static string Wrong(string text, CsvChoices? choices = null)
    {
        ImportResult result = Read(text, choices);
        Assert.Null(result.Case);
        return result.Problems[0].ToString();
    }

    private static double? Last(ImportResult result, string measure)
    {
        Assert.Empty(result.Problems);
        return result.Case!.Assessments[^1].Value(measure);
    }

    [Fact]
    public void A_case_is_written_as_one_row_for_each_reading()
    {
        Case patient = SomeKnee.Patient with { Assessments = [SomeKnee.Visit(new DateOnly(2026, 2, 12), ("extension_passive", -3.5), ("effusion", 2))] };
        Assert.Equal(
            "code,date,week,visit,measure,title,value,unit,trials,rater,device,position,steps\r\n"
            + "KNEE-1,2026-01-20,,baseline,flexion_active,Active flexion,110,deg,,KL,,,\r\n"
            + "KNEE-1,2026-02-12,2,visit,extension_passive,Passive extension deficit,-3.5,deg,,KL,,,\r\n"
            + "KNEE-1,2026-02-12,2,visit,effusion,\"Effusion by the stroke test (0 none, 1 trace, 2 one plus, 3 two plus, 4 three plus)\",1+,,,KL,,,\r\n",
            MeasuresCsv.Of(patient, SomeKnee.Library));
    }

    [Fact]
    public void A_negative_reading_comes_back_negative_and_a_formula_comes_back_as_text()
    {
        Assessment visit = SomeKnee.Visit(new DateOnly(2026, 3, 12), ("extension_passive", -3.5)) with { Rater = "=1+1" };
        string csv = MeasuresCsv.Of(SomeKnee.Patient with { Assessments = [visit] }, SomeKnee.Library);
        Assert.Contains(",-3.5,deg,,'=1+1,", csv, StringComparison.Ordinal);
        Case back = Read(csv).Case!;
        Assert.Equal(-3.5, back.Assessments[^1].Value("extension_passive"));
        Assert.Equal("=1+1", back.Assessments[^1].Rater);
    }

    [Theory]
    [InlineData("date,Active flexion (deg)\n2026-03-12,95.5\n")]
    [InlineData("date;flexion-active [°]\n12.3.2026;95,5\n13.3.2026;96\n")]
    [InlineData("Date\tFlexion Active\r\n03/12/2026\t95.5 deg\r\n03/13/2026\t96 deg")]
    [InlineData("date,measure,value,unit\n2026/3/12,Active flexion,95.5,deg\n")]
    [InlineData("\uFEFFdate,measure,value\n2026-03-12,flexion_active,95.5 degrees\n")]
    public void Files_of_many_forms_say_the_same(string text) =>
        Assert.Equal(95.5, Read(text).Case!.Assessments.Single(visit => visit.Date == new DateOnly(2026, 3, 12)).Value("flexion_active"));

    [Fact]
    public void Units_are_converted()
    {
        ImportResult result = Read("date,girth (mm),lever_arm (m),timed_up_and_go (min)\n2026-03-12,412,0.3,0.25\n");
        Assert.Equal(41.2, Last(result, "girth"));
        Assert.Equal(30, Last(result, "lever_arm"));
        Assert.Equal(15, Last(result, "timed_up_and_go"));
    }

    [Theory]
    [InlineData("date,girth (inch)\n2026-03-12,16\n", "row 2, girth (inch): The value has a unit that does not fit. Allowed: a number with cm, mm or m, from 25 to 80 cm. Found: \"16 inch\".")]
    [InlineData("date,girth\n2026-03-12,41\n", "row 2, girth: The value has no unit. Allowed: a unit in the head, \"girth (cm)\", in a column \"unit\", or --map \"girth=girth cm\". Found: \"41\".")]
    [InlineData("date,girth (cm)\n2026-03-12,412 mm\n", "row 2, girth (cm): The cell and its column have different units. Allowed: a value in cm. Found: \"412 mm\".")]
    [InlineData("date,pain_rest\n2026-03-12,11\n", "row 2, pain_rest: The value is out of range. Allowed: a number, from 0 to 10. Found: \"11\".")]
    [InlineData("date,pain_rest\n2026-03-12,n/a\n", "row 2, pain_rest: The value is not a plain number with its unit. Allowed: a number, from 0 to 10. Found: \"n/a\".")]
    [InlineData("date,effusion\n2026-03-12,1\n", "row 2, effusion: This is not a grade of the stroke test. Allowed: none, trace, 1+, 2+, 3+. Found: \"1\".")]
    [InlineData("date,pain_rest\n,3\n", "row 2, date: The row has no day. Allowed: a day. Found: nothing.")]
    [InlineData("date,pain_rest\n12 Mar,3\n", "row 2, date: This is not a day as files write it. Allowed: days in one order in the whole file: 2026-03-09, or 9/3/2026, or 3/9/2026. Found: \"12 Mar\".")]
    [InlineData("date,pain_rest\n2026-02-30,3\n", "row 2, date: There is no such day. Allowed: days in one order in the whole file: 2026-03-09, or 9/3/2026, or 3/9/2026. Found: \"2026-02-30\".")]
    [InlineData("date,Pain at night\n2026-03-12,3\n", "row 1, Pain at night: It is not known what this column is. Allowed: a known column, or --map \"Pain at night=NAME\"; NAME \"ignore\" leaves it out. Found: \"Pain at night\".")]
    [InlineData("day,pain_rest\n2026-03-12,3\n", "row 1, day: It is not known what this column is. Did you mean \"date\"? Allowed: a known column, or --map \"day=NAME\"; NAME \"ignore\" leaves it out. Found: \"day\".")]
    [InlineData("date,code,pain_rest\n2026-03-12,KNEE-2,3\n", "row 2, code: This is of another person. Allowed: the code KNEE-1. Found: \"KNEE-2\".")]
    [InlineData("date,week,pain_rest\n2026-03-12,5,3\n", "row 2, week: 2026-03-12 is not in this week after the operation. Allowed: 6. Found: \"5\".")]
    [InlineData("date,measure,value\n2026-03-12,flexoin_active,95 deg\n", "row 2, measure: There is no such measure. Did you mean \"flexion_active\"? Allowed: the id or name of a measure of the library. Found: \"flexoin_active\".")]
    [InlineData("date,rater\n2026-03-12,KL\n", "row 1: A column is missing. Allowed: a column \"measure\", or --map \"HEAD=measure\". Found: \"date, rater\".")]
    [InlineData("date,pain_rest,Pain at rest\n2026-03-12,3,3\n", "row 1, Pain at rest: It is not known what this column is. Did you mean \"pain_rest\"? Allowed: a known column, or --map \"Pain at rest=NAME\"; NAME \"ignore\" leaves it out. Found: \"Pain at rest\".")]
    public void What_cannot_be_taken_is_told_by_row_and_field(string text, string told) => Assert.Equal(told, Wrong(text));

    [Fact]
    public void Columns_are_mapped_as_the_person_says()
    {
        CsvChoices choices = new() { Columns = [("Visit day", "date"), ("Bend", "flexion-active deg"), ("Remarks", "ignore")] };
        Assert.Equal(95, Last(Read("Visit day,BEND,Remarks\n2026-03-12,95,went well\n", choices), "flexion_active"));
        Assert.Equal(
            "row 1: There is no such column. Allowed: one of date, pain_rest. Found: \"Visit day\".",
            Wrong("date,pain_rest\n2026-03-12,3\n", choices with { Columns = [("Visit day", "date")] }));
    }

    [Fact]
    public void How_deficits_are_written_is_asked_and_turned()
    {
        const string file = "date,Active extension deficit (deg),Passive extension deficit (deg)\n2026-03-12,-8,-5\n";
        Assert.StartsWith("row 2, Active extension deficit (deg): Extension deficits are given, and how they are written is not known. Allowed: --deficits positive (5 deg is 5 deg short", Wrong(file), StringComparison.Ordinal);
        Assert.Equal(8, Last(Read(file, new CsvChoices { Deficits = DeficitSign.Negative }), "extension_active"));
        Assert.Equal(-8, Last(Read(file, new CsvChoices { Deficits = DeficitSign.Positive }), "extension_active"));
    }

    [Fact]
    public void A_file_is_taken_whole_or_not_at_all()
    {
        ImportResult result = Read("date,pain_rest\n2026-03-10,3\n2026-03-11,99\n2026-03-12,2\n2026-04-12,2\n");
        Assert.Null(result.Case);
        Assert.Equal(["row 3, pain_rest", "row 5, pain_rest"], result.Problems.Select(problem => problem.Place.ToString()));
    }

    [Fact]
    public void A_text_that_hides_something_is_refused() => Assert.Equal(
        "row 2, rater: A control or invisible character, or a second line, stands in the text. Allowed: one line of 1 to 120 visible characters. Found: \"K�[2JL\".",
        Wrong("date,rater,pain_rest\n2026-03-12,K\u001B[2JL,3\n"));
}
