namespace Runnel.Engine.Water;

/// <summary>Dissolved oxygen in water that has taken up all it can from the air above it.</summary>
public static class OxygenSaturation
{
    /// <summary>Dissolved oxygen of water in balance with moist air.</summary>
    /// <param name="temperature">Water temperature, °C, from 0 to 40.</param>
    /// <param name="pressure">Air pressure at the place, kPa, from 50 to 110.</param>
    /// <param name="salinity">Salt in the water, g/kg, from 0 to 40.</param>
    /// <returns>Dissolved oxygen, mg/L.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range, or not a number.</exception>
    /// <remarks>With T = t + 273.15 and p = P / 101.325:
    /// ln C* = -139.34411 + 1.575701e5/T - 6.642308e7/T² + 1.243800e10/T³ - 8.621949e11/T⁴ - S (1.7674e-2 - 10.754/T + 2140.7/T²);
    /// ln w = 11.8571 - 3840.70/T - 216961/T²; θ = 0.000975 - 1.426e-5 t + 6.436e-8 t²;
    /// C = C* p (1 - w/p)(1 - θ p) / ((1 - w)(1 - θ)). Source: Benson and Krause 1984, Limnology and Oceanography 29, 620-632, as taken
    /// into APHA Standard Methods 4500-O. Claimed error: 0.1 % at 101.325 kPa. Not for: water under a closed lid or fed with oxygen gas.
    /// </remarks>
    public static double BensonKrause(double temperature, double pressure = 101.325, double salinity = 0)
    {
        var t = Range.Within(temperature, 0, 40);
        var p = Range.Within(pressure, 50, 110) / 101.325;
        var s = Range.Within(salinity, 0, 40);
        var kelvin = t + 273.15;
        var lnC = -139.34411 + 1.575701e5 / kelvin - 6.642308e7 / Math.Pow(kelvin, 2) + 1.243800e10 / Math.Pow(kelvin, 3)
            - 8.621949e11 / Math.Pow(kelvin, 4) - s * (1.7674e-2 - 10.754 / kelvin + 2140.7 / Math.Pow(kelvin, 2));
        var w = Math.Exp(11.8571 - 3840.70 / kelvin - 216961 / Math.Pow(kelvin, 2));
        var theta = 0.000975 - 1.426e-5 * t + 6.436e-8 * t * t;
        return Math.Exp(lnC) * p * (1 - w / p) * (1 - theta * p) / ((1 - w) * (1 - theta));
    }
}
