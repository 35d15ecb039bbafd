using System.Collections.Immutable;
using Progression.Core.Library;
using Progression.Core.People;

namespace Progression.SeedDemo;

/// <summary>The situations of the demo caseload, one knee for each.</summary>
internal static class DemoStories
{
    /// <summary>The stories as told on a day, the showcase first.</summary>
    public static ImmutableArray<KneeStory> On(DateOnly today) =>
    [
        new(DemoCaseload.Showcase, 24) { Visits = [4, 11, 18], StimFrom = 5 },
        new("TERN-11", 4) { Visits = [4] },
        StepsDown,
        ClotSuspected,
        Cleared(today),
        Irritated,
        BehindOnFlexion,
        RedFlag,
        new("SNIPE-08", 9) { Visits = [4, 9], ScreeningOpen = true },
        OtherKneePainful,
        Stopped,
        new("AVOCET-10", 16)
        {
            Visits = [3, 10, 16], StimFrom = 4, WeightBearing = WeightBearing.Partial, Answers = [new("impaired-sensation", Answer.Yes, null)],
        },
    ];

    /// <summary>Week 4: the lag is closed at two assessments a week apart and strength has risen.</summary>
    private static KneeStory StepsDown => new("WREN-07", 27)
    {
        Visits = [5, 13, 20, 27],
        StimFrom = 5,
        Behind = -0.6,
        Readings =
        [
            (13, MeasureIds.ExtensionPassive, 6), (13, MeasureIds.ExtensionActive, 14), (20, MeasureIds.ExtensionPassive, 4), (20, MeasureIds.ExtensionActive, 8),
            (27, MeasureIds.ExtensionPassive, 3), (27, MeasureIds.ExtensionActive, 6),
        ],
    };

    private static KneeStory ClotSuspected => new("PLOVER-02", 8) { Visits = [3, 8], Answers = [new("clot", Answer.Yes, null)] };

    private static KneeStory Cleared(DateOnly today) => new("HERON-05", 12)
    {
        Visits = [5, 12],
        StimFrom = 6,
        Answers =
        [
            new("active-implant", Answer.Yes, new Clearance("Device clinic", today.AddDays(-8), "Stim of the thigh may be used; first session watched.")),
        ],
    };

    /// <summary>Two grades more swelling, more pain, and not settled by morning.</summary>
    private static KneeStory Irritated => new("STORK-09", 19)
    {
        Visits = [4, 12, 19],
        StimFrom = 5,
        IrritatedFrom = 16,
        Readings = [(19, MeasureIds.Effusion, 4), (19, MeasureIds.PainRest, 5), (19, MeasureIds.PainActivity, 8), (19, MeasureIds.PainNextMorning, 6)],
        Signs = [(19, Signs.SettledByMorning, Answer.No)],
    };

    /// <summary>Week 7: flexion stays under the floor.</summary>
    private static KneeStory BehindOnFlexion => new("CRANE-12", 46)
    {
        Visits = [5, 19, 32, 46],
        StimFrom = 6,
        Behind = 1,
        Weeks = 12,
        Readings =
        [
            (19, MeasureIds.FlexionActive, 76), (19, MeasureIds.FlexionPassive, 81), (32, MeasureIds.FlexionActive, 81), (32, MeasureIds.FlexionPassive, 86),
            (46, MeasureIds.FlexionActive, 84), (46, MeasureIds.FlexionPassive, 88),
        ],
    };

    /// <summary>The straight-leg raise is lost and the lag wide open after a stumble.</summary>
    private static KneeStory RedFlag => new("DUNLIN-04", 23)
    {
        Visits = [5, 15, 23],
        StimFrom = 6,
        Readings =
        [
            (23, MeasureIds.ExtensionPassive, 4), (23, MeasureIds.ExtensionActive, 28), (23, MeasureIds.StraightLegRaises, 0),
            (23, MeasureIds.QuadricepsTorque, 9),
        ],
        Signs = [(23, Signs.PopFallOrGap, Answer.Yes)],
    };

    /// <summary>Week 5: the other leg is no yardstick.</summary>
    private static KneeStory OtherKneePainful => new("LINNET-06", 33)
    {
        Visits = [4, 12, 20, 26, 33],
        StimFrom = 5,
        OtherKnee = OtherKnee.Painful,
        Weeks = 8,
        Readings =
        [
            (20, MeasureIds.ExtensionPassive, 5), (20, MeasureIds.ExtensionActive, 9), (26, MeasureIds.ExtensionPassive, 4), (26, MeasureIds.ExtensionActive, 8),
            (33, MeasureIds.ExtensionPassive, 4), (33, MeasureIds.ExtensionActive, 7),
        ],
    };

    /// <summary>Ten weeks out: criteria met, stim over, strengthening goes on.</summary>
    private static KneeStory Stopped => new("OWL-01", 70)
    {
        Visits = [4, 13, 20, 27, 41, 55, 70],
        StimFrom = 5,
        StimUntil = 54,
        Behind = -0.8,
        Weeks = 16,
    };
}
