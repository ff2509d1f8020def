namespace Runnel.Engine.Numerics;

/// <summary>The order in which a small matrix of fixed pattern is eliminated: Gauss without pivots, entries that stay zero left out.</summary>
/// <remarks>For I − γhA with decay and exchange in A the diagonal leads, so that no pivot need be sought.</remarks>
internal sealed class Elimination
{
    private readonly int _stiff;

    // Entries of the matrix: those of A, and those that elimination fills.
    private readonly int[] _entries;
    private readonly int[] _diagonal;

    // For each column: its pivot; then factors below it; for each factor the updates of its row.
    private readonly int[] _factors;
    private readonly int[] _factorPivot;
    private readonly int[] _updatesEnd;
    private readonly int[] _target;
    private readonly int[] _above;

    // Forward, backward and following sums: row, entry, column.
    private readonly int[] _lower;
    private readonly int[] _lowerRow;
    private readonly int[] _lowerColumn;
    private readonly int[] _upper;
    private readonly int[] _upperEnd;
    private readonly int[] _upperColumn;
    private readonly int[] _follow;
    private readonly int[] _followRow;
    private readonly int[] _followColumn;

    public Elimination(int size, int stiff, bool[] written)
    {
        var n = _stiff = stiff;
        var full = new bool[n * n];
        for (var i = 0; i < n * n; i++)
        {
            full[i] = written[i] || i % (n + 1) == 0;
        }
        List<int> factors = [], pivots = [], ends = [], target = [], above = [];
        for (var c = 0; c < n; c++)
        {
            for (var r = c + 1; r < n; r++)
            {
                if (!full[r * n + c])
                {
                    continue;
                }
                factors.Add(r * n + c);
                pivots.Add(c * n + c);
                for (var j = c + 1; j < n; j++)
                {
                    if (full[c * n + j])
                    {
                        full[r * n + j] = true;
                        target.Add(r * n + j);
                        above.Add(c * n + j);
                    }
                }
                ends.Add(target.Count);
            }
        }
        List<int> lower = [], upper = [], upperEnds = [], follow = [];
        for (var r = 0; r < n; r++)
        {
            lower.AddRange(Enumerable.Range(0, r).Where(c => full[r * n + c]).Select(c => r * n + c));
        }
        for (var r = n - 1; r >= 0; r--)
        {
            upper.AddRange(Enumerable.Range(r + 1, n - r - 1).Where(c => full[r * n + c]).Select(c => r * n + c));
            upperEnds.Add(upper.Count);
        }
        follow.AddRange(Enumerable.Range(n * n, (size - n) * n).Where(i => written[i]));
        _entries = [.. Enumerable.Range(0, n * n).Where(i => full[i])];
        _diagonal = [.. Enumerable.Range(0, n).Select(i => i * (n + 1))];
        (_factors, _factorPivot, _updatesEnd, _target, _above) = ([.. factors], [.. pivots], [.. ends], [.. target], [.. above]);
        (_lower, _lowerRow, _lowerColumn) = ([.. lower], [.. lower.Select(e => e / n)], [.. lower.Select(e => e % n)]);
        (_upper, _upperEnd, _upperColumn) = ([.. upper], [.. upperEnds], [.. upper.Select(e => e % n)]);
        (_follow, _followRow, _followColumn) = ([.. follow], [.. follow.Select(e => e / n)], [.. follow.Select(e => e % n)]);
    }

    /// <summary>I − scale A of the stiff block, eliminated; pivots are kept as their inverse.</summary>
    public void Factor(double[] slopes, double[] matrix, double scale)
    {
        foreach (var e in _entries)
        {
            matrix[e] = -scale * slopes[e];
        }
        foreach (var d in _diagonal)
        {
            matrix[d] += 1;
        }
        var update = 0;
        var pivot = -1;
        for (var i = 0; i < _factors.Length; i++)
        {
            // A row of factors ends where the pivot changes: those before it are done.
            for (; pivot < _factorPivot[i]; pivot = NextPivot(pivot))
            {
                Invert(matrix, NextPivot(pivot));
            }
            var factor = matrix[_factors[i]] *= matrix[_factorPivot[i]];
            for (; update < _updatesEnd[i]; update++)
            {
                matrix[_target[update]] -= factor * matrix[_above[update]];
            }
        }
        for (var last = (_stiff + 1) * (_stiff - 1); pivot < last; pivot = NextPivot(pivot))
        {
            Invert(matrix, NextPivot(pivot));
        }
    }

    /// <summary>Solves for the stiff components, then lets the others follow.</summary>
    public void Solve(double[] matrix, double[] slopes, double[] x, double scale)
    {
        for (var i = 0; i < _lower.Length; i++)
        {
            x[_lowerRow[i]] -= matrix[_lower[i]] * x[_lowerColumn[i]];
        }
        var at = 0;
        for (var i = 0; i < _upperEnd.Length; i++)
        {
            var row = _stiff - 1 - i;
            var sum = x[row];
            for (; at < _upperEnd[i]; at++)
            {
                sum -= matrix[_upper[at]] * x[_upperColumn[at]];
            }
            x[row] = sum * matrix[_diagonal[row]];
        }
        for (var i = 0; i < _follow.Length; i++)
        {
            x[_followRow[i]] += scale * slopes[_follow[i]] * x[_followColumn[i]];
        }
    }

    private int NextPivot(int pivot) => pivot < 0 ? 0 : pivot + _stiff + 1;

    private static void Invert(double[] matrix, int at) => matrix[at] = 1 / matrix[at];
}
