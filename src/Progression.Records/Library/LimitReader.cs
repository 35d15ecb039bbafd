using System.Collections.Immutable;
using Progression.Core.Library;
using Progression.Records.Yaml;

namespace Progression.Records.Library;

/// <summary>Reads limits.yaml: every threshold of <see cref="LimitIds"/> in its own unit, the optional ones where they are set, and no other.</summary>
internal static class LimitReader
{
    /// <summary>Thresholds that contradict each other when the first is more than the second.</summary>
    private static readonly ImmutableArray<(string Lower, string Upper)> Ordered =
    [
        (LimitIds.HighToReducedIndex, LimitIds.ReducedToLowIndex),
        (LimitIds.ReducedToLowIndex, LimitIds.StopIndex),
        (LimitIds.ReducedToLowPreOp, LimitIds.StopPreOp),
        (LimitIds.HighToReducedPerMass, LimitIds.ReducedToLowPerMass),
        (LimitIds.ReducedToLowPerMass, LimitIds.StopPerMass),
        (LimitIds.StimReviewWeek, LimitIds.HardReviewWeek),
        (LimitIds.FlexionEarlyWeek, LimitIds.FlexionFloorWeek),
        (LimitIds.FlexionEarly, LimitIds.FlexionFloor),
        (LimitIds.FlexionFirst, LimitIds.FlexionFloor),
        (LimitIds.FlexionFirstFrom, LimitIds.FlexionFirstTo),
        (LimitIds.LagRise, LimitIds.RedFlagLagRise),
        (LimitIds.FirstReassessment, LimitIds.SecondReassessment),
        (LimitIds.CertifyWithin, LimitIds.CertifyEvery),
    ];

    private static readonly ImmutableSortedDictionary<string, string> Known = LimitIds.Units.AddRange(LimitIds.OptionalUnits);

    public static ImmutableSortedDictionary<string, Limit> Read(LibraryEntries entries)
    {
        entries.AllowOnly([.. Known.Keys]);
        entries.Require(LimitIds.Units.Keys);
        Dictionary<string, Limit> limits = [];
        foreach (LibraryEntry entry in entries.All.Where(entry => Known.ContainsKey(entry.Id)))
        {
            if (One(entry) is Limit limit)
            {
                limits.Add(entry.Id, limit);
            }
        }

        foreach ((string lower, string upper) in Ordered.Where(pair => limits.ContainsKey(pair.Lower) && limits.ContainsKey(pair.Upper)))
        {
            CheckOrder(entries, limits[lower], limits[upper]);
        }

        return limits.ToImmutableSortedDictionary(StringComparer.Ordinal);
    }

    private static Limit? One(LibraryEntry entry)
    {
        Fields fields = entry.Fields;
        string unit = Known[entry.Id];
        string? title = fields.Text("title", Need.Required);
        Amount? value = fields.As("value", Need.Required, Amount.Form("The limit", unit, LimitRanges.Of(entry.Id, unit)).Read);
        Source source = fields.Source();
        fields.Done();
        return title is null || value is null ? null : new Limit(entry.Id, title, value.Value, unit, source);
    }

    private static void CheckOrder(LibraryEntries entries, Limit lower, Limit upper)
    {
        if (lower.Value <= upper.Value)
        {
            return;
        }

        LibraryEntry first = entries.All.First(entry => entry.Id == lower.Id);
        LibraryEntry second = entries.All.First(entry => entry.Id == upper.Id);
        if (LibraryEntry.BlamesFirst(first, second))
        {
            first.Fields.Refuse("value", $"This is more than {upper.Id}, which comes after it.", $"at most {upper.Text}", lower.Text);
        }
        else
        {
            second.Fields.Refuse("value", $"This is less than {lower.Id}, which comes before it.", $"at least {lower.Text}", upper.Text);
        }
    }
}
