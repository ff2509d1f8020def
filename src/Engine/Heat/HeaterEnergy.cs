namespace Runnel.Engine.Heat;

/// <summary>What a heater has to add.</summary>
public static class HeaterEnergy
{
    internal const double MaxPower = 1e6;
    internal const double MaxHours = 8784;

    /// <summary>Energy that a heater on a thermostat takes over a period.</summary>
    /// <param name="loss">Mean loss at the temperature kept, W, from −1 000 000 (a gain) to 1 000 000.</param>
    /// <param name="other">Mean heat from pump, lamps and other things that ends in the water, W, from 0 to 1 000 000.</param>
    /// <param name="hours">Length of the period, h, from 0 to 8784.</param>
    /// <returns>Energy, kWh; never negative: heat that is too much is not stored.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>E = max(0, Q_loss − Q_other) t / 1000. Source: heat balance. Not for: periods in which loss and other heat change sides; a
    /// whole year from yearly means is too low, months are better.</remarks>
    public static double Balance(double loss, double other, double hours)
    {
        Range.Within(loss, -MaxPower, MaxPower);
        Range.Within(other, 0, MaxPower);
        Range.Within(hours, 0, MaxHours);
        return Math.Max(0, loss - other) * hours / 1000;
    }
}
