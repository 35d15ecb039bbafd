using System.Collections.Immutable;
using System.Text;
using Progression.Core.Drafting;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Exchange.Csv;
using Progression.Exchange.Import;
using Progression.Exchange.Tests.Import;
using Progression.Records.Cases;
using Progression.SeedDemo;

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

    [Fact]
    public void Cells_of_a_plan_come_back_as_they_were()
    {
        int cells = 0;
        foreach (Case patient in DemoCaseload.Make(SomeKnee.Today, SomeKnee.Library))
        {
            if (PlanDraft.Draft(patient, SomeKnee.Library, null).Value is not { } plan)
            {
                continue;
            }

            PlanRevision empty = plan with { Cells = ImmutableDictionary<CellAddress, PlanCell>.Empty };
            ImportResult result = CsvImport.Read(
                Encoding.UTF8.GetBytes(PlanCsv.Of(plan, SomeKnee.Library)), CsvContent.Plan, new ImportGround(patient, SomeKnee.Library, SomeKnee.Today) { Plan = empty }, _ => CsvChoices.None).Result;
            Assert.Empty(result.Problems);
            Assert.Equal(Texts(plan), Texts(result.Plan!));
            cells += result.Coming;
        }

        Assert.True(cells > 300, $"{cells} cells");
    }

    private static List<string> Texts(PlanRevision plan) =>
    [
        .. from lane in plan.Lanes
           from week in Enumerable.Range(1, plan.Weeks)
           let content = plan.ContentAt(lane.Id, week)
           where content is not null
           select $"{lane.Id} {week} {CellNotation.Text(lane, content, SomeKnee.Library)}",
    ];

    // Who measured is kept with the visit or with the reading; what is compared is who measured each reading.
    private static List<string> Readings(Case patient) =>
    [
        .. from visit in patient.Assessments.Prepend(patient.PreOp).OfType<Assessment>()
           from reading in visit.Readings.Values
           select $"{visit.Date:O} {ReferenceEquals(visit, patient.PreOp)} {reading with { Rater = reading.Rater ?? visit.Rater, Each = [] }}",
    ];

    private static List<string> Sessions(Case patient) => [.. patient.Sessions.Select(session => CaseJson.Node(session).ToJsonString())];
}
