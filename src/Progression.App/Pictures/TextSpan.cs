using Progression.Core.Entry;

namespace Progression.App.Pictures;

/// <summary>A run of text in one ink. Whatever text comes in is made safe for a terminal here, once and for every screen.</summary>
public sealed record TextSpan
{
    /// <summary>Makes a span.</summary>
    /// <param name="text">Text of one line, from wherever.</param>
    /// <param name="ink">What the text is.</param>
    public TextSpan(string text, Ink ink = Ink.Plain) => (Text, Ink) = (SafeText.OneLine(text), ink);

    /// <summary>Safe text of one line.</summary>
    public string Text { get; }

    /// <summary>What the text is.</summary>
    public Ink Ink { get; }
}
