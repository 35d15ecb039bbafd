using Progression.Core.Caseload;
using Progression.Core.Library;

namespace Progression.Core.Tests.Caseload;

/// <summary>Where a case of a list stands. Settings as shipped: 1 and 3 weeks (Spector 2016), 10 treatment days (payer's rule); the others common practice.</summary>
public sealed class CaseStandingsTests
{
    private const string SixWeeksOfStim = "FHHRRL";

    // Days from the operation. A visit up to 2 days early meets its checkpoint; after the second the next is 14 days after the last visit.
    [Theory]
    [InlineData("", 7)]
    [InlineData("4", 7)]
    [InlineData("5", 21)]
    [InlineData("5 18", 21)]
    [InlineData("5 19", 33)]
    [InlineData("8 22", 36)]
    public void The_next_reassessment_is_due_after_one_week_three_weeks_and_then_every_second(string visits, int due)
    {
        CaseStanding standing = At(10, Visited(visits));

        Assert.Equal((DueKind.Reassessment, Knee.Day(due)), (standing.Next!.Kind, standing.Next.On));
    }

    [Theory]
    [InlineData(6, false)]
    [InlineData(7, true)]
    [InlineData(9, true)]
    public void It_is_due_from_its_day_on(int today, bool isDue) => Assert.Equal(isDue, At(today, Visited("")).IsDue);

    // Eleven visits, two of them on one day, are ten treatment days: the report is due on the tenth day (payer's rule, several visits of a day count once).
    [Fact]
    public void Ten_days_of_treatment_ask_for_a_reassessment_however_many_sessions_a_day_had()
    {
        int[] days = [22, 23, 24, 24, 25, 26, 27, 28, 29, 30, 31];
        Knee knee = days.Aggregate(Visited("5 20"), (so, day) => so.Stimulated(day));

        Due due = At(32, knee).Next!;

        Assert.Equal((DueKind.TreatmentDays, Knee.Day(31)), (due.Kind, due.On));
        Assert.Equal("10", due.Limit.Text);
        Assert.Equal(DueKind.Reassessment, At(32, Visited("5 20").Stimulated(15)).Next!.Kind);
        Assert.Equal(DueKind.Reassessment, At(32, days[..^1].Aggregate(Visited("5 20"), (so, day) => so.Stimulated(day))).Next!.Kind);
    }

    // Week 6 begins on day 35, week 8 on day 49. LIMITS: ladder.stim-review-week, ladder.hard-review-week.
    [Theory]
    [InlineData("FHHRRLLL--", "30", "35 49")]
    [InlineData("FHHRRLLL--", "30 36", "49")]
    [InlineData("FHHRR-----", "30", "")]
    [InlineData("FHHRRL----", "30", "35")]
    public void Stim_planned_in_week_6_or_8_is_reviewed_by_a_visit_in_that_week(string stim, string visits, string reviews)
    {
        CaseStanding standing = At(36, Visited(visits), new PlanOutline(1, 10, stim));

        Assert.Equal(
            reviews.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(day => Knee.Day(int.Parse(day))),
            standing.Dues.Where(due => due.Kind is DueKind.StimReview or DueKind.HardReview).Select(due => due.On));
    }

    [Fact]
    public void Certification_is_told_only_where_a_clinic_has_set_it_and_not_long_after_its_day()
    {
        Knee treated = Visited("5 19").Stimulated(4);
        ClinicalLibrary clinic = With(With(Knee.Library, LimitIds.CertifyWithin, 30), LimitIds.CertifyEvery, 90);

        Assert.DoesNotContain(At(20, treated).Dues, due => due.Kind == DueKind.Certification);
        Assert.Equal(Knee.Day(34), Certified(20));
        Assert.Equal(Knee.Day(34), Certified(41));
        Assert.Equal(Knee.Day(94), Certified(42));
        Assert.Equal(Knee.Day(94), Certified(101));

        DateOnly Certified(int day) => At(day, treated, new PlanOutline(1, 26, new string('-', 26)), clinic).Dues.Single(due => due.Kind == DueKind.Certification).On;
    }

    [Fact]
    public void Nothing_is_due_once_the_plan_has_ended()
    {
        PlanOutline plan = new(1, 6, SixWeeksOfStim);

        Assert.False(At(41, Visited("5 19"), plan).HasEnded);
        Assert.True(At(41, Visited("5 19"), plan).IsDue);
        CaseStanding ended = At(42, Visited("5 19"), plan);
        Assert.True(ended is { HasEnded: true, IsDue: false, Dues.IsEmpty: true });
    }

    // Flexion goal at day 14 is 90 deg; 1.28 standard errors of the shipped error of a reading lie under it. See shared/library.
    [Theory]
    [InlineData(14, 90, false)]
    [InlineData(14, 60, true)]
    [InlineData(4, 40, false)]
    public void A_reading_clearly_under_its_goal_is_behind_once_the_first_goal_is_due(int day, double flexion, bool isBehind)
    {
        CaseStanding standing = At(15, Knee.Well.Seen(day, Look.Empty.With(MeasureIds.FlexionActive, flexion)));

        Assert.Equal(isBehind, standing.Behind.Any(one => one.Measure.Id == MeasureIds.FlexionActive));
        Assert.Equal(flexion, standing.Flexion);
    }

    [Fact]
    public void The_guard_band_decides_who_is_behind()
    {
        double error = Knee.Library.Measures[MeasureIds.FlexionActive].StandardError!.Value;

        Assert.Empty(At(15, Knee.Well.Seen(14, Look.Empty.With(MeasureIds.FlexionActive, 90 - (1.28 * error) + 0.01))).Behind);
        BehindGoal behind = Assert.Single(At(15, Knee.Well.Seen(14, Look.Empty.With(MeasureIds.FlexionActive, 90 - (1.28 * error) - 0.01))).Behind);
        Assert.Equal((90, 14), (behind.Goal, behind.Day));
    }

    [Fact]
    public void A_measure_that_was_never_taken_is_not_behind_and_the_latest_reading_counts()
    {
        Knee knee = Knee.Well.Seen(14, Look.Empty.With(MeasureIds.FlexionActive, 60)).Seen(28, Look.Empty.With(MeasureIds.ExtensionPassive, 3));

        Assert.Equal([MeasureIds.FlexionActive], At(29, knee).Behind.Select(one => one.Measure.Id));
        Assert.Empty(At(29, knee.Seen(29, Look.Empty.With(MeasureIds.FlexionActive, 99))).Behind);
        Assert.Empty(At(29, Knee.Well).Behind);
    }

    [Theory]
    [InlineData(null, true)]
    [InlineData(1, true)]
    [InlineData(2, false)]
    public void A_plan_is_unsigned_until_its_latest_revision_is_signed(int? signed, bool isUnsigned)
    {
        Assert.Equal(isUnsigned, At(10, Knee.Well, new PlanOutline(2, 6, SixWeeksOfStim) { SignedRevision = signed }).IsUnsigned);
        Assert.False(At(10, Knee.Well).IsUnsigned);
    }

    private static Knee Visited(string days) => days.Split(' ', StringSplitOptions.RemoveEmptyEntries).Aggregate(Knee.Well, (knee, day) => knee.Seen(int.Parse(day), Look.Well));

    private static CaseStanding At(int day, Knee knee, PlanOutline? plan = null, ClinicalLibrary? library = null) =>
        new CaseStandings(library ?? Knee.Library, Knee.Day(day)).Of(CaseFacts.Of(knee.Case) with { Plan = plan });

    private static ClinicalLibrary With(ClinicalLibrary library, string id, double value) =>
        library with { Limits = library.Limits.SetItem(id, new Limit(id, id, value, "d", new Source("A clinic's", Standing.CommonPractice))) };
}
