using Runnel.Engine.Quantities;

namespace Runnel.Engine.Weather;

/// <summary>Temperature of soil under the open sky through the year.</summary>
/// <remarks>
/// Source: Kusuda and Achenbach 1965, Earth temperature and thermal diffusivity at selected stations in the United States, ASHRAE Transactions 71 (1)
/// (equations from memory; the same wave is in soil physics textbooks). Error: 1 to 2 K where the surface is bare or grassed; a snow cover keeps the
/// ground warmer. Not for: the ground under or beside a heated house, which is warmer.
/// Weather files print a diffusivity of "2.3225760E-03 m²/day" beside their ground temperatures. Their numbers fit that figure in m² per hour
/// (0.025 ft²/h, 0.0557 m²/d), and fit the mean from the surface down to the depth, not the temperature at it.
/// </remarks>
public static class GroundTemperature
{
    internal const double MinMean = -30;
    internal const double MaxMean = 40;
    internal const double MaxAmplitude = 40;
    internal const double MinDiffusivity = 0.005;
    internal const double MaxDiffusivity = 0.15;
    internal const double MaxDepth = 30;
    internal const double MinDepth = 0.001;

    /// <summary>Diffusivity that weather files' ground temperatures were computed with, m²/d: 0.025 ft²/h.</summary>
    public const double WeatherFileDiffusivity = 0.025 * 0.3048 * 0.3048 * 24;

    private const double Year = 365;

    /// <summary>Temperature at a depth.</summary>
    /// <param name="mean">Mean of the surface over the year, °C, from −30 to 40.</param>
    /// <param name="amplitude">Half of what the surface's monthly course goes up and down, K, from 0 to 40.</param>
    /// <param name="coldest">Day of the year on which the surface is coldest, from 1 to 366.</param>
    /// <param name="diffusivity">Thermal diffusivity, m²/d, from 0.005 to 0.15: moist loam 0.04 to 0.06 (from memory).</param>
    /// <param name="depth">m, from 0 to 30.</param>
    /// <param name="day">Day of the year, from 1 to 366.</param>
    /// <returns>°C.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>T = T_m − A e^(−b) cos(2π(t − t₀)/365 − b), b = z √(π/(365 a)).</remarks>
    public static double AtDepth(double mean, double amplitude, double coldest, double diffusivity, double depth, double day)
    {
        var b = Range.Within(depth, 0, MaxDepth) * Damping(diffusivity);
        return Range.Within(mean, MinMean, MaxMean) - Range.Within(amplitude, 0, MaxAmplitude) * Math.Exp(-b) * Math.Cos(Phase(coldest, day) - b);
    }

    /// <summary>Mean temperature from the surface down to a depth: what weather files print.</summary>
    /// <param name="mean">Mean of the surface over the year, °C, from −30 to 40.</param>
    /// <param name="amplitude">Half of what the surface's monthly course goes up and down, K, from 0 to 40.</param>
    /// <param name="coldest">Day of the year on which the surface is coldest, from 1 to 366.</param>
    /// <param name="diffusivity">Thermal diffusivity, m²/d, from 0.005 to 0.15.</param>
    /// <param name="depth">m, from 0.001 to 30.</param>
    /// <param name="day">Day of the year, from 1 to 366.</param>
    /// <returns>°C.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>T = T_m − A g cos(2π(t − t₀)/365 − φ), x = e^(−b), g = √((x² − 2x cos b + 1)/(2b²)), tan φ = (1 − x(cos b + sin b))/(1 − x(cos b − sin b)).
    /// </remarks>
    public static double DownTo(double mean, double amplitude, double coldest, double diffusivity, double depth, double day)
    {
        var (factor, lag) = Averaged(Range.Within(depth, MinDepth, MaxDepth) * Damping(diffusivity));
        return Range.Within(mean, MinMean, MaxMean) - Range.Within(amplitude, 0, MaxAmplitude) * factor * Math.Cos(Phase(coldest, day) - lag);
    }

    /// <summary>What is left of the surface's swing in the mean down to a depth, and how many days it comes later.</summary>
    /// <param name="diffusivity">Thermal diffusivity, m²/d, from 0.005 to 0.15.</param>
    /// <param name="depth">m, from 0.001 to 30.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    public static (double Factor, double LagDays) DownTo(double diffusivity, double depth)
    {
        var (factor, lag) = Averaged(Range.Within(depth, MinDepth, MaxDepth) * Damping(diffusivity));
        return (factor, lag / (2 * Math.PI) * Year);
    }

    /// <summary>Mean, half swing and coldest day of the wave of one year that fits twelve monthly means best.</summary>
    /// <param name="months">Mean of each month from January, °C.</param>
    /// <remarks>First term of the Fourier series of the middles of the months, with the swing that averaging over a month takes away (1.1 %) put back.
    /// The surface is taken to be as warm as the air; in the sun it is a degree or two warmer.</remarks>
    /// <exception cref="ArgumentException">Not twelve months.</exception>
    public static (double Mean, double Amplitude, double Coldest) FromMonths(ReadOnlySpan<double> months)
    {
        if (months.Length != YearCalendar.Months)
        {
            throw new ArgumentException("a year has twelve months", nameof(months));
        }
        double mean = 0, cos = 0, sin = 0;
        for (var m = 0; m < months.Length; m++)
        {
            var angle = 2 * Math.PI * (m + 0.5) / months.Length;
            mean += months[m] / 12;
            cos += months[m] * Math.Cos(angle) / 6;
            sin += months[m] * Math.Sin(angle) / 6;
        }
        var half = Math.PI / 12;
        var amplitude = Math.Sqrt(cos * cos + sin * sin) * half / Math.Sin(half);
        var coldest = Math.Atan2(-sin, -cos) / (2 * Math.PI) * Year;
        return (mean, amplitude, coldest < 0 ? coldest + Year + 0.5 : coldest + 0.5);
    }

    private static double Damping(double diffusivity) => Math.Sqrt(Math.PI / (Year * Range.Within(diffusivity, MinDiffusivity, MaxDiffusivity)));

    private static double Phase(double coldest, double day) => 2 * Math.PI / Year * (Range.Within(day, 1, 366) - Range.Within(coldest, 1, 366));

    private static (double Factor, double Lag) Averaged(double b)
    {
        var x = Math.Exp(-b);
        var (sin, cos) = Math.SinCos(b);
        return (Math.Sqrt((x * x - 2 * x * cos + 1) / (2 * b * b)), Math.Atan2(1 - x * (cos + sin), 1 - x * (cos - sin)));
    }
}
