using Progression.Core.Library;

namespace Progression.Core.Stimulation;

/// <summary>Charge, current, density, power and intensity (reference formulas 8 to 21).</summary>
internal sealed class CurrentReckoning(StimSettings settings, TimeReckoning time, IReadOnlyDictionary<string, Limit> limits, Ledger ledger)
{
    private readonly Explained _rate = Explained.Given("rate", settings.Rate?.Hertz, "pps");
    private readonly Explained _peak = Explained.Given("peak", settings.Peak?.Milliamperes, "mA");

    internal void Reckon()
    {
        CurrentShape shape = CurrentShape.Of(settings, _peak, _rate);
        ledger.Enter(FigureKinds.Pulses, _rate * time.On);
        ledger.Enter(FigureKinds.CyclesPerBurst, CyclesPerBurst());
        Explained charge = ledger.Enter(FigureKinds.Charge, shape.Charge);
        ledger.Enter(FigureKinds.SecondPhase, shape.Second);
        ledger.Enter(FigureKinds.NetCharge, NetCharge(charge));
        Explained average = ledger.Enter(FigureKinds.Average, _peak * shape.Average);
        Charges(average);
        Explained rms = ledger.Enter(FigureKinds.Rms, _peak * shape.Rms);
        ledger.Enter(FigureKinds.RmsWholeCycle, rms * Explained.Sqrt(time.Share));
        Skin(rms, shape.Rms);
        ledger.Enter(
            FigureKinds.Intensity,
            100 * Explained.Given("evoked torque", settings.Evoked?.NewtonMetres, "Nm")
            / Explained.Given("maximal voluntary torque", settings.MaximalVoluntary?.NewtonMetres, "Nm"));
    }

    private Explained CyclesPerBurst() =>
        settings.Waveform is Waveform.BurstSine or Waveform.BurstTriangle
            ? Explained.Given("burst duty", settings.BurstDuty?.Percent, "%") / 100 * Explained.Given("carrier", settings.Carrier?.Hertz, "Hz") / _rate
            : settings.Waveform is null ? Explained.Missing("waveform") : Explained.NotApplicable("only bursts have a carrier");

    private Explained NetCharge(Explained charge) => settings.Waveform switch
    {
        null => Explained.Missing("waveform"),
        Waveform.Monophasic => charge,
        _ => Explained.Given("equal charge in both directions, net", 0, "uC"),
    };

    private void Charges(Explained average)
    {
        Explained oneWay = settings.Waveform == Waveform.Monophasic ? average : average / 2;
        Explained contraction = ledger.Enter(FigureKinds.ChargeContraction, oneWay * time.On);
        ledger.Enter(FigureKinds.ChargeRamped, oneWay * time.RampedOn);
        ledger.Enter(FigureKinds.ChargeSession, contraction * time.Contractions);
    }

    private void Skin(Explained rms, Explained rmsShare)
    {
        Limit densest = limits[LimitIds.CurrentDensity];
        Explained load = Explained.Given("load", limits[LimitIds.LoadResistance].Value, "ohm");
        Explained area = ledger.Enter(FigureKinds.PadArea, Area());
        ledger.Enter(FigureKinds.Density, rms / area);
        ledger.Enter(FigureKinds.PeakAtCaution, Explained.Given("limit", densest.Value, densest.Unit) * area / rmsShare);
        ledger.Enter(FigureKinds.PowerDensity, rms * rms / 1e6 * load / area);
        // mA^2 x ohm is microwatt; over the rate microjoule.
        ledger.Enter(FigureKinds.PulseEnergy, rms * rms / 1000 * load / _rate);
    }

    private Explained Area()
    {
        if (settings.Pad is not { } pad)
        {
            return Explained.Missing("pad");
        }

        Explained width = Explained.Given(pad.Height is null ? "diameter" : "width", pad.Width.Centimetres, "cm");
        return pad.Height is { } height
            ? width * Explained.Given("height", height.Centimetres, "cm")
            : Explained.Given("pi", Math.PI, "") / 4 * width * width;
    }
}
