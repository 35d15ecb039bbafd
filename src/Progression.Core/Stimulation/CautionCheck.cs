using System.Collections.Immutable;
using Progression.Core.Findings;
using Progression.Core.Library;
using Progression.Core.Quantities;

namespace Progression.Core.Stimulation;

/// <summary>Compares the figures with the published limits. A figure that was not computed gives no caution and no comfort.</summary>
internal static class CautionCheck
{
    private const double ShortPulseSeconds = 0.1;

    // Not a threshold that a clinic may move: without a plateau the stated current is never reached.
    private static readonly Limit SomePlateau =
        new("stim.no-plateau", "Time at full current", 0, "s", new Source("Follows from the settings", Standing.Derived));

    internal static ImmutableArray<StimCaution> Of(StimSettings settings, StimFigures figures, IReadOnlyDictionary<string, Limit> limits)
    {
        IEnumerable<StimCaution?> found =
        [
            Over(figures[FigureKinds.Density], limits[LimitIds.CurrentDensity], "asks for special attention to the skin; a caution, not a ceiling"),
            PowerDensity(figures[FigureKinds.PowerDensity], limits[LimitIds.PowerDensity]),
            Output(settings, figures, limits),
            Energy(settings, figures, limits),
            Stated(figures[FigureKinds.Rms], limits[LimitIds.OutputStated]),
            Aim(figures[FigureKinds.Intensity], limits[LimitIds.TrainingIntensity]),
            NoPlateau(figures),
        ];
        return [.. found.OfType<StimCaution>().OrderByDescending(caution => caution.Severity)];
    }

    private static StimCaution? Over(StimFigure figure, Limit limit, string meaning) =>
        figure.Value > limit.Value ? Caution(figure, limit, Severity.Warning, $"is more than {limit.Text}: {meaning}") : null;

    private static StimCaution? PowerDensity(StimFigure figure, Limit limit) =>
        figure.Value >= limit.Value ? Caution(figure, limit, Severity.Warning, $"should be less than {limit.Text}, to lower the risk of a burn") : null;

    /// <summary>The bound on output depends on the frequency of the current itself: the carrier of bursts, else the rate.</summary>
    private static StimCaution? Output(StimSettings settings, StimFigures figures, IReadOnlyDictionary<string, Limit> limits)
    {
        double? hertz = settings.Waveform is Waveform.BurstSine or Waveform.BurstTriangle ? settings.Carrier?.Hertz : settings.Rate?.Hertz;
        string? id = hertz switch
        {
            null => null,
            <= 400 => LimitIds.OutputLow,
            <= 1500 => LimitIds.OutputMiddle,
            _ => LimitIds.OutputHigh,
        };
        return id is null ? null : Over(figures[FigureKinds.Rms], limits[id], $"more than a stimulator should give at {Number.Text(hertz!.Value)} Hz; check the entry");
    }

    /// <summary>The bound on energy is for pulses shorter than a tenth of a second; a burst is taken as one pulse.</summary>
    private static StimCaution? Energy(StimSettings settings, StimFigures figures, IReadOnlyDictionary<string, Limit> limits)
    {
        bool isLong = settings is { Waveform: Waveform.BurstSine or Waveform.BurstTriangle, BurstDuty: { } duty, Rate: { } rate }
            && duty.Percent / 100 / rate.Hertz >= ShortPulseSeconds;
        return isLong ? null : Over(figures[FigureKinds.PulseEnergy], limits[LimitIds.PulseEnergy], "more than one pulse should carry; check the entry");
    }

    private static StimCaution? Stated(StimFigure rms, Limit limit) => rms.Value > limit.Value
        ? Caution(rms, limit, Severity.Note, $"is more than {limit.Text}: the device's papers must state its maximum at the recommended pads; look it up")
        : null;

    private static StimCaution? Aim(StimFigure intensity, Limit aim) => intensity.Value < aim.Value
        ? Caution(intensity, aim, Severity.Note, $"is less than the usual aim of {aim.Text}; soon after surgery that is common: as strong as tolerated, and rising")
        : null;

    private static StimCaution? NoPlateau(StimFigures figures) => figures[FigureKinds.PlateauContraction].Value == 0
        ? new(Severity.Warning, "The ramps take all of the on-time, so the full current is never held.", SomePlateau, 0)
        : null;

    private static StimCaution Caution(StimFigure figure, Limit limit, Severity severity, string meaning)
    {
        string title = char.ToUpperInvariant(figure.Kind.Title[0]) + figure.Kind.Title[1..];
        return new(severity, $"{title} of {Explained.Digits(figure.Value!.Value)} {limit.Unit} {meaning}.", limit, figure.Value.Value);
    }
}
