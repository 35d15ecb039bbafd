using Progression.App.Actions;

namespace Progression.App.Figures;

/// <summary>Write the curve of the chosen goal as a file.</summary>
public sealed record WriteCurve : ScreenEffect;
