using Runnel.Engine.Quantities;

namespace Runnel.Files.Values;

/// <summary>What a number measures, in words.</summary>
internal static class DimensionNames
{
    private static readonly Dictionary<Dimension, string> Names = new()
    {
        [Dimension.None] = "a number",
        [Units.Metre.Dimension] = "a length",
        [Units.SquareMetre.Dimension] = "an area",
        [Units.CubicMetre.Dimension] = "a volume",
        [Units.Kilogram.Dimension] = "a weight",
        [Units.Second.Dimension] = "a time",
        [Units.Celsius.Dimension] = "a temperature",
        [Units.Kelvin.Dimension] = "a temperature difference",
        [Units.Watt.Dimension] = "power (what a device draws while it is on)",
        [Units.KilowattHour.Dimension] = "energy (what a device uses over time)",
        [Units.LitrePerHour.Dimension] = "a flow",
        [Units.MetrePerSecond.Dimension] = "a speed",
        [Units.GramPerDay.Dimension] = "a weight for each day",
        [Units.GramPerSquareMetreDay.Dimension] = "a weight for each area and day",
        [Units.PercentPerDay.Dimension] = "a share for each day",
        [Units.MilligramPerLitre.Dimension] = "a concentration",
        [Units.MilligramCalciumCarbonatePerLitre.Dimension] = "an alkalinity counted as CaCO3",
        [Units.MilligramNitrogenPerLitre.Dimension] = "a concentration counted as nitrogen",
        [Units.KilogramPerSquareMetre.Dimension] = "a weight for each area",
        [Units.Pascal.Dimension] = "a pressure",
        [Units.Lumen.Dimension] = "light in lumens",
        [Units.LumenPerSquareMetre.Dimension] = "light on a surface",
        [Units.MicromolePerSecond.Dimension] = "photons for each second",
        [Units.MicromolePerJoule.Dimension] = "photons for each joule",
        [Units.MicromolePerSquareMetreSecond.Dimension] = "photons on a surface for each second",
        [Units.MoneyDimension] = "money",
        [Units.MoneyDimension / Units.KilowattHour.Dimension] = "a price of energy",
        [Units.MoneyDimension / Units.Second.Dimension] = "money for a time",
        [Units.MoneyDimension / Units.CubicMetre.Dimension] = "money for a volume",
        [Units.MoneyDimension / Units.Kilogram.Dimension] = "money for a weight",
        [Units.MoneyDimension / Units.Metre.Dimension] = "money for a length",
        [Units.MoneyDimension / Units.SquareMetre.Dimension] = "money for an area",
        [Units.MoneyDimension / Units.Watt.Dimension] = "money for power",
    };

    public static string Of(Dimension dimension) => Names.TryGetValue(dimension, out var name) ? name : $"something else ({dimension})";

    /// <summary>With "share" for a plain number that is asked for in percent, and so on.</summary>
    public static string Of(Unit unit) => unit.Symbol switch
    {
        "%" => "a share in percent",
        "h/d" => "hours a day",
        "°" => "degrees",
        "mg CaCO3/L" => "an alkalinity counted as CaCO3",
        _ => Of(unit.Dimension),
    };
}
