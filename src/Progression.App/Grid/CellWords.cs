using System.Collections.Immutable;
using Progression.Core.Checks;
using Progression.Core.Forecasts;
using Progression.Core.Library;
using Progression.Core.Measures;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Core.Quantities;

namespace Progression.App.Grid;

/// <summary>What a cell says, in wordings from long to short, so that each width shows the longest that fits.</summary>
/// <param name="Whole">The cell in one line.</param>
/// <param name="Upper">What it is, for a cell of two lines; empty for a cell that never takes two.</param>
/// <param name="Lower">How much of it, for a cell of two lines.</param>
public sealed record CellWords(ImmutableArray<string> Whole, ImmutableArray<string> Upper, ImmutableArray<string> Lower)
{
    private static readonly CellWords Nothing = new([""], [], [""]);

    /// <summary>The words of a cell.</summary>
    /// <param name="state">The grid.</param>
    /// <param name="lane">The lane.</param>
    /// <param name="week">The week, from 1.</param>
    public static CellWords Of(GridState state, Lane lane, int week)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(lane);
        ClinicalLibrary library = state.Desk.Library;
        CellContent? content = state.Plan.ContentAt(lane.Id, week);
        if (lane.Band == Band.Checks)
        {
            return lane.Id == Lanes.Done ? One(CheckText.Of(state.Logged[week - 1])) : One(CheckText.Of(lane, state.Figures[week - 1], library));
        }

        return content switch
        {
            StimCell stim => Stim(stim, library.RungOf(stim.Rung)),
            ActiveCell active => Active(active, lane, library),
            TargetCell target => Target(target.Value, lane, (Measured(state, lane, week), Expected(state, lane, week)), library),
            SkillCell skill => One(skill.Text),
            _ => Measured(state, lane, week) is { } value ? One($"measured {Number.Text(value, 1)}", $"({Number.Text(value, 1)})")
                : Expected(state, lane, week) is { } expected ? One($"likely {expected.Range}", $"~{expected.Middle}")
                : Nothing,
        };
    }

    private static CellWords One(params ImmutableArray<string> wordings) => new(wordings, [], wordings);

    private static CellWords Stim(StimCell stim, LadderRung rung)
    {
        if (stim.Rung == Rung.Stopped)
        {
            return new([rung.Title, rung.Short], [rung.Title, rung.Short], [""]);
        }
        string size = $"{stim.Contractions}x{stim.SessionsPerDay}";
        string shortest = $"{size} {Days(stim.Days)}";
        ImmutableArray<string> doses = [$"{size} {stim.Days}", shortest, size + "…"];
        return new(
            [$"{rung.Title} {doses[0]}", $"{rung.Short} {doses[0]}", $"{rung.Short} {shortest}", rung.Short + "…"],
            [rung.Title, rung.Short],
            doses);
    }

    private static CellWords Active(ActiveCell active, Lane lane, ClinicalLibrary library)
    {
        string whole = CellNotation.Text(lane, active, library);
        string dose = whole[(whole.IndexOf(' ', StringComparison.Ordinal) + 1)..];
        Exercise? exercise = library.Exercises.GetValueOrDefault(active.Exercise);
        (string title, string brief) = exercise is null ? (active.Exercise, active.Exercise) : (exercise.Title, exercise.Short);
        ImmutableArray<string> doses = [dose, .. ShortDoses(active.Dose)];
        return new(
            [$"{title} {dose}", .. doses.Select(wording => $"{brief} {wording}"), brief + "…"],
            [title, brief],
            doses);
    }

    // A wording that leaves something out says so with an ellipsis: no dose may look smaller than it is.
    private static ImmutableArray<string> ShortDoses(ExerciseDose dose)
    {
        string size = dose.Bout is null ? $"{dose.Sets}x{dose.Repetitions}" : $"{Number.Text(dose.Bout.Seconds / 60, 1)}min";
        List<string> parts = [];
        if (dose.Hold is not null)
        {
            parts.Add($"{Number.Text(dose.Hold.Seconds, 0)}s");
        }
        if (dose.TimesPerDay > 1)
        {
            parts.Add($"{dose.TimesPerDay}/d");
        }
        if (dose.Days != DaysOfWeek.Every)
        {
            parts.Add(Days(dose.Days));
        }
        if (dose.Load is not null)
        {
            parts.Add($"{dose.Load}");
        }
        return
        [
            .. Enumerable.Range(0, parts.Count + 1).Reverse()
                .Select(kept => string.Join(' ', [size, .. parts.Take(kept)]) + (kept < parts.Count ? "…" : "")),
        ];
    }

    private static string Days(DaysOfWeek days) => $"{days.Count}d";

    private static CellWords Target(double value, Lane lane, (double? Measured, (string Middle, string Range)? Expected) known, ClinicalLibrary library)
    {
        string goal = Number.Text(value, 1);
        string unit = lane.Measure is null ? "" : library.Measures[lane.Measure].Unit;
        if (known.Measured is not { } measured)
        {
            return known.Expected is { } expected
                ? One($"{goal} {unit}, likely {expected.Range}", $"{goal} ~{expected.Range}", $"{goal} ~{expected.Middle}", $"{goal}~{expected.Middle}", goal)
                : One($"{goal} {unit}", goal);
        }
        string reading = Number.Text(measured, 1);
        return One($"{goal} {unit}, measured {reading}", $"{goal} ({reading})", $"{goal}({reading})", $"{goal}…");
    }

    /// <summary>What the forecast expects at the end of a week that lies ahead of the latest assessment; null where there is no forecast.</summary>
    private static (string Middle, string Range)? Expected(GridState state, Lane lane, int week)
    {
        Case patient = state.Desk.Case;
        bool ahead = !patient.Assessments.IsEmpty && week >= PostOpWeek.Of(patient.Operation.Date, patient.Assessments[^1].Date);
        return ahead && lane.Measure is { } measure && state.Desk.Forecast(measure).Forecast is { } forecast ? Figures(forecast.At(week), forecast.Measure) : null;
    }

    private static (string Middle, string Range) Figures(ForecastPoint point, Measure measure) =>
        (ForecastWords.Middle(point, measure), ForecastWords.Range(point, measure, (point.Low80, point.High80), " to "));

    // The last assessment of the week that has the measure counts.
    private static double? Measured(GridState state, Lane lane, int week) => lane.Measure is null
        ? null
        : state.Desk.Case.Assessments.Select(visit => KneeState.At(visit, state.Desk.Case))
            .Where(knee => knee.Week == week)
            .Select(knee => knee.Value(lane.Measure))
            .LastOrDefault(value => value is not null);
}
