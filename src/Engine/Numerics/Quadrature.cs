namespace Runnel.Engine.Numerics;

/// <summary>Integrals.</summary>
internal static class Quadrature
{
    // Gauss-Kronrod, 7 and 15 points (Piessens and others 1983, QUADPACK).
    private static readonly double[] Nodes =
    [
        0.991455371120812639206854697526329, 0.949107912342758524526189684047851, 0.864864423359769072789712788640926,
        0.741531185599394439863864773280788, 0.586087235467691130294144691693013, 0.405845151377397166906606412076961,
        0.207784955007898467600689403773245, 0,
    ];

    private static readonly double[] Kronrod =
    [
        0.022935322010529224963732008058970, 0.063092092629978553290700663189204, 0.104790010322250183839876322541518,
        0.140653259715525918745189590510238, 0.169004726639267902826583426598550, 0.190350578064785409913256402421014,
        0.204432940075298892414161999234649, 0.209482141084727828012999174891714,
    ];

    private static readonly double[] Gauss =
    [
        0.129484966168869693270611432679082, 0.279705391489276667901467771423780, 0.381830050505118944950369775488975,
        0.417959183673469387755102040816327,
    ];

    /// <summary>The integral of a function that is finite between two ends, halved where it is rough.</summary>
    /// <param name="function">The function.</param>
    /// <param name="from">Lower end.</param>
    /// <param name="to">Upper end.</param>
    /// <param name="tolerance">Relative error aimed at.</param>
    public static double Integrate(Func<double, double> function, double from, double to, double tolerance = 1e-11)
    {
        var (rough, _) = Estimate(function, from, to);
        return Refine(function, from, to, tolerance * Math.Abs(rough), 40);
    }

    private static double Refine(Func<double, double> function, double from, double to, double error, int depth)
    {
        var (value, doubt) = Estimate(function, from, to);
        if (doubt <= Math.Max(error, 1e-14 * Math.Abs(value)) || depth == 0)
        {
            return value;
        }
        var middle = (from + to) / 2;
        return Refine(function, from, middle, error / 2, depth - 1) + Refine(function, middle, to, error / 2, depth - 1);
    }

    private static (double Value, double Doubt) Estimate(Func<double, double> function, double from, double to)
    {
        var (centre, half) = ((from + to) / 2, (to - from) / 2);
        var middle = function(centre);
        var (kronrod, gauss) = (Kronrod[7] * middle, Gauss[3] * middle);
        for (var i = 0; i < 7; i++)
        {
            var pair = function(centre - half * Nodes[i]) + function(centre + half * Nodes[i]);
            kronrod += Kronrod[i] * pair;
            gauss += i % 2 == 1 ? Gauss[i / 2] * pair : 0;
        }
        return (half * kronrod, Math.Abs(half * (kronrod - gauss)));
    }
}
