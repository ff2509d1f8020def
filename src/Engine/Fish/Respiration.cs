namespace Runnel.Engine.Fish;

/// <summary>Oxygen that fish use.</summary>
public static class Respiration
{
    internal const double MinTemperature = 5;
    internal const double MaxTemperature = 34;
    internal const double MinWeight = 5;
    internal const double MaxWeight = 5000;
    internal const double MinRate = 200;
    internal const double MaxRate = 550;

    /// <summary>Oxygen used by fed warm-water fish of 100 g at 25 °C, mg/kg/h. From memory: 200 to 400.</summary>
    public const double WarmWater = 300;

    /// <summary>Oxygen used by fed trout of 100 g, brought to 25 °C by the same rule, mg/kg/h. From memory: 150 to 300 at 15 °C, twice that at 25.</summary>
    public const double ColdWater = 450;

    /// <summary>Oxygen used by fish of any kind, from one known rate.</summary>
    /// <param name="temperature">Temperature of the water, °C, from 5 to 34.</param>
    /// <param name="weight">Mean weight of one fish, g, from 5 to 5000.</param>
    /// <param name="rate">Oxygen used by fish of 100 g at 25 °C, mg/kg/h, from 200 to 550.</param>
    /// <returns>Oxygen, mg for each kg of fish and hour.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range, or not a number.</exception>
    /// <remarks>R = R_25 · 2^((T − 25)/10) · (W/100)^(−0.2). Source: a doubling for each 10 °C (from memory, Timmons and Ebeling 2013); metabolism
    /// goes with weight to the power of about 0.8 (from memory, Clarke and Johnston 1999). Error: a factor of two either way. Not for: temperatures outside what
    /// the fish likes, where it may rise or fall by itself; fish that breathe air.</remarks>
    public static double Doubling(double temperature, double weight, double rate = WarmWater)
    {
        Range.Within(temperature, MinTemperature, MaxTemperature);
        Range.Within(weight, MinWeight, MaxWeight);
        Range.Within(rate, MinRate, MaxRate);
        return rate * Math.Pow(2, (temperature - 25) / 10) * Math.Pow(weight / 100, -0.2);
    }

    internal const double MinTilapiaTemperature = 24;
    internal const double MaxTilapiaTemperature = 32;
    internal const double MinTilapiaWeight = 3;
    internal const double MaxTilapiaWeight = 110;

    /// <summary>Oxygen used by Nile tilapia, measured in a farm's recirculating tanks.</summary>
    /// <param name="temperature">Temperature of the water, °C, from 24 to 32.</param>
    /// <param name="weight">Mean weight of one fish, g, from 3 to 110.</param>
    /// <returns>Oxygen, mg for each kg of fish and hour.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range, or not a number.</exception>
    /// <remarks>R = 2014.45 + 2.75 W − 165.2 T + 0.007 W² + 3.93 T² − 0.21 W T. Source: Khater and others 2021, Scientific Reports 11:24130,
    /// measured from 3 to 210 g and 24 to 32 °C; the unit follows from its equation 5. The polynomial turns at 112 g for 24 °C (it then falls as
    /// the water warms) and at 164 g (it then rises with weight): what lies beyond is its shape, not the fish, and is refused.</remarks>
    public static double Khater(double temperature, double weight)
    {
        var t = Range.Within(temperature, MinTilapiaTemperature, MaxTilapiaTemperature);
        var w = Range.Within(weight, MinTilapiaWeight, MaxTilapiaWeight);
        return 2014.45 + 2.75 * w - 165.2 * t + 0.007 * w * w + 3.93 * t * t - 0.21 * w * t;
    }
}
