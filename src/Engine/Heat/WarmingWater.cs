namespace Runnel.Engine.Heat;

/// <summary>Heat that warms water.</summary>
public static class WarmingWater
{
    /// <summary>Heat that warms one litre by one kelvin, Wh: the value of heating practice, within 1 % from 0 to 40 °C.</summary>
    public const double WattHoursPerLitreKelvin = 1.163;

    internal const double MaxVolume = 1e6;
    internal const double MaxRise = 100;

    /// <summary>Mean heat that warms the water added each day.</summary>
    /// <param name="water">Water added, L/d, from 0 to 1 000 000.</param>
    /// <param name="rise">How much warmer the loop is, K, from −100 to 100.</param>
    /// <returns>Heat, W; negative when the added water is warmer.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>Q = 1.163 V ΔT / 24. Source: heat capacity of water, 4.187 kJ for each litre and kelvin.</remarks>
    public static double MeanPower(double water, double rise) =>
        WattHoursPerLitreKelvin * Range.Within(water, 0, MaxVolume) * Range.Within(rise, -MaxRise, MaxRise) / 24;

    /// <summary>Heat that warms a volume of water once.</summary>
    /// <param name="volume">Volume of water, L, from 0 to 1 000 000.</param>
    /// <param name="rise">By how much, K, from −100 to 100.</param>
    /// <returns>Heat, kWh; negative for cooling.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>Q = 1.163 V ΔT / 1000. Source: as for <see cref="MeanPower"/>. Not for: what is lost meanwhile.</remarks>
    public static double Heat(double volume, double rise) =>
        WattHoursPerLitreKelvin * Range.Within(volume, 0, MaxVolume) * Range.Within(rise, -MaxRise, MaxRise) / 1000;
}
