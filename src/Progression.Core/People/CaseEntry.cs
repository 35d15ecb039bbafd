namespace Progression.Core.People;

/// <summary>Puts what was entered into a case. Each gives another case; nothing that stood there is lost.</summary>
public static class CaseEntry
{
    /// <summary>The case with an assessment since the operation in its place by date.</summary>
    /// <exception cref="ArgumentException">There is an assessment of that day: that one is corrected instead.</exception>
    public static Case With(this Case patient, Assessment assessment)
    {
        ArgumentNullException.ThrowIfNull(patient);
        ArgumentNullException.ThrowIfNull(assessment);
        return patient.Assessments.Any(one => one.Date == assessment.Date)
            ? throw new ArgumentException("A day has one assessment.", nameof(assessment))
            : patient with { Assessments = [.. patient.Assessments.Append(assessment).OrderBy(one => one.Date)] };
    }

    /// <summary>The case with a logged session after the earlier ones of its day.</summary>
    public static Case With(this Case patient, SessionLog session)
    {
        ArgumentNullException.ThrowIfNull(patient);
        return patient with { Sessions = [.. patient.Sessions.Append(session).OrderBy(one => one.Date)] };
    }

    /// <summary>The case with a note that closes a red flag, after the earlier ones of its day.</summary>
    public static Case With(this Case patient, FlagNote note)
    {
        ArgumentNullException.ThrowIfNull(patient);
        return patient with { FlagNotes = [.. patient.FlagNotes.Append(note).OrderBy(one => one.On)] };
    }

    /// <summary>The assessment of a day, the one before the operation included; null when there is none.</summary>
    public static Assessment? AssessmentOf(this Case patient, DateOnly date)
    {
        ArgumentNullException.ThrowIfNull(patient);
        return patient.PreOp?.Date == date ? patient.PreOp : patient.Assessments.FirstOrDefault(one => one.Date == date);
    }

    /// <summary>The case with a reading put right; the value that stood there is kept with it. The trials behind the wrong value go with it.</summary>
    /// <param name="patient">The case.</param>
    /// <param name="date">The day of the assessment, which may be the one before the operation.</param>
    /// <param name="right">The reading as it should have been; its rater, device, position and history are those that stood there.</param>
    /// <param name="correction">By whom, when and why; its wrong value is taken from what stood there.</param>
    /// <exception cref="ArgumentException">Nothing was measured there that could be put right.</exception>
    public static Case Corrected(this Case patient, DateOnly date, Reading right, Correction correction)
    {
        ArgumentNullException.ThrowIfNull(right);
        ArgumentNullException.ThrowIfNull(correction);
        Assessment? visit = patient.AssessmentOf(date);
        Reading was = visit?.Readings.GetValueOrDefault(right.Measure) ?? throw new ArgumentException("There is no such reading.", nameof(right));
        Reading now = was with
        {
            Value = right.Value,
            Trials = right.Trials,
            Each = right.Each,
            Corrected = was.Corrected.Add(correction with { Was = was.Value }),
        };
        Assessment mended = visit with { Readings = visit.Readings.SetItem(right.Measure, now) };
        return ReferenceEquals(visit, patient.PreOp)
            ? patient with { PreOp = mended }
            : patient with { Assessments = patient.Assessments.Replace(visit, mended) };
    }
}
