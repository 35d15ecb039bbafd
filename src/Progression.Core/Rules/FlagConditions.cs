using System.Collections.Immutable;
using Progression.Core.Findings;
using Progression.Core.Library;
using Progression.Core.People;

namespace Progression.Core.Rules;

/// <summary>What one visit says of a red flag, and the flags as conditions of the ladder.</summary>
internal static class FlagConditions
{
    /// <summary>A flag of the program by its id: holds while it is open.</summary>
    internal static Judged Open(LadderFacts facts, string id) => facts.Flags.First(state => state.Flag.Id == id).Open();

    /// <summary>The flags a clinic has added, together; does not hold where there is none.</summary>
    internal static Judged OpenOfClinic(LadderFacts facts) =>
        Any("a red flag of the clinic's own is open", [.. facts.Flags.Where(state => !FlagIds.Needed.Contains(state.Flag.Id)).Select(state => state.Open())]);

    /// <summary>No flag is open, and each was asked.</summary>
    internal static Judged NoneOpen(LadderFacts facts)
    {
        ImmutableArray<Judged> flags = [.. facts.Flags.Select(state => state.Open())];
        Truth any = Truths.Any(flags.Select(flag => flag.Truth));
        IEnumerable<FlagState> open = facts.Flags.Where(state => state.IsOpen);
        return new Judged("no red flag is open", (Truth)((int)Truth.Holds - (int)any), [.. flags.SelectMany(flag => flag.Inputs).Distinct()])
        {
            Margin = any == Truth.Holds ? $"open: {string.Join(", ", open.Select(state => state.Flag.Id))}; a clinician's note by name closes it" : null,
            Missing = any == Truth.NotKnown ? "answer what the red flags ask" : null,
        };
    }

    /// <summary>What the visit judged says of a flag, by its questions and, for the flags of the program, by its readings.</summary>
    internal static Judged AtVisit(RedFlag flag, LadderFacts facts)
    {
        Judged? computed = flag.Id switch
        {
            FlagIds.LagRise => LagConditions.RedFlagRise(facts),
            FlagIds.RaiseLost => SafetyConditions.LostStraightLegRaise(facts),
            FlagIds.Stiff => Any(flag.Title, [SafetyConditions.FlexionUnderFloor(facts), SafetyConditions.ExtensionOverCeiling(facts)]),
            _ => null,
        };
        return computed is null ? Asked(flag, facts) : !flag.Raising.Any() ? computed : Any(flag.Title, [computed, Asked(flag, facts)]);
    }

    /// <summary>A yes to any question raises it; a no to the question that covers all, or to every other one, is a no.</summary>
    private static Judged Asked(RedFlag flag, LadderFacts facts)
    {
        int day = PostOpWeek.DayOf(facts.Case.Operation.Date, facts.Now.Date);
        ImmutableArray<FlagQuestion> due = [.. flag.Raising.Where(one => !(day < one.FromDay))];
        ImmutableArray<FlagQuestion> yes = [.. due.Where(one => Answer(one, facts) == true)];
        ImmutableArray<FlagQuestion> detailed = [.. due.Where(one => !one.CoversAll)];
        bool no = due.Any(one => one.CoversAll && Answer(one, facts) == false) || (!detailed.IsEmpty && detailed.All(one => Answer(one, facts) == false));
        Truth truth = !yes.IsEmpty ? Truth.Holds : no ? Truth.DoesNotHold : Truth.NotKnown;
        ImmutableArray<FlagQuestion> first = due.Any(one => one.CoversAll) ? [due.First(one => one.CoversAll)] : [.. due.Where(one => Answer(one, facts) is null)];
        return new Judged(flag.Title, truth, [.. (yes.IsEmpty ? first : yes).Select(one => Input(one, facts))])
        {
            Missing = truth == Truth.NotKnown ? string.Join("; ", first.Select(one => $"ask: {one.Text}")) : null,
        };
    }

    private static bool? Answer(FlagQuestion question, LadderFacts facts) => facts.Now.Assessment.Sign(question.Id);

    private static Input Input(FlagQuestion question, LadderFacts facts) => new(
        $"{question.Text} {LadderFacts.Day(facts.Now.Date)}", LadderFacts.AnswerWords(question.Id, facts.Now));

    /// <summary>One of several is enough; told by those that hold, else by those that are not known, else by all.</summary>
    private static Judged Any(string words, ImmutableArray<Judged> all)
    {
        Truth truth = Truths.Any(all.Select(one => one.Truth));
        ImmutableArray<Judged> told = [.. all.Where(one => one.Truth == truth)];
        return new Judged(truth == Truth.Holds ? string.Join("; ", told.Select(one => one.Words)) : words, truth, [.. told.SelectMany(one => one.Inputs)])
        {
            Limits = [.. all.SelectMany(one => one.Limits).Distinct()],
            Margin = truth == Truth.NotKnown || told.Length != 1 ? null : told[0].Margin,
            Missing = truth == Truth.NotKnown ? string.Join("; ", told.Select(one => one.Missing)) : null,
        };
    }
}
