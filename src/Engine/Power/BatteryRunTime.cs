namespace Runnel.Engine.Power;

/// <summary>How long a battery lasts.</summary>
public static class BatteryRunTime
{
    internal const double MinCapacity = 0.1;
    internal const double MaxCapacity = 10000;
    internal const double MinRatedTime = 0.1;
    internal const double MaxRatedTime = 1000;
    internal const double MinCurrent = 0.001;
    internal const double MaxCurrent = 1000;
    internal const double MinExponent = 1;
    internal const double MaxExponent = 1.6;

    /// <summary>Time over which most lead batteries are rated, h.</summary>
    public const double UsualRatedTime = 20;

    /// <summary>Exponent of a battery of unknown kind: the default of a battery monitor's manual.</summary>
    public const double UsualExponent = 1.25;

    /// <summary>Time until a full lead battery is empty.</summary>
    /// <param name="capacity">Rated capacity, Ah, from 0.1 to 10 000.</param>
    /// <param name="current">Steady current drawn, A, from 0.001 to 1000.</param>
    /// <param name="ratedTime">Time over which the capacity is rated, h, from 0.1 to 1000.</param>
    /// <param name="exponent">Peukert's exponent, from 1 to 1.6.</param>
    /// <returns>Time, h.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>t = H (C / (I H))^k. Source: Peukert's law in the form with the rated time. The form t = C/I^k holds only for a capacity
    /// measured at one ampere; with a 20-hour capacity it is wrong. Not for: planning to empty a lead battery, which shortens its life
    /// (half is usual); cold or old batteries; currents far below the rated one, where it promises more than the battery holds.</remarks>
    public static double Peukert(double capacity, double current, double ratedTime = UsualRatedTime, double exponent = UsualExponent)
    {
        Range.Within(capacity, MinCapacity, MaxCapacity);
        Range.Within(current, MinCurrent, MaxCurrent);
        Range.Within(ratedTime, MinRatedTime, MaxRatedTime);
        Range.Within(exponent, MinExponent, MaxExponent);
        return ratedTime * Math.Pow(capacity / (current * ratedTime), exponent);
    }
}
