namespace Runnel.Engine.Heat;

/// <summary>Water that leaves an open surface as vapour.</summary>
/// <remarks>
/// Both rules take temperatures and relative humidity and work out the pressures themselves, in pascals: nobody can hand them
/// inches of mercury, for which the first one's constants are wrong by a factor of up to 1067.
/// </remarks>
public static class Evaporation
{
    internal const double MaxWater = 50;
    internal const double MinAir = -40;
    internal const double MaxAir = 50;
    internal const double MaxSpeed = 3;
    internal const double MinActivity = 0.1;
    internal const double MaxActivity = 2;
    internal const double MaxRate = 20;
    internal const double MaxArea = 10000;

    /// <summary>Air speed over water in a closed room, m/s. Common practice, no source.</summary>
    public const double UsualSpeed = 0.1;

    /// <summary>Activity factor of still water in ASHRAE Handbook HVAC Applications (second hand).</summary>
    public const double UsualActivity = 0.5;

    private const double Atmosphere = 101325;
    private const double SecondsPerHour = 3600;

    /// <summary>Evaporation from a water surface by air speed and vapour pressure.</summary>
    /// <param name="water">Temperature of the water, °C, from 0 to 50.</param>
    /// <param name="air">Temperature of the air, °C, from −40 to 50.</param>
    /// <param name="humidity">Relative humidity of the air, %, from 0 to 100.</param>
    /// <param name="speed">Air speed over the water, m/s, from 0 to 3.</param>
    /// <param name="activity">Activity factor, from 0.1 to 2: 0.5 for still water, 1 for water that people swim in.</param>
    /// <returns>Evaporation, kg/m²/h; 0 where the air is so moist that water would condense.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>w = F (p_w − p_a)(0.089 + 0.0782 V)/Y, w in kg/m²/s, p in kPa, V in m/s, Y in kJ/kg. Source: Carrier 1918, in the SI form of
    /// ASHRAE Handbook HVAC Applications, chapter on natatoriums. Error: sources differ 2.4 times; measured on undisturbed water,
    /// 74 % of the equation with F = 1 (Smith, Löf and Jones 1998). Not for: covered water, spray, trickling water.</remarks>
    public static double Carrier(
        double water, double air, double humidity, double speed = UsualSpeed, double activity = UsualActivity)
    {
        Range.Within(water, 0, MaxWater);
        Range.Within(air, MinAir, MaxAir);
        Range.Within(humidity, 0, 100);
        Range.Within(speed, 0, MaxSpeed);
        Range.Within(activity, MinActivity, MaxActivity);
        var kilopascals = (SaturationVapourPressure.HylandWexler(water)
            - humidity / 100 * SaturationVapourPressure.HylandWexler(air)) / 1000;
        return Math.Max(0, activity * kilopascals * (0.089 + 0.0782 * speed) / LatentHeat.Harrison(water) * SecondsPerHour);
    }

    /// <summary>Evaporation from an undisturbed water surface in a still room, by the air that rises from it.</summary>
    /// <param name="water">Temperature of the water, °C, from 0 to 50.</param>
    /// <param name="air">Temperature of the air, °C, from −40 to 50.</param>
    /// <param name="humidity">Relative humidity of the air, %, from 0 to 100.</param>
    /// <returns>Evaporation, kg/m²/h; 0 where the air is so moist that water would condense.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>The larger of E = 35 ρ_w (ρ_r − ρ_w)^(1/3) (W_w − W_r) and E = 5·10⁻⁵ (p_w − p_r); ρ in kg dry air for each m³, W in kg/kg,
    /// p in Pa; w for air saturated at the water's temperature, r for the air of the room. Source: Shah 2014, ASHRAE Transactions 120(2),
    /// SE-14-001 (formula from memory, checked against the paper's look-up table). Error: mean deviation from measurements 18 %
    /// (Shah 2002). Here at sea level. Not for: draughts, wind, covered water.</remarks>
    public static double Shah(double water, double air, double humidity)
    {
        Range.Within(water, 0, MaxWater);
        Range.Within(air, MinAir, MaxAir);
        Range.Within(humidity, 0, 100);
        var pw = SaturationVapourPressure.HylandWexler(water);
        var pr = humidity / 100 * SaturationVapourPressure.HylandWexler(air);
        var lift = Math.Max(0, DryAirDensity(pr, air) - DryAirDensity(pw, water));
        var rising = 35 * DryAirDensity(pw, water) * Math.Cbrt(lift) * (HumidityRatio(pw) - HumidityRatio(pr));
        var layered = 5e-5 * (pw - pr);
        return Math.Max(0, Math.Max(rising, layered));
    }

    /// <summary>Heat that evaporation takes from the water.</summary>
    /// <param name="rate">Evaporation, kg/m²/h, from 0 to 20.</param>
    /// <param name="area">Open surface, m², from 0 to 10 000.</param>
    /// <param name="water">Temperature of the water, °C, from 0 to 50.</param>
    /// <returns>Heat, W.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>Q = w A Y. Source: definition of latent heat; <see cref="LatentHeat.Harrison"/>.</remarks>
    public static double Heat(double rate, double area, double water) =>
        Range.Within(rate, 0, MaxRate) * Range.Within(area, 0, MaxArea) * LatentHeat.Harrison(water) * 1000 / SecondsPerHour;

    private static double DryAirDensity(double vapour, double temperature) =>
        (Atmosphere - vapour) / (287.042 * (temperature + 273.15));

    private static double HumidityRatio(double vapour) => 0.621945 * vapour / (Atmosphere - vapour);
}
