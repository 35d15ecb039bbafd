using Progression.App.Actions;
using Progression.Core.People;

namespace Progression.App.Intake;

/// <summary>The case was typed: save it, then go on. A save that fails leaves the form open.</summary>
/// <param name="Patient">The case.</param>
/// <param name="Anew">Whether the knee or the day of the operation is another than before, so that the plan has to be drafted anew.</param>
public sealed record CaseTyped(Case Patient, bool Anew) : ScreenEffect;

/// <summary>Leave the form for the screening of the same case.</summary>
public sealed record GoToScreening : ScreenEffect;

/// <summary>The form was left without finishing; told to the screen below.</summary>
/// <param name="Typed">The form as it was left, to be opened again; null when nothing had been typed.</param>
public sealed record IntakeLeft(IntakeState? Typed) : ScreenEffect;
