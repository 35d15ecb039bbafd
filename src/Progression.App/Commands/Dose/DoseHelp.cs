using Progression.Core.Stimulation;

namespace Progression.App.Commands.Dose;

/// <summary>What the help of <c>progression dose</c> says after its options: examples and the table of JSON keys.</summary>
internal static class DoseHelp
{
    private const string Examples = """
        Examples:
          progression dose --on 15s --off 45s --contractions 15 --count-last-rest yes --per-day 2 --days 7 --weeks 6
          progression dose --pps 50 --width 250us --width-is phase --waveform symmetric --peak 60mA --pad 7.6x12.7cm
          progression dose --waveform burst-sine --pps 50 --carrier 2500Hz --burst-duty 50% --peak 60mA --json
          progression dose --regimen strong-15-twice-daily --count-last-rest yes

        A quantity is a number with a decimal point and its unit; only --pps may stand without one.
        A figure that needs a missing setting is left out, and the reason is told. Nothing is assumed.
        What a regimen's paper leaves open stays open; "progression library list" names the regimens.
        Three settings are read in two ways by different papers: --ramps, --width-is, --count-last-rest.
        On-time is counted as it is stated; ramps outside it come on top and are in current_s_session.
        Both phases of an asymmetric pulse carry the same charge; its r.m.s. value needs --second-width.
        R.m.s. and average values hold at full current. Density is of the smallest pad of the channel.

        JSON: each key below with a number or null; "cautions", a list of objects with id, severity (note or
        warning), text, limit, unit, value, source and standing; and three objects by key: "not_computed" (why
        a figure is null), "how" (formula with its numbers), "rests_on" (readings of ambiguous settings).
        """;

    private const string Exits = """
        Exit codes: 0 done, no warning; 1 done, a caution is a warning; 64 an option is refused.
        """;

    internal static string Text => $"{Examples}\n\n{Keys}\n\n{Exits}";

    private static string Keys
    {
        get
        {
            int width = FigureKinds.All.Max(kind => kind.Key.Length);
            return string.Join('\n', FigureKinds.All.Select(kind => $"  {kind.Key.PadRight(width)}  {kind.Title}{(kind.Unit.Length == 0 ? "" : $", {kind.Unit}")}"));
        }
    }
}
