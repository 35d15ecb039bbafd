using System.Text;
using Ical.Net.CalendarComponents;
using Progression.Core.Entry;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Exchange.Calendar;
using Progression.Exchange.Tests.Import;

namespace Progression.Exchange.Tests.Calendar;

/// <summary>Rules of RFC 5545 by their section, from memory. What another program makes of a calendar is tried in the slow suite.</summary>
public sealed class PlanCalendarTests
{
    private static PlanRevision Plan(int weeks = 2) => SomePlan.Of(new DateOnly(2026, 3, 23), weeks).Stim(1, "mon wed fri sun", 2).Exercise(2, "mon");

    private static CalendarOrder Order(PlanRevision plan, string zone = "Europe/London") => new()
    {
        Patient = SomeKnee.Patient with { Operation = SomeKnee.Patient.Operation with { Date = plan.Operation }, PreOp = null, Assessments = [] },
        Plan = plan,
        Library = SomeKnee.Library,
        Revision = 3,
        Now = new DateTimeOffset(plan.Operation.ToDateTime(new TimeOnly(12, 0)), TimeSpan.Zero),
        Zone = zone,
    };

    private static List<CalendarEvent> Read(CalendarOrder order) => [.. Ical.Net.Calendar.Load(PlanCalendar.Of(order)!)!.Events.OrderBy(entry => entry.Start!.Value)];

    private static string Line(CalendarEvent entry) => $"{entry.Start!.Value:yyyy-MM-dd HH:mm} {entry.Status} {entry.Sequence} {entry.Summary}";

    // The plan begins the day after the operation, so its Monday falls out; the first reassessment is due on day 7.
    [Fact]
    public void Every_planned_day_and_reassessment_to_come_is_an_entry() => Assert.Equal(
        [
            "2026-03-25 09:00 CONFIRMED 3 Exercise with stim", "2026-03-27 09:00 CONFIRMED 3 Exercise with stim", "2026-03-29 09:00 CONFIRMED 3 Exercise with stim",
            "2026-03-30 00:00 CONFIRMED 3 Reassessment", "2026-03-30 09:00 CONFIRMED 3 Exercise",
        ],
        Read(Order(Plan())).Select(Line));

    [Fact]
    public void Days_that_have_been_are_left_out() =>
        Assert.Equal(2, Read(Order(Plan()) with { Now = new DateTimeOffset(2026, 3, 30, 23, 0, 0, TimeSpan.Zero) }).Count);

    [Fact]
    public void A_plan_of_which_nothing_lies_ahead_makes_no_calendar() => // section 3.6 asks for at least one entry
        Assert.Null(PlanCalendar.Of(Order(Plan()) with { Now = new DateTimeOffset(2026, 6, 1, 9, 0, 0, TimeSpan.Zero) }));

    // Clocks go forward on 29 March 2026 in London and on 8 March in New York, back on 25 October and 1 November (tz database).
    [Theory]
    [InlineData("Europe/London", 2026, 3, 23, "2026-03-28T09:00Z", "2026-03-29T08:00Z")]
    [InlineData("Europe/London", 2026, 10, 19, "2026-10-24T08:00Z", "2026-10-25T09:00Z")]
    [InlineData("America/New_York", 2026, 3, 2, "2026-03-07T14:00Z", "2026-03-08T13:00Z")]
    [InlineData("America/New_York", 2026, 10, 26, "2026-10-31T13:00Z", "2026-11-01T14:00Z")]
    public void The_hour_on_the_wall_stays_when_the_clocks_change(string zone, int year, int month, int day, string saturday, string sunday)
    {
        List<CalendarEvent> entries = Read(Order(SomePlan.Of(new DateOnly(year, month, day), 1).Stim(1, "sat sun"), zone));
        Assert.Equal([saturday, sunday], entries.Select(entry => $"{entry.Start!.AsUtc:yyyy-MM-ddTHH:mm}Z"));
        Assert.All(entries, entry => Assert.Equal(9, entry.Start!.Value.Hour));
    }

    [Fact]
    public void The_zone_part_has_every_offset_of_its_span_with_its_beginning()
    {
        string text = PlanCalendar.Of(Order(SomePlan.Of(new DateOnly(2026, 10, 19), 2).Stim(1, "daily").Stim(2, "daily")))!;
        Assert.Contains(
            "BEGIN:VTIMEZONE\r\nTZID:Europe/London\r\nBEGIN:DAYLIGHT\r\nDTSTART:20260329T010000\r\nTZNAME:BST\r\nTZOFFSETFROM:+0000\r\nTZOFFSETTO:+0100\r\nEND:DAYLIGHT\r\n"
            + "BEGIN:STANDARD\r\nDTSTART:20261025T020000\r\nTZNAME:GMT\r\nTZOFFSETFROM:+0100\r\nTZOFFSETTO:+0000\r\nEND:STANDARD\r\nEND:VTIMEZONE\r\n",
            text, StringComparison.Ordinal);
    }

    [Fact]
    public void Universal_time_needs_no_zone_part() // section 3.3.5, form 2
    {
        string text = PlanCalendar.Of(Order(Plan(), "Etc/UTC"))!;
        Assert.Contains("DTSTART:20260325T090000Z\r\n", text, StringComparison.Ordinal);
        Assert.DoesNotContain("VTIMEZONE", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Lines_end_in_CRLF_and_have_at_most_75_octets() // section 3.1
    {
        string text = PlanCalendar.Of(Order(Plan()) with { WithCode = true })!;
        Assert.Equal(text.Count(letter => letter == '\n'), text.Split("\r\n").Length - 1);
        Assert.All(text.Split("\r\n"), line => Assert.True(Encoding.UTF8.GetByteCount(line) <= 75, line));
    }

    [Fact]
    public void Nothing_names_the_person_or_the_operation_unless_the_code_is_asked_for()
    {
        string text = PlanCalendar.Of(Order(Plan()))!;
        Assert.DoesNotContain("KNEE", text, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("replacement", text, StringComparison.OrdinalIgnoreCase);
        Assert.All(Read(Order(Plan()) with { WithCode = true }), entry => Assert.StartsWith("KNEE-1: ", entry.Summary, StringComparison.Ordinal));
    }

    [Fact]
    public void Ids_stay_from_revision_to_revision_and_differ_between_cases_and_days()
    {
        string[] ids = [.. Read(Order(Plan())).Select(entry => entry.Uid!)];
        Assert.Equal(ids, Read(Order(Plan().Stim(1, "wed fri sun")) with { Revision = 4, At = new TimeOnly(17, 0) }).Select(entry => entry.Uid!));
        Assert.Equal(ids.Length, ids.Distinct().Count());
        CalendarOrder other = Order(Plan());
        Assert.Empty(ids.Intersect(Read(other with { Patient = other.Patient with { Code = CaseCode.Parse("KNEE-2")! } }).Select(entry => entry.Uid!)));
    }

    [Fact]
    public void A_day_that_was_dropped_is_called_off_and_one_that_was_not_known_is_not()
    {
        CalendarOrder now = Order(Plan().Stim(1, "fri")) with { Revision = 4 };
        Assert.DoesNotContain(Read(now), entry => entry.Status == "CANCELLED");
        Assert.Equal(
            ["2026-03-25 09:00 CANCELLED 4 Exercise with stim", "2026-03-29 09:00 CANCELLED 4 Exercise with stim"],
            Read(now with { Former = [Plan()] }).Where(entry => entry.Status == "CANCELLED").Select(Line));
    }

    [Fact]
    public void A_reassessment_that_moves_by_some_days_keeps_its_id()
    {
        CalendarOrder order = Order(SomePlan.Of(new DateOnly(2026, 3, 2), 8));
        Assert.Equal(["2026-03-09", "2026-03-23", "2026-04-06", "2026-04-20"], Read(order).Select(entry => $"{entry.Start!.Value:yyyy-MM-dd}"));
        CalendarOrder seen = order with { Patient = order.Patient with { Assessments = [SomeKnee.Visit(new DateOnly(2026, 3, 9)), SomeKnee.Visit(new DateOnly(2026, 3, 25))] } };
        Assert.Equal(["2026-04-08", "2026-04-22"], Read(seen).Select(entry => $"{entry.Start!.Value:yyyy-MM-dd}"));
        Assert.Equal(Read(order).Select(entry => entry.Uid).TakeLast(2), Read(seen).Select(entry => entry.Uid));
    }

    [Theory]
    [InlineData("europe/london", "Europe/London")]
    [InlineData("UTC", "UTC")]
    [InlineData("Zulu", "UTC")]
    [InlineData("Etc/UTC", "UTC")]
    public void Zones_are_known_by_their_names(string text, string id) => Assert.Equal(id, CalendarZone.Read("--zone", text).Value!.Id);

    [Theory]
    [InlineData("")]
    [InlineData("Mars/Base")]
    [InlineData("GMT Standard Time")]
    [InlineData("Europe/London\r\nSUMMARY:x")]
    public void Other_names_are_refused(string text) => Assert.Single(CalendarZone.Read("--zone", text).Problems.AsEnumerable<Problem>());
}
