using Progression.Core.Caseload;
using Progression.Core.Library;
using Progression.Core.People;

namespace Progression.Core.Tests.Caseload;

/// <summary>By the shipped settings: day 7, day 21, then every 14 days; a visit two days early still counts.</summary>
public sealed class ReassessmentDaysTests
{
    private static int[] Days(Knee knee, int end) => [.. ReassessmentDays.Until(knee.Case, Knee.Library, Knee.Day(end)).Select(day => PostOpWeek.DayOf(Knee.Day(0), day))];

    [Theory]
    [InlineData(6, new int[] { })]
    [InlineData(7, new[] { 7 })]
    [InlineData(49, new[] { 7, 21, 35, 49 })]
    public void Without_a_visit_they_are_the_checkpoints_and_every_second_week(int end, int[] days) => Assert.Equal(days, Days(Knee.Well, end));

    [Theory]
    [InlineData(4, new[] { 7, 21, 35 })]
    [InlineData(5, new[] { 21, 35 })]
    [InlineData(18, new[] { 21, 35 })]
    [InlineData(19, new[] { 33 })]
    [InlineData(23, new[] { 37 })]
    public void A_visit_meets_a_checkpoint_or_moves_what_follows(int seen, int[] days) => Assert.Equal(days, Days(Knee.Well.Seen(seen, Look.Empty), 40));

    [Fact]
    public void The_first_of_them_is_what_the_list_of_cases_calls_due() => Assert.All(Enumerable.Range(0, 60), seen =>
    {
        Knee knee = Knee.Well.Seen(seen, Look.Empty);
        Assert.Contains(new CaseStandings(Knee.Library, Knee.Day(90)).Of(CaseFacts.Of(knee.Case)).Dues, due => due.Kind == DueKind.Reassessment && due.On == ReassessmentDays.Until(knee.Case, Knee.Library, Knee.Day(200))[0]);
    });

    [Theory]
    [InlineData(0, 1)]
    [InlineData(7, 1)]
    [InlineData(14, 1)]
    [InlineData(15, 2)]
    [InlineData(21, 2)]
    [InlineData(33, 3)]
    [InlineData(37, 3)]
    [InlineData(49, 4)]
    public void A_reassessment_that_moves_a_little_keeps_its_number(int day, int number) => Assert.Equal(number, ReassessmentDays.NumberOf(Knee.Day(0), Knee.Day(day), Knee.Library));

    [Fact]
    public void Settings_of_no_days_between_visits_come_to_an_end() =>
        Assert.Equal(2, ReassessmentDays.Until(Knee.Well.Case, Knee.LibraryWith(LimitIds.ReassessmentEvery, 0), Knee.Day(400)).Length);
}
