using System.Diagnostics;
using Progression.App.Commands;
using Progression.App.Tests.Commands.Plans;
using Progression.Records.Audit;
using Progression.Records.Caseload;
using Progression.Records.Clinic;
using Progression.Records.Storage;

namespace Progression.App.Tests.Commands.Exchange;

/// <summary>A clinic's folder shared by the group users: members of daemon (1) are therapists, of games (60) supervisors, root looks after the machine.</summary>
public sealed class ExchangeRolesTests : IDisposable
{
    private readonly PlanBench _bench = new();

    public ExchangeRolesTests()
    {
        Assert.SkipUnless(Environment.UserName == "root", "Only the superuser gives files away.");
        _bench.Run("draft", _bench.File(PlanBench.Example), "--save");
        File.WriteAllText(Path.Combine(_bench.Store, "clinic.yaml"), "accounts: own\ngroup: users\nroles:\n  therapist: [daemon]\n  supervisor: [games]\n");
        using Process shell = Process.Start(new ProcessStartInfo("sh", ["-ec", "mkdir -p drafts; chmod 644 clinic.yaml; chgrp users . drafts plans.*; chmod 3770 . drafts; chmod 660 plans.*"]) { WorkingDirectory = _bench.Store })!;
        shell.WaitForExit();
        Assert.Equal(0, shell.ExitCode);
    }

    public void Dispose() => _bench.Dispose();

    [Fact]
    public void A_supervisor_takes_a_case_out_and_imports_nothing()
    {
        Assert.Equal(ExitCode.Good, Run(60, "export", "csv", "EXAMPLE-07").Code);
        CommandRun import = Run(60, "import", "csv", _bench.File("date,pain_rest\n2026-03-07,2\n", "a.csv"), "--case", "EXAMPLE-07", "--yes");
        Assert.Equal((ExitCode.NotPermitted, ""), (import.Code, import.Data));
        Assert.Contains("To change a case or a plan takes a therapist", import.Messages, StringComparison.Ordinal);
        Assert.Equal([AuditAct.Exported, AuditAct.Refused], Acts().TakeLast(3).Where(act => act != AuditAct.Viewed));
    }

    [Fact]
    public void A_therapist_does_both() => Assert.All(
        new[] { Run(1, "export", "calendar", "EXAMPLE-07"), Run(1, "import", "csv", _bench.File("date,pain_rest\n2026-03-07,2\n", "a.csv"), "--case", "EXAMPLE-07", "--yes") },
        run => Assert.Equal(ExitCode.Good, run.Code));

    [Fact]
    public void Who_looks_after_the_machine_sees_no_case()
    {
        ProcessFacts root = new() { RealUser = 0, EffectiveUser = 0, Groups = [0] };
        foreach (string[] args in new string[][] { ["export", "csv", "EXAMPLE-07"], ["export", "calendar", "EXAMPLE-07"], ["import", "csv", _bench.File("a,b\n", "a.csv"), "--case", "EXAMPLE-07"] })
        {
            CommandRun run = _bench.RunAs(root, args);
            Assert.Equal((ExitCode.NotPermitted, ""), (run.Code, run.Data));
        }
    }

    private CommandRun Run(uint group, params string[] args) => _bench.RunAs(new ProcessFacts { RealUser = 4711, EffectiveUser = 4711, Groups = [100, group] }, args);

    private List<AuditAct> Acts()
    {
        LiteDbPlanStore store = new(new StoreOptions(_bench.Store, CaseSummary.Of));
        return [.. store.History(AuditChain.Code, RecordKind.Audit).Select(stamp => AuditNoteJson.Read(store.Read(AuditChain.Code, RecordKind.Audit, stamp.Revision)!.Body).Act)];
    }
}
