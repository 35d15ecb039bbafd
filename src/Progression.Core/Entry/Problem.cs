namespace Progression.Core.Entry;

/// <summary>
/// One thing wrong with what a person entered, in words that let them mend it.
/// </summary>
/// <param name="Field">The field as the person knows it, for instance "operation.date" or "--on".</param>
/// <param name="Wrong">What is wrong, as a sentence without the value.</param>
/// <param name="Allowed">What is allowed, with its unit and both ends.</param>
/// <param name="Found">What was found; shortened where long; empty when nothing was.</param>
public sealed record Problem(string Field, string Wrong, string Allowed, string Found)
{
    /// <summary>One line: field, what is wrong, what is allowed, what was found.</summary>
    public override string ToString() =>
        $"{Field}: {Wrong} Allowed: {Allowed}. Found: {(Found.Length == 0 ? "nothing" : $"\"{Found}\"")}.";
}
