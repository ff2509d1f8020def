namespace Runnel.Engine.Weather;

/// <summary>What a climate's monthly means do not tell about its days: guesses that a caller may replace.</summary>
public sealed record WeatherHabits
{
    /// <summary>Mean wind speed of the year, m/s, from 0 to 15. Weather stations in the open mostly have 2 to 5.5 (means of public weather files);
    /// a garden between houses has less.</summary>
    public double Wind { get; init; } = 3;

    /// <summary>Correlation of one day's mean temperature with the next. Richardson's 1982 matrices have 0.62 for the highest and 0.67 for the
    /// lowest temperature of US days (Richardson and Wright 1984, WGEN, from memory).</summary>
    public double TemperatureLikeness { get; init; } = 0.65;

    /// <summary>Correlation of one day's clearness with the next: 0.25 in the same matrices; Graham, Hollands and Huget 1988 have 0.29 (both from
    /// memory).</summary>
    public double ClearnessLikeness { get; init; } = 0.25;

    /// <summary>Hargreaves's coefficient of the daily range, K^−0.5: 0.16 inland, 0.19 on coasts (FAO-56 equation 50).</summary>
    public double RangeCoefficient { get; init; } = 0.16;

    /// <summary>Standard deviation of a day's mean temperature from the time of year, K, mean of the year; null for a rule from the year's range.</summary>
    public double? TemperatureSpread { get; init; }

    internal WeatherHabits Checked()
    {
        Range.Within(Wind, 0, 15);
        Range.Within(TemperatureLikeness, 0, 0.99);
        Range.Within(ClearnessLikeness, 0, 0.99);
        Range.Within(RangeCoefficient, 0.1, 0.4);
        Range.Within(TemperatureSpread ?? 0, 0, 12);
        return this;
    }
}
