using System.Globalization;

namespace Progression.Core.Entry;

/// <summary>What was found, as a problem shows it: safe for a terminal and short.</summary>
public static class Found
{
    /// <summary>Most characters shown.</summary>
    public const int Most = 60;

    /// <summary>The text on one safe line, cut after <see cref="Most"/> characters with the full length told.</summary>
    public static string Of(string text)
    {
        string safe = SafeText.OneLine(text.Length > 4 * Most ? text[..(4 * Most)] : text);
        if (safe.Length <= Most && safe.Length >= text.Length)
        {
            return safe;
        }

        string cut = SafeText.OneLine(safe.Length > Most ? safe[..Most] : safe);
        return string.Create(CultureInfo.InvariantCulture, $"{cut}… ({text.Length} characters)");
    }
}
