using System.Runtime.Versioning;
using Progression.App.Tests.Commands.Plans;
using Progression.Records.Storage;

namespace Progression.App.Tests.Commands;

/// <summary>A record that this program cannot read fails without its content getting into what is told, the trace for a developer included.</summary>
[SupportedOSPlatform("linux")]
public sealed class FaultTextTests
{
    [Theory]
    [InlineData("""{"schema":"case/1","code":"K-100","operation":{"side":"Qzmarker"}}""")]
    [InlineData("""{"code":"Qzmarker"}""")]
    [InlineData("""{"born":"Qzmarker","schema":"Qzmarker"}""")]
    [InlineData("""{"assessments":["Qzmarker"],"schema":"case/1"}""")]
    public void Nothing_of_the_record_is_told(string body)
    {
        using PlanBench bench = new();
        Directory.CreateDirectory(bench.Store, (UnixFileMode)0x1C0);
        new LiteDbPlanStore(new StoreOptions(bench.Store, (_, _) => new Dictionary<string, string>())).Append(new Submission("K-100", [new Draft(RecordKind.Case, null, body)], new Actor("1", "x"), DateTimeOffset.UnixEpoch));

        CommandRun run = bench.Run("check", "K-100", "--debug");

        Assert.NotEqual(0, run.Code);
        Assert.NotEmpty(run.Messages);
        Assert.DoesNotContain("Qzmarker", run.Messages + run.Data, StringComparison.Ordinal);
    }
}
