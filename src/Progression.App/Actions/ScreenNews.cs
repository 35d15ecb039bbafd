namespace Progression.App.Actions;

/// <summary>What others have saved of what a screen shows.</summary>
/// <param name="Of">The screen that looked: <see cref="Frame.Self"/>.</param>
/// <param name="What">What it is told, while it is still the one in use.</param>
public sealed record ScreenNews(object Of, ScreenEffect What);
