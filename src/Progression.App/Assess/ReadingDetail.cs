using Progression.Core.People;

namespace Progression.App.Assess;

/// <summary>How one reading was taken. Null means not stated.</summary>
/// <param name="Device">The device.</param>
/// <param name="Position">Position of the person.</param>
/// <param name="Rater">Who measured, where it was not the rater of the visit.</param>
/// <param name="Steps">For stairs: the number of steps.</param>
public sealed record ReadingDetail(string? Device, string? Position, string? Rater, int? Steps)
{
    /// <summary>Nothing stated.</summary>
    public static ReadingDetail NotStated { get; } = new(null, null, null, null);

    /// <summary>How a reading was taken.</summary>
    public static ReadingDetail Of(Reading reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        return new(reading.Device, reading.Position, reading.Rater, reading.Steps);
    }

    /// <summary>The reading taken in this way.</summary>
    public Reading On(Reading reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        return reading with { Device = Device, Position = Position, Rater = Rater, Steps = Steps };
    }

    /// <summary>In words: "device long goniometer, position supine"; empty when nothing is stated.</summary>
    public override string ToString() => string.Join(", ", new[]
    {
        Device is null ? "" : $"device {Device}",
        Position is null ? "" : $"position {Position}",
        Rater is null ? "" : $"rater {Rater}",
        Steps is null ? "" : $"{Steps} steps",
    }.Where(words => words.Length > 0));
}
