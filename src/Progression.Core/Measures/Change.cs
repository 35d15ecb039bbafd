using System.Collections.Immutable;
using Progression.Core.Findings;
using Progression.Core.Library;

namespace Progression.Core.Measures;

/// <summary>What can be said of two readings of one measure.</summary>
public sealed record Change
{
    /// <summary>The measure.</summary>
    public required Measure Measure { get; init; }

    /// <summary>Day of the older reading.</summary>
    public required DateOnly From { get; init; }

    /// <summary>Day of the newer reading.</summary>
    public required DateOnly To { get; init; }

    /// <summary>The older value, in the measure's unit.</summary>
    public required double Old { get; init; }

    /// <summary>The newer value, in the measure's unit.</summary>
    public required double New { get; init; }

    /// <summary>New minus old in the measure's unit, sign as measured.</summary>
    public double Difference => New - Old;

    /// <summary>Whether the difference goes the better way; false when there is none.</summary>
    public required bool IsBetter { get; init; }

    /// <summary>The smallest difference from the old value, in the direction moved, that counts: in the unit, over zero; null where no yardstick is known.</summary>
    public required double? Detectable { get; init; }

    /// <summary>Confidence level of the detectable change in percent.</summary>
    public required double LevelPercent { get; init; }

    /// <summary>The class; null when the two cannot be classed, for the reason in <see cref="WhyNot"/>.</summary>
    public required ChangeClass? Class { get; init; }

    /// <summary>Why the two cannot be classed; null when they are.</summary>
    public string? WhyNot { get; init; }

    /// <summary>Whether it matters.</summary>
    public Importance Importance { get; init; }

    /// <summary>Worse by less than the detectable change, but by enough to look at, or for the second time in a row.</summary>
    public bool PossiblyWorse { get; init; }

    /// <summary>What else to know: rater, device or position changed, a step that waits to be confirmed, a known bias.</summary>
    public ImmutableArray<string> Notes { get; init; } = [];

    /// <summary>Standard error of the older reading on the measure's scale; null on a scale of steps and where none is known.</summary>
    public double? ErrorOld { get; init; }

    /// <summary>Standard error of the newer reading on the measure's scale; null on a scale of steps and where none is known.</summary>
    public double? ErrorNew { get; init; }

    /// <summary>Correlation taken between the errors of active and passive extension; null but for the lag.</summary>
    public double? ErrorCorrelation { get; init; }

    /// <summary>The figure that <see cref="Importance"/> was held against; null where none is published.</summary>
    public ImportantChange? Matters => IsBetter ? Measure.ImportantGain : Measure.ImportantLoss ?? Measure.ImportantGain;

    /// <summary>What it is worked out from: both values, their errors, the multiplier, the figure for importance.</summary>
    public ImmutableArray<Input> Inputs => [.. ChangeInputs.Of(this)];

    /// <summary>Where the error, or on a scale of steps the step, comes from.</summary>
    public required Source Source { get; init; }

    /// <summary>The class in words, with what is known of its importance. Never "unchanged".</summary>
    public string Words => Class switch
    {
        ChangeClass.Improved => "improved" + Weight,
        ChangeClass.Worse => "worse" + Weight,
        ChangeClass.NoDetectableChange => (PossiblyWorse ? "possible worsening" : "no detectable change") + Weight,
        _ => "not classed" + Weight,
    };

    /// <summary>One character: + improved, - worse, ~ no detectable change, ! possible worsening, ? not classed.</summary>
    public string Mark => Class switch
    {
        ChangeClass.Improved => "+",
        ChangeClass.Worse => "-",
        ChangeClass.NoDetectableChange => PossiblyWorse ? "!" : "~",
        _ => "?",
    };

    private string Weight => Importance switch
    {
        Importance.Important => ", likely important",
        Importance.CouldBe => ", could be important: re-measure",
        Importance.NotShown when Class is ChangeClass.Improved or ChangeClass.Worse => ", not shown to be important",
        _ => "",
    };
}
