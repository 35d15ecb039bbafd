using System.Text;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Records.Codes;
using Progression.Records.Library;

namespace Progression.Records.Tests.Codes;

public sealed class StandardCodesReaderTests
{
    private const string Loinc = "http://loinc.org";
    private static readonly StandardCodes Codes = StandardCodesReader.Shipped();
    private static readonly ClinicalLibrary Library = LibraryReader.Read(null).Library!;

    [Fact]
    public void Every_code_stands_for_a_measure_of_the_library_and_was_seen() =>
        Assert.All(Codes.All, code =>
        {
            Assert.All(code.Measures, measure => Assert.True(measure == StandardCode.BodyMass || Library.Measures.ContainsKey(measure), measure));
            Assert.Equal(Standing.Seen, code.Source.Standing);
            Assert.True(code.Use == CodeUse.InAndOut || code.Note is not null, code.Code);
        });

    /// <summary>The last digit of a LOINC code is its check digit, modulo 10 with weights 2 and 1 from the right (Luhn), as the LOINC users' guide tells it.</summary>
    [Fact]
    public void Every_check_digit_is_right() =>
        Assert.All(Codes.All.Where(code => code.System == Loinc), code => Assert.True(IsChecked(code.Code), code.Code));

    [Theory]
    [InlineData("41347-5")]
    [InlineData("41374-6")]
    public void A_wrong_check_digit_is_found(string code) => Assert.False(IsChecked(code));

    [Fact]
    public void The_notice_travels_with_the_codes() => Assert.Contains("loinc.org/license", Codes.Notices[Loinc], StringComparison.Ordinal);

    [Fact]
    public void A_code_of_one_knee_is_not_sent_for_the_other()
    {
        Assert.Equal(["41347-6"], Codes.Sent(MeasureIds.FlexionActive, Side.Right).Select(code => code.Code));
        Assert.Equal(["41343-5"], Codes.Sent(MeasureIds.FlexionActive, Side.Left).Select(code => code.Code));
    }

    [Fact]
    public void A_deficit_is_not_sent_under_a_code_that_does_not_say_its_sign() => Assert.Empty(Codes.Sent(MeasureIds.ExtensionActive, Side.Right));

    [Theory]
    [InlineData("measures: [flexion_active]", "measures: []", "codes[1].measures")]
    [InlineData("side: right", "side: upper", "codes[1].side")]
    [InlineData("use: in and out", "use: sometimes", "codes[1].use")]
    [InlineData("system: loinc", "system: other", "codes[1].system")]
    [InlineData("standing: seen", "standing: believed", "codes[1].standing")]
    public void What_is_wrong_in_a_file_is_told_by_its_field(string good, string bad, string field)
    {
        (StandardCodes? codes, var problems) = StandardCodesReader.Read("own.yaml", Encoding.UTF8.GetBytes(One.Replace(good, bad, StringComparison.Ordinal)));

        Assert.Null(codes);
        Assert.Equal(field, Assert.Single(problems).Field);
        Assert.Empty(StandardCodesReader.Read("own.yaml", Encoding.UTF8.GetBytes(One)).Problems);
    }

    private const string One = """
        schema: standard-codes/1
        systems:
          loinc:
            uri: http://loinc.org
        codes:
          - system: loinc
            code: 41347-6
            meaning: Active flexion of the right knee
            measures: [flexion_active]
            side: right
            use: in and out
            source: "Somewhere"
            standing: seen

        """;

    private static bool IsChecked(string code)
    {
        string[] parts = code.Split('-');
        int sum = parts[0].Reverse().Select((digit, place) => (digit - '0') * (place % 2 == 0 ? 2 : 1)).Sum(product => (product / 10) + (product % 10));
        return (10 - (sum % 10)) % 10 == parts[1][0] - '0';
    }
}
