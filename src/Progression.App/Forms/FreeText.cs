using Progression.Core.Entry;

namespace Progression.App.Forms;

/// <summary>Reads a few words of a person.</summary>
public static class FreeText
{
    /// <summary>What is wrong with a text; null when nothing is.</summary>
    /// <param name="field">The field as the person knows it.</param>
    /// <param name="text">The text as typed, without spaces around it.</param>
    /// <param name="most">Most letters.</param>
    /// <param name="isNeeded">Whether it may not be empty.</param>
    public static Problem? Wrong(string field, string text, int most, bool isNeeded = false)
    {
        ArgumentNullException.ThrowIfNull(text);
        return text.Length > most || (isNeeded && text.Length == 0)
            ? new Problem(field, text.Length == 0 ? "This is missing." : "The text is too long.", $"{(isNeeded ? 1 : 0)} to {most} letters", Found.Of(text))
            : null;
    }

    /// <summary>The text; null for an empty one.</summary>
    public static string? OrNull(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return text.Length == 0 ? null : text;
    }
}
