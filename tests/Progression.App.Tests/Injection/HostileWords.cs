using System.Collections.Immutable;
using Progression.Core.People;
using Progression.Core.Plans;

namespace Progression.App.Tests.Injection;

/// <summary>A case and a plan with one text in every place that holds words of a person.</summary>
internal static class HostileWords
{
    public static Case Full(Case knee, string text) => knee with
    {
        Operation = knee.Operation with { Procedure = text },
        Surgeon = knee.Surgeon with { Text = text },
        Therapist = text,
        Stimulator = text,
        Screening = knee.Screening with
        {
            Answers = knee.Screening.Answers.ToImmutableSortedDictionary(answer => answer.Key, answer => answer.Value with { Clearance = new Clearance(text, knee.Operation.Date, text) }),
        },
        PreOp = knee.PreOp is { } before ? Full(before, text) : null,
        Assessments = [.. knee.Assessments.Select(visit => Full(visit, text))],
        Sessions = [.. knee.Sessions.Select(session => session with { Note = text })],
        FlagNotes = [new FlagNote("clot-leg", knee.Assessments[^1].Date, text, text)],
    };

    private static Assessment Full(Assessment visit, string text) => visit with
    {
        Rater = text,
        Readings = visit.Readings.ToImmutableSortedDictionary(
            pair => pair.Key, pair => pair.Value with { Rater = text, Device = text, Position = text, Corrected = [new Correction(1, visit.Date, text, text)] }, StringComparer.Ordinal),
    };

    public static PlanRevision Full(PlanRevision plan, string text) => plan with
    {
        Cells = plan.Cells.ToImmutableDictionary(
            pair => pair.Key,
            pair => pair.Value with
            {
                Basis = pair.Value.Basis with { Reason = text, WouldChange = text },
                Pin = pair.Key.Week % 2 == 0 ? new Pin(pair.Value.Content, text) : null,
            }),
    };
}
