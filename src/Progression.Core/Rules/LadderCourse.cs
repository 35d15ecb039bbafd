using System.Collections.Immutable;
using Progression.Core.Library;
using Progression.Core.Measures;
using Progression.Core.People;

namespace Progression.Core.Rules;

/// <summary>The way down the ladder so far, as the rules would have it: replayed from session logs and assessments.</summary>
/// <param name="Rung">The rung reached; null before the first session.</param>
/// <param name="Since">Since when; null before the first session.</param>
/// <param name="Verdicts">The verdict at each assessment since the first session, oldest first.</param>
public sealed record LadderCourse(Rung? Rung, DateOnly? Since, ImmutableArray<LadderVerdict> Verdicts)
{
    /// <summary>The latest verdict; null when there is none.</summary>
    public LadderVerdict? Latest => Verdicts.IsEmpty ? null : Verdicts[^1];

    /// <summary>
    /// The course up to a day, that day included. Familiarising starts with the first logged session; every assessment after it is judged and its
    /// step taken as the rules say. What the clinician did instead is on the plan, not here.
    /// </summary>
    public static LadderCourse Of(Case patient, ClinicalLibrary library, DateOnly upTo)
    {
        DateOnly? started = patient.StimSessions.FirstOrDefault()?.Date;
        if (started is null || started > upTo)
        {
            return new LadderCourse(null, null, []);
        }

        (Rung rung, DateOnly since) = (Library.Rung.Familiarise, started.Value);
        LadderFacts? facts = null;
        ImmutableArray<LadderVerdict>.Builder verdicts = ImmutableArray.CreateBuilder<LadderVerdict>();
        foreach (Assessment assessment in patient.Assessments.Where(assessment => assessment.Date <= upTo))
        {
            // A note on a red flag counts for the visit before it, as it did then: until the next visit has spoken.
            DateOnly known = patient.Assessments.FirstOrDefault(next => next.Date > assessment.Date)?.Date.AddDays(-1) ?? DateOnly.MaxValue;
            (rung, since) = AfterSessions(patient, library, assessment.Date, (rung, since));
            facts = new LadderFacts(patient, library, (facts?.States ?? []).Add(KneeState.At(assessment, patient)), rung, since) { NotesUpTo = known, Before = facts };
            if (assessment.Date < started)
            {
                continue;
            }

            LadderVerdict verdict = StimLadder.Judge(facts);
            verdicts.Add(verdict);
            (rung, since) = verdict.To == rung ? (rung, since) : (verdict.To, Free(patient, assessment.Date, known));
        }

        (rung, since) = AfterSessions(patient, library, upTo, (rung, since));
        return new LadderCourse(rung, since, verdicts.ToImmutable());
    }

    /// <summary>The day on which a step could be taken: that of the assessment, or of the last note that closed a flag after it.</summary>
    private static DateOnly Free(Case patient, DateOnly assessed, DateOnly known) =>
        patient.FlagNotes.Select(note => note.On).Where(day => day > assessed && day <= known).DefaultIfEmpty(assessed).Max();

    /// <summary>Familiarising ends on the day of the session that ends it, not at the next assessment.</summary>
    private static (Rung Rung, DateOnly Since) AfterSessions(Case patient, ClinicalLibrary library, DateOnly upTo, (Rung Rung, DateOnly Since) at)
    {
        int needed = (int)library.Limit(LimitIds.FamiliariseSessions).Value;
        ImmutableArray<SessionLog> logs = [.. patient.StimSessions];
        for (int i = 0; at.Rung == Library.Rung.Familiarise && i < logs.Length && logs[i].Date <= upTo; i++)
        {
            SessionLog log = logs[i];
            if (log.StrongContractionTolerated == true || (i + 1 >= needed && !string.IsNullOrWhiteSpace(log.Note)))
            {
                return (Library.Rung.HighVolume, log.Date);
            }
        }

        return at;
    }
}
