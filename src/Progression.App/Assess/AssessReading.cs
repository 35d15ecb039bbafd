using System.Collections.Immutable;
using Progression.App.Forms;
using Progression.Core.Entry;
using Progression.Core.Library;
using Progression.Core.People;

namespace Progression.App.Assess;

/// <summary>Reads the form of an assessment: each line by itself, and all of them as a visit. An empty line is not measured or not asked, never zero.</summary>
/// <param name="state">The form.</param>
internal sealed class AssessReading(AssessState state)
{
    private const int MostLetters = 60;
    private const int DaysBefore = 365;

    private DateOnly Operated => state.Desk.Case.Operation.Date;

    /// <summary>The day of the visit; null while it cannot be read.</summary>
    public DateOnly? Day => ReadDay(state.Form.Line(AssessLines.Date)!).Value?.Value;

    /// <summary>What is wrong with a line; null when nothing is.</summary>
    public Problem? Wrong(FormLine line)
    {
        if (line.Id == AssessLines.Date)
        {
            return ReadDay(line).Problems.FirstOrDefault() ?? WrongDay(line);
        }

        if (line.Id == AssessLines.Rater)
        {
            return FreeText.Wrong(line.Title, line.Text, MostLetters);
        }

        return line.Text.Length > 0 ? (AssessLines.IsSign(line) ? YesNo.Read(line.Title, line.Text).Problems : Trials(line).Problems).FirstOrDefault()
            : line.Id == MeasureIds.LeverArm && HasForce
                ? new Problem(line.Title, "A force says nothing without the lever arm at which it was measured.", Entry(line)!.Allowed, "")
            : null;
    }

    /// <summary>How a line that is good is written from then on; null as it is.</summary>
    public string? Settled(FormLine line) => line.Id == AssessLines.Date && Day is { } day ? DayWords.Typed(day) : null;

    /// <summary>What a line takes, in words.</summary>
    public string Allowed(FormLine line) => line.Id switch
    {
        AssessLines.Date => $"{Days.Allowed}; one before {DayWords.Typed(Operated)} is taken as before the operation.",
        AssessLines.Rater => $"A role or initials, 0 to {MostLetters} letters. It holds for the whole visit; F2 on a value names another.",
        _ when AssessLines.IsSign(line) => $"{Signs.Questions[line.Id]} {YesNo.Allowed}.",
        _ => $"{state.Desk.Library.Measures[line.Id].Title}: {Entry(line)!.Range}.",
    };

    /// <summary>The visit as far as it can be read; a line that is wrong counts as empty. Without a day it is taken as of today.</summary>
    public Assessment Visit()
    {
        var readings = state.Standing?.Readings.ToBuilder() ?? ImmutableSortedDictionary.CreateBuilder<string, Reading>(StringComparer.Ordinal);
        var signs = state.Standing?.SignsSeen.ToBuilder() ?? ImmutableSortedDictionary.CreateBuilder<string, Answer>(StringComparer.Ordinal);
        foreach (FormLine line in state.Form.Lines.Where(line => Counts(line)))
        {
            if (AssessLines.IsSign(line) && YesNo.Read(line.Title, line.Text).Value is { } answer)
            {
                signs[line.Id] = answer.Value;
            }
            else if (!AssessLines.IsSign(line) && ReadingOf(line) is { } reading)
            {
                readings[line.Id] = reading;
            }
        }

        foreach (FormLine line in state.Form.Lines.Where(IsTakenOut))
        {
            readings.Remove(line.Id);
            signs.Remove(line.Id);
        }

        Assessment visit = new(Day ?? state.Desk.Today, readings.ToImmutable(), signs.ToImmutable()) { Rater = FreeText.OrNull(state.Form.TextOf(AssessLines.Rater)) };
        return state.Standing is { } standing ? visit with { Corrected = [.. standing.Corrected, .. PutRight(standing, visit)] } : visit;
    }

    /// <summary>Whether something that was kept is another now, or is not there any more.</summary>
    public bool IsCorrecting => state.Standing is { } standing
        && (Visit().Corrected.Length > standing.Corrected.Length || Visit().Readings.Values.Any(now => standing.Readings.TryGetValue(now.Measure, out Reading? old) && old.Value != now.Value));

    /// <summary>Whether a line held a value that was kept and is empty now: it is taken as not measured, or not asked.</summary>
    public bool IsTakenOut(FormLine line) => state.Standing is { } standing && line is { Text.Length: 0, IsShownOnly: false }
        && (standing.Readings.ContainsKey(line.Id) || standing.SignsSeen.ContainsKey(line.Id));

    /// <summary>Whether anything was typed that makes a visit.</summary>
    public bool IsEmpty => state.Standing is null ? !state.Form.Lines.Any(Counts) : !state.Form.IsTouched && state.Details.IsEmpty;

    /// <summary>How the reading of a line is taken: as typed, else as on this visit, else as the last time.</summary>
    public ReadingDetail DetailOf(string id) => state.Details.GetValueOrDefault(id) ?? KeptDetail(id) ?? LastDetail(id) ?? ReadingDetail.NotStated;

    /// <summary>How a measure was taken the last time before this visit; null when it never was.</summary>
    public ReadingDetail? LastDetail(string id) => AssessVisits.Before(state.Desk.Case, Day ?? state.Desk.Today)
        .Where(visit => visit.Date != state.Standing?.Date && visit.Readings.ContainsKey(id))
        .Select(visit => ReadingDetail.Of(visit.Readings[id]) with { Rater = null })
        .LastOrDefault();

    /// <summary>The trials in a line.</summary>
    public Entered<Choice<ImmutableArray<double>>> Trials(FormLine line) => Entry(line)!.Read(line.Title, line.Text);

    private bool HasForce => state.Form.TextOf(MeasureIds.QuadricepsForce).Length > 0 || state.Form.TextOf(MeasureIds.OtherForce).Length > 0;

    private DayRange Days => new(Operated.AddDays(-DaysBefore), state.Desk.Today, state.Desk.Today) { Operated = Operated };

    // An extension says nothing while nobody knows how it is written. A lever arm that only stands there from last time is no reading of this visit.
    private bool Counts(FormLine line) => line is { IsShownOnly: false, Text.Length: > 0 } && line.Id is not (AssessLines.Date or AssessLines.Rater)
        && (state.Sign is not null || !AssessLines.IsExtension(line.Id) || !line.IsTouched)
        && (line.Id != MeasureIds.LeverArm || line.IsTouched || HasForce || state.Standing is not null);

    private MeasureEntry? Entry(FormLine line) => AssessVisits.Entry(state, line.Id);

    private ReadingDetail? KeptDetail(string id) => state.Standing?.Readings.TryGetValue(id, out Reading? kept) == true ? ReadingDetail.Of(kept) : null;

    private Entered<Choice<DateOnly>> ReadDay(FormLine line) => DayText.Read(line.Title, line.Text, Days);

    private Problem? WrongDay(FormLine line) => state.Standing is { } standing && Day != standing.Date ? WrongMove(line, standing)
        : state.IsPreOp && Day >= Operated ? new Problem(line.Title, "These are the measures before the operation.", $"a day before {DayWords.Typed(Operated)}", Found.Of(line.Text))
        : null;

    // Before and after the operation are two places in a case; a visit does not change from one to the other by a slip in its day.
    private Problem? WrongMove(FormLine line, Assessment standing) =>
        AssessVisits.At(state.Desk.Case, Day) is { } other && !ReferenceEquals(other, standing)
            ? new Problem(line.Title, "Another visit is kept of this day, and a day has one.", $"{DayWords.Typed(standing.Date)}, or a day without a visit", Found.Of(line.Text))
        : state.IsPreOp != Day < Operated
            ? new Problem(line.Title, state.IsPreOp ? "These are the measures before the operation." : "This visit was after the operation.", $"a day {(state.IsPreOp ? "before" : "from")} {DayWords.Typed(Operated)}{(state.IsPreOp ? "" : " on")}", Found.Of(line.Text))
        : null;

    private IEnumerable<VisitCorrection> PutRight(Assessment standing, Assessment visit)
    {
        (DateOnly on, string by, string? why) = (state.Desk.Today, state.Reason?.By ?? "", state.Reason?.Why);
        IEnumerable<VisitCorrection> day = visit.Date == standing.Date ? [] : [new VisitCorrection.DayWas(standing.Date, on, by, why)];
        return day
            .Concat(standing.Readings.Values.Where(was => !visit.Readings.ContainsKey(was.Measure)).Select(was => new VisitCorrection.TakenOut(was.Measure, was.Value, on, by, why)))
            .Concat(standing.SignsSeen.Where(was => !visit.SignsSeen.TryGetValue(was.Key, out Answer now) || now != was.Value).Select(was => new VisitCorrection.AnswerWas(was.Key, was.Value, on, by, why)));
    }

    private Reading? ReadingOf(FormLine line)
    {
        Reading? kept = state.Standing?.Readings.GetValueOrDefault(line.Id);
        if (kept is not null && !line.IsTouched)
        {
            return DetailOf(line.Id).On(kept);
        }

        if (Trials(line).Value?.Value is not { } trials)
        {
            return null;
        }

        Reading typed = DetailOf(line.Id).On(trials.Length == 1 ? new Reading(line.Id, trials[0]) : Reading.OfTrials(line.Id, trials));
        return kept is null ? typed : typed with { Corrected = kept.Value == typed.Value ? kept.Corrected : kept.Corrected.Add(Corrected(kept)) };
    }

    private Correction Corrected(Reading kept) => new(kept.Value, state.Desk.Today, state.Reason?.By ?? "", state.Reason?.Why);
}
