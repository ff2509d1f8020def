namespace Runnel.Engine.Light;

/// <summary>Light of a narrow straight lamp that hangs level, on a level surface below it.</summary>
public static class DiffuseLine
{
    internal const double MaxIntensity = 1e7;

    /// <summary>Illuminance from a narrow matt strip that faces down.</summary>
    /// <param name="intensity">Intensity of each metre straight down, cd/m, from 0 to 10 000 000.</param>
    /// <param name="length">Length, m, from 0.001 to 100.</param>
    /// <param name="height">Height above the surface, m, from 0.01 to 100.</param>
    /// <param name="along">Distance of the place from the middle, along the lamp, m, from 0 to 100.</param>
    /// <param name="aside">Distance of the place from the line below the lamp, m, from 0 to 100.</param>
    /// <returns>Illuminance, lx.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>E = i₀ h² ∫ dx / (x² + ρ²)², ρ² = h² + s²; below one end (i₀/h)(t/2 + sin 2t / 4), t = atan(l/h). Source: Lambert's law,
    /// the inverse-square and cosine laws, integrated; exact for a strip that is narrow beside its height.</remarks>
    public static double Strip(double intensity, double length, double height, double along = 0, double aside = 0)
    {
        Check(intensity, length, height, along, aside);
        return intensity * height * height * Integral(length, height, along, aside);
    }

    /// <summary>Illuminance from a bare matt tube.</summary>
    /// <param name="intensity">Intensity of each metre square to the tube, cd/m, from 0 to 10 000 000.</param>
    /// <param name="length">Length, m, from 0.001 to 100.</param>
    /// <param name="height">Height above the surface, m, from 0.01 to 100.</param>
    /// <param name="along">Distance of the place from the middle, along the lamp, m, from 0 to 100.</param>
    /// <param name="aside">Distance of the place from the line below the lamp, m, from 0 to 100.</param>
    /// <returns>Illuminance, lx.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>E = i₀ ρ h ∫ dx / (x² + ρ²)², ρ² = h² + s². Source: as for the strip; a tube's intensity falls with the sine of the angle
    /// to its axis. Half its light goes up.</remarks>
    public static double Tube(double intensity, double length, double height, double along = 0, double aside = 0)
    {
        Check(intensity, length, height, along, aside);
        return intensity * Math.Sqrt(height * height + aside * aside) * height * Integral(length, height, along, aside);
    }

    internal static double Integral(double length, double height, double along, double aside)
    {
        var square = height * height + aside * aside;
        var rho = Math.Sqrt(square);
        return Primitive(along + length / 2) - Primitive(along - length / 2);

        double Primitive(double x) => x / (2 * square * (x * x + square)) + Math.Atan(x / rho) / (2 * square * rho);
    }

    private static void Check(double intensity, double length, double height, double along, double aside)
    {
        Range.Within(intensity, 0, MaxIntensity);
        Range.Within(length, DiffuseDisc.MinSize, DiffuseDisc.MaxSize);
        Range.Within(height, PointSource.MinHeight, PointSource.MaxHeight);
        Range.Within(along, 0, PointSource.MaxAside);
        Range.Within(aside, 0, PointSource.MaxAside);
    }
}
