using Progression.Exchange.Calendar;
using Progression.Exchange.Csv;
using Progression.Exchange.Fhir;
using Progression.Records.Codes;

namespace Progression.App.Papers;

/// <summary>What leaves the workbook for spreadsheets, calendars and other programs.</summary>
public static class ExchangePapers
{
    /// <summary>Every reading as a table.</summary>
    public static Paper Measures { get; } = Table("measures", "every reading, as a table", order => MeasuresCsv.Of(order.Patient, order.Library));

    /// <summary>Every logged session as a table.</summary>
    public static Paper Sessions { get; } = Table("sessions", "every logged session, as a table", order => SessionsCsv.Of(order.Patient));

    /// <summary>The grid as a table.</summary>
    public static Paper Plan { get; } = Table("plan", "the plan cell by cell, as a table", order => PlanCsv.Of(order.Plan, order.Library));

    /// <summary>The days of the plan as a calendar.</summary>
    public static Paper Calendar { get; } = new()
    {
        Name = "calendar",
        Explains = "sessions and reassessments to come",
        Formats = [PaperFormat.Calendar],
        IsExport = true,
        Make = (order, _) => PlanCalendar.Of(Calendared(order)) is { } calendar
            ? PaperMade.Of(calendar)
            : PaperMade.Not("Nothing of the plan lies ahead; draft it for more weeks first."),
    };

    /// <summary>Case, readings, plan and review as resources.</summary>
    public static Paper Bundle { get; } = new()
    {
        Name = "fhir bundle",
        Explains = "readings, plan and review, for another program",
        Formats = [PaperFormat.Fhir],
        IsExport = true,
        Beside = order => order.Bundle?.Identifies ?? "",
        Make = (order, _) => PaperMade.Of(FhirBundle.Text(Bundled(order))),
    };

    private static Paper Table(string name, string explains, Func<PaperOrder, string> table) => new()
    {
        Name = name,
        Explains = explains,
        Formats = [PaperFormat.Csv],
        IsExport = true,
        Make = (order, _) => PaperMade.Of(table(order)),
    };

    private static FhirOrder Bundled(PaperOrder order)
    {
        BundleWishes wishes = order.Bundle ?? new BundleWishes(new DateTimeOffset(order.Today.ToDateTime(TimeOnly.MinValue), TimeSpan.Zero));
        return new FhirOrder
        {
            Patient = order.Patient,
            Library = order.Library,
            Codes = StandardCodesReader.Shipped().Under(wishes.Codes),
            At = wishes.Now,
            Plan = order.Plan,
            Standing = order.Standing,
            Saved = wishes.Saved,
            Name = wishes.Name,
            WithBirthDate = wishes.WithBirthDate,
        };
    }

    private static CalendarOrder Calendared(PaperOrder order)
    {
        CalendarWishes wishes = order.Calendar ?? new CalendarWishes(new DateTimeOffset(order.Today.ToDateTime(TimeOnly.MinValue), TimeSpan.Zero), CalendarZone.OfSystem(TimeZoneInfo.Local).Id);
        return new CalendarOrder
        {
            Patient = order.Patient,
            Plan = order.Plan,
            Library = order.Library,
            Revision = order.Standing.Plan.Revision,
            Former = wishes.Former(),
            Now = wishes.Now,
            At = wishes.At ?? CalendarOrder.UsualHour,
            Zone = wishes.Zone,
            WithCode = wishes.WithCode,
        };
    }
}
