using Progression.App.Forms;
using Progression.Core.Entry;
using Progression.Core.People;

namespace Progression.App.Intake;

/// <summary>What the form of a case tells while it is typed: what was understood, what a line takes, and what follows when it stays empty.</summary>
/// <param name="state">The form.</param>
internal sealed class IntakeWording(IntakeState state)
{
    private readonly IntakeReading _reading = new(state);
    private readonly IntakeChecks _checks = new(state.Desk, new IntakeReading(state));

    /// <summary>In an empty field: what holds then; null for nothing.</summary>
    public string? Shown(FormLine line) => line.Id switch
    {
        IntakeLines.From => _reading.PlanFrom is { } from ? $"={DayWords.Typed(from)}" : null,
        IntakeLines.Weeks => _reading.LastWeek is int last ? $"= {last}" : null,
        IntakeLines.Regimen => $"= {state.Desk.Library.DefaultRegimen}",
        IntakeLines.Measured => state.Desk.Case?.PreOp is { } before ? DayWords.Typed(before.Date) : null,
        _ => null,
    };

    /// <summary>Beside a field: what was understood.</summary>
    public string Beside(FormLine line) => line.Id switch
    {
        IntakeLines.Weeks => Weeks(),
        IntakeLines.Measured when state.Desk.Case?.PreOp is { } before => $"{before.Readings.Count} readings are kept",
        IntakeLines.Mass when IntakeReading.Mass.IsConverted(line.Text) && IntakeReading.Mass.Read("", line.Text).Value is { } mass => $"= {Core.Quantities.Number.Text(mass.Kilograms, 2)} kg",
        IntakeLines.Load => WordText.ReadStart("", line.Text, IntakeWords.Loads).Value is { } load ? Unless(line.Text, IntakeWords.Of(load.Value)) : line.Text.Length == 0 ? "empty admits nothing that needs load" : "",
        IntakeLines.Pads => Unless(line.Text, $"{PadText.ReadTyped("", line.Text).Value}"),
        IntakeLines.Born => DayText.Read("", line.Text, _reading.BirthDays).Value is { } born ? $"{DayText.Written(born.Value)}, {Years(born.Value, state.Desk.Today)} years" : "",
        _ when _checks.Days(line.Id) is { } range && DayText.Read("", line.Text, range).Value is { } day => Place(day.Value),
        _ => "",
    };

    /// <summary>Under the form: what a line takes.</summary>
    public IEnumerable<string> Foot(FormLine line)
    {
        yield return line.Id switch
        {
            IntakeLines.Code => $"It stands for the person and is never a name: {CaseCode.Allowed}.",
            IntakeLines.Operated => $"The day of the operation is day 0: {_reading.OperationDays.Allowed}.",
            IntakeLines.Side => "The knee operated on: left or right; l or r is enough.",
            IntakeLines.Load => "The load the surgeon allows on the leg: none, touch, partial, as tolerated, full (or nwb, ttwb, pwb, wbat, fwb).",
            IntakeLines.Procedure => $"What was done, in your words: 1 to {IntakeReading.MostProcedure} letters.",
            IntakeLines.OtherKnee => "The other knee: sound, painful or operated. Only a sound one serves as a yardstick for strength; empty is not known.",
            IntakeLines.Mass => $"{IntakeReading.Mass.Allowed}. Torque per body mass needs it.",
            IntakeLines.Born => $"Optional: {_reading.BirthDays.Allowed}.",
            IntakeLines.Therapist => $"Initials or a role, to {IntakeReading.MostName} letters.",
            IntakeLines.Flexion => $"The most flexion the surgeon allows: {IntakeReading.Flexion.Allowed}. Empty: no bound is known.",
            IntakeLines.Resistance => $"The first day on which resistance is allowed: {_reading.ResistanceDays.Allowed}.",
            IntakeLines.Bounds => $"Anything else that the surgeon bounds, to {IntakeReading.MostText} letters. The program does not read it; you do.",
            IntakeLines.Stimulator => "The stimulator in use, as you call it.",
            IntakeLines.Pads => $"{PadText.Allowed}. Current density needs it.",
            IntakeLines.Regimen => Regimen(),
            IntakeLines.From => $"The first day that is planned: {_reading.PlanDays.Allowed}. Days gone by are not planned; empty is the day shown.",
            IntakeLines.Weeks => $"The last post-op week of the plan, {_reading.FirstWeek ?? 1} to {PostOpWeek.Longest}. Empty: six weeks from its start.",
            IntakeLines.Measured => $"The day of the measures below: {_reading.DaysBefore.Allowed}. An assessment of such a day takes all measures.",
            _ => $"{state.Desk.Library.Measures[line.Id].Title}: {_reading.Entry(line.Id).Range}.",
        };
        if (line.Id is IntakeLines.Operated or IntakeLines.Side && state.Desk.WhyFixed is { } why)
        {
            yield return $"It stays as it is: {char.ToLowerInvariant(why[0])}{why[1..]}";
        }
    }

    // What is understood as it is typed is not said a second time, unless its field cuts it.
    private static string Unless(string typed, string understood) => typed == understood && typed.Length < FormPicture.Field ? "" : understood;

    private static int Years(DateOnly born, DateOnly today) => today.Year - born.Year - (today < born.AddYears(today.Year - born.Year) ? 1 : 0);

    private string Regimen() => _reading.Regimen is not { } regimen
        ? "The beginning of an id is enough; F2 goes through the regimens."
        : $"{regimen.Title}. {(Core.Drafting.PlanDraft.LeftOpen(regimen) is { IsEmpty: false } open ? $"It leaves open {string.Join(", ", open)}, so no plan can be made of it." : $"{regimen.Population}")} F2 goes through all of them.";

    private string Weeks() => _reading is { FirstWeek: int first, LastWeek: int last, Operated: { } operated } && last >= first
        ? $"{last - first + 1} weeks, to {DayText.Written(PostOpWeek.End(operated, last))}"
        : "";

    private string Place(DateOnly day) => _reading.Operated is { } operated ? DayWords.Place(operated, day) : DayText.Written(day);
}
