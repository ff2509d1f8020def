namespace Runnel.Engine.Water;

/// <summary>Water that is brought to saturation each hour by bubbles, falls and the open surface: gas transfer as a flow, m³/h.</summary>
public static class Aeration
{
    /// <summary>Oxygen in a cubic metre of air at 20 °C and sea level, g: 23.14 % of 1.204 kg.</summary>
    public const double OxygenInAir = 279;

    /// <summary>Share of the oxygen that dissolves for each metre of depth. From memory: fine bubbles 6 %, air stones 3 to 4, coarse bubbles 2 to 3.</summary>
    public const double StoneShare = 0.03;

    /// <summary>Exchange velocity of a quiet surface indoors, m/h. From memory: 0.01 to 0.05; ponds in wind to 0.2.</summary>
    public const double QuietSurface = 0.03;

    /// <summary>Gas transfer by air stones.</summary>
    /// <param name="air">Air flow, L/min, from 0 to 10 000.</param>
    /// <param name="depth">Depth of the stones, m, from 0 to 5.</param>
    /// <param name="share">Share of oxygen that dissolves for each metre, from 0.005 to 0.1.</param>
    /// <returns>Water brought to saturation, m³/h.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range, or not a number.</exception>
    /// <remarks>K = q e d O / C20, with C20 = 9.09 g/m³. Source: definition of the standard oxygen transfer rate; the share from memory (US EPA 1989,
    /// Design manual, fine pore aeration systems). Error: threefold with the stone, its age and the depth. Not for: venturis, falls.</remarks>
    public static double ByStones(double air, double depth, double share = StoneShare) =>
        Range.Within(air, 0, 1e4) * 0.06 * Range.Within(depth, 0, 5) * Range.Within(share, 0.005, 0.1) * OxygenInAir / 9.09;

    /// <summary>Share of the oxygen deficit that a fall makes good.</summary>
    /// <param name="height">Height of the fall, m, from 0 to 3.</param>
    /// <param name="temperature">Water temperature, °C, from 0 to 40.</param>
    /// <returns>Share of the deficit, from 0 to 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range, or not a number.</exception>
    /// <remarks>r = 1 + 0.38 a b h (1 − 0.11 h)(1 + 0.046 T), share = 1 − 1/r; a = 1.0 for moderately polluted water, b = 1.0 for a plain step. Source: UK Water
    /// Research Laboratory 1973 after Gameson 1957 (from memory). Error: a half; measured on weirs, not pipes. Not for: a drowned pipe.</remarks>
    public static double ByFall(double height, double temperature)
    {
        var h = Range.Within(height, 0, 3);
        return 1 - 1 / (1 + 0.38 * h * (1 - 0.11 * h) * (1 + 0.046 * Range.Within(temperature, 0, 40)));
    }
}
