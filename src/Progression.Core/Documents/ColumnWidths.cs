using System.Collections.Immutable;

namespace Progression.Core.Documents;

/// <summary>How the room for a table is shared by its columns, in whatever unit text is measured in.</summary>
public static class ColumnWidths
{
    /// <summary>
    /// As wide as each column wants where there is room for all. Else each keeps its widest word, and what is left goes to those that want more in proportion;
    /// where even the words have no room, all shrink alike.
    /// </summary>
    /// <param name="wanted">The width of the longest text of each column.</param>
    /// <param name="least">The width of its longest word, not over what it wants.</param>
    /// <param name="room">What there is for all of them, over 0.</param>
    public static ImmutableArray<double> Of(IReadOnlyList<double> wanted, IReadOnlyList<double> least, double room)
    {
        ArgumentNullException.ThrowIfNull(wanted);
        ArgumentNullException.ThrowIfNull(least);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(room);
        (double want, double need) = (wanted.Sum(), least.Sum());
        return want <= room ? [.. wanted]
            : need >= room ? [.. least.Select(width => width * room / need)]
            : [.. least.Zip(wanted, (lower, upper) => lower + ((room - need) * (upper - lower) / (want - need)))];
    }
}
