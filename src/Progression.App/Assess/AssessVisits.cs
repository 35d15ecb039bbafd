using Progression.App.Actions;
using Progression.App.Forms;
using Progression.Core.Library;
using Progression.Core.People;

namespace Progression.App.Assess;

/// <summary>Which visit is typed: a new one, one that is kept already and is corrected, or the measures before the operation.</summary>
internal static class AssessVisits
{
    /// <summary>The visit kept of a day, the one before the operation included; null when there is none.</summary>
    public static Assessment? At(Case patient, DateOnly? day) => Kept(patient).FirstOrDefault(visit => visit.Date == day);

    /// <summary>The visits before a day, oldest first, without those before the operation.</summary>
    public static IEnumerable<Assessment> Before(Case patient, DateOnly day) => patient.Assessments.Where(visit => visit.Date < day);

    /// <summary>The form of a new visit: the day, and what is the same as last time.</summary>
    public static AssessState Begin(AssessState state, DateOnly day)
    {
        Assessment? last = Before(state.Desk.Case, day).LastOrDefault();
        string arm = Before(state.Desk.Case, day).Append(state.Desk.Case.PreOp).LastOrDefault(visit => visit?.Value(MeasureIds.LeverArm) is not null) is { } measured
            ? Entry(state, MeasureIds.LeverArm)!.Write(measured.Readings[MeasureIds.LeverArm].Value)
            : "";
        Form form = state.Form.With(line => line.Id switch
        {
            AssessLines.Date => line with { Given = DayWords.Typed(day) },
            AssessLines.Rater => line with { Given = last?.Rater ?? state.Desk.Case.Therapist ?? "" },
            MeasureIds.LeverArm => line with { Given = arm },
            _ => line,
        });
        return state with { Form = form.By(1).By(1) };
    }

    /// <summary>The form of a kept visit: its values are filled in where nothing was typed.</summary>
    public static AssessState Correct(AssessState state, Assessment standing)
    {
        Form form = state.Form.With(line => Filled(line, TextOf(state, standing, line)));
        return state with
        {
            Standing = standing,
            IsPreOp = ReferenceEquals(standing, state.Desk.Case.PreOp),
            Form = form.By(1).By(1),
            Mode = AssessMode.Form,
            Status = $"Kept values of {DayWords.Typed(standing.Date)}: what you change is kept as a correction.",
        };
    }

    /// <summary>What has to be asked about the day typed: null when nothing.</summary>
    public static string? Question(AssessState state)
    {
        if (new AssessReading(state).Day is not { } day || state.Standing is not null || state.IsPreOp)
        {
            return null;
        }

        bool before = day < state.Desk.Case.Operation.Date;
        return Wanted(state, day) is { } kept ? $"{(before ? "The measures before the operation" : "A visit")} of {DayWords.Typed(kept.Date)} "
                + $"{(before ? "are" : "is")} kept already. Fill in what is kept, and take what you change as corrections? y yes, n back to the day."
            : before ? $"{DayWords.Typed(day)} is before the operation. Take this visit as the measures before the operation? y yes, n back to the day."
            : null;
    }

    /// <summary>Yes to the question.</summary>
    public static AssessState Take(AssessState state) => new AssessReading(state).Day is { } day && Wanted(state, day) is { } kept
        ? Correct(state, kept)
        : state with { IsPreOp = true, Mode = AssessMode.Form, Form = state.Form.To(AssessLines.Date).By(1), Status = "These are the measures before the operation." };

    /// <summary>The case without the visit that is corrected, as its oddities are judged.</summary>
    public static Case Without(AssessState state) => state.Standing is not { } standing ? state.Patient
        : state.IsPreOp ? state.Patient with { PreOp = null }
        : state.Patient with { Assessments = state.Patient.Assessments.Remove(standing) };

    /// <summary>The case with the visit in its place.</summary>
    public static Case With(AssessState state, Assessment visit)
    {
        Case without = Without(state);
        return state.IsPreOp
            ? without with { PreOp = visit }
            : without with { Assessments = [.. without.Assessments.Append(visit).OrderBy(one => one.Date)] };
    }

    /// <summary>How a measure is typed; null when the library does not have it.</summary>
    public static MeasureEntry? Entry(AssessState state, string id) => state.Desk.Library.Measures.TryGetValue(id, out Measure? measure) ? new(measure, state.Sign) : null;

    private static IEnumerable<Assessment> Kept(Case patient) => patient.PreOp is { } before ? patient.Assessments.Prepend(before) : patient.Assessments;

    // Whatever day before the operation is typed, a case has one set of measures from then.
    private static Assessment? Wanted(AssessState state, DateOnly day) => day < state.Desk.Case.Operation.Date ? state.Desk.Case.PreOp : At(state.Desk.Case, day);

    private static FormLine Filled(FormLine line, string kept) =>
        line with { Given = kept, Entry = line.IsTouched && line.Id != AssessLines.Date ? line.Entry : LineEntry.Of(kept) };

    private static string TextOf(AssessState state, Assessment visit, FormLine line) => line.Id switch
    {
        AssessLines.Date => DayWords.Typed(visit.Date),
        AssessLines.Rater => visit.Rater ?? "",
        _ when AssessLines.IsSign(line) => visit.SignsSeen.TryGetValue(line.Id, out Answer answer) ? YesNo.Letter(answer) : "",
        _ => visit.Readings.TryGetValue(line.Id, out Reading? reading) && !line.IsShownOnly ? Entry(state, line.Id)!.Write(reading) : "",
    };
}
