using System.Collections.Immutable;
using Progression.Core.Doses;
using Progression.Core.Findings;
using Progression.Core.Library;
using Progression.Core.Plans;
using Progression.Core.Quantities;
using Progression.Core.Rules;

namespace Progression.Core.Drafting;

/// <summary>The stim lane: rung by rung along the ladder's expected calendar, each with its share of the regimen's sessions.</summary>
internal static class StimDraft
{
    /// <summary>The fields a plan needs that a regimen leaves open.</summary>
    internal static ImmutableArray<string> Open(Regimen regimen)
    {
        List<string> open = [];
        if (Contractions(regimen) is null)
        {
            open.Add("contractions a session (or session length with on and off time)");
        }

        if (regimen.SessionsPerDay.IsOpen)
        {
            open.Add("sessions a day");
        }

        if (regimen.DaysPerWeek.IsOpen)
        {
            open.Add("days a week");
        }

        return [.. open];
    }

    internal static IEnumerable<KeyValuePair<CellAddress, PlanCell>> Cells(DraftFacts facts)
    {
        foreach ((int week, Rung rung, string reason) in Calendar(facts))
        {
            bool eased = facts.Irritated && week == facts.FirstWeek;
            StimCell dose = Dose(facts, rung, eased ? 0.5 : 1);
            StimCell cell = dose with { Days = facts.Within(week, dose.Days) };
            LadderRung step = facts.Library.RungOf(rung);
            Basis basis = new(
                "STIM-LADDER",
                reason + (eased ? " The knee is irritated: half the sessions this week, intensity as tolerated." : "")
                    + (rung == Rung.Stopped ? "" : $" Volume: {step.SessionShare} of the regimen's weekly sessions; intensity stays as strong as tolerated."),
                Inputs(facts, rung), [],
                step.Source,
                "An assessment: the ladder's rules, not the calendar, decide each step when the knee has been measured.");
            yield return DraftFacts.Cell(Lanes.Stim, week, cell, basis);
        }
    }

    /// <summary>Puts the voluntary contraction beside each week of stim, and takes stim out of a week that has no voluntary quadriceps work.</summary>
    internal static PlanRevision WithPairs(PlanRevision plan, DraftFacts facts)
    {
        Admission admission = new(facts.Case, facts.Expected);
        foreach (int week in facts.PlannedWeeks)
        {
            Exercise? exercise = facts.Library.Exercises.Values
                .Where(one => one.Slot == ActiveSlot.QuadsWithStim && admission.Truth(one, week) == Truth.Holds)
                .MaxBy(one => one.Rank);
            if (exercise is not null && plan.ContentAt(Lanes.Stim, week) is StimCell { Rung: not Rung.Stopped } stim)
            {
                Basis basis = DraftFacts.Because(
                    "PAIRED-WORK", $"The person contracts along with every stimulated contraction: {exercise.Title.ToLowerInvariant()}.", exercise.Source,
                    "The stim of the week: its contractions, sessions and days are taken over.", new Input("Position", exercise.Position));
                plan = plan.With(new CellAddress(Lanes.WithStim, week), new PlanCell(PairedWork.For(exercise, stim, facts.Regimen), basis, null));
            }
        }

        foreach (WeekFigures week in PlanFigures.Of(plan, facts.Library).Where(one => one.StimContractions > 0 && one.Quads.Contractions == 0))
        {
            Basis basis = DraftFacts.Because(
                "STIM-UNPAIRED", "No stim is drafted into a week without voluntary quadriceps work.", new Source("Stim is an addition to active work", Standing.CommonPractice),
                "An exercise for the quadriceps whose needs are met in this week.");
            plan = plan.With(new CellAddress(Lanes.Stim, week.Week), new PlanCell(null, basis, null));
        }

        return plan;
    }

    /// <summary>The rung of each planned week: where the person is now, then as long on each rung as the library expects.</summary>
    private static IEnumerable<(int Week, Rung Rung, string Reason)> Calendar(DraftFacts facts)
    {
        Rung rung = facts.Course.Rung ?? Rung.Familiarise;
        int spent = facts.Course.Since is { } since ? Math.Max(0, (facts.From.DayNumber - since.DayNumber) / 7) : 0;
        bool measured = facts.Course.Rung is not null;
        foreach (int week in facts.PlannedWeeks)
        {
            int? expected = facts.Library.RungOf(rung).ExpectedWeeks;
            if (!facts.Locked && spent >= expected && !(measured && week == facts.FirstWeek))
            {
                (rung, spent, expected) = (rung + 1, 0, facts.Library.RungOf(rung + 1).ExpectedWeeks);
            }

            string title = facts.Library.RungOf(rung).Title;
            yield return (week, rung, measured && week == facts.FirstWeek
                ? $"{title}: the rung reached by {LadderFacts.Day(facts.From)}{(facts.Course.Latest is { } latest ? $" (ladder: {latest.OutcomeWords})" : "")}."
                : facts.Locked ? $"{title}: a red flag is open, so the rung stays until it is closed."
                : rung == Rung.Stopped ? $"{title}: by the expected calendar stim has ended; strengthening goes on."
                : $"{title}: week {spent + 1} of {expected} on this rung by the expected calendar.{(spent == 0 && week != facts.FirstWeek ? " Take the step only when an assessment passes the ladder's rules." : "")}");
            spent++;
        }
    }

    private static StimCell Dose(DraftFacts facts, Rung rung, double ease)
    {
        if (rung == Rung.Stopped)
        {
            return new StimCell(Rung.Stopped, 0, 0, DaysOfWeek.NoDay);
        }

        (int perDay, int days) = (facts.Regimen.SessionsPerDay.Value, facts.Regimen.DaysPerWeek.Value);
        double share = facts.Library.RungOf(rung).SessionShare.Percent / 100 * ease;
        // Whole sessions; the small allowance keeps 0.2 x 5 from becoming two.
        int weekly = Math.Max(1, (int)Math.Ceiling((perDay * days * share) - 1e-9));
        int sessionsPerDay = (weekly + days - 1) / days;
        int onDays = (weekly + sessionsPerDay - 1) / sessionsPerDay;
        double contractionShare = (facts.Gate.ContractionShareAtMost?.Percent ?? 100) / 100;
        return new StimCell(
            rung,
            Math.Max(1, (int)Math.Floor((Contractions(facts.Regimen)!.Value * contractionShare) + 1e-9)),
            Math.Min(sessionsPerDay, facts.Gate.SessionsPerDayAtMost ?? int.MaxValue),
            DaysOfWeek.Spread(onDays));
    }

    /// <summary>Contractions a session: as stated, or as many on-times as fit into the session.</summary>
    private static int? Contractions(Regimen regimen) =>
        !regimen.Contractions.IsOpen ? regimen.Contractions.Value
        : !regimen.SessionLength.IsOpen && PlanFigures.SessionSeconds(regimen, 1) is double cycle && cycle > 0
            ? Math.Clamp((int)Math.Floor((regimen.SessionLength.Value.Seconds / cycle) + 1e-9), 1, StimCell.MostContractions)
        : null;

    private static ImmutableArray<Input> Inputs(DraftFacts facts, Rung rung) =>
    [
        new("Regimen", facts.Regimen.Title),
        new("Contractions a session", $"{Contractions(facts.Regimen)}{(facts.Regimen.Contractions.IsOpen ? ", from session length and cycle" : "")}"),
        new("Sessions a day, as published", facts.Regimen.SessionsPerDay.ToString()),
        new("Days a week, as published", facts.Regimen.DaysPerWeek.ToString()),
        new("Share of sessions on this rung", facts.Library.RungOf(rung).SessionShare.ToString()),
        new("On, off", $"{facts.Regimen.On}, {facts.Regimen.Off}"),
        new("Ramp up, down", $"{facts.Regimen.RampUp}, {facts.Regimen.RampDown}"),
        new("Pulses a second, width", $"{facts.Regimen.Rate}, {facts.Regimen.Width}"),
        new("Pads", facts.Case.Pads is { } pads ? $"{pads} in use; published {facts.Regimen.Pad}" : $"published {facts.Regimen.Pad}"),
        new("Position", facts.Regimen.Position.ToString()),
        new("Intensity", facts.Regimen.Intensity.ToString()),
        .. facts.Gate.SessionsPerDayAtMost is int cap ? [new Input("Cap by a precaution", $"{Number.Text(cap)} a day")] : ImmutableArray<Input>.Empty,
    ];
}
