using System.Collections.Immutable;
using Progression.Core.Checks;
using Progression.Core.Documents;
using Progression.Core.Findings;

namespace Progression.Core.Notes;

/// <summary>What is open: every stop, severe finding and warning on the plan as it stands, worst first.</summary>
internal static class NoteFindings
{
    internal static IEnumerable<Block> Of(NoteOrder order)
    {
        ImmutableArray<Finding> findings = PlanCheck.Check(order.Patient, order.Plan, order.Library);
        ImmutableArray<Finding> open = [.. findings.Where(finding => finding.Severity >= Severity.Warning)];
        int notes = findings.Length - open.Length;
        yield return new Block.Heading(2, "Open findings");
        yield return new Block.Paragraph(FormattableString.Invariant($"{(open.IsEmpty ? "No stop, severe finding or warning" : "On the plan as it stands")}; {notes} {(notes == 1 ? "note" : "notes")} besides."));
        if (!open.IsEmpty)
        {
            yield return new Block.Points([.. open.Select(finding => $"{finding.Severity}: {finding.Text} ({finding.Rule}{(finding.Cure is { } cure ? $"; cure: {cure.Text}" : "")})")], InOrder: false);
        }
    }
}
