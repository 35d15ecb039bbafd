using Progression.App.Pictures;
using Progression.Core.Measures;
using Progression.Core.People;

namespace Progression.App.Compare;

/// <summary>The comparison of all visits at one moment. It knows no terminal and no store.</summary>
public sealed record CompareState
{
    /// <summary>Whose knee it is, in words.</summary>
    public required string Title { get; init; }

    /// <summary>The day of the operation, to count weeks from.</summary>
    public required DateOnly Operation { get; init; }

    /// <summary>What is shown.</summary>
    public required Comparison Comparison { get; init; }

    /// <summary>The measure under the cursor, from 0; 0 where there is none.</summary>
    public int Index { get; init; }

    /// <summary>Visits before the newest that are scrolled past; the newest is always shown.</summary>
    public int Back { get; init; }

    /// <summary>What the keys mean.</summary>
    public CompareMode Mode { get; init; }

    /// <summary>The mode to go back to from the help page.</summary>
    public CompareMode HelpFor { get; init; }

    /// <summary>Lines of a page or of the pane that are scrolled past.</summary>
    public int Scroll { get; init; }

    /// <summary>The last thing told to the person.</summary>
    public string Status { get; init; } = "";

    /// <summary>The row under the cursor; null when nothing was ever measured.</summary>
    public ComparisonRow? Chosen => Comparison.Rows.IsEmpty ? null : Comparison.Rows[Index];

    /// <summary>The screen at its start.</summary>
    /// <param name="patient">The case.</param>
    /// <param name="comparison">Its measures over its visits.</param>
    /// <param name="measure">The measure to begin at; null, or one that is not there, for the first.</param>
    public static CompareState Open(Case patient, Comparison comparison, string? measure = null)
    {
        ArgumentNullException.ThrowIfNull(patient);
        ArgumentNullException.ThrowIfNull(comparison);
        CompareState state = new() { Title = CaseTitle.Of(patient), Operation = patient.Operation.Date, Comparison = comparison };
        return state.To(comparison.Rows.ToList().FindIndex(row => row.Measure.Id == measure));
    }

    /// <summary>The state with the cursor on another measure; stays at the ends.</summary>
    public CompareState To(int index) =>
        this with { Index = Math.Clamp(index, 0, Math.Max(0, Comparison.Rows.Length - 1)), Scroll = 0, Status = "" };

    /// <summary>The state with so many more visits scrolled past; one of those before the newest always stays.</summary>
    public CompareState BackBy(int visits) => this with { Back = Math.Clamp(Back + visits, 0, Math.Max(0, Comparison.Visits.Length - 2)), Status = "" };

    /// <summary>What a visit is called: "pre-op" or its post-op week.</summary>
    /// <param name="visit">Which of the comparison's visits, from 0.</param>
    public string Week(int visit) => visit == 0 && Comparison.HasPreOp ? "pre-op" : $"wk {PostOpWeek.Of(Operation, Comparison.Visits[visit])}";
}
