using System.Collections.Immutable;
using Progression.Core.Entry;
using Progression.Core.Library;
using Progression.Core.People;

namespace Progression.App.Start;

/// <summary>Reads the form of a new case: each line by itself, and all of them as a case.</summary>
/// <param name="today">The present day.</param>
/// <param name="taken">Codes that are in the store already.</param>
public sealed class NewCaseReading(DateOnly today, IReadOnlyCollection<string> taken)
{
    private const int MostLetters = 120;
    private const int UsualWeeks = 6;

    private static readonly ImmutableArray<(string Word, Side Value)> Sides = [("left", Side.Left), ("right", Side.Right)];

    private static readonly ImmutableArray<(string Word, WeightBearing? Value)> Loads =
    [
        ("none", WeightBearing.None), ("touch", WeightBearing.Touch), ("partial", WeightBearing.Partial), ("as tolerated", WeightBearing.AsTolerated),
        ("full", WeightBearing.Full), ("not known", null),
    ];

    /// <summary>The name of a line.</summary>
    public static string Title(NewCaseField field) => field switch
    {
        NewCaseField.Code => "Code",
        NewCaseField.Operation => "Operated on",
        NewCaseField.Side => "Knee",
        NewCaseField.WeightBearing => "Weight-bearing",
        _ => "Procedure",
    };

    /// <summary>What a line takes, in words.</summary>
    public string Allowed(NewCaseField field) => field switch
    {
        NewCaseField.Code => $"It stands for the person and is never a name: {CaseCode.Allowed}.",
        NewCaseField.Operation => $"The day of the operation is day 0: {Days.Allowed}.",
        NewCaseField.Side => "The knee operated on: left, right.",
        NewCaseField.WeightBearing => "The load the surgeon allows on the leg: none, touch, partial, as tolerated, full, not known.",
        _ => $"What was done, in your words: 1 to {MostLetters} letters.",
    };

    /// <summary>What is wrong with a line; null when nothing is.</summary>
    public Problem? Wrong(NewCaseForm form, NewCaseField field)
    {
        ArgumentNullException.ThrowIfNull(form);
        return field switch
        {
            NewCaseField.Code => Code(form).Problems.FirstOrDefault(),
            NewCaseField.Operation => Operation(form).Problems.FirstOrDefault(),
            NewCaseField.Side => Knee(form).Problems.FirstOrDefault(),
            NewCaseField.WeightBearing => Load(form).Problems.FirstOrDefault(),
            _ => Procedure(form).Problems.FirstOrDefault(),
        };
    }

    /// <summary>The case. Its plan starts today, because days gone by are not planned, and has six weeks from then on.</summary>
    /// <exception cref="InvalidOperationException">A line is <see cref="Wrong"/>.</exception>
    public Case Case(NewCaseForm form)
    {
        DateOnly operated = Good(Operation(form)).Value;
        int week = PostOpWeek.Of(operated, today);
        return new Case
        {
            Code = Good(Code(form)),
            Operation = new Operation(operated, Good(Knee(form)).Value, Good(Procedure(form))),
            WeightBearing = Good(Load(form)).Value,
            PlanFrom = operated < today ? today : null,
            Weeks = Math.Min(PostOpWeek.Longest, week + UsualWeeks - 1),
        };
    }

    private DayRange Days => new(today.AddDays(1 - (7 * PostOpWeek.Longest)), today, today);

    private Entered<CaseCode> Code(NewCaseForm form)
    {
        string text = form.TextOf(NewCaseField.Code);
        CaseCode? code = CaseCode.Parse(text);
        return code is null ? Entered<CaseCode>.Bad(Bad(NewCaseField.Code, "This is not a case code.", CaseCode.Allowed, text))
            : taken.Contains(code.Text) ? Entered<CaseCode>.Bad(Bad(NewCaseField.Code, "This case is in the store already.", "a code that is not in the list", text))
            : Entered<CaseCode>.Good(code);
    }

    private Entered<Choice<DateOnly>> Operation(NewCaseForm form) =>
        DayText.Read(Title(NewCaseField.Operation), form.TextOf(NewCaseField.Operation), Days);

    private static Entered<Choice<Side>> Knee(NewCaseForm form) => WordText.Read(Title(NewCaseField.Side), form.TextOf(NewCaseField.Side), Sides);

    private static Entered<Choice<WeightBearing?>> Load(NewCaseForm form) =>
        WordText.Read(Title(NewCaseField.WeightBearing), form.TextOf(NewCaseField.WeightBearing), Loads);

    private static Entered<string> Procedure(NewCaseForm form)
    {
        string text = form.TextOf(NewCaseField.Procedure).Trim(' ');
        return text.Length is > 0 and <= MostLetters
            ? Entered<string>.Good(text)
            : Entered<string>.Bad(Bad(NewCaseField.Procedure, text.Length == 0 ? "The procedure is missing." : "The text is too long.", $"1 to {MostLetters} letters", text));
    }

    private static Problem Bad(NewCaseField field, string wrong, string allowed, string found) => new(Title(field), wrong, allowed, Found.Of(found));

    private static T Good<T>(Entered<T> entered)
        where T : class => entered.Value ?? throw new InvalidOperationException(entered.Problems[0].ToString());
}
