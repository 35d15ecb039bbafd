namespace Progression.Core.Entry;

/// <summary>What was found, as a message may repeat it: harmless on a terminal and short.</summary>
public static class Excerpt
{
    /// <summary>The most characters a message repeats.</summary>
    public const int Longest = 40;

    /// <summary>The text on one safe line; a longer one is cut and ends in "..."; null gives the empty string.</summary>
    public static string Of(string? text)
    {
        if (text is null || text.Length <= Longest)
        {
            return SafeText.OneLine(text);
        }
        int cut = char.IsHighSurrogate(text[Longest - 1]) ? Longest - 1 : Longest;
        return SafeText.OneLine(text[..cut]) + "...";
    }
}
