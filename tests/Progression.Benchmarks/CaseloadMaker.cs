using System.Collections.Immutable;
using System.Diagnostics;
using Progression.Core.Drafting;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Records.Caseload;
using Progression.Records.Cases;
using Progression.Records.Library;
using Progression.Records.Plans;
using Progression.Records.Storage;
using Progression.SeedDemo;

namespace Progression.Benchmarks;

/// <summary>
/// Fills a folder with a caseload of any size. The journal is written in one go, as many saves would have left it, and the store makes its index from it.
/// The plans hold their stim and what is done along with it, with short reasons: a hundred thousand whole plans would fill a disk and say no more of a list.
/// </summary>
internal static class CaseloadMaker
{
    private static readonly DateOnly Today = new(2026, 11, 25);

    private static readonly ImmutableArray<Actor> Accounts = [.. "abcde".Select((letter, number) => new Actor($"{2001 + number}", $"therapist-{letter}"))];

    public static void Make(int count, string folder, TextWriter output)
    {
        Stopwatch watch = Stopwatch.StartNew();
        LiteDbPlanStore store = new(new StoreOptions(folder, CaseSummary.Of));
        if (store.Generation() != 0)
        {
            output.WriteLine($"{folder} holds records already; name an empty or new folder.");
            return;
        }

        using (FileStream journal = new(Path.Combine(folder, "plans.journal"), FileMode.Append, FileAccess.Write))
        {
            Write(count, journal);
        }

        output.WriteLine(FormattableString.Invariant($"{count} cases written in {watch.Elapsed.TotalSeconds:F1} s"));
        watch.Restart();
        RebuildReport report = store.Rebuild();
        output.WriteLine(FormattableString.Invariant($"{report.Entries} entries indexed in {watch.Elapsed.TotalSeconds:F1} s; damage: {report.Damage.Length}"));
    }

    private static void Write(int count, FileStream journal)
    {
        ClinicalLibrary library = LibraryReader.Default();
        Dictionary<(int?, bool), PlanRevision> drafted = [];
        string? previous = null;
        long sequence = 0;
        foreach (Case patient in DemoCaseload.Crowd(count, Today, library))
        {
            // One plan for each length, with stim and without; only its days differ from case to case.
            (int?, bool) kind = (patient.Weeks, patient.StimSessions.Any());
            if (!drafted.TryGetValue(kind, out PlanRevision? plan))
            {
                drafted[kind] = plan = Small(PlanDraft.Draft(patient, library).Value!);
            }

            int shift = patient.Operation.Date.DayNumber - plan.Operation.DayNumber;
            PlanRevision own = plan with { Code = patient.Code, Operation = patient.Operation.Date, From = plan.From.AddDays(shift), OpenFrom = plan.OpenFrom.AddDays(shift) };
            (RecordKind Kind, string Body)[] bodies = [(RecordKind.Case, CaseJson.Write(patient)), (RecordKind.Plan, PlanJson.Write(own))];
            DateTimeOffset at = new(Today.AddDays(-(int)(sequence % 30)), new TimeOnly(9, 0), TimeSpan.Zero);
            for (int part = 0; part < bodies.Length; part++)
            {
                string hash = JournalEntry.HashOf(patient.Code.Text, bodies[part].Kind, new(1, ""), bodies[part].Body);
                RevisionStamp stamp = new(patient.Code.Text, bodies[part].Kind, 1, hash, null, Accounts[(int)(sequence / 2 % Accounts.Length)], at);
                JournalEntry entry = new(sequence + part + 1, stamp, part + 1, bodies.Length, bodies[part].Body, previous);
                journal.Write(JournalLine.Write(entry));
                previous = JournalLine.HashOf(entry);
            }

            sequence += bodies.Length;
        }
    }

    private static PlanRevision Small(PlanRevision plan) => plan with
    {
        Cells = plan.Cells.Where(cell => cell.Key.Lane is Lanes.Stim or Lanes.WithStim).ToImmutableDictionary(
            cell => cell.Key,
            cell => cell.Value with { Basis = cell.Value.Basis with { Reason = "As drafted.", Inputs = [], Limits = [] } }),
    };
}
