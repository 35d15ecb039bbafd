using System.Collections.Immutable;

namespace Progression.Core.Stimulation;

/// <summary>Every figure of a stim dose, in the order in which they are shown.</summary>
public static class FigureKinds
{
    /// <summary>On-time, ramps outside it, and rest.</summary>
    public static FigureKind Cycle { get; } = new("cycle_s", "cycle", "s");

    /// <summary>Length of a session by the clock.</summary>
    public static FigureKind Session { get; } = new("session_s", "session", "s");

    /// <summary>Contractions in a session.</summary>
    public static FigureKind Contractions { get; } = new("contractions_session", "contractions a session", "");

    /// <summary>On-time in a session, as the on-time is stated.</summary>
    public static FigureKind Work { get; } = new("work_s_session", "on-time a session", "s");

    /// <summary>Time at full current in a session.</summary>
    public static FigureKind Plateau { get; } = new("plateau_s_session", "plateau a session", "s");

    /// <summary>Time at full current in one contraction.</summary>
    public static FigureKind PlateauContraction { get; } = new("plateau_s_contraction", "plateau a contraction", "s");

    /// <summary>Time in a session in which any current flows: the on-time and the ramps outside it.</summary>
    public static FigureKind CurrentTime { get; } = new("current_s_session", "time with current a session", "s");

    /// <summary>On-time as a share of on-time and rest.</summary>
    public static FigureKind Duty { get; } = new("duty_percent", "duty cycle", "%");

    /// <summary>Rest for one part of on-time: 3 for 1:3.</summary>
    public static FigureKind RestPerOn { get; } = new("rest_per_on", "rest for one part of on-time", "");

    /// <summary>Sessions a week.</summary>
    public static FigureKind SessionsWeek { get; } = new("sessions_week", "sessions a week", "");

    /// <summary>Contractions a week.</summary>
    public static FigureKind ContractionsWeek { get; } = new("contractions_week", "contractions a week", "");

    /// <summary>Clock time a week.</summary>
    public static FigureKind ClockWeek { get; } = new("clock_min_week", "clock time a week", "min");

    /// <summary>On-time a week.</summary>
    public static FigureKind WorkWeek { get; } = new("work_min_week", "on-time a week", "min");

    /// <summary>Plateau time a week.</summary>
    public static FigureKind PlateauWeek { get; } = new("plateau_min_week", "plateau a week", "min");

    /// <summary>Sessions in the course.</summary>
    public static FigureKind SessionsCourse { get; } = new("sessions_course", "sessions in the course", "");

    /// <summary>Contractions in the course.</summary>
    public static FigureKind ContractionsCourse { get; } = new("contractions_course", "contractions in the course", "");

    /// <summary>Clock time of the course.</summary>
    public static FigureKind ClockCourse { get; } = new("clock_h_course", "clock time of the course", "h");

    /// <summary>Pulses or bursts in the stated on-time of one contraction.</summary>
    public static FigureKind Pulses { get; } = new("pulses_contraction", "pulses or bursts a contraction", "");

    /// <summary>Cycles of the carrier in one burst.</summary>
    public static FigureKind CyclesPerBurst { get; } = new("cycles_per_burst", "carrier cycles a burst", "");

    /// <summary>Charge of one phase; of bursts, of half a carrier cycle; of an asymmetric pulse, of each of its phases.</summary>
    public static FigureKind Charge { get; } = new("charge_per_phase_uC", "charge a phase", "uC");

    /// <summary>Current of the weak phase of an asymmetric pulse.</summary>
    public static FigureKind SecondPhase { get; } = new("second_phase_mA", "current of the second phase", "mA");

    /// <summary>Mean of the current without its sign, at full current.</summary>
    public static FigureKind Average { get; } = new("average_absolute_mA", "average absolute current", "mA");

    /// <summary>Root mean square of the current, at full current.</summary>
    public static FigureKind Rms { get; } = new("rms_mA", "r.m.s. current", "mA");

    /// <summary>Root mean square over on-time and rest; for information, never compared with a limit.</summary>
    public static FigureKind RmsWholeCycle { get; } = new("rms_on_and_off_mA", "r.m.s. over on and off (information only)", "mA");

    /// <summary>Charge that is left in the body by one pulse.</summary>
    public static FigureKind NetCharge { get; } = new("net_charge_per_pulse_uC", "net charge a pulse", "uC");

    /// <summary>Charge of one polarity in a contraction, as if the current were full for all of the on-time.</summary>
    public static FigureKind ChargeContraction { get; } = new("charge_contraction_mC", "charge a contraction and polarity", "mC");

    /// <summary>The same with linear ramps, which count one half.</summary>
    public static FigureKind ChargeRamped { get; } = new("charge_contraction_ramped_mC", "charge a contraction, ramps at one half", "mC");

    /// <summary>Charge of one polarity in a session, without regard to ramps.</summary>
    public static FigureKind ChargeSession { get; } = new("charge_session_mC", "charge a session and polarity", "mC");

    /// <summary>Area of the smallest pad.</summary>
    public static FigureKind PadArea { get; } = new("pad_area_cm2", "pad area", "cm2");

    /// <summary>R.m.s. current over the area of the smallest pad.</summary>
    public static FigureKind Density { get; } = new("density_mA_cm2", "current density", "mA/cm2");

    /// <summary>Peak current at which the current density reaches its limit.</summary>
    public static FigureKind PeakAtCaution { get; } = new("peak_at_caution_mA", "peak current at the density caution", "mA");

    /// <summary>Power into the limit's load, over the area of the smallest pad.</summary>
    public static FigureKind PowerDensity { get; } = new("power_density_W_cm2", "power density", "W/cm2");

    /// <summary>Energy of one pulse or burst into the limit's load.</summary>
    public static FigureKind PulseEnergy { get; } = new("energy_per_pulse_mJ", "energy a pulse", "mJ");

    /// <summary>Evoked torque as a share of the maximal voluntary torque.</summary>
    public static FigureKind Intensity { get; } = new("training_intensity_percent", "training intensity", "%");

    /// <summary>All of them.</summary>
    public static ImmutableArray<FigureKind> All { get; } =
    [
        Cycle, Session, Contractions, Work, Plateau, PlateauContraction, CurrentTime, Duty, RestPerOn,
        SessionsWeek, ContractionsWeek, ClockWeek, WorkWeek, PlateauWeek, SessionsCourse, ContractionsCourse, ClockCourse,
        Pulses, CyclesPerBurst, Charge, SecondPhase, Average, Rms, RmsWholeCycle, NetCharge, ChargeContraction, ChargeRamped, ChargeSession,
        PadArea, Density, PeakAtCaution, PowerDensity, PulseEnergy, Intensity,
    ];
}
