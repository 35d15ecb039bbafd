using System.Collections.Immutable;

namespace Progression.App.Forms;

/// <summary>What was typed into a form and not handed in as a whole: plain texts, so that they can be kept on disk and put back.</summary>
/// <param name="ById">The text of each line that was changed, by the id of the line; an empty text is a line that was emptied.</param>
/// <param name="At">The line with the caret.</param>
public sealed record FormTexts(ImmutableSortedDictionary<string, string> ById, string At)
{
    /// <summary>Nothing typed.</summary>
    public static FormTexts None { get; } = new(ImmutableSortedDictionary.Create<string, string>(StringComparer.Ordinal), "");
}
