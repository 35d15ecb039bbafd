using System.Collections.Immutable;
using Progression.Core.Library;
using Progression.Core.Quantities;
using Progression.Records.Yaml;

namespace Progression.Records.Library;

public static partial class LibraryCards
{
    private static LibraryCard Of(RecoveryPrior prior, ClinicalLibrary library)
    {
        RecoveryCurve curve = prior.Curve;
        string unit = library.Measures[prior.Measure].Unit;
        return Card(
            "prior", prior.Id, prior.Source,
            ("title", prior.Title),
            ("measure", prior.Measure),
            ("use", YesNo(prior.InUse)),
            ("variant", prior.Variant),
            ("early.week", Number.Text(curve.Early.Week)),
            ("early.value", WithUnit(curve.Early.Level, unit)),
            ("early.sd", Number.Text(curve.Early.Spread)),
            ("late.week", Number.Text(curve.Late.Week)),
            ("late.value", WithUnit(curve.Late.Level, unit)),
            ("late.sd", Number.Text(curve.Late.Spread)),
            ("correlation", Number.Text(curve.Correlation)),
            ("rates", List(curve.Rates, rate => rate.Weeks)),
            ("weights", List(curve.Rates, rate => rate.Weight)),
            ("misfit.sd", Number.Text(curve.MisfitSpread)),
            ("misfit.weeks", Number.Text(curve.MisfitWeeks)),
            ("error", Text(prior.Error)),
            ("horizon", Number.Text(prior.HorizonWeek)),
            ("spread_standing", EnumWords.Of(prior.SpreadStanding)));
    }

    private static LibraryCard Of(OwnReadingsStart start) => Card(
        "prior", OwnReadingsStart.Id, start.Source,
        ("title", start.Title),
        ("readings_at_least", Number.Text(start.LeastReadings)),
        ("early.week", Number.Text(start.EarlyWeek)),
        ("early.sd", Number.Text(start.Spread)),
        ("late.week", Number.Text(start.LateWeek)),
        ("late.sd", Number.Text(start.Spread)),
        ("correlation", Number.Text(start.Correlation)),
        ("rates", List(start.Rates, rate => rate.Weeks)),
        ("weights", List(start.Rates, rate => rate.Weight)),
        ("misfit.sd", Number.Text(start.Misfit)),
        ("misfit.weeks", Number.Text(start.MisfitWeeks)),
        ("horizon", Number.Text(start.HorizonWeeks)));

    private static string List(ImmutableArray<RecoveryRate> rates, Func<RecoveryRate, double> number) =>
        string.Join(", ", rates.Select(rate => Number.Text(number(rate))));
}
