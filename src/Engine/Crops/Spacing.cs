namespace Runnel.Engine.Crops;

/// <summary>Plants on an area.</summary>
public static class Spacing
{
    /// <summary>Plants that stand on an area.</summary>
    /// <param name="area">Planted area, m², from 0 to 100 000.</param>
    /// <param name="density">Plants for each square metre, from 0.1 to 2000.</param>
    /// <returns>Number of plants, not rounded.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range, or not a number.</exception>
    /// <remarks>n = A d. Source: FAO Technical Paper 589 (2014), section 8.1: 20 to 25 leafy; 4 to 8 fruiting in one printing, 4 in another.
    /// Error: none in the product. Not for: the edge of a small bed, where whole rows decide.</remarks>
    public static double PlantsInArea(double area, double density) => Range.Within(area, 0, 1e5) * Range.Within(density, 0.1, 2000);

    /// <summary>Area that some plants need.</summary>
    /// <param name="plants">Number of plants standing at one time, from 0 to 10 000 000.</param>
    /// <param name="density">Plants for each square metre, from 0.1 to 2000.</param>
    /// <returns>Planted area, m².</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range, or not a number.</exception>
    /// <remarks>A = n / d, the inverse of <see cref="PlantsInArea"/>.</remarks>
    public static double AreaForPlants(double plants, double density) => Range.Within(plants, 0, 1e7) / Range.Within(density, 0.1, 2000);
}
