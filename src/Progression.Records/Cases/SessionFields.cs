using System.Collections.Immutable;
using Progression.Core.Entry;
using Progression.Core.People;
using Progression.Core.Quantities;
using Progression.Records.Yaml;

namespace Progression.Records.Cases;

/// <summary>Reads logged sessions.</summary>
internal static class SessionFields
{
    /// <summary>A rating of pain or comfort.</summary>
    public static readonly NumberRange Rating = new(0, 10, "1");

    // More contractions or sets in one session than any published regimen gives; catch slips. Common practice, no source.
    private static readonly NumberRange Contractions = new(0, 1000, "contractions");
    private const int MostSets = 30;

    private static readonly QuantityForm<Percentage> Adherence = QuantityText.Percentage.Within(0, 200);
    private static readonly QuantityForm<Duration> Time = QuantityText.Duration.Within(1, 4 * 3600);

    /// <summary>The sessions, oldest first; several on one day in the order of the file.</summary>
    public static ImmutableArray<SessionLog> Read(Fields top, CaseReading reading) =>
        [.. top.Maps("sessions", Need.Optional).Select(fields => One(fields, reading)).OfType<SessionLog>().OrderBy(session => session.Date)];

    /// <summary>One session; null with problems.</summary>
    public static SessionLog? One(Fields fields, CaseReading reading)
    {
        DateOnly? date = fields.Date("date", Need.Required, reading.SinceOperation);
        int? contractions = fields.Whole("contractions", Need.Required, Contractions);
        SessionLog session = new(date ?? reading.Today, contractions ?? 0)
        {
            Peak = fields.As("peak", Need.Optional, QuantityText.Current.Read),
            Comfort = fields.Whole("comfort", Need.Optional, Rating),
            Evoked = fields.As("evoked", Need.Optional, QuantityText.Torque.Read),
            StrongContractionTolerated = fields.YesNo("strong_contraction_tolerated", Need.Optional),
            Exercises = [.. fields.Maps("exercises", Need.Optional).Select(done => Exercise(done, reading)).OfType<ExerciseDone>()],
            PainBefore = fields.Whole("pain_before", Need.Optional, Rating),
            PainAfter = fields.Whole("pain_after", Need.Optional, Rating),
            PainNextMorning = fields.Whole("pain_next_morning", Need.Optional, Rating),
            Skin = fields.OneOf<SkinCheck>("skin", Need.Optional),
            Adherence = fields.As("adherence", Need.Optional, Adherence.Read),
            Note = fields.Text("note", Need.Optional, 300),
        };
        fields.Done();
        JudgeMorning(fields, date ?? CaseReading.Earliest, session.PainNextMorning, reading);
        return date is not null && contractions is not null ? session : null;
    }

    /// <summary>Refuses pain of a morning that has not come yet.</summary>
    public static void JudgeMorning(Fields fields, DateOnly day, int? pain, CaseReading reading)
    {
        if (pain is not null && day >= reading.Today)
        {
            fields.Refuse("pain_next_morning", "The morning after this session has not come yet.", "left out; it completes the session later", $"{pain}");
        }
    }

    private static ExerciseDone? Exercise(Fields fields, CaseReading reading)
    {
        string? id = fields.OneOf("exercise", Need.Required, reading.Library.Exercises.Keys);
        ImmutableArray<SetDone> sets = fields.Values("sets", SetText.Read);
        Duration? time = fields.As("time", Need.Optional, Time.Read);
        fields.Done();
        if (sets.Length > MostSets)
        {
            fields.Refuse("sets", "There are too many sets.", $"at most {MostSets} sets", $"{sets.Length} sets");
        }

        if (time is not null && fields.Has("sets"))
        {
            fields.Refuse("time", "An exercise is done in sets or by the clock.", "sets or time, not both", "both");
        }

        return id is null ? null : new ExerciseDone(id, sets) { Time = time };
    }
}
