namespace Progression.Exchange.Csv;

/// <summary>
/// Text that a spreadsheet would run as a formula, made harmless with an apostrophe before it, and back. What begins with = + - @, a tab or a line end, with
/// or without spaces or apostrophes before it, gets one; reading takes one away from exactly such texts, so that writing and reading give the text back.
/// Numbers do not pass here: a negative number stays a number.
/// </summary>
public static class SpreadsheetCell
{
    private const char Guard = '\'';

    /// <summary>The text as it is written into a cell.</summary>
    public static string Guarded(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return IsRun(text) ? Guard + text : text;
    }

    /// <summary>The text of a cell that <see cref="Guarded"/> may have made; any other text as it is.</summary>
    public static string Plain(string cell)
    {
        ArgumentNullException.ThrowIfNull(cell);
        return cell.Length > 0 && cell[0] == Guard && IsRun(cell[1..]) ? cell[1..] : cell;
    }

    // Full-width signs are run too where a spreadsheet works in Japanese.
    private static bool IsRun(string text) => text.Length > 0 && text[0] is '\t' or '\r' or '\n'
        || text.TrimStart(' ', Guard) is [('=' or '+' or '-' or '@' or '\t' or '\r' or '\n' or '\uFF1D' or '\uFF0B' or '\uFF0D' or '\uFF20'), ..];
}
