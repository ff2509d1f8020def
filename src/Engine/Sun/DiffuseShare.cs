namespace Runnel.Engine.Sun;

/// <summary>How much of the global radiation of an hour comes from the whole sky and not from the sun's direction.</summary>
public static class DiffuseShare
{
    internal const double MaxClearness = 1.2;

    /// <summary>Share of an hour.</summary>
    /// <param name="clearness">Global radiation over that above the air, both on the level, from 0 to 1.2.</param>
    /// <returns>Share, from 0.165 to 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    /// <remarks>k_t ≤ 0.22: 1 − 0.09 k; ≤ 0.80: 0.9511 − 0.1604 k + 4.388 k² − 16.638 k³ + 12.336 k⁴; above: 0.165. Source: Erbs, Klein and
    /// Duffie 1982, Estimation of the diffuse radiation fraction for hourly, daily and monthly-average global radiation, Solar Energy 28,
    /// 293-302. Error: published models differ by 30 % at one hour. Not for: whole days.</remarks>
    public static double Erbs(double clearness)
    {
        var k = Range.Within(clearness, 0, MaxClearness);
        return k switch
        {
            <= 0.22 => 1 - 0.09 * k,
            <= 0.80 => 0.9511 + k * (-0.1604 + k * (4.388 + k * (-16.638 + k * 12.336))),
            _ => 0.165,
        };
    }
}
