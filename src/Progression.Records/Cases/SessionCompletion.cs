using Progression.Core.People;
using Progression.Records.Yaml;

namespace Progression.Records.Cases;

/// <summary>Reads what became known of a session after it was logged. What was recorded is not written over.</summary>
internal static class SessionCompletion
{
    /// <summary>The case with the session completed; as it was, with problems, where that cannot be.</summary>
    public static Case Read(Fields fields, Case patient, CaseReading reading)
    {
        DateOnly? date = fields.Date("date", Need.Required, reading.SinceOperation);
        SessionLog[] ofDay = [.. patient.Sessions.Where(session => session.Date == date)];
        int? which = fields.Whole("session", Need.Optional, new NumberRange(1, Math.Max(1, ofDay.Length), "1"));
        int? pain = fields.Whole("pain_next_morning", Need.Optional, SessionFields.Rating);
        SkinCheck? skin = fields.OneOf<SkinCheck>("skin", Need.Optional);
        fields.Done();
        if (date is not DateOnly day || Find(fields, ofDay, which, day) is not { } session)
        {
            return patient;
        }

        SessionFields.JudgeMorning(fields, day, pain, reading);
        if (pain is null && skin is null)
        {
            fields.Refuse("date", "Nothing is given that would complete the session.", "pain_next_morning, skin", DaySpan.Text(day));
        }

        Recorded(fields, "pain_next_morning", session.PainNextMorning?.ToString(System.Globalization.CultureInfo.InvariantCulture), pain is not null);
        Recorded(fields, "skin", session.Skin is SkinCheck seen ? EnumWords.Of(seen) : null, skin is not null);
        SessionLog now = session with { PainNextMorning = pain ?? session.PainNextMorning, Skin = skin ?? session.Skin };
        return patient with { Sessions = [.. patient.Sessions.Select(one => ReferenceEquals(one, session) ? now : one)] };
    }

    private static SessionLog? Find(Fields fields, SessionLog[] ofDay, int? which, DateOnly day)
    {
        if (ofDay.Length == 0)
        {
            fields.Refuse("date", "No session is logged for this day.", "the day of a logged session", DaySpan.Text(day));
            return null;
        }

        if (ofDay.Length > 1 && which is null && !fields.Has("session"))
        {
            fields.Refuse("session", "Several sessions are logged for this day; say which one is meant.", $"a whole number from 1 to {ofDay.Length}", "");
            return null;
        }

        return ofDay[(which ?? 1) - 1];
    }

    private static void Recorded(Fields fields, string key, string? recorded, bool given)
    {
        if (recorded is not null && given)
        {
            fields.Refuse(key, "This was recorded when the session was logged and is not written over.", "left out", recorded);
        }
    }
}
