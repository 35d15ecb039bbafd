using System.Collections.Immutable;
using Progression.Core.Library;
using Progression.Core.People;

namespace Progression.Records.Codes;

/// <summary>A code of a public system, with what it stands for here.</summary>
/// <param name="System">The URI of its system.</param>
/// <param name="Code">The code.</param>
/// <param name="Meaning">What it means, in our words.</param>
/// <param name="Measures">The ids of the measures it stands for, or <see cref="BodyMass"/>.</param>
/// <param name="Side">The knee it is of; null for a code that names none.</param>
/// <param name="Use">Which way it is used.</param>
/// <param name="Note">Why it is not used both ways; null where it is.</param>
/// <param name="Source">Where it was seen.</param>
public sealed record StandardCode(
    string System, string Code, string Meaning, ImmutableArray<string> Measures, Side? Side, CodeUse Use, string? Note, Source Source)
{
    /// <summary>What stands for the mass of a case, which is no measure of a visit.</summary>
    public const string BodyMass = "body_mass";

    /// <summary>Whether a reading of a knee leaves under it.</summary>
    public bool IsSent(string measure, Side side) => Use != CodeUse.In && Measures.Contains(measure) && (Side is null || Side == side);
}
