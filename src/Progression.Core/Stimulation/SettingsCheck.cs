using System.Collections.Immutable;
using System.Globalization;
using Progression.Core.Entry;
using Progression.Core.Library;
using Progression.Core.Quantities;

namespace Progression.Core.Stimulation;

/// <summary>What cannot be true of stim settings, alone or together.</summary>
internal static class SettingsCheck
{
    internal static ImmutableArray<Problem> Problems(StimSettings settings) =>
    [
        .. Zeros(settings), .. Counts(settings), .. Ramps(settings), .. Session(settings), .. Pulses(settings), .. Bursts(settings),
    ];

    private static IEnumerable<Problem> Zeros(StimSettings s) =>
        new (string Field, string Name, double? Value, string? Shown)[]
        {
            ("on", "on-time", s.On?.Seconds, s.On?.ToString()),
            ("session", "session", s.SessionLength?.Seconds, s.SessionLength?.ToString()),
            ("pps", "rate", s.Rate?.Hertz, s.Rate?.ToString()),
            ("width", "width", s.Width?.Microseconds, s.Width?.ToString()),
            ("second-width", "width of the second phase", s.SecondWidth?.Microseconds, s.SecondWidth?.ToString()),
            ("carrier", "carrier", s.Carrier?.Hertz, s.Carrier?.ToString()),
            ("burst-duty", "burst duty", s.BurstDuty?.Percent, s.BurstDuty?.ToString()),
            ("max-voluntary", "maximal voluntary torque", s.MaximalVoluntary?.NewtonMetres, s.MaximalVoluntary?.ToString()),
        }
        .Where(each => each.Value == 0)
        .Select(each => new Problem(each.Field, $"The {each.Name} is zero.", "more than 0", each.Shown!));

    private static IEnumerable<Problem> Counts(StimSettings s) =>
        new (string Field, int? Value, int Most)[]
        {
            ("contractions", s.Contractions, StimCounts.MostContractions),
            ("per-day", s.SessionsPerDay, StimCounts.MostSessionsPerDay),
            ("days", s.DaysPerWeek, StimCounts.MostDays),
            ("weeks", s.Weeks, StimCounts.MostWeeks),
        }
        .Where(each => each.Value is { } value && (value < 1 || value > each.Most))
        .Select(each => new Problem(each.Field, "The number is out of range.", $"a whole number from 1 to {Text(each.Most)}", Text(each.Value!.Value)));

    private static IEnumerable<Problem> Ramps(StimSettings s)
    {
        double ramps = (s.RampUp?.Seconds ?? 0) + (s.RampDown?.Seconds ?? 0);
        if (s is { Ramps: RampPlacement.Inside, On: { } on } && on.Seconds < ramps)
        {
            yield return new Problem("on", "The on-time is shorter than the ramps inside it.", $"at least {Number.Text(ramps)} s, the sum of both ramps", on.ToString());
        }
    }

    private static IEnumerable<Problem> Session(StimSettings s)
    {
        if (s is not { SessionLength: { } length, Contractions: { } contractions, On: { } on, Off: { } off })
        {
            yield break;
        }

        double ramps = s.Ramps == RampPlacement.Inside ? 0 : (s.RampUp?.Seconds ?? 0) + (s.RampDown?.Seconds ?? 0);
        double least = (contractions * on.Seconds) + ((contractions - 1) * off.Seconds);
        double most = (contractions + 1) * (on.Seconds + off.Seconds + ramps);
        if (length.Seconds < least || length.Seconds > most)
        {
            yield return new Problem(
                "session", $"The session does not agree with {Text(contractions)} contractions.",
                $"{Number.Text(least)} to {Number.Text(most)} s with these on and off times, or leave one of the two out", length.ToString());
        }
    }

    private static IEnumerable<Problem> Pulses(StimSettings s)
    {
        if (s.Width is not { } width || s.Waveform is Waveform.BurstSine or Waveform.BurstTriangle)
        {
            yield break;
        }

        if (s is { Waveform: Waveform.Asymmetric, WidthIs: WidthBasis.Pulse, SecondWidth: { } second } && second >= width)
        {
            yield return new Problem("second-width", "The second phase is not shorter than the whole pulse.", $"less than {width}", second.ToString());
        }

        double pulse = width.Microseconds + (s.WidthIs != WidthBasis.Phase ? 0 : s.Waveform switch
        {
            Waveform.Symmetric => width.Microseconds,
            Waveform.Asymmetric => s.SecondWidth?.Microseconds ?? 0,
            _ => 0,
        });
        if (s.Rate is { Hertz: > 0 } rate && pulse * rate.Hertz > 1e6)
        {
            yield return new Problem("width", "The pulses would overlap.", $"whole pulses of at most {Number.Text(1e6 / rate.Hertz)} us at {Number.Text(rate.Hertz)} pps", $"{Number.Text(pulse)} us");
        }
    }

    private static IEnumerable<Problem> Bursts(StimSettings s)
    {
        if (s.BurstDuty is { Percent: > 100 } duty)
        {
            yield return new Problem("burst-duty", "The burst is longer than its period.", "more than 0 and at most 100 %", duty.ToString());
        }

        if (s is { Carrier: { } carrier, Rate: { } rate } && carrier <= rate)
        {
            yield return new Problem("carrier", "The carrier is not faster than the bursts.", $"more than {rate}", carrier.ToString());
        }
    }

    private static string Text(int value) => value.ToString(CultureInfo.InvariantCulture);
}
