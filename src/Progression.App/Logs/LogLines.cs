using System.Collections.Immutable;
using Progression.App.Forms;
using Progression.Core.People;
using Progression.Core.Plans;

namespace Progression.App.Logs;

/// <summary>The lines of a session: what is typed first stands first, what was planned is filled in.</summary>
internal static class LogLines
{
    public const string Date = "date";
    public const string Contractions = "contractions";
    public const string Peak = "peak";
    public const string Comfort = "comfort";
    public const string PainBefore = "pain-before";
    public const string PainAfter = "pain-after";
    public const string Skin = "skin";
    public const string Strong = "strong";
    public const string Evoked = "evoked";
    public const string NextMorning = "next-morning";
    public const string Adherence = "adherence";
    public const string Note = "note";

    private const string Session = "Session";
    private const string Planned = "Exercises of the week: Enter takes each as planned, an empty line is not done";

    /// <summary>The lines for a day.</summary>
    public static ImmutableArray<FormLine> Of(LogDesk desk, DateOnly day) =>
    [
        new FormLine(Date, Session, "Day") { Given = DayWords.Typed(day) },
        new FormLine(Contractions, Session, "Contractions") { Given = $"{Stim(desk, day)?.Contractions ?? 0}" },
        new FormLine(Peak, Session, "Highest current") { Unit = "mA" },
        new FormLine(Comfort, Session, "Comfort of strongest") { Unit = "0-10" },
        new FormLine(PainBefore, Session, "Pain before") { Unit = "0-10" },
        new FormLine(PainAfter, Session, "Pain after") { Unit = "0-10" },
        new FormLine(Skin, Session, "Skin under the pads") { Unit = "0-2" },
        .. Exercises(desk, day).Select(planned => new FormLine(planned.Exercise, Planned, desk.Library.Exercises[planned.Exercise].Short) { Given = SetsText.Planned(planned.Dose) }),
        .. Before(desk.Case, day) is { PainNextMorning: null } last
            ? [new FormLine(NextMorning, "Since the session before", $"Morning after {DayWords.Short(last.Date)}") { Unit = "0-10" }]
            : Array.Empty<FormLine>(),
        new FormLine(Adherence, "Since the session before", "Home work done") { Unit = "%" },
        new FormLine(Strong, "Further", "Strong one tolerated") { Unit = "y/n" },
        new FormLine(Evoked, "Further", "Torque by stim alone") { Unit = "Nm" },
        new FormLine(Note, "Further", "Note") { IsText = true },
    ];

    /// <summary>The form for another day: what was planned changes with it, what was typed stays.</summary>
    public static Form For(Form form, LogDesk desk, DateOnly day) =>
        Form.Of([.. Of(desk, day).Select(line => form.Line(line.Id) is { IsTouched: true } typed ? line with { Entry = typed.Entry } : line)]).To(form.Current.Id);

    /// <summary>The stim planned in the week of a day; null for none.</summary>
    public static StimCell? Stim(LogDesk desk, DateOnly day) => Content(desk, Lanes.Stim, day) as StimCell;

    /// <summary>The exercises planned on a day, in the order of the grid.</summary>
    public static IEnumerable<ActiveCell> Exercises(LogDesk desk, DateOnly day) => (desk.Plan?.Lanes ?? [])
        .Select(lane => Content(desk, lane.Id, day))
        .OfType<ActiveCell>()
        .Where(cell => cell.Dose.Days.Contains(day.DayOfWeek) && desk.Library.Exercises.ContainsKey(cell.Exercise))
        .DistinctBy(cell => cell.Exercise);

    /// <summary>The last session before a day; null when there is none.</summary>
    public static SessionLog? Before(Case patient, DateOnly day) => patient.Sessions.LastOrDefault(session => session.Date < day);

    private static CellContent? Content(LogDesk desk, string lane, DateOnly day) => desk.Plan?.ContentAt(lane, PostOpWeek.Of(desk.Case.Operation.Date, day));
}
