using System.Globalization;
using System.Text;
using Progression.Core.Library;
using Progression.Records.Library;

namespace Progression.Records.Tests.Library;

public sealed class LibraryCardsTests
{
    private static readonly ClinicalLibrary Shipped = LibraryReader.Default();

    [Fact]
    public void Every_entry_has_a_card_with_source_and_standing()
    {
        IReadOnlyList<LibraryCard> cards = LibraryCards.Of(Shipped);

        Assert.Equal(
            Shipped.Limits.Count + 5 + Shipped.Regimens.Count + Shipped.Exercises.Count + Shipped.Milestones.Length + Shipped.Screening.Length + Shipped.Measures.Count + Shipped.RedFlags.Length
                + Shipped.Priors.Count + 1,
            cards.Count);
        Assert.All(cards, card => Assert.True(card["source"] is not null && card["standing"] is not null, card.Id));
    }

    [Fact]
    public void A_card_speaks_as_the_file_does()
    {
        LibraryCard usual = LibraryCards.Of(Shipped).Single(card => card.Kind == "regimen" && card.Id == "strong-15-twice-daily");

        Assert.Equal(("15 s", "7 (from memory)", "inside (from memory)", "open"), (usual["on"], usual["days_a_week"], usual["ramps"], usual["ramp_down"]));
        Assert.Equal(("yes (from memory)", "7.6 x 12.7 cm", "seen"), (usual["isometric"], usual["pad"], usual["standing"]));
        Assert.Null(usual["note"]);
    }

    /// <summary>Cards written out as a clinic's own files and laid over the shipped ones must change nothing but the version.</summary>
    [Fact]
    public void Cards_written_to_files_read_back_as_the_same_library()
    {
        using ClinicFolder clinic = ClinicFolder.Empty();
        foreach (IGrouping<string, LibraryCard> kind in LibraryCards.Of(Shipped).GroupBy(card => card.Kind))
        {
            (string part, string key) = kind.Key switch
            {
                "rung" => ("ladder", "rungs"),
                "prior" => ("forecasts", "priors"),
                "screening question" => ("screening", "screening"),
                "red flag" => ("red-flags", "flags"),
                _ => (kind.Key + "s", kind.Key + "s"),
            };
            clinic.And(part, Yaml(key, kind));
        }

        LibraryResult result = clinic.Read();

        Assert.Empty(result.Problems);
        Assert.NotEqual(Shipped.Version, result.Library!.Version);
        Assert.Equal(Shipped.Limits, result.Library.Limits);
        Assert.Equal(Shipped.Ladder, result.Library.Ladder);
        Assert.Equal(Shipped.Regimens, result.Library.Regimens);
        Assert.Equal(Shipped.Exercises, result.Library.Exercises);
        Assert.Equal(Shipped.Milestones, result.Library.Milestones);
        Assert.Equal(Shipped.Screening, result.Library.Screening);
        Assert.Equal(Shipped.Measures, result.Library.Measures);
        Assert.Equal(Fields(Shipped), Fields(result.Library));
    }

    /// <summary>Every field of every card; lists are compared by what they hold.</summary>
    private static IEnumerable<(string, LibraryCardField)> Fields(ClinicalLibrary library) =>
        LibraryCards.Of(library).SelectMany(card => card.Fields.Select(field => (card.Id, field)));

    private static string Yaml(string key, IEnumerable<LibraryCard> cards)
    {
        StringBuilder text = new($"{key}:\n");
        foreach (LibraryCard card in cards)
        {
            text.Append(CultureInfo.InvariantCulture, $"  {card.Id}:\n");
            foreach (IGrouping<string, LibraryCardField> group in card.Fields.GroupBy(field => field.Key.Split('.')[0]))
            {
                string value = group.First().Key.EndsWith(".1", StringComparison.Ordinal) ? "[ " + string.Join(", ", group.Select(field => $"\"{field.Text}\"")) + " ]"
                    : group.First().Key.Contains('.', StringComparison.Ordinal)
                    ? "{ " + string.Join(", ", group.Select(field => $"{field.Key.Split('.')[1]}: \"{field.Text}\"")) + " }"
                    : $"\"{group.First().Text}\"";
                text.Append(CultureInfo.InvariantCulture, $"    {group.Key}: {value}\n");
            }
        }

        return text.ToString();
    }
}
