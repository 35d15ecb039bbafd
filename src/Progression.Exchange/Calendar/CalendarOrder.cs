using System.Collections.Immutable;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Plans;

namespace Progression.Exchange.Calendar;

/// <summary>What a calendar is made from.</summary>
public sealed record CalendarOrder
{
    /// <summary>The case.</summary>
    public required Case Patient { get; init; }

    /// <summary>Its plan.</summary>
    public required PlanRevision Plan { get; init; }

    /// <summary>The clinical library, which says when to reassess.</summary>
    public required ClinicalLibrary Library { get; init; }

    /// <summary>The number of the plan's revision; 0 for a plan that was not saved.</summary>
    public int Revision { get; init; }

    /// <summary>Earlier revisions of the plan from which a calendar may have been made; what they had and the plan has not is called off.</summary>
    public ImmutableArray<PlanRevision> Former { get; init; } = [];

    /// <summary>The present moment; what lies before its day is left out.</summary>
    public required DateTimeOffset Now { get; init; }

    /// <summary>The hour of the sessions, as clocks on the wall show it all year.</summary>
    public TimeOnly At { get; init; } = UsualHour;

    /// <summary>The time zone, by its name in the time zone database: "Europe/London".</summary>
    public required string Zone { get; init; }

    /// <summary>Whether titles begin with the code of the case.</summary>
    public bool WithCode { get; init; }

    /// <summary>The hour where none is told. Common practice, no source.</summary>
    public static TimeOnly UsualHour { get; } = new(9, 0);
}
