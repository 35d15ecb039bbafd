using Progression.Core.Caseload;
using Progression.Core.Findings;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Rules;

namespace Progression.Core.Tests.Caseload;

/// <summary>A list judges who is blocked from its few facts; the rules judge the whole case. They must agree.</summary>
public sealed class BlockedCasesTests
{
    [Fact]
    public void A_well_knee_is_not_blocked() => Assert.Empty(Blocked(Knee.Well.Seen(14, Look.Well), 15));

    [Fact]
    public void An_open_red_flag_blocks_until_a_note_closes_it()
    {
        Knee knee = Knee.Well.Seen(7, Look.Well).Seen(14, Look.Well.Says(Signs.InfectionSigns, Answer.Yes));
        Knee closed = new(knee.Case.With(new FlagNote("infection", Knee.Day(15), "Dr Example", "Settled.")));

        Assert.StartsWith("Red flag: ", Assert.Single(Blocked(knee, 15)), StringComparison.Ordinal);
        Assert.Empty(Blocked(closed, 16));
    }

    [Fact]
    public void Screening_that_bars_stim_blocks_and_no_longer_once_the_plan_has_ended()
    {
        Knee knee = Knee.Well.Screened("active-implant", Answer.Yes);
        PlanOutline plan = new(1, 6, "------");

        Assert.Contains(Blocked(knee, 10), reason => reason.StartsWith("No stim: ", StringComparison.Ordinal));
        Assert.Empty(Blocked(knee, 42, plan));
        Assert.NotEmpty(Blocked(knee.Seen(14, Look.Well.Says(Signs.InfectionSigns, Answer.Yes)), 42, plan));
    }

    [Fact]
    public void A_knee_that_is_not_ready_for_a_first_session_is_blocked_until_there_was_one()
    {
        Knee knee = Knee.Well.Seen(4, Look.Well.Says(Signs.SensationNormal, Answer.No));

        Assert.Contains("No stim yet", Assert.Single(Blocked(knee, 5)), StringComparison.Ordinal);
        Assert.Empty(Blocked(knee.Stimulated(5), 6));
    }

    // Thousands of knees with odd readings and answers, from a fixed seed.
    [Fact]
    public void A_list_blocks_exactly_the_cases_that_the_rules_block()
    {
        Random random = new(20261125);
        string[] signs = [Signs.ClotSigns, Signs.InfectionSigns, Signs.UrgentSigns, Signs.PopFallOrGap, Signs.StraightLegRaise, Signs.SensationNormal, "breathless", "extension_gone"];
        int blocked = 0;
        for (int round = 0; round < 2000; round++)
        {
            Knee knee = Knee.Well;
            for (int day = random.Next(3, 10); day < 60 && random.Next(5) > 0; day += random.Next(3, 16))
            {
                Look look = Look.Empty.With(MeasureIds.ExtensionPassive, random.Next(0, 14)).Lag(random.Next(0, 14)).With(MeasureIds.FlexionActive, random.Next(70, 120));
                look = random.Next(4) == 0 ? look.Without(MeasureIds.FlexionActive) : look;
                look = random.Next(3) == 0 ? look.With(MeasureIds.StraightLegRaises, random.Next(0, 3)) : look;
                knee = knee.Seen(day, signs.Where(_ => random.Next(4) == 0).Aggregate(look, (so, sign) => so.Says(sign, random.Next(4) == 0 ? Answer.Yes : random.Next(5) == 0 ? Answer.Unknown : Answer.No)));
            }

            knee = random.Next(3) == 0 ? new(knee.Case.With(new FlagNote(random.Next(2) == 0 ? "infection" : "clot-leg", Knee.Day(random.Next(0, 60)), "X", "Y"))) : knee;
            knee = random.Next(2) == 0 ? knee.Stimulated(1) : knee;
            DateOnly on = Knee.Day(60);
            bool stops = StimGate.Of(knee.Case, Knee.Library, on).Findings.Any(finding => finding.Severity == Severity.Stop);

            bool expected = stops || RedFlags.AnyOpen(knee.Case, Knee.Library, on);
            Assert.Equal(expected, Blocked(knee, 60).Count > 0);
            Assert.Equal(RedFlags.Of(knee.Case, Knee.Library, on).Count(state => state.IsOpen), Blocked(knee, 60).Count(reason => reason.StartsWith("Red flag: ", StringComparison.Ordinal)));
            blocked += expected ? 1 : 0;
        }

        Assert.InRange(blocked, 200, 1800);
    }

    private static List<string> Blocked(Knee knee, int day, PlanOutline? plan = null) =>
        [.. new CaseStandings(Knee.Library, Knee.Day(day)).Of(CaseFacts.Of(knee.Case) with { Plan = plan }).Blocked];
}
