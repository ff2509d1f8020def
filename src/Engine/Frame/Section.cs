namespace Runnel.Engine.Frame;

/// <summary>Section properties of a rectangular piece of lumber, from its actual (dressed) sizes.</summary>
/// <remarks>The weak axis is had by giving thickness and depth the other way round.</remarks>
public static class Section
{
    internal const double MinSize = 5;
    internal const double MaxSize = 600;

    /// <summary>Area of the cross-section.</summary>
    /// <param name="thickness">Actual thickness, mm, from 5 to 600.</param>
    /// <param name="depth">Actual depth, in the direction of the load, mm, from 5 to 600.</param>
    /// <returns>Area, cm².</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>A = b d.</remarks>
    public static double Area(double thickness, double depth) =>
        Range.Within(thickness, MinSize, MaxSize) * Range.Within(depth, MinSize, MaxSize) / 100;

    /// <summary>Section modulus about the axis across the load.</summary>
    /// <param name="thickness">Actual thickness, mm, from 5 to 600.</param>
    /// <param name="depth">Actual depth, in the direction of the load, mm, from 5 to 600.</param>
    /// <returns>Section modulus, cm³.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>S = b d²/6.</remarks>
    public static double Modulus(double thickness, double depth)
    {
        Range.Within(thickness, MinSize, MaxSize);
        Range.Within(depth, MinSize, MaxSize);
        return thickness * depth * depth / 6 / 1000;
    }

    /// <summary>Moment of inertia about the axis across the load.</summary>
    /// <param name="thickness">Actual thickness, mm, from 5 to 600.</param>
    /// <param name="depth">Actual depth, in the direction of the load, mm, from 5 to 600.</param>
    /// <returns>Moment of inertia, cm⁴.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>I = b d³/12.</remarks>
    public static double Inertia(double thickness, double depth)
    {
        Range.Within(thickness, MinSize, MaxSize);
        Range.Within(depth, MinSize, MaxSize);
        return thickness * depth * depth * depth / 12 / 10000;
    }
}
