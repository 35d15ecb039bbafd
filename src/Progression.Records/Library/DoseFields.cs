using System.Collections.Immutable;
using Progression.Core.Entry;
using Progression.Core.Library;
using Progression.Core.Quantities;
using Progression.Records.Yaml;

namespace Progression.Records.Library;

/// <summary>Reads the starting dose of an exercise and how it grows.</summary>
internal static class DoseFields
{
    /// <summary>A dose that stays as it is.</summary>
    public static DoseProgression NoGrowth { get; } = new(ProgressionMethod.Steady, 0, 1, 0);

    private static readonly ImmutableArray<string> Sizes = ["sets", "repetitions", "hold", "bout"];
    private static readonly QuantityForm<Duration> HoldTime = QuantityText.Duration.Within(1, 600);
    private static readonly QuantityForm<Duration> BoutTime = QuantityText.Duration.Within(30, ExerciseDose.MostBoutSeconds);

    /// <summary>The dose, in repetitions or in time; null with problems when it is neither or both.</summary>
    public static ExerciseDose? Start(Fields fields)
    {
        int before = fields.Problems.Count;
        int? sets = fields.Whole("sets", Need.Optional, new NumberRange(1, ExerciseDose.MostSets, "1"));
        int? repetitions = fields.Whole("repetitions", Need.Optional, new NumberRange(1, ExerciseDose.MostRepetitions, "1"));
        Duration? bout = fields.As("bout", Need.Optional, BoutTime.Read);
        int times = fields.Whole("times_a_day", Need.Optional, new NumberRange(1, ExerciseDose.MostTimesPerDay, "1")) ?? 1;
        Duration? hold = fields.As("hold", Need.Optional, HoldTime.Read);
        ExerciseLoad? load = fields.As("load", Need.Optional, Load);
        Choice<DaysOfWeek>? days = fields.As("days", Need.Optional, Days);
        fields.Done();
        bool inTime = fields.Has("bout") && !fields.Has("repetitions") && !fields.Has("sets") && !fields.Has("hold");
        bool inRepetitions = !fields.Has("bout") && fields.Has("repetitions") && fields.Has("sets");
        if (!inTime && !inRepetitions)
        {
            string found = string.Join(", ", Sizes.Where(fields.Has));
            fields.Problems.Add(fields.Line, new Problem(fields.Path, "The dose is neither in repetitions nor in time.", "sets and repetitions, or bout alone", found));
        }

        if (fields.Problems.Count > before)
        {
            return null;
        }

        ExerciseDose dose = inTime ? ExerciseDose.InTime(bout!, times) : ExerciseDose.InRepetitions(sets!.Value, repetitions!.Value, times);
        return dose with { Hold = hold, Load = load, Days = days?.Value ?? DaysOfWeek.Every };
    }

    /// <summary>How the dose grows; what grows must be part of the dose, and the most it grows to must not be less than its start.</summary>
    public static DoseProgression Growth(Fields fields, ExerciseDose start)
    {
        ProgressionMethod? method = fields.OneOf<ProgressionMethod>("by", Need.Required);
        if (method is null)
        {
            return NoGrowth;
        }

        DoseProgression still = NoGrowth with { Method = method.Value };
        if (still.IsByLog && start.Repetitions is null)
        {
            fields.Refuse("by", "The dose has no sets whose load could be judged.", "a start in sets and repetitions", EnumWords.Of(method.Value));
        }

        DoseProgression growth = method == ProgressionMethod.Steady || still.IsByLog ? still : Growing(fields, method.Value, start);
        fields.Done();
        return growth;
    }

    private static DoseProgression Growing(Fields fields, ProgressionMethod method, ExerciseDose start)
    {
        double? begin = Part(method, start);
        double? step = Size(fields, "step", method);
        int? every = fields.Whole("every_weeks", Need.Required, new NumberRange(1, 12, "wk"));
        double? ceiling = Size(fields, "up_to", method);
        if (begin is null)
        {
            fields.Refuse("by", "The dose has nothing of this kind that could grow.", "what the start names", EnumWords.Of(method));
        }
        else if (ceiling < begin)
        {
            fields.Refuse("up_to", "The dose starts above the most it grows to.", $"at least {Number.Text(begin.Value)}", Number.Text(ceiling.Value));
        }

        return new DoseProgression(method, step ?? 0, every ?? 1, ceiling ?? 0);
    }

    /// <summary>The part of a dose that a method makes grow, in the unit of the growth; null when the dose has none.</summary>
    private static double? Part(ProgressionMethod method, ExerciseDose dose) => method switch
    {
        ProgressionMethod.Repetitions => dose.Repetitions,
        ProgressionMethod.Sets => dose.Repetitions is null ? null : dose.Sets,
        ProgressionMethod.Hold => dose.Hold?.Seconds,
        _ => dose.Bout?.Seconds / 60,
    };

    private static double? Size(Fields fields, string key, ProgressionMethod method) => method switch
    {
        ProgressionMethod.Repetitions => fields.Whole(key, Need.Required, new NumberRange(1, ExerciseDose.MostRepetitions, "1")),
        ProgressionMethod.Sets => fields.Whole(key, Need.Required, new NumberRange(1, ExerciseDose.MostSets, "1")),
        ProgressionMethod.Hold => fields.As(key, Need.Required, HoldTime.Read)?.Seconds,
        _ => fields.As(key, Need.Required, BoutTime.Read)?.Seconds / 60,
    };

    private static Entered<ExerciseLoad> Load(string field, string text)
    {
        const string Allowed = "kilograms as in 5 kg, a share of the maximum as in 70 %, or a rating of effort from 6 to 20 as in effort 13";
        ExerciseLoad? load = text.StartsWith("effort ", StringComparison.Ordinal)
            ? WholeNumberText.Read(field, text[7..], 6, 20).Value is { } rating ? ExerciseLoad.AtEffort(rating.Count) : null
            : QuantityText.Mass.Within(0.1m, 300).Read(field, text).Value is { } mass ? ExerciseLoad.Of(mass)
            : QuantityText.Percentage.Within(1, 100).Read(field, text).Value is { } share ? ExerciseLoad.Of(share)
            : null;
        return load is null ? Entered<ExerciseLoad>.Bad(new Problem(field, "This is not a load.", Allowed, text)) : Entered<ExerciseLoad>.Good(load);
    }

    private static Entered<Choice<DaysOfWeek>> Days(string field, string text) => DaysOfWeek.Parse(text) is { Count: > 0 } days
        ? Entered<Choice<DaysOfWeek>>.Good(new Choice<DaysOfWeek>(days))
        : Entered<Choice<DaysOfWeek>>.Bad(new Problem(field, "These are not days of the week.", "daily, or days as in mon wed fri", text));
}
