using Progression.App.Actions;
using Progression.Core.People;

namespace Progression.App.Flags;

/// <summary>The questions were answered: save the case, then leave the checklist. A save that fails leaves it open.</summary>
/// <param name="Patient">The case with the answers among the signs of today's visit, which is made where there was none.</param>
public sealed record FlagsAnswered(Case Patient) : ScreenEffect;

/// <summary>A flag was closed with a note: save the case; the checklist stays.</summary>
/// <param name="Patient">The case with the note, and with the answers given so far.</param>
/// <param name="Note">The note.</param>
public sealed record FlagClosed(Case Patient, FlagNote Note) : ScreenEffect;

/// <summary>The checklist was left without finishing; told to the screen below.</summary>
/// <param name="Answered">The checklist as it was left, to be opened again; null when nothing had been answered.</param>
public sealed record FlagsLeft(FlagListState? Answered) : ScreenEffect;
