namespace Runnel.Engine.Water;

/// <summary>Carbon dioxide, bicarbonate and pH in fresh water.</summary>
public static class Carbonate
{
    /// <summary>Grams of calcium carbonate for each equivalent of alkalinity.</summary>
    public const double GramsPerEquivalent = 50.043;

    /// <summary>Grams of carbon dioxide for each mole.</summary>
    public const double GramsPerMole = 44.0095;

    /// <summary>First dissociation of carbonic acid, as pK1.</summary>
    /// <param name="temperature">Water temperature, °C, from 0 to 50.</param>
    /// <returns>pK1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    /// <remarks>pK1 = 356.3094 + 0.06091964 T − 21834.37/T − 126.8339 log T + 1684915/T², T in K. Source: Plummer and Busenberg 1982, Geochimica et
    /// Cosmochimica Acta 46, 1011-1040 (coefficients from memory, proven against tabled values). Error: 0.005. Not for: salt water.</remarks>
    public static double PlummerBusenberg(double temperature)
    {
        var t = Range.Within(temperature, 0, 50) + 273.15;
        return 356.3094 + 0.06091964 * t - 21834.37 / t - 126.8339 * Math.Log10(t) + 1684915 / (t * t);
    }

    /// <summary>Carbon dioxide dissolved in water in balance with air.</summary>
    /// <param name="temperature">Water temperature, °C, from 0 to 50.</param>
    /// <param name="partsPerMillion">Carbon dioxide in the air, µmol/mol, from 0 to 20 000.</param>
    /// <returns>Dissolved carbon dioxide, mg/L.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range, or not a number.</exception>
    /// <remarks>C = K0 p, log K0 = 108.3865 + 0.01985076 T − 6919.53/T − 40.45154 log T + 669365/T², T in K, K0 in mol/L/atm. Source: as
    /// <see cref="PlummerBusenberg"/>. At sea level. Error: 1 %; what the air of a room holds is the guess.</remarks>
    public static double Dissolved(double temperature, double partsPerMillion)
    {
        var t = Range.Within(temperature, 0, 50) + 273.15;
        var log = 108.3865 + 0.01985076 * t - 6919.53 / t - 40.45154 * Math.Log10(t) + 669365 / (t * t);
        return Math.Pow(10, log) * Range.Within(partsPerMillion, 0, 20000) * 1e-6 * GramsPerMole * 1000;
    }

    /// <summary>pH from alkalinity and dissolved carbon dioxide.</summary>
    /// <param name="temperature">Water temperature, °C, from 0 to 50.</param>
    /// <param name="alkalinity">Alkalinity as CaCO3, mg/L, from 0 to 1000.</param>
    /// <param name="carbonDioxide">Dissolved carbon dioxide, mg/L, from 0.01 to 500.</param>
    /// <returns>pH.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range, or not a number.</exception>
    /// <remarks>H² + A H − K1 C = 0: bicarbonate carries the alkalinity and the hydrogen ions (charge balance). Source: textbook chemistry,
    /// Stumm and Morgan, Aquatic chemistry. Error: carbonate is left out, 0.02 at pH 8.3 and 0.1 at pH 9; ionic strength 0.02 to 0.05.
    /// Not for: over pH 9, salt water, water with much organic acid.</remarks>
    public static double PH(double temperature, double alkalinity, double carbonDioxide)
    {
        var k = Math.Pow(10, -PlummerBusenberg(temperature));
        var a = Range.Within(alkalinity, 0, 1000) / 1000 / GramsPerEquivalent;
        var c = k * Range.Within(carbonDioxide, 0.01, 500) / 1000 / GramsPerMole;
        return -Math.Log10(2 * c / (a + Math.Sqrt(a * a + 4 * c)));
    }
}
