using System.Collections.Immutable;
using Progression.Core.Entry;

namespace Progression.App.Forms;

/// <summary>What was typed into a form and not handed in as a whole: plain texts, so that they can be kept on disk and put back.</summary>
/// <param name="ById">The text of each line that was changed, by the id of the line; an empty text is a line that was emptied.</param>
/// <param name="At">The line with the caret; empty leaves it where it is.</param>
public sealed record FormTexts(ImmutableSortedDictionary<string, string> ById, string At)
{
    /// <summary>Nothing typed.</summary>
    public static FormTexts None { get; } = new(ImmutableSortedDictionary.Create<string, string>(StringComparer.Ordinal), "");

    /// <summary>Texts by name; those that are null are left out.</summary>
    public static ImmutableSortedDictionary<string, string> Of(IEnumerable<(string Name, string? Text)> texts) => texts
        .Where(text => text.Text is not null)
        .ToImmutableSortedDictionary(text => text.Name, text => text.Text!, StringComparer.Ordinal);

    /// <summary>What is told when a form is opened again as it was left; texts that have no line any more are told, so that they are not lost.</summary>
    public static string Told(IReadOnlyDictionary<string, string> texts, Form form)
    {
        ArgumentNullException.ThrowIfNull(texts);
        ArgumentNullException.ThrowIfNull(form);
        string lost = string.Join(", ", texts.Where(text => form.Line(text.Key) is null or { IsShownOnly: true }).Select(text => SafeText.OneLine($"{text.Key} {text.Value}")));
        return lost.Length == 0 ? "As it was left." : $"As it was left, but these have no line any more: {lost}.";
    }
}
