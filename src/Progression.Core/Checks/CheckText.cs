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
            Lanes.Pairing => (week.VoluntaryToStim is double ratio ? $"{Number.Text(ratio, 1)}:1" : "-",
                week.StimContractions > library.Limit(LimitIds.PairingRatio).Value * week.Quads.Contractions),
            Lanes.Load => (week.QuadsChange is double change ? $"{Number.Signed(change, 0)} %" : "-",
                week.QuadsChange > library.Limit(LimitIds.LoadRise).Value),
            _ => (week.PlannedDays == 0 ? "-" : $"{Number.Text(Math.Ceiling(week.MinutesOnLongestDay))} min",
                week.MinutesOnLongestDay > library.Limit(LimitIds.MinutesPerDay).Value),
        };
        return over ? "!" + text : text;
    }
}
