using System.Text.Json.Nodes;
using Progression.App.Commands;
using Progression.Core.Stimulation;
using Progression.Records.Library;

namespace Progression.App.Tests.Commands.Dose;

public sealed class DoseCommandTests
{
    private const string Full =
        "dose --on 15s --off 45s --ramp-up 3s --ramp-down 0s --ramps inside --contractions 15 --count-last-rest yes --per-day 2 --days 7 --weeks 6 "
        + "--pps 50 --width 250us --width-is phase --waveform symmetric --carrier 2500Hz --burst-duty 50% --peak 60mA --pad 7.6x12.7cm "
        + "--evoked 24Nm --max-voluntary 80Nm --json";

    private static readonly Lazy<JsonObject> FullAnswer = new(() => Json(Full));

    // The example column of the reference's dose arithmetic (Stevens-Lapsley 2012 settings, 60 mA assumed), and its examples 1 to 7, 18, 26, 33, 43 and 45.
    [Theory]
    [InlineData("cycle_s", 60)]
    [InlineData("session_s", 900)]
    [InlineData("contractions_session", 15)]
    [InlineData("work_s_session", 225)]
    [InlineData("plateau_s_session", 180)]
    [InlineData("plateau_s_contraction", 12)]
    [InlineData("current_s_session", 225)]
    [InlineData("duty_percent", 25)]
    [InlineData("rest_per_on", 3)]
    [InlineData("sessions_week", 14)]
    [InlineData("contractions_week", 210)]
    [InlineData("clock_min_week", 210)]
    [InlineData("work_min_week", 52.5)]
    [InlineData("plateau_min_week", 42)]
    [InlineData("sessions_course", 84)]
    [InlineData("contractions_course", 1260)]
    [InlineData("clock_h_course", 21)]
    [InlineData("pulses_contraction", 750)]
    [InlineData("charge_per_phase_uC", 15.0)]
    [InlineData("average_absolute_mA", 1.5)]
    [InlineData("rms_mA", 9.487)]
    [InlineData("rms_on_and_off_mA", 4.743)]
    [InlineData("net_charge_per_pulse_uC", 0)]
    [InlineData("charge_contraction_mC", 11.25)]
    [InlineData("charge_contraction_ramped_mC", 10.125)]
    [InlineData("charge_session_mC", 168.75)]
    [InlineData("pad_area_cm2", 96.52)]
    [InlineData("density_mA_cm2", 0.0983)]
    [InlineData("peak_at_caution_mA", 1221)]
    [InlineData("power_density_W_cm2", 0.000466)]
    [InlineData("energy_per_pulse_mJ", 0.9)]
    [InlineData("training_intensity_percent", 30)]
    public void Reckons_the_full_example_line(string key, double expected)
    {
        double value = FullAnswer.Value[key]!.GetValue<double>();

        Assert.InRange(value, expected - (expected * 0.001), expected + (expected * 0.001));
    }

    [Fact]
    public void The_full_example_line_prints_nothing_but_json_and_ends_well()
    {
        CommandRun run = Run(Full);

        Assert.Equal(ExitCode.Good, run.Code);
        Assert.Empty(run.Messages);
        JsonObject answer = JsonNode.Parse(run.Data)!.AsObject();
        Assert.Equal(
            [.. FigureKinds.All.Select(kind => kind.Key), "cautions", "not_computed", "how", "rests_on"],
            answer.Select(pair => pair.Key));
        Assert.Empty(answer["cautions"]!.AsArray());
        Assert.Equal(["cycles_per_burst", "second_phase_mA"], answer["not_computed"]!.AsObject().Select(pair => pair.Key));
        Assert.Equal("on 15 s + off 45 s", answer["how"]!["cycle_s"]!.GetValue<string>());
        Assert.Equal("the width is of one phase", answer["rests_on"]!["rms_mA"]![0]!.GetValue<string>());
    }

    [Fact]
    public void A_key_that_cannot_be_computed_is_null_and_has_its_reason()
    {
        JsonObject answer = Json("dose --on 15s --off 45s --contractions 15 --json");

        Assert.True(answer.ContainsKey("session_s"));
        Assert.Null(answer["session_s"]);
        Assert.Equal("not given: whether the last rest counts", answer["not_computed"]!["session_s"]!.GetValue<string>());
        Assert.Equal(60, answer["cycle_s"]!.GetValue<double>());
    }

    [Fact]
    public void Every_key_is_either_a_number_or_has_a_reason()
    {
        JsonObject answer = Json("dose --json");

        Assert.All(FigureKinds.All, kind => Assert.True(answer[kind.Key] is null && answer["not_computed"]![kind.Key] is not null, kind.Key));
    }

    [Fact] // 5.2 mA/cm2, 0.52 W/cm2, 200 mA and 400 mJ of a mistyped current: formulas 14, 18 and 20 of the reference.
    public void Cautions_carry_limit_value_source_and_standing_and_set_the_exit_code()
    {
        CommandRun run = CommandRun.Of(
            "dose", "--waveform", "burst-sine", "--pps", "50", "--carrier", "2.5kHz", "--burst-duty", "50%", "--peak", "400mA", "--pad", "round 7cm", "--json");

        Assert.Equal(ExitCode.Warning, run.Code);
        JsonArray cautions = JsonNode.Parse(run.Data)!["cautions"]!.AsArray();
        Assert.Equal(
            ["stim.current-density", "stim.power-density", "stim.output-high", "stim.pulse-energy", "stim.output-stated"],
            cautions.Select(caution => caution!["id"]!.GetValue<string>()));
        JsonObject density = cautions[0]!.AsObject();
        Assert.Equal(["id", "severity", "text", "limit", "unit", "value", "source", "standing"], density.Select(pair => pair.Key));
        Assert.Equal("warning", density["severity"]!.GetValue<string>());
        Assert.Equal(2, density["limit"]!.GetValue<double>());
        Assert.Equal("mA/cm2", density["unit"]!.GetValue<string>());
        Assert.InRange(density["value"]!.GetValue<double>(), 5.19, 5.20);
        Assert.Contains("IEC 60601-2-10", density["source"]!.GetValue<string>(), StringComparison.Ordinal);
        Assert.Equal("seen", density["standing"]!.GetValue<string>());
    }

    [Fact]
    public void A_note_alone_ends_well()
    {
        CommandRun run = Run("dose --evoked 10Nm --max-voluntary 80Nm");

        Assert.Equal(ExitCode.Good, run.Code);
        Assert.Contains("note: Training intensity of 12.5 % is less than the usual aim of 30 %", run.Data, StringComparison.Ordinal);
    }

    [Fact]
    public void The_table_tells_how_each_figure_was_got_and_what_is_missing()
    {
        CommandRun run = Run("dose --on 15s --off 45s");

        Assert.Matches(@"(?m)^  cycle +60 s  = on 15 s \+ off 45 s\r?$", run.Data);
        Assert.Matches(@"(?m)^  duty cycle +25 %  = 100 x on 15 s / \(on 15 s \+ off 45 s\)\r?$", run.Data);
        Assert.Contains("contractions a session: not given: contractions", run.Data, StringComparison.Ordinal);
        Assert.Contains("no ramp is given, so the on-time stands as it is", run.Data, StringComparison.Ordinal);
        Assert.Contains("a clinician decides", run.Data, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("dose --on 15", "--on: The duration has no unit. Allowed: a number with s, min, h or ms, from 0 to 3600 s. Found: \"15\".")]
    [InlineData("dose --on -5s", "--on: The duration is out of range.")]
    [InlineData("dose --on 2s --ramp-up 3s --ramp-down 0s --ramps inside", "--on: The on-time is shorter than the ramps inside it. Allowed: at least 3 s")]
    [InlineData("dose --pad 0x5cm", "--pad: The pad's side is out of range.")]
    [InlineData("dose --contractions 0", "--contractions: The number is out of range. Allowed: a whole number from 1 to 1000. Found: \"0\".")]
    [InlineData("dose --days 8", "Allowed: a whole number from 1 to 7. Found: \"8\".")]
    [InlineData("dose --burst-duty 101%", "--burst-duty: The share is out of range. Allowed: a number with %, from 0 to 100 %.")]
    [InlineData("dose --waveform square", "one of symmetric, asymmetric, monophasic, burst-sine, burst-triangle. Found: \"square\".")]
    [InlineData("dose --ramps sideways", "one of inside, outside")]
    [InlineData("dose --width-is both", "one of phase, pulse")]
    [InlineData("dose --count-last-rest maybe", "one of yes, no")]
    [InlineData("dose --max-voluntary 0Nm", "--max-voluntary: The maximal voluntary torque is zero. Allowed: more than 0.")]
    [InlineData("dose --peak 1e999mA", "--peak: The current is not a plain number with its unit.")]
    [InlineData("dose --peak NaN", "--peak: The current is not a plain number with its unit.")]
    [InlineData("dose --on", "--on")]
    [InlineData("dose --on 1s --on 2s", "--on")]
    [InlineData("dose --brightness 5", "--brightness")]
    [InlineData("dose 15s", "15s")]
    public void Refuses_bad_options_on_one_line_and_prints_no_data(string line, string message)
    {
        CommandRun run = Run(line);

        Assert.Equal(ExitCode.Usage, run.Code);
        Assert.Empty(run.Data);
        string first = run.Messages.Split('\n')[0];
        Assert.StartsWith("progression dose: ", first, StringComparison.Ordinal);
        Assert.Contains(message, first, StringComparison.Ordinal);
    }

    [Fact]
    public void Reports_all_bad_options_at_once() =>
        Assert.Equal(3, Run("dose --on 15 --days 9 --waveform square").Messages.TrimEnd().Split('\n').Length);

    [Fact]
    public void Shows_no_control_character_of_a_refused_value() =>
        Assert.DoesNotContain('\u001b', CommandRun.Of("dose", "--peak", "\u001b]0;title\u0007 60mA").Messages);

    [Fact]
    public void Reckons_bursts_asymmetric_pulses_and_session_lengths_from_their_options()
    {
        // Formulas 13 and 15 of the reference; Lieber 1996 for 30 minutes at 10/20 s.
        Assert.Equal(7.5, Json("dose --waveform asymmetric --width 250us --width-is phase --second-width 1ms --pps 50 --peak 60mA --json")["rms_mA"]!.GetValue<double>(), 6);
        Assert.Equal(24.49, Json("dose --waveform burst-triangle --carrier 2.5kHz --burst-duty 50% --peak 60mA --json")["rms_mA"]!.GetValue<double>(), 2);
        Assert.Equal(60, Json("dose --on 10s --off 20s --session 30min --json")["contractions_session"]!.GetValue<double>());
    }

    [Fact] // Stevens-Lapsley 2012 as in example 6 of the reference; what its paper leaves open is named.
    public void Starts_from_a_published_regimen_and_lays_the_options_over_it()
    {
        JsonObject asPublished = Json("dose --regimen strong-15-twice-daily --json");
        JsonObject completed = Json("dose --regimen strong-15-twice-daily --ramp-down 0s --count-last-rest yes --days 5 --json");

        Assert.Equal(210, asPublished["contractions_week"]!.GetValue<double>());
        Assert.Null(asPublished["session_s"]);
        Assert.Equal("not given: ramp down", asPublished["not_computed"]!["plateau_s_contraction"]!.GetValue<string>());
        Assert.Equal(150, completed["clock_min_week"]!.GetValue<double>());
        Assert.Equal(12, completed["plateau_s_contraction"]!.GetValue<double>());
    }

    [Fact]
    public void Names_the_source_of_the_regimen_beside_the_data() =>
        Assert.Contains("Stevens-Lapsley 2012", Run("dose --regimen strong-15-twice-daily --json").Messages, StringComparison.Ordinal);

    [Fact]
    public void Every_shipped_regimen_can_be_true() => Assert.All(
        LibraryReader.Default().Regimens.Values, regimen => Assert.Empty(StimDose.Of(StimSettings.From(regimen)).Problems));

    [Fact]
    public void An_unknown_regimen_is_refused_with_the_nearest_one()
    {
        CommandRun run = Run("dose --regimen strong-15-twice-dayly");

        Assert.Equal(ExitCode.Usage, run.Code);
        Assert.Contains("Did you mean strong-15-twice-daily?", run.Messages, StringComparison.Ordinal);
    }

    [Fact]
    public void Help_ends_in_examples_that_run_and_lists_every_key()
    {
        string help = Run("dose --help").Data;

        string[] examples = [.. help.Split('\n').Select(line => line.Trim()).Where(line => line.StartsWith("progression dose --", StringComparison.Ordinal))];
        Assert.Equal(4, examples.Length);
        Assert.All(examples, example => Assert.Equal(ExitCode.Good, Run(example["progression ".Length..]).Code));
        Assert.All(FigureKinds.All, kind => Assert.Contains($"  {kind.Key} ", help, StringComparison.Ordinal));
    }

    private static CommandRun Run(string line) => CommandRun.Of(line.Split(' '));

    private static JsonObject Json(string line) => JsonNode.Parse(Run(line).Data)!.AsObject();
}
