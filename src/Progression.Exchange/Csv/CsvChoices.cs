using System.Collections.Immutable;
using Progression.Core.People;

namespace Progression.Exchange.Csv;

/// <summary>In which order day and month stand where the year comes last.</summary>
public enum DayOrder
{
    /// <summary>5/3/2026 is the fifth of March.</summary>
    DayFirst,

    /// <summary>5/3/2026 is the third of May.</summary>
    MonthFirst,
}

/// <summary>What stands before the decimals.</summary>
public enum DecimalMark
{
    /// <summary>A point.</summary>
    Point,

    /// <summary>A comma.</summary>
    Comma,
}

/// <summary>What a person said about the files of another program, where the files do not say it themselves. What is null was not said.</summary>
public sealed record CsvChoices
{
    /// <summary>Nothing said.</summary>
    public static CsvChoices None { get; } = new();

    /// <summary>What columns are: the head, and a column of ours with a unit where the head has none ("flexion_active deg"), or "ignore".</summary>
    public ImmutableArray<(string Head, string Means)> Columns { get; init; } = [];

    /// <summary>The order of day and month.</summary>
    public DayOrder? Days { get; init; }

    /// <summary>What stands before the decimals.</summary>
    public DecimalMark? Decimals { get; init; }

    /// <summary>How extension deficits are written.</summary>
    public DeficitSign? Deficits { get; init; }

    /// <summary>These choices, and where they say nothing, those that were made before.</summary>
    public CsvChoices Over(CsvChoices before)
    {
        ArgumentNullException.ThrowIfNull(before);
        return new CsvChoices
        {
            Columns = [.. Columns, .. before.Columns.Where(old => Columns.All(one => !Same(one.Head, old.Head)))],
            Days = Days ?? before.Days,
            Decimals = Decimals ?? before.Decimals,
            Deficits = Deficits ?? before.Deficits,
        };
    }

    /// <summary>Whether two heads are the same one, whatever the size of their letters.</summary>
    internal static bool Same(string one, string other) => one.Trim().Equals(other.Trim(), StringComparison.OrdinalIgnoreCase);
}
