using Progression.App.Actions;
using Progression.Core.People;

namespace Progression.App.Intake;

/// <summary>The screening was answered: save the case, then go on. A save that fails leaves it open.</summary>
/// <param name="Patient">The case with the answers; those not given stay not asked.</param>
public sealed record ScreeningAnswered(Case Patient) : ScreenEffect;

/// <summary>The screening was left without saving; told to the screen below.</summary>
/// <param name="Answered">It as it was left, to be opened again; null when nothing had been answered.</param>
public sealed record ScreeningLeft(ScreeningState? Answered) : ScreenEffect;
