namespace Progression.Core.Entry;

/// <summary>Finds the word a person probably meant.</summary>
public static class NearestWord
{
    /// <summary>
    /// The known word with the fewest letters to change, add, drop or swap; null when even that one differs in more than a third of the typed letters
    /// (in two letters for a short word). Of equals the first in the given order.
    /// </summary>
    /// <param name="typed">What the person wrote; only the first 60 characters count.</param>
    /// <param name="known">The words that are allowed.</param>
    public static string? To(string typed, IEnumerable<string> known)
    {
        ArgumentNullException.ThrowIfNull(typed);
        ArgumentNullException.ThrowIfNull(known);
        string word = typed.Length > 60 ? typed[..60] : typed;
        int most = Math.Max(2, word.Length / 3);
        return known.Select(each => (Word: each, Edits: Edits(word, each)))
            .Where(each => each.Edits <= most && each.Edits < each.Word.Length)
            .OrderBy(each => each.Edits)
            .Select(each => each.Word)
            .FirstOrDefault();
    }

    // Optimal string alignment: Levenshtein's distance with neighbouring letters swapped at the price of one.
    private static int Edits(string from, string to)
    {
        int[] beforeLast = new int[to.Length + 1];
        int[] last = [.. Enumerable.Range(0, to.Length + 1)];
        for (int i = 1; i <= from.Length; i++)
        {
            int[] row = new int[to.Length + 1];
            row[0] = i;
            for (int j = 1; j <= to.Length; j++)
            {
                bool same = char.ToLowerInvariant(from[i - 1]) == char.ToLowerInvariant(to[j - 1]);
                row[j] = Math.Min(Math.Min(last[j] + 1, row[j - 1] + 1), last[j - 1] + (same ? 0 : 1));
                if (i > 1 && j > 1 && from[i - 1] == to[j - 2] && from[i - 2] == to[j - 1])
                {
                    row[j] = Math.Min(row[j], beforeLast[j - 2] + 1);
                }
            }

            (beforeLast, last) = (last, row);
        }

        return last[to.Length];
    }
}
