using System.Collections.Immutable;
using Progression.Core.Findings;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Core.Rules;

namespace Progression.Core.Checks;

/// <summary>What the logged sessions say of the stim that is planned next.</summary>
internal static class SessionChecks
{
    private static readonly Source Usual = new("Stim goes on healthy skin only; an irritated knee gets less until it is seen again", Standing.CommonPractice);

    internal static IEnumerable<Finding> Of(PlanFacts facts)
    {
        ImmutableArray<CellAddress> next = [.. facts.OpenWeeks.Where(week => week.StimContractions > 0).Select(week => PlanFacts.Stim(week.Week)).Take(1)];
        if (!next.IsEmpty && facts.Case.Sessions.LastOrDefault(log => log.Skin is not null) is { Skin: SkinCheck.Damaged } damaged)
        {
            yield return new Finding
            {
                Rule = "SKIN-DAMAGED",
                Severity = Severity.Severe,
                Text = $"The skin under the pads was damaged in the session of {LadderFacts.Day(damaged.Date)}: no stim on damaged skin until it is healed.",
                Inputs = [new Input($"Skin, {LadderFacts.Day(damaged.Date)}", "damaged")],
                Source = Usual,
                Cells = next,
                Cure = new Cure("Look at the skin, the pads and the current density; the finding ends with a session log whose skin check is clear", []),
            };
        }

        foreach (Judged irritated in SinceAssessment(facts).Where(one => one.Truth == Truth.Holds))
        {
            yield return new Finding
            {
                Rule = "SESSION-IRRITATION",
                Severity = Severity.Warning,
                Text = $"Since the last assessment {irritated.Words}: lower stim and load volume for a week, and reassess.",
                Inputs = irritated.Inputs,
                Limits = irritated.Limits,
                Source = Usual,
                Cells = next,
            };
        }
    }

    /// <summary>The sessions after the latest assessment, which the ladder has not read yet.</summary>
    private static ImmutableArray<Judged> SinceAssessment(PlanFacts facts)
    {
        DateOnly seen = facts.Case.Assessments.IsEmpty ? DateOnly.MinValue : facts.Case.Assessments[^1].Date;
        ImmutableArray<SessionLog> since = [.. facts.Case.Sessions.Where(log => log.Date > seen)];
        return [IrritationConditions.AfterSessions(since, facts.Library.Limit(LimitIds.PainRise)), IrritationConditions.MorningsAfter(since)];
    }
}
