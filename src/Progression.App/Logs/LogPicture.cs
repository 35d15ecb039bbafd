using Progression.App.Forms;
using Progression.App.Pictures;
using Progression.Core.People;
using Progression.Core.Plans;

namespace Progression.App.Logs;

/// <summary>Lays out the session log: a line for each value, what was planned or noted last beside it.</summary>
public static class LogPicture
{
    internal const string SecondSession = "A session of this day is logged already. Is this a second one? y yes, n back.";

    /// <summary>The picture of a state.</summary>
    public static Picture Draw(LogState state, PictureSize size)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(size);
        LogReading reading = new(state);
        int beside = size.Width - FormPicture.LeftOf(size.Width);
        Picture body = state.Mode == LogMode.Help
            ? FormScreen.Help(HelpLines(state), state.Scroll, size.Width)
            : FormPicture.Draw(state.Form, FormScreen.Inside(size), line => new(PictureRow.Of(TextFit.Exactly(" " + Beside(state, reading, line), beside).TrimEnd(), Ink.Quiet)));
        IEnumerable<PictureRow> foot = state.Mode switch
        {
            LogMode.Help => [],
            LogMode.Again => FormScreen.Wrapped(SecondSession, size.Width, Ink.Strong),
            _ => FormScreen.Foot(state.Form.Problem, [reading.Allowed(state.Form.Current)], size.Width),
        };
        return FormScreen.Draw(LogScreen.Where(state), body, foot, (state.Status, LogActions.Table.HintLine(state, size.Width)), size);
    }

    /// <summary>The lines of the help page.</summary>
    internal static IReadOnlyList<string> HelpLines(LogState state) =>
    [
        .. LogActions.Table.HelpPage(state.HelpFor.ToString()),
        "Sets", $"  {SetsText.Allowed}", "What is filled in is what was planned. An empty line is not recorded, which is never zero.",
    ];

    internal static string Beside(LogState state, LogReading reading, FormLine line)
    {
        DateOnly day = reading.Day ?? state.Desk.Today;
        return line.Id switch
        {
            LogLines.Date => DayWords.Place(state.Desk.Case.Operation.Date, day),
            LogLines.Contractions => Planned(state, Lanes.Stim, LogLines.Stim(state.Desk, day)),
            LogLines.Peak => Last(state, day, log => log.Peak?.ToString()),
            LogLines.Comfort => Last(state, day, log => Rating(log.Comfort)),
            LogLines.PainBefore => Last(state, day, log => Rating(log.PainBefore)),
            LogLines.PainAfter => Last(state, day, log => Rating(log.PainAfter)),
            LogLines.NextMorning => LogLines.Before(state.Desk.Case, day) is { PainAfter: int after } before ? $"{after} right after it" + (before.PainBefore is int first ? $", {first} before it" : "") : "",
            LogLines.Skin => Last(state, day, log => log.Skin is { } skin ? Words(skin) : null),
            LogLines.Adherence => Last(state, day, log => log.Adherence?.ToString()),
            LogLines.Strong => Last(state, day, log => log.StrongContractionTolerated is bool strong ? (strong ? "yes" : "no") : null),
            LogLines.Evoked => Last(state, day, log => log.Evoked?.ToString()),
            _ when reading.IsExercise(line) => Exercise(state, line.Id, day),
            _ => "",
        };
    }

    private static string Last(LogState state, DateOnly day, Func<SessionLog, string?> value) =>
        state.Desk.Case.Sessions.LastOrDefault(log => log.Date <= day && value(log) is not null) is { } last ? $"last {value(last)}, {DayWords.Short(last.Date)}" : "";

    private static string Exercise(LogState state, string exercise, DateOnly day) => LogLines.Exercises(state.Desk, day).FirstOrDefault(cell => cell.Exercise == exercise) is { } cell
        && state.Desk.Plan!.Lanes.FirstOrDefault(lane => ReferenceEquals(state.Desk.Plan.ContentAt(lane.Id, PostOpWeek.Of(state.Desk.Case.Operation.Date, day)), cell)) is { } lane
        ? Planned(state, lane.Id, cell)
        : "";

    private static string Planned(LogState state, string lane, CellContent? content) => content is not null && state.Desk.Plan?.LaneOf(lane) is { } found
        ? $"planned {CellNotation.Text(found, content, state.Desk.Library)}"
        : "";

    private static string? Rating(int? rating) => rating is int known ? $"{known} of 10" : null;

    private static string Words(SkinCheck skin) => skin switch { SkinCheck.Clear => "clear", SkinCheck.FadingRedness => "fading redness", _ => "damaged" };
}
