using System.Collections.Immutable;
using Progression.Core.Library;
using Progression.Core.Quantities;
using Progression.Records.Yaml;

namespace Progression.Records.Library;

/// <summary>Writes every entry of a library as its fields, in the words and units of the files, so that what is shown can be typed into a clinic's own file.</summary>
public static partial class LibraryCards
{
    /// <summary>All entries, kind by kind: limits, rungs, regimens, exercises, milestones, screening questions, measures, red flags, priors of forecasts.</summary>
    public static ImmutableArray<LibraryCard> Of(ClinicalLibrary library)
    {
        ArgumentNullException.ThrowIfNull(library);
        return
        [
            .. library.Limits.Values.Select(Of), .. library.Ladder.Select(Of), .. library.Regimens.Values.Select(Of),
            .. library.Exercises.Values.OrderBy(exercise => exercise.Slot).ThenBy(exercise => exercise.Rank).Select(Of),
            .. library.Milestones.Select(milestone => Of(milestone, library)), .. library.Screening.Select(Of), .. library.Measures.Values.Select(Of),
            .. library.RedFlags.Select(Of),
            .. library.Priors.Values.Select(prior => Of(prior, library)), .. library.OwnReadings is { } start ? [Of(start)] : ImmutableArray<LibraryCard>.Empty,
        ];
    }

    private static LibraryCard Of(Limit limit) => Card("limit", limit.Id, limit.Source, ("title", limit.Title), ("value", limit.Text));

    private static LibraryCard Of(LadderRung rung) => Card(
        "rung", LadderReader.IdOf(rung.Rung), rung.Source,
        ("title", rung.Title),
        ("short", rung.Short),
        ("session_share", rung.SessionShare.ToString()),
        ("expected_weeks", Text(rung.ExpectedWeeks)));

    private static LibraryCard Of(Milestone milestone, ClinicalLibrary library) => Card(
        "milestone", milestone.Id, milestone.Source,
        ("title", milestone.Title),
        ("measure", milestone.Measure),
        ("week", Number.Text(milestone.Week)),
        ("target", milestone.Target is double target ? WithUnit(target, library.Measures[milestone.Measure!].Unit) : null),
        ("drives", YesNo(milestone.Drives)));

    private static LibraryCard Of(ScreeningItem item) => Card(
        "screening question", item.Id, item.Source,
        ("question", item.Question),
        ("kind", EnumWords.Of(item.Kind)),
        ("where", item.Where),
        ("action", item.Action),
        ("clearance", YesNo(item.CanBeCleared)),
        ("sessions_a_day_at_most", Text(item.SessionsPerDayAtMost)),
        ("contraction_share_at_most", item.ContractionShareAtMost?.ToString()));

    private static LibraryCard Of(Measure measure) => Card(
        "measure", measure.Id, measure.Source,
        ("title", measure.Title),
        ("unit", measure.Unit),
        ("better", EnumWords.Of(measure.Better)),
        ("least", Number.Text(measure.Least)),
        ("most", Number.Text(measure.Most)),
        ("whole", measure.Whole ? "yes" : null),
        ("error", EnumWords.Of(measure.Scale)),
        ("standard_error", Text(measure.StandardError)),
        ("error_of_one_trial", measure.ErrorOfOneTrial ? "yes" : null),
        ("changed.standard_error", Text(measure.Changed?.StandardError)),
        ("changed.source", measure.Changed?.Source.Text),
        ("changed.standing", Standing(measure.Changed?.Source)),
        ("real_step", Text(measure.RealStep)),
        ("confirmed_step", Text(measure.ConfirmedStep)),
        ("same_stairs", measure.SameStairs ? "yes" : null),
        ("important_gain.amount", Text(measure.ImportantGain?.Amount)),
        ("important_gain.population", measure.ImportantGain?.Population),
        ("important_gain.source", measure.ImportantGain?.Source.Text),
        ("important_gain.standing", Standing(measure.ImportantGain?.Source)),
        ("important_loss.amount", Text(measure.ImportantLoss?.Amount)),
        ("important_loss.population", measure.ImportantLoss?.Population),
        ("important_loss.source", measure.ImportantLoss?.Source.Text),
        ("important_loss.standing", Standing(measure.ImportantLoss?.Source)),
        ("note", measure.Note),
        ("published_change", measure.PublishedChange));

    private static LibraryCard Card(string kind, string id, Source source, params ReadOnlySpan<(string Key, string? Text)> fields)
    {
        ImmutableArray<LibraryCardField>.Builder given = ImmutableArray.CreateBuilder<LibraryCardField>();
        foreach ((string key, string? text) in (ReadOnlySpan<(string, string?)>)[.. fields, ("source", source.Text), ("standing", EnumWords.Of(source.Standing))])
        {
            if (text is not null)
            {
                given.Add(new LibraryCardField(key, text));
            }
        }

        return new LibraryCard(kind, id, given.ToImmutable());
    }

    private static string WithUnit(double value, string unit) => unit == "1" ? Number.Text(value) : $"{Number.Text(value)} {unit}";

    private static string? Standing(Source? source) => source is null ? null : EnumWords.Of(source.Standing);

    private static string YesNo(bool value) => value ? "yes" : "no";

    private static string? Text(double? value) => value is double number ? Number.Text(number) : null;
}
