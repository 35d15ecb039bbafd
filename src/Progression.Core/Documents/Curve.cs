using System.Collections.Immutable;

namespace Progression.Core.Documents;

/// <summary>A smooth line through points, as many short straight ones: every format can draw those.</summary>
public static class Curve
{
    private const int Steps = 8;

    /// <summary>The line through all the points in their order; a closed one comes back to the first.</summary>
    /// <remarks>Cubic pieces with the tangents of Catmull and Rom (from memory): at each point parallel to the line between its neighbours.</remarks>
    /// <exception cref="ArgumentException">There are fewer than two points.</exception>
    public static ImmutableArray<(double X, double Y)> Through(ImmutableArray<(double X, double Y)> points, bool isClosed)
    {
        if (points.Length < 2)
        {
            throw new ArgumentException("A line has at least two points.", nameof(points));
        }

        int pieces = isClosed ? points.Length : points.Length - 1;
        (double X, double Y) At(int index) => isClosed ? points[((index % points.Length) + points.Length) % points.Length] : points[Math.Clamp(index, 0, points.Length - 1)];
        IEnumerable<(double X, double Y)> line =
            from piece in Enumerable.Range(0, pieces)
            from step in Enumerable.Range(0, Steps)
            select Between((At(piece - 1), At(piece), At(piece + 1), At(piece + 2)), (double)step / Steps);
        return isClosed ? [.. line] : [.. line, points[^1]];
    }

    private static (double X, double Y) Between(((double X, double Y) A, (double X, double Y) B, (double X, double Y) C, (double X, double Y) D) p, double t) =>
        (Cubic(p.A.X, p.B.X, p.C.X, p.D.X, t), Cubic(p.A.Y, p.B.Y, p.C.Y, p.D.Y, t));

    private static double Cubic(double a, double b, double c, double d, double t) =>
        b + (t / 2 * (c - a + (t * ((2 * a) - (5 * b) + (4 * c) - d + (t * ((3 * (b - c)) + d - a))))));
}
