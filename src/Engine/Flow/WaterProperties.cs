namespace Runnel.Engine.Flow;

/// <summary>What water itself brings to its movement: density and viscosity, fresh water at one atmosphere.</summary>
public static class WaterProperties
{
    internal const double Min = 0;
    internal const double Max = 60;

    /// <summary>Temperature at which sums are made when nothing better is known, °C.</summary>
    public const double UsualTemperature = 20;

    /// <summary>Acceleration of free fall, m/s²: the standard value, by definition.</summary>
    public const double Gravity = 9.80665;

    /// <summary>Density of air-free fresh water at one atmosphere.</summary>
    /// <param name="temperature">Water temperature, °C, from 0 to 60.</param>
    /// <returns>Density, kg/m³.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    /// <remarks>ρ = (999.83952 + 16.945176 t − 7.9870401e-3 t² − 46.170461e-6 t³ + 105.56302e-9 t⁴ − 280.54253e-12 t⁵)/(1 + 16.87985e-3 t).
    /// Source: Kell 1975, Journal of Chemical and Engineering Data 20, 97-105 (coefficients from memory). Error: under 0.01 % of the
    /// tables it is checked by. Not for: salt water, ice.</remarks>
    public static double Density(double temperature)
    {
        var t = Range.Within(temperature, Min, Max);
        return (999.83952 + t * (16.945176 + t * (-7.9870401e-3 + t * (-46.170461e-6 + t * (105.56302e-9 - 280.54253e-12 * t)))))
            / (1 + 16.87985e-3 * t);
    }

    /// <summary>Dynamic viscosity of fresh water at 0.1 MPa.</summary>
    /// <param name="temperature">Water temperature, °C, from 0 to 60.</param>
    /// <returns>Dynamic viscosity, Pa·s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    /// <remarks>μ = 280.68 τ^−1.9 + 511.45 τ^−7.7 + 61.131 τ^−19.6 + 0.45903 τ^−40 µPa·s, τ = T/300 K. Source: IAPWS SR6-08(2011), liquid water
    /// at 0.1 MPa; Pátek, Hrubý, Klomfar, Součková and Harvey 2009 (coefficients from memory). Claimed error: 1 %. Not for: salt water.</remarks>
    public static double DynamicViscosity(double temperature)
    {
        var tau = (Range.Within(temperature, Min, Max) + 273.15) / 300;
        return 1e-6 * (280.68 * Math.Pow(tau, -1.9) + 511.45 * Math.Pow(tau, -7.7) + 61.131 * Math.Pow(tau, -19.6)
            + 0.45903 * Math.Pow(tau, -40));
    }

    /// <summary>Kinematic viscosity of fresh water: dynamic viscosity over density.</summary>
    /// <param name="temperature">Water temperature, °C, from 0 to 60.</param>
    /// <returns>Kinematic viscosity, m²/s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    /// <remarks>ν = μ/ρ. Tables in print differ by 1.5 % at 20 °C.</remarks>
    public static double KinematicViscosity(double temperature) => DynamicViscosity(temperature) / Density(temperature);
}
