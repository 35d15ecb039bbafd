namespace Progression.Core.People;

/// <summary>Which knee.</summary>
public enum Side
{
    /// <summary>The left knee.</summary>
    Left,

    /// <summary>The right knee.</summary>
    Right,
}

/// <summary>The operation from which all weeks are counted.</summary>
/// <param name="Date">The day of the operation: day 0.</param>
/// <param name="Side">Which knee.</param>
/// <param name="Procedure">What was done, in words.</param>
public sealed record Operation(DateOnly Date, Side Side, string Procedure)
{
    /// <summary>Before this day nothing of a case can have happened, births excepted; catches slips in the year. Common practice, no source.</summary>
    public static DateOnly Earliest { get; } = new(2000, 1, 1);
}
