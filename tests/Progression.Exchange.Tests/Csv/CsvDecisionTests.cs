using System.Text;
using Progression.Exchange.Csv;
using Progression.Exchange.Import;
using Progression.Exchange.Tests.Import;

namespace Progression.Exchange.Tests.Csv;

/// <summary>What is decided once for a whole file, or refused, or asked: decimals, days, letters.</summary>
public sealed class CsvDecisionTests
{
    private static ImportResult Read(byte[] bytes, CsvChoices? choices = null) => CsvImport.Read(bytes, CsvContent.Measures, SomeKnee.Ground, _ => choices ?? CsvChoices.None).Result;

    private static ImportResult Read(string text, CsvChoices? choices = null) => Read(Encoding.UTF8.GetBytes(text), choices);

    private static string[] Told(ImportResult result)
    {
        Assert.Null(result.Case);
        return [.. result.Problems.Select(problem => problem.ToString())];
    }

    [Fact]
    public void Mixed_decimals_are_refused_with_their_rows() => Assert.Equal(
        ["row 4, girth (cm): Decimals are written in two ways: with a point in row 4, with a comma in row 2. Allowed: one mark for decimals in the whole file, a point or a comma, and none for thousands. Found: \"41.5\"."],
        Told(Read("date;girth (cm)\n2026-03-10;41,2\n2026-03-11;41,3\n2026-03-12;41.5\n")));

    [Fact]
    public void A_mark_that_may_part_thousands_is_asked()
    {
        const string file = "date;quadriceps_force (N);lever_arm (cm)\n2026-03-12;1,234;30\n";
        Assert.Equal(
            ["row 2, quadriceps_force (N): The comma may part decimals or thousands, and no number of the file tells which. Allowed: --decimals comma where it parts decimals; a file without marks for thousands. Found: \"1,234\"."],
            Told(Read(file)));
        Assert.Equal(1.234, Read(file, new CsvChoices { Decimals = DecimalMark.Comma }).Case!.Assessments[^1].Value("quadriceps_force"));
        Assert.Equal(1.234, Read("date;quadriceps_force (N);lever_arm (cm)\n2026-03-12;1,234;30,5\n").Case!.Assessments[^1].Value("quadriceps_force"));
        Assert.Single(Told(Read(file, new CsvChoices { Decimals = DecimalMark.Point })));
    }

    [Theory]
    [InlineData("1.234,5")]
    [InlineData("1,234.5")]
    [InlineData("1 234")]
    [InlineData("1e3")]
    [InlineData("+5")]
    [InlineData("٣")]
    public void Numbers_of_other_forms_are_refused(string number) => Assert.Single(Told(Read($"date;quadriceps_torque (Nm)\n2026-03-12;\"{number}\"\n")));

    [Fact]
    public void Days_in_two_orders_are_refused_with_their_rows()
    {
        Assert.StartsWith("row 3, date: Days are written in more than one order: the day first in row 2, the month first in row 3.", Told(Read("date,pain_rest\n13/3/2026,1\n3/14/2026,2\n"))[0], StringComparison.Ordinal);
        Assert.StartsWith("row 4, date: Days are written in more than one order: the year first in row 2, last in row 4.", Told(Read("date,pain_rest\n2026-03-12,1\n2026-03-13,2\n14/3/2026,2\n"))[0], StringComparison.Ordinal);
    }

    [Fact]
    public void One_day_that_can_be_read_in_one_way_only_decides_for_all()
    {
        Assert.Equal(["2026-03-04", "2026-03-13"], Read("date,pain_rest\n4/3/2026,1\n13/3/2026,2\n").Case!.Assessments[2..].Select(visit => $"{visit.Date:yyyy-MM-dd}"));
        Assert.Equal(["2026-03-04", "2026-03-13"], Read("date,pain_rest\n3/4/2026,1\n3/13/2026,2\n").Case!.Assessments[2..].Select(visit => $"{visit.Date:yyyy-MM-dd}"));
    }

    [Fact]
    public void Days_that_can_all_be_read_in_two_ways_are_asked()
    {
        const string file = "date,pain_rest\n3/3/2026,1\n4/3/2026,2\n";
        Assert.Equal(
            ["row 3, date: This can be 4 Mar 2026 or 3 Apr 2026, and no day of the file tells which. Allowed: --dates day-first, or --dates month-first. Found: \"4/3/2026\"."],
            Told(Read(file))[..1]);
        Assert.Equal(new DateOnly(2026, 3, 4), Read(file, new CsvChoices { Days = DayOrder.DayFirst }).Case!.Assessments[^1].Date);
        Assert.Equal(new DateOnly(2026, 3, 3), Read("date,pain_rest\n3/3/2026,1\n").Case!.Assessments[^1].Date);
    }

    [Fact]
    public void Utf_16_with_its_mark_is_read_in_both_orders()
    {
        const string text = "date,rater,pain_rest\r\n2026-03-12,Zoë,3\r\n";
        foreach (Encoding encoding in new[] { Encoding.Unicode, Encoding.BigEndianUnicode })
        {
            Assert.Equal("Zoë", Read([.. encoding.GetPreamble(), .. encoding.GetBytes(text)]).Case!.Assessments[^1].Rater);
        }
    }

    [Fact]
    public void Other_letters_are_refused_with_the_place_of_the_byte()
    {
        byte[] latin = Encoding.Latin1.GetBytes("date,rater,pain_rest\n2026-03-12,Zoë,3\n");
        Assert.Equal(["A byte here does not belong to UTF-8 text. Allowed: UTF-8, or UTF-16 with a byte order mark. Found: \"0xEB at byte 35, line 2\"."], Told(Read(latin)));
        Assert.Contains("UTF-16 text without its mark", Told(Read(Encoding.Unicode.GetBytes("date,pain_rest\n")))[0], StringComparison.Ordinal);
        Assert.Contains("UTF-32", Told(Read([.. Encoding.UTF32.GetPreamble(), .. Encoding.UTF32.GetBytes("date")]))[0], StringComparison.Ordinal);
        Assert.Contains("half a character", Told(Read([0xFF, 0xFE, 0x41, 0x00, 0x00, 0xD8]))[0], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(new byte[] { 0x50, 0x4B, 0x03, 0x04, 0x14, 0x00 })]
    [InlineData(new byte[] { 0x25, 0x50, 0x44, 0x46, 0x2D, 0x31 })]
    [InlineData(new byte[] { 0x89, 0x50, 0x4E, 0x47 })]
    [InlineData(new byte[] { })]
    public void A_file_of_another_kind_is_refused(byte[] bytes) => Assert.Single(Told(Read(bytes)));

    [Fact]
    public void A_file_of_100_MB_is_refused_by_its_size_before_it_is_read()
    {
        string path = Path.GetTempFileName();
        try
        {
            using (FileStream file = File.OpenWrite(path))
            {
                file.SetLength(100_000_000);
            }

            long before = GC.GetAllocatedBytesForCurrentThread();
            Assert.Equal("file: The file is too large to be one of a single knee. Allowed: at most 20971520 bytes. Found: \"100000000 bytes or more\".", ImportFile.Read(path).Problems[0].ToString());
            Assert.True(GC.GetAllocatedBytesForCurrentThread() - before < 1_000_000);
        }
        finally
        {
            File.Delete(path);
        }
    }
}
