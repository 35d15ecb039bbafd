using System.CommandLine;
using Progression.Core.Entry;
using Progression.Core.Library;
using Progression.Core.Quantities;
using Progression.Core.Stimulation;

namespace Progression.App.Commands.Dose;

/// <summary>The options of <c>progression dose</c>, and how a command line becomes a stim dose.</summary>
internal sealed class DoseOptions
{
    private static readonly QuantityForm<Duration> OneRamp = QuantityText.Duration.Within(0, 60);
    private static readonly QuantityForm<Duration> OnTime = QuantityText.Duration.Within(0, 3600);

    private readonly Option<string?> _regimen = Make("--regimen", "ID", "Start from a published regimen of the library; the other options go over it.");
    private readonly Option<string?> _on = Make("--on", "TIME", "On-time of one cycle: 15s.");
    private readonly Option<string?> _off = Make("--off", "TIME", "Rest of one cycle: 45s; 0s for a current without pause.");
    private readonly Option<string?> _rampUp = Make("--ramp-up", "TIME", "Rise to full current: 3s; 0s for none.");
    private readonly Option<string?> _rampDown = Make("--ramp-down", "TIME", "Fall from full current: 2s; 0s for none.");
    private readonly Option<string?> _ramps = Make("--ramps", "inside|outside", "Whether the on-time includes the ramps.");
    private readonly Option<string?> _contractions = Make("--contractions", "N", "Contractions a session.");
    private readonly Option<string?> _session = Make("--session", "TIME", "Length of a session, instead of or beside the contractions: 15min.");
    private readonly Option<string?> _countLastRest = Make("--count-last-rest", "yes|no", "Whether the rest after the last contraction belongs to the session.");
    private readonly Option<string?> _perDay = Make("--per-day", "N", "Sessions a day.");
    private readonly Option<string?> _days = Make("--days", "N", "Days a week.");
    private readonly Option<string?> _weeks = Make("--weeks", "N", "Weeks of the course.");
    private readonly Option<string?> _rate = Make("--pps", "RATE", "Pulses or bursts a second: 50.");
    private readonly Option<string?> _width = Make("--width", "TIME", "Pulse width: 250us or 0.25ms.");
    private readonly Option<string?> _widthIs = Make("--width-is", "phase|pulse", "Whether the width is of one phase or of the whole pulse.");
    private readonly Option<string?> _secondWidth = Make("--second-width", "TIME", "Width of the weak second phase of an asymmetric pulse.");
    private readonly Option<string?> _waveform = Make("--waveform", "SHAPE", "symmetric, asymmetric, monophasic, burst-sine or burst-triangle.");
    private readonly Option<string?> _carrier = Make("--carrier", "FREQUENCY", "Carrier of bursts: 2500Hz or 2.5kHz.");
    private readonly Option<string?> _burstDuty = Make("--burst-duty", "SHARE", "Share of a burst period in which the burst is on: 50%.");
    private readonly Option<string?> _peak = Make("--peak", "CURRENT", "Peak current: 60mA.");
    private readonly Option<string?> _pad = Make("--pad", "SIZE", "Smallest pad of the channel: 7.6x12.7cm or \"round 7cm\".");
    private readonly Option<string?> _evoked = Make("--evoked", "TORQUE", "Torque the stim evokes: 24Nm.");
    private readonly Option<string?> _maxVoluntary = Make("--max-voluntary", "TORQUE", "Torque of a maximal voluntary contraction: 80Nm.");

    internal IEnumerable<Option> All =>
    [
        _regimen, _on, _off, _rampUp, _rampDown, _ramps, _contractions, _session, _countLastRest, _perDay, _days, _weeks,
        _rate, _width, _widthIs, _secondWidth, _waveform, _carrier, _burstDuty, _peak, _pad, _evoked, _maxVoluntary,
    ];

    /// <summary>The dose on the command line, or every problem with it in the order of the options.</summary>
    /// <param name="line">The command line.</param>
    /// <param name="library">Where a regimen is looked up.</param>
    internal Entered<StimDose> Read(ParseResult line, ClinicalLibrary library)
    {
        GivenOptions given = new(line);
        Regimen? regimen = Start(given, library);
        StimSettings start = regimen is null ? new StimSettings() : StimSettings.From(regimen);
        StimSettings settings = WithCurrent(given, WithSchedule(given, WithCycle(given, start)));
        return given.Problems.Count > 0 ? Entered<StimDose>.Bad([.. given.Problems]) : AsOptions(StimDose.Of(settings));
    }

    /// <summary>The regimen that the command line starts from; null where it names none or an unknown one.</summary>
    internal Regimen? Start(ParseResult line, ClinicalLibrary library) => Start(new GivenOptions(line), library);

    private Regimen? Start(GivenOptions given, ClinicalLibrary library) =>
        given.Take(_regimen, (field, text) => RegimenText.Read(field, text, library));

    private StimSettings WithCycle(GivenOptions given, StimSettings settings) => settings with
    {
        On = given.Take(_on, OnTime.Read) ?? settings.On,
        Off = given.Take(_off, OnTime.Read) ?? settings.Off,
        RampUp = given.Take(_rampUp, OneRamp.Read) ?? settings.RampUp,
        RampDown = given.Take(_rampDown, OneRamp.Read) ?? settings.RampDown,
        Ramps = given.Word(_ramps, [("inside", RampPlacement.Inside), ("outside", RampPlacement.Outside)]) ?? settings.Ramps,
    };

    private StimSettings WithSchedule(GivenOptions given, StimSettings settings) => settings with
    {
        Contractions = given.Count(_contractions, StimCounts.MostContractions) ?? settings.Contractions,
        SessionLength = given.Take(_session, QuantityText.Duration.Within(0, 86_400).Read) ?? settings.SessionLength,
        CountLastRest = given.Word(_countLastRest, [("yes", true), ("no", false)]) ?? settings.CountLastRest,
        SessionsPerDay = given.Count(_perDay, StimCounts.MostSessionsPerDay) ?? settings.SessionsPerDay,
        DaysPerWeek = given.Count(_days, StimCounts.MostDays) ?? settings.DaysPerWeek,
        Weeks = given.Count(_weeks, StimCounts.MostWeeks) ?? settings.Weeks,
    };

    private StimSettings WithCurrent(GivenOptions given, StimSettings settings) => settings with
    {
        Rate = given.Take(_rate, QuantityText.PulseRate.Read) ?? settings.Rate,
        Width = given.Take(_width, QuantityText.PulseWidth.Read) ?? settings.Width,
        WidthIs = given.Word(_widthIs, [("phase", WidthBasis.Phase), ("pulse", WidthBasis.Pulse)]) ?? settings.WidthIs,
        SecondWidth = given.Take(_secondWidth, QuantityText.PulseWidth.Read) ?? settings.SecondWidth,
        Waveform = given.Word(_waveform,
        [
            ("symmetric", Waveform.Symmetric), ("asymmetric", Waveform.Asymmetric), ("monophasic", Waveform.Monophasic),
            ("burst-sine", Waveform.BurstSine), ("burst-triangle", Waveform.BurstTriangle),
        ]) ?? settings.Waveform,
        Carrier = given.Take(_carrier, QuantityText.Carrier.Read) ?? settings.Carrier,
        BurstDuty = given.Take(_burstDuty, QuantityText.Percentage.Within(0, 100).Read) ?? settings.BurstDuty,
        Peak = given.Take(_peak, QuantityText.Current.Read) ?? settings.Peak,
        Pad = given.Take(_pad, PadText.Read) ?? settings.Pad,
        Evoked = given.Take(_evoked, QuantityText.Torque.Read) ?? settings.Evoked,
        MaximalVoluntary = given.Take(_maxVoluntary, QuantityText.Torque.Read) ?? settings.MaximalVoluntary,
    };

    private static Entered<StimDose> AsOptions(Entered<StimDose> dose) => dose.Problems.IsEmpty
        ? dose
        : Entered<StimDose>.Bad([.. dose.Problems.Select(problem => problem with { Field = "--" + problem.Field })]);

    private static Option<string?> Make(string name, string value, string description) => new(name) { HelpName = value, Description = description };
}
