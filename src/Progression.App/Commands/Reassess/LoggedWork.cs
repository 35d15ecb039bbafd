using System.Collections.Immutable;
using System.Text.Json.Nodes;
using Progression.Core.Doses;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Quantities;
using Progression.Records.Caseload;

namespace Progression.App.Commands.Reassess;

/// <summary>What was logged, and how its weeks stand against the plan.</summary>
/// <param name="Of">The case as it stands now, with its plan.</param>
/// <param name="Logged">The sessions that were added or completed.</param>
/// <param name="Library">Adds up the plan.</param>
internal sealed record LoggedWork(OpenedCase Of, ImmutableArray<SessionLog> Logged, ClinicalLibrary Library)
{
    /// <summary>The weeks of the logged sessions that are on the plan; none where the case has no plan.</summary>
    public ImmutableArray<WeekDone> Weeks
    {
        get
        {
            ImmutableHashSet<int> logged = [.. Logged.Select(session => PostOpWeek.Of(Of.Case.Operation.Date, session.Date))];
            return Of.Plan is { } plan ? [.. DoneFigures.Of(plan, Of.Case, Library).Where(week => week.Week >= plan.FirstWeek && logged.Contains(week.Week))] : [];
        }
    }

    /// <summary>A line for each session and for each week.</summary>
    public string Text => string.Join('\n', Logged.Select(Line).Concat(Weeks.Select(Line)));

    /// <summary>A week as an object.</summary>
    public static JsonObject Node(WeekDone week) => new()
    {
        ["week"] = week.Week,
        ["stim_sessions_planned"] = week.StimSessionsPlanned,
        ["stim_sessions_done"] = week.StimSessionsDone,
        ["stim_contractions_planned"] = week.ContractionsPlanned,
        ["stim_contractions_done"] = week.ContractionsDone,
        ["exercises_planned"] = week.ExercisesPlanned,
        ["exercises_done"] = week.ExercisesDone,
        ["home_work_percent"] = week.Adherence?.Percent,
    };

    private static string Line(WeekDone week) => !week.IsLogged
        ? $"Week {week.Week}: nothing logged on its planned days."
        : $"Week {week.Week}: {week.StimSessionsDone} of {week.StimSessionsPlanned} planned stim sessions done, {week.ContractionsDone} of {week.ContractionsPlanned} contractions"
            + (week.ExercisesDone is int exercises ? $", {exercises} of {week.ExercisesPlanned} exercises" : "")
            + (week.Adherence is { } share ? $", home work {Number.Text(share.Percent, 0)} %." : ".");

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
