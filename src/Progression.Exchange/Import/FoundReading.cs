using Progression.Core.People;

namespace Progression.Exchange.Import;

/// <summary>A reading as it was found in a file of another program, in the unit and sign in which it is kept.</summary>
/// <param name="Place">Where it stands.</param>
/// <param name="Day">The day of the visit.</param>
/// <param name="Reading">The reading; its measure is an id of the library, and its own rater is whoever took it.</param>
public sealed record FoundReading(ImportPlace Place, DateOnly Day, Reading Reading)
{
    /// <summary>Whether the file says that it is of the visit before the operation (true) or of one since (false); null where the day decides.</summary>
    public bool? SaidBaseline { get; init; }
}
