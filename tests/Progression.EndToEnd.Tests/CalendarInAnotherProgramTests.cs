using Progression.Core.Plans;
using Progression.Exchange.Calendar;
using Progression.Exchange.Tests.Import;

namespace Progression.EndToEnd.Tests;

/// <summary>A calendar read by Debian's python3-icalendar, with the moments reckoned from the time zone that the file carries.</summary>
public sealed class CalendarInAnotherProgramTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("calendar-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    // When the clocks change: the time zone database. In Morocco they stand back for Ramadan, in 2026 from 15 February to 22 March.
    [Theory]
    [InlineData("Europe/London", "2026-03-23", "2026-03-28T09:00 2026-03-28T09:00Z", "2026-03-29T09:00 2026-03-29T08:00Z")]
    [InlineData("Europe/London", "2026-10-19", "2026-10-24T09:00 2026-10-24T08:00Z", "2026-10-25T09:00 2026-10-25T09:00Z")]
    [InlineData("Europe/Dublin", "2026-03-23", "2026-03-28T09:00 2026-03-28T09:00Z", "2026-03-29T09:00 2026-03-29T08:00Z")]
    [InlineData("America/New_York", "2026-03-02", "2026-03-07T09:00 2026-03-07T14:00Z", "2026-03-08T09:00 2026-03-08T13:00Z")]
    [InlineData("America/New_York", "2026-10-26", "2026-10-31T09:00 2026-10-31T13:00Z", "2026-11-01T09:00 2026-11-01T14:00Z")]
    [InlineData("Africa/Casablanca", "2026-02-09", "2026-02-14T09:00 2026-02-14T08:00Z", "2026-02-15T09:00 2026-02-15T09:00Z")]
    [InlineData("Australia/Lord_Howe", "2026-03-30", "2026-04-04T09:00 2026-04-03T22:00Z", "2026-04-05T09:00 2026-04-04T22:30Z")]
    [InlineData("Asia/Kolkata", "2026-03-23", "2026-03-28T09:00 2026-03-28T03:30Z", "2026-03-29T09:00 2026-03-29T03:30Z")]
    [InlineData("Africa/Abidjan", "2026-03-23", "2026-03-28T09:00 2026-03-28T09:00Z", "2026-03-29T09:00 2026-03-29T09:00Z")]
    [InlineData("UTC", "2026-03-23", "2026-03-28T09:00 2026-03-28T09:00Z", "2026-03-29T09:00 2026-03-29T09:00Z")]
    public void A_session_is_at_the_same_hour_on_the_wall_before_and_after_the_clocks_change(string zone, string operation, string saturday, string sunday) =>
        Assert.Equal([saturday, sunday], Read(Order(SomePlan.Of(DateOnly.Parse(operation, null), 1).Stim(1, "sat sun"), zone)).Select(entry => entry[3]));

    [Fact]
    public void Another_program_finds_every_entry_with_its_id_sequence_and_state()
    {
        CalendarOrder order = Order(SomePlan.Of(new DateOnly(2026, 3, 23), 2).Stim(1, "wed fri").Exercise(2, "mon"), "Europe/London");
        List<string[]> first = Read(order);
        Assert.Equal(["Exercise with stim", "Exercise with stim", "Reassessment", "Exercise"], first.Select(entry => entry[4]));
        Assert.Equal("2026-03-30 day", first[2][3]);
        Assert.All(first, entry => Assert.Equal(("1", "CONFIRMED"), (entry[1], entry[2])));

        List<string[]> second = Read(order with { Plan = order.Plan.Stim(1, "fri"), Revision = 2, Former = [order.Plan] });
        Assert.Equal(first.Select(entry => entry[0]), second.Select(entry => entry[0]));
        Assert.Equal([("2", "CANCELLED"), ("2", "CONFIRMED"), ("2", "CONFIRMED"), ("2", "CONFIRMED")], second.Select(entry => (entry[1], entry[2])));
    }

    private static CalendarOrder Order(PlanRevision plan, string zone) => new()
    {
        Patient = SomeKnee.Patient with { Operation = SomeKnee.Patient.Operation with { Date = plan.Operation }, PreOp = null, Assessments = [] },
        Plan = plan,
        Library = SomeKnee.Library,
        Revision = 1,
        Now = new DateTimeOffset(plan.Operation.ToDateTime(new TimeOnly(0, 0)), TimeSpan.Zero),
        Zone = zone,
    };

    private List<string[]> Read(CalendarOrder order)
    {
        string file = Path.Combine(_folder, "plan.ics");
        File.WriteAllText(file, PlanCalendar.Of(order));
        return [.. AnotherProgram.Run("read-calendar.py", "", file).Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(line => line.Split('|'))];
    }
}
