using MathNet.Numerics.LinearAlgebra;
using Runnel.Engine.Numerics;

namespace Runnel.Engine.Tests.Numerics;

/// <summary>Derived: problems with exact answers.</summary>
public sealed class Ros2Tests
{
    /// <summary>Rates written in a line, for tests; slopes may be left out to see what that costs.</summary>
    private sealed class Problem(int size, int stiff, Action<double[], double[]> rates, Action<double[], double[]>? slopes = null) : IRates
    {
        public int Size => size;

        public int Stiff => stiff;

        public void Rates(ReadOnlySpan<double> state, Span<double> f)
        {
            var (y, r) = (state.ToArray(), new double[size]);
            rates(y, r);
            r.CopyTo(f);
        }

        public void RatesAndSlopes(ReadOnlySpan<double> state, Span<double> f, Span<double> s)
        {
            Rates(state, f);
            var a = new double[size * stiff];
            slopes?.Invoke(state.ToArray(), a);
            a.CopyTo(s);
        }
    }

    private static double[] Run(Problem problem, double[] start, double time, int steps)
    {
        var (solver, y) = (new Ros2(problem.Size, problem.Stiff), start.ToArray());
        for (var i = 0; i < steps; i++)
        {
            solver.Step(problem, y, time / steps);
        }
        return y;
    }

    /// <summary>Order from errors at halved steps.</summary>
    private static double Order(Problem problem, double[] start, double time, int steps, double[] exact)
    {
        double Error(int n) => Run(problem, start, time, n).Zip(exact, (a, b) => Math.Abs(a - b)).Max();
        return Math.Log2(Error(steps) / Error(2 * steps));
    }

    private static readonly double[] Heat = [-1.3, 1.1, 2.4, -2.7];

    private static Problem TwoNodes => new(2, 2,
        (y, f) =>
        {
            f[0] = Heat[0] * y[0] + Heat[1] * y[1] + 3;
            f[1] = Heat[2] * y[0] + Heat[3] * y[1] + 1;
        },
        (_, a) => Heat.CopyTo(a, 0));

    /// <summary>Two coupled bodies of water in air of one temperature: the exact answer by eigenvectors (Math.NET).</summary>
    [Fact]
    public void Order_two_on_two_coupled_nodes()
    {
        var a = Matrix<double>.Build.DenseOfRowMajor(2, 2, Heat);
        var rest = a.Solve(Vector<double>.Build.Dense([-3, -1]));
        var evd = a.Evd();
        var v = evd.EigenVectors;
        var c = v.Solve(Vector<double>.Build.Dense([10, 30]) - rest);
        for (var i = 0; i < 2; i++)
        {
            c[i] *= Math.Exp(evd.EigenValues[i].Real * 2);
        }
        double[] exact = [.. rest + v * c];
        Assert.InRange(Order(TwoNodes, [10, 30], 2, 40, exact), 1.9, 2.1);
    }

    /// <summary>Monod decay c' = −c/(K + c): K ln c + c = K ln c0 + c0 − t, solved by bisection.</summary>
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Order_two_on_monod_decay_with_and_without_slopes(bool slopes)
    {
        const double k = 0.7;
        var problem = new Problem(1, 1, (y, f) => f[0] = -y[0] / (k + y[0]), slopes ? (y, a) => a[0] = -k / ((k + y[0]) * (k + y[0])) : null);
        var (low, high) = (1e-9, 3.0);
        for (var i = 0; i < 200; i++)
        {
            var c = (low + high) / 2;
            (low, high) = k * Math.Log(c) + c > k * Math.Log(3) + 3 - 2.5 ? (low, c) : (c, high);
        }
        Assert.InRange(Order(problem, [3], 2.5, 40, [low]), 1.9, 2.1);
    }

    /// <summary>Logistic growth, as bacteria on a surface that fills: x = 1/(1 + (1/x0 − 1) exp(−t)); followed explicitly.</summary>
    [Fact]
    public void Order_two_on_logistic_growth_that_only_follows()
    {
        var problem = new Problem(2, 1, (y, f) => (f[0], f[1]) = (-y[0], y[1] * (1 - y[1])), (_, a) => a[0] = -1);
        double[] exact = [Math.Exp(-8), 1 / (1 + (1 / 0.001 - 1) * Math.Exp(-8))];
        Assert.InRange(Order(problem, [1, 0.001], 8, 100, exact), 1.85, 2.15);
    }

    /// <summary>A rate a million times too fast for the step is damped at once: L-stable.</summary>
    [Fact]
    public void Stiff_components_are_damped()
    {
        var problem = new Problem(1, 1, (y, f) => f[0] = -1e6 * (y[0] - 5), (_, a) => a[0] = -1e6);
        Assert.Equal(5, Run(problem, [100], 2, 2)[0], 1e-3);
    }

    /// <summary>What one pool gives another gets, to rounding, and a running total sees the same, however coarse the step.</summary>
    [Fact]
    public void A_chain_of_pools_keeps_its_sum_and_its_total()
    {
        const double a = 40, b = 3;
        var problem = new Problem(4, 3,
            (y, f) => (f[0], f[1], f[2], f[3]) = (-a * y[0] / (1 + y[0]), a * y[0] / (1 + y[0]) - b * y[1], b * y[1], b * y[1]),
            (y, s) =>
            {
                var d = a / ((1 + y[0]) * (1 + y[0]));
                (s[0], s[3], s[4], s[7], s[10]) = (-d, d, -b, b, b);
            });
        var end = Run(problem, [7, 2, 0, 0], 5, 9);
        Assert.Equal(9, end[0] + end[1] + end[2], 1e-13);
        Assert.Equal(end[2], end[3], 1e-13);
    }
}
