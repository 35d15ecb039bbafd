using System.Collections.Immutable;
using Progression.Core.Doses;
using Progression.Core.Library;
using Progression.Core.Plans;
using Progression.Core.Quantities;

namespace Progression.Core.Checks;

/// <summary>The text of the computed lanes.</summary>
public static class CheckText
{
    /// <summary>
    /// The figure of a check lane in a week: "1.9:1" voluntary to stimulated, "+12 %", "48 min"; a mark "!" in front when it is over its limit; "-" when
    /// there is nothing to compute.
    /// </summary>
    public static string Of(Lane lane, WeekFigures week, ClinicalLibrary library)
    {
        (string text, bool over) = lane.Id switch
        {
            Lanes.Done => ("-", false),
            Lanes.Pairing => (week.VoluntaryToStim is double ratio ? $"{Number.Text(ratio, 1)}:1" : "-",
                week.StimContractions > library.Limit(LimitIds.PairingRatio).Value * week.Quads.Contractions),
            Lanes.Load => (week.QuadsChange is double change ? $"{Number.Signed(change, 0)} %" : "-",
                week.QuadsChange > library.Limit(LimitIds.LoadRise).Value),
            _ => (week.PlannedDays == 0 ? "-" : $"{Number.Text(Math.Ceiling(week.MinutesOnLongestDay))} min",
                week.MinutesOnLongestDay > library.Limit(LimitIds.MinutesPerDay).Value),
        };
        return over ? "!" + text : text;
    }

    /// <summary>
    /// What was done of what was planned in a week, in wordings from long to short; "-" where nothing is logged. What was done at home stands only in what
    /// the person says of it.
    /// </summary>
    public static ImmutableArray<string> Of(WeekDone week)
    {
        ArgumentNullException.ThrowIfNull(week);
        if (!week.IsLogged)
        {
            return ["-"];
        }

        string stim = week.StimSessionsPlanned == 0 && week.StimSessionsDone == 0 ? "" : $"{week.StimSessionsDone}/{week.StimSessionsPlanned}";
        string work = week.ExercisesDone is int done ? $"{done}/{week.ExercisesPlanned}" : "";
        string home = week.Adherence is { } share ? $"home {Number.Text(share.Percent, 0)} %" : "";
        return
        [
            Joined(", ", stim.Length > 0 ? $"stim {stim}" : "", work.Length > 0 ? $"work {work}" : "", home),
            Joined(" ", stim.Length > 0 ? $"s {stim}" : "", work.Length > 0 ? $"w {work}" : ""),
            stim.Length > 0 ? $"s {stim}" : $"w {work}",
        ];
    }

    private static string Joined(string by, params IEnumerable<string> parts) => string.Join(by, parts.Where(part => part.Length > 0)) is { Length: > 0 } text ? text : "-";
}
