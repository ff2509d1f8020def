using System.Runtime.CompilerServices;
using Runnel.Engine.Figures;
using Runnel.Engine.Findings;
using Runnel.Engine.Money;
using Runnel.Engine.Plan;
using Runnel.Engine.Quantities;

namespace Runnel.Engine.Assess;

/// <summary>The electricity bill of the load lines, as running lines.</summary>
internal static class Tariffs
{
    private static readonly ConditionalWeakTable<Tariff, HourCalendar> Calendars = [];

    private static readonly Source Method = Source.Definition(
        "each of the 8760 hours is billed at the rate that fits it; blocks are filled on top of the house's other use");

    public static IReadOnlyList<RunLine> Bill(Desk desk, IReadOnlyList<LoadLine> lines)
    {
        if (desk.Plan.Tariff is not { } tariff)
        {
            return [.. lines.Select(l => new RunLine(l.Id, l.Label, [], l.Energy, null, null))];
        }
        var year = desk.Plan.Year;
        var calendar = Calendars.GetValue(tariff, t => HourCalendar.Of(t.Energy, year));
        Gaps(desk, calendar);

        var prices = tariff.Energy.Select(r => Price(desk, r)).ToList();
        var fixedCharge = tariff.CountsFixed ? desk.Take(tariff.Fixed) : null;
        var tax = desk.Take(tariff.Tax);
        var month = Units.Month.Factor;
        var bill = ElectricityBill.Compute(
            calendar, [.. lines.SelectMany(l => l.Loads)], [.. prices.Select(p => p.Energy)],
            desk.Take(tariff.OtherUse).Value, (fixedCharge?.Si ?? 0) * month, tax.Si);

        var result = new List<RunLine>();
        var next = 0;
        foreach (var line in lines)
        {
            var bills = bill.Loads.Skip(next).Take(line.Loads.Count).ToList();
            next += line.Loads.Count;
            result.Add(Line(desk, line, bills, tariff, prices, tax));
        }
        if (fixedCharge is not null)
        {
            var taxed = fixedCharge * Taxed(tax);
            result.Add(RunCost.Spread(desk, "fixed", "Fixed charge", (taxed * Units12Months()).Called("Fixed charges of the year", desk.Currency)));
        }
        return result;
    }

    private static Figure Units12Months() => Figure.Constant(12, Units.Month, "Months of the year", Source.Definition("calendar"));

    private static Figure Taxed(Figure tax) =>
        (Figure.Constant(100, Units.Percent, "The price itself", Source.Definition("100 %")) + tax).Called("Price and tax on it", Units.Percent);

    private static RunLine Line(
        Desk desk, LoadLine line, List<LoadBill> bills, Tariff tariff, List<(EnergyPrice Energy, IReadOnlyList<Figure> Inputs)> prices, Figure tax)
    {
        var perKwh = desk.Currency.Per(Units.KilowattHour);
        var flat = tariff.Energy is [{ Blocks.Count: 0, Price: not null, From: null, To: null, Hours: null, Days: DayKind.All }] ? prices[0].Inputs[0] : null;
        var inputs = prices.SelectMany(p => p.Inputs).Append(tax).ToList();

        Figure MeanPrice(double cost, double kwh, string when)
        {
            if (flat is not null)
            {
                return tax.Si == 0 ? flat : (flat * Taxed(tax)).Called("Price with tax", perKwh);
            }
            return Figure.Computed(
                kwh > 0 ? cost / kwh / Units.KilowattHour.Factor : 0, perKwh, $"Mean price of the electricity of {line.Label.ToLowerInvariant()} {when}",
                "the bill, hour by hour under the tariff, divided by the energy", [.. inputs, line.YearEnergy], Method);
        }

        var months = new List<Figure>();
        for (var m = 0; m < 12; m++)
        {
            var cost = bills.Sum(b => b.CostInMonth[m]);
            var kwh = bills.Sum(b => b.KwhInMonth[m]);
            var name = CalendarDay.MonthNames[m];
            months.Add((line.Energy[m] * MeanPrice(cost, kwh, $"in {name}")).Called($"{line.Label} in {name}", desk.Currency));
        }
        var year = desk.Name(Figure.Sum([.. months]), $"run.year.{line.Id}", $"{line.Label} in a year", desk.Currency);
        var mean = line.PowerPerDay is { } perDay
            ? (perDay * Loads.DaysOfMeanMonth).Called($"{line.Label}, electricity in a mean month", Units.KilowattHour)
                * MeanPrice(bills.Sum(b => b.CostInYear), bills.Sum(b => b.KwhInYear), "over the year")
            : year / Loads.Twelve;
        var month = desk.Name(mean, $"run.month.{line.Id}", $"{line.Label} in a mean month", desk.Currency);
        return new(line.Id, line.Label, months, line.Energy, year, month);
    }

    private static (EnergyPrice Energy, IReadOnlyList<Figure> Inputs) Price(Desk desk, Rate rate)
    {
        var kwh = Units.KilowattHour.Factor;
        if (rate.Blocks.Count == 0)
        {
            var price = desk.Take(rate.Price ?? throw new InvalidOperationException("a rate needs a price or blocks"));
            return (EnergyPrice.Flat(price.Si * kwh), [price]);
        }
        var inputs = new List<Figure>();
        var blocks = new List<PriceBlock>();
        foreach (var block in rate.Blocks)
        {
            var price = desk.Take(block.Price);
            inputs.Add(price);
            var upTo = double.PositiveInfinity;
            if (block.UpTo is { } limit)
            {
                var figure = desk.Take(limit);
                inputs.Add(figure);
                upTo = figure.Value;
            }
            blocks.Add(new(upTo, price.Si * kwh));
        }
        return (EnergyPrice.InBlocks(blocks), inputs);
    }

    private static void Gaps(Desk desk, HourCalendar calendar)
    {
        if (calendar.Gaps.Count > 0)
        {
            desk.Say(new Finding(
                "tariff.gap", Severity.Warning, "tariff",
                $"no rate fits some hours: {string.Join("; ", calendar.Gaps.Take(3))}{(calendar.Gaps.Count > 3 ? " and more" : "")}",
                "a price for every hour of the year", "Add a rate without season and hours at the end of the list. Until then these hours cost nothing here.",
                "tariff/energy"));
        }
    }
}
