using System.Collections.Immutable;
using System.Text.Json;
using Progression.Core.Findings;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Core.Quantities;
using Progression.Core.Stimulation;
using static Progression.Records.Json.JsonReading;

namespace Progression.Records.Plans;

/// <summary>Reads what <see cref="PlanJson"/> writes.</summary>
internal static class PlanJsonReader
{
    /// <summary>The plan.</summary>
    public static PlanRevision Read(JsonElement json)
    {
        string? schema = Text(json, "schema");
        int weeks = RequiredWhole(json, "weeks");
        return schema != PlanJson.Schema ? throw new ArgumentException($"It is of the form {schema}, not {PlanJson.Schema}.")
            : weeks is < 1 or > PostOpWeek.Longest ? throw new ArgumentException($"It has {weeks} weeks.")
            : Consistent(new PlanRevision
            {
                Code = CaseCode.Parse(Required(json, "code")) ?? throw new ArgumentException("Its code is not a case code."),
                Operation = RequiredDay(json, "operation"),
                Weeks = weeks,
                From = RequiredDay(json, "from"),
                OpenFrom = Day(json, "open_from") ?? RequiredDay(json, "from"),
                Regimen = Required(json, "regimen"),
                LibraryVersion = Required(json, "library"),
                StimBarred = List(json, "stim_barred", reason => reason.GetString()!),
                Decision = Part(json, "decision", Decision),
                Lanes = List(json, "lanes", Lane),
                Cells = List(json, "cells", Cell).ToImmutableDictionary(),
            });
    }

    /// <summary>A cell that no lane or week shows would be lost without a word.</summary>
    private static PlanRevision Consistent(PlanRevision plan)
    {
        HashSet<string> lanes = [.. plan.Lanes.Select(lane => lane.Id)];
        return lanes.Count != plan.Lanes.Length ? throw new ArgumentException("It has a lane twice.")
            : plan.Cells.Keys.Any(cell => !lanes.Contains(cell.Lane) || cell.Week < 1 || cell.Week > plan.Weeks) ? throw new ArgumentException("It has a cell outside its grid.")
            : plan;
    }

    private static PlanDecision Decision(JsonElement json) =>
        PlanDecision.Of(RequiredDay(json, "assessment"), RequiredWhole(json, "proposed"), RequiredWhole(json, "taken"), Text(json, "reason"));

    private static Lane Lane(JsonElement json) =>
        new(Required(json, "id"), Word<Band>(Required(json, "band")), Required(json, "title"), Required(json, "short"))
        {
            Measure = Text(json, "measure"),
            Slot = Text(json, "slot") is string slot ? Word<ActiveSlot>(slot) : null,
        };

    private static KeyValuePair<CellAddress, PlanCell> Cell(JsonElement json) => KeyValuePair.Create(
        new CellAddress(Required(json, "lane"), RequiredWhole(json, "week")),
        new PlanCell(
            Part(json, "content", Content),
            Basis(json.GetProperty("basis")),
            Part(json, "pin", pin => new Pin(Part(pin, "suggested", Content), Text(pin, "reason")))));

    private static Basis Basis(JsonElement json) => new(
        Required(json, "rule"),
        Required(json, "reason"),
        List(json, "inputs", input => new Input(Required(input, "name"), Required(input, "value"))),
        List(json, "limits", Limit),
        Source(json.GetProperty("source")),
        Required(json, "would_change"));

    private static Limit Limit(JsonElement json) => new(
        Required(json, "id"), Required(json, "title"), RequiredNumber(json, "value"), Required(json, "unit"), Source(json.GetProperty("source")));

    private static Source Source(JsonElement json) => new(Required(json, "text"), Word<Standing>(Required(json, "standing")));

    private static CellContent Content(JsonElement json) => Required(json, "kind") switch
    {
        "stim" => new StimCell(
            Word<Rung>(Required(json, "rung")),
            Count(json, "contractions", StimCounts.MostContractions),
            Count(json, "sessions_per_day", StimCounts.MostSessionsPerDay),
            Days(json)),
        "exercise" => new ActiveCell(Required(json, "exercise"), Dose(json.GetProperty("dose"))),
        "target" => new TargetCell(RequiredNumber(json, "value")),
        "skills" => new SkillCell(Required(json, "text")),
        string kind => throw new ArgumentException($"It holds a cell of an unknown kind: {kind}."),
    };

    // Zero where stim has stopped.
    private static int Count(JsonElement json, string name, int most) =>
        RequiredWhole(json, name) is int count && count >= 0 && count <= most ? count : throw new ArgumentException($"{name} is not from 0 to {most}.");

    private static ExerciseDose Dose(JsonElement json)
    {
        int times = RequiredWhole(json, "times_per_day");
        ExerciseDose dose = Amount(json, "bout_s", Duration.FromSeconds) is { } bout
            ? ExerciseDose.InTime(bout, times)
            : ExerciseDose.InRepetitions(RequiredWhole(json, "sets"), RequiredWhole(json, "repetitions"), times);
        return dose with { Hold = Amount(json, "hold_s", Duration.FromSeconds), Load = Load(json), Days = Days(json) };
    }

    private static ExerciseLoad? Load(JsonElement json) =>
        Amount(json, "load_kg", Mass.FromKilograms) is { } mass ? ExerciseLoad.Of(mass)
        : Amount(json, "load_percent_of_maximum", Percentage.FromPercent) is { } share ? ExerciseLoad.Of(share)
        : Whole(json, "load_effort") is int effort ? ExerciseLoad.AtEffort(effort)
        : null;

    private static DaysOfWeek Days(JsonElement json) =>
        DaysOfWeek.Parse(Required(json, "days")) ?? throw new ArgumentException("It holds days that are not days of the week.");
}
