using System.Text;
using Progression.Core.People;
using Progression.Exchange.Csv;
using Progression.Exchange.Import;
using Progression.Exchange.Tests.Import;

namespace Progression.Exchange.Tests.Csv;

public sealed class SessionsCsvTests
{
    private const string Usual = "date,contractions,peak (mA),exercises,skin,adherence (%),note\r\n2026-03-10,60,55,\"quad-set: 10, 10 @ 2.5 kg; brisk-walk: 900 s\",clear,80,went well\r\n";

    private static ImportResult Read(string text, Case? into = null) =>
        CsvImport.Read(Encoding.UTF8.GetBytes(text), CsvContent.Sessions, SomeKnee.Ground with { Patient = into ?? SomeKnee.Patient }, _ => CsvChoices.None).Result;

    private static string Wrong(string text)
    {
        ImportResult result = Read(text);
        Assert.Null(result.Case);
        return Assert.Single(result.Problems).ToString();
    }

    [Fact]
    public void A_session_comes_in_and_is_written_back_the_same()
    {
        Case now = Read(Usual).Case!;
        Assert.Equal(
            "code,date,week,contractions,peak (mA),comfort,evoked (Nm),strong_contraction_tolerated,exercises,pain_before,pain_after,pain_next_morning,skin,adherence (%),note\r\n"
            + "KNEE-1,2026-03-10,6,60,55,,,,\"quad-set: 10, 10 @ 2.5 kg; brisk-walk: 900 s\",,,,clear,80,went well\r\n",
            SessionsCsv.Of(now));
        SessionLog session = Assert.Single(now.Sessions);
        Assert.Equal(2.5, session.Exercises[0].Sets[1].Load!.Kilograms);
        Assert.Equal(900, session.Exercises[1].Time!.Seconds);
    }

    [Fact]
    public void The_same_session_again_is_left_out_and_another_of_its_day_is_asked_back()
    {
        Case with = Read(Usual).Case!;
        Assert.Equal(ImportFate.IsThere, Assert.Single(Read(Usual, with).Lines).Fate);
        ImportResult other = Read(Usual.Replace("2026-03-10,60", "2026-03-10,30", StringComparison.Ordinal), with);
        Assert.Equal(2, other.Case!.Sessions.Length);
        Assert.StartsWith("row 2: Another session of this day is there", Assert.Single(other.Queries).ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_session_that_stands_twice_in_the_file_is_asked_back() =>
        Assert.Single(Read(Usual + Usual.Split("\r\n")[1] + "\r\n").Queries);

    [Theory]
    [InlineData("date,contractions\n2026-01-10,60\n", "row 2, date: The day lies before the operation. Allowed: a day from 2026-02-02 to 2026-03-20. Found: \"2026-01-10\".")]
    [InlineData("date,contractions\n2026-03-10,1001\n", "row 2, contractions: The number is out of range. Allowed: a whole number from 0 to 1000 contractions. Found: \"1001\".")]
    [InlineData("date,contractions,peak\n2026-03-10,60,55\n", "row 2, peak: The current has no unit. Allowed: a number with mA, from 0 to 1000 mA. Found: \"55\".")]
    [InlineData("date,contractions,peak (uA)\n2026-03-10,60,55\n", "row 2, peak (uA): The current has a unit that does not fit. Allowed: a number with mA, from 0 to 1000 mA. Found: \"55 uA\".")]
    [InlineData("date,contractions,skin\n2026-03-10,60,sore\n", "row 2, skin: This is none of the known words. Allowed: clear, fading redness, damaged. Found: \"sore\".")]
    [InlineData("date,contractions,exercises\n2026-03-10,60,handstand: 10\n", "row 2, exercises: This is none of the known words.")]
    [InlineData("date,contractions,exercises\n2026-03-10,60,quad-set: many\n", "row 2, exercises: This is not a set as it is written here.")]
    [InlineData("date,contractions,code\n2026-03-10,60,KNEE-2\n", "row 2, code: This is of another person. Allowed: the code KNEE-1. Found: \"KNEE-2\".")]
    [InlineData("date,contractions,note\n2026-03-10,,x\n", "row 2, contractions: This field is missing. Allowed: a value; the field is required. Found: nothing.")]
    [InlineData("date,note\n2026-03-10,x\n", "row 1: A column is missing. Allowed: a column \"contractions\", or --map \"HEAD=contractions\". Found: \"date, note\".")]
    public void What_cannot_be_logged_is_told_by_row_and_field(string text, string told) => Assert.StartsWith(told, Wrong(text), StringComparison.Ordinal);
}
