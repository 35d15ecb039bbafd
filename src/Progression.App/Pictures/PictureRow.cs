using System.Collections.Immutable;
using Progression.Core.Entry;

namespace Progression.App.Pictures;

/// <summary>One line of a picture: spans from left to right.</summary>
/// <param name="Spans">The spans; none is an empty line.</param>
public sealed record PictureRow(ImmutableArray<TextSpan> Spans)
{
    /// <summary>An empty line.</summary>
    public static PictureRow Empty { get; } = new([]);

    /// <summary>A line of one ink.</summary>
    public static PictureRow Of(string text, Ink ink = Ink.Plain) => new([new TextSpan(text, ink)]);

    /// <summary>The characters without their inks.</summary>
    public string Text => string.Concat(Spans.Select(span => span.Text));

    /// <summary>Columns the line takes.</summary>
    public int Width => Spans.Sum(span => SafeText.Width(span.Text));

    /// <summary>This line with another to its right.</summary>
    public PictureRow Then(PictureRow right)
    {
        ArgumentNullException.ThrowIfNull(right);
        return new([.. Spans, .. right.Spans]);
    }

    /// <summary>The line cut or filled with spaces to exactly this many columns; what is filled keeps the last ink if asked.</summary>
    public PictureRow Fit(int width, Ink fill = Ink.Plain)
    {
        List<TextSpan> kept = [];
        int left = width;
        foreach (TextSpan span in Spans)
        {
            int columns = SafeText.Width(span.Text);
            if (columns > left)
            {
                kept.Add(new TextSpan(TextFit.Exactly(span.Text, left), span.Ink));
                left = 0;
                break;
            }
            kept.Add(span);
            left -= columns;
        }
        if (left > 0)
        {
            kept.Add(new TextSpan(new string(' ', left), fill));
        }
        return new([.. kept]);
    }
}
