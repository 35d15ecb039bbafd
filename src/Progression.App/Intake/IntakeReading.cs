using System.Collections.Immutable;
using Progression.App.Assess;
using Progression.App.Forms;
using Progression.Core.Entry;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Quantities;

namespace Progression.App.Intake;

/// <summary>Reads the form of a case: each line by itself, and all of them as a case. An empty line is not known, never zero.</summary>
/// <param name="state">The form.</param>
internal sealed class IntakeReading(IntakeState state)
{
    public const int MostName = 60;
    public const int MostProcedure = 120;
    public const int MostText = 300;
    private const int DaysInYear = 365;
    private const int UsualWeeks = 6;

    // The international pound of 1959 is 0.45359237 kg by definition. The bounds catch slips of entry; common practice, no source.
    public static readonly QuantityForm<Mass> Mass = QuantityText.Mass.Within(20, 350).AsTyped() with
    {
        Units = [.. QuantityText.Mass.AsTyped().Units, new UnitWord("lb", 0.45359237m, IsShown: true), new UnitWord("lbs", 0.45359237m)],
    };

    public static readonly QuantityForm<Angle> Flexion = QuantityText.Angle.Within(0, 160).AsTyped();

    private readonly IntakeDesk _desk = state.Desk;

    /// <summary>The day of the operation; null while it cannot be read.</summary>
    public DateOnly? Operated => Day(IntakeLines.Operated, OperationDays);

    /// <summary>The first day of the plan: as typed, else today, or the day after an operation of today; null without an operation.</summary>
    public DateOnly? PlanFrom => Day(IntakeLines.From, PlanDays) ?? (Operated is { } operated ? (operated < _desk.Today ? _desk.Today : operated.AddDays(1)) : null);

    /// <summary>The post-op week in which the plan starts; null without an operation.</summary>
    public int? FirstWeek => Operated is { } operated && PlanFrom is { } from ? PostOpWeek.Of(operated, from) : null;

    /// <summary>The last post-op week of the plan: as typed, else six weeks from its start; null without an operation.</summary>
    public int? LastWeek => FirstWeek is not int first ? null
        : Text(IntakeLines.Weeks) is { } typed ? ReadWeek("", typed, first).Value?.Count
        : Math.Min(PostOpWeek.Longest, first + UsualWeeks - 1);

    /// <summary>The regimen that is named, by its id or the beginning of it; the library's default where none is; null for one that is not known.</summary>
    public Regimen? Regimen => _desk.Library.Regimens.GetValueOrDefault(Text(IntakeLines.Regimen) is { } typed ? ReadRegimen(typed).Value?.Value ?? "" : _desk.Library.DefaultRegimen);

    /// <summary>The days an operation can have been on: a plan reaches 26 weeks on from it.</summary>
    public DayRange OperationDays
    {
        get
        {
            DateOnly first = _desk.Today.AddDays(1 - (7 * PostOpWeek.Longest));
            return new(_desk.Case?.Operation.Date is { } kept && kept < first ? kept : first, _desk.Today, _desk.Today);
        }
    }

    public DayRange BirthDays => new(new DateOnly(1900, 1, 1), (Operated ?? _desk.Today).AddYears(-10), _desk.Today);

    public DayRange ResistanceDays => Around(0, DaysInYear);

    public DayRange PlanDays => Around(0, (7 * PostOpWeek.Longest) - 1);

    public DayRange DaysBefore => Around(-DaysInYear, -1);

    /// <summary>Whether anything stands in the lines of measures before the operation.</summary>
    public bool HasBaseline => IntakeLines.Baseline.Any(line => Text(line.Id) is not null);

    /// <summary>Text of a line; null for an empty one.</summary>
    public string? Text(string id) => FreeText.OrNull(state.Form.TextOf(id));

    /// <summary>How a measure from before the operation is typed.</summary>
    public MeasureEntry Entry(string id) => new(_desk.Library.Measures[id], _desk.Case?.DeficitWritten);

    /// <summary>A post-op week from the first that is planned: "9", "week 9".</summary>
    public static Entered<WholeNumber> ReadWeek(string field, string text, int first) =>
        WholeNumberText.Read(field, text.StartsWith("week", StringComparison.OrdinalIgnoreCase) ? text["week".Length..] : text, first, PostOpWeek.Longest);

    /// <summary>The id of a regimen, of which the beginning may be typed.</summary>
    public Entered<Choice<string>> ReadRegimen(string text) => WordText.ReadStart("Regimen", text, [.. _desk.Library.Regimens.Keys.Select(id => (id, id))]);

    /// <summary>The case.</summary>
    /// <exception cref="InvalidOperationException">A line that is needed is wrong.</exception>
    public Case Case()
    {
        DateOnly operated = Operated ?? throw new InvalidOperationException("The day of the operation is wrong.");
        Operation operation = new(operated, WordText.ReadStart("", Text(IntakeLines.Side), IntakeWords.Sides).Value?.Value ?? throw new InvalidOperationException("The knee is wrong."), state.Form.TextOf(IntakeLines.Procedure));
        CaseCode code = CaseCode.Parse(state.Form.TextOf(IntakeLines.Code)) ?? throw new InvalidOperationException("The code is wrong.");
        Case bare = _desk.Case is { } kept ? kept with { Operation = operation } : new Case { Code = code, Operation = operation };
        return bare with
        {
            WeightBearing = Text(IntakeLines.Load) is { } load ? WordText.ReadStart("", load, IntakeWords.Loads).Value?.Value : null,
            OtherKnee = Text(IntakeLines.OtherKnee) is { } other ? WordText.ReadStart("", other, IntakeWords.Others).Value?.Value ?? OtherKnee.NotKnown : OtherKnee.NotKnown,
            BodyMass = Text(IntakeLines.Mass) is { } mass ? Mass.Read("", mass).Value : null,
            Born = Day(IntakeLines.Born, BirthDays),
            Therapist = Text(IntakeLines.Therapist),
            Surgeon = new SurgeonLimits
            {
                FlexionAtMost = Text(IntakeLines.Flexion) is { } flexion ? Flexion.Read("", flexion).Value : null,
                NoResistanceBefore = Day(IntakeLines.Resistance, ResistanceDays),
                Text = Text(IntakeLines.Bounds),
            },
            Stimulator = Text(IntakeLines.Stimulator),
            Pads = Text(IntakeLines.Pads) is { } pads ? PadText.ReadTyped("", pads).Value : null,
            Regimen = Text(IntakeLines.Regimen) is { } regimen ? ReadRegimen(regimen).Value?.Value : null,
            PlanFrom = Day(IntakeLines.From, PlanDays) ?? (operated < _desk.Today && _desk.Case is null ? _desk.Today : null),
            Weeks = _desk.Case is null || Text(IntakeLines.Weeks) is not null ? LastWeek : null,
            PreOp = bare.PreOp ?? Before(),
        };
    }

    private Assessment? Before() => Day(IntakeLines.Measured, DaysBefore) is not { } day || !HasBaseline ? null : new Assessment(
        day,
        IntakeLines.Baseline.Where(line => Text(line.Id) is not null).Select(line => Of(line.Id, Entry(line.Id).Read("", state.Form.TextOf(line.Id)).Value!.Value))
            .ToImmutableSortedDictionary(reading => reading.Measure, reading => reading, StringComparer.Ordinal),
        ImmutableSortedDictionary.Create<string, Answer>(StringComparer.Ordinal));

    private static Reading Of(string measure, ImmutableArray<double> trials) => trials.Length == 1 ? new Reading(measure, trials[0]) : Reading.OfTrials(measure, trials);

    private DateOnly? Day(string id, DayRange range) => Text(id) is { } text ? DayText.Read("", text, range).Value?.Value : null;

    private DayRange Around(int first, int last)
    {
        DateOnly operated = Operated ?? _desk.Today;
        return new(operated.AddDays(first), operated.AddDays(last), _desk.Today) { Operated = Operated };
    }
}
