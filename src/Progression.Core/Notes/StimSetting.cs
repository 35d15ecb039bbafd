using System.Collections.Immutable;
using Progression.Core.Doses;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Core.Quantities;

namespace Progression.Core.Notes;

/// <summary>The settings of a week of stim, a name and a value each, so that another person can set the same.</summary>
internal static class StimSetting
{
    private const string Open = "not stated, set at the clinic";

    // Product practice: one low over the inner quadriceps, one high towards the outer side (common practice, no source).
    private const string PadPlace = "one high on the outer front of the thigh, one low on the inner front above the kneecap; off the cut (common practice)";

    internal static ImmutableArray<(string Name, string Value)> Of(NoteOrder order, StimCell cell, int week)
    {
        Regimen? regimen = order.Library.Regimens.GetValueOrDefault(order.Plan.Regimen);
        return
        [
            ("Phase", order.Library.RungOf(cell.Rung).Title),
            ("Dose", FormattableString.Invariant($"{cell.Contractions} contractions, {Times(cell.SessionsPerDay)} a day, {cell.Days}")),
            .. regimen is null ? [("Programme", $"{order.Plan.Regimen}, which the library does not have")] : Settings(order, regimen, cell.Contractions),
            .. Along(order, week) is { } along ? new[] { ("Active with it", along) } : [],
            ("Last tolerated", LastCurrent.Words(order.Patient, order.Today)),
            ("Skin", Skin(order)),
            ("Stimulator", order.Patient.Stimulator ?? "not recorded"),
        ];
    }

    private static IEnumerable<(string Name, string Value)> Settings(NoteOrder order, Regimen regimen, int contractions) =>
    [
        ("On / off", $"{Told(regimen.On)} / {Told(regimen.Off)}{Session(regimen, contractions)}"),
        ("Ramps", $"up {Told(regimen.RampUp)}, down {Told(regimen.RampDown)}{(regimen.Ramps.IsOpen ? "" : $"; {regimen.Ramps.Value.ToString().ToLowerInvariant()} the on-time{From(regimen.Ramps.Standing)}")}"),
        ("Current", Shape(regimen)),
        ("Pads", $"{(order.Patient.Pads is { } pads ? $"two of {pads}, in use" : regimen.Pad.IsOpen ? $"size {Open}" : $"two of {regimen.Pad}")}; {PadPlace}"),
        ("Position", $"{Told(regimen.Position)}{(regimen.Isometric is { IsOpen: false, Value: true } ? "; knee held still" : "")}"),
        ("Intensity", $"{Told(regimen.Intensity)}. As strong as tolerated, never painful; raise it when it fades (common practice)"),
        ("Programme", $"{regimen.Title} [{regimen.Source.StandingWords}]"),
    ];

    private static string Session(Regimen regimen, int contractions) =>
        PlanFigures.SessionSeconds(regimen, contractions) is double seconds ? $"; {Number.Text(seconds / 60, 1)} min with the last rest" : "";

    private static string Shape(Regimen regimen)
    {
        string form = regimen.Waveform.IsOpen ? "waveform not stated" : Words(regimen.Waveform.Value) + From(regimen.Waveform.Standing);
        string width = regimen.Width.IsOpen ? "" : $", {regimen.Width} {(regimen.WidthIs.IsOpen ? "(of a phase or the whole pulse: not stated)" : $"a {regimen.WidthIs.Value.ToString().ToLowerInvariant()}")}";
        string carrier = regimen.Carrier.IsOpen ? "" : $", carrier {regimen.Carrier}, burst {(regimen.BurstDuty.IsOpen ? "share not stated" : regimen.BurstDuty.ToString())}";
        return $"{form}, {Told(regimen.Rate)}{width}{carrier}";
    }

    private static string Words(Waveform form) => form switch
    {
        Waveform.BurstSine => "bursts of a sine",
        Waveform.BurstTriangle => "bursts of a triangle",
        _ => form.ToString().ToLowerInvariant(),
    };

    private static string Told<T>(Stated<T> field) where T : notnull => field.IsOpen ? Open : field.ToString();

    private static string From(Standing standing) => standing == Standing.Seen ? "" : $" ({Source.Words(standing)})";

    private static string Times(int sessions) => sessions == 1 ? "one session" : FormattableString.Invariant($"{sessions} sessions");

    private static string? Along(NoteOrder order, int week) =>
        order.Plan.ContentAt(Lanes.WithStim, week) is ActiveCell cell && order.Library.Exercises.TryGetValue(cell.Exercise, out Exercise? exercise)
            ? $"{exercise.Title}; {exercise.Position}"
            : null;

    private static string Skin(NoteOrder order) =>
        order.Patient.StimSessions.LastOrDefault(log => log.Date <= order.Today && log.Skin is not null) is { } log
            ? $"{(log.Skin switch { SkinCheck.Clear => "clear", SkinCheck.FadingRedness => "even redness that faded", _ => "DAMAGED: no stim on it until it is healed" })} on {NoteOrder.Day(log.Date)}"
            : "not logged";
}
