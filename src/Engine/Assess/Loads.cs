using Runnel.Engine.Figures;
using Runnel.Engine.Money;
using Runnel.Engine.Plan;
using Runnel.Engine.Quantities;

namespace Runnel.Engine.Assess;

/// <summary>One electrical line of the bill: energy of each month, and what it costs under the tariff.</summary>
internal sealed record LoadLine(string Id, string Label, IReadOnlyList<Figure> Energy, Figure YearEnergy, Figure? PowerPerDay, IReadOnlyList<Load> Loads);

/// <summary>Everything that takes electricity, as energy by month and as loads for the bill.</summary>
internal static class Loads
{
    private static readonly Source Calendar = Source.Definition("calendar: a year of 365 days");

    public static Figure Days(int month) =>
        Figure.Constant(YearCalendar.Length[month], Units.DayUnit, $"Days of {CalendarDay.MonthNames[month]}", Calendar);

    public static Figure DaysOfYear => Figure.Constant(365, Units.DayUnit, "Days of the year", Calendar);

    public static Figure DaysOfMeanMonth => Figure.Constant(Units.MeanMonthDays, Units.DayUnit, "Days of a mean month", Source.Definition("365 ÷ 12"));

    public static IReadOnlyList<LoadLine> Read(Desk desk, Warmth warmth)
    {
        var plan = desk.Plan;
        var lines = new List<LoadLine>();
        Timed(desk, lines, "lamps", "Lamps", "lamps", plan.Lamps.Values);
        Timed(desk, lines, "pumps", "Pumps", "pumps", plan.Pumps.Values);
        Timed(desk, lines, "air", "Air pumps", "air pumps", plan.AirPumps.Values);
        Heater(desk, lines, warmth);
        Timed(desk, lines, "fans", "Fans", "fans", plan.Fans.Values);
        Timed(desk, lines, "dehumidifier", "Dehumidifier", "dehumidifiers", plan.Dehumidifiers.Values);
        if (lines.Count > 0)
        {
            desk.Name(Figure.Sum([.. lines.Select(l => l.YearEnergy)]), "energy.year.total", "Electricity in a year", Units.KilowattHour);
            desk.Name(desk.Book["energy.year.total"] / Twelve, "energy.month.total", "Electricity in a mean month", Units.KilowattHour);
        }
        return lines;
    }

    internal static Figure Twelve => Figure.Constant(12, Units.One, "Months of the year", Calendar);

    private static void Timed(
        Desk desk, List<LoadLine> lines, string id, string label, string things, IEnumerable<TimedAppliance> appliances)
    {
        var days = new List<Figure>();
        var loads = new List<Load>();
        foreach (var appliance in appliances)
        {
            var count = desk.Count(appliance.Count, things);
            var watts = count.Si is 1 ? desk.Take(appliance.Watts) : (count * desk.Take(appliance.Watts)).Called($"Power of {appliance.Name}", Units.Watt);
            var hours = desk.Take(appliance.Hours);
            days.Add((watts * hours).Called($"Energy of {appliance.Name} each day", Units.KilowattHourPerDay));
            loads.Add(Load.Timed($"{id}/{appliance.Name}", desk.Take(appliance.Watts).Si, count.Si, hours.Value, appliance.OnFrom));
        }
        if (days.Count == 0)
        {
            return;
        }
        var perDay = days.Count == 1 ? days[0] : Figure.Sum([.. days]);
        perDay = desk.Name(perDay, $"energy.day.{id}", $"{label}, electricity each day", Units.KilowattHourPerDay);
        var months = Enumerable.Range(0, 12)
            .Select(m => (perDay * Days(m)).Called($"{label}, electricity in {CalendarDay.MonthNames[m]}", Units.KilowattHour)).ToList();
        var year = desk.Name(perDay * DaysOfYear, $"energy.year.{id}", $"{label}, electricity in a year", Units.KilowattHour);
        lines.Add(new(id, label, months, year, perDay, loads));
    }

    private static void Heater(Desk desk, List<LoadLine> lines, Warmth warmth)
    {
        if (warmth.HeaterEnergy is not { } energy)
        {
            return;
        }
        var months = Enumerable.Range(0, 12)
            .Select(m => desk.Name(energy[m], $"energy.month.heater.{m + 1}", $"Heater, electricity in {CalendarDay.MonthNames[m]}", Units.KilowattHour)).ToList();
        var year = desk.Name(Figure.Sum([.. months]), "energy.year.heater", "Heater, electricity in a year", Units.KilowattHour);
        lines.Add(new("heater", "Heater", months, year, null, [Load.Metered("heater", [.. months.Select(m => m.Value)])]));
    }
}
