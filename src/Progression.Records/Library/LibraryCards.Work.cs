using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Quantities;
using Progression.Records.Yaml;

namespace Progression.Records.Library;

public static partial class LibraryCards
{
    private static LibraryCard Of(Regimen regimen) => Card(
        "regimen", regimen.Id, regimen.Source,
        [
            ("title", regimen.Title),
            ("population", regimen.Population),
            .. Current(regimen, regimen.Source.Standing),
            .. Course(regimen, regimen.Source.Standing),
            ("outcome", regimen.Outcome),
            ("note", regimen.Note),
        ]);

    private static (string, string?)[] Current(Regimen regimen, Standing usual) =>
    [
        ("contractions", InFile(regimen.Contractions, usual)),
        ("session_length", InFile(regimen.SessionLength, usual, Time)),
        ("on", InFile(regimen.On, usual)),
        ("off", InFile(regimen.Off, usual)),
        ("ramp_up", InFile(regimen.RampUp, usual)),
        ("ramp_down", InFile(regimen.RampDown, usual)),
        ("ramps", InFile(regimen.Ramps, usual, EnumWords.Of)),
        ("rate", InFile(regimen.Rate, usual, rate => $"{Number.Text(rate.Hertz)} pps")),
        ("width", InFile(regimen.Width, usual)),
        ("width_is", InFile(regimen.WidthIs, usual, EnumWords.Of)),
        ("waveform", InFile(regimen.Waveform, usual, EnumWords.Of)),
        ("carrier", InFile(regimen.Carrier, usual)),
        ("burst_duty", InFile(regimen.BurstDuty, usual)),
        ("pad", InFile(regimen.Pad, usual)),
    ];

    private static (string, string?)[] Course(Regimen regimen, Standing usual) =>
    [
        ("position", InFile(regimen.Position, usual)),
        ("isometric", InFile(regimen.Isometric, usual, YesNo)),
        ("intensity", InFile(regimen.Intensity, usual)),
        ("sessions_a_day", InFile(regimen.SessionsPerDay, usual)),
        ("days_a_week", InFile(regimen.DaysPerWeek, usual)),
        ("weeks", InFile(regimen.Weeks, usual)),
        ("active_work", InFile(regimen.ActiveWork, usual)),
    ];

    private static LibraryCard Of(Exercise exercise) => Card(
        "exercise", exercise.Id, exercise.Source,
        [
            ("title", exercise.Title),
            ("short", exercise.Short),
            ("patient_name", exercise.PatientName),
            ("muscle", EnumWords.Of(exercise.Muscle)),
            ("purpose", exercise.Purpose),
            ("slot", EnumWords.Of(exercise.Slot)),
            ("rank", Text(exercise.Rank)),
            ("position", exercise.Position),
            ("contraction", EnumWords.Of(exercise.Contraction)),
            .. Needs(exercise.Needs),
            .. Start(exercise.Start),
            .. Growth(exercise.Progression),
            ("repetition_time", $"{Number.Text(exercise.RepetitionSeconds)} s"),
            ("resisted", YesNo(exercise.Resisted)),
        ]);

    private static LibraryCard Of(RedFlag flag) => Card(
        "red flag", flag.Id, flag.Source,
        [
            ("title", flag.Title),
            ("covers_all", flag.Questions.FirstOrDefault(one => one.CoversAll)?.Id),
            .. flag.Raising.Where(one => !Signs.Questions.ContainsKey(one.Id)).Select(one => ($"questions.{one.Id}", (string?)one.Text)),
            .. flag.Questions.Where(one => !one.Raises).Select(one => ($"background.{one.Id}", (string?)one.Text)),
            .. flag.Questions.Select(one => ($"from_day.{one.Id}", Text(one.FromDay))),
            .. flag.Questions.Select(one => ($"points.{one.Id}", Text(one.Points))),
            .. flag.Questions.Select(one => ($"true_until_day.{one.Id}", Text(one.TrueUntilDay))),
            ("score", flag.Score?.Title),
            ("likely_from", Text(flag.Score?.LikelyFrom)),
            .. flag.Checklist.SkipLast(1).Select((line, index) => ($"checklist.{index + 1}", (string?)line)),
        ]);

    private static (string, string?)[] Needs(ExerciseNeeds needs) =>
    [
        ("needs.lag_at_most", needs.LagAtMost?.ToString()),
        ("needs.flexion_at_least", needs.FlexionAtLeast?.ToString()),
        ("needs.weight_bearing_at_least", needs.WeightBearingAtLeast is WeightBearing load ? EnumWords.Of(load) : null),
        ("needs.contraction_visible", needs.ContractionVisible ? "yes" : null),
        ("needs.straight_leg_raise", needs.StraightLegRaise ? "yes" : null),
        ("needs.index_at_least", needs.IndexAtLeast?.ToString()),
        ("needs.week_at_least", Text(needs.WeekAtLeast)),
    ];

    private static (string, string?)[] Start(ExerciseDose dose) =>
    [
        ("start.sets", dose.Bout is null ? Text(dose.Sets) : null),
        ("start.repetitions", Text(dose.Repetitions)),
        ("start.bout", dose.Bout is null ? null : Time(dose.Bout)),
        ("start.hold", dose.Hold?.ToString()),
        ("start.load", dose.Load?.OfMaximum?.ToString() ?? dose.Load?.ToString()),
        ("start.times_a_day", Text(dose.TimesPerDay)),
        ("start.days", dose.Days.ToString()),
    ];

    private static (string, string?)[] Growth(DoseProgression growth)
    {
        string unit = growth.Method switch
        {
            ProgressionMethod.Hold => " s",
            ProgressionMethod.Minutes => " min",
            _ => "",
        };
        bool grows = growth.Method != ProgressionMethod.Steady && !growth.IsByLog;
        return
        [
            ("grows.by", EnumWords.Of(growth.Method)),
            ("grows.step", grows ? Number.Text(growth.Step) + unit : null),
            ("grows.every_weeks", grows ? Text(growth.EveryWeeks) : null),
            ("grows.up_to", grows ? Number.Text(growth.Ceiling) + unit : null),
        ];
    }

    /// <summary>A time in minutes where that is a whole number of at least two, else in seconds.</summary>
    private static string Time(Duration time) => time.Seconds >= 120 && time.Seconds % 60 == 0 ? $"{Number.Text(time.Seconds / 60)} min" : time.ToString();

    /// <summary>A stated value as the file writes it: marked only where its standing is not that of the entry.</summary>
    private static string InFile<T>(Stated<T> stated, Standing usual, Func<T, string>? words = null)
        where T : notnull
    {
        if (stated.IsOpen)
        {
            return "open";
        }

        string text = words is null ? stated.Value.ToString()! : words(stated.Value);
        return stated.Standing == usual ? text : $"{text} ({EnumWords.Of(stated.Standing)})";
    }
}
