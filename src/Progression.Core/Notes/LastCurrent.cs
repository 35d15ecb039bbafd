using Progression.Core.People;

namespace Progression.Core.Notes;

/// <summary>
/// The last tolerated current: the highest current of the latest logged session that has one and of which nobody said that a strong contraction was not
/// tolerated. It holds for that day, those pads and their places; on another day it is found anew from zero.
/// </summary>
public static class LastCurrent
{
    /// <summary>The session it was logged in; null when there is none.</summary>
    /// <param name="patient">The case.</param>
    /// <param name="until">The last day looked at.</param>
    public static SessionLog? Of(Case patient, DateOnly until)
    {
        ArgumentNullException.ThrowIfNull(patient);
        return patient.StimSessions.LastOrDefault(log => log.Date <= until && log is { Peak: not null, StrongContractionTolerated: not false });
    }

    /// <summary>In words, with its day and how it was borne; "not logged" when there is none.</summary>
    public static string Words(Case patient, DateOnly until)
    {
        if (Of(patient, until) is not { } log)
        {
            return "not logged";
        }

        string borne = log.StrongContractionTolerated == true ? "strong contraction tolerated" : "not asked whether a strong contraction was tolerated";
        string comfort = log.Comfort is int rating ? FormattableString.Invariant($", comfort {rating} of 10") : "";
        return $"{log.Peak} peak on {NoteOrder.Day(log.Date)}, {borne}{comfort}";
    }
}
