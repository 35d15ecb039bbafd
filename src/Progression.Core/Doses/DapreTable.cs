using System.Collections.Immutable;
using Progression.Core.Library;
using Progression.Core.Quantities;

namespace Progression.Core.Doses;

/// <summary>What follows from a number of repetitions, as changes of the load in kilograms; both ends of each change are allowed.</summary>
/// <param name="From">Fewest repetitions of the row. It reaches to the next row; the last has no end.</param>
/// <param name="FourthSet">Change for the fourth set of the same session.</param>
/// <param name="NextSession">Change for the working load of the next session.</param>
public sealed record DapreRow(int From, (double Least, double Most) FourthSet, (double Least, double Most) NextSession);

/// <summary>
/// Daily adjustable progressive resistance: two fixed sets, a third with as many repetitions as can be done at the working load, and a fourth whose load
/// the third one sets. The table is data, because later versions move its rows.
/// </summary>
public sealed record DapreTable
{
    private DapreTable(Source source, ImmutableArray<DapreRow> rows) => (Source, Rows) = (source, rows);

    /// <summary>The first published table.</summary>
    public static DapreTable Knight1979 { get; } = Of(
        new Source("Knight 1979, table seen on a physiotherapy reference page; next session also in Millar, from 5 repetitions up", Standing.Seen),
        [
            new(0, (-5, -2.5), (-5, -2.5)),
            new(3, (-2.5, 0), (0, 0)),
            new(5, (0, 0), (2.5, 5)),
            new(7, (2.5, 5), (2.5, 7.5)),
            new(11, (5, 7.5), (5, 10)),
        ]);

    /// <summary>Where the table comes from.</summary>
    public Source Source { get; }

    /// <summary>The rows, by repetitions from 0 up.</summary>
    public ImmutableArray<DapreRow> Rows { get; }

    /// <summary>A table of other rows.</summary>
    /// <exception cref="ArgumentException">The rows do not start at 0 repetitions or do not rise.</exception>
    public static DapreTable Of(Source source, params ImmutableArray<DapreRow> rows) =>
        rows.IsDefaultOrEmpty || rows[0].From != 0 || rows.Zip(rows.Skip(1)).Any(pair => pair.First.From >= pair.Second.From)
            ? throw new ArgumentException("The rows start at 0 repetitions and rise.", nameof(rows))
            : new DapreTable(source, rows);

    /// <summary>The first three sets: 10 at half the working load, 6 at three quarters, and as many as can be done at all of it.</summary>
    public static ImmutableArray<WorkSet> FirstSets(Mass workingLoad) =>
    [
        new(10, Mass.FromKilograms(workingLoad.Kilograms * 0.50)),
        new(6, Mass.FromKilograms(workingLoad.Kilograms * 0.75)),
        new(null, workingLoad),
    ];

    /// <summary>The load of the fourth set.</summary>
    /// <param name="workingLoad">The load of the third set.</param>
    /// <param name="repetitions">Repetitions done in the third set, from 0; null when not recorded.</param>
    public NextLoad FourthSet(Mass workingLoad, int? repetitions) => Adjusted(workingLoad, repetitions, row => row.FourthSet);

    /// <summary>The working load of the next session.</summary>
    /// <param name="workingLoad">The load of the set in which the repetitions were done.</param>
    /// <param name="repetitions">Repetitions done with it, from 0; null when not recorded.</param>
    public NextLoad NextSession(Mass workingLoad, int? repetitions) => Adjusted(workingLoad, repetitions, row => row.NextSession);

    private NextLoad Adjusted(Mass load, int? repetitions, Func<DapreRow, (double Least, double Most)> column)
    {
        if (repetitions is not int done)
        {
            return new NextLoad(null, "The repetitions done with the working load are not recorded.", Source);
        }

        ArgumentOutOfRangeException.ThrowIfNegative(done, nameof(repetitions));
        int at = Rows.Count(row => row.From <= done) - 1;
        string bounds = at + 1 == Rows.Length ? $"{Rows[at].From} or more" : $"{Rows[at].From} to {Rows[at + 1].From - 1}";
        (double least, double most) = column(Rows[at]);
        string change = (least, most) is (0, 0) ? "the load stays" : $"change by {Number.Signed(least)} to {Number.Signed(most)} kg";
        return new NextLoad(
            LoadRange.Between(load.Kilograms + least, load.Kilograms + most), $"{done} repetitions at {load}, in the row of {bounds}: {change}.", Source);
    }
}
