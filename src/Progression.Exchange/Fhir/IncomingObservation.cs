using Progression.Core.People;
using Progression.Exchange.Import;

namespace Progression.Exchange.Fhir;

/// <summary>What an observation turned out to be. Exactly one of its members is set.</summary>
internal sealed record IncomingObservation
{
    /// <summary>A reading of a measure.</summary>
    public FoundReading? Reading { get; init; }

    /// <summary>An answer to a yes/no question.</summary>
    public FoundAnswer? Answer { get; init; }

    /// <summary>The body mass in kilograms.</summary>
    public double? BodyMass { get; init; }

    /// <summary>The title of a measure that is computed here, so that nothing is taken of it.</summary>
    public string? Computed { get; init; }

    /// <summary>What is wrong.</summary>
    public ImportProblem? Problem { get; init; }
}

/// <summary>An answer as it was found in a file of another program.</summary>
/// <param name="Place">Where it stands.</param>
/// <param name="Day">The day of the visit.</param>
/// <param name="Sign">The id of the question.</param>
/// <param name="Answer">The answer.</param>
/// <param name="Rater">Who asked; null when it is not said.</param>
internal sealed record FoundAnswer(ImportPlace Place, DateOnly Day, string Sign, Answer Answer, string? Rater);
