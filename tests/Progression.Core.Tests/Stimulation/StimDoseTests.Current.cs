using Progression.Core.Library;
using Progression.Core.Quantities;
using Progression.Core.Stimulation;
using static Progression.Core.Tests.Stimulation.StimCases;

namespace Progression.Core.Tests.Stimulation;

/// <summary>Worked examples of charge, current, density and intensity; sources as in the part on time.</summary>
public sealed partial class StimDoseTests
{
    [Theory]
    [InlineData(60, 250, 50, WidthBasis.Phase, 15.0, 1.5, 9.487)] // Example 18 [C].
    [InlineData(60, 250, 50, WidthBasis.Pulse, 7.5, 0.75, 6.708)] // Example 19 [C].
    [InlineData(30, 300, 65, WidthBasis.Phase, 9.0, 1.17, 5.925)] // Example 20: Valdes 2010 inputs; the average is 30 x 0.0006 x 65.
    [InlineData(40, 500, 100, WidthBasis.Phase, 20.0, 4.0, 12.649)] // Example 21: Yoshida 2017 inputs, 40 mA assumed.
    [InlineData(100, 500, 100, WidthBasis.Phase, 50.0, 10.0, 31.62)] // Example 27 [C].
    public void Symmetric_pulses(double peak, double width, double rate, WidthBasis basis, double charge, double average, double rms)
    {
        StimFigures figures = Figures(Pulses(Waveform.Symmetric, peak, width, rate) with { WidthIs = basis });

        Near(charge, figures[FigureKinds.Charge]);
        Near(average, figures[FigureKinds.Average]);
        Near(rms, figures[FigureKinds.Rms]);
        Assert.Equal(0, figures[FigureKinds.NetCharge].Value);
    }

    [Fact] // Formula 12 [C]; charge and average by definition.
    public void Monophasic_pulses_need_no_reading_of_the_width_and_leave_a_net_charge()
    {
        StimFigures figures = Figures(Pulses(Waveform.Monophasic, 60, 250, 50));

        Near(6.708, figures[FigureKinds.Rms]);
        Near(15, figures[FigureKinds.Charge]);
        Near(0.75, figures[FigureKinds.Average]);
        Near(15, figures[FigureKinds.NetCharge]);
    }

    [Fact] // 750 pulses of 15 uC, all in one direction (formulas 8 and 9).
    public void All_charge_of_monophasic_pulses_goes_one_way() =>
        Near(11.25, Figures(Strong with { Waveform = Waveform.Monophasic })[FigureKinds.ChargeContraction]);

    [Theory] // Formula 13: 60 mA 250 us and 15 mA 1000 us at 50 Hz = 7.500 mA [C].
    [InlineData(WidthBasis.Phase, 250)]
    [InlineData(WidthBasis.Pulse, 1250)]
    public void Asymmetric_balanced_pulses(WidthBasis basis, double width)
    {
        StimFigures figures = Figures(
            Pulses(Waveform.Asymmetric, 60, width, 50) with { WidthIs = basis, SecondWidth = PulseWidth.FromMicroseconds(1000) });

        Near(15, figures[FigureKinds.SecondPhase]);
        Near(7.5, figures[FigureKinds.Rms]);
        Near(15, figures[FigureKinds.Charge]);
        Near(1.5, figures[FigureKinds.Average]);
        Assert.Equal(0, figures[FigureKinds.NetCharge].Value);
    }

    [Fact] // Formula 14 and example 23 [C].
    public void Bursts_of_a_sine()
    {
        StimFigures figures = Figures(Burst);

        Near(30.0, figures[FigureKinds.Rms]);
        Near(19.10, figures[FigureKinds.Average]);
        Near(7.64, figures[FigureKinds.Charge]);
        Near(25, figures[FigureKinds.CyclesPerBurst]);
    }

    [Fact] // Formula 15 and example 24: waveform of Fitzgerald 2003 [C]. The average of a triangle is half its peak: 60 / 2 x 0.5.
    public void Bursts_of_a_triangle()
    {
        StimFigures figures = Figures(Burst with { Waveform = Waveform.BurstTriangle });

        Near(24.49, figures[FigureKinds.Rms]);
        Near(6.00, figures[FigureKinds.Charge]);
        Near(15.0, figures[FigureKinds.Average]);
    }

    [Fact] // Formulas 8 and 16, and example 45 [C]; the ramp counts one half: 750 pulses less 75, of 15 uC.
    public void Pulses_and_charge_of_a_contraction_and_a_session()
    {
        StimFigures figures = Figures(Strong);

        Near(750, figures[FigureKinds.Pulses]);
        Near(4.743, figures[FigureKinds.RmsWholeCycle]);
        Near(11.25, figures[FigureKinds.ChargeContraction]);
        Near(168.75, figures[FigureKinds.ChargeSession]);
        Near(10.125, figures[FigureKinds.ChargeRamped]);
        Near(12.375, Figures(Strong with { Ramps = RampPlacement.Outside })[FigureKinds.ChargeRamped]);
    }

    [Theory] // Example 25: sizes of Conley 2021 table 5.
    [InlineData(7.6, 12.7, 96.52)]
    [InlineData(5, 9, 45)]
    [InlineData(5, 5, 25)]
    public void Area_of_a_rectangular_pad(double width, double height, double area) =>
        Near(area, Figures(new StimSettings { Pad = Pad(width, height) })[FigureKinds.PadArea]);

    [Fact] // Example 25: 70 mm round.
    public void Area_of_a_round_pad() =>
        Near(38.48, Figures(new StimSettings { Pad = PadSize.Round(Length.FromCentimetres(7)) })[FigureKinds.PadArea]);

    [Fact] // Examples 26 and 43, formulas 18 to 20: IEC 60601-2-10 (extract) and FDA 1999 (summary) for the limits [C].
    public void Density_power_and_energy_of_the_strong_regimen()
    {
        StimFigures figures = Figures(Strong);

        Near(0.0983, figures[FigureKinds.Density]);
        Near(1221, figures[FigureKinds.PeakAtCaution]);
        Near(0.000466, figures[FigureKinds.PowerDensity]);
        Near(0.9, figures[FigureKinds.PulseEnergy]);
        Assert.Empty(figures.Cautions);
    }

    [Fact] // Example 21: Yoshida inputs.
    public void Density_under_a_small_pad() =>
        Near(0.281, Figures(Pulses(Waveform.Symmetric, 40, 500, 100) with { WidthIs = WidthBasis.Phase, Pad = Pad(5, 9) })[FigureKinds.Density]);

    [Fact] // Example 27: IEC, FDA.
    public void Density_and_power_stay_under_their_limits_at_100_mA_on_25_cm2()
    {
        StimFigures figures = Figures(Pulses(Waveform.Symmetric, 100, 500, 100) with { WidthIs = WidthBasis.Phase, Pad = Pad(5, 5) });

        Near(1.265, figures[FigureKinds.Density]);
        Near(0.020, figures[FigureKinds.PowerDensity]);
        Assert.DoesNotContain(figures.Cautions, caution => caution.Limit.Id is LimitIds.CurrentDensity or LimitIds.PowerDensity);
    }

    [Fact] // Example 33: definition.
    public void Training_intensity() => Near(30, Figures(Strong)[FigureKinds.Intensity]);

    private static StimSettings Pulses(Waveform waveform, double peak, double width, double rate) => new()
    {
        Waveform = waveform,
        Peak = Current.FromMilliamperes(peak),
        Width = PulseWidth.FromMicroseconds(width),
        Rate = Frequency.FromHertz(rate),
    };
}
