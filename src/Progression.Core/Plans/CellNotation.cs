using System.Collections.Immutable;
using Progression.Core.Entry;
using Progression.Core.Library;
using Progression.Core.Quantities;

namespace Progression.Core.Plans;

/// <summary>What a person asked for in a cell.</summary>
/// <param name="Content">The content; null to empty the cell.</param>
public sealed record CellEdit(CellContent? Content);

/// <summary>
/// The short text of a cell and back, as typed in the editor: "high 15x2 daily" for stim, "straight-leg-raise 3x10 hold 5 s" for an exercise,
/// "95 deg" for a target. Empty text or "-" empties the cell. Reading what was written gives the same content.
/// </summary>
public static class CellNotation
{
    private static readonly ImmutableArray<string> RungWords = ["familiarise", "high", "reduced", "low", "stopped"];

    /// <summary>The text of a content in a lane; empty for an empty cell.</summary>
    public static string Text(Lane lane, CellContent? content, ClinicalLibrary library) => content switch
    {
        StimCell { Rung: Rung.Stopped } => RungWords[(int)Rung.Stopped],
        StimCell stim => $"{RungWords[(int)stim.Rung]} {stim.Contractions}x{stim.SessionsPerDay} {stim.Days}",
        ActiveCell active => $"{active.Exercise} {DoseNotation.Text(active.Dose)}",
        TargetCell target => TargetText(target.Value, UnitOf(lane, library)),
        SkillCell skill => skill.Text,
        _ => "",
    };

    /// <summary>The form that is allowed in a lane, for the editor's prompt.</summary>
    public static string Form(Lane lane, ClinicalLibrary library) => lane.Band switch
    {
        Band.Stim => $"one of {string.Join(", ", RungWords)}; then contractions x sessions a day (15x2) and days (daily, mon wed fri, 5d)",
        Band.Active => $"an exercise id, then {DoseNotation.Form}",
        Band.Checks => "nothing: it is computed",
        _ when lane.Measure is null => $"words, at most {SkillCell.MostCharacters} characters",
        _ => TargetForm(library.Measures[lane.Measure!]),
    };

    /// <summary>What the text asks for, or what is wrong with it.</summary>
    public static Entered<CellEdit> Read(Lane lane, string text, ClinicalLibrary library)
    {
        string clean = string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        if (lane.Band != Band.Checks && clean is "" or "-")
        {
            return Entered<CellEdit>.Good(new CellEdit(null));
        }

        (CellContent? content, string? wrong) = lane.Band switch
        {
            Band.Stim => Stim(clean.ToLowerInvariant().Split(' ')),
            Band.Active => Active(clean.ToLowerInvariant().Split(' '), lane, library),
            Band.Milestones => lane.Measure is null ? Skill(clean) : Target(clean, library.Measures[lane.Measure]),
            _ => (null, "This cell cannot be edited."),
        };
        return content is null
            ? Entered<CellEdit>.Bad(new Problem(lane.Title, wrong!, Form(lane, library), Found.Of(clean)))
            : Entered<CellEdit>.Good(new CellEdit(content));
    }

    private static (CellContent?, string?) Stim(string[] words)
    {
        int rung = RungWords.IndexOf(words[0]);
        if (rung < 0)
        {
            return (null, $"\"{Found.Of(words[0])}\" is not a rung of the ladder.");
        }

        if ((Rung)rung == Rung.Stopped)
        {
            return words.Length == 1 ? (new StimCell(Rung.Stopped, 0, 0, DaysOfWeek.NoDay), null) : (null, "A stopped week has no dose.");
        }

        string[] size = words.Length > 1 ? words[1].Split('x') : [];
        if (size.Length != 2 || DoseNotation.Whole(size[0], StimCell.MostContractions) is not int contractions
            || DoseNotation.Whole(size[1], StimCell.MostSessionsPerDay) is not int sessions)
        {
            return (null, $"The dose is contractions (1 to {StimCell.MostContractions}) x sessions a day (1 to {StimCell.MostSessionsPerDay}).");
        }

        DaysOfWeek? days = words.Length == 2 ? DaysOfWeek.Every
            : words is [_, _, [>= '1' and <= '7', 'd']] ? DaysOfWeek.Spread(words[2][0] - '0')
            : DaysOfWeek.Parse(string.Join(' ', words[2..]));
        return days is null || days.Value.Count == 0
            ? (null, "The days are not understood.")
            : (new StimCell((Rung)rung, contractions, sessions, days.Value), null);
    }

    private static (CellContent?, string?) Active(string[] words, Lane lane, ClinicalLibrary library)
    {
        if (!library.Exercises.TryGetValue(words[0], out Exercise? exercise))
        {
            IEnumerable<string> known = library.Exercises.Values.Where(other => other.Slot == lane.Slot).OrderBy(other => other.Rank).Select(other => other.Id);
            return (null, $"There is no exercise \"{Found.Of(words[0])}\". This lane knows {string.Join(", ", known)}.");
        }

        (ExerciseDose? dose, string? wrong) = DoseNotation.Read(words.AsSpan(1));
        return dose is null ? (null, wrong) : (new ActiveCell(exercise.Id, dose), null);
    }

    private static (CellContent?, string?) Target(string text, Measure measure)
    {
        string number = text.EndsWith(measure.Unit, StringComparison.OrdinalIgnoreCase) ? text[..^measure.Unit.Length].TrimEnd() : text;
        if (DoseNotation.Decimal(number) is not double value)
        {
            return (null, $"The target is a number in {measure.Unit}.");
        }

        return value < measure.Least || value > measure.Most ? (null, "The target is out of range.") : (new TargetCell(value), null);
    }

    private static (CellContent?, string?) Skill(string text) =>
        text.Length > SkillCell.MostCharacters ? (null, "The text is too long.") : (new SkillCell(SafeText.OneLine(text)), null);

    private static string UnitOf(Lane lane, ClinicalLibrary library) => lane.Measure is null ? "" : library.Measures[lane.Measure].Unit;

    private static string TargetText(double value, string unit) => $"{Number.Text(value, 1)} {unit}".TrimEnd();

    private static string TargetForm(Measure measure) =>
        $"a number from {Number.Text(measure.Least)} to {Number.Text(measure.Most)} {measure.Unit}";
}
