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

    /// <summary>The titles of those of some flags that are open on a day; for lists, in which only the flags are looked at that something speaks for.</summary>
    internal static ImmutableArray<string> OpenAmong(IEnumerable<RedFlag> flags, Case patient, ClinicalLibrary library, DateOnly on)
    {
        ImmutableArray<KneeState> states = [.. patient.Assessments.Where(one => one.Date <= on).Select(one => KneeState.At(one, patient))];
        if (states.IsEmpty)
        {
            return [];
        }

        LadderFacts facts = new(patient, library, states, Rung.Familiarise, states[^1].Date);
        return [.. flags.Where(flag => FlagWalk.To(facts, flag).At(facts).IsOpen).Select(flag => flag.Title)];
    }

    /// <summary>Whether a flag is open on a day. An open flag locks steps of the ladder and forecasts.</summary>
    public static bool AnyOpen(Case patient, ClinicalLibrary library, DateOnly on) => Of(patient, library, on).Any(state => state.IsOpen);
}
