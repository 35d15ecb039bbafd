using System.Collections.Immutable;

namespace Progression.Core.Stimulation;

/// <summary>Takes each figure as it is reckoned, and gives it back under its name for further reckoning.</summary>
internal sealed class Ledger
{
    private readonly Dictionary<FigureKind, StimFigure> _figures = [];

    internal Explained Enter(FigureKind kind, Explained got)
    {
        _figures.Add(kind, new StimFigure(kind, got));
        return got.Named(kind.Title, kind.Unit);
    }

    internal ImmutableArray<StimFigure> InOrder() => [.. FigureKinds.All.Select(kind => _figures[kind])];
}
