using System.Collections.Immutable;

namespace Progression.App.Compare;

/// <summary>Which visits fit, and how wide the parts of a row are.</summary>
/// <param name="Name">Columns of the measure's name.</param>
/// <param name="Trend">Columns of the bars.</param>
/// <param name="Visits">The visits shown, oldest first; the newest is always the last.</param>
/// <param name="Change">Columns of each change.</param>
/// <param name="ShowsFirst">Whether the change since the first is shown beside the last one.</param>
public sealed record CompareShape(int Name, int Trend, ImmutableArray<int> Visits, int Change, bool ShowsFirst)
{
    /// <summary>Columns of a visit.</summary>
    public const int Visit = 7;

    /// <summary>Columns between the visits and the changes.</summary>
    public const int Gap = 2;

    private const int Wide = 100;
    private const int Widest = 150;
    private const int WidestChange = 45;

    /// <summary>The shape for a width.</summary>
    /// <param name="state">The comparison.</param>
    /// <param name="width">Columns, at least 80.</param>
    public static CompareShape Of(CompareState state, int width)
    {
        ArgumentNullException.ThrowIfNull(state);
        bool first = width >= Widest;
        (int name, int trend, int change) = first ? (34, 17, 70) : width >= Wide ? (30, 12, 34) : (25, 7, 25);
        int shown = Math.Min(state.Comparison.Visits.Length, (width - name - trend - Gap - change) / Visit);
        int rest = (width - name - trend - Gap - (shown * Visit)) / (first ? 2 : 1);
        return new(name, trend, Shown(state, shown), Math.Min(rest, WidestChange), first);
    }

    private static ImmutableArray<int> Shown(CompareState state, int shown)
    {
        int newest = state.Comparison.Visits.Length - 1;
        if (newest < 0)
        {
            return [];
        }

        int before = Math.Min(shown - 1, newest);
        int last = newest - 1 - Math.Min(state.Back, newest - before);
        return [.. Enumerable.Range(last - before + 1, before), newest];
    }
}
