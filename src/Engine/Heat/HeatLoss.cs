namespace Runnel.Engine.Heat;

/// <summary>Heat that leaves warm water without evaporating: through walls and from an open surface.</summary>
public static class HeatLoss
{
    internal const double MaxTransmittance = 10000;
    internal const double MaxArea = 10000;
    internal const double MaxDifference = 100;
    internal const double MinAir = -40;
    internal const double MaxAir = 60;
    internal const double MaxWater = 50;
    internal const double MaxCoefficient = 100;

    /// <summary>Convection and radiation together from a level surface facing up to still room air, W/m²K.</summary>
    /// <remarks>ASHRAE's film resistance for heat flowing up, 0.61 ft²·h·°F/Btu; ISO 6946 takes 0.10 m²K/W, which is 10 W/m²K.</remarks>
    public const double UsualSurfaceCoefficient = 9.3;

    /// <summary>Heat through a wall.</summary>
    /// <param name="transmittance">Transmittance of the wall, W/m²K, from 0 to 10 000.</param>
    /// <param name="area">Area of the wall, m², from 0 to 10 000.</param>
    /// <param name="difference">How much warmer the inside is, K, from −100 to 100.</param>
    /// <returns>Heat, W; negative when the outside is warmer.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>Q = U A ΔT. Source: definition of transmittance.</remarks>
    public static double ThroughWall(double transmittance, double area, double difference) =>
        Range.Within(transmittance, 0, MaxTransmittance) * Range.Within(area, 0, MaxArea)
        * Range.Within(difference, -MaxDifference, MaxDifference);

    /// <summary>Heat from an open water surface to air, without what evaporation takes.</summary>
    /// <param name="area">Open surface, m², from 0 to 10 000.</param>
    /// <param name="water">Temperature of the water, °C, from 0 to 50.</param>
    /// <param name="air">Temperature of air and surroundings, °C, from −40 to 60.</param>
    /// <param name="coefficient">Convection and radiation together, W/m²K, from 0 to 100.</param>
    /// <returns>Heat, W; negative when the air is warmer.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>Q = h A (T_w − T_a). Source: Newton's law of cooling. Not for: water under a clear night sky, wind.</remarks>
    public static double Newton(double area, double water, double air, double coefficient = UsualSurfaceCoefficient)
    {
        Range.Within(area, 0, MaxArea);
        Range.Within(water, 0, MaxWater);
        Range.Within(air, MinAir, MaxAir);
        Range.Within(coefficient, 0, MaxCoefficient);
        return coefficient * area * (water - air);
    }
}
