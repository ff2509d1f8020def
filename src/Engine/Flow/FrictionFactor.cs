namespace Runnel.Engine.Flow;

/// <summary>The Darcy friction factor of a full round pipe. (Fanning's is a quarter of it; texts that print "f" alone may mean either.)</summary>
public static class FrictionFactor
{
    internal const double MinReynolds = 1e-6;
    internal const double MaxLaminar = 2000;
    internal const double MinTurbulent = 4000;
    internal const double MaxReynolds = 1e9;
    internal const double MaxRelativeRoughness = Limits.MaxRelativeRoughness;

    // As printed in the EPANET 2.2 manual: −1.8 · 2/ln 10, and 5.74/4000^0.9.
    private const double DunlopAA = -1.5634601348517066;
    private const double DunlopAB = 0.003288954763453991;

    /// <summary>Friction factor of laminar flow.</summary>
    /// <param name="reynolds">Reynolds number, above 0 to 2000.</param>
    /// <returns>Darcy friction factor.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    /// <remarks>f = 64/Re. Source: Hagen and Poiseuille.</remarks>
    public static double Laminar(double reynolds) => 64 / Range.Within(reynolds, MinReynolds, MaxLaminar);

    /// <summary>Friction factor of turbulent flow, the equation that other formulas approximate.</summary>
    /// <param name="reynolds">Reynolds number, from 4000 to 1e9.</param>
    /// <param name="relativeRoughness">Roughness over diameter, from 0 to 0.1.</param>
    /// <returns>Darcy friction factor, solved until it no longer changes.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>1/√f = −2 log10((ε/D)/3.7 + 2.51/(Re √f)). Source: Colebrook 1939, Journal of the Institution of Civil Engineers 11, 133-156.
    /// Not for: corrugated hose, pipe grown over with slime.</remarks>
    public static double ColebrookWhite(double reynolds, double relativeRoughness)
    {
        var re = Range.Within(reynolds, MinTurbulent, MaxReynolds);
        var rough = Range.Within(relativeRoughness, 0, MaxRelativeRoughness) / 3.7;
        var x = 1 / Math.Sqrt(SwameeJain(reynolds, relativeRoughness));
        for (var i = 0; i < 20; i++)
        {
            var inner = rough + 2.51 * x / re;
            var step = (x + 2 * Math.Log10(inner)) / (1 + 2 * 2.51 / (re * Math.Log(10) * inner));
            x -= step;
            if (Math.Abs(step) <= 1e-15 * x)
            {
                break;
            }
        }
        return 1 / (x * x);
    }

    /// <summary>Friction factor of turbulent flow without iteration.</summary>
    /// <param name="reynolds">Reynolds number, from 4000 to 1e9.</param>
    /// <param name="relativeRoughness">Roughness over diameter, from 0 to 0.1.</param>
    /// <returns>Darcy friction factor.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>f = 0.25/[log10((ε/D)/3.7 + 5.74/Re^0.9)]². Source: Swamee and Jain 1976, Journal of the Hydraulics Division ASCE 102, 657-664,
    /// as used in the EPANET 2.2 manual, chapter 12. Error against Colebrook: 1 % from Re 1e4 to 1e7 with ε/D up to 0.001; 3.4 % anywhere.</remarks>
    public static double SwameeJain(double reynolds, double relativeRoughness)
    {
        var re = Range.Within(reynolds, MinTurbulent, MaxReynolds);
        var log = Math.Log10(Range.Within(relativeRoughness, 0, MaxRelativeRoughness) / 3.7 + 5.74 / Math.Pow(re, 0.9));
        return 0.25 / (log * log);
    }

    /// <summary>Friction factor between laminar and turbulent flow, where nature itself wavers.</summary>
    /// <param name="reynolds">Reynolds number, from 2000 to 4000.</param>
    /// <param name="relativeRoughness">Roughness over diameter, from 0 to 0.1.</param>
    /// <returns>Darcy friction factor: 64/Re at 2000, Swamee and Jain's at 4000.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>f = X1 + R (X2 + R (X3 + R X4)), R = Re/2000. Source: Dunlop 1991 in the EPANET 2.2 manual, chapter 12, whose "log" in Y3 is
    /// base 10 and whose minus in FB is a misprint for plus.</remarks>
    public static double Dunlop(double reynolds, double relativeRoughness)
    {
        var r = Range.Within(reynolds, MaxLaminar, MinTurbulent) / 2000;
        var (x1, x2, x3, x4) = DunlopCubic(Range.Within(relativeRoughness, 0, MaxRelativeRoughness));
        return x1 + r * (x2 + r * (x3 + r * x4));
    }

    /// <summary>Friction factor at any Reynolds number: laminar, Dunlop's transition or Swamee and Jain, which join without a step.</summary>
    /// <param name="reynolds">Reynolds number, above 0 to 1e9.</param>
    /// <param name="relativeRoughness">Roughness over diameter, from 0 to 0.1.</param>
    /// <returns>Darcy friction factor.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>Source: EPANET 2.2 manual, chapter 12.</remarks>
    public static double AnyRegime(double reynolds, double relativeRoughness)
    {
        Range.Within(reynolds, MinReynolds, MaxReynolds);
        Range.Within(relativeRoughness, 0, MaxRelativeRoughness);
        return reynolds switch
        {
            <= MaxLaminar => Laminar(reynolds),
            < MinTurbulent => Dunlop(reynolds, relativeRoughness),
            _ => SwameeJain(reynolds, relativeRoughness),
        };
    }

    /// <summary>The factor and its slope, df/dRe, for solvers.</summary>
    internal static (double Factor, double Slope) WithSlope(double reynolds, double relativeRoughness)
    {
        switch (reynolds)
        {
            case <= MaxLaminar:
                return (64 / reynolds, -64 / (reynolds * reynolds));
            case < MinTurbulent:
                var r = reynolds / 2000;
                var (x1, x2, x3, x4) = DunlopCubic(relativeRoughness);
                return (x1 + r * (x2 + r * (x3 + r * x4)), (x2 + r * (2 * x3 + 3 * r * x4)) / 2000);
            default:
                var turbulent = 5.74 / Math.Pow(reynolds, 0.9);
                var inner = relativeRoughness / 3.7 + turbulent;
                var log = Math.Log10(inner);
                var factor = 0.25 / (log * log);
                return (factor, 2 * factor * 0.9 * turbulent / (reynolds * inner * log * Math.Log(10)));
        }
    }

    private static (double X1, double X2, double X3, double X4) DunlopCubic(double relativeRoughness)
    {
        var y2 = relativeRoughness / 3.7 + DunlopAB;
        var y3 = -2 * Math.Log10(y2);
        var fa = 1 / (y3 * y3);
        // The manual prints a minus here. Plus is what joins Swamee and Jain's curve without a kink, and what the EPANET engine computes.
        var fb = fa * (2 + DunlopAA * DunlopAB / (y2 * y3));
        return (7 * fa - fb, 0.128 - 17 * fa + 2.5 * fb, -0.128 + 13 * fa - 2 * fb, 0.032 - 3 * fa + 0.5 * fb);
    }
}
