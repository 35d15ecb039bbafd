using System.Collections.Immutable;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Rules;

namespace Progression.Core.Caseload;

/// <summary>Judges the cases of a list on one day, by one library. Cheap enough for a hundred thousand: the rules of red flags run only where one may be raised.</summary>
public sealed class CaseStandings
{
    private readonly ClinicalLibrary _library;
    private readonly DateOnly _today;
    private readonly GoalCourse _goals;
    private readonly FlagSieve _sieve;
    private readonly Dictionary<Screening, ImmutableArray<string>> _screened = new(ReferenceEqualityComparer.Instance);

    /// <summary>A judge of lists.</summary>
    /// <param name="library">The clinical library.</param>
    /// <param name="today">The day.</param>
    public CaseStandings(ClinicalLibrary library, DateOnly today)
    {
        ArgumentNullException.ThrowIfNull(library);
        (_library, _today) = (library, today);
        (_goals, _sieve) = (new GoalCourse(library), new FlagSieve(library));
    }

    /// <summary>Where a case stands.</summary>
    public CaseStanding Of(CaseFacts facts)
    {
        ArgumentNullException.ThrowIfNull(facts);
        bool ended = _today > Dues.End(facts);
        ImmutableArray<Due> dues = ended ? [] : Dues.Of(facts, _library, _today);
        return new CaseStanding
        {
            Week = PostOpWeek.Of(facts.Operation, _today),
            Dues = dues,
            IsDue = !dues.IsEmpty && dues[0].On <= _today,
            Behind = ended ? [] : _goals.Behind(facts),
            Blocked = Blocked(facts, ended),
            IsUnsigned = facts.Plan is { } plan && plan.SignedRevision != plan.Revision,
            HasEnded = ended,
            Lag = Latest(facts, visit => visit.Lag),
            Flexion = Latest(facts, visit => visit.Flexion),
        };
    }

    /// <summary>An open red flag blocks whatever the plan says; what only bars stim no longer matters once the plan has ended.</summary>
    private ImmutableArray<string> Blocked(CaseFacts facts, bool ended)
    {
        HashSet<RedFlag>? suspects = _sieve.Suspects(facts);
        bool maybeNotReady = !ended && !facts.Stimulated && NotReady(facts);
        if (suspects is null && !maybeNotReady)
        {
            return ended ? [] : Screened(facts.Screening);
        }

        Case knee = KneeOfFacts.Of(facts);
        IEnumerable<string> flags = suspects is null ? [] : RedFlags.OpenAmong(suspects, knee, _library, _today).Select(title => $"Red flag: {title}.");
        return [.. flags, .. ended ? [] : Screened(facts.Screening), .. maybeNotReady ? StimGate.StartReasons(knee, _today) : []];
    }

    /// <summary>Whether a question asked before the first session was ever answered no.</summary>
    private static bool NotReady(CaseFacts facts)
    {
        for (int sign = 0; sign < facts.Signs.Length; sign++)
        {
            if (facts.Signs[sign] is Signs.SensationNormal or Signs.ContractionVisible && FlagSieve.Answered(facts, sign, 'n'))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>What screening alone bars. Many cases have the same answers, so each set of them is judged once.</summary>
    private ImmutableArray<string> Screened(Screening screening)
    {
        if (!_screened.TryGetValue(screening, out ImmutableArray<string> reasons))
        {
            _screened[screening] = reasons = [.. StimGate.ScreeningReasons(KneeOfFacts.Of(new CaseFacts { Operation = _today, Screening = screening }), _library)];
        }

        return reasons;
    }

    private static double? Latest(CaseFacts facts, Func<VisitFacts, double?> value)
    {
        for (int visit = facts.Visits.Length - 1; visit >= 0; visit--)
        {
            if (value(facts.Visits[visit]) is double known)
            {
                return known;
            }
        }

        return null;
    }
}
