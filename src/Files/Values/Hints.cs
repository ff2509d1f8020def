using System.Globalization;
using Runnel.Engine.Quantities;

namespace Runnel.Files.Values;

/// <summary>What would be right: the help in an error about a quantity.</summary>
internal static class Hints
{
    private static readonly (string Word, Unit Unit)[] Periods =
        [("day", Units.DayUnit), ("week", Units.Week), ("month", Units.Month), ("year", Units.Year)];

    /// <summary>A number as it is written in a plan.</summary>
    public static string Number(double value) => value.ToString("0.######", CultureInfo.InvariantCulture);

    /// <summary>"write it like 22 cm".</summary>
    public static string Example(Unit? asked, Wanted wanted)
    {
        if (asked is null)
        {
            return "write it like 2, 12 m, 40 g or 50 L";
        }
        var value = wanted switch
        {
            { Min: > double.NegativeInfinity, Max: < 1e4 } => Sensible(wanted.Min, wanted.Max),
            _ => 20,
        };
        return $"write it like {Number(value)}{(asked.Symbol.Length == 0 ? "" : " " + Spelled(asked))}";
    }

    /// <summary>A unit as it is best written in a plan.</summary>
    public static string Spelled(Unit unit) => unit.Symbol switch
    {
        "h/d" => "h a day",
        "%/d" => "% a day",
        "mg CaCO3/L" => "mg/L as CaCO3",
        "pieces" => "",
        _ when unit.Dimension.Money != 0 => unit.Symbol.Replace("/", " per ", StringComparison.Ordinal),
        _ => unit.Symbol,
    };

    /// <summary>The unit in which a value is kept: counts have no unit.</summary>
    public static Unit Shown(Unit unit, Unit? asked) => unit.Symbol == "pieces" ? asked ?? Units.One : unit;

    /// <summary>
    /// The unit, when what is written lacks, or repeats, a period that the input names itself: "14 h" under hours a day is 14 h/d,
    /// "250 kWh a month" under other use each month is 250 kWh.
    /// </summary>
    public static Unit? Implied(Unit unit, Unit asked, string words)
    {
        if (unit.Dimension.IsPoint || asked.Dimension.IsPoint || unit.Dimension.Basis is not null || asked.Dimension.Basis is not null)
        {
            return null;
        }
        foreach (var (word, period) in Periods)
        {
            if (!words.Contains(word, StringComparison.OrdinalIgnoreCase))
            {
                continue;
            }
            if (unit.Dimension == asked.Dimension * period.Dimension)
            {
                var shorter = new Unit($"{unit.Symbol}/{period.Symbol}", asked.Dimension, unit.Factor / period.Factor);
                return shorter.Symbol == asked.Symbol ? asked : shorter;
            }
            if (unit.Dimension == asked.Dimension / period.Dimension && unit.Symbol.EndsWith("/" + period.Symbol, StringComparison.Ordinal))
            {
                return UnitTable.Find(unit.Symbol[..^(period.Symbol.Length + 1)]) ?? new Unit(asked.Symbol, asked.Dimension, unit.Factor * period.Factor);
            }
        }
        return null;
    }

    public static Trouble Outside(string than, double bound, Unit asked, string text) =>
        new($"that is {than} {Number(bound)}{(asked.Symbol.Length == 0 || asked.Symbol == "°" ? asked.Symbol : " " + Spelled(asked))}, the {(than == "less than" ? "least" : "most")} that makes sense here",
            text.Any(char.IsLetter) ? "check the number and its unit" : asked.Symbol.Length == 0 ? "check the number" : $"a number alone is taken in {Spelled(asked)}; check it, or write the unit");

    /// <summary>Why a unit does not fit, with the commonest mistakes explained.</summary>
    public static Trouble Mismatch(Unit unit, Unit asked, double number, Wanted wanted)
    {
        var power = Units.Watt.Dimension;
        var energy = Units.KilowattHour.Dimension;
        var n = Number(number);
        if (unit.Dimension == energy && asked.Dimension == power)
        {
            return new($"{unit.Symbol} is energy, what is used over time; power in W or kW was expected, what the device draws while it is on",
                "a 300 W heater uses 0.3 kWh in each hour that it is on; write the watts on its label, such as 300 W");
        }
        if (unit.Dimension == power && asked.Dimension == energy)
        {
            return new($"{unit.Symbol} is power, what a device draws while it is on; energy in kWh was expected, what is used over time",
                "multiply the kW by the hours it is on: 0.3 kW for 10 h is 3 kWh");
        }
        if (unit.Dimension == power / Units.HourUnit.Dimension && (asked.Dimension == energy || asked.Dimension == power))
        {
            return asked.Dimension == energy
                ? new($"{unit.Symbol} is neither power nor energy; energy in kWh was expected", $"write {n} kWh (kilowatts times hours)")
                : new($"{unit.Symbol} is neither power nor energy; power in W or kW was expected", $"write {n} {(unit.Symbol.StartsWith('k') ? "kW" : "W")}");
        }
        if (asked.Dimension == Units.MoneyDimension / energy && unit.Dimension == Units.MoneyDimension / power)
        {
            return new("that is a price of power (for each kW); a price of energy was expected (for each kWh)", $"write {n} {Money(unit)} per kWh");
        }
        if (asked.Dimension == Units.MoneyDimension / energy && unit.Dimension == Units.MoneyDimension)
        {
            return new("that is money, but for how much energy?", $"write {n} {Money(unit)} per kWh");
        }
        if (asked.Dimension.Basis == Units.AsCalciumCarbonate && unit.Dimension == asked.Dimension with { Basis = null })
        {
            return new("a concentration of what? Alkalinity is counted as calcium carbonate", $"write {n} {unit.Symbol} as CaCO3");
        }
        if (unit.Dimension == Units.MoneyDimension && asked.Dimension.Money == 1)
        {
            return new($"that is money; {DimensionNames.Of(asked)} was expected", $"write {n} {Spelled(asked)}");
        }
        return new($"that is {DimensionNames.Of(unit.Dimension)}, {DimensionNames.Of(asked)} was expected",
            wanted.Min <= number && number <= wanted.Max && asked.Dimension.Money == 0
                ? $"write it like {n}{(asked.Symbol.Length == 0 ? "" : " " + Spelled(asked))}"
                : Example(asked, wanted));
    }

    private static string Money(Unit unit) => unit.Symbol.Split('/')[0];

    private static double Sensible(double min, double max)
    {
        foreach (var candidate in (ReadOnlySpan<double>)[20, 5, 60, 1, 300, 3000, 0.5])
        {
            if (candidate >= min && candidate <= max)
            {
                return candidate;
            }
        }
        return min;
    }
}
