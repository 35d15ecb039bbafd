using System.Collections.Immutable;
using Progression.Core.Library;
using Progression.Core.People;

namespace Progression.Core.Rules;

/// <summary>
/// A red flag followed through the visits, one after the other. Only notes of days before the visit reached matter on the way, so that a walk can go on
/// where the one to the visit before it has ended.
/// </summary>
internal sealed record FlagWalk
{
    private readonly RedFlag _flag;
    private readonly ImmutableArray<FlagNote> _notes;

    internal FlagWalk(RedFlag flag, Case patient) => (_flag, _notes) = (flag, [.. patient.FlagNotes.Where(note => note.Flag == flag.Id)]);

    private Judged? Latest { get; init; }

    /// <summary>The visit that showed it last; null once a later one has answered no.</summary>
    private Judged? Shown { get; init; }

    private int ShownAt { get; init; } = -1;

    private DateOnly? Since { get; init; }

    /// <summary>The walk of a flag to the visit judged. A visit that answers no wipes out what was before it, so the walk begins at the last of these.</summary>
    internal static FlagWalk To(LadderFacts facts, RedFlag flag)
    {
        FlagWalk walk = new(flag, facts.Case);
        Stack<(LadderFacts Facts, Judged Judged)> visits = [];
        for (int count = facts.States.Length; count > 0 && (visits.Count == 0 || visits.Peek().Judged.Truth != Truth.DoesNotHold); count--)
        {
            LadderFacts then = count == facts.States.Length ? facts : facts with { States = facts.States[..count] };
            visits.Push((then, walk.Judge(then)));
        }

        return visits.Aggregate(walk, (so, visit) => so.With(visit.Facts, visit.Judged));
    }

    /// <summary>The walk on to the visit judged by the facts; that of the visit before it is done.</summary>
    internal FlagWalk On(LadderFacts facts) => With(facts, Judge(facts));

    /// <summary>What a visit says; readings are compared with those since the last visit that a note has closed.</summary>
    private Judged Judge(LadderFacts facts)
    {
        int yardstick = _notes.IsEmpty ? 0 : Enumerable.Range(0, facts.States.Length - 1).LastOrDefault(visit => ClosedBetween(facts, visit, visit + 1));
        return FlagConditions.AtVisit(_flag, yardstick == 0 ? facts : facts with { States = facts.States[yardstick..] });
    }

    private FlagWalk With(LadderFacts facts, Judged latest)
    {
        int visit = facts.States.Length - 1;
        FlagWalk next = this with { Latest = latest };
        bool goesOn = ShownAt >= 0 && !ClosedBetween(facts, ShownAt, visit);
        return latest.Truth switch
        {
            Truth.Holds => next with { Shown = latest, ShownAt = visit, Since = goesOn ? Since : facts.Now.Date },
            Truth.DoesNotHold => next with { Shown = null, ShownAt = -1, Since = null },
            _ => next,
        };
    }

    /// <summary>The flag at the visit judged by the facts, to which the walk has come.</summary>
    internal FlagState At(LadderFacts facts) => new()
    {
        Flag = _flag,
        Raised = Shown is null ? Latest!.Truth : Truth.Holds,
        Since = Since,
        Inputs = (Shown ?? Latest!).Inputs,
        ClosedBy = ShownAt < 0 ? null : _notes.FirstOrDefault(note => note.On >= facts.States[ShownAt].Date && note.On <= facts.NotesUpTo),
        Score = Shown is null ? null : ClotScore.Of(_flag, facts with { States = facts.States[..(ShownAt + 1)] }),
        Shown = Shown,
        Latest = Latest!,
    };

    /// <summary>Whether a note falls on a visit or after it, but before another one.</summary>
    private bool ClosedBetween(LadderFacts facts, int visit, int other) =>
        _notes.Any(note => note.On >= facts.States[visit].Date && note.On < facts.States[other].Date);
}
