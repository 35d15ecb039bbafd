using Progression.Core.Library;

namespace Progression.Core.Stimulation;

/// <summary>
/// What the shape of the current makes of a peak: charge of a phase, average and r.m.s. value (reference formulas 9 to 15).
/// Got by integrating one period; standard definitions, no source needed.
/// </summary>
/// <param name="Charge">Charge of one phase, in microcoulombs.</param>
/// <param name="Average">Average absolute value at full current, as a share of the peak.</param>
/// <param name="Rms">Root mean square at full current, as a share of the peak.</param>
/// <param name="Second">Current of a weaker second phase, in milliamperes.</param>
internal sealed record CurrentShape(Explained Charge, Explained Average, Explained Rms, Explained Second)
{
    private const string OneSize = "only an asymmetric pulse has a weaker second phase";
    private const string NoWaveform = "waveform";
    private const string WidthOfPhase = "the width is of one phase";
    private const string WidthOfPulse = "the width is of the whole pulse";

    internal static CurrentShape Of(StimSettings settings, Explained peak, Explained rate) => settings.Waveform switch
    {
        Waveform.Symmetric => Symmetric(settings, peak, rate),
        Waveform.Asymmetric => Asymmetric(settings, peak, rate),
        Waveform.Monophasic => Monophasic(settings, peak, rate),
        Waveform.BurstSine => Burst(settings, peak, sine: true),
        Waveform.BurstTriangle => Burst(settings, peak, sine: false),
        _ => new(peak.Lacking(NoWaveform), rate.Lacking(NoWaveform), rate.Lacking(NoWaveform), Explained.Missing(NoWaveform)),
    };

    private static CurrentShape Symmetric(StimSettings settings, Explained peak, Explained rate)
    {
        Explained width = Width(settings);
        Explained phase = settings.WidthIs switch
        {
            WidthBasis.Phase => width.Resting(WidthOfPhase),
            WidthBasis.Pulse => (width / 2).Resting(WidthOfPulse),
            _ => WidthUnclear(width),
        };
        Explained flowing = 2 * phase / 1e6 * rate;
        return new(peak * phase / 1000, flowing, Explained.Sqrt(flowing), Explained.NotApplicable(OneSize));
    }

    private static CurrentShape Monophasic(StimSettings settings, Explained peak, Explained rate)
    {
        Explained width = Width(settings);
        Explained flowing = width / 1e6 * rate;
        return new(peak * width / 1000, flowing, Explained.Sqrt(flowing), Explained.NotApplicable(OneSize));
    }

    /// <summary>Both phases carry the same charge, so the average needs the first alone; the r.m.s. value needs both.</summary>
    private static CurrentShape Asymmetric(StimSettings settings, Explained peak, Explained rate)
    {
        Explained second = Explained.Given("width of the second phase", settings.SecondWidth?.Microseconds, "us");
        Explained width = Width(settings);
        Explained first = settings.WidthIs switch
        {
            WidthBasis.Phase => width.Resting(WidthOfPhase),
            WidthBasis.Pulse => (width - second).Resting(WidthOfPulse),
            _ => WidthUnclear(width),
        };
        // I2 = I1 t1 / t2, so I1^2 t1 + I2^2 t2 = I1^2 (t1 + t1^2 / t2).
        Explained rms = Explained.Sqrt((first + (first * first / second)) / 1e6 * rate);
        return new(peak * first / 1000, 2 * first / 1e6 * rate, rms, peak * first / second);
    }

    private static CurrentShape Burst(StimSettings settings, Explained peak, bool sine)
    {
        Explained carrier = Explained.Given("carrier", settings.Carrier?.Hertz, "Hz");
        Explained share = Explained.Given("burst duty", settings.BurstDuty?.Percent, "%") / 100;
        Explained pi = Explained.Given("pi", Math.PI, "");
        return sine
            ? new(1000 * peak / (pi * carrier), 2 * share / pi, Explained.Sqrt(share / 2), Explained.NotApplicable(OneSize))
            : new(1000 * peak / (4 * carrier), share / 2, Explained.Sqrt(share / 3), Explained.NotApplicable(OneSize));
    }

    private static Explained Width(StimSettings settings) => Explained.Given("width", settings.Width?.Microseconds, "us");

    private static Explained WidthUnclear(Explained width) => width.Lacking("whether the width is of one phase or of the whole pulse");
}
