using System.Collections.Immutable;
using Progression.Core.Entry;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Core.Reassessing;

namespace Progression.Core.Tests.Reassessing;

/// <summary>What is proposed after an assessment, and what comes of taking it. The steps are those of the ladder's own tests.</summary>
public sealed partial class ProposalTests
{
    private static readonly Knee First = Knee.Well.Stimulated(2, strong: true).Seen(8, Look.Well);

    // The lag is closed for the second time on day 15: the ladder steps down to reduced in week 3.
    private static readonly Knee Second = First.Seen(15, Look.Well);
    private static readonly CellAddress Stim3 = new("stim", 3);

    [Fact]
    public void A_step_down_that_is_due_is_proposed_and_its_reason_names_the_assessment()
    {
        ProposedChange step = Of(First.Draft(), Second).Changes.Single(change => change.Address == Stim3);

        Assert.Equal((Rung.HighVolume, Rung.Reduced), (((StimCell)step.Old!).Rung, ((StimCell)step.New!).Rung));
        Assert.StartsWith("Assessment of 2026-03-17: step down", step.Reason, StringComparison.Ordinal);
        Assert.Contains("extension lag 3 deg, 3 deg on 2026-03-10", step.Reason, StringComparison.Ordinal);
        Assert.Matches("^(About [0-9]|More than 9) in 10 that the criterion is truly met", step.Confidence);
        Assert.EndsWith("It holds from 2026-03-17 on; what was done before it in this week stays as it is logged.", step.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void The_contraction_along_with_stim_goes_with_its_stim()
    {
        Proposal proposal = Of(First.Draft(), Second);
        CellAddress along = Stim3 with { Lane = "with-stim" };

        Assert.Equal(Stim3, proposal.Changes.Single(change => change.Address == along).With);
        Assert.Equal("reduced 15x1 daily", proposal.Accept(Set(Stim3), null).Text("stim", 3));
        Assert.Contains("1x15", proposal.Accept(Set(Stim3), null).Text("with-stim", 3), StringComparison.Ordinal);
        Assert.DoesNotContain("2/day", proposal.Accept(Set(Stim3), null).Text("with-stim", 3), StringComparison.Ordinal);
        Assert.Equal(0, proposal.Accept(Set(along), "not now").Decision!.Taken);
    }

    [Fact]
    public void Past_weeks_are_the_same_text_as_before()
    {
        PlanRevision standing = First.Draft();

        PlanRevision next = Of(standing, Second).AcceptAll();

        Assert.Equal(Weeks(standing, 1, 2), Weeks(next, 1, 2));
        Assert.NotEqual(Weeks(standing, 3, 6), Weeks(next, 3, 6));
        Assert.Equal((standing.From, Knee.Day(15), 3), (next.From, next.OpenFrom, next.FirstOpenWeek));
    }

    [Fact]
    public void Taking_names_the_assessment_and_counts_what_was_taken()
    {
        Proposal proposal = Of(First.Draft(), Second);

        PlanDecision all = proposal.AcceptAll().Decision!;
        PlanDecision one = proposal.Accept(Set(Stim3), "the rest later").Decision!;

        Assert.Equal((Knee.Day(15), proposal.Open.Count(), proposal.Open.Count(), null), (all.Assessment, all.Proposed, all.Taken, all.Reason));
        Assert.Equal((2, "the rest later"), (one.Taken, one.Reason));
    }

    [Fact]
    public void Refusing_everything_asks_for_a_reason_and_changes_no_cell()
    {
        PlanRevision standing = First.Draft();
        Proposal proposal = Of(standing, Second);

        Assert.Throws<ArgumentException>(() => proposal.Accept(Set(), "  "));
        PlanRevision kept = proposal.Accept(Set(), "the skin is sore");

        Assert.Same(standing.Cells, kept.Cells);
        Assert.Equal((0, "the skin is sore", Knee.Day(15)), (kept.Decision!.Taken, kept.Decision.Reason, kept.OpenFrom));
        Assert.Equal(proposal.Changes.Select(Told), Of(kept, Second).Changes.Select(Told));
    }

    [Fact]
    public void A_pinned_cell_is_kept_and_its_disagreement_is_shown()
    {
        PlanRevision pinned = PlanEdit.Set(First.Draft(), Stim3, Grid.Read(First.Draft(), "stim", "high 12x2 daily"), "skin");

        Proposal proposal = Of(pinned, Second);
        ProposedChange shown = proposal.Changes.Single(change => change.Address == Stim3);
        PlanRevision next = proposal.AcceptAll();

        Assert.True(shown.IsPinned);
        Assert.Equal(Rung.Reduced, ((StimCell)shown.New!).Rung);
        Assert.Equal(("high 12x2 daily", "skin"), (next.Text("stim", 3), next.At(Stim3)!.Pin!.Reason));
        Assert.Equal(Rung.Reduced, ((StimCell)next.At(Stim3)!.Pin!.Suggested!).Rung);
        Assert.Contains("1x12", next.Text("with-stim", 3), StringComparison.Ordinal); // it goes along with the pinned stim
        Assert.Throws<ArgumentException>(() => proposal.Accept(Set(Stim3), null));
    }

    [Fact] // Lag up from 3 to 15 deg with full passive extension refers and locks (reference part 6, at least 10 deg).
    public void A_red_flag_locks_every_step_forward()
    {
        PlanRevision standing = First.Draft(8);
        Knee flagged = First.Seen(15, Look.Well.Lag(15));

        Proposal proposal = Of(standing, flagged);

        Assert.DoesNotContain(proposal.Fresh.Cells.Where(pair => pair.Key.Week >= 3).Select(pair => pair.Value.Content).OfType<StimCell>(), stim => stim.Rung > Rung.HighVolume);
        Assert.All(proposal.Open.Where(change => change.New is ActiveCell), change => Assert.True(RankIn(change.New!) <= RankIn(standing.ContentAt(change.Address.Lane, 2)!)));
    }

    [Fact] // Flexion of 85 deg in week 7 is under the floor of 90 (Tibbo 2019): it locks but does not bar stim.
    public void A_stiff_knee_holds_its_rung_and_its_exercises()
    {
        Knee before = First.Seen(15, Look.Well);
        PlanRevision standing = before.Draft(12);
        Knee stiff = before.Seen(43, Look.Well.With(MeasureIds.FlexionActive, 85));

        Proposal proposal = Of(standing, stiff);

        Assert.Equal([Rung.Reduced], Enumerable.Range(7, 6).Select(week => ((StimCell)proposal.Fresh.ContentAt("stim", week)!).Rung).Distinct());
        Assert.Contains("a red flag is open", proposal.Fresh.At(new CellAddress("stim", 9))!.Basis.Reason, StringComparison.Ordinal);
        Assert.Single(Enumerable.Range(7, 6).Select(week => proposal.Fresh.Text("calf", week)).Distinct());
    }

    [Fact]
    public void Stim_that_is_barred_by_now_is_proposed_away_with_the_reason()
    {
        Proposal proposal = Of(First.Draft(), Second.Screened("clot", Answer.Yes));
        PlanRevision next = proposal.AcceptAll();

        Assert.All(Enumerable.Range(3, 4), week => Assert.Null(next.ContentAt("stim", week)));
        Assert.Contains("Stim is barred.", proposal.Changes.First(change => change.Address == Stim3).Reason, StringComparison.Ordinal);
        Assert.NotEmpty(next.StimBarred);
        Assert.NotNull(next.LaneOf("stim"));
    }

    [Fact]
    public void Stim_that_is_allowed_by_now_brings_its_lanes()
    {
        Knee barred = Knee.Well.Screened("clot", Answer.Yes).Seen(8, Look.Well);
        PlanRevision standing = barred.Draft();
        Knee clear = barred.Screened("clot", Answer.No).Seen(15, Look.Well);

        PlanRevision next = Of(standing, clear).Accept(Set(Stim3), null);

        Assert.Null(standing.LaneOf("stim"));
        Assert.NotNull(next.LaneOf("with-stim"));
        Assert.IsType<StimCell>(next.ContentAt("stim", 3));
        Assert.IsType<ActiveCell>(next.ContentAt("with-stim", 3));
    }

    [Fact]
    public void A_plan_that_ends_with_the_assessments_week_asks_for_more_weeks()
    {
        Entered<Proposal> tooShort = Proposal.Of(First.Draft(3), Second.Case, Knee.Library);

        Assert.Equal(
            "weeks: The assessment of 2026-03-17 lies in week 3, and the plan has no week after it. Ask for more weeks. Allowed: 4 to 26 weeks. Found: \"3\".",
            Assert.Single(tooShort.Problems).ToString());
        PlanRevision longer = Proposal.Of(First.Draft(3), Second.Case, Knee.Library, weeks: 8).Value!.AcceptAll();
        Assert.Equal(8, longer.Weeks);
        Assert.IsType<ActiveCell>(longer.ContentAt("bend", 8));
        Assert.Equal("weeks", Assert.Single(Proposal.Of(First.Draft(8), Second.Case, Knee.Library, weeks: 6).Problems).Field);
    }

    [Fact]
    public void Without_an_assessment_there_is_no_proposal() =>
        Assert.Equal("assessments", Assert.Single(Proposal.Of(Knee.Well.Draft(), Knee.Well.Case, Knee.Library).Problems).Field);

    // Milestones of flexion: 80 deg at week 1, 90 at 2, 95 at 3 (library). 70 deg on day 22 is over two weeks behind, far outside the error of one reading.
    [Fact]
    public void A_knee_that_is_clearly_behind_gets_later_dates_and_one_that_is_not_keeps_them()
    {
        PlanRevision standing = First.Draft(8);

        Proposal behind = Of(standing, First.Seen(22, Look.Well.With(MeasureIds.FlexionActive, 78)));
        Proposal nearly = Of(standing, First.Seen(22, Look.Well.With(MeasureIds.FlexionActive, 93)));

        Assert.Contains(behind.Changes, change => change.Address.Lane == "flexion" && change.Reason.Contains("The knee is clearly behind", StringComparison.Ordinal) && change.Confidence == "A goal, not a rule.");
        Assert.True(((TargetCell)behind.Fresh.ContentAt("flexion", 5)!).Value < ((TargetCell)standing.ContentAt("flexion", 5)!).Value);
        Assert.DoesNotContain(nearly.Changes, change => change.Address.Lane == "flexion");
    }

    [Fact]
    public void The_confidence_of_an_exercise_tells_what_is_known_and_what_is_expected()
    {
        Proposal proposal = Of(First.Draft(8), First.Seen(22, Look.Well.With(MeasureIds.FlexionActive, 88)));

        Assert.Contains(proposal.Changes, change => change.New is ActiveCell && change.Confidence.Contains("the rest is expected by the milestones", StringComparison.Ordinal));
        Assert.Contains(proposal.Changes, change => change.New is ActiveCell && change.Confidence.StartsWith("All ", StringComparison.Ordinal));
    }

    private static int RankIn(CellContent content) => Knee.Library.Exercises[((ActiveCell)content).Exercise].Rank;

    private static Proposal Of(PlanRevision standing, Knee knee) =>
        Proposal.Of(standing, knee.Case, Knee.Library) is var entered && entered.Value is { } proposal ? proposal : throw new InvalidOperationException(entered.Problems[0].ToString());

    private static HashSet<CellAddress> Set(params CellAddress[] cells) => [.. cells];

    private static (CellAddress, CellContent?, CellContent?, string, string, bool, CellAddress?) Told(ProposedChange change) =>
        (change.Address, change.Old, change.New, change.Reason, change.Confidence, change.IsPinned, change.With);

    private static string Weeks(PlanRevision plan, int from, int to) =>
        Records.Plans.PlanJson.Write(plan with { OpenFrom = plan.From, Decision = null, LibraryVersion = "", StimBarred = [], Cells = plan.Cells.Where(pair => pair.Key.Week >= from && pair.Key.Week <= to).ToImmutableDictionary() });
}
