using Progression.Core.Doses;
using Progression.Core.Library;
using Progression.Core.Quantities;

namespace Progression.Core.Tests.Doses;

public sealed class DapreTableTests
{
    private static readonly Mass Twenty = Mass.FromKilograms(20);

    // Worked example 35: DAPRE at 20 kg, set 1 with 10 kg, set 2 with 15 kg; the third is open-ended at the full load (Knight 1979, table seen second-hand).
    [Fact]
    public void Warms_up_at_half_and_three_quarters_of_the_working_load() => Assert.Equal(
        [(10, 10d), (6, 15d), (null, 20d)],
        DapreTable.FirstSets(Twenty).Select(set => (set.Repetitions, set.Load.Kilograms)));

    // Worked examples 35 (8 repetitions) and 36 (4 repetitions), and both edges of every row of the same table, all at 20 kg.
    [Theory]
    [InlineData(0, "15 to 17.5 kg", "15 to 17.5 kg")]
    [InlineData(2, "15 to 17.5 kg", "15 to 17.5 kg")]
    [InlineData(3, "17.5 to 20 kg", "20 kg")]
    [InlineData(4, "17.5 to 20 kg", "20 kg")]
    [InlineData(5, "20 kg", "22.5 to 25 kg")]
    [InlineData(6, "20 kg", "22.5 to 25 kg")]
    [InlineData(7, "22.5 to 25 kg", "22.5 to 27.5 kg")]
    [InlineData(8, "22.5 to 25 kg", "22.5 to 27.5 kg")]
    [InlineData(10, "22.5 to 25 kg", "22.5 to 27.5 kg")]
    [InlineData(11, "25 to 27.5 kg", "25 to 30 kg")]
    [InlineData(40, "25 to 27.5 kg", "25 to 30 kg")]
    public void Follows_the_table_at_both_edges_of_each_row(int repetitions, string fourthSet, string nextSession)
    {
        Assert.Equal(fourthSet, $"{DapreTable.Knight1979.FourthSet(Twenty, repetitions).Range}");
        Assert.Equal(nextSession, $"{DapreTable.Knight1979.NextSession(Twenty, repetitions).Range}");
    }

    [Fact]
    public void Says_not_known_when_the_repetitions_were_not_recorded()
    {
        NextLoad next = DapreTable.Knight1979.NextSession(Twenty, null);

        Assert.Null(next.Range);
        Assert.Equal("The repetitions done with the working load are not recorded.", next.Why);
    }

    [Fact]
    public void Tells_the_row_the_change_and_the_source()
    {
        NextLoad next = DapreTable.Knight1979.NextSession(Twenty, 8);

        Assert.Equal("8 repetitions at 20 kg, in the row of 7 to 10: change by +2.5 to +7.5 kg.", next.Why);
        Assert.StartsWith("Knight 1979", next.Source.Text, StringComparison.Ordinal);
        Assert.EndsWith("in the row of 11 or more: change by +5 to +10 kg.", DapreTable.Knight1979.NextSession(Twenty, 12).Why, StringComparison.Ordinal);
        Assert.EndsWith("in the row of 3 to 4: the load stays.", DapreTable.Knight1979.NextSession(Twenty, 3).Why, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(3, "0 to 0.5 kg")]
    [InlineData(1, "0 kg")]
    public void Never_takes_off_more_than_there_is(double kilograms, string expected) =>
        Assert.Equal(expected, $"{DapreTable.Knight1979.NextSession(Mass.FromKilograms(kilograms), 0).Range}");

    // A later version moves the upper rows to 5-7, 8-12 and 13 or more (from memory): the rows are data.
    [Fact]
    public void Takes_the_rows_of_another_version()
    {
        DapreTable later = DapreTable.Of(
            new Source("Later version, from memory", Standing.FromMemory),
            [.. DapreTable.Knight1979.Rows.Select(row => row with { From = row.From switch { 7 => 8, 11 => 13, int same => same } })]);

        Assert.Equal("22.5 to 25 kg", $"{later.NextSession(Twenty, 7).Range}");
        Assert.Equal("22.5 to 27.5 kg", $"{later.NextSession(Twenty, 12).Range}");
        Assert.Equal("25 to 30 kg", $"{later.NextSession(Twenty, 13).Range}");
    }

    [Theory]
    [InlineData(1, 3)]
    [InlineData(0, 0)]
    public void Refuses_rows_that_do_not_start_at_none_or_do_not_rise(int first, int second) => Assert.Throws<ArgumentException>(() => DapreTable.Of(
        new Source("test", Standing.CommonPractice), new DapreRow(first, (0, 0), (0, 0)), new DapreRow(second, (0, 0), (0, 0))));

    [Fact]
    public void Refuses_repetitions_below_none() => Assert.Throws<ArgumentOutOfRangeException>(() => DapreTable.Knight1979.FourthSet(Twenty, -1));
}
