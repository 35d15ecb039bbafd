using System.Collections.Immutable;

namespace Progression.Core.Stimulation;

/// <summary>All figures of a stim dose and the cautions they give rise to.</summary>
public sealed record StimFigures
{
    internal StimFigures(ImmutableArray<StimFigure> all, ImmutableArray<StimCaution> cautions) => (All, Cautions) = (all, cautions);

    /// <summary>One figure of every kind, in the order of <see cref="FigureKinds.All"/>.</summary>
    public ImmutableArray<StimFigure> All { get; }

    /// <summary>The cautions, worst first.</summary>
    public ImmutableArray<StimCaution> Cautions { get; }

    /// <summary>The figure of a kind.</summary>
    public StimFigure this[FigureKind kind] => All[FigureKinds.All.IndexOf(kind)];
}
