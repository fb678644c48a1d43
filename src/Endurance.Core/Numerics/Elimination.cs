namespace Endurance.Numerics;

/// <summary>LU factors of matrices of one size and one symmetric pattern, in place and without pivoting; immutable and shared.</summary>
/// <remarks>
/// Small matrices are factored row by row. Larger ones are eliminated in the order of least degree (Tinney and Walker, Proc. IEEE 55
/// (1967) 1801), worked out once: a network of n buses has few feeds a bus, and in that order few new entries arise. As in
/// <see cref="SmallLu"/>, positive pivots in one order mean positive pivots in all.
/// </remarks>
internal sealed class Elimination
{
    /// <summary>Rows up to which working through all entries is quicker than looking up which are not zero.</summary>
    private const int LargestDense = 12;

    private readonly int n;
    private readonly int[] order;

    /// <summary>By row: the rows tied to it that are eliminated later; empty: all.</summary>
    private readonly int[][] later;

    /// <param name="size">Rows of the matrix.</param>
    /// <param name="ties">Pairs of rows between which an entry may stand; in any order, also more than once.</param>
    public Elimination(int size, IEnumerable<(int First, int Second)> ties)
    {
        n = size;
        order = size > LargestDense ? new int[size] : [];
        later = new int[order.Length][];
        if (order.Length > 0)
            Order(ties);
    }

    /// <summary>Overwrites the matrix by its factors, with the inverse of each pivot in its place; <see langword="false"/> when a pivot is not positive.</summary>
    public bool TryFactor(Span<double> a)
    {
        if (order.Length == 0)
            return SmallLu.TryFactor(a, n);
        foreach (var k in order)
        {
            var rowK = a.Slice(k * n, n);
            var pivot = rowK[k];
            if (!(pivot > 0))
                return false;
            var inverse = 1 / pivot;
            rowK[k] = inverse;
            foreach (var i in later[k])
            {
                var rowI = a.Slice(i * n, n);
                if (rowI[k] == 0)
                    continue;
                var factor = rowI[k] * inverse;
                rowI[k] = factor;
                foreach (var j in later[k])
                    rowI[j] -= factor * rowK[j];
            }
        }

        return true;
    }

    /// <summary>Factors a copy of the matrix, in which a pivot that rounding alone has taken is put back; <see langword="false"/> when one is not positive.</summary>
    /// <remarks>Rows that are tied to each other firmly and to nothing else but by a trace keep that trace only as far as rounding lets them.</remarks>
    public bool TryFactor(ReadOnlySpan<double> matrix, Span<double> factors)
    {
        const double rounding = 1e-13; // of a diagonal entry; some hundred units in its last place
        matrix.CopyTo(factors);
        if (TryFactor(factors))
            return true;
        matrix.CopyTo(factors);
        for (var i = 0; i < n; i++)
            factors[(i * n) + i] += rounding * Math.Abs(factors[(i * n) + i]);
        return TryFactor(factors);
    }

    /// <summary>Factors a copy of the matrix with as much added to its diagonal as makes its pivots positive; <see langword="false"/>: nothing does.</summary>
    public bool TryFactorShifted(ReadOnlySpan<double> matrix, Span<double> factors)
    {
        const double first = 1e-3, last = 1e12;
        for (var shift = 0.0; shift < last; shift = shift == 0 ? first : 4 * shift)
        {
            matrix.CopyTo(factors);
            for (var i = 0; i < n; i++)
                factors[(i * n) + i] += shift;
            if (TryFactor(factors))
                return true;
        }

        return false;
    }

    /// <summary>Solves with the factors; <paramref name="b"/> is overwritten by the solution.</summary>
    public void Solve(ReadOnlySpan<double> factors, Span<double> b)
    {
        if (order.Length == 0)
        {
            SmallLu.Solve(factors, b, n);
            return;
        }

        foreach (var k in order)
        {
            foreach (var i in later[k])
                b[i] -= factors[(i * n) + k] * b[k];
        }

        for (var at = n - 1; at >= 0; at--)
        {
            var k = order[at];
            var row = factors.Slice(k * n, n);
            var sum = b[k];
            foreach (var j in later[k])
                sum -= row[j] * b[j];
            b[k] = sum * row[k];
        }
    }

    /// <summary>Takes the row with the fewest ties each time, the first of equals, and ties together all that it was tied to.</summary>
    private void Order(IEnumerable<(int First, int Second)> ties)
    {
        var tied = new HashSet<int>[n];
        for (var i = 0; i < n; i++)
            tied[i] = [];
        foreach (var (first, second) in ties.Where(tie => tie.First != tie.Second))
        {
            tied[first].Add(second);
            tied[second].Add(first);
        }

        var left = Enumerable.Range(0, n).ToList();
        for (var at = 0; at < n; at++)
        {
            var k = left.MinBy(row => tied[row].Count);
            left.Remove(k);
            order[at] = k;
            later[k] = [.. tied[k].Order()];
            foreach (var i in later[k])
            {
                tied[i].UnionWith(later[k]);
                tied[i].Remove(i);
                tied[i].Remove(k);
            }
        }
    }
}
