namespace Progression.App.Actions;

/// <summary>Open the line that finds an action of the present mode by its words.</summary>
public sealed record FindAction : ScreenEffect;

/// <summary>Do the action that was found; told to the screen below the line.</summary>
/// <param name="Id">The action's id.</param>
public sealed record DoAction(string Id) : ScreenEffect;
