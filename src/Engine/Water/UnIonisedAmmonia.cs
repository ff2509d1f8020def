namespace Runnel.Engine.Water;

/// <summary>Un-ionised ammonia, NH3: the part of total ammonia nitrogen that harms fish.</summary>
public static class UnIonisedAmmonia
{
    /// <summary>Share of total ammonia nitrogen that is un-ionised, in fresh water.</summary>
    /// <param name="temperature">Water temperature, °C, from 0 to 50.</param>
    /// <param name="pH">pH, from 4 to 11.</param>
    /// <returns>Un-ionised share, %.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range, or not a number.</exception>
    /// <remarks>pKa = 0.09018 + 2729.92/T; f = 1 / (1 + 10^(pKa - pH)), T in kelvin. Source: Emerson, Russo, Lund and Thurston 1975,
    /// J. Fisheries Research Board of Canada 32, 2379-2383. Its table runs over pH 6 to 10; the balance itself knows no such limit.
    /// Error: other published tables differ by up to 3 % of the value, the pH reading matters far more (0.1 pH is 25 %).
    /// Not for: salt water; water with much dissolved salt has a little less.</remarks>
    public static double Emerson(double temperature, double pH)
    {
        var pKa = 0.09018 + 2729.92 / (Range.Within(temperature, 0, 50) + 273.15);
        return 100 / (1 + Math.Pow(10, pKa - Range.Within(pH, 4, 11)));
    }

    /// <summary>Un-ionised ammonia nitrogen from a test of total ammonia nitrogen, in fresh water.</summary>
    /// <param name="total">Total ammonia nitrogen, mg N/L, from 0 to 1000.</param>
    /// <param name="temperature">Water temperature, °C, from 0 to 50.</param>
    /// <param name="pH">pH, from 4 to 11.</param>
    /// <returns>Un-ionised ammonia, mg N/L.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range, or not a number.</exception>
    /// <remarks>NH3-N = f TAN, f of <see cref="Emerson"/>.</remarks>
    public static double FromTotal(double total, double temperature, double pH) =>
        Range.Within(total, 0, 1000) * Emerson(temperature, pH) / 100;
}
