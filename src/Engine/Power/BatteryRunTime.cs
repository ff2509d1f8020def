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

    internal const double MinPower = 0.1;
    internal const double MaxPower = 20000;
    internal const double MinVoltage = 3;
    internal const double MaxVoltage = 100;
    internal const double MinShare = 5;
    internal const double MinHours = 0.1;
    internal const double MaxHours = 240;

    /// <summary>Share of a lead battery's capacity that may be used without wearing it out soon, %. Common practice, no source.</summary>
    public const double UsualDepth = 50;

    /// <summary>Efficiency of a small inverter, %. Common practice, no source; 100 where the pump runs on the battery's own voltage.</summary>
    public const double UsualInverter = 90;

    /// <summary>Capacity that runs a load for a wanted time.</summary>
    /// <param name="power">Power of the load, W, from 0.1 to 20 000.</param>
    /// <param name="hours">Wanted time, h, from 0.1 to 240.</param>
    /// <param name="voltage">Voltage of the battery, V, from 3 to 100.</param>
    /// <param name="depth">Share of the capacity that may be used, %, from 5 to 100.</param>
    /// <param name="inverter">Efficiency of the inverter, %, from 5 to 100.</param>
    /// <param name="ratedTime">Time over which the capacity is rated, h, from 0.1 to 1000.</param>
    /// <param name="exponent">Peukert's exponent, from 1, which leaves it out, to 1.6.</param>
    /// <returns>Rated capacity, Ah.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>C = I H max(x, x^(1/k)), x = t/(D H), I = P/(V η). Source: Peukert's law with the rated time, solved for the capacity. Where the
    /// load is slower than the rated one (x over 1), the law would promise more than the battery holds, so plain ampere hours are taken. Not
    /// for: old or cold batteries, which hold a half to four fifths of their label (from memory); the inverter's own draw when idle.</remarks>
    public static double ForHours(
        double power, double hours, double voltage, double depth = UsualDepth, double inverter = UsualInverter,
        double ratedTime = UsualRatedTime, double exponent = UsualExponent)
    {
        Range.Within(power, MinPower, MaxPower);
        Range.Within(hours, MinHours, MaxHours);
        Range.Within(voltage, MinVoltage, MaxVoltage);
        Range.Within(depth, MinShare, 100);
        Range.Within(inverter, MinShare, 100);
        Range.Within(ratedTime, MinRatedTime, MaxRatedTime);
        Range.Within(exponent, MinExponent, MaxExponent);
        var current = power / (voltage * inverter / 100);
        var share = hours / (depth / 100 * ratedTime);
        return current * ratedTime * Math.Max(share, Math.Pow(share, 1 / exponent));
    }
}
