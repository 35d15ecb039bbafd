using Progression.Core.Findings;
using Progression.Core.Library;
using Progression.Core.Quantities;
using Progression.Core.Stimulation;
using static Progression.Core.Tests.Stimulation.StimCases;

namespace Progression.Core.Tests.Stimulation;

/// <summary>Each caution just below, at and above its limit. A monophasic pulse that fills its period has an r.m.s. value equal to its peak, so peaks can be read as r.m.s.</summary>
public sealed partial class StimDoseTests
{
    [Theory] // 2 mA/cm2 on 25 cm2 is 50 mA: IEC 60601-2-10, "above".
    [InlineData(49.9, false)]
    [InlineData(50, false)]
    [InlineData(50.1, true)]
    public void Warns_of_current_density_above_its_limit(double rms, bool warned) =>
        Assert.Equal(warned, Cautions(Steady(rms, 1000) with { Pad = Pad(5, 5) }).Contains(LimitIds.CurrentDensity));

    [Theory] // 0.25 W/cm2 on 5 cm2 is 1.25 W: 50 mA into 500 ohm. FDA 1999: "should be less".
    [InlineData(49.9, false)]
    [InlineData(50, true)]
    [InlineData(50.1, true)]
    public void Warns_of_power_density_at_its_limit(double rms, bool warned) =>
        Assert.Equal(warned, Cautions(Steady(rms, 1000) with { Pad = Pad(1, 5) }).Contains(LimitIds.PowerDensity));

    [Theory] // Output bounds by frequency: IEC 60601-2-10, from memory.
    [InlineData(400, 50, null)]
    [InlineData(400, 50.1, LimitIds.OutputLow)]
    [InlineData(401, 50.1, null)]
    [InlineData(1000, 80, null)]
    [InlineData(1000, 80.1, LimitIds.OutputMiddle)]
    public void Warns_of_an_output_above_the_bound_of_its_frequency(double rate, double rms, string? expected) =>
        Assert.Equal(expected, Cautions(Steady(rms, rate)).FirstOrDefault(id => id.StartsWith("stim.output-", StringComparison.Ordinal) && id != LimitIds.OutputStated));

    [Theory] // A sine burst that never pauses has an r.m.s. value of its peak over the root of two: 141.4 mA gives 100 mA.
    [InlineData(2500, 141, null)]
    [InlineData(2500, 142, LimitIds.OutputHigh)]
    [InlineData(1500, 142, LimitIds.OutputMiddle)]
    [InlineData(1501, 141, null)]
    public void Takes_the_carrier_as_the_frequency_of_bursts(double carrier, double peak, string? expected)
    {
        StimSettings settings = Burst with
        {
            BurstDuty = Percentage.FromPercent(100),
            Carrier = Frequency.FromHertz(carrier),
            Peak = Current.FromMilliamperes(peak),
        };

        Assert.Equal(expected, Cautions(settings).FirstOrDefault(id => id.StartsWith("stim.output-", StringComparison.Ordinal) && id != LimitIds.OutputStated));
    }

    [Theory] // 300 mJ into 500 ohm in 20 ms: the root of 0.3 / (500 x 0.02) A = 173.2 mA.
    [InlineData(173, false)]
    [InlineData(174, true)]
    public void Warns_of_the_energy_of_one_pulse(double rms, bool warned) =>
        Assert.Equal(warned, Cautions(Steady(rms, 50)).Contains(LimitIds.PulseEnergy));

    [Theory] // The bound holds for pulses shorter than 0.1 s. An unbroken sine of 141 mA is 99.7 mA r.m.s. and 5 W into 500 ohm, so 0.5 J in 0.1 s.
    [InlineData(10, false)]
    [InlineData(10.1, true)]
    public void Compares_the_energy_of_short_bursts_only(double rate, bool warned) => Assert.Equal(warned, Cautions(Burst with
    {
        Rate = Frequency.FromHertz(rate),
        BurstDuty = Percentage.FromPercent(100),
        Peak = Current.FromMilliamperes(141),
    }).Contains(LimitIds.PulseEnergy));

    [Theory] // IEC 60601-2-10 (extract): 10 mA, "above".
    [InlineData(9.9, false)]
    [InlineData(10, false)]
    [InlineData(10.1, true)]
    public void Notes_an_output_that_must_be_stated(double rms, bool noted) =>
        Assert.Equal(noted, Cautions(Steady(rms, 1000)).Contains(LimitIds.OutputStated));

    [Theory] // Usual aim 30 % (from memory).
    [InlineData(23.9, true)]
    [InlineData(24, false)]
    [InlineData(24.1, false)]
    public void Notes_a_training_intensity_below_the_usual_aim(double evoked, bool noted) =>
        Assert.Equal(noted, Cautions(Strong with { Evoked = Torque.FromNewtonMetres(evoked) }).Contains(LimitIds.TrainingIntensity));

    [Fact]
    public void Warns_when_the_ramps_take_all_of_the_on_time()
    {
        StimSettings settings = Strong with { On = Duration.FromSeconds(3) };

        Assert.Contains("stim.no-plateau", Cautions(settings));
        Assert.DoesNotContain("stim.no-plateau", Cautions(settings with { On = Duration.FromSeconds(3.1) }));
    }

    [Fact]
    public void A_caution_carries_figure_limit_source_and_standing_and_the_worst_comes_first()
    {
        StimFigures figures = Figures(Steady(60, 1000) with { Pad = Pad(5, 5) });

        StimCaution first = figures.Cautions[0];
        Assert.Equal((LimitIds.CurrentDensity, Severity.Warning, 2.0, "mA/cm2", Standing.Seen), (first.Limit.Id, first.Severity, first.Limit.Value, first.Limit.Unit, first.Limit.Source.Standing));
        Assert.Equal(2.4, first.Value, 9);
        Assert.Equal("Current density of 2.4 mA/cm2 is more than 2 mA/cm2: asks for special attention to the skin; a caution, not a ceiling.", first.Text);
        Assert.Equal(Severity.Note, figures.Cautions[^1].Severity);
    }

    private static StimSettings Steady(double rms, double rate) => Pulses(Waveform.Monophasic, rms, 1e6 / rate > 20000 ? 20000 : 1e6 / rate, rate);

    private static List<string> Cautions(StimSettings settings) => [.. Figures(settings).Cautions.Select(caution => caution.Limit.Id)];
}
