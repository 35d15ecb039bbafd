using System.Text;
using Progression.App.Pictures;
using Progression.Core.Entry;

namespace Progression.App.Actions;

/// <summary>A line that is being typed, in a row of its own. The part around the caret is what is seen of a long one.</summary>
public static class LineField
{
    private const string Prompt = "> ";

    /// <summary>The row, and the column of the caret in it.</summary>
    public static (PictureRow Row, int Column) Of(LineEntry line, int width)
    {
        ArgumentNullException.ThrowIfNull(line);
        int room = width - Prompt.Length;
        int skip = Math.Max(0, line.CaretColumn - room + 1);
        PictureRow row = new([new(Prompt, Ink.Strong), new(TextFit.Exactly(Tail(line.Text, skip), room), Ink.Field)]);
        return (row, Prompt.Length + line.CaretColumn - skip);
    }

    private static string Tail(string text, int columns)
    {
        int at = 0;
        while (at < text.Length && columns > 0)
        {
            Rune.DecodeFromUtf16(text.AsSpan(at), out Rune rune, out int units);
            columns -= SafeText.ColumnsOf(rune);
            at += units;
        }

        return text[at..];
    }
}
