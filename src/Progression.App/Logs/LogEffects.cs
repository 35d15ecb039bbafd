using Progression.App.Actions;
using Progression.Core.People;

namespace Progression.App.Logs;

/// <summary>A session was typed: save the case, then leave the form. A save that fails leaves it open.</summary>
/// <param name="Patient">The case with the session in it, and with the next morning of the one before where that was typed.</param>
/// <param name="Session">The session itself.</param>
public sealed record SessionReady(Case Patient, SessionLog Session) : ScreenEffect;

/// <summary>The form was left without finishing; told to the screen below.</summary>
/// <param name="Typed">The form as it was left, to be opened again; null when nothing had been typed.</param>
public sealed record SessionLeft(LogState? Typed) : ScreenEffect;
