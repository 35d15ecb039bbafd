using System.Collections.Immutable;
using Progression.Core.Caseload;
using Progression.Core.Documents;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Core.Reviews;

namespace Progression.Core.Notes;

/// <summary>
/// The progress note and plan of care of a case, for its record: what is planned, what is aimed at and expected, what changed, what was decided and why, what
/// was done, what is open, whether it is signed. It has no name, no day of birth and no mass: the code stands for the person.
/// </summary>
public static class ProgressNote
{
    private const int HandLines = 2;

    /// <summary>The note.</summary>
    public static Document Of(NoteOrder order)
    {
        ArgumentNullException.ThrowIfNull(order);
        return new Document($"Progress note and plan of care, {order.Plan.Code}", order.Mark, order.Standing.State == SignatureState.Signed,
        [
            .. Head(order), .. NoteDoses.Of(order), .. NoteGoals.Of(order), .. NoteChanges.Of(order), .. NotePhase.Of(order), .. NoteSessions.Of(order),
            .. NoteFindings.Of(order), .. Dues(order), .. Signature(order), new Block.Notice("Caution", [Caution.Text]),
        ], "en")
        {
            About = $"Written {NoteOrder.Day(order.Today)}",
        };
    }

    private static IEnumerable<Block> Head(NoteOrder order)
    {
        Operation operation = order.Patient.Operation;
        int week = PostOpWeek.Of(operation.Date, order.Today);
        int day = PostOpWeek.DayOf(operation.Date, order.Today);
        string clinic = string.Join(" ", new[] { order.Clinic, order.Contact is { } contact ? $"Call {contact}." : null }.OfType<string>());
        return
        [
            .. clinic.Length == 0 ? Array.Empty<Block>() : [new Block.Paragraph(clinic)],
            new Block.Paragraph($"{operation.Procedure}, {order.Knee}, {NoteOrder.Day(operation.Date)} (day 0)."),
            new Block.Paragraph(FormattableString.Invariant($"Written {NoteOrder.Day(order.Today)}: post-op day {day}, week {week}. Plan of {order.Plan.Weeks} weeks, {order.Revision}, first day {NoteOrder.Day(order.Plan.From)}.")),
            .. order.Patient.Surgeon is { } surgeon && Bounds(surgeon) is { Length: > 0 } bounds ? new Block[] { new Block.Paragraph($"Surgeon: {bounds}") } : [],
        ];
    }

    private static string Bounds(SurgeonLimits surgeon) => string.Join(" ", new[]
    {
        surgeon.FlexionAtMost is { } flexion ? $"flexion at most {flexion}." : null,
        surgeon.NoResistanceBefore is { } day ? $"No added resistance before {NoteOrder.Day(day)}." : null,
        surgeon.Text,
    }.OfType<string>());

    private static IEnumerable<Block> Dues(NoteOrder order)
    {
        CaseFacts facts = CaseFacts.Of(order.Patient) with { Plan = Outline(order) };
        ImmutableArray<Due> dues = new CaseStandings(order.Library, order.Today).Of(facts).Dues;
        yield return new Block.Heading(2, "What is due");
        yield return dues.IsEmpty
            ? new Block.Paragraph("Nothing is due by the clinic's settings.")
            : new Block.Points([.. dues.Select(due => $"{NoteOrder.Day(due.On)}{(due.On <= order.Today ? ", due" : "")}: {due.Words}. {due.Limit.Title}: {due.Limit.Text}; {due.Limit.Source}.")], InOrder: false);
    }

    private static PlanOutline Outline(NoteOrder order) => new(order.Standing.Plan.Revision, order.Plan.Weeks, string.Concat(Enumerable.Range(1, order.Plan.Weeks)
        .Select(week => order.Plan.ContentAt(Lanes.Stim, week) is StimCell { Contractions: > 0 } cell ? cell.Rung.ToString()[0] : '-')));

    private static IEnumerable<Block> Signature(NoteOrder order) =>
    [
        new Block.Heading(2, "Signature"),
        new Block.Points([.. PrintMark.Of(order.Standing, order.ChainHead), .. SignatureWords.Review(order.Standing) is { Length: > 0 } review ? new[] { review } : []], InOrder: false),
        new Block.Paragraph("Therapist who wrote this note, by hand: name, credentials, day."),
        new Block.Lines(HandLines),
    ];
}
