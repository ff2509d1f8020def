using System.Reflection;
using Runnel.Engine.Quantities;

namespace Runnel.Files.Values;

/// <summary>Names of units as people write them.</summary>
/// <remarks>
/// Factors that Units does not hold are exact by definition: SI brochure (9th edition); NIST SP 811 (2008), appendix B, for US
/// customary units and the Btu (International Table). A plain gallon is the US gallon; the imperial one says so.
/// </remarks>
internal static class UnitTable
{
    private static readonly Dimension Volume = Units.CubicMetre.Dimension;
    private static readonly Dimension Point = Units.Celsius.Dimension;

    private static readonly (Unit Unit, string Names)[] Rows =
    [
        (Units.Metre, "m|meter|meters|metre|metres"),
        (Units.Centimetre, "cm|centimeter|centimeters|centimetre|centimetres"),
        (Units.Millimetre, "mm|millimeter|millimeters|millimetre|millimetres"),
        (new("km", Units.Metre.Dimension, 1000), "km|kilometre|kilometres|kilometer|kilometers"),
        (Units.Inch, "in|inch|inches|\"|″|”"),
        (Units.Foot, "ft|foot|feet|'|′|’"),
        (new("yd", Units.Metre.Dimension, 0.9144), "yd|yard|yards"),
        (new("mile", Units.Metre.Dimension, 1609.344), "mile|miles"),
        (Units.SquareMetre, "m²|m2|m^2|sq m|sqm|square metre|square metres|square meter|square meters"),
        (new("cm²", Units.SquareMetre.Dimension, 1e-4), "cm²|cm2|cm^2|sq cm|square centimetre|square centimetres|square centimeter|square centimeters"),
        (Units.SquareFoot, "ft²|ft2|ft^2|sq ft|sqft|square foot|square feet"),
        (new("in²", Units.SquareMetre.Dimension, 0.0254 * 0.0254), "in²|in2|in^2|sq in|square inch|square inches"),
        (new("yd²", Units.SquareMetre.Dimension, 0.9144 * 0.9144), "yd²|yd2|yd^2|sq yd|square yard|square yards"),
        (Units.CubicMetre, "m³|m3|m^3|cu m|cubic metre|cubic metres|cubic meter|cubic meters"),
        (new("cm³", Volume, 1e-6), "cm³|cm3|cm^3|cc|cubic centimetre|cubic centimetres|cubic centimeter|cubic centimeters"),
        (Units.Litre, "L|l|litre|litres|liter|liters|dm³|dm3"),
        (new("mL", Volume, 1e-6), "mL|ml|millilitre|millilitres|milliliter|milliliters"),
        (Units.UsGallon, "gal|gallon|gallons|US gal|US gallon|US gallons|gal US"),
        (Units.ImperialGallon, "imp gal|imperial gal|imperial gallon|imperial gallons|UK gal|UK gallon|UK gallons"),
        (new("qt", Volume, 0.000946352946), "qt|quart|quarts|US qt"),
        (new("pt", Volume, 0.000473176473), "pt|pint|pints|US pt"),
        (new("fl oz", Volume, 0.0000295735295625), "fl oz|fluid ounce|fluid ounces|US fl oz"),
        (Units.CubicFoot, "ft³|ft3|ft^3|cu ft|cubic foot|cubic feet"),
        (Units.CubicYard, "yd³|yd3|yd^3|cu yd|cubic yard|cubic yards"),
        (new("in³", Volume, 0.0254 * 0.0254 * 0.0254), "in³|in3|in^3|cu in|cubic inch|cubic inches"),
        (Units.Kilogram, "kg|kilo|kilos|kilogram|kilograms"),
        (Units.Gram, "g|gram|grams|gramme|grammes"),
        (Units.Milligram, "mg|milligram|milligrams"),
        (new("t", Units.Kilogram.Dimension, 1000), "t|tonne|tonnes"),
        (Units.Pound, "lb|lbs|pound|pounds"),
        (Units.Ounce, "oz|ounce|ounces"),
        (Units.Second, "s|sec|second|seconds"),
        (Units.MinuteUnit, "min|mins|minute|minutes"),
        (Units.HourUnit, "h|hr|hrs|hour|hours"),
        (Units.DayUnit, "d|day|days"),
        (Units.Week, "week|weeks|wk"),
        (Units.Month, "month|months|mo"),
        (Units.Year, "year|years|yr|yrs"),
        (Units.Celsius, "°C|C|degC|deg C|℃|degrees C|celsius|degrees celsius"),
        (Units.Fahrenheit, "°F|F|degF|deg F|℉|degrees F|fahrenheit|degrees fahrenheit"),
        (Units.Kelvin, "K|kelvin"),
        (Units.Watt, "W|watt|watts"),
        (Units.Kilowatt, "kW|kilowatt|kilowatts"),
        (new("MW", Units.Watt.Dimension, 1e6), "MW|megawatt|megawatts"),
        (new("mW", Units.Watt.Dimension, 1e-3), "mW|milliwatt|milliwatts"),
        (new("hp", Units.Watt.Dimension, 745.69987158227022), "hp|horsepower"),
        (new("Btu/h", Units.Watt.Dimension, 1055.05585262 / 3600), "Btu/h|BTU/h|BTUH"),
        (Units.WattHour, "Wh|watt hour|watt hours"),
        (Units.KilowattHour, "kWh|kW h|kilowatt hour|kilowatt hours|kilowatt-hour|kilowatt-hours"),
        (new("MWh", Units.Joule.Dimension, 3.6e9), "MWh"),
        (new("Btu", Units.Joule.Dimension, 1055.05585262), "Btu|BTU"),
        (Units.Joule, "J|joule|joules"),
        (new("kJ", Units.Joule.Dimension, 1000), "kJ"),
        (Units.Megajoule, "MJ"),
        (Units.Pascal, "Pa|pascal|pascals"),
        (Units.Kilopascal, "kPa"),
        (new("mbar", Units.Pascal.Dimension, 100), "mbar|hPa"),
        (new("bar", Units.Pascal.Dimension, 1e5), "bar"),
        (Units.PoundPerSquareInch, "psi"),
        (Units.Lumen, "lm|lumen|lumens"),
        (Units.LumenPerSquareMetre, "lx|lux"),
        (new("klx", Units.LumenPerSquareMetre.Dimension, 1000), "klx"),
        (new("µmol", new(Amount: 1), 1e-6), "µmol|μmol|umol|micromol|micromole|micromoles"),
        (new("mmol", new(Amount: 1), 1e-3), "mmol"),
        (new("mol", new(Amount: 1), 1), "mol|mole|moles"),
        (Units.Percent, "%|percent|per cent|pct"),
        (new("dKH", Units.MilligramCalciumCarbonatePerLitre.Dimension, 0.01785), "dKH|°dKH|°dH|dH"),
        (new("mph", Units.MetrePerSecond.Dimension, 0.44704), "mph"),
        (Units.GallonPerHour, "gph|GPH"),
        (Units.GallonPerMinute, "gpm|GPM"),
        (Units.CubicFootPerMinute, "cfm|CFM"),
        (new("L/h", Units.LitrePerHour.Dimension, 0.001 / 3600), "lph|LPH"),
        (new("L/min", Units.LitrePerMinute.Dimension, 0.001 / 60), "lpm|LPM"),
        (Unit.Count("pieces"), "piece|pieces|pc|pcs|pce|each|ea|unit|units"),
    ];

    private static readonly Dictionary<string, Unit> BySpelling = Build();
    private static readonly Dictionary<string, Unit> ByLowerCase = BuildLower();

    /// <summary>Kelvin as a temperature on a scale.</summary>
    public static readonly Unit KelvinScale = new("K", Point, 1, -273.15);

    /// <summary>Spellings a hint may offer.</summary>
    public static IReadOnlyCollection<string> Spellings => BySpelling.Keys;

    /// <summary>The usual spelling of each unit.</summary>
    public static IEnumerable<string> Names => Rows.Select(r => r.Names.Split('|')[0]);

    /// <summary>The unit of a spelling; capitals count only where they must.</summary>
    public static Unit? Find(string spelling) =>
        BySpelling.TryGetValue(spelling, out var unit) || spelling.Length > 1 && ByLowerCase.TryGetValue(spelling.ToLowerInvariant(), out unit)
            ? unit
            : null;

    private static Dictionary<string, Unit> Build()
    {
        var names = new Dictionary<string, Unit>(StringComparer.Ordinal);
        foreach (var (unit, spellings) in Rows)
        {
            foreach (var spelling in spellings.Split('|'))
            {
                names.Add(spelling, unit);
            }
        }
        foreach (var field in typeof(Units).GetFields(BindingFlags.Public | BindingFlags.Static))
        {
            if (field.GetValue(null) is Unit { Symbol.Length: > 0 } unit)
            {
                names.TryAdd(unit.Symbol, unit);
            }
        }
        return names;
    }

    private static Dictionary<string, Unit> BuildLower()
    {
        var names = new Dictionary<string, Unit?>(StringComparer.Ordinal);
        foreach (var (spelling, unit) in BySpelling)
        {
            var lower = spelling.ToLowerInvariant();
            // MW and mW, in lower case, could be either.
            names[lower] = names.TryGetValue(lower, out var other) && other != unit ? null : unit;
        }
        return names.Where(n => n.Value is not null).ToDictionary(n => n.Key, n => n.Value!, StringComparer.Ordinal);
    }
}
