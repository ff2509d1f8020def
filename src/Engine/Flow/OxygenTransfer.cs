using Runnel.Engine.Water;

namespace Runnel.Engine.Flow;

/// <summary>Oxygen that air bubbled into water leaves in it.</summary>
public static class OxygenTransfer
{
    internal const double MaxAir = 1;
    internal const double MaxDepth = 10;
    internal const double MaxEfficiency = 0.2;
    internal const double MaxTransfer = 10;
    internal const double MaxDissolved = 0.03;

    /// <summary>Oxygen in a cubic metre of dry air at 20 °C and one atmosphere, kg: 23.14 % by mass of 1.2041 kg, rounded.</summary>
    public const double OxygenInAir = 0.279;

    /// <summary>Share of oxygen that fine bubbles leave behind for each metre of depth: 0.05 to 0.07.</summary>
    public const double FineBubbles = 0.06;

    /// <summary>Share of oxygen that coarse bubbles leave behind for each metre of depth: 0.02 to 0.03, from memory. Take this for common air stones.</summary>
    public const double CoarseBubbles = 0.025;

    /// <summary>Oxygen passed into clean water of 20 °C that holds none.</summary>
    /// <param name="air">Air, m³/s at 20 °C and one atmosphere, from 0 to 1.</param>
    /// <param name="depth">Depth of the stones, m, from 0 to 10.</param>
    /// <param name="efficiency">Share of oxygen left behind for each metre of depth, 1/m, from 0 to 0.2.</param>
    /// <returns>Standard oxygen transfer rate, kg/s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>SOTR = Q × 0.279 kg/m³ × SOTE, SOTE = depth × share for each metre, at most 0.9. Source: definition of SOTE, ASCE 2-91. Not for: airlifts,
    /// paddles, water falling.</remarks>
    public static double Standard(double air, double depth, double efficiency) =>
        Range.Within(air, 0, MaxAir) * OxygenInAir
        * Math.Min(0.9, Range.Within(depth, 0, MaxDepth) * Range.Within(efficiency, 0, MaxEfficiency));

    /// <summary>Oxygen passed into the water as it is.</summary>
    /// <param name="standard">Standard oxygen transfer rate, kg/s, from 0 to 10.</param>
    /// <param name="temperature">Water temperature, °C, from 0 to 40.</param>
    /// <param name="dissolved">Dissolved oxygen in the water, kg/m³ (g/L), from 0 to 0.03.</param>
    /// <param name="pressure">Air pressure at the place, kPa, from 50 to 110.</param>
    /// <param name="alpha">Transfer in this water over that in clean water, from 0.1 to 1.2.</param>
    /// <param name="beta">Saturation of this water over that of clean water, from 0.8 to 1.</param>
    /// <param name="fouling">Transfer of a used stone over that of a new one, from 0.1 to 1.</param>
    /// <returns>Oxygen, kg/s; negative where the water holds more than air can keep in it, and bubbling drives it out.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>OTR = SOTR α F (β C*_T − C)/C*_20 × 1.024^(T−20), C* by Benson and Krause, C*_20 at one atmosphere. Source: ASCE 2-91. Without the gain of
    /// saturation at depth: under 5 % in home tanks.</remarks>
    public static double Field(
        double standard, double temperature, double dissolved, double pressure = 101.325, double alpha = 0.9, double beta = 0.98, double fouling = 1)
    {
        var saturation = OxygenSaturation.BensonKrause(temperature, pressure) / 1000;
        var atTwenty = OxygenSaturation.BensonKrause(20) / 1000;
        return Range.Within(standard, 0, MaxTransfer) * Range.Within(alpha, 0.1, 1.2) * Range.Within(fouling, 0.1, 1)
            * (Range.Within(beta, 0.8, 1) * saturation - Range.Within(dissolved, 0, MaxDissolved)) / atTwenty * Math.Pow(1.024, temperature - 20);
    }

    /// <summary>Pressure that an air pump has to overcome at a depth, without hose, valve and stone.</summary>
    /// <param name="depth">Depth of the stones, m, from 0 to 10.</param>
    /// <returns>Pressure, Pa.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    /// <remarks>p = ρ g d, ρ 998.2 kg/m³.</remarks>
    public static double Pressure(double depth) => 998.2 * WaterProperties.Gravity * Range.Within(depth, 0, MaxDepth);
}
