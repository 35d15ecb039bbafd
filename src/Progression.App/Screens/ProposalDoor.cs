using Progression.App.Actions;
using Progression.App.Assess;
using Progression.App.Propose;
using Progression.App.Stores;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Core.Reassessing;

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
        ProposeState start = ProposeState.Open(ProposeDesk.Of(ready.Patient, found, store.Library));
        string notes = string.Join(" ", ready.Notes.Select(note => note.Odd));
        return new Frame<ProposeState>(ProposeScreen.Definition, start with { Status = notes })
        {
            Perform = (state, effect) => effect switch
            {
                AcceptProposal accept => Save(state, standing, ready.Patient, found, accept),
                ShowComparison => Turn.Open(state, doors.Comparing(ready.Patient)),
                _ => Turn.Stay(state),
            },
        };
    }

    /// <summary>A plan that ends before the assessment's week is carried on for some weeks.</summary>
    private Reassessment Of(PlanRevision standing, Case patient)
    {
        Reassessment found = Reassessment.Of(standing, patient, store.Library);
        int week = PostOpWeek.Of(patient.Operation.Date, patient.Assessments[^1].Date);
        int weeks = Math.Min(PostOpWeek.Longest, week + WeeksOn - 1);
        return found.Proposal.Value is null && weeks > standing.Weeks ? Reassessment.Of(standing, patient, store.Library, weeks) : found;
    }

    private Turn<ProposeState> Save(ProposeState state, PlanRevision standing, Case patient, Reassessment found, AcceptProposal accept)
    {
        PlanRevision plan = found.Proposal.Value?.Accept(accept.Taken, accept.Reason)
            ?? standing with { Decision = PlanDecision.Of(patient.Assessments[^1].Date, 0, 0, accept.Reason) };
        return room.SaveReassessment(patient, plan) is { } problem
            ? Turn.Stay(state with { Status = $"Not saved: {problem}" })
            : Turn.Leave(state, new CaseSaved(patient, plan, $"Saved: the assessment, and {Taken(accept.Taken.Count)}."));
    }

    private static string Taken(int count) => count switch
    {
        0 => "the plan stays as it was",
        1 => "1 change of the plan",
        _ => $"{count} changes of the plan",
    };
}
