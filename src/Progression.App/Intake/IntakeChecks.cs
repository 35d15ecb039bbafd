using System.Collections.Immutable;
using Progression.App.Forms;
using Progression.Core.Drafting;
using Progression.Core.Entry;
using Progression.Core.People;

namespace Progression.App.Intake;

/// <summary>What is wrong with a line of the form of a case, and how a good one is written from then on.</summary>
/// <param name="desk">What the form reads.</param>
/// <param name="reading">The form, read.</param>
internal sealed class IntakeChecks(IntakeDesk desk, IntakeReading reading)
{
    /// <summary>What is wrong with a line; null when nothing is.</summary>
    public Problem? Wrong(FormLine line) => Fixed(line) ?? line switch
    {
        { IsTouched: false, Given.Length: > 0 } when desk.Case is not null => null,
        { Id: IntakeLines.Code } => Code(line),
        { Id: IntakeLines.Procedure } => FreeText.Wrong(line.Title, line.Text, IntakeReading.MostProcedure, isNeeded: true),
        { Id: IntakeLines.Operated } => First(DayText.Read(line.Title, line.Text, reading.OperationDays)),
        { Id: IntakeLines.Side } => First(WordText.ReadStart(line.Title, line.Text, IntakeWords.Sides)),
        { Id: IntakeLines.Measured, Text.Length: 0 } => reading.HasBaseline
            ? new Problem(line.Title, "Measures from before the operation need their day.", reading.DaysBefore.Allowed, "")
            : null,
        { Text.Length: 0 } => null,
        { Id: IntakeLines.Therapist or IntakeLines.Stimulator } => FreeText.Wrong(line.Title, line.Text, IntakeReading.MostName),
        { Id: IntakeLines.Bounds } => FreeText.Wrong(line.Title, line.Text, IntakeReading.MostText),
        { Id: IntakeLines.Weeks } => Weeks(line),
        { Id: IntakeLines.Regimen } => Regimen(line),
        _ => First(Read(line)),
    };

    /// <summary>How a line that is good is written from then on; null as it is.</summary>
    public string? Settled(FormLine line) => line.Text.Length == 0 ? null : line.Id switch
    {
        IntakeLines.Code => CaseCode.Parse(line.Text)?.Text,
        IntakeLines.Side => $"{WordText.ReadStart("", line.Text, IntakeWords.Sides).Value?.Value}".ToLowerInvariant(),
        IntakeLines.Load => WordText.ReadStart("", line.Text, IntakeWords.Loads).Value is { } load ? IntakeWords.Of(load.Value) : null,
        IntakeLines.OtherKnee => $"{WordText.ReadStart("", line.Text, IntakeWords.Others).Value?.Value}".ToLowerInvariant(),
        IntakeLines.Regimen => reading.ReadRegimen(line.Text).Value?.Value,
        _ => Days(line.Id) is { } range && DayText.Read("", line.Text, range).Value is { } day ? DayWords.Typed(day.Value) : null,
    };

    /// <summary>The days a line takes; null for a line that takes none.</summary>
    public DayRange? Days(string id) => id switch
    {
        IntakeLines.Operated => reading.OperationDays,
        IntakeLines.Born => reading.BirthDays,
        IntakeLines.Resistance => reading.ResistanceDays,
        IntakeLines.From => reading.PlanDays,
        IntakeLines.Measured => reading.DaysBefore,
        _ => null,
    };

    private ImmutableArray<Problem> Read(FormLine line) => line.Id switch
    {
        IntakeLines.Load => WordText.ReadStart(line.Title, line.Text, IntakeWords.Loads).Problems,
        IntakeLines.OtherKnee => WordText.ReadStart(line.Title, line.Text, IntakeWords.Others).Problems,
        IntakeLines.Mass => IntakeReading.Mass.Read(line.Title, line.Text).Problems,
        IntakeLines.Flexion => IntakeReading.Flexion.Read(line.Title, line.Text).Problems,
        IntakeLines.Pads => PadText.ReadTyped(line.Title, line.Text).Problems,
        _ when Days(line.Id) is { } range => DayText.Read(line.Title, line.Text, range).Problems,
        _ => reading.Entry(line.Id).Read(line.Title, line.Text).Problems,
    };

    // What stands is said with the reason why it stays, so that nobody looks for the key that would change it.
    private Problem? Fixed(FormLine line) => desk.Case is null || !line.IsTouched ? null : line.Id switch
    {
        IntakeLines.Code => new Problem(line.Title, "A case keeps its code: everything saved is filed under it.", line.Given, Found.Of(line.Text)),
        IntakeLines.Operated or IntakeLines.Side when desk.WhyFixed is { } why => new Problem(line.Title, why, line.Given, Found.Of(line.Text)),
        _ => null,
    };

    private Problem? Code(FormLine line) => CaseCode.Parse(line.Text) is not { } code
            ? new Problem(line.Title, "This is not a case code.", CaseCode.Allowed, Found.Of(line.Text))
        : desk.Taken.Contains(code.Text) ? new Problem(line.Title, "This case is in the store already.", "a code that is not in the list", Found.Of(line.Text))
        : null;

    private Problem? Weeks(FormLine line) => reading.FirstWeek is int first
        ? First(IntakeReading.ReadWeek(line.Title, line.Text, first))
        : new Problem(line.Title, "The weeks are counted from the operation, and its day is not known yet.", "the day of the operation first", Found.Of(line.Text));

    private Problem? Regimen(FormLine line)
    {
        if (reading.Regimen is not { } regimen)
        {
            return First(reading.ReadRegimen(line.Text));
        }

        ImmutableArray<string> open = PlanDraft.LeftOpen(regimen);
        return open.IsEmpty ? null : new Problem(
            line.Title, $"This regimen leaves open what a plan needs: {string.Join(", ", open)}.",
            "one that states them: " + string.Join(", ", desk.Library.Regimens.Values.Where(one => PlanDraft.LeftOpen(one).IsEmpty).Select(one => one.Id)), regimen.Id);
    }

    private static Problem? First<T>(Entered<T> entered)
        where T : class => First(entered.Problems);

    private static Problem? First(ImmutableArray<Problem> problems) => problems.FirstOrDefault();
}
