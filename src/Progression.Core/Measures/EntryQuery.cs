namespace Progression.Core.Measures;

/// <summary>
/// Something in an assessment that can be right but looks like a slip. It is asked back; nothing is put right silently and nothing is refused for it.
/// </summary>
/// <param name="Field">The id of the measure it is about; "rater", "device", "position" or "readings" where it is about more than one.</param>
/// <param name="Odd">What looks odd, as a sentence.</param>
/// <param name="Expected">What would be expected, with its unit.</param>
/// <param name="Found">What was found.</param>
public sealed record EntryQuery(string Field, string Odd, string Expected, string Found)
{
    /// <summary>Whether it is only remarked and needs no answer.</summary>
    public bool IsNote { get; init; }

    /// <summary>One line.</summary>
    public override string ToString() => $"{Field}: {Odd} Expected: {Expected}. Found: {Found}.";
}
