namespace Runnel.Engine.Volumes;

/// <summary>Volume of bed media, and of the water between it.</summary>
public static class Media
{
    internal const double MaxArea = 1000;
    internal const double MaxDepth = 3;
    internal const double MaxVolume = 3e6;

    /// <summary>Bulk volume of media: what has to be bought.</summary>
    /// <param name="area">Area of the bed inside, m², from 0 to 1000.</param>
    /// <param name="depth">Depth of media, m, from 0 to 3.</param>
    /// <returns>Volume, L.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>V = A d. Source: plane geometry.</remarks>
    public static double BulkVolume(double area, double depth) =>
        Range.Within(area, 0, MaxArea) * Range.Within(depth, 0, MaxDepth) * Volume.LitresPerCubicMetre;

    /// <summary>Water between the grains of flooded media.</summary>
    /// <param name="volume">Bulk volume of flooded media, L, from 0 to 3 000 000.</param>
    /// <param name="voids">Share of the bulk volume that is not grain, %, from 0 to 100.</param>
    /// <returns>Volume of water, L.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>V_water = V × voids. Source: the definition of porosity. Not for: the roots and dirt that fill a bed over the years, the
    /// water that grains hold back when the bed drains.</remarks>
    public static double WaterVolume(double volume, double voids) =>
        Range.Within(volume, 0, MaxVolume) * Range.Within(voids, 0, 100) / 100;
}
