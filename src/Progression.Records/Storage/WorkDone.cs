using System.Globalization;

namespace Progression.Records.Storage;

/// <summary>How far a long work is. It is reported often and cheaply; whoever hears it decides when to tell a person.</summary>
/// <param name="Task">What is being done, as it reads after "progression:".</param>
/// <param name="Done">How much of it is done, in a unit of its own, from 0.</param>
/// <param name="Total">How much there is in all; 0 when that is not known.</param>
public sealed record WorkDone(string Task, long Done, long Total)
{
    /// <summary>The whole percent that are done, 0 to 100; null when the total is not known.</summary>
    public int? Percent => Total <= 0 ? null : (int)Math.Clamp(100 * Done / Total, 0, 100);

    /// <summary>How much is done, in words; empty when there is nothing to say.</summary>
    public string Amount => Percent is int percent ? $"{percent} %" : Done > 0 ? string.Create(CultureInfo.InvariantCulture, $"{Done:N0} so far") : "";
}
