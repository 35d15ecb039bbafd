using Progression.Core.Library;
using Progression.Core.Quantities;

namespace Progression.Core.Forecasts;

/// <summary>When a milestone will be met. Crossing weeks are of the first passage; passing once is not holding, so no phase may rest on them.</summary>
public sealed record MilestoneOutlook
{
    /// <summary>The milestone; it has a measure and a target.</summary>
    public required Milestone Milestone { get; init; }

    /// <summary>The week the chances are of: the milestone's, or the present one when that is past.</summary>
    public required double ByWeek { get; init; }

    /// <summary>Probability, 0 to 1, that the true value meets the target in that week.</summary>
    public required double ChanceTrue { get; init; }

    /// <summary>Probability, 0 to 1, that the instrument shows the target met in that week.</summary>
    public required double ChanceShown { get; init; }

    /// <summary>The week by which half of the drawn courses have met the target; null when that is not within the horizon.</summary>
    public required double? MedianWeek { get; init; }

    /// <summary>The week by which one in ten have; null when not within the horizon.</summary>
    public required double? EarlyWeek { get; init; }

    /// <summary>The week by which nine in ten have; null when not within the horizon.</summary>
    public required double? LateWeek { get; init; }

    /// <summary>Share of the courses that do not meet it within the horizon.</summary>
    public required double NotByHorizon { get; init; }

    /// <summary>The last week reckoned with.</summary>
    public required double HorizonWeek { get; init; }

    /// <summary>The outlook in words, in tenths and whole weeks: "about 5 in 10 by week 12; 2 in 10 not by week 26".</summary>
    public string Words
    {
        get
        {
            string by = ByWeek > Milestone.Week
                ? $"due in week {Whole(Milestone.Week)}, {InTen(ChanceTrue)} that it is met now"
                : $"{InTen(ChanceTrue)} by week {Whole(ByWeek)}";
            string half = ByWeek > Milestone.Week && MedianWeek > ByWeek ? $"; 5 in 10 by week {Whole(MedianWeek.Value)}" : "";
            return by + half + (Tenths(NotByHorizon) > 0 ? $"; {(Tenths(NotByHorizon) == 10 ? "more than 9" : Tenths(NotByHorizon))} in 10 not by week {Whole(HorizonWeek)}" : "");
        }
    }

    private static string InTen(double chance) => ForecastWords.InTen(chance);

    private static int Tenths(double chance) => (int)Math.Round(10 * chance, MidpointRounding.AwayFromZero);

    private static string Whole(double week) => Number.Text(week, 0);
}
