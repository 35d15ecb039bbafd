using System.Collections.Immutable;
using Progression.Core.Drafting;
using Progression.Core.Library;
using Progression.Core.Measures;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Core.Quantities;
using Progression.Core.Rules;

namespace Progression.Core.Reassessing;

/// <summary>Why a cell changes and how sure that is, in words.</summary>
internal sealed class ProposalWords
{
    private readonly Case _patient;
    private readonly ClinicalLibrary _library;
    private readonly PlanRevision _fresh;
    private readonly Admission _admission;
    private readonly string _assessment;
    private readonly int _present;

    /// <summary>The words of a proposal.</summary>
    /// <param name="patient">The case; it has an assessment.</param>
    /// <param name="library">The clinical library.</param>
    /// <param name="fresh">The plan with every change.</param>
    internal ProposalWords(Case patient, ClinicalLibrary library, PlanRevision fresh)
    {
        (_patient, _library, _fresh) = (patient, library, fresh);
        Verdict = LadderCourse.Of(patient, library, fresh.OpenFrom).Latest;
        _admission = new Admission(patient, new ExpectedCourse(patient, library, fresh.OpenFrom));
        _assessment = $"Assessment of {LadderFacts.Day(patient.Assessments[^1].Date)}";
        _present = fresh.FirstOpenWeek;
    }

    /// <summary>What the ladder comes to at the assessment; null before the first stim session.</summary>
    internal LadderVerdict? Verdict { get; }

    /// <summary>Why a cell changes.</summary>
    internal string Reason(CellAddress address, CellContent? old, CellContent? now, Basis basis)
    {
        string reason = address.Lane switch
        {
            Lanes.Stim when now is StimCell && address.Week == _present && Verdict is { } verdict =>
                $"{_assessment}: {verdict.OutcomeWords}, by the rule \"{verdict.DecidedBy.Title}\"{Figures()}. {First(basis)}",
            _ when now is ActiveCell active && (old as ActiveCell)?.Exercise == active.Exercise && address.Lane != Lanes.WithStim => $"{_assessment}: the same exercise with another dose. {Dose(active, basis)}",
            _ when now is ActiveCell active && address.Lane != Lanes.WithStim => $"{_assessment}: {First(basis)}{NeedsMet(active, address.Week)}",
            Lanes.Stim when now is StimCell => $"{_assessment}: {First(basis)}",
            _ => $"{_assessment}: {basis.Reason}",
        };
        return address.Week == _present && _fresh.OpenFrom > PostOpWeek.Start(_fresh.Operation, _present)
            ? $"{reason} It holds from {LadderFacts.Day(_fresh.OpenFrom)} on; what was done before it in this week stays as it is logged."
            : reason;
    }

    /// <summary>How sure a change is.</summary>
    internal string Confidence(CellAddress address, CellContent? now) => (address.Lane, now) switch
    {
        (Lanes.WithStim, _) => "It follows the stim of the week.",
        (Lanes.Stim, null) => "It rests on a rule, not on an estimate.",
        (Lanes.Stim, _) => OfStim(address.Week),
        (_, ActiveCell active) => OfExercise(active, address.Week),
        (_, TargetCell or SkillCell) => "A goal, not a rule.",
        _ => "It rests on what was measured and asked.",
    };

    /// <summary>The basis of a cell that is to be emptied.</summary>
    internal Basis WhyEmpty(CellAddress address)
    {
        Lane lane = Lanes.For(withStim: true).First(one => one.Id == address.Lane);
        string why = address.Lane is Lanes.Stim or Lanes.WithStim && !_fresh.StimBarred.IsEmpty ? $"Stim is barred. {string.Join(" ", _fresh.StimBarred)}"
            : address.Lane == Lanes.WithStim ? "There is no stim in this week for it to go along with, or its needs are not met."
            : lane.Slot is { } slot ? $"No exercise of this lane has its needs met: {Easiest(slot, address.Week)}."
            : "The library has no milestone for this week.";
        return new Basis("PROPOSED-EMPTY", why, [], [], new Source("A fresh draft leaves the cell empty", Standing.CommonPractice), "Another assessment, or a content of your own.");
    }

    /// <summary>The first sentences of a basis tell which exercise and what for; what follows them is the dose.</summary>
    private string Dose(ActiveCell active, Basis basis)
    {
        string purpose = _library.Exercises.GetValueOrDefault(active.Exercise)?.Purpose ?? "";
        int at = purpose.Length == 0 ? -1 : basis.Reason.IndexOf($"{purpose}. ", StringComparison.Ordinal);
        return at < 0 ? basis.Reason : basis.Reason[(at + purpose.Length + 2)..];
    }

    /// <summary>The first sentence of a basis; the cell carries the rest and tells it when asked why.</summary>
    private static string First(Basis basis) => basis.Reason.IndexOf(". ", StringComparison.Ordinal) is int end and >= 0 ? basis.Reason[..(end + 1)] : basis.Reason;

    private string NeedsMet(ActiveCell active, int week)
    {
        ImmutableArray<Judged> needs = Needs(active, week);
        return needs.IsEmpty ? "" : $" Needs: {string.Join("; ", needs.Select(need => $"{need.Words} ({string.Join(", ", need.Inputs.Select(input => input.Value))})"))}.";
    }

    private string OfStim(int week)
    {
        if (week > _present)
        {
            return "By the expected calendar; each step waits for an assessment.";
        }

        return Verdict is null ? "By the expected calendar; the ladder has not been judged yet."
            : Verdict.To <= Verdict.From ? "No step forward: it rests on the rules."
            : Verdict.FalseAdvance is double wrong ? $"{InTen(1 - wrong)} that the criterion is truly met, by its reading and error ({Verdict.WeakestCriterion}, the least certain)."
            : "The step rests on the rules; no criterion has a figure with a known error.";
    }

    private static string InTen(double chance) => (int)Math.Round(10 * chance, MidpointRounding.AwayFromZero) switch
    {
        0 => "Fewer than 1 in 10",
        10 => "More than 9 in 10",
        int tenths => $"About {tenths} in 10",
    };

    private string OfExercise(ActiveCell active, int week)
    {
        ImmutableArray<Judged> needs = Needs(active, week);
        int measured = needs.Count(need => !need.IsExpected);
        string met = needs.IsEmpty ? "It asks for nothing of the knee."
            : measured == needs.Length ? $"All {needs.Length} of its needs are met by what is known now."
            : $"{measured} of {needs.Length} needs are met by what is known now; the rest is expected by the milestones.";
        int sessions = LoadDraft.Sessions(active.Exercise, _patient, _fresh.OpenFrom);
        string load = sessions == 0 ? "Nothing is logged of its load." : $"Load from {sessions} logged session{(sessions == 1 ? "" : "s")}.";
        return _library.Exercises.GetValueOrDefault(active.Exercise)?.Progression.IsByLog == true ? $"{met} {load}" : met;
    }

    private ImmutableArray<Judged> Needs(ActiveCell active, int week) =>
        _library.Exercises.TryGetValue(active.Exercise, out Exercise? exercise) ? _admission.Judge(exercise, week) : [];

    private string Easiest(ActiveSlot slot, int week)
    {
        Exercise easiest = _library.Exercises.Values.Where(one => one.Slot == slot).MinBy(one => one.Rank)!;
        return string.Join("; ", _admission.Judge(easiest, week).Where(need => need.Truth != Truth.Holds).Select(need => need.Words));
    }

    /// <summary>The lag and the strength of the assessment beside the readings before them; empty when neither was measured.</summary>
    private string Figures()
    {
        ImmutableArray<KneeState> states = [.. _patient.Assessments.Select(one => KneeState.At(one, _patient))];
        ImmutableArray<string> told = [.. new[] { MeasureIds.Lag, MeasureIds.PreOpShare, MeasureIds.Index }.Select(measure => Figure(states, measure)).OfType<string>()];
        return told.IsEmpty ? "" : $" ({string.Join("; ", told)})";
    }

    private string? Figure(ImmutableArray<KneeState> states, string measure)
    {
        if (states[^1].Value(measure) is not double now)
        {
            return null;
        }

        Measure known = _library.Measures[measure];
        KneeState? before = states[..^1].LastOrDefault(state => state.Value(measure) is not null);
        string was = before?.Value(measure) is double old ? $", {Number.Text(old, 1)} {known.Unit} on {LadderFacts.Day(before.Date)}" : "";
        return $"{known.Title.ToLowerInvariant()} {Number.Text(now, 1)} {known.Unit}{was}";
    }
}
