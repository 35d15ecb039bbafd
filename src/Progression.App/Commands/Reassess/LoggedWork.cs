using System.Collections.Immutable;
using System.Text.Json.Nodes;
using Progression.Core.Doses;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Records.Caseload;

namespace Progression.App.Commands.Reassess;

/// <summary>What was logged, and how the stim of its weeks stands against the plan.</summary>
/// <param name="Of">The case as it stands now, with its plan.</param>
/// <param name="Logged">The sessions that were added or completed.</param>
/// <param name="Library">Adds up the plan.</param>
internal sealed record LoggedWork(OpenedCase Of, ImmutableArray<SessionLog> Logged, ClinicalLibrary Library)
{
    /// <summary>Stim planned and done in one post-op week; planned is null where the case has no plan or the week is not on it.</summary>
    internal sealed record Week(int Number, int? SessionsPlanned, int SessionsDone, int? ContractionsPlanned, int ContractionsDone);

    /// <summary>The weeks of the logged sessions.</summary>
    public ImmutableArray<Week> Weeks
    {
        get
        {
            ImmutableArray<WeekFigures> planned = Of.Plan is { } plan ? PlanFigures.Of(plan, Library) : [];
            return [.. Logged.Select(session => PostOpWeek.Of(Of.Case.Operation.Date, session.Date)).Distinct().Order().Select(week => OfWeek(week, planned))];
        }
    }

    /// <summary>A line for each session and for each week.</summary>
    public string Text => string.Join('\n', Logged.Select(Line).Concat(Weeks.Select(Line)));

    /// <summary>A week as an object.</summary>
    public static JsonObject Node(Week week) => new()
    {
        ["week"] = week.Number,
        ["stim_sessions_planned"] = week.SessionsPlanned,
        ["stim_sessions_done"] = week.SessionsDone,
        ["stim_contractions_planned"] = week.ContractionsPlanned,
        ["stim_contractions_done"] = week.ContractionsDone,
    };

    /// <summary>In the week in which the plan begins, only its planned days are compared.</summary>
    private Week OfWeek(int number, ImmutableArray<WeekFigures> planned)
    {
        WeekFigures? figures = planned.FirstOrDefault(week => week.Week == number && week.PlannedDays > 0);
        DateOnly from = figures is null ? DateOnly.MinValue : Of.Plan!.From;
        SessionLog[] done = [.. Of.Case.StimSessions.Where(session => session.Date >= from && PostOpWeek.Of(Of.Case.Operation.Date, session.Date) == number)];
        return new Week(number, figures?.StimSessions, done.Length, figures?.StimContractions, done.Sum(session => session.Contractions));
    }

    private static string Line(Week week) => week.SessionsPlanned is null
        ? $"Week {week.Number}: {week.SessionsDone} stim sessions done with {week.ContractionsDone} contractions; none on a plan."
        : $"Week {week.Number}: {week.SessionsDone} of {week.SessionsPlanned} planned stim sessions done, {week.ContractionsDone} of {week.ContractionsPlanned} contractions.";

    private static string Line(SessionLog session) => $"{session.Date:yyyy-MM-dd}  " + string.Join(", ", new[]
    {
        session.Contractions == 0 ? "no stim" : $"{session.Contractions} stimulated contractions",
        session.Peak is { } peak ? $"peak {peak}" : null,
        session.Comfort is { } comfort ? $"comfort {comfort}" : null,
        session.Evoked is { } evoked ? $"evoked {evoked}" : null,
        session.Exercises.IsEmpty ? null : string.Join(", ", session.Exercises.Select(done => done.Exercise)),
        Pain(session),
        session.Skin is { } skin ? $"skin {Word(skin)}" : null,
        session.Adherence is { } share ? $"home work {share}" : null,
    }.OfType<string>());

    private static string? Pain(SessionLog session)
    {
        string[] told =
        [
            .. new[] { ("before", session.PainBefore), ("after", session.PainAfter), ("next morning", session.PainNextMorning) }
                .Where(one => one.Item2 is not null).Select(one => $"{one.Item2} {one.Item1}"),
        ];
        return told.Length == 0 ? null : "pain " + string.Join(", ", told);
    }

    private static string Word(SkinCheck skin) => skin switch
    {
        SkinCheck.Clear => "clear",
        SkinCheck.FadingRedness => "fading redness",
        SkinCheck.Damaged => "damaged: no stim on it until it is healed",
        _ => throw new ArgumentOutOfRangeException(nameof(skin)),
    };
}
