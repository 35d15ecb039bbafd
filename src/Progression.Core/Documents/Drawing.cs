using System.Collections.Immutable;

namespace Progression.Core.Documents;

/// <summary>A drawing in lines, without a size of its own on paper: every place in it is told in its own units, from the top left corner.</summary>
/// <param name="Width">How wide it is, over 0.</param>
/// <param name="Height">How high it is, over 0.</param>
/// <param name="Lines">What is drawn, the undermost first.</param>
/// <param name="Labels">What is written in it, over the lines.</param>
public sealed record Drawing(double Width, double Height, ImmutableArray<DrawnLine> Lines, ImmutableArray<DrawnLabel> Labels);

/// <summary>A line from point to point.</summary>
/// <param name="Points">At least two points.</param>
/// <param name="IsClosed">Whether it goes back to the first; what it encloses is then white, so that it covers what lies under it.</param>
/// <param name="Weight">How thick it is, in units of the drawing.</param>
public sealed record DrawnLine(ImmutableArray<(double X, double Y)> Points, bool IsClosed, double Weight)
{
    /// <summary>Whether it is broken into dashes.</summary>
    public bool IsDashed { get; init; }

    /// <summary>Whether what it encloses is grey instead of white; only for a closed line.</summary>
    public bool IsGrey { get; init; }
}

/// <summary>A short word or figure in a drawing, centred on its place.</summary>
/// <param name="Text">The word.</param>
/// <param name="At">The middle of it.</param>
/// <param name="Size">Height of the letters' body, in units of the drawing.</param>
public sealed record DrawnLabel(string Text, (double X, double Y) At, double Size);
