using System.Collections.Immutable;
using Progression.Core.People;
using Progression.Core.Plans;

namespace Progression.Exchange.Import;

/// <summary>What a file comes to: a case with all of it, or everything that is wrong. Nothing is ever half imported.</summary>
public sealed record ImportResult
{
    private ImportResult()
    {
    }

    /// <summary>The case with all of it; null when anything was refused, or when there is nothing that it has not.</summary>
    public Case? Case { get; private init; }

    /// <summary>The plan with all of it, for a file of a plan; null as <see cref="Case"/>.</summary>
    public PlanRevision? Plan { get; private init; }

    /// <summary>Whether there is something that would come in, and nothing that is refused.</summary>
    public bool IsGood => Case is not null || Plan is not null;

    /// <summary>What was found and is good, in the order of the file.</summary>
    public required ImmutableArray<ImportLine> Lines { get; init; }

    /// <summary>What is refused, in the order of the file; with one of them nothing comes in.</summary>
    public required ImmutableArray<ImportProblem> Problems { get; init; }

    /// <summary>What looks like a slip and is asked back: it can be right.</summary>
    public ImmutableArray<ImportProblem> Queries { get; init; } = [];

    /// <summary>How many things would come in.</summary>
    public int Coming => Lines.Count(line => line.Fate == ImportFate.ComesIn);

    /// <summary>A file of which nothing can be read.</summary>
    public static ImportResult Refused(params ImmutableArray<ImportProblem> problems) => Of(null, [], problems, []);

    /// <summary>What a file of a plan comes to.</summary>
    /// <param name="entered">The plan with all of it; not looked at where anything is refused or nothing is new.</param>
    /// <param name="lines">What was found and is good.</param>
    /// <param name="problems">What is refused.</param>
    /// <param name="queries">What is asked back.</param>
    public static ImportResult OfPlan(PlanRevision entered, ImmutableArray<ImportLine> lines, IEnumerable<ImportProblem> problems, IEnumerable<ImportProblem> queries)
    {
        ImportResult result = Of(null, lines, problems, queries);
        return result with { Plan = result.Problems.IsEmpty && result.Coming > 0 ? entered : null };
    }

    /// <summary>What a file comes to.</summary>
    /// <param name="entered">The case with all of it; not looked at where anything is refused or nothing is new.</param>
    /// <param name="lines">What was found and is good.</param>
    /// <param name="problems">What is refused.</param>
    /// <param name="queries">What is asked back.</param>
    public static ImportResult Of(Case? entered, ImmutableArray<ImportLine> lines, IEnumerable<ImportProblem> problems, IEnumerable<ImportProblem> queries)
    {
        ImmutableArray<ImportProblem> refused = [.. problems.OrderBy(problem => problem.Place.Order)];
        ImmutableArray<ImportLine> inOrder = [.. lines.OrderBy(line => line.Place.Order)];
        return new ImportResult
        {
            Case = refused.IsEmpty && inOrder.Any(line => line.Fate == ImportFate.ComesIn) ? entered : null,
            Lines = inOrder,
            Problems = refused,
            Queries = [.. queries.OrderBy(query => query.Place.Order)],
        };
    }
}
