using System.Collections.Immutable;
using System.Globalization;
using Progression.Core.Documents;
using Progression.Core.Reviews;
using Progression.Core.Sheets;

namespace Progression.App.Papers;

/// <summary>Every paper there is. A new one is one entry here.</summary>
public static class PaperShelf
{
    /// <summary>A week in plain words for the patient.</summary>
    public static Paper HomeSheet { get; } = OfDocument("home sheet", "a week in plain words for the patient", Sheet) with { IsOfAWeek = true };

    /// <summary>All, in the order in which they are offered.</summary>
    public static ImmutableArray<Paper> All { get; } = [HomeSheet, ExchangePapers.Measures, ExchangePapers.Sessions, ExchangePapers.Plan, ExchangePapers.Calendar];

    private static Paper OfDocument(string name, string explains, Func<PaperOrder, Document> document) => new()
    {
        Name = name,
        Explains = explains,
        Formats = [PaperFormat.Text, PaperFormat.Html],
        Make = (order, format) => PaperMade.Of(format == PaperFormat.Html
            ? DocumentHtml.Page(document(order))
            : string.Join('\n', DocumentText.Lines(document(order))) + "\n"),
    };

    private static Document Sheet(PaperOrder order) => Core.Sheets.HomeSheet.Of(
        new HomeSheetOrder
        {
            Patient = order.Patient,
            Plan = order.Plan,
            Library = order.Library,
            Words = order.Words,
            Mark = Mark(order),
            IsSigned = order.Standing.State == SignatureState.Signed,
            Clinic = order.Clinic,
            Contact = order.Contact,
        },
        order.Week);

    // In the words of the sheet; what makes it possible to check a signature is the same in every language.
    private static string Mark(PaperOrder order) => order.Standing switch
    {
        { State: SignatureState.Signed, Signature: { } signed } => order.Words.Text(
            "labels.signed",
            ("name", signed.By.Name),
            ("day", signed.At.ToUniversalTime().ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)),
            ("revision", signed.Plan.Revision.ToString(CultureInfo.InvariantCulture)))
            + $" ({SignatureWords.Short(signed.Plan.Hash)}{(order.ChainHead is { } head ? $" {SignatureWords.Short(head)}" : "")})",
        { State: SignatureState.ChangedSince } => order.Words.Text("labels.changed"),
        _ => order.Words.Text("labels.unsigned"),
    };
}
