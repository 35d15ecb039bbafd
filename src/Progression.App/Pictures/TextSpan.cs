namespace Progression.App.Pictures;

/// <summary>A run of text in one ink. The text must be safe for a terminal and hold no line break.</summary>
/// <param name="Text">Safe text of one line.</param>
/// <param name="Ink">What the text is.</param>
public sealed record TextSpan(string Text, Ink Ink = Ink.Plain);
