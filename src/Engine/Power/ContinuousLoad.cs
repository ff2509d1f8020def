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
}
