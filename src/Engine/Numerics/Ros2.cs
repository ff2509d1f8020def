namespace Runnel.Engine.Numerics;

/// <summary>A linearly implicit step of two stages, order 2, L-stable, for stiff rates that are constant in form over the step.</summary>
/// <remarks>
/// (I − γhA) k1 = h f(y); (I − γhA) k2 = h f(y + k1) − 2 k1; y' = y + 3/2 k1 + 1/2 k2, with γ = 1 − 1/√2. Source: Verwer, Spee, Blom and Hundsdorfer
/// 1999, A second-order Rosenbrock method applied to photochemical dispersion problems, SIAM J. Sci. Comput. 20(4), 1456-1480 (from
/// memory; its order, damping and balance are proven by tests). The order is 2 for any matrix A, so slopes may be approximate. What is
/// conserved by f and by A is conserved by the step to rounding. Components past the stiff ones cost no elimination. Which slopes a problem writes is learnt
/// at the first step; from then on only those are eliminated, in a fixed order, and nothing is allocated.
/// </remarks>
public sealed class Ros2
{
    /// <summary>γ = 1 − 1/√2: the smaller of the two values that damp stiff components wholly.</summary>
    public const double Gamma = 0.29289321881345247560;

    private readonly int _size;
    private readonly int _stiff;
    private readonly double[] _rates;
    private readonly double[] _slopes;
    private readonly double[] _matrix;
    private readonly double[] _k1;
    private readonly double[] _k2;
    private readonly double[] _middle;
    private Elimination? _order;

    /// <summary>Room for a system.</summary>
    public Ros2(int size, int stiff)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(size);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(stiff, size);
        (_size, _stiff) = (size, stiff);
        _rates = new double[size];
        _slopes = new double[size * stiff];
        _matrix = new double[stiff * stiff];
        _k1 = new double[size];
        _k2 = new double[size];
        _middle = new double[size];
    }

    /// <summary>Moves the state over one step.</summary>
    /// <param name="problem">Rates and slopes: the same problem at each call, of the size that this was made for.</param>
    /// <param name="state">The state, changed in place.</param>
    /// <param name="step">Length of the step, in the unit of time of the rates.</param>
    public void Step(IRates problem, Span<double> state, double step)
    {
        ArgumentNullException.ThrowIfNull(problem);
        _order ??= Learn(problem, state);
        problem.RatesAndSlopes(state, _rates, _slopes);
        var scale = step * Gamma;
        _order.Factor(_slopes, _matrix, scale);
        for (var i = 0; i < _size; i++)
        {
            _k1[i] = step * _rates[i];
        }
        _order.Solve(_matrix, _slopes, _k1, scale);
        for (var i = 0; i < _size; i++)
        {
            _middle[i] = state[i] + _k1[i];
        }
        problem.Rates(_middle, _rates);
        for (var i = 0; i < _size; i++)
        {
            _k2[i] = step * _rates[i] - 2 * _k1[i];
        }
        _order.Solve(_matrix, _slopes, _k2, scale);
        for (var i = 0; i < _size; i++)
        {
            state[i] += 1.5 * _k1[i] + 0.5 * _k2[i];
        }
    }

    /// <summary>Finds which slopes a problem writes: those that no longer hold a mark after a call.</summary>
    private Elimination Learn(IRates problem, ReadOnlySpan<double> state)
    {
        // A quiet not-a-number that no arithmetic makes.
        const long Mark = 0x7FF8_0000_0BAD_5EED;
        Array.Fill(_slopes, BitConverter.Int64BitsToDouble(Mark));
        problem.RatesAndSlopes(state, _rates, _slopes);
        var written = Array.ConvertAll(_slopes, s => BitConverter.DoubleToInt64Bits(s) != Mark);
        Array.Clear(_slopes);
        return new(_size, _stiff, written);
    }
}
