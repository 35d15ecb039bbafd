using Progression.Core.Library;
using Progression.Core.People;
using Progression.Records.Yaml;

namespace Progression.Records.Cases;

/// <summary>What the parts of a case file are read against.</summary>
/// <param name="Library">Knows the measures, screening items and regimens.</param>
/// <param name="Today">The present day; nothing measured or done lies after it.</param>
/// <param name="Queries">Where questions go that do not hinder reading.</param>
internal sealed record CaseReading(ClinicalLibrary Library, DateOnly Today, FileProblems Queries)
{
    /// <summary>Before this day nothing in a file of ours can have happened, births excepted.</summary>
    public static readonly DateOnly Earliest = Core.People.Operation.Earliest;

    /// <summary>The day of the operation; null while it is not known, and then no other day is measured against it.</summary>
    public DateOnly? Operation { get; init; }

    /// <summary>How extension deficits are written in the file. A case file always stands flexion-positive.</summary>
    public DeficitSign Deficits { get; init; } = DeficitSign.Positive;

    /// <summary>The days from the operation to today.</summary>
    public DaySpan SinceOperation => new(Operation ?? Earliest, Today) { Early = "The day lies before the operation." };

    /// <summary>Every day up to today on which something can have been done.</summary>
    public DaySpan UpToToday => new(Earliest, Today);

    /// <summary>The days from the operation to some days after it.</summary>
    public DaySpan AfterOperation(int days) =>
        Operation is DateOnly operation ? new DaySpan(operation, operation.AddDays(days)) : new DaySpan(Earliest, Today.AddYears(1));
}
