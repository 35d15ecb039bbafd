using System.Collections.Immutable;
using Progression.Core.Doses;
using Progression.Core.Findings;
using Progression.Core.People;
using Progression.Core.Plans;

namespace Progression.App.Grid;

/// <summary>The grid screen at one moment. It knows no terminal and writes nothing; every action gives another state.</summary>
public sealed record GridState
{
    private GridState()
    {
    }

    /// <summary>What the grid reads beside the plan.</summary>
    public required PlanDesk Desk { get; init; }

    /// <summary>The plan as it is now.</summary>
    public required PlanRevision Plan { get; init; }

    /// <summary>The plan as it was last saved.</summary>
    public required PlanRevision Saved { get; init; }

    /// <summary>The drafts found at the start that are not yet recovered or dropped; the first is the one in question.</summary>
    public ImmutableArray<DraftOffer> Offers { get; init; } = [];

    /// <summary>The line chosen in the comparison of the first draft, from 0.</summary>
    public int DraftLine { get; init; }

    /// <summary>What was chosen for single cells of the first draft: whether the draft's is taken. The others go by what they are.</summary>
    public ImmutableDictionary<CellAddress, bool> DraftPicks { get; init; } = ImmutableDictionary<CellAddress, bool>.Empty;

    /// <summary>Forms of the case that were left half typed and wait, in words: "the assessment".</summary>
    public ImmutableSortedSet<string> Waiting { get; init; } = [];

    /// <summary>The review of the plan; null where it is not kept in a store.</summary>
    public GridReview? Review { get; init; }

    /// <summary>What somebody else saved while this plan was changed; null when nobody has, or when it was settled.</summary>
    public PlanConflict? Conflict { get; init; }

    /// <summary>Whether a cell is marked as another than in the plan that was signed.</summary>
    public bool IsMarked(CellAddress address) => Review is { MarksChanges: true, Signed: { } signed } && !PlanDifference.AreSame(signed.At(address), Plan.At(address));

    /// <summary>The revision that the changes are counted from: the signed one where they are marked, else the saved one.</summary>
    public PlanRevision Since => Review is { MarksChanges: true, Signed: { } signed } ? signed : Saved;

    /// <summary>The findings on <see cref="Plan"/>, worst first.</summary>
    public required ImmutableArray<Finding> Findings { get; init; }

    /// <summary>The weekly sums of <see cref="Plan"/>, week 1 first.</summary>
    public required ImmutableArray<WeekFigures> Figures { get; init; }

    /// <summary>What was done of what <see cref="Plan"/> has, week 1 first.</summary>
    public required ImmutableArray<WeekDone> Logged { get; init; }

    /// <summary>The lane under the cursor, from 0.</summary>
    public int LaneIndex { get; init; }

    /// <summary>The week under the cursor, from 1.</summary>
    public int Week { get; init; } = 1;

    /// <summary>What the keys mean.</summary>
    public GridMode Mode { get; init; }

    /// <summary>The mode to go back to from the help page.</summary>
    public GridMode HelpFor { get; init; }

    /// <summary>Whether fewer weeks are shown with more words each.</summary>
    public bool Close { get; init; }

    /// <summary>Whether the answer stands beside or under the grid.</summary>
    public bool ShowsAnswer { get; init; }

    /// <summary>Lines of the answer or the help page that are scrolled past.</summary>
    public int Scroll { get; init; }

    /// <summary>The finding chosen in the list, from 0.</summary>
    public int FindingIndex { get; init; }

    /// <summary>Changes that can be taken back, the last on top.</summary>
    public ImmutableStack<PlanChange> Done { get; init; } = [];

    /// <summary>Changes that can be taken again, the last taken back on top.</summary>
    public ImmutableStack<PlanChange> Undone { get; init; } = [];

    /// <summary>What is being typed; null outside the modes that take text.</summary>
    public CellEntry? Entry { get; init; }

    /// <summary>What was copied and can be put into other cells; null when nothing was.</summary>
    public CopiedCell? Copied { get; init; }

    /// <summary>Why the unsaved changes could not be kept as a draft; null when they are kept, or when there are none.</summary>
    public string? DraftProblem { get; init; }

    /// <summary>The last thing told to the person.</summary>
    public string Status { get; init; } = "";

    /// <summary>The lane under the cursor.</summary>
    public Lane Lane => Plan.Lanes[LaneIndex];

    /// <summary>The cell under the cursor.</summary>
    public CellAddress Cursor => new(Lane.Id, Week);

    /// <summary>Whether the plan is a scratch copy, of which nothing is kept.</summary>
    public bool IsScratch { get; init; }

    /// <summary>Whether the plan differs from the saved one; taking every change back makes it false again.</summary>
    public bool IsUnsaved => !ReferenceEquals(Plan, Saved);

    /// <summary>The present post-op week; it may lie outside the plan.</summary>
    public int PresentWeek => PostOpWeek.Of(Plan.Operation, Desk.Today);

    /// <summary>The findings on a cell, worst first.</summary>
    public IEnumerable<Finding> FindingsOn(CellAddress address) => Findings.Where(finding => finding.Cells.Contains(address));

    /// <summary>The answer to "why" for the cell under the cursor.</summary>
    public Explanation Answer => Desk.Explain(Plan, Findings, Cursor);

    /// <summary>The state with another plan, checked again; the cursor stays in it.</summary>
    public GridState WithPlan(PlanRevision plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return this with
        {
            Plan = plan,
            Findings = [.. Desk.Check(plan).OrderByDescending(finding => finding.Severity)],
            Figures = PlanFigures.Of(plan, Desk.Library),
            Logged = DoneFigures.Of(plan, Desk.Case, Desk.Library),
            LaneIndex = Math.Clamp(LaneIndex, 0, plan.Lanes.Length - 1),
            Week = Math.Clamp(Week, 1, plan.Weeks),
            Scroll = 0,
        };
    }

    /// <summary>The screen at its start: cursor on the present week, or a question when drafts were kept.</summary>
    /// <param name="desk">What the grid reads beside the plan.</param>
    /// <param name="plan">The saved plan.</param>
    /// <param name="offers">Drafts kept by earlier sessions.</param>
    public static GridState Open(PlanDesk desk, PlanRevision plan, params ImmutableArray<DraftOffer> offers)
    {
        ArgumentNullException.ThrowIfNull(desk);
        ArgumentNullException.ThrowIfNull(plan);
        GridState bare = new() { Desk = desk, Plan = plan, Saved = plan, Findings = [], Figures = [], Logged = [], Offers = offers };
        GridState state = bare.WithPlan(plan);
        return state with
        {
            Week = Math.Clamp(Math.Max(state.PresentWeek, plan.FirstWeek), 1, plan.Weeks),
            Mode = offers.IsEmpty ? GridMode.Grid : GridMode.Draft,
        };
    }
}
