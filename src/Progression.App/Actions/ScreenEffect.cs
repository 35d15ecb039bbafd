namespace Progression.App.Actions;

/// <summary>Something the world outside a screen's state has to do, as data: the state itself never writes or leaves.</summary>
public abstract record ScreenEffect;

/// <summary>Leave this screen; whatever had to be kept was asked for by an effect before this one.</summary>
/// <param name="Telling">What the screen below is told; null leaves it to whoever opened the screen.</param>
public sealed record LeaveScreen(ScreenEffect? Telling = null) : ScreenEffect;

/// <summary>Send the whole picture again, for a terminal that something else has written on.</summary>
public sealed record Repaint : ScreenEffect;
