using Progression.App.Actions;

namespace Progression.App.Grid;

/// <summary>Forget a draft of an earlier session: it was recovered into this one, or nobody wants it.</summary>
/// <param name="Id">Which one, by <see cref="DraftOffer.Id"/>.</param>
public sealed record ForgetDraft(string Id) : ScreenEffect;

/// <summary>Open a form again that was left half typed.</summary>
/// <param name="Id">Which one, by <see cref="DraftOffer.Id"/>.</param>
public sealed record OpenKeptForm(string Id) : ScreenEffect;
