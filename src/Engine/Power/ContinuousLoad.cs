namespace Runnel.Engine.Power;

/// <summary>What a circuit may carry for hours.</summary>
public static class ContinuousLoad
{
    internal const double MaxCurrent = 400;
    internal const double MinVoltage = 5;
    internal const double MaxVoltage = 1000;

    /// <summary>Share of its breaker's rating that a load of three hours or more may take: the breaker is sized at 125 % of it.</summary>
    public const double Share = 0.8;

    /// <summary>Greatest load of three hours or more on a circuit.</summary>
    /// <param name="breaker">Rating of the breaker, A, from 0 to 400.</param>
    /// <param name="voltage">Voltage of the circuit, V, from 5 to 1000.</param>
    /// <returns>Power, W.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>P = 0.8 I V. Source: rule of the US National Electrical Code for continuous loads, 210.20(A) (section number from memory).
    /// Not for: deciding that a circuit is safe. The code of the place and a licensed electrician decide.</remarks>
    public static double Nec(double breaker, double voltage) =>
        Share * Range.Within(breaker, 0, MaxCurrent) * Range.Within(voltage, MinVoltage, MaxVoltage);

    internal const double MinCurrent = 0.1;
    internal const double MinFactor = 0.1;
    internal const double MaxPower = 1e6;

    /// <summary>How much of what a circuit may carry for hours is taken.</summary>
    /// <param name="power">Everything that runs for hours on it, W, from 0 to 1 000 000.</param>
    /// <param name="breaker">Rating of the breaker, A, from 0.1 to 400.</param>
    /// <param name="voltage">Voltage of the circuit, V, from 5 to 1000.</param>
    /// <param name="powerFactor">Power factor, from 0.1 to 1: watts over volt-amperes.</param>
    /// <returns>Share, %; over 100 is too much.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>u = P/(0.8 I V PF). Source: as for <see cref="Nec"/>. Not for: deciding that a circuit is safe.</remarks>
    public static double Use(double power, double breaker, double voltage, double powerFactor = 1) =>
        Range.Within(power, 0, MaxPower)
        / (Share * Range.Within(breaker, MinCurrent, MaxCurrent) * Range.Within(voltage, MinVoltage, MaxVoltage) * Range.Within(powerFactor, MinFactor, 1)) * 100;
}
