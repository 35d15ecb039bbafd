using System.Collections.Immutable;
using Progression.Core.Doses;
using Progression.Core.Library;
using Progression.Core.Plans;

namespace Progression.Core.Tests.Drafting;

/// <summary>What holds for every draft, tried on seeded cases.</summary>
public sealed partial class PlanDraftTests
{
    [Fact]
    public void The_invented_knees_are_of_every_kind()
    {
        ImmutableArray<(Knee Knee, PlanRevision Plan)> all = InventedKnees.Drafted;

        Assert.InRange(all.Count(one => one.Plan.LaneOf("stim") is null), 20, 250);
        Assert.All(Enum.GetValues<Rung>(), rung => Assert.Contains(all, one => one.Plan.Cells.Values.Any(cell => cell.Content is StimCell stim && stim.Rung == rung)));
        Assert.Contains(all, one => one.Plan.FirstWeek > 4);
        Assert.Contains(all, one => one.Knee.Case.Assessments.IsEmpty);
    }

    [Fact]
    public void Stim_is_never_drafted_into_a_week_without_voluntary_quadriceps_work()
    {
        foreach ((_, PlanRevision plan) in InventedKnees.Drafted)
        {
            Assert.All(PlanFigures.Of(plan, Knee.Library), week => Assert.False(week.StimContractions > 0 && week.Quads.Contractions == 0));
        }
    }

    [Fact]
    public void A_draft_is_the_same_every_time()
    {
        foreach ((Knee knee, PlanRevision plan) in InventedKnees.Drafted)
        {
            PlanRevision again = knee.Draft();
            Assert.Equal(plan.Cells.Keys.ToHashSet(), again.Cells.Keys.ToHashSet());
            Assert.All(plan.Cells, pair => Assert.Equal((pair.Value.Content, pair.Value.Basis.Reason), (again.Cells[pair.Key].Content, again.Cells[pair.Key].Basis.Reason)));
        }
    }

    [Fact]
    public void A_fresh_draft_has_no_pairing_finding_and_no_barred_stim()
    {
        foreach ((Knee knee, PlanRevision plan) in InventedKnees.Drafted)
        {
            Assert.DoesNotContain(knee.Check(plan), finding => finding.Rule.StartsWith("PAIR-", StringComparison.Ordinal) || finding.Rule is "STIM-BARRED" or "ACTIVE-NEEDS" or "ACTIVE-NEEDS-OPEN" or "PIN-DIFFERS");
        }
    }

    [Fact]
    public void A_fresh_draft_does_not_raise_the_load_too_fast()
    {
        foreach ((Knee knee, PlanRevision plan) in InventedKnees.Drafted)
        {
            Assert.DoesNotContain(knee.Check(plan), finding => finding.Rule == "LOAD-RISE");
        }
    }

    [Fact]
    public void Nothing_is_drafted_before_the_first_day()
    {
        foreach ((_, PlanRevision plan) in InventedKnees.Drafted)
        {
            Assert.All(plan.Cells.Keys, cell => Assert.InRange(cell.Week, plan.FirstWeek, plan.Weeks));
        }
    }

    [Fact]
    public void A_day_off_never_adds_to_the_week()
    {
        foreach ((_, PlanRevision plan) in InventedKnees.Drafted)
        {
            ImmutableArray<WeekFigures> before = PlanFigures.Of(plan, Knee.Library);
            foreach ((CellAddress address, CellContent content) in Dosed(plan).Where(pair => pair.Address.Week <= plan.FirstWeek + 3))
            {
                foreach (DayOfWeek day in new[] { DayOfWeek.Monday, DayOfWeek.Thursday })
                {
                    PlanRevision off = PlanEdit.Set(plan, address, Without(content, day));
                    AssertNoMore(before[address.Week - 1], PlanFigures.Of(off, Knee.Library)[address.Week - 1]);
                }
            }
        }
    }

    [Fact]
    public void Setting_and_unpinning_gives_the_draft_back()
    {
        foreach ((_, PlanRevision plan) in InventedKnees.Drafted)
        {
            foreach (CellAddress address in plan.Cells.Keys.Where(cell => cell.Week == plan.FirstWeek).Append(new CellAddress("hip", plan.Weeks)))
            {
                PlanRevision set = PlanEdit.Set(plan, address, new SkillCell("something else"), "a reason");
                Assert.Equal(plan.At(address)?.Content, PlanEdit.Unpin(set, address).At(address)?.Content);
            }
        }
    }

    [Fact]
    public void Every_drafted_cell_is_read_back_as_it_is_written()
    {
        foreach ((_, PlanRevision plan) in InventedKnees.Drafted)
        {
            Assert.All(plan.Cells, pair => Assert.Equal(
                pair.Value.Content,
                CellNotation.Read(plan.LaneOf(pair.Key.Lane)!, plan.Text(pair.Key.Lane, pair.Key.Week), Knee.Library).Value?.Content));
        }
    }

    private static IEnumerable<(CellAddress Address, CellContent Content)> Dosed(PlanRevision plan) =>
        plan.Cells.Where(pair => pair.Value.Content is StimCell or ActiveCell).Select(pair => (pair.Key, pair.Value.Content!));

    private static CellContent Without(CellContent content, DayOfWeek day) => content switch
    {
        StimCell stim => stim with { Days = stim.Days.Without(day) },
        ActiveCell active => active with { Dose = active.Dose with { Days = active.Dose.Days.Without(day) } },
        _ => content,
    };

    private static void AssertNoMore(WeekFigures before, WeekFigures after)
    {
        Assert.True(after.StimSessions <= before.StimSessions);
        Assert.True(after.StimContractions <= before.StimContractions);
        Assert.True((after.StimMinutes ?? 0) <= (before.StimMinutes ?? 0));
        Assert.True(after.MinutesOnLongestDay <= before.MinutesOnLongestDay + 1e-9);
        Assert.All(after.Work, pair => Assert.True(
            pair.Value.Contractions <= before.Work[pair.Key].Contractions && pair.Value.Seconds <= before.Work[pair.Key].Seconds
            && pair.Value.KilogramRepetitions <= before.Work[pair.Key].KilogramRepetitions));
    }
}
