using System.Collections.Immutable;
using Progression.Core.Quantities;

namespace Progression.Core.Entry;

/// <summary>How every quantity is typed, one row each. The unit in which a range stands comes first.</summary>
public static class QuantityText
{
    /// <summary>"15 s", "2 min", "1 h"; from 0 to 604800 s (one week).</summary>
    public static QuantityForm<Duration> Duration { get; } = new()
    {
        Name = "The duration",
        Unit = "s",
        Units = Words(("s", 1, ["sec", "second", "seconds"]), ("min", 60, ["minute", "minutes"]), ("h", 3600, ["hour", "hours"]), ("ms", 0.001m, [])),
        Least = 0,
        Most = 604_800,
        Make = Quantities.Duration.FromSeconds,
    };

    /// <summary>"250 us", "250 µs", "0.25 ms"; from 0 to 20000 us.</summary>
    public static QuantityForm<PulseWidth> PulseWidth { get; } = new()
    {
        Name = "The pulse width",
        Unit = "us",
        Units = Words(("us", 1, ["\u00B5s", "\u03BCs", "usec"]), ("ms", 1000, [])),
        Least = 0,
        Most = 20_000,
        Make = Quantities.PulseWidth.FromMicroseconds,
    };

    /// <summary>"50", "50 pps", "50 Hz": pulses or bursts a second; the only quantity that needs no unit. From 0 to 1000.</summary>
    public static QuantityForm<Frequency> PulseRate { get; } = new()
    {
        Name = "The pulse rate",
        Unit = "pps",
        Units = Words(("pps", 1, ["", "bps", "/s"]), ("Hz", 1, [])),
        Least = 0,
        Most = 1000,
        Make = Frequency.FromHertz,
    };

    /// <summary>"2500 Hz", "2.5 kHz"; from 0 to 100000 Hz.</summary>
    public static QuantityForm<Frequency> Carrier { get; } = new()
    {
        Name = "The frequency",
        Unit = "Hz",
        Units = Words(("Hz", 1, []), ("kHz", 1000, [])),
        Least = 0,
        Most = 100_000,
        Make = Frequency.FromHertz,
    };

    /// <summary>"60 mA"; from 0 to 1000 mA.</summary>
    public static QuantityForm<Current> Current { get; } = new()
    {
        Name = "The current",
        Unit = "mA",
        Units = Words(("mA", 1, [])),
        Least = 0,
        Most = 1000,
        Make = Quantities.Current.FromMilliamperes,
    };

    /// <summary>"24 Nm"; from 0 to 1000 Nm.</summary>
    public static QuantityForm<Torque> Torque { get; } = new()
    {
        Name = "The torque",
        Unit = "Nm",
        Units = Words(("Nm", 1, ["N m", "N\u00B7m", "N.m"])),
        Least = 0,
        Most = 1000,
        Make = Quantities.Torque.FromNewtonMetres,
    };

    /// <summary>"180 N"; from 0 to 5000 N.</summary>
    public static QuantityForm<Force> Force { get; } = new()
    {
        Name = "The force",
        Unit = "N",
        Units = Words(("N", 1, ["newton", "newtons"])),
        Least = 0,
        Most = 5000,
        Make = Quantities.Force.FromNewtons,
    };

    /// <summary>"82 kg"; from 0 to 500 kg.</summary>
    public static QuantityForm<Mass> Mass { get; } = new()
    {
        Name = "The mass",
        Unit = "kg",
        Units = Words(("kg", 1, [])),
        Least = 0,
        Most = 500,
        Make = Quantities.Mass.FromKilograms,
    };

    /// <summary>"7.6 cm", "76 mm", "0.4 m"; from 0 to 500 cm.</summary>
    public static QuantityForm<Length> Length { get; } = new()
    {
        Name = "The length",
        Unit = "cm",
        Units = Words(("cm", 1, []), ("mm", 0.1m, []), ("m", 100, [])),
        Least = 0,
        Most = 500,
        Make = Quantities.Length.FromCentimetres,
    };

    /// <summary>"95 deg", "95°", "-3 deg"; from -180 to 180 deg. Flexion is positive for a knee.</summary>
    public static QuantityForm<Angle> Angle { get; } = new()
    {
        Name = "The angle",
        Unit = "deg",
        Units = Words(("deg", 1, ["\u00B0", "degree", "degrees"])),
        Least = -180,
        Most = 180,
        Make = Quantities.Angle.FromDegrees,
    };

    /// <summary>"50 %"; from 0 to 1000 %.</summary>
    public static QuantityForm<Percentage> Percentage { get; } = new()
    {
        Name = "The share",
        Unit = "%",
        Units = Words(("%", 1, ["percent"])),
        Least = 0,
        Most = 1000,
        Make = Quantities.Percentage.FromPercent,
    };

    private static ImmutableArray<UnitWord> Words(params ReadOnlySpan<(string Word, decimal Factor, string[] Also)> units)
    {
        ImmutableArray<UnitWord>.Builder words = ImmutableArray.CreateBuilder<UnitWord>();
        foreach ((string word, decimal factor, string[] also) in units)
        {
            words.Add(new UnitWord(word, factor, IsShown: true));
            words.AddRange(also.Select(other => new UnitWord(other, factor)));
        }

        return words.ToImmutable();
    }
}
