namespace Progression.Core.Outcomes;

/// <summary>One figure of a summary, as a table has it. What is null is not known, or kept back.</summary>
/// <param name="Group">"all" or the group.</param>
/// <param name="What">What kind of figure: "cases", "wait", "reached", "adherence", "stim", "forecast".</param>
/// <param name="Id">Which one of its kind.</param>
/// <param name="Title">What it is, in words.</param>
/// <param name="Unit">The unit of the value.</param>
public sealed record OutcomeRow(string Group, string What, string Id, string Title, string Unit)
{
    /// <summary>How many people it rests on.</summary>
    public int? People { get; init; }

    /// <summary>How many events, or hits.</summary>
    public int? Events { get; init; }

    /// <summary>The figure.</summary>
    public double? Value { get; init; }

    /// <summary>Lower end of its interval, or the lower quartile.</summary>
    public double? Low { get; init; }

    /// <summary>Upper end of its interval, or the upper quartile.</summary>
    public double? High { get; init; }

    /// <summary>What low and high are: "interval 95 %", "quartiles"; empty for nothing.</summary>
    public string Range { get; init; } = "";

    /// <summary>Whether it is kept back because too few people are behind it.</summary>
    public bool IsWithheld { get; init; }
}
