namespace Progression.App.Pictures;

/// <summary>The words of lines that were laid out for a screen, for where nothing is laid out.</summary>
public static class RowWords
{
    /// <summary>A width at which no fact is broken into lines.</summary>
    public const int Unbroken = 100_000;

    /// <summary>The text of each line that has any, single spaces between the words.</summary>
    public static IEnumerable<string> Of(IEnumerable<PictureRow> rows) => rows.Select(row => Of(row.Text)).Where(text => text.Any(char.IsLetterOrDigit));

    /// <summary>A text with single spaces between the words.</summary>
    public static string Of(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return string.Join(' ', text.Split(' ', StringSplitOptions.RemoveEmptyEntries));
    }
}
