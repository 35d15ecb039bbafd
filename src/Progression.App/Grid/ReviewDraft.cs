using Progression.App.Actions;
using Progression.Core.Entry;
using Progression.Core.Reviews;
using Progression.Records.Caseload;

namespace Progression.App.Grid;

/// <summary>What is being typed in the review of a plan, as it is kept and brought back. Only the words come back: nothing is said or signed by that.</summary>
internal static class ReviewDraft
{
    private const string Meaning = "meaning";

    /// <summary>The mode in which something is said, by its name; null for any other.</summary>
    public static GridMode? ModeOf(string? name) =>
        Enum.TryParse(name, out GridMode mode) && mode is GridMode.Comment or GridMode.Remark or GridMode.Return or GridMode.Ask or GridMode.Sign ? mode : null;

    /// <summary>What is kept beside the words: what a signature was to say.</summary>
    public static IEnumerable<(string, string)> Further(GridState state, GridMode mode) =>
        mode == GridMode.Sign && state.Review is { } review ? [(Meaning, review.Meaning.ToString())] : [];

    /// <summary>What was to be said, for the page that compares drafts.</summary>
    /// <param name="mode">In which mode it was typed.</param>
    /// <param name="cell">The cell the cursor stood on, in words.</param>
    public static string Place(GridMode mode, string cell) => mode switch
    {
        GridMode.Comment => $"comment on {cell}",
        GridMode.Remark => "comment on the plan",
        GridMode.Return => "why the plan is returned",
        GridMode.Ask => "with the request for a review",
        _ => "with the signature",
    };

    /// <summary>The grid with the words in their line. Where the step cannot be done any more, they are told.</summary>
    public static GridState Restored(GridState grid, GridMode mode, KeptForm kept, string text)
    {
        if (grid.Review?.WhyNot(GridReviewing.StepOf(mode)) is not null || grid.Review is not { } review)
        {
            return grid with { Status = SafeText.OneLine($"It cannot be said here any more; this was typed: {text}") };
        }

        SignatureMeaning meaning = Enum.TryParse(kept.Further.GetValueOrDefault(Meaning), out SignatureMeaning known) && Enum.IsDefined(known) ? known : review.Meaning;
        GridState typing = GridReviewing.Begin(grid with { Review = review with { Meaning = meaning } }, mode);
        return typing with { Entry = typing.Entry! with { Line = LineEntry.Of(text) }, Status = "As it was left." };
    }
}
