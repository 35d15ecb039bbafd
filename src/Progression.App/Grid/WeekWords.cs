namespace Progression.App.Grid;

/// <summary>Weeks in words.</summary>
internal static class WeekWords
{
    private const int Run = 3;

    /// <summary>"week 4", "weeks 4 and 6", "weeks 4 to 6 and 9".</summary>
    /// <param name="weeks">The weeks, rising, at least one.</param>
    public static string Of(IReadOnlyList<int> weeks)
    {
        List<string> parts = [];
        for (int at = 0; at < weeks.Count;)
        {
            int last = at;
            while (last + 1 < weeks.Count && weeks[last + 1] == weeks[last] + 1)
            {
                last++;
            }

            int length = last - at + 1;
            parts.AddRange(length >= Run ? [$"{weeks[at]} to {weeks[last]}"] : weeks.Skip(at).Take(length).Select(week => $"{week}"));
            at = last + 1;
        }

        return (weeks.Count == 1 ? "week " : "weeks ") + (parts.Count == 1 ? parts[0] : $"{string.Join(", ", parts.SkipLast(1))} and {parts[^1]}");
    }
}
