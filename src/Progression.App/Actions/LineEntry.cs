using Progression.Core.Entry;

namespace Progression.App.Actions;

/// <summary>One line of text being typed, with a caret. Only safe text gets in; pasted line ends become spaces.</summary>
public sealed record LineEntry
{
    /// <summary>The longest line taken, in UTF-16 units; more is left out.</summary>
    public const int Longest = 400;

    private LineEntry(string text, int caret) => (Text, Caret) = (text, caret);

    /// <summary>What stands in the line.</summary>
    public string Text { get; }

    /// <summary>Where the next letter goes: 0 before the first, the length after the last.</summary>
    public int Caret { get; }

    /// <summary>A line with this text and the caret behind it.</summary>
    public static LineEntry Of(string text)
    {
        string safe = SafeText.OneLine(text);
        return new(safe, safe.Length);
    }

    /// <summary>The line with text put in at the caret.</summary>
    public LineEntry Put(string text)
    {
        string safe = string.Join(' ', SafeText.Lines(text)).TrimEnd('\uFFFD');
        return Text.Length + safe.Length > Longest ? this : new(Text.Insert(Caret, safe), Caret + safe.Length);
    }

    /// <summary>The line without the letter before the caret.</summary>
    public LineEntry RubOut() => Caret == 0 ? this : new(Text.Remove(Before, Caret - Before), Before);

    /// <summary>The line without the letter at the caret.</summary>
    public LineEntry Delete() => Caret == Text.Length ? this : new(Text.Remove(Caret, After - Caret), Caret);

    /// <summary>The empty line.</summary>
    public static LineEntry Empty { get; } = new("", 0);

    /// <summary>The caret one letter to the left.</summary>
    public LineEntry Left() => new(Text, Before);

    /// <summary>The caret one letter to the right.</summary>
    public LineEntry Right() => new(Text, After);

    /// <summary>The caret before the first letter.</summary>
    public LineEntry Start() => new(Text, 0);

    /// <summary>The caret behind the last letter.</summary>
    public LineEntry End() => new(Text, Text.Length);

    /// <summary>Columns from the start of the line to the caret.</summary>
    public int CaretColumn => SafeText.Width(Text[..Caret]);

    private int Before => Caret == 0 ? 0 : Caret - (Caret > 1 && char.IsLowSurrogate(Text[Caret - 1]) ? 2 : 1);

    private int After => Caret == Text.Length ? Caret : Caret + (char.IsHighSurrogate(Text[Caret]) ? 2 : 1);
}
