using Progression.Core.Library;
using Progression.Core.Quantities;

namespace Progression.Core.Stimulation;

/// <summary>
/// The settings and schedule of stim as they are known. Every field may be missing, and missing is never zero: a figure that needs it is then not computed.
/// Whether the settings can be true together is checked by <see cref="StimDose.Of"/>.
/// </summary>
public sealed record StimSettings
{
    /// <summary>On-time of one cycle; see <see cref="Ramps"/>.</summary>
    public Duration? On { get; init; }

    /// <summary>Rest in one cycle; zero for a current without pause.</summary>
    public Duration? Off { get; init; }

    /// <summary>Rise to full current; zero where there is none.</summary>
    public Duration? RampUp { get; init; }

    /// <summary>Fall from full current; zero where there is none.</summary>
    public Duration? RampDown { get; init; }

    /// <summary>Whether the on-time includes the ramps.</summary>
    public RampPlacement? Ramps { get; init; }

    /// <summary>Contractions in a session.</summary>
    public int? Contractions { get; init; }

    /// <summary>Length of a session by the clock, where it is stated. A stated length stands; otherwise it is reckoned from the contractions.</summary>
    public Duration? SessionLength { get; init; }

    /// <summary>Whether the rest after the last contraction belongs to the session.</summary>
    public bool? CountLastRest { get; init; }

    /// <summary>Sessions a day.</summary>
    public int? SessionsPerDay { get; init; }

    /// <summary>Days a week.</summary>
    public int? DaysPerWeek { get; init; }

    /// <summary>Weeks of the course.</summary>
    public int? Weeks { get; init; }

    /// <summary>Pulses or bursts a second.</summary>
    public Frequency? Rate { get; init; }

    /// <summary>Pulse width; see <see cref="WidthIs"/>. Without meaning for bursts.</summary>
    public PulseWidth? Width { get; init; }

    /// <summary>Whether the width is of one phase (of an asymmetric pulse: the strong first one) or of the whole pulse.</summary>
    public WidthBasis? WidthIs { get; init; }

    /// <summary>Width of the weak second phase of an asymmetric pulse.</summary>
    public PulseWidth? SecondWidth { get; init; }

    /// <summary>Shape of the current.</summary>
    public Waveform? Waveform { get; init; }

    /// <summary>Frequency of the alternating current inside a burst.</summary>
    public Frequency? Carrier { get; init; }

    /// <summary>Share of a burst period in which the burst is on.</summary>
    public Percentage? BurstDuty { get; init; }

    /// <summary>Peak current, baseline to peak.</summary>
    public Current? Peak { get; init; }

    /// <summary>The smallest pad of the channel; the pads of one channel carry the same current.</summary>
    public PadSize? Pad { get; init; }

    /// <summary>Torque that the stim evokes.</summary>
    public Torque? Evoked { get; init; }

    /// <summary>Torque of a maximal voluntary contraction of the same leg in the same position.</summary>
    public Torque? MaximalVoluntary { get; init; }

    /// <summary>The settings of a published regimen; what the paper leaves open stays missing.</summary>
    public static StimSettings From(Regimen regimen) => new()
    {
        On = Known(regimen.On),
        Off = Known(regimen.Off),
        RampUp = Known(regimen.RampUp),
        RampDown = Known(regimen.RampDown),
        Ramps = KnownValue(regimen.Ramps),
        Contractions = KnownValue(regimen.Contractions),
        SessionLength = Known(regimen.SessionLength),
        SessionsPerDay = KnownValue(regimen.SessionsPerDay),
        DaysPerWeek = KnownValue(regimen.DaysPerWeek),
        Weeks = KnownValue(regimen.Weeks),
        Rate = Known(regimen.Rate),
        Width = Known(regimen.Width),
        WidthIs = KnownValue(regimen.WidthIs),
        Waveform = KnownValue(regimen.Waveform),
        Carrier = Known(regimen.Carrier),
        BurstDuty = Known(regimen.BurstDuty),
        Pad = Known(regimen.Pad),
    };

    private static T? Known<T>(Stated<T> field) where T : class => field.IsOpen ? null : field.Value;

    private static T? KnownValue<T>(Stated<T> field) where T : struct => field.IsOpen ? null : field.Value;
}
