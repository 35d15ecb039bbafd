using System.Collections.Immutable;
using Progression.App.Forms;
using Progression.Core.Entry;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Core.Quantities;

namespace Progression.App.Logs;

/// <summary>Reads the form of a session: each line by itself, and all of them as a log. An empty line is not recorded, never zero.</summary>
/// <param name="state">The form.</param>
internal sealed class LogReading(LogState state)
{
    private const int MostRating = 10;
    private const int MostAdherence = 100;
    private const int MostNote = 300;

    private static readonly ImmutableArray<(string Word, SkinCheck Value)> Skins =
        [("0", SkinCheck.Clear), ("clear", SkinCheck.Clear), ("1", SkinCheck.FadingRedness), ("redness", SkinCheck.FadingRedness), ("2", SkinCheck.Damaged), ("damaged", SkinCheck.Damaged)];

    private const string SkinAllowed = "0 or clear: nothing to see; 1 or redness: even and fading, as is usual; 2 or damaged: blister, burn, break or redness that stays";

    // Stim cannot be without contractions; what was typed of it is asked about, not dropped.
    private static readonly ImmutableArray<string> OfStim = [LogLines.Peak, LogLines.Comfort, LogLines.Skin, LogLines.Strong, LogLines.Evoked];

    private readonly Form _form = state.Form;

    /// <summary>The day; null while it cannot be read.</summary>
    public DateOnly? Day => ReadDay(_form.Line(LogLines.Date)!).Value?.Value;

    /// <summary>What is wrong with a line; null when nothing is.</summary>
    public Problem? Wrong(FormLine line) => line switch
    {
        { Id: LogLines.Date } => ReadDay(line).Problems.FirstOrDefault(),
        { Id: LogLines.Contractions } => Count(line, StimCell.MostContractions).Problems.FirstOrDefault(),
        { Text.Length: 0 } => null,
        { Id: LogLines.Note } => FreeText.Wrong(line.Title, line.Text, MostNote),
        _ when OfStim.Contains(line.Id) && NoStim => new Problem(line.Title, "There is stim in this line but none in the contractions.", "contractions from 1, or an empty line", Found.Of(line.Text)),
        _ => Value(line),
    };

    /// <summary>How a line that is good is written from then on; null as it is.</summary>
    public string? Settled(FormLine line) => line.Id == LogLines.Date && Day is { } day ? DayWords.Typed(day) : null;

    /// <summary>What a line takes, in words.</summary>
    public string Allowed(FormLine line) => line.Id switch
    {
        LogLines.Date => $"{Days.Allowed}.",
        LogLines.Contractions => $"Stimulated contractions in this session: 0 to {StimCell.MostContractions}; 0 is a session without stim.",
        LogLines.Peak => $"The highest current reached: {Peak.Allowed}.",
        LogLines.Comfort => "How the strongest contraction was borne: 0 (not bearable) to 10 (comfortable).",
        LogLines.PainBefore or LogLines.PainAfter => "0 (no pain) to 10 (worst imaginable).",
        LogLines.NextMorning => "The worst pain on the morning after that session: 0 to 10. It is kept with that session.",
        LogLines.Skin => $"{SkinAllowed}.",
        LogLines.Adherence => $"Share of the home work since the session before, as the person says: 0 to {MostAdherence} %.",
        LogLines.Strong => "Was a strong full contraction tolerated? y or n.",
        LogLines.Evoked => $"Torque made by stim alone, where it was measured: {Torque.Allowed}.",
        LogLines.Note => $"0 to {MostNote} letters.",
        _ => $"{SetsText.Allowed}. Empty is not done.",
    };

    /// <summary>The session.</summary>
    /// <exception cref="InvalidOperationException">A line is <see cref="Wrong"/>.</exception>
    public SessionLog Session() => new(Day ?? throw new InvalidOperationException("The day is wrong."), Whole(LogLines.Contractions, StimCell.MostContractions) ?? 0)
    {
        Peak = Text(LogLines.Peak) is { } peak ? Peak.Read("", peak).Value : null,
        Comfort = Whole(LogLines.Comfort, MostRating),
        Evoked = Text(LogLines.Evoked) is { } evoked ? Torque.Read("", evoked).Value : null,
        StrongContractionTolerated = Text(LogLines.Strong) is { } strong ? YesNo.Read("", strong).Value?.Value switch { Answer.Yes => true, Answer.No => false, _ => null } : null,
        Exercises = [.. _form.Lines.Where(line => IsExercise(line) && line.Text.Length > 0).Select(line => SetsText.Read(line.Id, "", line.Text).Value!)],
        PainBefore = Whole(LogLines.PainBefore, MostRating),
        PainAfter = Whole(LogLines.PainAfter, MostRating),
        Skin = Text(LogLines.Skin) is { } skin ? WordText.Read("", skin, Skins).Value?.Value : null,
        Adherence = Text(LogLines.Adherence) is { } share ? Share.Read("", share).Value : null,
        Note = Text(LogLines.Note),
    };

    /// <summary>The case with the session, and with the next morning of the session before.</summary>
    public Case Case()
    {
        SessionLog session = Session();
        Case patient = state.Desk.Case;
        SessionLog? before = LogLines.Before(patient, session.Date);
        ImmutableArray<SessionLog> sessions = before is not null && Whole(LogLines.NextMorning, MostRating) is int pain
            ? patient.Sessions.SetItem(patient.Sessions.LastIndexOf(before), before with { PainNextMorning = pain })
            : patient.Sessions;
        return patient with { Sessions = [.. sessions.Append(session).OrderBy(one => one.Date)] };
    }

    /// <summary>Whether a line is an exercise of the library.</summary>
    public bool IsExercise(FormLine line) => state.Desk.Library.Exercises.ContainsKey(line.Id);

    private DayRange Days => new(state.Desk.Case.Operation.Date, state.Desk.Today, state.Desk.Today) { Operated = state.Desk.Case.Operation.Date };

    private bool NoStim => Whole(LogLines.Contractions, StimCell.MostContractions) == 0;

    private static QuantityForm<Current> Peak => QuantityText.Current.AsTyped();

    private static QuantityForm<Torque> Torque => QuantityText.Torque.AsTyped();

    private static QuantityForm<Percentage> Share => QuantityText.Percentage.Within(0, MostAdherence).AsTyped();

    private static Problem? Value(FormLine line) => (line.Id switch
    {
        LogLines.Peak => Peak.Read(line.Title, line.Text).Problems,
        LogLines.Evoked => Torque.Read(line.Title, line.Text).Problems,
        LogLines.Adherence => Share.Read(line.Title, line.Text).Problems,
        LogLines.Skin => WordText.Read(line.Title, line.Text, Skins).Value is null ? [new Problem(line.Title, "This is not a skin check.", SkinAllowed, Found.Of(line.Text))] : [],
        LogLines.Strong => YesNo.Read(line.Title, line.Text).Value is not { Value: not Answer.Unknown }
            ? [new Problem(line.Title, "This is not yes or no.", "y or n; empty when it was not tried", Found.Of(line.Text))]
            : [],
        LogLines.Comfort or LogLines.PainBefore or LogLines.PainAfter or LogLines.NextMorning => Count(line, MostRating).Problems,
        _ => SetsText.Read(line.Id, line.Title, line.Text).Problems,
    }).FirstOrDefault();

    private Entered<Choice<DateOnly>> ReadDay(FormLine line) => DayText.Read(line.Title, line.Text, Days);

    private static Entered<WholeNumber> Count(FormLine line, int most) => WholeNumberText.Read(line.Title, line.Text, 0, most);

    private int? Whole(string id, int most) => WholeNumberText.Read("", _form.TextOf(id), 0, most).Value?.Count;

    private string? Text(string id) => FreeText.OrNull(_form.TextOf(id));
}
