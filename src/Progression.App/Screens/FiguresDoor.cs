using System.Collections.Immutable;
using Progression.App.Actions;
using Progression.App.Figures;
using Progression.App.Papers;
using Progression.App.Stores;
using Progression.Core.Entry;
using Progression.Core.Outcomes;
using Progression.Records.Storage;

namespace Progression.App.Screens;

/// <summary>Reads every case of a store once, and shows what they come to together.</summary>
/// <param name="store">The store.</param>
internal sealed class FiguresDoor(OpenStore store)
{
    /// <summary>The clinic's figures.</summary>
    /// <exception cref="StoreException">The person may not see them, or the store is busy or damaged.</exception>
    public Frame Open()
    {
        OutcomeYardstick by = OutcomeYardstick.Of(store.Library, store.Today);
        (ImmutableArray<CaseOutcome> cases, int unreadable, string? unnoted) =
            store.Book.Figures(opened => CaseOutcome.Of(opened.Case, opened.Plan, opened.Forecasts, by), store.Progress ?? new Progress<WorkDone>());
        string told = unnoted ?? (unreadable > 0 ? $"{unreadable} cases could not be read and are in no figure." : "");
        return new Frame<FiguresState>(FiguresScreen.Definition, FiguresState.Open(cases, by, told))
        {
            Perform = (state, effect) => Turn.Stay(effect is WriteCurve && state.ChosenFigures is { } figures ? Written(state, figures) : state),
        };
    }

    private FiguresState Written(FiguresState state, WaitFigures figures)
    {
        string name = FormattableString.Invariant($"clinic-{state.Chosen.Id}-{state.Summary.Today:yyyy-MM-dd}.svg");
        (string? path, string? problem) = PaperPlace.Of(store.Folder, store.Clinic).Put(name, FiguresCurve.Made(figures, state.Summary, PaperFormat.Svg), PaperFormat.Svg);
        return state with { Status = problem is null ? $"Written: {SafeText.OneLine(path!)}" : $"Not written: {SafeText.OneLine(problem)}" };
    }
}
