using System.Collections.Immutable;
using Progression.Core.Entry;
using Progression.Core.Library;
using Progression.Core.Measures;
using Progression.Core.People;
using Progression.Core.Quantities;

namespace Progression.App.Assess;

/// <summary>
/// How a measure is typed: a number with or without its unit, or several trials parted by spaces ("60 62 64 deg"), a unit at the end holding for all.
/// Where extension deficits are written negative, typed and shown values have the other sign than stored ones.
/// </summary>
/// <param name="measure">The measure.</param>
/// <param name="sign">How extension deficits are written.</param>
internal sealed class MeasureEntry(Measure measure, DeficitSign? sign)
{
    // More trials than anybody makes of one test; catches slips. Common practice, no source.
    private const int MostTrials = 20;

    private static readonly ImmutableArray<string> WeightWords = ["kg", "kgf", "lb", "lbs", "lbf"];

    private readonly bool _isTurned = AssessLines.IsExtension(measure.Id) && sign == DeficitSign.Negative;

    /// <summary>What is accepted, in words, with the range and both ends.</summary>
    public string Allowed => measure.Id == MeasureIds.Effusion ? "none, trace, 1+, 2+, 3+"
        : Form.Allowed + (measure.Whole ? ", whole" : TakesTrials ? "; several trials with spaces between" : "");

    /// <summary>The range with both ends and its unit, in few words.</summary>
    public string Range => measure.Id == MeasureIds.Effusion ? Allowed
        : $"{Number.Text((double)Form.Least)} to {MeasureText.Amount(measure, (double)Form.Most)}{(measure.Whole ? ", whole" : TakesTrials ? "; several trials with spaces" : "")}";

    private bool TakesTrials => !measure.Whole && measure.Scale != ErrorScale.Ordinal;

    private QuantityForm<Reading> Form
    {
        get
        {
            QuantityForm<Reading> stored = MeasureText.Form(measure);
            QuantityForm<Reading> bare = stored.AsTyped() with { Make = value => new Reading(measure.Id, Turned(value)) };
            return _isTurned ? bare.Within(-bare.Most, -bare.Least) : bare;
        }
    }

    /// <summary>The trials in a text, as stored.</summary>
    /// <param name="field">The field as the person knows it.</param>
    /// <param name="text">The text as typed.</param>
    public Entered<Choice<ImmutableArray<double>>> Read(string field, string text)
    {
        if (measure.Id == MeasureIds.Effusion)
        {
            Entered<Reading> grade = MeasureText.Read(measure, field, text.ToLowerInvariant());
            return grade.Value is { } seen ? Good([seen.Value]) : Bad(grade.Problems[0]);
        }

        ImmutableArray<string> words = Trials(text);
        if (TakesTrials && words.FirstOrDefault(CouldBeTwo) is { } two)
        {
            return Bad(new Problem(field, "This can be one number or two trials; write a point in it or a space between.", Allowed, Found.Of(two)));
        }

        if (words.Length > (TakesTrials ? MostTrials : 1))
        {
            return Bad(new Problem(field, TakesTrials ? $"More than {MostTrials} trials." : "One value only.", Allowed, Found.Of(text)));
        }

        ImmutableArray<Entered<Reading>> read = [.. words.Select(word => Form.Read(field, word))];
        if (read.SelectMany(one => one.Problems).FirstOrDefault() is { } problem)
        {
            return Bad(problem with { Wrong = problem.Wrong + WeightHint(text), Allowed = Allowed });
        }

        return measure.Whole && read[0].Value!.Value != Math.Floor(read[0].Value!.Value)
            ? Bad(new Problem(field, "This is not a whole number.", Allowed, Found.Of(text)))
            : Good([.. read.Select(one => one.Value!.Value)]);
    }

    /// <summary>What is kept of a text with another unit than the field's, as a sentence: "Taken as 30 cm."; null where the numbers stay as typed.</summary>
    public string? Converted(string text) => measure.Id != MeasureIds.Effusion && Trials(text).Any(Form.IsConverted) && Read("", text).Value is { } read
        ? $"Taken as {string.Join(' ', read.Value.Select(Write))} {measure.Unit}."
        : null;

    /// <summary>A stored value as it is typed, without unit.</summary>
    public string Write(double value) =>
        measure.Id == MeasureIds.Effusion ? MeasureText.Write(measure, value) : Number.Text(Turned(value), 6);

    /// <summary>A reading as it is typed: its trials where they are known, else its value.</summary>
    public string Write(Reading reading) => reading.Each.IsDefaultOrEmpty ? Write(reading.Value) : string.Join(' ', reading.Each.Select(Write));

    // A comma with two digits behind it can part two trials as well, where the second would be one.
    private bool CouldBeTwo(string word) => word.Split(',') is [_, { Length: 2 } second] && Form.Read("", second).Value is not null;

    // Taken from zero, so that no zero carries a sign.
    private double Turned(double value) => _isTurned ? 0 - value : value;

    // A word that does not begin a number is the unit of the number before it; a unit at the end holds for all bare numbers.
    private static ImmutableArray<string> Trials(string text)
    {
        List<string> trials = [];
        foreach (string word in text.Split([' ', '\u00A0', '\u202F', ';'], StringSplitOptions.RemoveEmptyEntries).Select(word => word.TrimEnd(',')))
        {
            if (trials.Count > 0 && !(char.IsAsciiDigit(word.FirstOrDefault()) || word.StartsWith('-')))
            {
                trials[^1] += " " + word;
            }
            else
            {
                trials.Add(word);
            }
        }

        string unit = trials.Count > 1 ? UnitOf(trials[^1]) : "";
        return trials.Count == 0 ? [text] : [.. trials.Select(trial => UnitOf(trial).Length == 0 ? $"{trial} {unit}".TrimEnd() : trial)];
    }

    private static string UnitOf(string trial) => trial.TrimStart('-', '0', '1', '2', '3', '4', '5', '6', '7', '8', '9', '.', ',', ' ');

    // Dynamometers also show kilograms and pounds of pull: 1 kgf is 9.80665 N and 1 lbf 4.44822 N by definition (standard gravity).
    private string WeightHint(string text) => measure.Unit == "N" && WeightWords.Contains(UnitOf(Trials(text)[^1]).ToLowerInvariant())
        ? " It is entered in newtons: 1 kg of pull is 9.81 N, 1 lb is 4.45 N."
        : "";

    private static Entered<Choice<ImmutableArray<double>>> Good(ImmutableArray<double> trials) => Entered<Choice<ImmutableArray<double>>>.Good(new(trials));

    private static Entered<Choice<ImmutableArray<double>>> Bad(Problem problem) => Entered<Choice<ImmutableArray<double>>>.Bad(problem);
}
