using Progression.Core.Quantities;
using Progression.Core.Stimulation;

namespace Progression.Core.Tests.Stimulation;

public sealed class StimFiguresTests
{
    // Worked examples 1, 2, 18 and 33: 15 s on and 45 s off, 15 contractions, 60 mA, 250 us a phase, 50 pps, 24 of 80 Nm.
    [Fact]
    public void Gives_its_headline_figures_as_quantities()
    {
        StimFigures figures = StimCases.Figures(StimCases.Strong);

        Assert.Equal("15 uC", $"{figures.ChargePerPhase}");
        Assert.Equal("1.5 mA", $"{figures.AverageCurrent}");
        Assert.Equal("9.487 mA", $"{figures.RmsCurrent}");
        Assert.Equal("900 s", $"{figures.SessionLength}");
        Assert.Equal("25 %", $"{figures.DutyCycle}");
        Assert.Equal("30 %", $"{figures.TrainingIntensity}");
    }

    // Worked example 23: 60 mA, 2500 Hz sine, 50 bursts a second, half on.
    [Fact]
    public void Gives_the_charge_of_half_a_carrier_cycle_for_bursts() =>
        Assert.Equal("7.639 uC", $"{StimCases.Figures(StimCases.Burst).ChargePerPhase}");

    [Fact]
    public void A_figure_that_is_not_computed_is_no_quantity()
    {
        StimFigures figures = StimCases.Figures(new StimSettings());

        Assert.Equal(
            [null, null, null, null, null, null],
            new object?[] { figures.ChargePerPhase, figures.AverageCurrent, figures.RmsCurrent, figures.SessionLength, figures.DutyCycle, figures.TrainingIntensity });
    }

    [Fact]
    public void A_figure_beyond_its_quantity_stays_a_number_only()
    {
        StimFigures figures = StimCases.Figures(new StimSettings { Evoked = Torque.FromNewtonMetres(100), MaximalVoluntary = Torque.FromNewtonMetres(1) });

        Assert.Null(figures.TrainingIntensity);
        Assert.Equal(10_000, figures[FigureKinds.Intensity].Value);
    }
}
