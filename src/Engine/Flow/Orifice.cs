namespace Runnel.Engine.Flow;

/// <summary>Water through a hole, and how long a tank takes to empty through it.</summary>
public static class Orifice
{
    internal const double MinCoefficient = 0.3;
    internal const double MaxArea = 10;
    internal const double MaxTankArea = 10000;
    internal const double MinArea = 1e-8;

    /// <summary>Discharge coefficient of a sharp-edged hole; 0.60 to 0.62 in print.</summary>
    public const double SharpEdged = 0.60;

    /// <summary>Flow through a hole into free air or, with the difference of levels, under water.</summary>
    /// <param name="area">Area of the hole, m², from 0 to 10.</param>
    /// <param name="head">Height of the water above the middle of the hole, m, from 0 to 1000.</param>
    /// <param name="coefficient">Discharge coefficient, from 0.3 to 1.</param>
    /// <returns>Flow, m³/s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>Q = Cd A √(2 g h). Source: Torricelli, with the coefficient of engineering handbooks. Not for: water lower than about one
    /// hole's diameter, a hole with a pipe behind it.</remarks>
    public static double Flow(double area, double head, double coefficient = SharpEdged) =>
        Range.Within(coefficient, MinCoefficient, 1) * Range.Within(area, 0, MaxArea) * Math.Sqrt(2 * WaterProperties.Gravity * Limits.Head(head));

    /// <summary>Time in which a tank with upright walls falls from one level to another through a hole.</summary>
    /// <param name="tankArea">Area of the water surface, m², from 0 to 10 000; of a media bed, times the share of voids.</param>
    /// <param name="area">Area of the hole, m², from 1e-8 to 10.</param>
    /// <param name="from">Height above the hole at the start, m, from 0 to 1000.</param>
    /// <param name="to">Height at the end, m, from 0 to <paramref name="from"/>.</param>
    /// <param name="coefficient">Discharge coefficient, from 0.3 to 1.</param>
    /// <returns>Time, s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>t = 2 A_t (√h1 − √h2)/(Cd A √(2 g)). Source: Torricelli's law integrated; engineering handbooks. Not for: a tank that is being
    /// filled meanwhile.</remarks>
    public static double DrainTime(double tankArea, double area, double from, double to, double coefficient = SharpEdged)
    {
        Limits.Head(from);
        Limits.Head(to);
        return 2 * Range.Within(tankArea, 0, MaxTankArea) * Math.Max(0, Math.Sqrt(from) - Math.Sqrt(to))
            / (Range.Within(coefficient, MinCoefficient, 1) * Range.Within(area, MinArea, MaxArea) * Math.Sqrt(2 * WaterProperties.Gravity));
    }
}
