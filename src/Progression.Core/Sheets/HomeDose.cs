using Progression.Core.Documents;
using Progression.Core.Library;
using Progression.Core.Plans;

namespace Progression.Core.Sheets;

/// <summary>An exercise on a home sheet: its name, its steps, how much and on which days.</summary>
internal static class HomeDose
{
    // The words beside the ratings of the 6 to 20 scale of perceived effort, in three steps: Borg 1970 (from memory).
    private const int SomewhatHard = 12;
    private const int Hard = 15;

    public static IEnumerable<Block> Of(HomeSheetOrder order, ActiveCell cell, int week)
    {
        HomeWords words = order.Words;
        // An exercise of the clinic's own that the language file does not have keeps the name the library gives it for patients.
        HomeExercise exercise = words.Exercises.GetValueOrDefault(cell.Exercise)
            ?? new HomeExercise(order.Library.Exercises.GetValueOrDefault(cell.Exercise)?.PatientName ?? cell.Exercise, []);
        yield return new Block.Heading(3, exercise.Name);
        if (!exercise.Steps.IsEmpty)
        {
            yield return new Block.Points(exercise.Steps, InOrder: true);
        }

        yield return new Block.Paragraph(string.Join(' ', Amount(words, cell.Dose)));
        yield return HomeSheet.Ticks(order, week, (cell.Dose.Days, cell.Dose.TimesPerDay));
    }

    private static IEnumerable<string> Amount(HomeWords words, ExerciseDose dose)
    {
        if (dose.Bout is { } bout)
        {
            yield return words.Text("doses.minutes", ("minutes", words.Number(bout.Seconds / 60)));
        }
        else
        {
            string count = HomeSheet.Whole(dose.Repetitions ?? 0);
            yield return dose.Sets == 1 ? words.Text("doses.times", ("count", count)) : words.Text("doses.sets", ("count", count), ("sets", HomeSheet.Whole(dose.Sets)));
        }

        if (dose.Hold is { } hold)
        {
            yield return words.Text("doses.hold", ("seconds", words.Number(hold.Seconds)));
        }

        if (dose.Load is { } load)
        {
            yield return Load(words, load);
        }

        yield return dose.TimesPerDay == 1 ? words.Text("doses.a_day_once") : words.Text("doses.a_day", ("times", HomeSheet.Whole(dose.TimesPerDay)));
    }

    private static string Load(HomeWords words, ExerciseLoad load) => load switch
    {
        { Mass: { } mass } => words.Text("doses.load_kg", ("load", words.Number(mass.Kilograms))),
        { Effort: int effort } => words.Text("doses.load_effort", ("effort", words.Text(
            effort < SomewhatHard ? "doses.effort_light" : effort < Hard ? "doses.effort_some" : "doses.effort_hard"))),
        _ => words.Text("doses.load_share"),
    };
}
