using System.Collections.Immutable;
using Progression.Core.Plans;

namespace Progression.App.Grid;

/// <summary>Unsaved work of an earlier session that can be recovered, compared or discarded.</summary>
/// <param name="Id">Names it among those found.</param>
/// <param name="What">What it is, in words: "the plan", "an assessment".</param>
/// <param name="Kept">When, by whom and where it was kept, as a sentence.</param>
public sealed record DraftOffer(string Id, string What, string Kept)
{
    /// <summary>The plan as it was left; null for a form.</summary>
    public PlanRevision? Plan { get; init; }

    /// <summary>The revision the plan was made from; null when it is not in the store.</summary>
    public PlanRevision? From { get; init; }

    /// <summary>That another revision was saved since, as a sentence; empty when none was.</summary>
    public string Since { get; init; } = "";

    /// <summary>What was typed into a form, line by line; empty for a plan.</summary>
    public ImmutableArray<DraftText> Lines { get; init; } = [];
}

/// <summary>A line of a form as it was left.</summary>
/// <param name="Place">Its name.</param>
/// <param name="Before">What stood there before it was typed in; empty for nothing.</param>
/// <param name="Draft">What was typed; empty where the line was emptied.</param>
public sealed record DraftText(string Place, string Before, string Draft);
