namespace Progression.Records.Clinic;

/// <summary>One thing that has to hold before a folder of records is opened.</summary>
/// <param name="Asked">What has to hold, as a sentence.</param>
/// <param name="Found">What was found instead, as a sentence; null when it holds.</param>
/// <param name="Cure">What mends it: commands, or what to ask of whom; empty when it holds.</param>
public sealed record Condition(string Asked, string? Found = null, string Cure = "")
{
    /// <summary>Whether it holds.</summary>
    public bool Holds => Found is null;

    /// <summary>What is wrong and what mends it, on one line.</summary>
    public override string ToString() => Found is null ? Asked : $"{Found} {Asked} Cure: {Cure}";
}
