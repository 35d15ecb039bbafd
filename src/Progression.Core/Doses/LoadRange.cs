using Progression.Core.Quantities;

namespace Progression.Core.Doses;

/// <summary>The loads a published rule leaves open, both ends included; one load when both are equal.</summary>
public sealed record LoadRange
{
    private LoadRange(Mass least, Mass most) => (Least, Most) = (least, most);

    /// <summary>The lightest.</summary>
    public Mass Least { get; }

    /// <summary>The heaviest.</summary>
    public Mass Most { get; }

    /// <summary>One load.</summary>
    public static LoadRange At(Mass load) => new(load, load);

    /// <summary>Loads between two numbers of kilograms in either order. What falls below zero is taken for no load: a rule cannot take off more than there is.</summary>
    /// <exception cref="ArgumentOutOfRangeException">One of them is more than a <see cref="Mass"/> can be.</exception>
    public static LoadRange Between(double kilograms, double otherKilograms) => new(
        Load(Math.Min(kilograms, otherKilograms)), Load(Math.Max(kilograms, otherKilograms)));

    /// <summary>"20 kg", or "20.5 to 22 kg".</summary>
    public override string ToString() => Least == Most ? $"{Least}" : $"{Number.Text(Least.Kilograms)} to {Most}";

    // To the gram, so that 20 kg and 2.5 % make 20.5 kg and not a binary neighbour of it.
    private static Mass Load(double kilograms) => Mass.FromKilograms(Math.Round(Math.Max(0, kilograms), 3, MidpointRounding.AwayFromZero));
}
