using Progression.Core.Reviews;
using Progression.Records.Codes;

namespace Progression.App.Papers;

/// <summary>How a bundle for another program is wanted.</summary>
/// <param name="Now">The moment it is made.</param>
public sealed record BundleWishes(DateTimeOffset Now)
{
    /// <summary>Who saved the plan, and when; null where that is not known, or it was not saved.</summary>
    public PlanStamp? Saved { get; init; }

    /// <summary>The person's name, where it goes along; null otherwise.</summary>
    public string? Name { get; init; }

    /// <summary>Whether the date of birth goes along.</summary>
    public bool WithBirthDate { get; init; }

    /// <summary>A clinic's own codes; null for none.</summary>
    public StandardCodes? Codes { get; init; }

    /// <summary>What goes along that tells who the person is, in words for the audit; empty for the code alone.</summary>
    public string Identifies => (Name, WithBirthDate) switch
    {
        (not null, true) => "with name and date of birth",
        (not null, false) => "with name",
        (null, true) => "with date of birth",
        _ => "",
    };
}
