namespace Progression.Core.Statistics;

/// <summary>Somebody who was followed until something happened, or until nobody looked any more.</summary>
/// <param name="Time">How long, over 0: to the event, or to the last look at which it had not happened.</param>
/// <param name="Happened">Whether it happened; false is censored.</param>
public sealed record Followed(double Time, bool Happened);
