namespace Runnel.Engine.Fish;

/// <summary>Oxygen that quiet fish use between meals.</summary>
public static class RoutineRespiration
{
    /// <summary>Routine respiration of a fish of 100 g at its best temperature, mg/kg/h. From memory: quiet fish 100 to 200.</summary>
    public const double Usual = 150;

    /// <summary>Ratio for each °C: doubled by 10 °C, from memory.</summary>
    public const double Theta = 1.0718;

    /// <summary>Power of the weight in the oxygen used by each kilogram. From memory: Clarke and Johnston 1999, 0.79 for the whole fish.</summary>
    public const double WeightPower = -0.2;

    /// <summary>Oxygen used by quiet fish between meals.</summary>
    /// <param name="weight">Weight of one fish, g, from 0.01 to 50 000.</param>
    /// <param name="temperature">Water temperature, °C, from 0 to 45.</param>
    /// <param name="best">Temperature at which it grows best, °C, from 5 to 35.</param>
    /// <param name="rate">At 100 g and the best temperature, mg/kg/h, from 50 to 400.</param>
    /// <returns>Oxygen used, mg/kg/h.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range, or not a number.</exception>
    /// <remarks>R = R0 (W/100)^−0.2 1.0718^(T − B). Sources: see the constants. Error: published rates of one size and temperature differ
    /// two to three times. Not for: fish that were just fed (half as much again) or handled.</remarks>
    public static double Routine(double weight, double temperature, double best, double rate = Usual) =>
        Range.Within(rate, 50, 400) * Math.Pow(Range.Within(weight, 0.01, 5e4) / 100, WeightPower)
        * Math.Pow(Theta, Range.Within(temperature, 0, 45) - Range.Within(best, 5, 35));
}
