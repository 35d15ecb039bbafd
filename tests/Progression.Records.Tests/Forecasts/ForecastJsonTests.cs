using System.Collections.Immutable;
using Progression.Core.Forecasts;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Records.Forecasts;
using Progression.Records.Library;

namespace Progression.Records.Tests.Forecasts;

public sealed class ForecastJsonTests
{
    private static readonly DateOnly Operated = new(2026, 3, 2);
    private static readonly ClinicalLibrary Library = LibraryReader.Default();

    /// <summary>Three visits of an invented knee: priors, own readings, the lag of two series, scores with and without a milestone.</summary>
    private static readonly ImmutableArray<KeptForecast> Ledger = Enumerable.Range(1, 4).Aggregate(
        ImmutableArray<KeptForecast>.Empty, (kept, visit) => ForecastLedger.After(kept, Seen(visit), Library, Operated.AddDays(7 * visit)));

    [Fact]
    public void A_ledger_is_read_back_as_it_was()
    {
        string text = ForecastJson.Write(Ledger);
        ImmutableArray<KeptForecast> read = ForecastJson.Read(text);

        Assert.Equal(text, ForecastJson.Write(read));
        Assert.Equal(Ledger.Select(one => (one.MadeOn, one.Measure, one.Basis, one.LibraryVersion, one.Target, one.Score)),
            read.Select(one => (one.MadeOn, one.Measure, one.Basis, one.LibraryVersion, one.Target, one.Score)));
        Assert.Contains(read, one => one.Measure == MeasureIds.Lag && one.Model.Series.Length == 2 && one.Score is null);
        Assert.Contains(read, one => one.Model.Scale == ErrorScale.Logarithmic && one.Score is not null);
    }

    [Fact]
    public void What_is_read_back_scores_as_what_was_kept()
    {
        ImmutableArray<KeptForecast> read = ForecastJson.Read(ForecastJson.Write(Ledger));

        Assert.Equal(
            ForecastLedger.After(Ledger, Seen(5), Library, Operated.AddDays(35)).Select(one => one.Score),
            ForecastLedger.After(read, Seen(5), Library, Operated.AddDays(35)).Select(one => one.Score));
    }

    [Fact]
    public void Nothing_kept_is_an_empty_ledger() => Assert.Empty(ForecastJson.Read(ForecastJson.Write([])));

    [Theory]
    [InlineData("forecasts/1", "forecasts/2")]
    [InlineData("\"scale\":\"linear\"", "\"scale\":\"ordinal\"")]
    [InlineData("\"basis\":\"population\"", "\"basis\":\"rumour\"")]
    [InlineData("\"misfit_weeks\":4", "\"misfit_weeks\":0")]
    [InlineData("\"early\":{\"sd\":15,\"value\":80,\"week\":1}", "\"early\":{\"sd\":15,\"value\":80,\"week\":12}")]
    [InlineData("\"made\":\"2026-03-09\"", "\"made\":\"2026-02-30\"")]
    [InlineData("\"correlation\":0.75", "\"correlation\":1")]
    [InlineData("\"sd\":15", "\"sd\":-15")]
    [InlineData("[", "")]
    public void A_text_of_another_form_is_refused(string piece, string by)
    {
        string text = ForecastJson.Write(Ledger);

        Assert.Contains(piece, text, StringComparison.Ordinal);
        Assert.Throws<FormatException>(() => ForecastJson.Read(text.Replace(piece, by, StringComparison.Ordinal)));
    }

    private static Case Seen(int visits) => new()
    {
        Code = CaseCode.Parse("K-001")!,
        Operation = new Operation(Operated, Side.Left, "total knee replacement"),
        PreOp = Visit(-1, (MeasureIds.QuadricepsTorque, 100)),
        Assessments =
        [
            .. Enumerable.Range(1, visits).Select(week => Visit(
                week,
                (MeasureIds.FlexionActive, 70 + (7 * week)), (MeasureIds.ExtensionActive, 18 - (3 * week)), (MeasureIds.ExtensionPassive, 8 - week),
                (MeasureIds.QuadricepsTorque, 20 + (6 * week)), ("timed_up_and_go", 25 - (2.5 * week)))),
        ],
    };

    private static Assessment Visit(int week, params IEnumerable<(string Measure, double Value)> readings) => new(
        Operated.AddDays(7 * week),
        readings.ToImmutableSortedDictionary(one => one.Measure, one => new Reading(one.Measure, one.Value), StringComparer.Ordinal),
        ImmutableSortedDictionary<string, Answer>.Empty);
}
