using System.CommandLine;
using System.Globalization;
using Progression.App.Commands.Sheets;
using Progression.App.Papers;
using Progression.Core.Entry;
using Progression.Exchange.Calendar;

namespace Progression.App.Commands.Exchange;

/// <summary><c>progression export calendar</c>: sessions and reassessments to come.</summary>
internal static class ExportCalendarCommand
{
    internal static Command Build(PaperWorld world, CliEnvironment environment)
    {
        Option<string?> hour = new("--at") { Description = "The hour of the sessions. Default: 9:00.", HelpName = "HH:MM" };
        Option<string?> zone = new("--zone") { Description = "The time zone, as Europe/London. Default: that of the machine.", HelpName = "NAME" };
        Option<bool> code = new("--with-code") { Description = "Begin each title with the code of the case." };
        return new PaperCommand("export calendar", ExchangePapers.Calendar, world)
        {
            TakesHeader = false,
            IsPrinted = false,
            Options = [hour, zone, code],
            Complete = (order, given, of) => order with
            {
                Calendar = new CalendarWishes(environment.Clock.GetUtcNow(), (given.Take(zone, CalendarZone.Read) ?? CalendarZone.OfSystem(environment.Clock.LocalTimeZone)).Id)
                {
                    At = given.Take(hour, Hour)?.Value,
                    WithCode = of.Line.GetValue(code),
                    Former = () => of.Records?.Book.Former(order.Patient.Code, order.Standing.Plan.Revision) ?? [],
                },
            },
        }.Build(
            "Writes the sessions and reassessments to come as a calendar (RFC 5545).",
            """
            A session is one entry a day, at the same hour on the wall all year; a reassessment is due on its day and has no hour. Titles say "Exercise",
            "Exercise with stim" or "Reassessment" and nothing of the person. A newer calendar of a case replaces an older one entry by entry; days that the
            plan has no more are called off.

            Examples:
              progression export calendar EXAMPLE-07 --out plan.ics
              progression export calendar EXAMPLE-07 --at 17:30 --zone Europe/London --out plan.ics
            """);
    }

    private static Entered<Choice<TimeOnly>> Hour(string field, string? text) =>
        TimeOnly.TryParseExact((text ?? "").Trim(), ["H:mm", "HH:mm"], CultureInfo.InvariantCulture, DateTimeStyles.None, out TimeOnly hour)
            ? Entered<Choice<TimeOnly>>.Good(new Choice<TimeOnly>(hour))
            : Entered<Choice<TimeOnly>>.Bad(new Problem(field, "This is not an hour.", "hour and minute from 0:00 to 23:59, as 17:30", Found.Of(text ?? "")));
}
