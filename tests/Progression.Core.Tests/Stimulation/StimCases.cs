using System.Collections.Immutable;
using Progression.Core.Library;
using Progression.Core.Quantities;
using Progression.Core.Stimulation;

namespace Progression.Core.Tests.Stimulation;

/// <summary>The settings and limits that several tests start from.</summary>
internal static class StimCases
{
    // IEC 60601-2-10:2012 as seen in an extract of AS 60601.2.10:2018 (2 mA/cm2; 10 mA); its output limits and energy from memory;
    // FDA guidance on powered muscle stimulators 1999, seen in a summary (0.25 W/cm2), 500 ohm from memory; 30 % from memory.
    internal static ImmutableSortedDictionary<string, Limit> Limits { get; } = new[]
    {
        Of(LimitIds.CurrentDensity, 2, "mA/cm2", Standing.Seen),
        Of(LimitIds.PowerDensity, 0.25, "W/cm2", Standing.Seen),
        Of(LimitIds.LoadResistance, 500, "ohm", Standing.FromMemory),
        Of(LimitIds.OutputLow, 50, "mA", Standing.FromMemory),
        Of(LimitIds.OutputMiddle, 80, "mA", Standing.FromMemory),
        Of(LimitIds.OutputHigh, 100, "mA", Standing.FromMemory),
        Of(LimitIds.PulseEnergy, 300, "mJ", Standing.FromMemory),
        Of(LimitIds.OutputStated, 10, "mA", Standing.Seen),
        Of(LimitIds.TrainingIntensity, 30, "%", Standing.FromMemory),
    }.ToImmutableSortedDictionary(limit => limit.Id, limit => limit);

    // Stevens-Lapsley 2012 via Conley 2021 table 5; 60 mA, ramp down 0 and 24 of 80 Nm are assumed.
    internal static StimSettings Strong { get; } = new()
    {
        On = Duration.FromSeconds(15),
        Off = Duration.FromSeconds(45),
        RampUp = Duration.FromSeconds(3),
        RampDown = Duration.FromSeconds(0),
        Ramps = RampPlacement.Inside,
        Contractions = 15,
        CountLastRest = true,
        SessionsPerDay = 2,
        DaysPerWeek = 7,
        Weeks = 6,
        Rate = Frequency.FromHertz(50),
        Width = PulseWidth.FromMicroseconds(250),
        WidthIs = WidthBasis.Phase,
        Waveform = Waveform.Symmetric,
        Peak = Current.FromMilliamperes(60),
        Pad = PadSize.Rectangle(Length.FromCentimetres(7.6), Length.FromCentimetres(12.7)),
        Evoked = Torque.FromNewtonMetres(24),
        MaximalVoluntary = Torque.FromNewtonMetres(80),
    };

    internal static StimSettings Burst { get; } = new()
    {
        Rate = Frequency.FromHertz(50),
        Waveform = Waveform.BurstSine,
        Carrier = Frequency.FromHertz(2500),
        BurstDuty = Percentage.FromPercent(50),
        Peak = Current.FromMilliamperes(60),
    };

    internal static StimSettings Timed(double on, double off) => new() { On = Duration.FromSeconds(on), Off = Duration.FromSeconds(off) };

    internal static StimFigures Figures(StimSettings settings) =>
        StimDose.Of(settings).Value?.Compute(Limits) ?? throw new ArgumentException(StimDose.Of(settings).Problems[0].ToString(), nameof(settings));

    internal static PadSize Pad(double width, double height) => PadSize.Rectangle(Length.FromCentimetres(width), Length.FromCentimetres(height));

    private static Limit Of(string id, double value, string unit, Standing standing) => new(id, id, value, unit, new Source("test", standing));
}
