using Progression.App.Commands;
using Progression.Records.Storage;

namespace Progression.App.Tests.Commands;

public sealed class ProgressLinesTests : IDisposable
{
    private readonly HandClock _clock = new();
    private readonly StringWriter _messages = new();
    private readonly ProgressLines _lines;

    public ProgressLinesTests() => _lines = new ProgressLines(new CommandOutput(TextWriter.Null, _messages), _clock);

    public void Dispose() => _messages.Dispose();

    [Fact]
    public void A_short_work_says_nothing()
    {
        Report(0, 10);
        Report(499, 90);

        Assert.Equal("", _messages.ToString());
    }

    [Fact]
    public void A_long_one_tells_its_percent_after_half_a_second_and_then_every_two()
    {
        int[] times = [0, 500, 600, 2499, 2500, 4400, 4600];
        foreach (int at in times)
        {
            Report(at, at / 50);
        }

        Assert.Equal(["10 %", "50 %", "92 %"], _messages.ToString().Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(line => line.Split(", ")[1].Split(';')[0]));
    }

    [Fact]
    public void Another_work_begins_anew_and_a_shown_screen_is_not_written_over()
    {
        Report(0, 1);
        _clock.Milliseconds = 600;
        _lines.Report(new WorkDone("another", 1, 0));
        List<WorkDone> heard = [];
        _lines.Screen = new Heard(heard);
        _clock.Milliseconds = 9000;
        _lines.Report(new WorkDone("another", 1, 0));

        Assert.Equal("", _messages.ToString());
        Assert.Equal([new WorkDone("another", 1, 0)], heard);
    }

    [Theory]
    [InlineData(0, 0, null)]
    [InlineData(1, 3, 33)]
    [InlineData(5, 3, 100)]
    public void Percent_is_whole_and_within_its_ends(long done, long total, int? percent) => Assert.Equal(percent, new WorkDone("x", done, total).Percent);

    private void Report(int milliseconds, long done)
    {
        _clock.Milliseconds = milliseconds;
        _lines.Report(new WorkDone("making the index again", done, 100));
    }

    private sealed class Heard(List<WorkDone> heard) : IProgress<WorkDone>
    {
        public void Report(WorkDone value) => heard.Add(value);
    }

    private sealed class HandClock : TimeProvider
    {
        public long Milliseconds { get; set; }

        public override long TimestampFrequency => 1000;

        public override long GetTimestamp() => Milliseconds;
    }
}
