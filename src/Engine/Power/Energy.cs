namespace Runnel.Engine.Power;

/// <summary>Electric energy from power and time.</summary>
public static class Energy
{
    internal const double MaxPower = 1e6;
    internal const double MaxCount = 1000;
    internal const double MaxDays = 3660;

    /// <summary>Energy that appliances alike take over some days.</summary>
    /// <param name="power">Power of one while it is on, W, from 0 to 1 000 000.</param>
    /// <param name="count">How many alike, from 0 to 1000.</param>
    /// <param name="hours">Hours on in each day, h/d, from 0 to 24.</param>
    /// <param name="days">Days, from 0 to 3660.</param>
    /// <returns>Energy, kWh.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>E = n P t d / 1000. Source: definition of the kilowatt hour. Not for: heaters and coolers on a thermostat, which are on
    /// for less than the clock says; a label in VA, which for small motors may be twice to three times the watts.</remarks>
    public static double FromPower(double power, double count, double hours, double days)
    {
        Range.Within(power, 0, MaxPower);
        Range.Within(count, 0, MaxCount);
        Range.Within(hours, 0, 24);
        Range.Within(days, 0, MaxDays);
        return count * power * hours * days / 1000;
    }

    /// <summary>Energy of one day.</summary>
    /// <param name="power">Mean power while it is on, W, from 0 to 1 000 000.</param>
    /// <param name="hours">Hours on in each day, h/d, from 0 to 24.</param>
    /// <returns>Energy, kWh/d.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>E = P t / 1000. Source: definition of the kilowatt hour.</remarks>
    public static double OfADay(double power, double hours) =>
        Range.Within(power, 0, MaxPower) * Range.Within(hours, 0, 24) / 1000;
}
