namespace Runnel.Engine.Light;

/// <summary>Light of a lamp that is small beside its distance, on a level surface below it.</summary>
public static class PointSource
{
    internal const double MaxIntensity = 1e7;
    internal const double MinHeight = 0.01;
    internal const double MaxHeight = 100;
    internal const double MaxAside = 100;
    internal const double MinBeam = 5;
    internal const double MaxBeam = 170;

    /// <summary>Beam of a lamp that shines as a matt white surface does: half its greatest intensity at 60° to either side.</summary>
    public const double CosineBeam = 120;

    /// <summary>Distance, in greatest dimensions of the lamp, beyond which it may be taken for a point.</summary>
    public const double FiveTimes = 5;

    /// <summary>Illuminance from the intensity toward the place.</summary>
    /// <param name="intensity">Luminous intensity toward the place, cd, from 0 to 10 000 000.</param>
    /// <param name="height">Height of the lamp above the surface, m, from 0.01 to 100.</param>
    /// <param name="aside">Distance of the place from the foot of the lamp, m, from 0 to 100.</param>
    /// <returns>Illuminance, lx.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>E = I cos³θ / h² = I h / d³. Source: the inverse-square and cosine laws. Not for: a lamp nearer than five times its
    /// greatest dimension.</remarks>
    public static double Illuminance(double intensity, double height, double aside)
    {
        Range.Within(intensity, 0, MaxIntensity);
        Range.Within(height, MinHeight, MaxHeight);
        Range.Within(aside, 0, MaxAside);
        var square = height * height + aside * aside;
        return intensity * height / (square * Math.Sqrt(square));
    }

    /// <summary>Illuminance from a small matt lamp that faces straight down.</summary>
    /// <param name="intensity">Luminous intensity straight down, cd, from 0 to 10 000 000.</param>
    /// <param name="height">Height of the lamp above the surface, m, from 0.01 to 100.</param>
    /// <param name="aside">Distance of the place from the foot of the lamp, m, from 0 to 100.</param>
    /// <returns>Illuminance, lx.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>E = I₀ cos⁴θ / h². Source: Lambert's law with the inverse-square and cosine laws. Not for: spot lamps; bare bulbs; a lamp
    /// nearer than five times its greatest dimension.</remarks>
    public static double CosineLamp(double intensity, double height, double aside)
    {
        Range.Within(intensity, 0, MaxIntensity);
        Range.Within(height, MinHeight, MaxHeight);
        Range.Within(aside, 0, MaxAside);
        var square = height * height + aside * aside;
        return intensity * height * height / (square * square);
    }

    /// <summary>Intensity of a lamp that shines alike in all directions, cd for each lumen: I = Φ / 4π.</summary>
    public const double IsotropicIntensity = 1 / (4 * Math.PI);

    /// <summary>Intensity straight down of a matt lamp that shines down only, cd for each lumen: I₀ = Φ / π.</summary>
    public const double CosineIntensity = 1 / Math.PI;

    /// <summary>Intensity square to a matt tube, cd/m for each lumen and metre: i₀ = Φ / (π² L).</summary>
    public const double TubeIntensity = 1 / (Math.PI * Math.PI);

    /// <summary>Exponent of the cosine that gives a beam.</summary>
    /// <param name="beam">Angle between the two directions of half the greatest intensity, °, from 5 to 170.</param>
    /// <returns>m in I = I₀ cos^m θ.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    /// <remarks>m = ln ½ / ln cos(β/2): 1 for 120°. Source: definition of the beam angle. Not for: lamps with a dark middle or a sharp edge.</remarks>
    public static double BeamExponent(double beam) =>
        Math.Log(0.5) / Math.Log(Math.Cos(Range.Within(beam, MinBeam, MaxBeam) / 2 * Math.PI / 180));

    /// <summary>True if a lamp of that greatest dimension, m, may be taken for a point at a distance, m.</summary>
    /// <remarks>d ≥ 5 D: the inverse-square law is then within 1 % for a matt disc. Source: from memory, the Illuminating Engineering
    /// Society's handbook; the disc formula agrees.</remarks>
    public static bool IsFar(double distance, double dimension) => distance >= FiveTimes * dimension;
}
