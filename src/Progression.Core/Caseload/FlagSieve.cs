using System.Collections.Frozen;
using System.Collections.Immutable;
using Progression.Core.Library;
using Progression.Core.People;

namespace Progression.Core.Caseload;

/// <summary>
/// Tells quickly which red flags may be open for a case. It may name one that is not, never leave out one that is: a flag needs a yes to one of its
/// questions, or readings that are met here by the same limits.
/// </summary>
internal sealed class FlagSieve
{
    private readonly FrozenDictionary<string, ImmutableArray<RedFlag>> _asked;
    private readonly FrozenDictionary<string, RedFlag> _flags;
    private readonly double _lagRise;
    private readonly double _floor;
    private readonly double _ceiling;
    private readonly double _stiffFrom;

    internal FlagSieve(ClinicalLibrary library)
    {
        _flags = library.RedFlags.ToFrozenDictionary(flag => flag.Id, StringComparer.Ordinal);
        _asked = library.RedFlags.SelectMany(flag => flag.Raising.Select(question => (question.Id, flag))).GroupBy(pair => pair.Id, pair => pair.flag, StringComparer.Ordinal)
            .ToFrozenDictionary(same => same.Key, same => same.ToImmutableArray(), StringComparer.Ordinal);
        _lagRise = library.Limit(LimitIds.RedFlagLagRise).Value;
        _floor = library.Limit(LimitIds.FlexionFloor).Value;
        _ceiling = library.Limit(LimitIds.ExtensionCeiling).Value;
        _stiffFrom = library.Limit(LimitIds.FlexionFloorWeek).Value;
    }

    /// <summary>The flags that may be open; null when none may.</summary>
    internal HashSet<RedFlag>? Suspects(CaseFacts facts)
    {
        HashSet<RedFlag>? suspects = null;
        int raise = -1;
        for (int sign = 0; sign < facts.Signs.Length; sign++)
        {
            if (_asked.TryGetValue(facts.Signs[sign], out ImmutableArray<RedFlag> flags) && Answered(facts, sign, 'y'))
            {
                (suspects ??= []).UnionWith(flags);
            }

            raise = facts.Signs[sign] == Signs.StraightLegRaise ? sign : raise;
        }

        ByReadings(facts, raise, id => (suspects ??= []).Add(_flags[id]));
        return suspects;
    }

    /// <summary>Whether a sign was answered so at any visit.</summary>
    internal static bool Answered(CaseFacts facts, int sign, char answer)
    {
        foreach (VisitFacts visit in facts.Visits)
        {
            if (visit.Answers[sign] == answer)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Lag up, a raise that was there and is not, or a stiff knee.</summary>
    private void ByReadings(CaseFacts facts, int raise, Action<string> suspect)
    {
        (double least, bool able) = (double.MaxValue, false);
        foreach (VisitFacts visit in facts.Visits)
        {
            if ((visit.Day / 7) + 1 >= _stiffFrom && (visit.Flexion < _floor || visit.ExtensionPassive > _ceiling))
            {
                suspect(FlagIds.Stiff);
            }

            if (visit.Lag - least >= _lagRise)
            {
                suspect(FlagIds.LagRise);
            }

            char raised = raise < 0 ? '-' : visit.Answers[raise];
            if (able && (raised == 'n' || visit.StraightLegRaises < 1))
            {
                suspect(FlagIds.RaiseLost);
            }

            able |= raised == 'y' || visit.StraightLegRaises >= 1;
            least = Math.Min(least, visit.Lag ?? least);
        }
    }
}
