using System.Collections.Concurrent;
using Progression.Records.Tests.Storage;

namespace Progression.Faults.Tests;

/// <summary>Fault: a bit on the disk turns over.</summary>
public sealed class BitFlipTests : IDisposable
{
    private const int Flips = 500;
    private readonly KnownStore _known = new();

    [Theory]
    [InlineData("plans.journal")]
    [InlineData("plans.db")]
    public void Of_five_hundred_flipped_bits_none_shows_a_wrong_value(string name)
    {
        Random random = new(20260302);
        long length = new FileInfo(_known.Whole.File(name)).Length;
        (long At, int Bit)[] flips = [.. Enumerable.Range(0, Flips).Select(_ => (random.NextInt64(length), random.Next(8)))];
        ConcurrentDictionary<string, int> outcomes = new();
        Parallel.ForEach(flips, flip =>
        {
            using StoreCopy spoiled = _known.Whole.Twin();
            StoreCopy.Flip(spoiled.File(name), flip.At, (byte)(1 << flip.Bit));
            outcomes.AddOrUpdate(_known.Judge(spoiled), 1, (_, count) => count + 1);
        });

        Assert.Equal(name == "plans.journal" ? ["named as damaged"] : ["rebuilt", "right"], outcomes.Keys.Order(StringComparer.Ordinal));
        Figures.Print($"{Flips} flips in {name} ({length} bytes): {string.Join(", ", outcomes.Select(one => $"{one.Value} {one.Key}"))}, 0 wrong");
    }

    public void Dispose() => _known.Dispose();
}
