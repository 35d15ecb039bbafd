using System.Collections.Immutable;
using Progression.Core.Entry;
using Progression.Core.People;
using Progression.Records.Yaml;

namespace Progression.Records.Cases;

/// <summary>Reads logged stim sessions.</summary>
internal static class SessionFields
{
    // More contractions in one session than any published regimen gives; catches slips. Common practice, no source.
    private static readonly NumberRange Contractions = new(0, 1000, "contractions");

    /// <summary>The sessions, oldest first; several on one day in the order of the file.</summary>
    public static ImmutableArray<SessionLog> Read(Fields top, CaseReading reading) =>
        [.. top.Maps("sessions", Need.Optional).Select(fields => One(fields, reading)).OfType<SessionLog>().OrderBy(session => session.Date)];

    private static SessionLog? One(Fields fields, CaseReading reading)
    {
        DateOnly? date = fields.Date("date", Need.Required, reading.SinceOperation);
        int? contractions = fields.Whole("contractions", Need.Required, Contractions);
        SessionLog session = new(date ?? reading.Today, contractions ?? 0)
        {
            Peak = fields.As("peak", Need.Optional, QuantityText.Current.Read),
            Evoked = fields.As("evoked", Need.Optional, QuantityText.Torque.Read),
            StrongContractionTolerated = fields.YesNo("strong_contraction_tolerated", Need.Optional),
            Note = fields.Text("note", Need.Optional, 300),
        };
        fields.Done();
        return date is not null && contractions is not null ? session : null;
    }
}
