using System.Collections.Immutable;
using Progression.Core.People;

namespace Progression.Exchange.Import;

/// <summary>Readings of a file of another program, put into a case: all of them or none, nothing that stands there overwritten.</summary>
public static class ReadingImport
{
    /// <summary>What the readings come to.</summary>
    /// <param name="ground">The case, the library and the day.</param>
    /// <param name="found">The readings, in any order.</param>
    /// <param name="problems">What was refused while they were read.</param>
    public static ImportResult Of(ImportGround ground, IEnumerable<FoundReading> found, IEnumerable<ImportProblem> problems)
    {
        ArgumentNullException.ThrowIfNull(ground);
        ArgumentNullException.ThrowIfNull(found);
        List<ImportProblem> refused = [.. problems];
        FoundVisits visits = new(ground);
        foreach (FoundReading one in found)
        {
            if (ReadingCheck.Of(ground, one) is { } wrong)
            {
                refused.Add(wrong);
            }
            else
            {
                visits.Add(one);
            }
        }

        ImmutableArray<FoundVisit> all = visits.InOrder();
        refused.AddRange(all.SelectMany(visit => visit.Problems));
        refused.AddRange(OneBaseline(ground, all));
        Case entered = refused.Count > 0 ? ground.Patient : all.Aggregate(ground.Patient, (so, visit) => visit.Into(so));
        // Questions are asked of what would be kept; a file that is refused is mended first.
        IEnumerable<ImportProblem> queries = refused.Count > 0 ? [] : all.SelectMany(visit => visit.Queries(entered, ground.Library));
        return ImportResult.Of(entered, [.. all.SelectMany(visit => visit.Lines)], refused, queries);
    }

    private static IEnumerable<ImportProblem> OneBaseline(ImportGround ground, ImmutableArray<FoundVisit> visits)
    {
        FoundVisit? first = visits.FirstOrDefault(visit => visit.IsBaseline);
        DateOnly? day = ground.Patient.PreOp?.Date ?? first?.Day;
        return visits.Where(visit => visit.IsBaseline && visit.Day != day).Select(visit => new ImportProblem(
            visit.First, "A case has one visit before the operation.", $"readings of {day:yyyy-MM-dd}, or since the operation", $"{visit.Day:yyyy-MM-dd}"));
    }
}
