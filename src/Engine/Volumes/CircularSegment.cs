namespace Runnel.Engine.Volumes;

/// <summary>What a lying round vessel holds: a half drum, a round channel, a pipe that does not run full.</summary>
/// <remarks>A depth above the crown counts as full: no more goes in.</remarks>
public static class CircularSegment
{
    /// <summary>Wetted cross-section of a lying round vessel.</summary>
    /// <param name="diameter">Inside diameter, m, from 0 to 50.</param>
    /// <param name="depth">Depth of water at the deepest point, m, from 0 to 50.</param>
    /// <returns>Area, m².</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>A = R² acos((R − h)/R) − (R − h) √(2 R h − h²), R = D/2. Source: plane geometry, printed in handbooks of mensuration.</remarks>
    public static double Area(double diameter, double depth)
    {
        Range.Within(diameter, 0, Volumes.Volume.MaxLength);
        Range.Within(depth, 0, Volumes.Volume.MaxLength);
        var (r, h) = (diameter / 2, Math.Min(depth, diameter));
        var halfWidth = Math.Sqrt(h * (2 * r - h));
        // The angle is acos((R − h)/R); taken so, a film of water does not come out below nothing.
        return Math.Max(0, r * r * Math.Atan2(halfWidth, r - h) - (r - h) * halfWidth);
    }

    /// <summary>Volume of water in a lying round vessel with flat ends.</summary>
    /// <param name="diameter">Inside diameter, m, from 0 to 50.</param>
    /// <param name="length">Inside length, m, from 0 to 50.</param>
    /// <param name="depth">Depth of water at the deepest point, m, from 0 to 50.</param>
    /// <returns>Volume, L.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>V = A L. Source: plane geometry. Not for: domed ends, a vessel that does not lie level.</remarks>
    public static double Volume(double diameter, double length, double depth) =>
        Area(diameter, depth) * Range.Within(length, 0, Volumes.Volume.MaxLength) * Volumes.Volume.LitresPerCubicMetre;
}
