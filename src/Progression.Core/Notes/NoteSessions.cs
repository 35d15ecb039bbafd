using System.Collections.Immutable;
using Progression.Core.Adherence;
using Progression.Core.Documents;
using Progression.Core.Doses;
using Progression.Core.People;
using Progression.Core.Quantities;

namespace Progression.Core.Notes;

/// <summary>What was planned beside what was logged, week by week up to the present one, and the adherence with its definition.</summary>
internal static class NoteSessions
{
    internal static IEnumerable<Block> Of(NoteOrder order)
    {
        int now = PostOpWeek.Of(order.Plan.Operation, order.Today);
        ImmutableArray<WeekDone> weeks = [.. DoneFigures.Of(order.Plan, order.Patient, order.Library).Where(week => week.Week >= order.Plan.FirstWeek && week.Week <= now)];
        yield return new Block.Heading(2, "Sessions and adherence");
        if (weeks.IsEmpty)
        {
            yield return new Block.Paragraph("The plan has not begun.");
            yield break;
        }

        yield return new Block.Paragraph("Logged of planned, by post-op week; the present week counts with all its planned days.");
        yield return new Block.Table(["Week", "Stim sessions", "Contractions", "Exercises", "Home work, as said"], [.. weeks.Select(week => Row(week, now))]);
        yield return new Block.Points([.. Figures(order)], InOrder: false);
        yield return new Block.Paragraph(PlanAdherence.Definition);
    }

    private static ImmutableArray<string> Row(WeekDone week, int now) =>
    [
        FormattableString.Invariant($"{week.Week}{(week.Week == now ? " (present)" : "")}"),
        Of(week.StimSessionsDone, week.StimSessionsPlanned),
        Of(week.ContractionsDone, week.ContractionsPlanned),
        Of(week.ExercisesDone, week.ExercisesPlanned),
        week.Adherence is { } told ? $"{Number.Text(told.Percent, 0)} %" : "not asked",
    ];

    private static string Of(int? done, int planned) => done is int known ? FormattableString.Invariant($"{known} of {planned}") : FormattableString.Invariant($"not logged, of {planned}");

    private static IEnumerable<string> Figures(NoteOrder order)
    {
        PlanAdherence kept = PlanAdherence.Of(order.Plan, order.Patient, order.Library, order.Today);
        yield return FormattableString.Invariant($"Weeks that are over: {kept.WeeksOver}, of which something is logged: {kept.WeeksLogged}.");
        yield return $"Stim sessions: {Share(kept.StimSessions)}";
        yield return $"Contractions: {Share(kept.Contractions)}";
        yield return $"Home work, as the person said: {(kept.HomeWork is { } told ? $"{Number.Text(told.Percent, 0)} %" : "not asked")}.";
        StimDelivered? stim = StimDelivered.Of(order.Patient, order.Library.Regimens.GetValueOrDefault(order.Plan.Regimen), order.Today);
        yield return stim is null
            ? "Stim delivered so far: not known, no session is logged."
            : FormattableString.Invariant($"Stim delivered so far, as logged: {stim.Sessions} {(stim.Sessions == 1 ? "session" : "sessions")}, {stim.Contractions} contractions{(stim.Minutes is double minutes ? $", {Number.Text(minutes, 0)} min" : "")}.");
    }

    private static string Share(DoneShare share) => share.Percent is double percent
        ? FormattableString.Invariant($"{share.Done} of {share.Planned} ({Number.Text(percent, 0)} %; at least {Number.Text(share.PercentAtLeast!.Value, 0)} % with weeks not logged counted as nothing){(share.Beyond > 0 ? $"; {share.Beyond} beyond the plan" : "")}.")
        : "not known, nothing is logged of the weeks that are over.";
}
