using System.Collections.Immutable;
using Progression.Core.Library;
using Progression.Core.People;

namespace Progression.App.Intake;

/// <summary>The words that the form of a case takes. The beginning of one is enough; the letters of the trade stand for a load as well.</summary>
internal static class IntakeWords
{
    public static readonly ImmutableArray<(string Word, Side Value)> Sides = [("left", Side.Left), ("right", Side.Right)];

    public static readonly ImmutableArray<(string Word, WeightBearing Value)> Loads =
    [
        ("none", WeightBearing.None), ("touch", WeightBearing.Touch), ("partial", WeightBearing.Partial), ("as tolerated", WeightBearing.AsTolerated), ("full", WeightBearing.Full),
        ("nwb", WeightBearing.None), ("ttwb", WeightBearing.Touch), ("pwb", WeightBearing.Partial), ("wbat", WeightBearing.AsTolerated), ("fwb", WeightBearing.Full),
    ];

    public static readonly ImmutableArray<(string Word, OtherKnee Value)> Others =
        [("sound", OtherKnee.Sound), ("painful", OtherKnee.Painful), ("operated", OtherKnee.Operated)];

    public static string Of(WeightBearing load) => Loads.First(pair => pair.Value == load).Word;
}
