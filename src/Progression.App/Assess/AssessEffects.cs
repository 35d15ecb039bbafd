using System.Collections.Immutable;
using Progression.App.Actions;
using Progression.Core.Measures;
using Progression.Core.People;

namespace Progression.App.Assess;

/// <summary>A visit was typed and every question about it answered: save the case, then leave the form. A save that fails leaves it open.</summary>
/// <param name="Patient">The case with the visit in it, and with the way extension deficits are written where that was asked.</param>
/// <param name="Visit">The visit itself.</param>
/// <param name="Notes">What was remarked about the visit and needs no answer, such as what was measured last time and not now.</param>
public sealed record AssessmentReady(Case Patient, Assessment Visit, ImmutableArray<EntryQuery> Notes) : ScreenEffect;

/// <summary>The form was left without finishing; told to the screen below.</summary>
/// <param name="Typed">The form as it was left, to be opened again; null when nothing had been typed.</param>
public sealed record AssessmentLeft(AssessState? Typed) : ScreenEffect;
