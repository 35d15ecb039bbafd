using System.Collections.Immutable;
using Progression.Core.Findings;
using Progression.Core.Library;
using Progression.Core.Measures;
using Progression.Core.People;
using Progression.Core.Quantities;

namespace Progression.Core.Rules;

/// <summary>Conditions on swelling and pain.</summary>
internal static class IrritationConditions
{
    /// <summary>Effusion up by the stated grades at once, or by one grade on the last two readings.</summary>
    internal static Judged Effusion(LadderFacts facts)
    {
        Limit rise = facts.Limit(LimitIds.EffusionRise);
        string words = $"effusion is up by at least {rise.Text} grades, or by one grade on two readings in a row";
        List<KneeState> graded = [.. facts.States.Where(state => state.Value(MeasureIds.Effusion) is not null)];
        if (facts.Now.Value(MeasureIds.Effusion) is not double now)
        {
            return new Judged(words, Truth.NotKnown, [facts.Input(MeasureIds.Effusion, facts.Now)]) { Limits = [rise], Missing = "grade the effusion" };
        }

        if (graded.Count < 2)
        {
            return new Judged(words, Truth.DoesNotHold, [facts.Input(MeasureIds.Effusion, facts.Now)]) { Limits = [rise], Margin = "no earlier grade" };
        }

        double last = Grade(graded[^2]);
        bool twice = graded.Count >= 3 && Math.Min(now, last) - Grade(graded[^3]) >= 1;
        return new Judged(words, Truths.From(now - last >= rise.Value || twice), [.. graded[^Math.Min(3, graded.Count)..].Select(state => facts.Input(MeasureIds.Effusion, state))])
        {
            Limits = [rise],
            Margin = $"{Number.Signed(now - last)} against the reading before",
        };
    }

    /// <summary>
    /// Girth up by the stated length against the visit before. The grade of effusion is what is asked for; the tape speaks where it was used at both
    /// visits, and asks for nothing where it was not.
    /// </summary>
    internal static Judged Girth(LadderFacts facts)
    {
        Limit rise = facts.Limit(LimitIds.GirthRise);
        double? up = Rise(facts, MeasureIds.Girth) is double raw ? Math.Round(raw, 6) : null; // 41.6 - 40.1 is 1.5, not a hair under the limit
        return new Judged($"girth, where it was taken now and at the visit before, is up by at least {rise.Text}", Truths.From(up is double cm && cm >= rise.Value),
            [facts.Input(MeasureIds.Girth, facts.Now), .. facts.Previous is { } before ? new[] { facts.Input(MeasureIds.Girth, before) } : []])
        {
            Limits = [rise],
            Margin = up is double change ? $"{Number.Signed(change, 1)} cm against the visit before" : "not taken at both visits",
        };
    }

    /// <summary>Pain at rest that is severe, at whatever visit.</summary>
    internal static Judged SeverePain(LadderFacts facts) => Compare.AtLeast(
        "pain at rest", facts.Now.Value(MeasureIds.PainRest), facts.Limit(LimitIds.PainRestHigh), facts.Input(MeasureIds.PainRest, facts.Now)) with
    {
        Gaps = [],
    };

    /// <summary>Pain at rest or in activity up by the stated points against the reading before.</summary>
    internal static Judged Pain(LadderFacts facts)
    {
        Limit rise = facts.Limit(LimitIds.PainRise);
        string words = $"pain at rest or in activity is up by at least {rise.Text} points";
        double?[] rises = [Rise(facts, MeasureIds.PainRest), Rise(facts, MeasureIds.PainActivity)];
        double? most = rises.Max();
        bool first = facts.Previous is null;
        Truth truth = first ? Truth.DoesNotHold : Truths.Any(rises.Select(points => Truths.From(points is null ? null : points >= rise.Value)));
        return new Judged(words, truth,
            [facts.Input(MeasureIds.PainRest, facts.Now), facts.Input(MeasureIds.PainActivity, facts.Now)])
        {
            Limits = [rise],
            Margin = first ? "no earlier reading" : most is double points ? $"{Number.Signed(points)} against the reading before" : null,
            Missing = truth == Truth.NotKnown ? "ask for pain at rest and in activity" : null,
        };
    }

    /// <summary>Not settled by next morning: as answered, or when next-morning pain is over pain at rest.</summary>
    internal static Judged NotSettled(LadderFacts facts)
    {
        bool? settled = facts.Now.Assessment.Sign(Signs.SettledByMorning)
            ?? (facts.Now.Value(MeasureIds.PainNextMorning) is double morning && facts.Now.Value(MeasureIds.PainRest) is double rest ? morning <= rest : null);
        return new Judged("pain had not settled by next morning", Truths.From(settled is null ? null : !settled),
            [LadderFacts.SignInput(Signs.SettledByMorning, facts.Now), facts.Input(MeasureIds.PainNextMorning, facts.Now)])
        {
            Missing = settled is null ? $"ask: {Signs.Questions[Signs.SettledByMorning]}" : null,
        };
    }

    /// <summary>Pain right after a session since the last assessment up by the stated points on pain before it.</summary>
    internal static Judged AfterSessions(LadderFacts facts) => AfterSessions([.. facts.SessionsSincePrevious], facts.Limit(LimitIds.PainRise));

    /// <summary>Pain the morning after a session since the last assessment above pain before it.</summary>
    internal static Judged MorningsAfter(LadderFacts facts) => MorningsAfter([.. facts.SessionsSincePrevious]);

    /// <summary>The same of given sessions.</summary>
    internal static Judged AfterSessions(ImmutableArray<SessionLog> sessions, Limit rise) => OfSessions(
        $"pain after a session is up by at least {rise.Text} points on pain before it", "log pain before and after the sessions",
        [.. sessions.Select(log => (log.Date, Rise: log.PainAfter - log.PainBefore, Irritated: Truths.From(log.PainAfter - log.PainBefore is int up ? up >= rise.Value : null)))]) with
    {
        Limits = [rise],
    };

    /// <summary>The same of given sessions.</summary>
    internal static Judged MorningsAfter(ImmutableArray<SessionLog> sessions) => OfSessions(
        "pain the morning after a session is above pain before it", "log pain before the sessions and the next morning",
        [.. sessions.Select(log => (log.Date, Rise: log.PainNextMorning - log.PainBefore, Irritated: Truths.From(log.PainNextMorning - log.PainBefore is int up ? up > 0 : null)))]);

    /// <summary>One session is enough; no session at all irritates nothing; a session whose pain was not logged leaves it not known.</summary>
    private static Judged OfSessions(string words, string missing, ImmutableArray<(DateOnly Date, int? Rise, Truth Irritated)> sessions)
    {
        Truth truth = Truths.Any(sessions.Select(one => one.Irritated));
        return new Judged(words, truth,
        [
            new Input("Sessions since the last assessment", sessions.IsEmpty ? "none logged" : $"{sessions.Length}, pain logged in {sessions.Count(one => one.Rise is not null)}"),
            .. sessions.Where(one => one.Irritated == Truth.Holds).Select(one => new Input($"Session, {LadderFacts.Day(one.Date)}", $"{Number.Signed(one.Rise!.Value)} points")),
        ])
        {
            Margin = sessions.Max(one => one.Rise) is int most ? $"{Number.Signed(most)} at most" : null,
            Missing = truth == Truth.NotKnown ? missing : null,
        };
    }

    private static double Grade(KneeState state) => state.Value(MeasureIds.Effusion)!.Value;

    private static double? Rise(LadderFacts facts, string measure) => facts.Now.Value(measure) - facts.Previous?.Value(measure);
}
