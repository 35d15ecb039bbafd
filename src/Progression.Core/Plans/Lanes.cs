using System.Collections.Immutable;
using Progression.Core.Library;

namespace Progression.Core.Plans;

/// <summary>The lanes a plan has, in the order of the grid.</summary>
public static class Lanes
{
    /// <summary>The id of the stim lane.</summary>
    public const string Stim = "stim";

    /// <summary>The id of the lane of the voluntary contraction made along with stim.</summary>
    public const string WithStim = "with-stim";

    /// <summary>The id of the lane of milestones that are seen, not measured.</summary>
    public const string Seen = "skills";

    /// <summary>Computed lane: voluntary to stimulated contractions.</summary>
    public const string Pairing = "pairing";

    /// <summary>Computed lane: change of quadriceps contraction time from the week before.</summary>
    public const string Load = "load";

    /// <summary>Computed lane: minutes a day asked of the patient.</summary>
    public const string Time = "time";

    /// <summary>Computed lane: what was done of what was planned.</summary>
    public const string Done = "done";

    private static readonly ImmutableArray<Lane> Milestones =
    [
        new Lane("flexion", Band.Milestones, "Flexion", "Flexion") { Measure = MeasureIds.FlexionActive },
        new Lane("extension", Band.Milestones, "Extension deficit", "Extension") { Measure = MeasureIds.ExtensionPassive },
        new Lane("lag", Band.Milestones, "Extension lag", "Lag") { Measure = MeasureIds.Lag },
        new Lane("strength", Band.Milestones, "Quadriceps, of pre-op", "Strength") { Measure = MeasureIds.PreOpShare },
        new Lane(Seen, Band.Milestones, "Skills", "Skills"),
    ];

    private static readonly ImmutableArray<Lane> Active =
    [
        new Lane(WithStim, Band.Active, "Quads along with stim", "Quads + stim") { Slot = ActiveSlot.QuadsWithStim },
        new Lane("quads-strength", Band.Active, "Quads strength", "Quads strength") { Slot = ActiveSlot.QuadsStrength },
        new Lane("quads-function", Band.Active, "Quads in standing", "Quads standing") { Slot = ActiveSlot.QuadsFunction },
        new Lane("straighten", Band.Active, "Straighten", "Straighten") { Slot = ActiveSlot.Straighten },
        new Lane("bend", Band.Active, "Bend", "Bend") { Slot = ActiveSlot.Bend },
        new Lane("hip", Band.Active, "Hip and hamstrings", "Hip, hamstring") { Slot = ActiveSlot.HipAndHamstrings },
        new Lane("calf", Band.Active, "Calf and ankle", "Calf, ankle") { Slot = ActiveSlot.Calf },
        new Lane("walking", Band.Active, "Walking and stairs", "Walk, stairs") { Slot = ActiveSlot.Walking },
    ];

    private static readonly ImmutableArray<Lane> Checks =
    [
        new Lane(Pairing, Band.Checks, "Pairing", "Pairing"),
        new Lane(Load, Band.Checks, "Quads load change", "Load change"),
        new Lane(Time, Band.Checks, "Minutes a day", "Minutes a day"),
        new Lane(Done, Band.Checks, "Done of planned", "Done"),
    ];

    private static readonly Lane StimLane = new(Stim, Band.Stim, "Stim", "Stim");

    /// <summary>All lanes of a plan; without the stim lane and its partner when stim is barred.</summary>
    public static ImmutableArray<Lane> For(bool withStim) => withStim
        ? [.. Milestones, StimLane, .. Active, .. Checks]
        : [.. Milestones, .. Active.Where(lane => lane.Slot != ActiveSlot.QuadsWithStim), .. Checks];
}
