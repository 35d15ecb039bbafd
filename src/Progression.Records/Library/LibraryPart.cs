using System.Collections.Immutable;

namespace Progression.Records.Library;

/// <summary>One of the files of a library.</summary>
/// <param name="Name">Its name without ending, for instance "limits"; also the word in its schema line.</param>
/// <param name="Key">The field under which its entries stand.</param>
internal sealed record LibraryPart(string Name, string Key)
{
    public static LibraryPart Measures { get; } = new("measures", "measures");

    public static LibraryPart Limits { get; } = new("limits", "limits");

    public static LibraryPart Ladder { get; } = new("ladder", "rungs");

    public static LibraryPart Regimens { get; } = new("regimens", "regimens");

    public static LibraryPart Exercises { get; } = new("exercises", "exercises");

    public static LibraryPart Milestones { get; } = new("milestones", "milestones");

    public static LibraryPart Screening { get; } = new("screening", "screening");

    public static LibraryPart RedFlags { get; } = new("red-flags", "flags");

    public static LibraryPart Forecasts { get; } = new("forecasts", "priors");

    /// <summary>Every part, in the order in which they are read: each may refer to those before it.</summary>
    public static ImmutableArray<LibraryPart> All { get; } = [Measures, Limits, Ladder, Regimens, Exercises, Milestones, Screening, RedFlags, Forecasts];

    public string FileName => Name + ".yaml";

    public string Schema => Name + "/1";
}
