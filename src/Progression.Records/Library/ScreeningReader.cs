using System.Collections.Immutable;
using Progression.Core.Entry;
using Progression.Core.Library;
using Progression.Records.Yaml;

namespace Progression.Records.Library;

/// <summary>Reads screening.yaml. A library without a single contraindication is refused.</summary>
internal static class ScreeningReader
{
    private static readonly ImmutableArray<string> Caps = ["sessions_a_day_at_most", "contraction_share_at_most"];

    public static ImmutableArray<ScreeningItem> Read(LibraryEntries entries)
    {
        ImmutableArray<ScreeningItem> items = [.. entries.All.Select(One).OfType<ScreeningItem>()];
        if (items.Length == entries.All.Count && !items.Any(item => item.Kind == ScreeningKind.Contraindication))
        {
            entries.Refuse(new Problem("screening", "There is no contraindication left.", "at least one contraindication", ""));
        }

        return items;
    }

    private static ScreeningItem? One(LibraryEntry entry)
    {
        Fields fields = entry.Fields;
        int before = fields.Problems.Count;
        ScreeningItem item = new()
        {
            Id = entry.Id,
            Question = fields.Text("question", Need.Required, 160) ?? "",
            Kind = fields.OneOf<ScreeningKind>("kind", Need.Required) ?? ScreeningKind.Contraindication,
            Where = fields.Text("where", Need.Required) ?? "",
            Action = fields.Text("action", Need.Required, 160) ?? "",
            CanBeCleared = fields.YesNo("clearance", Need.Required) ?? false,
            SessionsPerDayAtMost = fields.Whole(Caps[0], Need.Optional, new NumberRange(1, 12, "1")),
            ContractionShareAtMost = fields.As(Caps[1], Need.Optional, QuantityText.Percentage.Within(10, 100).Read),
            Source = fields.Source(),
        };
        fields.Done();
        foreach (string cap in Caps.Where(cap => item.Kind != ScreeningKind.Precaution && fields.Has(cap)))
        {
            fields.Refuse(cap, "Only a precaution has a cap.", "nothing here, or kind: precaution", fields.Scalar(cap, Need.Optional)?.Text ?? "");
        }

        return fields.Problems.Count == before ? item : null;
    }
}
