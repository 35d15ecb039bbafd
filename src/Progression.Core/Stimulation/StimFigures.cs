using System.Collections.Immutable;
using Progression.Core.Quantities;

namespace Progression.Core.Stimulation;

/// <summary>
/// All figures of a stim dose and the cautions they give rise to. The headline figures are also there as quantities: null where they are not computed,
/// or where absurd settings make them larger than the quantity can be.
/// </summary>
public sealed record StimFigures
{
    internal StimFigures(ImmutableArray<StimFigure> all, ImmutableArray<StimCaution> cautions) => (All, Cautions) = (all, cautions);

    /// <summary>One figure of every kind, in the order of <see cref="FigureKinds.All"/>.</summary>
    public ImmutableArray<StimFigure> All { get; }

    /// <summary>The cautions, worst first.</summary>
    public ImmutableArray<StimCaution> Cautions { get; }

    /// <summary>Charge of one phase.</summary>
    public Charge? ChargePerPhase => Quantity(FigureKinds.Charge, Charge.FromMicrocoulombs, 1_000_000);

    /// <summary>Mean of the current without its sign, at full current.</summary>
    public Current? AverageCurrent => Quantity(FigureKinds.Average, Current.FromMilliamperes, 1000);

    /// <summary>Root mean square of the current, at full current.</summary>
    public Current? RmsCurrent => Quantity(FigureKinds.Rms, Current.FromMilliamperes, 1000);

    /// <summary>Length of a session by the clock.</summary>
    public Duration? SessionLength => Quantity(FigureKinds.Session, Duration.FromSeconds, 604_800);

    /// <summary>On-time as a share of on-time and rest.</summary>
    public Percentage? DutyCycle => Quantity(FigureKinds.Duty, Percentage.FromPercent, 1000);

    /// <summary>Evoked torque as a share of the maximal voluntary torque.</summary>
    public Percentage? TrainingIntensity => Quantity(FigureKinds.Intensity, Percentage.FromPercent, 1000);

    /// <summary>The figure of a kind.</summary>
    public StimFigure this[FigureKind kind] => All[FigureKinds.All.IndexOf(kind)];

    private T? Quantity<T>(FigureKind kind, Func<double, T> make, double most)
        where T : class => this[kind].Value is { } value && value <= most ? make(value) : null;
}
