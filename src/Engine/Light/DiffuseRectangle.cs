namespace Runnel.Engine.Light;

/// <summary>Light of a rectangular matt panel that faces down, on a level surface below it.</summary>
public static class DiffuseRectangle
{
    /// <summary>Illuminance anywhere below a rectangle.</summary>
    /// <param name="exitance">Light given off by each square metre of it, lm/m², from 0 to 10 000 000: π times its luminance.</param>
    /// <param name="length">Length, m, from 0.001 to 100.</param>
    /// <param name="width">Width, m, from 0.001 to 100.</param>
    /// <param name="height">Height above the surface, m, from 0.01 to 100.</param>
    /// <param name="along">Distance of the place from the middle, along the length, m, from 0 to 100.</param>
    /// <param name="across">Distance of the place from the middle, across, m, from 0 to 100.</param>
    /// <returns>Illuminance, lx.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>E = M F, F by adding and subtracting corners. Source: configuration factor of an element parallel to a rectangle (from
    /// memory, Howell's catalogue B-4); exact for a matt panel.</remarks>
    public static double Illuminance(double exitance, double length, double width, double height, double along = 0, double across = 0)
    {
        Range.Within(exitance, 0, DiffuseDisc.MaxExitance);
        Range.Within(length, DiffuseDisc.MinSize, DiffuseDisc.MaxSize);
        Range.Within(width, DiffuseDisc.MinSize, DiffuseDisc.MaxSize);
        Range.Within(height, PointSource.MinHeight, PointSource.MaxHeight);
        Range.Within(along, 0, PointSource.MaxAside);
        Range.Within(across, 0, PointSource.MaxAside);
        return exitance * Factor(along - length / 2, along + length / 2, across - width / 2, across + width / 2, height);
    }

    /// <summary>Configuration factor of a rectangle from a place below one corner.</summary>
    /// <param name="a">Length, m, above 0.</param>
    /// <param name="b">Width, m, above 0.</param>
    /// <param name="c">Height, m, above 0.</param>
    /// <returns>Share of a matt panel's exitance that falls there.</returns>
    /// <remarks>F = (1/2π) [X/√(1+X²) atan(Y/√(1+X²)) + Y/√(1+Y²) atan(X/√(1+Y²))], X = a/c, Y = b/c. Source: from memory, Howell B-4.</remarks>
    public static double CornerFactor(double a, double b, double c)
    {
        var (x, y) = (a / c, b / c);
        var (p, q) = (Math.Sqrt(1 + x * x), Math.Sqrt(1 + y * y));
        return (x / p * Math.Atan(y / p) + y / q * Math.Atan(x / q)) / (2 * Math.PI);
    }

    // The corner factor is odd in both lengths, so corners on the far side of the place subtract by themselves.
    internal static double Factor(double x1, double x2, double y1, double y2, double height) =>
        Math.Max(0, CornerFactor(x2, y2, height) - CornerFactor(x1, y2, height)
            - CornerFactor(x2, y1, height) + CornerFactor(x1, y1, height));

    /// <summary>View factor between two equal rectangles that face each other.</summary>
    /// <param name="length">Length, m, above 0.</param>
    /// <param name="width">Width, m, above 0.</param>
    /// <param name="distance">Distance, m, above 0.</param>
    /// <returns>Share of what one gives off that meets the other.</returns>
    /// <remarks>Source: the view factor of aligned parallel rectangles, in every text on heat transfer (unit cube: 0.1998).</remarks>
    public static double Facing(double length, double width, double distance)
    {
        var (x, y) = (length / distance, width / distance);
        var (p, q) = (Math.Sqrt(1 + x * x), Math.Sqrt(1 + y * y));
        return 2 / (Math.PI * x * y) * (0.5 * Math.Log(p * p * q * q / (1 + x * x + y * y))
            + x * q * Math.Atan(x / q) + y * p * Math.Atan(y / p) - x * Math.Atan(x) - y * Math.Atan(y));
    }
}
