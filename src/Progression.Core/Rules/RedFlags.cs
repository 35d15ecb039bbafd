using System.Collections.Immutable;
using Progression.Core.Library;
using Progression.Core.Measures;
using Progression.Core.People;

namespace Progression.Core.Rules;

/// <summary>
/// The red flags of a case. A flag shows from the visit that answers yes until a later one answers no. A note closes it for what was seen up to the day
/// of the note; a later visit that shows it again opens it again. For the flags that readings raise, a visit that a note has closed is the new yardstick.
/// </summary>
public static class RedFlags
{
    /// <summary>Every flag of the library, in its order, by the assessments up to a day. Notes count whatever their day: they are known now.</summary>
    public static ImmutableArray<FlagState> Of(Case patient, ClinicalLibrary library, DateOnly on)
    {
        ImmutableArray<KneeState> states = [.. patient.Assessments.Where(one => one.Date <= on).Select(one => KneeState.At(one, patient))];
        return states.IsEmpty
            ? [.. library.RedFlags.Select(flag => new FlagState { Flag = flag, Raised = Truth.NotKnown })]
            : new LadderFacts(patient, library, states, Rung.Familiarise, states[^1].Date).Flags;
    }

    /// <summary>Whether a flag is open on a day. An open flag locks steps of the ladder and forecasts.</summary>
    public static bool AnyOpen(Case patient, ClinicalLibrary library, DateOnly on) => Of(patient, library, on).Any(state => state.IsOpen);

    /// <summary>The flag followed through the visits.</summary>
    internal static FlagState Of(RedFlag flag, LadderFacts facts)
    {
        ImmutableArray<FlagNote> notes = [.. facts.Case.FlagNotes.Where(note => note.Flag == flag.Id && note.On <= facts.NotesUpTo)];
        (Judged? shown, DateOnly? since, int shownAt, int yardstick) = (null, null, -1, 0);
        Judged latest = null!;
        for (int visit = 0; visit < facts.States.Length; visit++)
        {
            latest = FlagConditions.AtVisit(flag, facts with { States = facts.States[yardstick..(visit + 1)] });
            if (latest.Truth == Truth.Holds)
            {
                bool goesOn = shownAt >= 0 && !ClosedBetween(notes, facts, shownAt, visit);
                (shown, since, shownAt) = (latest, goesOn ? since : facts.States[visit].Date, visit);
            }
            else if (latest.Truth == Truth.DoesNotHold)
            {
                (shown, since, shownAt) = (null, null, -1);
            }

            yardstick = ClosedBetween(notes, facts, visit, visit + 1) ? visit : yardstick;
        }

        return new FlagState
        {
            Flag = flag,
            Raised = shown is null ? latest.Truth : Truth.Holds,
            Since = since,
            Inputs = (shown ?? latest).Inputs,
            ClosedBy = Closing(notes, facts, shownAt),
            Score = shown is null ? null : ClotScore.Of(flag, facts with { States = facts.States[..(shownAt + 1)] }),
            Shown = shown,
            Latest = latest,
        };
    }

    /// <summary>The note that closes what a visit showed: the first one on its day or after it.</summary>
    private static FlagNote? Closing(ImmutableArray<FlagNote> notes, LadderFacts facts, int shownAt) =>
        shownAt < 0 ? null : notes.FirstOrDefault(note => note.On >= facts.States[shownAt].Date);

    /// <summary>Whether a note falls on a visit or after it, but before another one; the one past the last never comes.</summary>
    private static bool ClosedBetween(ImmutableArray<FlagNote> notes, LadderFacts facts, int visit, int other)
    {
        DateOnly until = other < facts.States.Length ? facts.States[other].Date : DateOnly.MaxValue;
        return notes.Any(note => note.On >= facts.States[visit].Date && note.On < until);
    }
}
