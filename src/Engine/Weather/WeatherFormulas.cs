using Runnel.Engine.Figures;
using Runnel.Engine.Quantities;

namespace Runnel.Engine.Weather;

/// <summary>The formulary's rules about weather and ground.</summary>
public static class WeatherFormulas
{
    private const string Subject = "Weather";

    private static readonly Unit Diffusivity = Units.SquareMetrePerDay;

    private static readonly Source Fao56 = new(
        "Allen, Pereira, Raes and Smith 1998, Crop evapotranspiration, FAO Irrigation and Drainage Paper 56, equations 10, 11 and 14");

    private static readonly Source Kusuda = Source.FromMemory(
        "Kusuda and Achenbach 1965, Earth temperature and thermal diffusivity at selected stations in the United States, ASHRAE Transactions 71 (1)");

    private static readonly FormulaInput Air = new("air", "Air temperature", Units.Celsius, DewPoint.MinTemperature, DewPoint.MaxTemperature);

    private static readonly FormulaInput[] Wave =
    [
        new("mean", "Mean of the surface over the year", Units.Celsius, GroundTemperature.MinMean, GroundTemperature.MaxMean),
        new("amplitude", "Half of what the monthly means go up and down", Units.Kelvin, 0, GroundTemperature.MaxAmplitude),
        new("coldest", "Day of the year on which the surface is coldest", Units.One, 1, 366, 25, "common practice, no source: late January in the north; about 208 in the south"),
        new("diffusivity", "Thermal diffusivity of the soil", Diffusivity, GroundTemperature.MinDiffusivity, GroundTemperature.MaxDiffusivity, 0.05,
            "from memory: moist loam 0.04 to 0.06, dry sand 0.02, wet heavy soil 0.06 to 0.08 m²/d"),
    ];

    private static readonly FormulaInput Day = new("day", "Day of the year, 1 for 1 January", Units.One, 1, 366);

    /// <summary>Dew point.</summary>
    public static readonly Formula DewPointOfAir = new()
    {
        Id = "dew-point",
        Name = "Dew point of air",
        Subject = Subject,
        Equation = "T_dew = 237.3 γ / (17.27 − γ), γ = ln(RH/100) + 17.27 T / (T + 237.3)",
        Inputs = [Air, new("humidity", "Relative humidity", Units.Percent, DewPoint.MinHumidity, 100)],
        Output = new("dew-point", "Dew point", Units.Celsius),
        Sources = [Fao56],
        Confidence = Confidence.PublishedExample,
        Error = "0.1 K from 0 to 50 °C",
        NotFor = "frost on a surface below 0 °C, which begins a little above it",
        Compute = x => DewPoint.OfHumidity(x[0], x[1]),
    };

    /// <summary>Ground temperature at a depth.</summary>
    public static readonly Formula GroundAtDepth = new()
    {
        Id = "ground-temperature",
        Name = "Temperature of the ground at a depth",
        Subject = Subject,
        Equation = "T = T_m − A e^(−b) cos(2π(t − t₀)/365 − b), b = z √(π/(365 a))",
        Inputs = [.. Wave, new("depth", "Depth", Units.Metre, 0, GroundTemperature.MaxDepth), Day],
        Output = new("ground", "Ground temperature", Units.Celsius),
        Sources = [Kusuda],
        Confidence = Confidence.Textbook,
        Error = "1 to 2 K under grass; more under snow",
        NotFor = "the ground under or beside a heated house, which is warmer",
        Compute = x => GroundTemperature.AtDepth(x[0], x[1], x[2], x[3], x[4], x[5]),
    };

    /// <summary>Mean ground temperature down to a depth.</summary>
    public static readonly Formula GroundDownTo = new()
    {
        Id = "ground-temperature-down-to",
        Name = "Mean temperature of the ground from the surface to a depth",
        Subject = Subject,
        Equation = "T = T_m − A g cos(2π(t − t₀)/365 − φ), g = √((x² − 2x cos b + 1)/(2b²)), x = e^(−b)",
        Inputs = [.. Wave, new("depth", "Depth", Units.Metre, GroundTemperature.MinDepth, GroundTemperature.MaxDepth), Day],
        Output = new("ground", "Mean ground temperature", Units.Celsius),
        Sources = [Kusuda],
        Confidence = Confidence.PublishedExample,
        Error = "1 to 2 K under grass; more under snow",
        NotFor = "the ground under or beside a heated house, which is warmer",
        Compute = x => GroundTemperature.DownTo(x[0], x[1], x[2], x[3], x[4], x[5]),
    };

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Formula> All { get; } = [DewPointOfAir, GroundAtDepth, GroundDownTo];
}
