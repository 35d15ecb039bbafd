using System.Collections.Immutable;
using Progression.Core.Findings;
using Progression.Core.Library;
using Progression.Core.Measures;
using Progression.Core.People;
using Progression.Core.Quantities;

namespace Progression.Core.Rules;

/// <summary>What the ladder rules look at on the day of an assessment.</summary>
/// <param name="Case">The case.</param>
/// <param name="Library">The clinical library, for limits and errors.</param>
/// <param name="States">The assessments up to and including the one judged, oldest first; at least one.</param>
/// <param name="Rung">The rung the person is on.</param>
/// <param name="RungSince">The day on which they came to it.</param>
public sealed record LadderFacts(Case Case, ClinicalLibrary Library, ImmutableArray<KneeState> States, Rung Rung, DateOnly RungSince)
{
    private (ImmutableArray<KneeState> Of, ImmutableArray<FlagWalk> Walks, ImmutableArray<FlagState> Flags) _walked;

    /// <summary>Last day whose notes on red flags count; all of them unless an earlier day is looked back at.</summary>
    public DateOnly NotesUpTo { get; init; } = DateOnly.MaxValue;

    /// <summary>The assessment judged.</summary>
    public KneeState Now => States[^1];

    /// <summary>The ones before it, newest first.</summary>
    public IEnumerable<KneeState> Earlier => States.Take(States.Length - 1).Reverse();

    /// <summary>The one just before it; null when it is the first.</summary>
    public KneeState? Previous => States.Length > 1 ? States[^2] : null;

    /// <summary>Whole days on the rung on the day judged.</summary>
    public int DaysOnRung => Now.Date.DayNumber - RungSince.DayNumber;

    /// <summary>Stim sessions logged up to the day judged, oldest first.</summary>
    public IEnumerable<SessionLog> Sessions => Case.StimSessions.Where(log => log.Date <= Now.Date);

    /// <summary>Sessions after the assessment before and up to the one judged, with stim or without, oldest first.</summary>
    public IEnumerable<SessionLog> SessionsSincePrevious =>
        Case.Sessions.Where(log => log.Date <= Now.Date && (Previous is null || log.Date > Previous.Date));

    /// <summary>The same case at the visit before, whose walk through the flags goes on here; null to walk from the first visit.</summary>
    internal LadderFacts? Before { get; init; }

    /// <summary>Every red flag of the library as it stands at the assessment judged; worked out once for the same states.</summary>
    internal ImmutableArray<FlagState> Flags
    {
        get
        {
            if (_walked.Of != States)
            {
                _walked = (States, Walks(), []);
                _walked.Flags = [.. _walked.Walks.Select(walk => walk.At(this))];
            }

            return _walked.Flags;
        }
    }

    private ImmutableArray<FlagWalk> Walks()
    {
        if (Before is { } before && before.States.Length == States.Length - 1)
        {
            _ = before.Flags;
            return [.. before._walked.Walks.Select(walk => walk.On(this))];
        }

        return [.. Library.RedFlags.Select(flag => FlagWalk.To(this, flag))];
    }

    /// <summary>The threshold with an id.</summary>
    public Limit Limit(string id) => Library.Limit(id);

    /// <summary>A value of a state as an input, "not measured" when missing.</summary>
    public Input Input(string measure, KneeState state)
    {
        Measure known = Library.Measures[measure];
        string unit = known.Unit is "1" or "" ? "" : " " + known.Unit;
        string value = state.Value(measure) is double number ? Number.Text(number, 1) + unit : "not measured";
        return new Input($"{known.Title}, {Day(state.Date)}", value);
    }

    /// <summary>The answer to a sign of a state as an input, "not asked" when missing.</summary>
    public static Input SignInput(string sign, KneeState state) => new($"{Signs.Questions[sign]} {Day(state.Date)}", AnswerWords(sign, state));

    /// <summary>The answer to a sign in words, "not asked" when missing.</summary>
    public static string AnswerWords(string sign, KneeState state) => state.Assessment.SignsSeen.TryGetValue(sign, out Answer answer)
        ? answer switch { Answer.Yes => "yes", Answer.No => "no", _ => "not known" }
        : "not asked";

    /// <summary>A date as shown in inputs: "2026-11-12".</summary>
    public static string Day(DateOnly date) => date.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
}
