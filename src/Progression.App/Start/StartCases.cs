using Progression.App.Actions;
using Progression.Core.People;

namespace Progression.App.Start;

/// <summary>Type a new case, screen it, take its first readings and draft its plan.</summary>
public sealed record NewCase : ScreenEffect;

/// <summary>Change the data of a case.</summary>
/// <param name="Code">Which case.</param>
public sealed record ChangeCase(CaseCode Code) : ScreenEffect;

/// <summary>Go through the screening of a case.</summary>
/// <param name="Code">Which case.</param>
public sealed record ScreenCase(CaseCode Code) : ScreenEffect;
