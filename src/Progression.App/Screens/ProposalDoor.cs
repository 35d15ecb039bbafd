using Progression.App.Actions;
using Progression.App.Assess;
using Progression.App.Propose;
using Progression.App.Stores;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Core.Reassessing;
using Progression.Records.Caseload;

namespace Progression.App.Screens;

/// <summary>Opens the proposal after an assessment and saves what is decided on it.</summary>
/// <param name="room">Keeps the case.</param>
/// <param name="store">The store.</param>
/// <param name="doors">The other screens of the case.</param>
internal sealed class ProposalDoor(StoredPlan room, OpenStore store, CaseDoors doors)
{
    private const int WeeksOn = 6;

    internal Frame Open(PlanRevision standing, AssessmentReady ready)
    {
        Reassessment found = Of(standing, ready.Patient);
        FoundDraft? left = doors.Choices is null ? room.FoundForm(ProposeDraft.FormName) : null;
        ProposeState start = ProposeDraft.Restored(ProposeState.Open(ProposeDesk.Of(ready.Patient, found, store.Library)), doors.Choices ?? left?.Form);
        string notes = string.Join(" ", ready.Notes.Select(note => note.Odd));
        FormSlot slot = room.Slot(ProposeDraft.FormName);
        Frame frame = new Frame<ProposeState>(ProposeScreen.Definition, start with { Status = $"{start.Status} {notes}".Trim() })
        {
            KeepWork = state => slot.Keep(ProposeDraft.Of(state)),
            Closed = state => doors.Choices = slot.IsClosed ? null : ProposeDraft.Of(state),
            Perform = (state, effect) => effect switch
            {
                AcceptProposal accept => Save(state, (standing, ready.Patient, found), accept, slot),
                ShowComparison => Turn.Open(state, doors.Comparing(ready.Patient)),
                _ => Turn.Stay(state),
            },
        };
        return left is not null && (frame.Keep() ?? room.Forget(left.File)) is { } problem ? frame.Tell($"The draft could not be kept: {problem}") : frame;
    }

    /// <summary>A plan that ends before the assessment's week is carried on for some weeks.</summary>
    private Reassessment Of(PlanRevision standing, Case patient)
    {
        Reassessment found = Reassessment.Of(standing, patient, store.Library);
        int week = PostOpWeek.Of(patient.Operation.Date, patient.Assessments[^1].Date);
        int weeks = Math.Min(PostOpWeek.Longest, week + WeeksOn - 1);
        return found.Proposal.Value is null && weeks > standing.Weeks ? Reassessment.Of(standing, patient, store.Library, weeks) : found;
    }

    private Turn<ProposeState> Save(ProposeState state, (PlanRevision Standing, Case Patient, Reassessment Found) on, AcceptProposal accept, FormSlot slot)
    {
        (PlanRevision standing, Case patient, Reassessment found) = on;
        PlanRevision plan = found.Proposal.Value?.Accept(accept.Taken, accept.Reason)
            ?? standing with { Decision = PlanDecision.Of(patient.Assessments[^1].Date, 0, 0, accept.Reason) };
        if (room.SaveReassessment(patient, plan) is { } problem)
        {
            return Turn.Stay(state with { Status = $"Not saved: {problem}" });
        }

        string kept = slot.Close(null) is { } stays ? $" The draft of the choices could not be dropped: {stays}" : "";
        return Turn.Leave(state, new CaseSaved(patient, plan, $"Saved: the assessment, and {Taken(accept.Taken.Count)}.{kept}"));
    }

    private static string Taken(int count) => count switch
    {
        0 => "the plan stays as it was",
        1 => "1 change of the plan",
        _ => $"{count} changes of the plan",
    };
}
