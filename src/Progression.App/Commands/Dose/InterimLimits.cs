using Progression.Core.Library;

namespace Progression.App.Commands.Dose;

/// <summary>The stim thresholds until the library reader is here; then this goes.</summary>
internal static class InterimLimits
{
    internal static IReadOnlyDictionary<string, Limit> All() => new[]
    {
        new Limit(LimitIds.CurrentDensity, "Current density", 2, "mA/cm2", new Source("IEC 60601-2-10:2012, 201.7.9.2, seen in an extract of AS 60601.2.10:2018", Standing.Seen)),
        new Limit(LimitIds.PowerDensity, "Power density", 0.25, "W/cm2", new Source("FDA guidance on powered muscle stimulators, 9 June 1999, seen through a summary", Standing.Seen)),
        new Limit(LimitIds.LoadResistance, "Load", 500, "ohm", new Source("IEC 60601-2-10:2012", Standing.FromMemory)),
        new Limit(LimitIds.OutputLow, "Output to 400 Hz", 50, "mA", new Source("IEC 60601-2-10:2012", Standing.FromMemory)),
        new Limit(LimitIds.OutputMiddle, "Output to 1500 Hz", 80, "mA", new Source("IEC 60601-2-10:2012", Standing.FromMemory)),
        new Limit(LimitIds.OutputHigh, "Output over 1500 Hz", 100, "mA", new Source("IEC 60601-2-10:2012", Standing.FromMemory)),
        new Limit(LimitIds.PulseEnergy, "Energy of a pulse", 300, "mJ", new Source("IEC 60601-2-10:2012", Standing.FromMemory)),
        new Limit(LimitIds.OutputStated, "Output to be stated", 10, "mA", new Source("IEC 60601-2-10:2012, seen in an extract of AS 60601.2.10:2018", Standing.Seen)),
        new Limit(LimitIds.TrainingIntensity, "Training intensity", 30, "%", new Source("Aim of the trials that start weeks after the operation", Standing.FromMemory)),
    }.ToDictionary(limit => limit.Id, StringComparer.Ordinal);
}
