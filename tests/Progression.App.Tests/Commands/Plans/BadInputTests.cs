using System.Text;
using Progression.App.Commands;

namespace Progression.App.Tests.Commands.Plans;

/// <summary>Every kind of bad input: one clear message, nothing on the output, nothing in the store, an exit code.</summary>
public sealed class BadInputTests : IDisposable
{
    private readonly PlanBench _bench = new();

    public void Dispose() => _bench.Dispose();

    // The rows of "Bad input": piece of the good file, what stands there instead, line, field, what is allowed, what was found.
    [Theory]
    [InlineData("date: 2026-03-02", "date: 2026-03-08", 5, "operation.date: The operation lies in the future.", "a day from 2000-01-01 to 2026-03-07", "2026-03-08")]
    [InlineData("born: 1957-05-14", "born: 2026-03-03", 5, "operation.date: The operation", "a day from 2026-03-03 to 2026-03-07", "2026-03-02")]
    [InlineData("date: 2026-03-02", "date: 2026-02-30", 5, "operation.date: This is not a day of the calendar.", "year-month-day", "2026-02-30")]
    [InlineData("weeks: 6", "weeks: 0", 11, "plan.weeks: ", "a whole number from 1 to 26 weeks", "0")]
    [InlineData("weeks: 6", "from: 2026-03-01", 11, "plan.from: ", "a day from 2026-03-02 to 2026-08-30", "2026-03-01")]
    [InlineData("62 deg", "62 Nm", 19, "assessments[1].readings.flexion_active: The value has a unit that does not fit.", "a number with deg", "62 Nm")]
    [InlineData("62 deg", "62", 19, "assessments[1].readings.flexion_active: The value has no unit.", "a number with deg", "62")]
    [InlineData("62 deg", "900 deg", 19, "assessments[1].readings.flexion_active: The value is out of range.", "from 0 to 160 deg", "900 deg")]
    [InlineData("contractions: 10", "contractions: -10", 24, "sessions[1].contractions: ", "a whole number from 0 to 1000 contractions", "-10")]
    [InlineData("strong-15-twice-daily", "strong-15-twice-dayly", 10, "plan.regimen: ", "strong-15-twice-daily", "strong-15-twice-dayly")]
    [InlineData("flexion_active", "flexion_activ", 19, "assessments[1].readings.flexion_activ: ", "the id of a measure of the library", "flexion_activ")]
    [InlineData("code: K-100", "code: K-100\ncode: K-101", 3, "code: This field already stands on line 2.", "each field once", "code")]
    [InlineData("infection: no", "infection: no\n    infection: yes", 16, "screening.answers.infection: This field already stands on line 15.", "each field once", "infection")]
    [InlineData("procedure: Knee replacement", "procedure: \"Knee \u001b[2J\"", 7, "A control or invisible character stands in the text.", "visible characters", "U+001B")]
    [InlineData("procedure: Knee replacement", "procedure: Knee \u202Etnemecalper", 7, "A control or invisible character stands in the text.", "visible characters", "U+202E, which changes the direction of writing")]
    [InlineData("procedure: Knee replacement", "procedure: &a [x, *a]", 7, "operation.procedure: Anchors and aliases are not used here.", "each value written out", "&a")]
    [InlineData("code: K-100", "code: Mary Poppins", 2, "code: ", "2 to 24 capital letters, digits and hyphens", "Mary Poppins")]
    public void A_bad_file_gets_one_message_with_file_line_field_what_is_allowed_and_what_was_found(
        string piece, string by, int line, string wrong, string allowed, string found)
    {
        Assert.Equal(2, PlanBench.Short.Split(piece).Length);

        string message = Refused(_bench.File(PlanBench.Short.Replace(piece, by, StringComparison.Ordinal)));

        Assert.Contains($"case.yaml:{line}: {wrong}", message, StringComparison.Ordinal);
        Assert.Contains(allowed, message[message.IndexOf(" Allowed: ", StringComparison.Ordinal)..], StringComparison.Ordinal);
        Assert.EndsWith($" Found: \"{found}\".", message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_truncated_file_says_where_it_breaks_off() =>
        Assert.Contains("case.yaml:2: ", Refused(_bench.File("schema: case-file/1\ncode: \"K-1")), StringComparison.Ordinal);

    [Fact]
    public void A_binary_file_is_no_text() =>
        Assert.EndsWith("case.yaml:1: This is not a text file: it holds a zero byte. Allowed: UTF-8 text. Found: \"binary data\".", Refused(_bench.Bytes([0x7F, 0x45, 0x4C, 0x46, 0, 0])), StringComparison.Ordinal);

    [Fact]
    public void A_file_that_is_not_in_utf_8_is_refused() => Refused(_bench.Bytes([.. "code: "u8, 0xE9, 0x0A]));

    [Fact]
    public void An_empty_file_is_refused() => Refused(_bench.File(""));

    [Fact]
    public void Fifty_megabytes_are_refused_before_they_are_read()
    {
        string path = _bench.File("");
        using (FileStream file = File.OpenWrite(path))
        {
            byte[] lines = Encoding.ASCII.GetBytes(string.Concat(Enumerable.Repeat("a: b\n", 20_000)));
            for (int part = 0; part < 500; part++)
            {
                file.Write(lines);
            }
        }

        long before = GC.GetAllocatedBytesForCurrentThread();

        Assert.EndsWith("Allowed: at most 1000000 bytes. Found: \"50000000 bytes\".", Refused(path), StringComparison.Ordinal);
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 40_000_000);
    }

    // The well-known shape of nine levels with nine references each: 9^9 values if it were written out.
    [Fact]
    public void Aliases_that_would_explode_are_refused_at_the_first()
    {
        IEnumerable<string> levels = Enumerable.Range(1, 9).Select(level => $"l{level}: &l{level} [{string.Join(", ", Enumerable.Repeat($"*l{level - 1}", 9))}]");

        Assert.Contains("Anchors and aliases are not used here.", Refused(_bench.File("l0: &l0 x\n" + string.Join('\n', levels))), StringComparison.Ordinal);
    }

    [Fact]
    public void Nesting_without_end_is_refused() => Refused(_bench.File(new string('[', 100_000)));

    [Theory]
    [InlineData("\u001b[2J\u202Ename.yaml")]
    [InlineData("K-\u0007")]
    public void A_name_with_control_characters_reaches_no_terminal(string name)
    {
        CommandRun run = _bench.Run("check", name);

        Assert.Equal((ExitCode.NoInput, ""), (run.Code, run.Data));
        Assert.DoesNotContain(run.Messages.TrimEnd(), letter => char.IsControl(letter) || letter == '\u202E');
    }

    [Theory]
    [InlineData("--on 2s --off 4s --ramp-up 3s --ramp-down 0s --ramps inside", "--on: The on-time is shorter than the ramps inside it.", "at least 3 s", "2 s")]
    [InlineData("--pad 0x5cm", "--pad: ", "each side from 0.1 to 50 cm", "0x5cm")]
    [InlineData("--pad round0cm", "--pad: ", "each side from 0.1 to 50 cm", "round0cm")]
    [InlineData("--contractions -10", "--contractions: The number is out of range.", "a whole number from 1 to 1000", "-10")]
    [InlineData("--peak -60mA", "--peak: ", "from 0 to 1000 mA", "-60mA")]
    [InlineData("--peak 60V", "--peak: ", "a number with mA", "60V")]
    public void A_bad_dose_gets_one_message(string line, string wrong, string allowed, string found)
    {
        CommandRun run = _bench.Run(["dose", .. line.Split(' ')]);

        string message = Assert.Single(run.Messages.TrimEnd().Split('\n'));
        Assert.Equal((ExitCode.Usage, ""), (run.Code, run.Data));
        Assert.StartsWith("progression dose: " + wrong, message, StringComparison.Ordinal);
        Assert.Contains(allowed, message, StringComparison.Ordinal);
        Assert.EndsWith($" Found: \"{found}\".", message, StringComparison.Ordinal);
    }

    [Fact]
    public void What_was_saved_before_stays_as_it_was()
    {
        _bench.Run("draft", _bench.File(PlanBench.Short), "--save");

        CommandRun run = _bench.Run("draft", _bench.File(PlanBench.Short.Replace("62 deg", "900 deg", StringComparison.Ordinal)), "--save");

        Assert.Equal((ExitCode.BadData, ""), (run.Code, run.Data));
        Assert.Equal(1, _bench.Saved("K-100")!.CaseStamp.Revision);
    }

    /// <summary>The one message of a refused file, asked to be saved; the same for check and why.</summary>
    private string Refused(string path)
    {
        CommandRun run = _bench.Run("draft", path, "--save");

        Assert.Equal((ExitCode.BadData, ""), (run.Code, run.Data));
        Assert.False(Directory.Exists(_bench.Store));
        Assert.Equal(run, _bench.Run("check", path));
        Assert.Equal(run, _bench.Run("why", path, "--week", "1", "--lane", "stim"));
        return Assert.Single(run.Messages.TrimEnd().Split('\n'));
    }
}
