namespace Runnel.Engine.Numerics;

/// <summary>How a living rate rises with temperature to an optimum and falls beyond it.</summary>
public static class TemperatureResponse
{
    /// <summary>Rate as a share of that at the optimum.</summary>
    /// <param name="temperature">Temperature, °C, from −60 to 70.</param>
    /// <param name="least">Temperature at and under which nothing happens, °C, from −20 to 40.</param>
    /// <param name="best">Optimum, °C, from −10 to 45, above <paramref name="least"/>.</param>
    /// <param name="most">Temperature at and over which nothing happens, °C, from 0 to 60, above <paramref name="best"/>.</param>
    /// <returns>Share from 0 to 1; 0 where the three are out of order.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range, or not a number.</exception>
    /// <remarks>r = ((M − T)/(M − B)) ((T − L)/(B − L))^((B − L)/(M − B)). Sources: the beta function of Yin,
    /// Kropff, McLaren and Visperas 1995 with its shape set to 1 (from memory); with L = 0 it is the equation of Yan and Hunt 1999, Annals of Botany 84,
    /// 607-614. Error: cardinal temperatures of one kind
    /// differ by several °C between sources, which moves the share far more than the form. Not for: damage by frost or heat.</remarks>
    public static double Beta(double temperature, double least, double best, double most)
    {
        var t = Range.Within(temperature, -60, 70);
        var l = Range.Within(least, -20, 40);
        var b = Range.Within(best, -10, 45);
        var m = Range.Within(most, 0, 60);
        return t <= l || t >= m || b <= l || m <= b ? 0 : (m - t) / (m - b) * Math.Pow((t - l) / (b - l), (b - l) / (m - b));
    }
}
