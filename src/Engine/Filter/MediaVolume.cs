namespace Runnel.Engine.Filter;

/// <summary>Bulk volume of a medium that offers some surface.</summary>
public static class MediaVolume
{
    /// <summary>Bulk volume of a medium for a surface.</summary>
    /// <param name="area">Surface for bacteria, m², from 0 to 1 000 000.</param>
    /// <param name="specificSurface">Surface in each bulk volume, m²/m³, from 30 to 1000.</param>
    /// <returns>Bulk volume, L.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range, or not a number.</exception>
    /// <remarks>V = A / s. Geometry. Sources: Miller, Biofilter decisions, Florida A and M University extension (worked example); from memory,
    /// FAO Technical Paper 589, appendix 4. Upper limit: at 500 m²/m³ a measured surface did 0.576 g N/m²/d, at 3287 only 0.094 (Harwanto, Oh
    /// and Jo 2011, Fisheries and Aquatic Sciences 14, 363), so the surface of finer media may not be counted in full.</remarks>
    public static double ForArea(double area, double specificSurface) =>
        Range.Within(area, 0, 1e6) / Range.Within(specificSurface, 30, 1000) * 1000;
}
