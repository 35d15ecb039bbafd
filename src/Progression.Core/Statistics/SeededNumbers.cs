namespace Progression.Core.Statistics;

/// <summary>
/// Random numbers that are the same for the same seed on every machine: SplitMix64 (Steele, Lea, Flood 2014, 10.1145/2714064.2660195, from memory),
/// made normal by the inverse of the distribution function.
/// </summary>
public sealed class SeededNumbers(ulong seed)
{
    private ulong _state = seed;

    /// <summary>64 random bits.</summary>
    public ulong NextBits()
    {
        unchecked
        {
            _state += 0x9E3779B97F4A7C15;
            ulong mixed = (_state ^ (_state >> 30)) * 0xBF58476D1CE4E5B9;
            mixed = (mixed ^ (mixed >> 27)) * 0x94D049BB133111EB;
            return mixed ^ (mixed >> 31);
        }
    }

    /// <summary>A number between 0 and 1, neither included.</summary>
    public double NextShare() => ((NextBits() >> 12) + 0.5) / (1UL << 52);

    /// <summary>A draw from the standard normal distribution.</summary>
    public double NextNormal() => NormalDistribution.Quantile(NextShare());
}
