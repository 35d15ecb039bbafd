using System.Text;
using Progression.Records.Storage;

namespace Progression.Records.Tests.Storage;

public abstract partial class PlanStoreContract
{
    public static TheoryData<string, string> UnfitSubmissions => new()
    {
        { "", "A case code has" },
        { " K-1", "A case code has" },
        { "K\n1", "A case code has" },
        { new string('K', 65), "A case code has" },
        { "K\ud800", "A case code has" },
    };

    public static TheoryData<string, string> UnfitBodies => new()
    {
        { "", "cannot be stored" },
        { "{", "cannot be stored" },
        { """{"a":1,"a":2}""", "cannot be stored" },
        { """{"a":{"b":1,"b":2}}""", "cannot be stored" },
        { """{"a":"\ud800"}""", "cannot be stored" },
        { "[1]", "must be a JSON object" },
        { "null", "must be a JSON object" },
    };

    [Theory]
    [MemberData(nameof(UnfitSubmissions))]
    public void Refuses_a_code_that_cannot_be_one(string caseCode, string why) =>
        Assert.StartsWith(why, Assert.IsType<AppendResult.Refused>(Store.Append(Sample.Plan(caseCode, null, "{}"))).Why);

    [Theory]
    [MemberData(nameof(UnfitBodies))]
    public void Refuses_a_body_that_cannot_be_stored(string body, string why)
    {
        Assert.Contains(why, Assert.IsType<AppendResult.Refused>(Store.Append(Sample.Plan("K-1", null, body))).Why);
        Assert.Equal(0, Store.Generation());
    }

    [Fact]
    public void Keeps_a_name_in_any_script()
    {
        Actor actor = new("1003", "\ud842\udfb7 Ångström");

        Assert.Equal(actor, Sample.Saved(Store.Append(Sample.Plan("K-½", null, "{}") with { By = actor })).By);
        Assert.Equal(actor, Store.Load("K-½")!.Head(RecordKind.Plan)!.Stamp.By);
    }

    [Fact]
    public void Refuses_a_submission_without_drafts_or_with_two_of_a_kind()
    {
        Assert.IsType<AppendResult.Refused>(Store.Append(Sample.Of("K-1")));
        Assert.IsType<AppendResult.Refused>(Store.Append(Sample.Of("K-1", new(RecordKind.Plan, null, "{}"), new(RecordKind.Plan, null, "{}"))));
        Assert.IsType<AppendResult.Refused>(Store.Append(Sample.Plan("K-1", null, "{}") with { By = new Actor("", "Nobody") }));
        Assert.Equal(0, Store.Generation());
    }

    [Fact]
    public void Lists_by_field_in_pages_with_missing_values_last()
    {
        foreach ((string code, string body) in new[]
        {
            ("K-1", """{"due":"2026-04-01","who":"Robin"}"""), ("K-2", """{"due":"2026-03-01","who":"Kim"}"""),
            ("K-3", """{"who":"Robin"}"""), ("K-4", """{"due":"2026-03-15","who":"Robin"}"""),
        })
        {
            Sample.Saved(Store.Append(Sample.Of(code, new Draft(RecordKind.Case, null, body))));
        }

        CaseQuery byDue = new() { OrderBy = "case.due" };
        Assert.Equal(["K-2", "K-4", "K-1", "K-3"], Codes(byDue));
        Assert.Equal(["K-1", "K-4", "K-2", "K-3"], Codes(byDue with { Descending = true }));
        Assert.Equal(["K-4", "K-1"], Codes(byDue with { Skip = 1, Take = 2 }));
        Assert.Equal(4, Store.List(byDue with { Skip = 1, Take = 2 }).Total);
        Assert.Equal(["K-2"], Codes(new CaseQuery { Where = byDue.Where.Add("case.who", "Kim") }));
        Assert.Equal(["K-1", "K-3", "K-4"], Codes(new CaseQuery { Text = "robin" }));
        Assert.Equal(["K-3"], Codes(new CaseQuery { Text = "k-3" }));
    }

    [Fact]
    public void A_list_shows_the_fields_of_the_newest_revisions_of_all_kinds()
    {
        RevisionStamp first = Sample.Saved(Store.Append(Sample.Plan("K-1", null, """{"weeks":6}""")));
        Sample.Saved(Store.Append(Sample.Of("K-1", new Draft(RecordKind.Case, null, """{"side":"left"}"""))));
        RevisionStamp newest = Sample.Saved(Store.Append(Sample.Plan("K-1", first.Reference, """{"weeks":8}""")));

        CaseRow row = Assert.Single(Store.List(new CaseQuery()).Rows);

        Assert.Equal("left", row.Fields["case.side"]);
        Assert.Equal("8", row.Fields["plan.weeks"]);
        Assert.Equal([RecordKind.Case, RecordKind.Plan], row.Heads.Select(head => head.Kind));
        Assert.Equal(CaseHead.Of(newest), row.Heads[1]);
    }

    [Fact]
    public void Every_case_of_a_long_list_is_taken_once_as_it_was_saved_last()
    {
        Dictionary<string, RevisionStamp> saved = [];
        for (int number = 0; number < 150; number++)
        {
            saved[$"K-{number}"] = Sample.SaveRevisions(Store, $"K-{number}", 1);
        }

        foreach (string code in new[] { "K-0", "K-63", "K-64", "K-149" })
        {
            saved[code] = Sample.Saved(Store.Append(Sample.Plan(code, saved[code].Reference, """{"week":"last"}""")));
        }

        CaseList<(string, int, string)> list = Store.List(row => (row.CaseCode, row.Heads[0].Revision, row.Fields["plan.week"]));

        Assert.Equal(154, list.Generation);
        Assert.Equal(
            saved.Values.Select(stamp => (stamp.CaseCode, stamp.Revision, stamp.Revision == 2 ? "last" : "1")).Order(),
            list.Cases.Order());
        Assert.True(Store.Verify().IsSound);
    }

    [Fact]
    public void Export_into_an_empty_store_gives_the_same_store()
    {
        Sample.SaveRevisions(Store, "K-1", 3);
        Store.Append(Sample.Of("K-2", new(RecordKind.Case, null, """{"text":"Muß ½ – \u0007"}"""), new(RecordKind.Plan, null, "{}")));
        IPlanStore other = Another();
        using MemoryStream lines = new();

        Assert.Equal(5, Store.Export(lines).Entries);
        lines.Position = 0;
        Assert.Equal(new ImportReport(5, 0, null), other.Import(lines));

        Assert.Equal(Store.Verify().TailHash, other.Verify().TailHash);
        Assert.True(other.Verify().IsSound);
        Assert.Equal(Store.Load("K-2")!.Heads, other.Load("K-2")!.Heads);
        lines.Position = 0;
        Assert.Equal(new ImportReport(0, 5, null), other.Import(lines));
    }

    [Fact]
    public void Import_adds_only_what_is_new_and_continues_the_chain()
    {
        RevisionStamp first = Sample.SaveRevisions(Store, "K-1", 1);
        IPlanStore other = Another();
        Copy(Store, other, 0);
        Sample.Saved(Store.Append(Sample.Plan("K-1", first.Reference, """{"week":"next"}""")));

        Assert.Equal(new ImportReport(1, 0, null), Copy(Store, other, after: 1));
        Assert.Equal(2, other.Load("K-1")!.Head(RecordKind.Plan)!.Stamp.Revision);
    }

    [Fact]
    public void Import_refuses_lines_of_another_store_a_gap_and_half_a_submission()
    {
        Sample.SaveRevisions(Store, "K-1", 2);
        Store.Append(Sample.Of("K-2", new(RecordKind.Case, null, "{}"), new(RecordKind.Plan, null, "{}")));
        IPlanStore different = Another();
        Sample.SaveRevisions(different, "K-9", 1);

        Assert.NotNull(Copy(Store, different, 0).Problem);
        Assert.NotNull(Copy(Store, different, after: 1).Problem);
        Assert.NotNull(Copy(Store, Another(), after: 1).Problem);
        using MemoryStream lines = new();
        Store.Export(lines);
        string[] text = Encoding.UTF8.GetString(lines.ToArray()).Split('\n');
        using MemoryStream half = new(Encoding.UTF8.GetBytes(string.Join('\n', text[..3]) + "\n"));
        IPlanStore empty = Another();
        Assert.NotNull(empty.Import(half).Problem);
        Assert.Equal(0, empty.Generation());
        Assert.Equal(1, different.Generation());
    }

    [Fact]
    public void Import_refuses_a_changed_line()
    {
        Sample.SaveRevisions(Store, "K-1", 2);
        using MemoryStream lines = new();
        Store.Export(lines);
        string changed = Encoding.UTF8.GetString(lines.ToArray()).Replace("contractions 10", "contractions 99", StringComparison.Ordinal);
        using MemoryStream source = new(Encoding.UTF8.GetBytes(changed));

        Assert.NotNull(Another().Import(source).Problem);
    }

    private static ImportReport Copy(IPlanStore from, IPlanStore to, long after)
    {
        using MemoryStream lines = new();
        from.Export(lines, after);
        lines.Position = 0;
        return to.Import(lines);
    }

    private IEnumerable<string> Codes(CaseQuery query) => Store.List(query).Rows.Select(row => row.CaseCode);
}
