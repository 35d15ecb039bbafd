using System.Text.Json.Nodes;
using Progression.Records.Storage;

namespace Progression.Records.Tests.Storage;

/// <summary>A body called "week": form 1 counts in "n", form 2 in "count", form 3 in "counts", a list.</summary>
public sealed class BodySchemasTests : IDisposable
{
    private static readonly BodySchemas Third = new BodySchemas(["week/3"], BodySchemas.None.Steps)
        .With("week/1", body => new JsonObject { ["schema"] = "week/2", ["count"] = body["n"]!.DeepClone() })
        .With("week/2", body => new JsonObject { ["schema"] = "week/3", ["counts"] = new JsonArray(body["count"]!.DeepClone()) });

    private readonly StoreCopy _old = new();

    [Fact]
    public void A_body_of_an_older_form_is_brought_forward_when_it_is_read_and_stays_as_it_was_saved()
    {
        RevisionStamp first = Sample.Saved(_old.Store.Append(Sample.Plan("K-1", null, """{"schema":"week/1","n":7}""")));
        RevisionStamp second = Sample.Saved(_old.Store.Append(Sample.Plan("K-1", first.Reference, """{"schema":"week/2","count":8}""")));
        LiteDbPlanStore now = new(_old.Options with { Schemas = Third, FieldsVersion = 99 });

        Assert.Equal("""{"counts":[7],"schema":"week/3"}""", now.Read("K-1", RecordKind.Plan, 1)!.Body);
        Assert.Equal(new StoredRevision(second, """{"counts":[8],"schema":"week/3"}"""), now.Load("K-1")!.Head(RecordKind.Plan));
        Assert.Equal("[8]", now.List(row => row.Fields["plan.counts"]).Cases.Single());
        Assert.True(now.Verify().IsSound);
        Assert.Equal("""{"n":7,"schema":"week/1"}""", _old.Store.Read("K-1", RecordKind.Plan, 1)!.Body);
    }

    [Fact]
    public void A_newer_body_is_refused_by_name_and_everything_else_can_be_read()
    {
        RevisionStamp first = Sample.Saved(_old.Store.Append(Sample.Plan("K-1", null, """{"schema":"week/3","counts":[7]}""")));
        Sample.Saved(_old.Store.Append(Sample.Plan("K-1", first.Reference, """{"schema":"week/4"}""")));
        RevisionStamp other = Sample.SaveRevisions(_old.Store, "K-2", 1);
        LiteDbPlanStore now = new(_old.Options with { Schemas = Third, FieldsVersion = 99 });

        StoreException fault = Assert.Throws<StoreException>(() => now.Load("K-1"));

        Assert.Equal(StoreFault.Newer, fault.Fault);
        Assert.Contains("Revision 2 of plan 'K-1' was saved by a newer version of this program (week/4; this one knows week/3).", fault.Message, StringComparison.Ordinal);
        Assert.Equal("""{"counts":[7],"schema":"week/3"}""", now.Read("K-1", RecordKind.Plan, 1)!.Body);
        Assert.Equal(other, now.Load("K-2")!.Head(RecordKind.Plan)!.Stamp);
        Assert.Equal(["K-1", "K-2"], now.List(row => row.CaseCode).Cases.Order(StringComparer.Ordinal));
        Sample.Saved(now.Append(Sample.Plan("K-2", other.Reference, "{}")));
        Assert.True(now.Verify().IsSound);
    }

    [Theory]
    [InlineData("""{"schema":"other/9"}""")]
    [InlineData("""{"schema":7}""")]
    [InlineData("""{"week":1}""")]
    public void A_body_that_says_nothing_of_a_known_form_is_given_as_it_is(string body)
    {
        Sample.Saved(_old.Store.Append(Sample.Plan("K-1", null, body)));

        Assert.Equal(body, new LiteDbPlanStore(_old.Options with { Schemas = Third }).Read("K-1", RecordKind.Plan, 1)!.Body);
    }

    [Fact]
    public void A_line_of_a_newer_journal_is_named_as_such()
    {
        Sample.SaveRevisions(_old.Store, "K-1", 1);
        File.AppendAllText(_old.Journal, "J2 17 whatever comes\n");

        Assert.Contains("a newer version of this program wrote it (form J2)", Assert.Single(Rebuilt()), StringComparison.Ordinal);
        Assert.NotNull(_old.Store.Read("K-1", RecordKind.Plan, 1));
        Assert.EndsWith("comes\n", File.ReadAllText(_old.Journal), StringComparison.Ordinal);

        // As the newer program leaves it: without a mark that this one can read.
        IEnumerable<string> Rebuilt()
        {
            File.WriteAllText(_old.Mark, "M9 2\n");
            return _old.Store.Rebuild().Damage;
        }
    }

    public void Dispose() => _old.Dispose();
}
