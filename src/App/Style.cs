using System.Globalization;
using Runnel.Engine.Figures;
using Runnel.Engine.Findings;
using Runnel.Engine.Plan;
using Runnel.Engine.Quantities;

namespace Runnel.App;

/// <summary>How numbers are written for a reader: metric or US customary units, and how many digits.</summary>
/// <param name="System">Which units.</param>
/// <param name="Currency">Currency code of the plan: the unit of unnamed steps that are money.</param>
public sealed record Style(UnitSystem System = UnitSystem.Metric, string Currency = "")
{
    private static readonly Unit[] Usual =
    [
        Units.One, Units.Litre, Units.Watt, Units.KilowattHour, Units.Kilogram, Units.Metre, Units.SquareMetre, Units.DayUnit,
        Units.LitrePerDay, Units.GramPerDay, Units.Celsius, Units.Kelvin, Units.MilligramPerLitre, Units.Lumen,
        Units.MicromolePerSecond, Units.MolePerSquareMetreDay, Units.GramNitrogenPerDay, Units.GramAmmoniaPerDay,
        Units.GramCalciumCarbonatePerDay, Units.WattPerKelvin, Units.WattPerSquareMetreKelvin, Units.MetrePerSecond, Units.Pascal,
        Units.PerHour, Units.SquareMetrePerCubicMetre, Units.GramPerSquareMetreDay,
    ];

    /// <summary>The unit that a figure is printed in.</summary>
    public Unit UnitOf(Figure figure)
    {
        ArgumentNullException.ThrowIfNull(figure);
        return UnitOf(figure.Unit ?? Guess(figure.Dimension));
    }

    /// <summary>The unit that stands for another in this style, whichever it was written in.</summary>
    public Unit UnitOf(Unit unit) => System == UnitSystem.Us ? Units.ForUs(unit) : Units.ForMetric(unit);

    /// <summary>An amount with its unit: "10.1 kWh".</summary>
    public string Write(Amount amount)
    {
        var unit = UnitOf(amount.Unit);
        return WithUnit(Number(unit.FromSi(amount.Si), unit), unit);
    }

    /// <summary>A figure's value with its unit.</summary>
    public string Write(Figure figure)
    {
        ArgumentNullException.ThrowIfNull(figure);
        return Write(new Amount(figure.Si, figure.Unit ?? Guess(figure.Dimension)));
    }

    /// <summary>A figure's value without its unit.</summary>
    public string Value(Figure figure)
    {
        var unit = UnitOf(figure);
        return Number(unit.FromSi(figure.Si), unit);
    }

    /// <summary>A figure's range without unit, "52 to 71", or an empty string for a figure that has none to speak of.</summary>
    public string Range(Figure figure)
    {
        var unit = UnitOf(figure);
        if (!figure.IsRange)
        {
            return "";
        }
        var (low, high) = (Number(unit.FromSi(figure.Low), unit), Number(unit.FromSi(figure.High), unit));
        return low == high ? "" : $"{low} to {high}";
    }

    /// <summary>A sentence with its amounts written out.</summary>
    public string Print(Said said)
    {
        ArgumentNullException.ThrowIfNull(said);
        return said.Print(Write);
    }

    /// <summary>A number with the digits that its size deserves: four significant ones at most, money with its cents.</summary>
    public static string Number(double value, Unit unit)
    {
        ArgumentNullException.ThrowIfNull(unit);
        var size = Math.Abs(value);
        var text = unit.Dimension == Units.MoneyDimension
            ? value.ToString(size >= 100000 ? "#,##0" : "#,##0.00", CultureInfo.InvariantCulture)
            : size switch
            {
                0 => "0",
                >= 1000 => Math.Round(value).ToString("#,##0", CultureInfo.InvariantCulture),
                >= 100 => value.ToString("0.#", CultureInfo.InvariantCulture),
                >= 10 => value.ToString("0.##", CultureInfo.InvariantCulture),
                >= 1 => value.ToString("0.###", CultureInfo.InvariantCulture),
                >= 0.1 => value.ToString("0.####", CultureInfo.InvariantCulture),
                >= 0.001 => value.ToString("0.#####", CultureInfo.InvariantCulture),
                _ => value.ToString("0.##E0", CultureInfo.InvariantCulture),
            };
        return text is "-0" or "-0.00" ? text[1..] : text;
    }

    private static string WithUnit(string number, Unit unit) =>
        unit.Symbol.Length == 0 ? number : unit.Symbol.StartsWith('/') ? number + unit.Symbol : $"{number} {unit.Symbol}";

    private Unit Guess(Dimension dimension)
    {
        if (dimension == Units.MoneyDimension)
        {
            return Unit.Money(Currency);
        }
        return Array.Find(Usual, u => u.Dimension == dimension) ?? new Unit(dimension.ToString(), dimension, 1);
    }
}
