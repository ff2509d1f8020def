namespace Runnel.Engine.Light;

/// <summary>Light of a round matt panel that faces down, on a level surface below it.</summary>
public static class DiffuseDisc
{
    internal const double MaxExitance = 1e7;
    internal const double MinSize = 0.001;
    internal const double MaxSize = 100;

    /// <summary>Illuminance anywhere below a disc.</summary>
    /// <param name="exitance">Light given off by each square metre of it, lm/m², from 0 to 10 000 000: π times its luminance.</param>
    /// <param name="radius">Its radius, m, from 0.001 to 100.</param>
    /// <param name="height">Height above the surface, m, from 0.01 to 100.</param>
    /// <param name="aside">Distance of the place from the foot of its middle, m, from 0 to 100.</param>
    /// <returns>Illuminance, lx.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>E = M/2 [1 − (s² + h² − r²) / √((s² + h² + r²)² − 4 s² r²)]; below the middle M r²/(r² + h²). Source: configuration
    /// factor of an element parallel to a disc (from memory, Howell's catalogue B-13); exact for a matt disc.</remarks>
    public static double Illuminance(double exitance, double radius, double height, double aside = 0)
    {
        Range.Within(exitance, 0, MaxExitance);
        Range.Within(radius, MinSize, MaxSize);
        Range.Within(height, PointSource.MinHeight, PointSource.MaxHeight);
        Range.Within(aside, 0, PointSource.MaxAside);
        return exitance * Factor(radius, height, aside);
    }

    // Written so that nearly equal numbers are never subtracted: (root − a)/root with root² − a² = 4 r² h².
    internal static double Factor(double radius, double height, double aside)
    {
        var (r2, h2, s2) = (radius * radius, height * height, aside * aside);
        var a = s2 + h2 - r2;
        var root = Math.Sqrt(a * a + 4 * r2 * h2);
        return a > 0 ? 2 * r2 * h2 / (root * (root + a)) : (root - a) / (2 * root);
    }
}
