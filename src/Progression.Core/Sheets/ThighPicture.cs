using System.Collections.Immutable;
using Progression.Core.Documents;
using Progression.Core.People;

namespace Progression.Core.Sheets;

/// <summary>
/// A drawing of a thigh from the front with its two pads: the first high on the outer side, the second low on the inner side above the kneecap (common
/// practice, no source). Figures in it stand for words beside it, so that it is the same in every language: 1 and 2 the pads, 3 the kneecap, 4 the cut.
/// </summary>
internal static class ThighPicture
{
    private const double Width = 200;
    private const double Height = 250;
    private const double Outline = 2.5;
    private const double Figures = 20;

    // A right thigh: the outer side is on the left of whoever looks at the person.
    private static readonly ImmutableArray<(double, double)> Outer = [(30, 2), (22, 45), (27, 100), (40, 150), (54, 186), (58, 206), (56, 226), (57, 248)];
    private static readonly ImmutableArray<(double, double)> Inner = [(164, 2), (163, 45), (156, 100), (147, 145), (142, 176), (140, 200), (132, 224), (128, 248)];
    private static readonly ImmutableArray<(double, double)> Kneecap = [(98, 186), (111, 190), (118, 203), (113, 219), (98, 227), (83, 219), (78, 203), (85, 190)];
    private static readonly ImmutableArray<(double, double)> Cut = [(98, 164), (98, 246)];

    /// <summary>The drawing for a side.</summary>
    public static Drawing Of(Side side)
    {
        double Turned(double x) => side == Side.Right ? x : Width - x;
        DrawnLine Line(IEnumerable<(double X, double Y)> points, bool isClosed, double weight = Outline) => new([.. points.Select(point => (Turned(point.X), point.Y))], isClosed, weight);
        DrawnLabel Label(string text, double x, double y) => new(text, (Turned(x), y), Figures);
        return new Drawing(Width, Height,
        [
            Line(Curve.Through(Outer, isClosed: false), isClosed: false),
            Line(Curve.Through(Inner, isClosed: false), isClosed: false),
            Line(Curve.Through(Kneecap, isClosed: true), isClosed: true),
            Line(Cut, isClosed: false, 3) with { IsDashed = true },
            Line(Pad((64, 66), -6), isClosed: true) with { IsGrey = true },
            Line(Pad((122, 128), 6), isClosed: true) with { IsGrey = true },
            Line([(119, 207), (168, 207)], isClosed: false, 1),
            Line([(94, 240), (32, 240)], isClosed: false, 1),
        ],
        [Label("1", 64, 66), Label("2", 122, 128), Label("3", 181, 207), Label("4", 19, 240)]);
    }

    // Twice as long as wide, as pads of 5 x 10 cm are, and turned along the thigh.
    private static IEnumerable<(double X, double Y)> Pad((double X, double Y) middle, double degrees)
    {
        (double sin, double cos) = Math.SinCos(degrees * Math.PI / 180);
        return new[] { (-17.0, -34.0), (17, -34), (17, 34), (-17, 34) }
            .Select(corner => (middle.X + (corner.Item1 * cos) - (corner.Item2 * sin), middle.Y + (corner.Item1 * sin) + (corner.Item2 * cos)));
    }
}
