using Progression.Core.Documents;

namespace Progression.Core.Tests.Documents;

public sealed class CurveTests
{
    [Fact]
    public void A_line_goes_through_each_of_its_points_in_order()
    {
        (double, double)[] points = [(0, 0), (10, 5), (20, 0), (30, 8)];
        List<(double X, double Y)> line = [.. Curve.Through([.. points], isClosed: false)];

        Assert.Equal([0, 8, 16, 24], points.Select(point => line.FindIndex(one => Math.Abs(one.X - point.Item1) < 1e-9 && Math.Abs(one.Y - point.Item2) < 1e-9)));
        Assert.Equal(25, line.Count);
    }

    [Fact]
    public void A_closed_line_has_a_piece_back_to_its_first_point() => Assert.Equal(24, Curve.Through([(0, 0), (10, 0), (5, 8)], isClosed: true).Length);

    [Fact]
    public void One_point_is_no_line() => Assert.Throws<ArgumentException>(() => Curve.Through([(0, 0)], isClosed: false));
}
