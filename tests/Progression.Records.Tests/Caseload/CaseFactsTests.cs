using System.Collections.Immutable;
using System.Text.Json;
using Progression.Core.Caseload;
using Progression.Core.People;
using Progression.Records.Caseload;
using Progression.Records.Cases;
using Progression.Records.Storage;
using Progression.Records.Tests.Cases;
using Progression.Records.Tests.Plans;
using Progression.Records.Tests.Storage;

namespace Progression.Records.Tests.Caseload;

/// <summary>The facts that lists keep, through the store and back.</summary>
public sealed class CaseFactsTests
{
    [Fact]
    public void Facts_of_any_case_survive_as_texts()
    {
        CaseFactsReader reader = new();
        foreach (Case patient in InventedCases.Some(seed: 17, count: 200))
        {
            CaseFacts expected = CaseFacts.Of(patient);
            CaseFacts read = reader.Of(Row(RecordKind.Case, CaseJson.Write(patient)))!;

            Assert.Equal(expected.Visits.AsEnumerable(), read.Visits.AsEnumerable());
            Assert.Equal(expected.Signs.AsEnumerable(), read.Signs.AsEnumerable());
            Assert.Equal(expected.Notes.AsEnumerable(), read.Notes.AsEnumerable());
            Assert.Equal(expected.TreatedSince.AsEnumerable(), read.TreatedSince.AsEnumerable());
            Assert.Equal((expected.Operation, expected.FirstTreated, expected.Stimulated), (read.Operation, read.FirstTreated, read.Stimulated));
            Assert.Equal(Answers(expected.Screening), Answers(read.Screening));
        }
    }

    [Fact]
    public void Cases_with_the_same_answers_share_them()
    {
        CaseFactsReader reader = new();
        CaseRow row = Row(RecordKind.Case, CaseJson.Write(InventedCases.Some(seed: 3, count: 20).First(one => !one.Screening.Answers.IsEmpty)));

        Assert.Same(reader.Of(row)!.Screening, reader.Of(row)!.Screening);
    }

    [Fact]
    public void A_plan_tells_its_weeks_of_stim_and_its_revision()
    {
        (Case patient, Core.Plans.PlanRevision plan) = InventedPlans.One();
        using TempFolder folder = new();
        CaseBook book = new(new LiteDbPlanStore(new StoreOptions(folder.Path, CaseSummary.Of)), Sample.Alone(), new FixedClock(Sample.Monday));
        book.Save(patient, plan, null);

        CaseFacts facts = new CaseFactsReader().Of(Assert.Single(book.List(row => row).Cases))!;

        Assert.Equal((1, plan.Weeks, null), (facts.Plan!.Revision, facts.Plan.Weeks, facts.Plan.SignedRevision));
        Assert.Equal(
            string.Concat(Enumerable.Range(1, plan.Weeks).Select(week => plan.ContentAt("stim", week) is Core.Plans.StimCell { Contractions: > 0 } stim ? stim.Rung.ToString()[0] : '-')),
            facts.Plan.Stim);
        Assert.Equal(2, book.List(row => row).Generation);
    }

    [Theory]
    [InlineData("{}")]
    [InlineData("""{"operation":{"date":"2026-02-02","side":"left"}}""")]
    [InlineData("""{"operation":{"date":"soon","side":7},"assessments":"none","sessions":3}""")]
    [InlineData("""{"schema":"case/1","operation":{},"plan":null}""")]
    public void What_is_not_a_whole_case_is_listed_without_facts(string body) => Assert.Null(new CaseFactsReader().Of(Row(RecordKind.Case, body)));

    [Theory]
    [InlineData("visits", "1:2")]
    [InlineData("visits", "x:,,,,,,:")]
    [InlineData("screened", "z:a")]
    [InlineData("treated", "1")]
    [InlineData("notes", "flag")]
    public void A_text_of_another_version_gives_no_facts(string field, string text)
    {
        CaseRow row = Row(RecordKind.Case, CaseJson.Write(InventedCases.Some(seed: 5, count: 1).First()));
        Dictionary<string, string> fields = new(row.Fields) { [field] = text };

        Assert.Null(new CaseFactsReader().Of(row with { Fields = FieldCollection.Of(fields) }));
    }

    private static CaseRow Row(RecordKind kind, string body)
    {
        using JsonDocument json = JsonDocument.Parse(body);
        return new CaseRow("K-1", [new CaseHead(kind, 1, Sample.Therapist, Sample.Monday)], FieldCollection.Of(CaseSummary.Of(kind, json.RootElement)));
    }

    private static ImmutableArray<(string, Answer, bool)> Answers(Screening screening) =>
        [.. screening.Answers.Values.Select(one => (one.Item, one.Answer, one.Answer == Answer.Yes && one.Clearance is not null))];
}
