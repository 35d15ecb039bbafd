using System.Collections.Immutable;
using Progression.Core.Reviews;
using Progression.Records.Reviews;
using Progression.Records.Storage;

namespace Progression.Records.Caseload;

/// <summary>Goes through all reviews of a store and names what the rules would not have let through: signatures by who made or asked for the plan, in a wrong role, for another revision.</summary>
public static class ReviewCheck
{
    /// <summary>What is wrong, a sentence each, in the order it was saved; empty when nothing is.</summary>
    /// <param name="store">The store.</param>
    /// <param name="progress">Hears how far it is. Default: nobody.</param>
    public static ImmutableArray<string> Problems(IPlanStore store, IProgress<WorkDone>? progress = null)
    {
        ArgumentNullException.ThrowIfNull(store);
        Dictionary<string, ReviewAudit> cases = new(StringComparer.Ordinal);
        ImmutableArray<string>.Builder wrong = ImmutableArray.CreateBuilder<string>();
        store.Walk(entry =>
        {
            wrong.AddRange(Wrong(entry, cases));
            return true;
        }, progress);
        return wrong.ToImmutable();
    }

    private static IReadOnlyList<string> Wrong(StoredEntry entry, Dictionary<string, ReviewAudit> cases)
    {
        RevisionStamp stamp = entry.Stamp;
        if (stamp.Kind is not (RecordKind.Plan or RecordKind.Review))
        {
            return [];
        }

        if (!cases.TryGetValue(stamp.CaseCode, out ReviewAudit? audit))
        {
            cases[stamp.CaseCode] = audit = new ReviewAudit(stamp.CaseCode);
        }

        if (stamp.Kind == RecordKind.Plan)
        {
            audit.Plan(new PlanStamp(stamp.Revision, stamp.Hash, stamp.By.UserId, stamp.By.Name, stamp.At));
            return [];
        }

        try
        {
            return audit.Review(stamp.Revision, stamp.By.UserId, stamp.At, ReviewJson.Read(entry.Body));
        }
        catch (FormatException fault)
        {
            return [$"Case {stamp.CaseCode}, review revision {stamp.Revision}: {fault.Message}"];
        }
    }
}
