using Progression.Core.Library;

namespace Progression.Core.Stimulation;

/// <summary>Cycle, session, week and course (reference formulas 1 to 7). Standard definitions; no source needed.</summary>
internal sealed class TimeReckoning
{
    private const string RampsInside = "the on-time includes the ramps";
    private const string RampsOutside = "the ramps come on top of the on-time";
    private const string NoRamp = "no ramp is given, so the on-time stands as it is";
    private const string PlacementUnknown = "whether the on-time includes the ramps";

    private readonly StimSettings _settings;
    private readonly Ledger _ledger;
    private readonly Explained _off;
    private readonly Explained _up;
    private readonly Explained _down;

    internal TimeReckoning(StimSettings settings, Ledger ledger)
    {
        (_settings, _ledger) = (settings, ledger);
        On = Explained.Given("on", settings.On?.Seconds, "s");
        _off = Explained.Given("off", settings.Off?.Seconds, "s");
        _up = Explained.Given("ramp up", settings.RampUp?.Seconds, "s");
        _down = Explained.Given("ramp down", settings.RampDown?.Seconds, "s");
        Share = On / (On + _off);
        Contractions = Reckon();
    }

    /// <summary>On-time of a contraction, as stated.</summary>
    internal Explained On { get; }

    /// <summary>On-time as a share of on-time and rest, 0 to 1.</summary>
    internal Explained Share { get; }

    /// <summary>Contractions a session.</summary>
    internal Explained Contractions { get; }

    /// <summary>On-time of a contraction with linear ramps counted one half.</summary>
    internal Explained RampedOn =>
        RampsAreKnownToBeZero ? On
        : _settings.Ramps switch
        {
            RampPlacement.Inside => (On - ((_up + _down) / 2)).Resting(RampsInside),
            RampPlacement.Outside => (On + ((_up + _down) / 2)).Resting(RampsOutside),
            _ => (On + _up + _down).Lacking(PlacementUnknown),
        };

    private bool RampsAreKnownToBeZero => _settings is { RampUp.Seconds: 0, RampDown.Seconds: 0 };

    private bool SomeRampIsKnown => _settings is { RampUp.Seconds: > 0 } or { RampDown.Seconds: > 0 };

    private Explained Reckon()
    {
        Explained flow = Flow();
        Explained cycle = _ledger.Enter(FigureKinds.Cycle, flow + _off);
        Explained contractions = _ledger.Enter(FigureKinds.Contractions, Count(cycle, flow));
        Explained session = _ledger.Enter(FigureKinds.Session, SessionOf(contractions, cycle));
        Explained work = _ledger.Enter(FigureKinds.Work, contractions * On);
        Explained plateau = _ledger.Enter(FigureKinds.PlateauContraction, Plateau());
        Explained plateaus = _ledger.Enter(FigureKinds.Plateau, contractions * plateau);
        _ledger.Enter(FigureKinds.CurrentTime, contractions * flow);
        _ledger.Enter(FigureKinds.Duty, 100 * On / (On + _off));
        _ledger.Enter(FigureKinds.RestPerOn, _off / On);
        WeekAndCourse(contractions, session, work, plateaus);
        return contractions;
    }

    private void WeekAndCourse(Explained contractions, Explained session, Explained work, Explained plateau)
    {
        Explained weeks = Explained.Given("weeks", _settings.Weeks, "");
        Explained sessions = _ledger.Enter(
            FigureKinds.SessionsWeek,
            Explained.Given("sessions a day", _settings.SessionsPerDay, "") * Explained.Given("days a week", _settings.DaysPerWeek, ""));
        Explained aWeek = _ledger.Enter(FigureKinds.ContractionsWeek, contractions * sessions);
        Explained clock = _ledger.Enter(FigureKinds.ClockWeek, session * sessions / 60);
        _ledger.Enter(FigureKinds.WorkWeek, work * sessions / 60);
        _ledger.Enter(FigureKinds.PlateauWeek, plateau * sessions / 60);
        _ledger.Enter(FigureKinds.SessionsCourse, sessions * weeks);
        _ledger.Enter(FigureKinds.ContractionsCourse, aWeek * weeks);
        _ledger.Enter(FigureKinds.ClockCourse, clock * weeks / 60);
    }

    /// <summary>Time with current in one contraction. Ramps that nobody states leave the on-time as it is; stated ones need their place.</summary>
    private Explained Flow() =>
        RampsAreKnownToBeZero ? On
        : _settings.Ramps switch
        {
            RampPlacement.Inside => On.Resting(RampsInside),
            RampPlacement.Outside => (On + _up + _down).Resting(RampsOutside),
            _ => SomeRampIsKnown ? On.Lacking(PlacementUnknown) : On.Resting(NoRamp),
        };

    private Explained Plateau() =>
        RampsAreKnownToBeZero ? On
        : _settings.Ramps switch
        {
            RampPlacement.Inside => (On - _up - _down).Resting(RampsInside),
            RampPlacement.Outside => On.Resting(RampsOutside),
            _ => (On - _up - _down).Lacking(PlacementUnknown),
        };

    private Explained Count(Explained cycle, Explained flow)
    {
        if (_settings.Contractions is not null || _settings.SessionLength is null)
        {
            return Explained.Given("contractions", _settings.Contractions, "");
        }

        Explained length = Explained.Given("session", _settings.SessionLength.Seconds, "s");
        return Explained.Told(length, cycle, (session, each) =>
        {
            // The allowance keeps a session of exactly n cycles from losing one to rounding.
            const double Allowance = 1e-9;
            double whole = Math.Floor((session / each) + Allowance);
            bool oneMore = session - (whole * each) >= flow.Value!.Value - Allowance;
            string words = $"{length.Words} / {cycle.Words}, whole cycles";
            return oneMore ? (whole + 1, words + " and one more on-period that fits") : (whole, words);
        });
    }

    private Explained SessionOf(Explained contractions, Explained cycle)
    {
        if (_settings.SessionLength is { } length)
        {
            return Explained.Given("session as stated", length.Seconds, "s");
        }

        Explained all = contractions * cycle;
        return (_settings.CountLastRest, _settings.Off) switch
        {
            (_, { Seconds: 0 }) => all,
            (true, _) => all.Resting("the rest after the last contraction counts"),
            (false, _) => (all - _off).Resting("the rest after the last contraction does not count"),
            _ => all.Lacking("whether the last rest counts"),
        };
    }
}
