using Progression.Core.Library;
using Progression.Core.Quantities;
using Progression.Core.Stimulation;
using static Progression.Core.Tests.Stimulation.StimCases;

namespace Progression.Core.Tests.Stimulation;

/// <summary>What is not computed, and why; and on which readings of ambiguous settings a value rests.</summary>
public sealed partial class StimDoseTests
{
    [Fact]
    public void Nothing_given_gives_no_figure_and_a_reason_for_each()
    {
        StimFigures figures = Figures(new StimSettings());

        Assert.Equal(FigureKinds.All, figures.All.Select(figure => figure.Kind));
        Assert.All(figures.All, figure =>
        {
            Assert.Null(figure.Value);
            Assert.Null(figure.How);
            Assert.False(string.IsNullOrWhiteSpace(figure.WhyNot));
        });
        Assert.Empty(figures.Cautions);
    }

    public static TheoryData<string, string> Removals => new()
    {
        { "on", "cycle_s work_s_session plateau_s_session duty_percent rest_per_on pulses_contraction session_s clock_h_course" },
        { "off", "cycle_s session_s duty_percent rest_per_on clock_min_week rms_on_and_off_mA" },
        { "ramp up", "plateau_s_contraction plateau_s_session plateau_min_week charge_contraction_ramped_mC" },
        { "ramp down", "plateau_s_contraction plateau_s_session plateau_min_week charge_contraction_ramped_mC" },
        { "contractions", "contractions_session session_s work_s_session contractions_week contractions_course charge_session_mC" },
        { "sessions a day", "sessions_week contractions_week clock_min_week work_min_week plateau_min_week sessions_course" },
        { "days a week", "sessions_week contractions_week clock_min_week" },
        { "weeks", "sessions_course contractions_course clock_h_course" },
        { "rate", "pulses_contraction average_absolute_mA rms_mA density_mA_cm2 peak_at_caution_mA energy_per_pulse_mJ" },
        { "width", "charge_per_phase_uC average_absolute_mA rms_mA density_mA_cm2 power_density_W_cm2" },
        { "peak", "charge_per_phase_uC average_absolute_mA rms_mA density_mA_cm2" },
        { "pad", "pad_area_cm2 density_mA_cm2 power_density_W_cm2 peak_at_caution_mA" },
        { "waveform", "charge_per_phase_uC average_absolute_mA rms_mA net_charge_per_pulse_uC cycles_per_burst" },
        { "evoked torque", "training_intensity_percent" },
        { "maximal voluntary torque", "training_intensity_percent" },
    };

    [Theory]
    [MemberData(nameof(Removals))]
    public void A_missing_setting_is_named_by_every_figure_that_needs_it(string missing, string keys)
    {
        StimFigures figures = Figures(Without(missing));

        Assert.All(keys.Split(' '), key =>
        {
            StimFigure figure = figures.All.Single(each => each.Kind.Key == key);
            Assert.Null(figure.Value);
            Assert.StartsWith("not given: ", figure.WhyNot, StringComparison.Ordinal);
            Assert.Contains(missing, figure.WhyNot!["not given: ".Length..].Split(", "));
        });
    }

    [Fact]
    public void The_place_of_a_stated_ramp_is_asked_for_by_what_depends_on_it_only()
    {
        StimFigures figures = Figures(Strong with { Ramps = null });

        FigureKind[] open = [FigureKinds.Cycle, FigureKinds.Session, FigureKinds.Plateau, FigureKinds.ClockWeek, FigureKinds.ChargeRamped];
        Assert.All(open, kind => Assert.Contains("whether the on-time includes the ramps", figures[kind].WhyNot, StringComparison.Ordinal));
        Near(225, figures[FigureKinds.Work]);
        Near(25, figures[FigureKinds.Duty]);
    }

    [Fact]
    public void Ramps_of_zero_make_their_place_irrelevant()
    {
        StimFigures figures = Figures(Strong with { Ramps = null, RampUp = Duration.FromSeconds(0) });

        Near(60, figures[FigureKinds.Cycle]);
        Near(15, figures[FigureKinds.PlateauContraction]);
        Near(11.25, figures[FigureKinds.ChargeRamped]);
    }

    [Fact]
    public void Ramps_outside_without_a_length_leave_the_cycle_open()
    {
        StimFigures figures = Figures(Strong with { Ramps = RampPlacement.Outside, RampDown = null });

        Assert.Equal("not given: ramp down", figures[FigureKinds.Cycle].WhyNot);
        Near(15, figures[FigureKinds.PlateauContraction]);
    }

    [Fact]
    public void The_last_rest_is_asked_for_only_when_there_is_a_rest()
    {
        Assert.Contains("whether the last rest counts", Figures(Strong with { CountLastRest = null })[FigureKinds.Session].WhyNot, StringComparison.Ordinal);
        Near(225, Figures(Strong with { CountLastRest = null, Off = Duration.FromSeconds(0) })[FigureKinds.Session]);
    }

    [Fact]
    public void The_reading_of_the_width_is_asked_for_by_pulses_of_two_phases_only()
    {
        const string Unclear = "whether the width is of one phase or of the whole pulse";

        Assert.Contains(Unclear, Figures(Strong with { WidthIs = null })[FigureKinds.Rms].WhyNot, StringComparison.Ordinal);
        Assert.Contains(Unclear, Figures(Strong with { WidthIs = null, Waveform = Waveform.Asymmetric })[FigureKinds.Charge].WhyNot, StringComparison.Ordinal);
        Assert.NotNull(Figures(Strong with { WidthIs = null, Waveform = Waveform.Monophasic })[FigureKinds.Rms].Value);
        Assert.NotNull(Figures(Burst)[FigureKinds.Rms].Value);
    }

    [Fact]
    public void An_asymmetric_pulse_without_its_second_phase_has_a_charge_but_no_rms()
    {
        StimFigures figures = Figures(Strong with { Waveform = Waveform.Asymmetric });

        Near(15, figures[FigureKinds.Charge]);
        Near(1.5, figures[FigureKinds.Average]);
        FigureKind[] open = [FigureKinds.Rms, FigureKinds.Density, FigureKinds.PowerDensity, FigureKinds.SecondPhase];
        Assert.All(open, kind => Assert.Equal("not given: width of the second phase", figures[kind].WhyNot));
    }

    [Theory]
    [InlineData(Waveform.BurstSine)]
    [InlineData(Waveform.BurstTriangle)]
    public void Bursts_ask_for_carrier_and_duty(Waveform waveform)
    {
        StimFigures figures = Figures(Burst with { Waveform = waveform, Carrier = null, BurstDuty = null });

        Assert.Equal("not given: carrier", figures[FigureKinds.Charge].WhyNot);
        Assert.Equal("not given: burst duty", figures[FigureKinds.Rms].WhyNot);
        Assert.Equal("not given: burst duty, carrier", figures[FigureKinds.CyclesPerBurst].WhyNot);
    }

    [Fact]
    public void Figures_that_do_not_apply_say_so()
    {
        Assert.Equal("only bursts have a carrier", Figures(Strong)[FigureKinds.CyclesPerBurst].WhyNot);
        Assert.Equal("only an asymmetric pulse has a weaker second phase", Figures(Strong)[FigureKinds.SecondPhase].WhyNot);
    }

    [Fact]
    public void Tells_how_a_figure_was_got_with_its_numbers_and_readings()
    {
        StimFigures figures = Figures(Strong);

        Assert.Equal("on 15 s + off 45 s", figures[FigureKinds.Cycle].How);
        Assert.Equal("contractions a session 15 x plateau a contraction 12 s", figures[FigureKinds.Plateau].How);
        Assert.Equal("peak 60 mA x sqrt(2 x width 250 us / 1000000 x rate 50 pps)", figures[FigureKinds.Rms].How);
        Assert.Equal("100 x on 15 s / (on 15 s + off 45 s)", figures[FigureKinds.Duty].How);
        Assert.Equal(["the on-time includes the ramps", "the rest after the last contraction counts"], figures[FigureKinds.ClockCourse].RestsOn);
        Assert.Equal(["the width is of one phase"], figures[FigureKinds.Density].RestsOn);
        Assert.Equal(["no ramp is given, so the on-time stands as it is"], Figures(Timed(15, 45))[FigureKinds.Cycle].RestsOn);
    }

    [Fact]
    public void A_stated_session_length_stands_beside_the_contractions() =>
        Near(900, Figures(Strong with { SessionLength = Duration.FromSeconds(900), CountLastRest = null })[FigureKinds.Session]);

    private static StimSettings Without(string missing) => missing switch
    {
        "on" => Strong with { On = null },
        "off" => Strong with { Off = null },
        "ramp up" => Strong with { RampUp = null },
        "ramp down" => Strong with { RampDown = null },
        "contractions" => Strong with { Contractions = null },
        "sessions a day" => Strong with { SessionsPerDay = null },
        "days a week" => Strong with { DaysPerWeek = null },
        "weeks" => Strong with { Weeks = null },
        "rate" => Strong with { Rate = null },
        "width" => Strong with { Width = null },
        "peak" => Strong with { Peak = null },
        "pad" => Strong with { Pad = null },
        "waveform" => Strong with { Waveform = null },
        "evoked torque" => Strong with { Evoked = null },
        "maximal voluntary torque" => Strong with { MaximalVoluntary = null },
        _ => throw new ArgumentOutOfRangeException(nameof(missing), missing, "No such setting."),
    };
}
