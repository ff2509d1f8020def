namespace Runnel.Files.Weather;

/// <summary>One quantity of an hour's row that is kept.</summary>
/// <param name="Field">Which field, from 1.</param>
/// <param name="Name">What it is called.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="Min">Least value that is taken.</param>
/// <param name="Max">Greatest value that is taken.</param>
/// <param name="Missing">The code for a missing value; greater values mean the same.</param>
internal sealed record EpwColumn(int Field, string Name, string Unit, double Min, double Max, double Missing)
{
    public static readonly EpwColumn DryBulb = new(7, "dry bulb", "°C", -70, 70, 99.9);
    public static readonly EpwColumn DewPoint = new(8, "dew point", "°C", -70, 70, 99.9);
    public static readonly EpwColumn Humidity = new(9, "relative humidity", "%", 0, 110, 999);
    public static readonly EpwColumn Pressure = new(10, "pressure", "Pa", 31000, 120000, 999999);
    public static readonly EpwColumn Infrared = new(13, "infrared from the sky", "Wh/m²", 0, 1000, 9999);
    public static readonly EpwColumn Global = new(14, "global radiation", "Wh/m²", 0, 2000, 9999);
    public static readonly EpwColumn Direct = new(15, "direct radiation", "Wh/m²", 0, 2000, 9999);
    public static readonly EpwColumn Diffuse = new(16, "diffuse radiation", "Wh/m²", 0, 2000, 9999);
    public static readonly EpwColumn Wind = new(22, "wind speed", "m/s", 0, 100, 999);
    public static readonly EpwColumn Rain = new(34, "rain", "mm", 0, 500, 999);

    public static readonly IReadOnlyList<EpwColumn> All =
        [DryBulb, DewPoint, Humidity, Pressure, Infrared, Global, Direct, Diffuse, Wind, Rain];

    /// <summary>Fields without which a row is of no use: all up to wind speed.</summary>
    public const int FewestFields = 22;
}
