namespace Runnel.Engine.Filter;

/// <summary>How the removal rate of a biofilter changes with temperature.</summary>
public static class NitrificationTemperature
{
    /// <summary>Removal rate as a ratio to the rate at 20 °C.</summary>
    /// <param name="temperature">Water temperature, °C, from 10 to 34.</param>
    /// <param name="theta">Ratio for each °C, from 1.01 to 1.10.</param>
    /// <returns>Ratio to the rate at 20 °C.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range, or not a number.</exception>
    /// <remarks>f = θ^(t - 20). Sources disagree: 1.043 where ammonia limits and 1.011 where oxygen limits (Zhu and Chen 2002), 1.024 to 1.026
    /// (Nemeth and others 2023), 1.098 inside the film (Salvetti and others 2006). 1.04 is our choice between them. Error: at 12 °C, 0.47
    /// to 0.92 over that span. Not for: under 10 °C, where rates fall off; a filter short of oxygen.</remarks>
    public static double Theta(double temperature, double theta = 1.04) =>
        Math.Pow(Range.Within(theta, 1.01, 1.10), Range.Within(temperature, 10, 34) - 20);
}
