using System.Collections.Immutable;
using Progression.Core.Doses;
using Progression.Core.Findings;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Core.Quantities;

namespace Progression.Core.Checks;

/// <summary>Why a cell of the lane of what was done says what it says.</summary>
internal static class WhyDone
{
    private static readonly Source Logs = new("The session logs of the case; what was done at home stands only in what the person says of it", Standing.CommonPractice);

    internal static Explanation Of(Case patient, PlanRevision plan, ClinicalLibrary library, (Lane Lane, int Week) at, ImmutableArray<Finding> findings)
    {
        WeekDone week = DoneFigures.Of(plan, patient, library)[Math.Clamp(at.Week, 1, plan.Weeks) - 1];
        return new Explanation
        {
            Heading = $"{at.Lane.Title}, week {at.Week}: {CheckText.Of(week)[0]}",
            Reasons = [week.IsLogged ? "Sessions logged in the week beside those planned." : "No session of this week is logged, so nothing is known to be done; that is not none."],
            Inputs =
            [
                new("Stim sessions", Words(week.StimSessionsDone, week.StimSessionsPlanned)),
                new("Stimulated contractions", Words(week.ContractionsDone, week.ContractionsPlanned)),
                new("Exercises", Words(week.ExercisesDone, week.ExercisesPlanned)),
                new("Home work done, as told", week.Adherence is { } share ? $"{Number.Text(share.Percent, 0)} %" : "not asked"),
            ],
            Rule = "DONE-OF-PLANNED",
            Source = Logs,
            WouldChange = "A session logged in the week.",
            Findings = findings,
        };
    }

    private static string Words(int? done, int planned) => $"{(done is int count ? $"{count}" : "not logged")} of {planned} planned";
}
