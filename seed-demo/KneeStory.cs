using System.Collections.Immutable;
using Progression.Core.Library;
using Progression.Core.People;

namespace Progression.SeedDemo;

/// <summary>What sets one invented knee apart; everything it does not say follows the usual course with a little noise. Days are counted from the operation.</summary>
/// <param name="Code">The code of the case.</param>
/// <param name="Day">The post-op day that is today.</param>
internal sealed record KneeStory(string Code, int Day)
{
    /// <summary>The days of the assessments, ascending, none after <see cref="Day"/>.</summary>
    public ImmutableArray<int> Visits { get; init; } = [];

    /// <summary>Weeks the knee is behind the usual course.</summary>
    public double Behind { get; init; }

    /// <summary>The day of the first stim session; null for none so far.</summary>
    public int? StimFrom { get; init; }

    /// <summary>The day of the last stim session; null for yesterday.</summary>
    public int? StimUntil { get; init; }

    /// <summary>The day from which sessions hurt more than they should; null for never.</summary>
    public int? IrritatedFrom { get; init; }

    /// <summary>How the other knee is.</summary>
    public OtherKnee OtherKnee { get; init; } = OtherKnee.Sound;

    /// <summary>The load the surgeon allows.</summary>
    public WeightBearing WeightBearing { get; init; } = WeightBearing.AsTolerated;

    /// <summary>Weeks of plan; null for the usual six.</summary>
    public int? Weeks { get; init; }

    /// <summary>Whether screening is left half done.</summary>
    public bool ScreeningOpen { get; init; }

    /// <summary>Screening answers that are not the usual no.</summary>
    public ImmutableArray<ScreeningAnswer> Answers { get; init; } = [];

    /// <summary>Readings of a visit that are not the usual ones.</summary>
    public ImmutableArray<(int Day, string Measure, double Value)> Readings { get; init; } = [];

    /// <summary>Signs of a visit that are not the usual ones.</summary>
    public ImmutableArray<(int Day, string Sign, Answer Answer)> Signs { get; init; } = [];
}
