using System.Collections.Immutable;
using Progression.Core.Documents;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Core.Rules;

namespace Progression.Core.Notes;

/// <summary>A week of stim on a card for whoever sets the stimulator: settings, pads, position, dose, the last tolerated current, cautions.</summary>
public static class VisitCard
{
    private static readonly ImmutableArray<string> Always =
    [
        "Before each session: skin whole, sensation normal, nothing new since the screening.",
        "Stop on burning, a blister, dizziness, or a thigh that does not tighten.",
        Caution.Text,
    ];

    /// <summary>The card of a week.</summary>
    /// <param name="order">What it is made from.</param>
    /// <param name="week">The post-op week, from 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The plan has no such week.</exception>
    public static Document Of(NoteOrder order, int week)
    {
        ArgumentNullException.ThrowIfNull(order);
        ArgumentOutOfRangeException.ThrowIfLessThan(week, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(week, order.Plan.Weeks);
        return new Document($"Visit card, {order.Plan.Code}", order.Mark, order.Standing.State == Reviews.SignatureState.Signed,
            [.. Head(order, week), .. Settings(order, week), new Block.Notice("Cautions", Cautions(order))], "en");
    }

    private static IEnumerable<Block> Head(NoteOrder order, int week)
    {
        string clinic = string.Join(" ", new[] { order.Clinic, order.Contact is { } contact ? $"Call {contact}." : null }.OfType<string>());
        DateOnly start = PostOpWeek.Start(order.Plan.Operation, week);
        string when = FormattableString.Invariant($"{order.Knee}, post-op week {week}: {NoteOrder.Day(start)} to {NoteOrder.Day(start.AddDays(6))}; {order.Revision}");
        return [.. clinic.Length == 0 ? Array.Empty<Block>() : [new Block.Paragraph(clinic)], new Block.Paragraph(char.ToUpperInvariant(when[0]) + when[1..] + ".")];
    }

    private static IEnumerable<Block> Settings(NoteOrder order, int week)
    {
        if (order.Plan.ContentAt(Lanes.Stim, week) is StimCell { Contractions: > 0 } cell)
        {
            return [new Block.Table(["", ""], [.. StimSetting.Of(order, cell, week).Select(row => ImmutableArray.Create(row.Name, row.Value))])];
        }

        string why = order.Plan.StimBarred.IsEmpty ? "" : $" {string.Join(" ", order.Plan.StimBarred)}";
        return [new Block.Paragraph(FormattableString.Invariant($"No stim in week {week}.{why}"))];
    }

    private static ImmutableArray<string> Cautions(NoteOrder order) =>
    [
        .. StimGate.Of(order.Patient, order.Library, order.Today).Cautions,
        .. order.Patient.Surgeon.Text is { } surgeon ? new[] { $"Surgeon: {surgeon}" } : [],
        .. Always,
    ];
}
