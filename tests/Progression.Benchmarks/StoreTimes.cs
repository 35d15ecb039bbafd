using System.Diagnostics;
using Progression.Core.Clinic;
using Progression.Core.Reviews;
using Progression.Records.Caseload;
using Progression.Records.Reviews;
using Progression.Records.Storage;

namespace Progression.Benchmarks;

/// <summary>What the calls cost that must be quick whatever the size, and those that read everything.</summary>
internal static class StoreTimes
{
    private const int Rounds = 9;

    public static void Print(string folder, TextWriter output)
    {
        LiteDbPlanStore store = new(new StoreOptions(folder, CaseSummary.Of) { Schemas = RecordSchemas.Table });
        Tell("status, first call of the process", 1, () => store.Status());
        Tell("status", Rounds, () => store.Status());
        string[] codes = [.. store.List(row => row.CaseCode).Cases.Order(StringComparer.Ordinal).Take(40)];
        foreach (string code in codes.Where(_ => store.Waiting(row => row).Cases.IsEmpty).ToArray())
        {
            Ask(store, code);
        }

        Tell("the queue", Rounds, () => store.Waiting(WaitingReview.Of));
        Tell("open a case", Rounds, () => store.Load(codes[7]));
        Tell("has anybody saved", Rounds, () => store.HasChangedSince(store.Generation()));
        long generation = store.Generation();
        Tell("has anybody saved, nobody did", Rounds, () => store.HasChangedSince(generation));
        Tell("save a review", Rounds, () => Ask(store, codes[8]));
        Tell("the whole list", Rounds, () => store.List(row => row.CaseCode.Length));
        Tell("verify", 1, () => store.Verify());
        Tell("rebuild", 1, () => store.Rebuild());
        StoreStatus status = store.Status();
        output.WriteLine(FormattableString.Invariant($"{status.Cases} cases, {status.Entries} entries, {status.Bytes / 1048576.0:F1} MiB"));

        void Tell(string what, int rounds, Action work)
        {
            List<double> times = [];
            for (int round = 0; round < rounds; round++)
            {
                Stopwatch watch = Stopwatch.StartNew();
                work();
                times.Add(watch.Elapsed.TotalMilliseconds);
            }

            output.WriteLine(FormattableString.Invariant($"{what,-46}{times.Order().ElementAt(rounds / 2),10:F2} ms"));
        }
    }

    private static void Ask(LiteDbPlanStore store, string code)
    {
        CaseView view = store.Load(code)!;
        RevisionStamp plan = view.Head(RecordKind.Plan)!.Stamp;
        ReviewRecord before = view.Head(RecordKind.Review) is { } review ? ReviewJson.Read(review.Body) : ReviewRecord.Empty;
        ReviewAct request = new()
        {
            Step = ReviewStep.Requested,
            By = new ReviewPerson(plan.By.UserId, plan.By.Name, ClinicRole.Therapist),
            At = plan.At.AddMinutes(before.Acts.Length),
            Plan = new ReviewedPlan(plan.Revision, plan.Hash),
        };
        _ = store.Append(new Submission(
            code, [new Draft(RecordKind.Review, view.Head(RecordKind.Review)?.Stamp.Reference, ReviewJson.Write(before.With(request)))], plan.By, request.At));
    }
}
