using Progression.App.Actions;

namespace Progression.App.Papers;

/// <summary>Write the chosen paper as a file.</summary>
/// <param name="Name">The name of the file.</param>
public sealed record WritePaper(string Name) : ScreenEffect;

/// <summary>Show the chosen paper as text.</summary>
public sealed record ReadPaper : ScreenEffect;
