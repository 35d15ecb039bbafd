using Progression.Core.Library;
using Progression.Core.Quantities;
using Progression.Core.Stimulation;
using static Progression.Core.Tests.Stimulation.StimCases;

namespace Progression.Core.Tests.Stimulation;

/// <summary>
/// Worked examples of time and volume. Inputs from the study named beside each; where only the inputs are published the result is the
/// reference's own arithmetic on them, marked [C]. Expected figures are literals.
/// </summary>
public sealed partial class StimDoseTests
{
    [Fact] // Example 1: Stevens-Lapsley 2012 [C].
    public void Cycle_duty_and_ratio_of_15_on_45_off()
    {
        StimFigures figures = Figures(Timed(15, 45));

        Near(60, figures[FigureKinds.Cycle]);
        Near(25, figures[FigureKinds.Duty]);
        Near(3, figures[FigureKinds.RestPerOn]);
    }

    [Fact] // Formula 1, second value: the same with the 3 s ramp outside [C].
    public void Cycle_with_the_ramp_outside_is_longer() =>
        Near(63, Figures(Strong with { Ramps = RampPlacement.Outside })[FigureKinds.Cycle]);

    [Theory]
    [InlineData(true, 900)] // Example 2: 15:00, agrees with the 15 min a session of the MSSE 2009 abstract.
    [InlineData(false, 855)] // Example 3: 14:15 [C].
    public void Session_of_15_contractions_with_and_without_the_last_rest(bool counted, double seconds) =>
        Near(seconds, Figures(Strong with { CountLastRest = counted })[FigureKinds.Session]);

    [Fact] // Example 4: Conley 2021 table 5 and [C].
    public void Plateau_and_on_time_with_a_3_s_ramp_inside()
    {
        StimFigures figures = Figures(Strong);

        Near(12, figures[FigureKinds.PlateauContraction]);
        Near(180, figures[FigureKinds.Plateau]);
        Near(225, figures[FigureKinds.Work]);
    }

    [Fact] // Example 6 and table 1c: Stevens-Lapsley, 7 days a week assumed [C].
    public void Week_of_the_strong_regimen()
    {
        StimFigures figures = Figures(Strong);

        Near(14, figures[FigureKinds.SessionsWeek]);
        Near(210, figures[FigureKinds.ContractionsWeek]);
        Near(210, figures[FigureKinds.ClockWeek]);
        Near(52.5, figures[FigureKinds.WorkWeek]);
        Near(42, figures[FigureKinds.PlateauWeek]);
    }

    [Theory]
    [InlineData(7, 1260, 21)] // Example 7: six weeks [C].
    [InlineData(5, 900, 15)] // Table 1c, the same at 5 days a week [C].
    public void Course_of_the_strong_regimen(int days, double contractions, double hours)
    {
        StimFigures figures = Figures(Strong with { DaysPerWeek = days });

        Near(contractions, figures[FigureKinds.ContractionsCourse]);
        Near(hours, figures[FigureKinds.ClockCourse]);
    }

    [Fact] // Table 1c, Stevens-Lapsley at 5 days a week [C].
    public void Week_of_the_strong_regimen_at_five_days()
    {
        StimFigures figures = Figures(Strong with { DaysPerWeek = 5 });

        Near(150, figures[FigureKinds.ContractionsWeek]);
        Near(150, figures[FigureKinds.ClockWeek]);
    }

    [Fact] // Example 8: Petterson 2009, on and off times from memory [C].
    public void Ten_on_eighty_off()
    {
        StimSettings settings = Timed(10, 80) with { Contractions = 10, CountLastRest = true };

        Near(90, Figures(settings)[FigureKinds.Cycle]);
        Near(11.11, Figures(settings)[FigureKinds.Duty]);
        Near(8, Figures(settings)[FigureKinds.RestPerOn]);
        Near(900, Figures(settings)[FigureKinds.Session]);
        Near(820, Figures(settings with { CountLastRest = false })[FigureKinds.Session]);
    }

    [Theory]
    [InlineData(10, 2, 6, 12, 120)] // Example 9: Stevens 2004, two visits a week. Example 10: Petterson, at least 12 visits of 10.
    [InlineData(10, 3, 6, 18, 180)] // Example 9: three visits a week.
    [InlineData(30, 3, 6, 18, 540)] // Example 16: Jo and Kim 2025.
    public void Visits_and_contractions_of_a_course(int contractions, int days, int weeks, double visits, double all)
    {
        StimFigures figures = Figures(new StimSettings { Contractions = contractions, SessionsPerDay = 1, DaysPerWeek = days, Weeks = weeks });

        Near(visits, figures[FigureKinds.SessionsCourse]);
        Near(all, figures[FigureKinds.ContractionsCourse]);
    }

    [Theory]
    [InlineData(7200, 2, 7, 6, 1680, 168)] // Example 11: Avramidis 2003, 28 h a week, 42 days.
    [InlineData(2700, 1, 5, 2, 225, 7.5)] // Table 1c: Yoshida 2017, 450 min in all.
    [InlineData(1800, 1, 5, 4, 150, 10)] // Examples 13 and 15: Demircioglu 2015 and Lieber 1996, 600 min in four weeks.
    [InlineData(1800, 1, 5, 6, 150, 15)] // Example 13: Demircioglu, 900 min in six weeks.
    public void Clock_time_of_regimens_given_in_minutes(double session, int aDay, int days, int weeks, double minutesWeek, double hoursCourse)
    {
        StimFigures figures = Figures(new StimSettings
        {
            SessionLength = Duration.FromSeconds(session),
            SessionsPerDay = aDay,
            DaysPerWeek = days,
            Weeks = weeks,
        });

        Near(minutesWeek, figures[FigureKinds.ClockWeek]);
        Near(hoursCourse, figures[FigureKinds.ClockCourse]);
    }

    [Fact] // Table 1c: Valdes 2010, 15 min once daily, 7 days a week [C].
    public void Clock_time_of_a_daily_quarter_hour() =>
        Near(105, Figures(new StimSettings { SessionLength = Duration.FromSeconds(900), SessionsPerDay = 1, DaysPerWeek = 7 })[FigureKinds.ClockWeek]);

    [Theory]
    [InlineData(2700, 2, 90, 450, 900)] // Example 12: Yoshida 2017, motor arm.
    [InlineData(1800, 4, 60, 300, 1200)] // Example 15 and table 1c: Lieber 1996.
    public void Contractions_reckoned_from_the_session_length(double session, int weeks, double each, double aWeek, double all)
    {
        StimFigures figures = Figures(Timed(10, 20) with { SessionLength = Duration.FromSeconds(session), SessionsPerDay = 1, DaysPerWeek = 5, Weeks = weeks });

        Near(each, figures[FigureKinds.Contractions]);
        Near(aWeek, figures[FigureKinds.ContractionsWeek]);
        Near(all, figures[FigureKinds.ContractionsCourse]);
    }

    // Formula 3: whole cycles, and one more when a further on-period fits in what remains [C].
    [Theory]
    [InlineData(900, 15)]
    [InlineData(899, 15)]
    [InlineData(855, 15)]
    [InlineData(854, 14)]
    [InlineData(15, 1)]
    [InlineData(14, 0)]
    public void A_further_on_period_that_fits_counts(double session, double contractions) =>
        Near(contractions, Figures(Timed(15, 45) with { SessionLength = Duration.FromSeconds(session) })[FigureKinds.Contractions]);

    [Fact] // By definition: ramps outside come on top, so the plateau is the on-time and current flows for both.
    public void Ramps_outside_leave_the_plateau_whole()
    {
        StimFigures figures = Figures(Strong with { Ramps = RampPlacement.Outside });

        Near(15, figures[FigureKinds.PlateauContraction]);
        Near(225, figures[FigureKinds.Work]);
        Near(270, figures[FigureKinds.CurrentTime]);
        Near(945, figures[FigureKinds.Session]);
    }

    [Theory] // By definition, with a 3 s rise and a 2 s fall: 15 - 3 - 2, or 15 + 3 + 2; a ramp carries half the charge (0.75 mA each way).
    [InlineData(RampPlacement.Inside, 60, 10, 225, 9.375)]
    [InlineData(RampPlacement.Outside, 65, 15, 300, 13.125)]
    public void Both_ramps_count(RampPlacement ramps, double cycle, double plateau, double current, double charge)
    {
        StimFigures figures = Figures(Strong with { RampDown = Duration.FromSeconds(2), Ramps = ramps });

        Near(cycle, figures[FigureKinds.Cycle]);
        Near(plateau, figures[FigureKinds.PlateauContraction]);
        Near(current, figures[FigureKinds.CurrentTime]);
        Near(charge, figures[FigureKinds.ChargeRamped]);
    }

    // Half a per cent, the tolerance of the reference.
    private static void Near(double expected, StimFigure figure)
    {
        Assert.True(figure.Value is not null, figure.WhyNot);
        Assert.InRange(figure.Value.Value, expected - (Math.Abs(expected) * 0.005), expected + (Math.Abs(expected) * 0.005));
    }
}
