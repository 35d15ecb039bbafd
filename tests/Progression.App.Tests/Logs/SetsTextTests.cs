using Progression.App.Logs;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Quantities;

namespace Progression.App.Tests.Logs;

public sealed class SetsTextTests
{
    [Theory]
    [InlineData("3x10", "10 10 10")]
    [InlineData("10 10 8", "10 10 8")]
    [InlineData("10, 10, 8", "10 10 8")]
    [InlineData("10 10 8 @5kg", "10@5 10@5 8@5")]
    [InlineData("3x10 @ 2.5 kg", "10@2.5 10@2.5 10@2.5")]
    [InlineData("10@4 10@5 8", "10@4 10@5 8@5")]
    [InlineData("2x10@4 6@6", "10@4 10@4 6@6")]
    [InlineData("10@4,10@5", "10@4 10@5")]
    [InlineData("3x10 @ 2,5 kg", "10@2.5 10@2.5 10@2.5")]
    [InlineData("0", "0")]
    public void Reads_sets(string text, string sets)
    {
        ExerciseDone done = SetsText.Read("quad-set", "Quad set", text).Value!;
        Assert.Equal(sets, string.Join(' ', done.Sets.Select(set => set.Load is { } load ? $"{set.Repetitions}@{Number.Text(load.Kilograms)}" : $"{set.Repetitions}")));
        Assert.Null(done.Time);
    }

    [Theory]
    [InlineData("15 min", 900)]
    [InlineData("7.5min", 450)]
    [InlineData("240 minutes", 14400)]
    public void Reads_a_time(string text, double seconds) => Assert.Equal(seconds, SetsText.Read("walk", "Walk", text).Value!.Time!.Seconds);

    [Theory]
    [InlineData("21x10")]
    [InlineData("0x10")]
    [InlineData("3x201")]
    [InlineData("10 @ 301 kg")]
    [InlineData("10 @ 5 lb")]
    [InlineData("10 10 @ 2,5")]
    [InlineData("241 min")]
    [InlineData("0 min")]
    [InlineData("ten")]
    [InlineData(" ")]
    [InlineData("99999999999999999999")]
    public void Refuses_what_is_out_of_range_or_not_understood(string text) =>
        Assert.Contains("sets as in 3x10", SetsText.Read("quad-set", "Quad set", text).Problems[0].Allowed, StringComparison.Ordinal);

    [Fact]
    public void A_planned_dose_reads_back_as_done()
    {
        ExerciseDose dose = ExerciseDose.InRepetitions(3, 8) with { Load = ExerciseLoad.Of(Mass.FromKilograms(2.5)) };
        ExerciseDone done = SetsText.Read("quad-set", "Quad set", SetsText.Planned(dose)).Value!;
        Assert.Equal([(8, 2.5), (8, 2.5), (8, 2.5)], done.Sets.Select(set => (set.Repetitions!.Value, set.Load!.Kilograms)));
        Assert.Equal("3x8", SetsText.Planned(ExerciseDose.InRepetitions(3, 8) with { Load = ExerciseLoad.AtEffort(13) }));
    }
}
