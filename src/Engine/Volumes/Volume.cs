namespace Runnel.Engine.Volumes;

/// <summary>Volume of water in a box and in an upright cylinder, from inside sizes and the depth of water.</summary>
public static class Volume
{
    internal const double LitresPerCubicMetre = 1000;

    /// <summary>Greatest length that the rules of this folder take, m.</summary>
    internal const double MaxLength = 50;

    /// <summary>Volume of water in a box.</summary>
    /// <param name="length">Inside length, m, from 0 to 50.</param>
    /// <param name="width">Inside width, m, from 0 to 50.</param>
    /// <param name="depth">Depth of water, m, from 0 to 50.</param>
    /// <returns>Volume, L.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>V = L W d. Source: plane geometry. Not for: walls that lean or bulge.</remarks>
    public static double Box(double length, double width, double depth)
    {
        Range.Within(length, 0, MaxLength);
        Range.Within(width, 0, MaxLength);
        Range.Within(depth, 0, MaxLength);
        return length * width * depth * LitresPerCubicMetre;
    }

    /// <summary>Volume of water in an upright round tank.</summary>
    /// <param name="diameter">Inside diameter, m, from 0 to 50.</param>
    /// <param name="depth">Depth of water, m, from 0 to 50.</param>
    /// <returns>Volume, L.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>V = π D² d / 4. Source: plane geometry. Not for: tapered tubs, domed bottoms.</remarks>
    public static double Cylinder(double diameter, double depth)
    {
        Range.Within(diameter, 0, MaxLength);
        Range.Within(depth, 0, MaxLength);
        return Math.PI * diameter * diameter / 4 * depth * LitresPerCubicMetre;
    }
}
