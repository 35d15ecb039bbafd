using System.Text;
using Progression.Core.People;
using Progression.Exchange.Csv;
using Progression.Exchange.Import;
using Progression.Exchange.Tests.Import;
using Progression.Records.Cases;

namespace Progression.Exchange.Tests.Csv;

/// <summary>What was written and read again is the same: 300 invented cases, seed fixed.</summary>
public sealed class CsvRoundTripTests
{
    private const int Cases = 300;

    private static ImportResult Read(string csv, CsvContent content, Case into) =>
        CsvImport.Read(Encoding.UTF8.GetBytes(csv), content, new ImportGround(into, SomeKnee.Library, SomeKnee.Today), _ => CsvChoices.None).Result;

    [Fact]
    public void Readings_come_back_as_they_were()
    {
        foreach (Case patient in InventedKnees.Some(20_261_125, Cases))
        {
            ImportResult result = Read(MeasuresCsv.Of(patient, SomeKnee.Library), CsvContent.Measures, patient with { PreOp = null, Assessments = [] });
            Assert.Empty(result.Problems);
            Assert.Equal(Readings(patient), Readings(result.Case ?? patient with { PreOp = null, Assessments = [] }));
        }
    }

    [Fact]
    public void Sessions_come_back_as_they_were()
    {
        foreach (Case patient in InventedKnees.Some(20_261_126, Cases))
        {
            ImportResult result = Read(SessionsCsv.Of(patient), CsvContent.Sessions, patient with { Sessions = [] });
            Assert.Empty(result.Problems);
            Assert.Equal(Sessions(patient), Sessions(result.Case ?? patient with { Sessions = [] }));
        }
    }

    [Fact]
    public void What_a_case_has_already_changes_nothing()
    {
        foreach (Case patient in InventedKnees.Some(20_261_127, 60))
        {
            foreach (ImportResult result in new[] { Read(MeasuresCsv.Of(patient, SomeKnee.Library), CsvContent.Measures, patient), Read(SessionsCsv.Of(patient), CsvContent.Sessions, patient) })
            {
                Assert.Null(result.Case);
                Assert.Empty(result.Problems);
                Assert.All(result.Lines, line => Assert.Equal(ImportFate.IsThere, line.Fate));
            }
        }
    }

    // Who measured is kept with the visit or with the reading; what is compared is who measured each reading.
    private static List<string> Readings(Case patient) =>
    [
        .. from visit in patient.Assessments.Prepend(patient.PreOp).OfType<Assessment>()
           from reading in visit.Readings.Values
           select $"{visit.Date:O} {ReferenceEquals(visit, patient.PreOp)} {reading with { Rater = reading.Rater ?? visit.Rater, Each = [] }}",
    ];

    private static List<string> Sessions(Case patient) => [.. patient.Sessions.Select(session => CaseJson.Node(session).ToJsonString())];
}
