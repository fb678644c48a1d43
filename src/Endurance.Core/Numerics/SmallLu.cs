namespace Endurance.Numerics;

/// <summary>In-place LU factors of a small dense matrix, row by row, without pivoting and without allocation.</summary>
/// <remarks>
/// Meant for matrices with no positive entry off the diagonal. For those, all pivots are positive exactly when the
/// matrix is a non-singular M-matrix (Fiedler and Ptak 1962), so a refused pivot is a statement about the matrix and
/// not about the elimination order.
/// </remarks>
internal static class SmallLu
{
    /// <summary>Overwrites the matrix by its factors, with the inverse of each pivot in its place; <see langword="false"/> when a pivot is not positive.</summary>
    public static bool TryFactor(Span<double> a, int n)
    {
        for (var k = 0; k < n; k++)
        {
            var rowK = a.Slice(k * n, n);
            var pivot = rowK[k];
            if (!(pivot > 0))
                return false;
            var inverse = 1 / pivot;
            rowK[k] = inverse;
            for (var i = k + 1; i < n; i++)
            {
                var rowI = a.Slice(i * n, n);
                if (rowI[k] == 0)
                    continue;
                var factor = rowI[k] * inverse;
                rowI[k] = factor;
                for (var j = k + 1; j < n; j++)
                    rowI[j] -= factor * rowK[j];
            }
        }

        return true;
    }

    /// <summary>Solves with the factors; <paramref name="b"/> is overwritten by the solution.</summary>
    public static void Solve(ReadOnlySpan<double> factors, Span<double> b, int n)
    {
        for (var i = 1; i < n; i++)
        {
            var row = factors.Slice(i * n, n);
            var sum = b[i];
            for (var j = 0; j < i; j++)
                sum -= row[j] * b[j];
            b[i] = sum;
        }

        for (var i = n - 1; i >= 0; i--)
        {
            var row = factors.Slice(i * n, n);
            var sum = b[i];
            for (var j = i + 1; j < n; j++)
                sum -= row[j] * b[j];
            b[i] = sum * row[i];
        }
    }
}
