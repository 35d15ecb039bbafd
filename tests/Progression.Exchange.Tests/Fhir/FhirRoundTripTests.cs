using System.Text;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Exchange.Fhir;
using Progression.Exchange.Import;

namespace Progression.Exchange.Tests.Fhir;

/// <summary>What leaves comes in again with the same values, to the last digit.</summary>
public sealed class FhirRoundTripTests
{
    private const int Invented = 300;

    [Fact]
    public void Every_case_of_the_demo_comes_back() => Assert.All(InventedOrders.Cases.Append(InventedOrders.Full), patient => ComesBack(InventedOrders.Drafted(patient)));

    [Fact]
    public void Invented_visits_with_every_measure_and_any_number_of_digits_come_back()
    {
        Random chance = new(20261125);
        for (int number = 0; number < Invented; number++)
        {
            ComesBack(InventedOrders.Of(InventedVisits.Of(InventedOrders.Cases[number % InventedOrders.Cases.Length], chance)));
        }
    }

    [Fact]
    public void A_measure_of_a_clinics_own_without_a_unit_of_UCUM_leaves_as_words_and_comes_back()
    {
        ClinicalLibrary own = InventedOrders.Library with
        {
            Measures = InventedOrders.Library.Measures.SetItem("heel_height", InventedOrders.Library.Measures["girth"] with { Id = "heel_height", Unit = "fingers", Least = 0, Most = 40 }),
        };
        Case patient = InventedOrders.Cases[0];
        Assessment visit = patient.Assessments[^1];
        patient = patient with { PreOp = null, Assessments = [visit with { Readings = visit.Readings.SetItem("heel_height", new Reading("heel_height", 2.5)) }] };
        byte[] bundle = Encoding.UTF8.GetBytes(FhirBundle.Text(InventedOrders.Of(patient) with { Library = own }));

        Assert.Contains("\"valueString\": \"2.5 fingers\"", Encoding.UTF8.GetString(bundle), StringComparison.Ordinal);
        Assert.Equal(2.5, FhirImport.Of(bundle, new ImportGround(patient with { Assessments = [] }, own, InventedOrders.Today), InventedOrders.Codes).Result.Case!.Assessments[0].Value("heel_height"));
    }

    [Fact]
    public void A_bundle_that_comes_twice_changes_nothing()
    {
        ImportResult again = Import(FhirBundle.Text(InventedOrders.Drafted(InventedOrders.Full)), InventedOrders.Full).Result;

        Assert.Empty(again.Problems);
        Assert.Null(again.Case);
        Assert.All(again.Lines, line => Assert.Equal(ImportFate.IsThere, line.Fate));
    }

    [Fact]
    public void A_date_of_birth_that_went_along_comes_in_where_the_case_has_none()
    {
        FhirOrder order = InventedOrders.Of(InventedOrders.Full) with { WithBirthDate = true };

        Assert.Equal(new DateOnly(1957, 5, 14), Import(FhirBundle.Text(order), InventedOrders.Full with { Born = null, Assessments = [], PreOp = null }).Result.Case!.Born);
        Assert.DoesNotContain("1957", FhirBundle.Text(order with { WithBirthDate = false }), StringComparison.Ordinal);
    }

    private static FhirImport Import(string bundle, Case into) =>
        FhirImport.Of(Encoding.UTF8.GetBytes(bundle), new ImportGround(into, InventedOrders.Library, InventedOrders.Today), InventedOrders.Codes);

    private static void ComesBack(FhirOrder order)
    {
        ImportResult read = Import(FhirBundle.Text(order), order.Patient with { PreOp = null, Assessments = [] }).Result;

        Assert.Equal([], read.Problems.Select(problem => problem.ToString()));
        Assert.Equal(Told(order.Patient), Told(read.Case!));
    }

    // Everything a bundle carries of the visits, each number with all its digits; a rater of a reading is the visit's where it has none of its own.
    private static IEnumerable<string> Told(Case patient) =>
        from visit in patient.Assessments.Append(patient.PreOp).OfType<Assessment>().OrderBy(visit => visit.Date)
        from told in visit.Readings.Values.Select(one => Told(one, visit)).Concat(visit.SignsSeen.Select(sign => $"{sign.Key} {sign.Value}"))
        select $"{visit.Date:yyyy-MM-dd} {told}";

    private static string Told(Reading one, Assessment visit) => FormattableString.Invariant(
        $"{one.Measure} {one.Value:R} of {one.Trials} [{string.Join(' ', one.Each.Select(trial => trial.ToString("R", null)))}] by {one.Rater ?? visit.Rater} with {one.Device} {one.Position} {one.Steps}");
}
