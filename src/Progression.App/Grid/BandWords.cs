using Progression.App.Pictures;
using Progression.Core.Plans;

namespace Progression.App.Grid;

/// <summary>How a band is named and inked.</summary>
internal static class BandWords
{
    public static string Title(Band band) => band switch
    {
        Band.Milestones => "Milestones",
        Band.Stim => "Stim",
        Band.Active => "Active work",
        _ => "Checks",
    };

    public static Ink InkOf(Band band) => band switch
    {
        Band.Milestones => Ink.Milestone,
        Band.Stim => Ink.Stim,
        Band.Active => Ink.Work,
        _ => Ink.Check,
    };
}
