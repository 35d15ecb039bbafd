using Progression.App.Actions;
using Progression.Core.People;

namespace Progression.App.Assess;

/// <summary>A visit was typed and every question about it answered: save the case, then leave the form. A save that fails leaves it open.</summary>
/// <param name="Patient">The case with the visit in it, and with the way extension deficits are written where that was asked.</param>
/// <param name="Visit">The visit itself.</param>
public sealed record AssessmentReady(Case Patient, Assessment Visit) : ScreenEffect;

/// <summary>The form was left without finishing; told to the screen below.</summary>
/// <param name="Typed">The form as it was left, to be opened again; null when nothing had been typed.</param>
public sealed record AssessmentLeft(AssessState? Typed) : ScreenEffect;
