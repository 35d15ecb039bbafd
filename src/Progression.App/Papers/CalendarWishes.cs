using System.Collections.Immutable;
using Progression.Core.Plans;

namespace Progression.App.Papers;

/// <summary>How a person wants the calendar of a plan.</summary>
/// <param name="Now">The present moment.</param>
/// <param name="Zone">The time zone, by its name in the time zone database.</param>
public sealed record CalendarWishes(DateTimeOffset Now, string Zone)
{
    /// <summary>The hour of the sessions; null for the usual one.</summary>
    public TimeOnly? At { get; init; }

    /// <summary>Whether titles begin with the code of the case.</summary>
    public bool WithCode { get; init; }

    /// <summary>Fetches the earlier revisions of the plan, when a calendar is made; days that only they had are called off.</summary>
    public Func<ImmutableArray<PlanRevision>> Former { get; init; } = () => [];
}
