using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Plans;

namespace Progression.Exchange.Import;

/// <summary>What a file of another program is held against before anything of it comes in.</summary>
/// <param name="Patient">The case as it stands.</param>
/// <param name="Library">Knows the measures and exercises.</param>
/// <param name="Today">The present day; nothing lies after it.</param>
public sealed record ImportGround(Case Patient, ClinicalLibrary Library, DateOnly Today)
{
    /// <summary>The largest file that is read, in bytes, this many included.</summary>
    public const int MostBytes = 20 * 1024 * 1024;

    /// <summary>The plan as it stands; null where the case has none.</summary>
    public PlanRevision? Plan { get; init; }

    /// <summary>What is wrong with the code of the person a row or entry is about; null for this case. Another person's data never comes in.</summary>
    /// <param name="place">Where it stands.</param>
    /// <param name="code">The code as written there.</param>
    public ImportProblem? OtherPerson(ImportPlace place, string code) => CaseCode.Parse(code) == Patient.Code
        ? null
        : new ImportProblem(place, "This is of another person.", $"the code {Patient.Code}", code);

    /// <summary>What is wrong with a day on which something was measured or done; null when it may be. A day before the operation is that of a baseline.</summary>
    /// <param name="place">Where it stands.</param>
    /// <param name="day">The day.</param>
    /// <param name="hasBaseline">Whether it may lie before the operation.</param>
    public ImportProblem? WrongDay(ImportPlace place, DateOnly day, bool hasBaseline)
    {
        DateOnly first = hasBaseline ? Operation.Earliest : Patient.Operation.Date;
        string? wrong = day > Today ? "The day lies in the future."
            : day >= first ? null
            : hasBaseline ? "The day is too early to be one of this knee." : "The day lies before the operation.";
        return wrong is null ? null : new ImportProblem(place, wrong, $"a day from {first:yyyy-MM-dd} to {Today:yyyy-MM-dd}", $"{day:yyyy-MM-dd}");
    }
}
