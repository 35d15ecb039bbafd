using System.Numerics;

namespace Progression.Core.Forecasts;

/// <summary>Cholesky factors of small symmetric matrices, kept row by row in one array, and what is solved with them.</summary>
internal static class Triangle
{
    /// <summary>Replaces a positive definite matrix by its lower triangular factor; what stands above the diagonal is left as it was.</summary>
    /// <exception cref="ArgumentException">The matrix is not positive definite.</exception>
    internal static void Factor(double[] matrix, int size)
    {
        for (int row = 0; row < size; row++)
        {
            Span<double> own = matrix.AsSpan(row * size, row + 1);
            for (int column = 0; column < row; column++)
            {
                double rest = own[column] - Dot(own[..column], matrix.AsSpan(column * size, column));
                own[column] = rest / matrix[(column * size) + column];
            }

            double square = own[row] - Dot(own[..row], own[..row]);
            own[row] = square > 0 ? Math.Sqrt(square) : throw new ArgumentException("The matrix is not positive definite.", nameof(matrix));
        }
    }

    /// <summary>Solves L x = b in place.</summary>
    internal static void Solve(ReadOnlySpan<double> factor, Span<double> values)
    {
        int size = values.Length;
        for (int row = 0; row < size; row++)
        {
            values[row] = (values[row] - Dot(factor.Slice(row * size, row), values[..row])) / factor[(row * size) + row];
        }
    }

    /// <summary>The sum of products.</summary>
    internal static double Dot(ReadOnlySpan<double> first, ReadOnlySpan<double> second)
    {
        int width = Vector<double>.Count;
        int at = 0;
        double sum = 0;
        if (first.Length >= width)
        {
            Vector<double> sums = Vector<double>.Zero;
            for (; at <= first.Length - width; at += width)
            {
                sums += new Vector<double>(first[at..]) * new Vector<double>(second[at..]);
            }

            sum = Vector.Sum(sums);
        }

        for (; at < first.Length; at++)
        {
            sum += first[at] * second[at];
        }

        return sum;
    }
}
