using System.Text.Json.Nodes;
using Progression.App.Commands;
using Progression.App.Tests.Commands.Plans;

namespace Progression.App.Tests.Commands.Reassess;

public sealed class ForecastCommandTests : IDisposable
{
    private readonly PlanBench _bench = new();

    public void Dispose() => _bench.Dispose();

    private string Data(string measure, string? text = null)
    {
        CommandRun run = _bench.Run("forecast", _bench.File(text ?? PlanBench.Short), "--measure", measure);
        Assert.Equal((ExitCode.Good, ""), (run.Code, run.Messages));
        return run.Data;
    }

    [Fact]
    public void Tells_basis_range_chance_and_what_it_is_not()
    {
        string data = Data("knee-flexion");

        Assert.StartsWith("Active flexion (deg), K-100, from what was known on 2026-03-06", data, StringComparison.Ordinal);
        Assert.Contains("wide; 1 reading, error 5\ndeg.", data, StringComparison.Ordinal);
        Assert.Contains("Measured: 62 in week 0.6", data, StringComparison.Ordinal);
        Assert.Matches(@"\n +8 +1?\d[05] +\d?\d[05] to 1?\d[05] +\d?\d[05] to 1?\d[05] +at least 90: about 9 in 10; at least 110: about 2 in 10\n", data); // steps of 5 deg
        Assert.Contains("not the effect of a stim dose", data, StringComparison.Ordinal);
        Assert.Contains("clinician decides", data, StringComparison.Ordinal);
        Assert.DoesNotContain(" will ", data, StringComparison.Ordinal);
        Assert.All(data.Split('\n'), line => Assert.InRange(line.TrimEnd().Length, 0, 120));
    }

    [Theory]
    [InlineData("knee-flexion", "flexion_active")]
    [InlineData("knee_flexion", "flexion_active")]
    [InlineData("flexion-active", "flexion_active")]
    [InlineData("knee-extension", "extension_passive")]
    [InlineData("lag", "extension_lag")]
    [InlineData("strength", "quadriceps_pre_op_share")]
    [InlineData("six-minute-walk", "six_minute_walk")]
    public void A_measure_has_its_id_and_a_short_word(string word, string id) =>
        Assert.Equal(id, (string)JsonNode.Parse(_bench.Run("forecast", _bench.File(PlanBench.Short), "--measure", word, "--json").Data)!["measure"]!);

    [Fact]
    public void Says_why_there_is_no_forecast() =>
        Assert.StartsWith("No forecast for K-100. The lag is forecast from active and passive extension together. Active extension deficit: there is no published prior", Data("lag"), StringComparison.Ordinal);

    [Fact]
    public void Is_withheld_while_a_red_flag_is_open() =>
        Assert.StartsWith(
            "No forecast for K-100. A red flag is open",
            Data("knee-flexion", PlanBench.Short.Replace("    readings:\n", "    signs:\n      clot_signs: yes\n    readings:\n", StringComparison.Ordinal)), StringComparison.Ordinal);

    [Fact]
    public void Offers_the_nearest_measure_for_an_unknown_one()
    {
        CommandRun run = _bench.Run("forecast", _bench.File(PlanBench.Short), "--measure", "knee-flexio");

        Assert.Equal((ExitCode.Usage, ""), (run.Code, run.Data));
        Assert.Contains("Did you mean \"knee-flexion\"?", run.Messages, StringComparison.Ordinal);
    }

    [Fact]
    public void A_case_that_is_not_there_is_told()
    {
        CommandRun run = _bench.Run("forecast", "NO-SUCH", "--measure", "lag");

        Assert.Equal((ExitCode.NoInput, ""), (run.Code, run.Data));
        Assert.Contains("there is no case NO-SUCH", run.Messages, StringComparison.Ordinal);
    }

    [Fact]
    public void A_saved_case_is_forecast_by_its_code()
    {
        _bench.Run("draft", _bench.File(PlanBench.Short), "--save");

        Assert.Equal(Data("knee-flexion"), _bench.Run("forecast", "K-100", "--measure", "knee-flexion").Data);
    }
}
