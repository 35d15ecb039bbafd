using Progression.Core.Library;
using Progression.Core.Quantities;
using Progression.Records.Yaml;

namespace Progression.Records.Library;

public static partial class LibraryCards
{
    private static LibraryCard Of(Regimen regimen)
    {
        return Card(
            "regimen", regimen.Id, regimen.Source,
            ("title", regimen.Title),
            ("population", regimen.Population),
            ("contractions", As(regimen.Contractions)),
            ("session_length", As(regimen.SessionLength, Time)),
            ("on", As(regimen.On)),
            ("off", As(regimen.Off)),
            ("ramp_up", As(regimen.RampUp)),
            ("ramp_down", As(regimen.RampDown)),
            ("ramps", Words(regimen.Ramps)),
            ("rate", As(regimen.Rate, rate => $"{Number.Text(rate.Hertz)} pps")),
            ("width", As(regimen.Width)),
            ("width_is", Words(regimen.WidthIs)),
            ("waveform", Words(regimen.Waveform)),
            ("carrier", As(regimen.Carrier)),
            ("burst_duty", As(regimen.BurstDuty)),
            ("pad", As(regimen.Pad)),
            ("position", As(regimen.Position)),
            ("isometric", As(regimen.Isometric, YesNo)),
            ("intensity", As(regimen.Intensity)),
            ("sessions_a_day", As(regimen.SessionsPerDay)),
            ("days_a_week", As(regimen.DaysPerWeek)),
            ("weeks", As(regimen.Weeks)),
            ("active_work", As(regimen.ActiveWork)),
            ("outcome", regimen.Outcome),
            ("note", regimen.Note));

        string As<T>(Stated<T> stated, Func<T, string>? words = null)
            where T : notnull => InFile(stated, regimen.Source.Standing, words ?? (value => value.ToString()!));

        string Words<T>(Stated<T> stated)
            where T : struct, Enum => InFile(stated, regimen.Source.Standing, EnumWords.Of);
    }

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
        bool grows = growth.Method is not (ProgressionMethod.Steady or ProgressionMethod.LoadWhenEarned);
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
    private static string InFile<T>(Stated<T> stated, Standing usual, Func<T, string> words)
        where T : notnull =>
        stated.IsOpen ? "open"
        : stated.Standing == usual ? words(stated.Value)
        : $"{words(stated.Value)} ({EnumWords.Of(stated.Standing)})";
}
