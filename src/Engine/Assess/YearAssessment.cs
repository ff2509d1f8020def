using Runnel.Engine.Figures;
using Runnel.Engine.Findings;
using Runnel.Engine.Plan;
using Runnel.Engine.Quantities;
using Runnel.Engine.Year;

namespace Runnel.Engine.Assess;

/// <summary>A plan's year: the run, what came of it as figures, and what to fear as findings with dates.</summary>
/// <param name="Input">What ran.</param>
/// <param name="Run">The run, hour by hour.</param>
/// <param name="Figures">Figures named <c>year.*</c>.</param>
/// <param name="Findings">The gravest first.</param>
/// <param name="Start">A new loop before its first fish.</param>
/// <param name="Cut">A power cut at the worst hour; null without fish.</param>
/// <param name="AlkalinityDays">Days until the alkalinity is gone without doses; null when it lasts.</param>
public sealed record YearReport(
    YearInput Input, YearResult Run, FigureBook Figures, IReadOnlyList<Finding> Findings, StartUpResult? Start, PowerCutResult? Cut, double? AlkalinityDays)
{
    /// <summary>Day of the calendar year on which an hour of the run falls.</summary>
    public CalendarDay Day(int hour) => YearAssessment.DayOf(Input, hour);
}

/// <summary>Runs a plan through a year.</summary>
public static class YearAssessment
{
    private const string Model = "hour-by-hour run of the loop through a year, docs/science/year.md";

    private static readonly Source Science = new("the relations in docs/science/year.md, each with its source", SourceKind.FromMemory);

    /// <summary>The year of a plan.</summary>
    /// <param name="plan">The grower's plan.</param>
    /// <param name="shelf">Rows of the catalogue.</param>
    /// <param name="air">What surrounds the loop; made from the plan's months when left out.</param>
    /// <param name="pumpFlow">What the pumps move while they run, m³/h, when it has been worked out; else as the plan states or half of the pumps' greatest.</param>
    /// <param name="withMore">False to leave out the runs of a new loop, a power cut and missing doses.</param>
    /// <param name="progress">Told the share of the year that is done.</param>
    /// <param name="cancel">Stops between days.</param>
    /// <returns>The report; null when the plan has no water to run or does not say how warm the air is.</returns>
    public static YearReport? Of(
        LoopPlan plan, Shelf shelf, YearAir? air = null, double? pumpFlow = null, bool withMore = true, IProgress<double>? progress = null, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(shelf);
        air ??= YearAir.FromMonths(plan, shelf);
        if (air is null)
        {
            return null;
        }
        var input = Input(plan, shelf, air, pumpFlow);
        if (input is null)
        {
            return null;
        }
        var run = new YearRun(input);
        var result = run.MakeResult();
        run.Run(result, progress, cancel);
        var start = withMore && input.Loop.TankWater > 0 ? StartUp.Run(input) : null;
        var cut = withMore ? WorstHours.CutPower(input, result) : null;
        var days = withMore && input.Loop.TankWater > 0 ? WorstHours.DaysOfAlkalinity(input) : null;
        var book = new FigureBook();
        Name(book, input, result, air);
        More(book, start, cut, days);
        var findings = YearFindings.Of(input, result, start, cut, days);
        return new(input, result, book, [.. findings.OrderByDescending(f => f.Severity)], start, cut, days);
    }

    /// <summary>The plan as a year's input; null when a vessel, lamp or count cannot be worked out, which the assessment of the plan says.</summary>
    public static YearInput? Input(LoopPlan plan, Shelf shelf, YearAir air, double? pumpFlow = null)
    {
        ArgumentNullException.ThrowIfNull(air);
        try
        {
            return new YearLoop(new Desk(plan, shelf, e => e.Likely)).Input(air, pumpFlow);
        }
        catch (Exception e) when (e is GaveUpException or ArithmeticException or ArgumentOutOfRangeException)
        {
            return null;
        }
    }

    internal static CalendarDay DayOf(YearInput input, int hour)
    {
        var ofYear = (input.StartHour + Math.Max(0, hour)) % YearInput.HoursOfYear;
        var month = Months.Of(ofYear);
        var day = ofYear / 24 - new CalendarDay(month + 1, 1).DayOfYear;
        return new(month + 1, day + 1);
    }

    private static void Name(FigureBook book, YearInput input, YearResult result, YearAir air)
    {
        var (s, hours) = (result.Series, result.HoursRun);
        var from = Figure.Constant(hours, Units.HourUnit, "Hours that were run", Source.Definition(air.From));
        void Keep(string id, string label, double value, Unit unit) =>
            book.Name(Figure.Computed(unit.ToSi(value), unit, label, Model, [from], Science), id, label, unit);

        Keep("year.feed", "Feed in the year", result.Feed, Units.Kilogram);
        Keep("year.fish", "Fish harvested in the year", result.FishHarvested, Units.Kilogram);
        Keep("year.fish.gained", "Fish grown in the year, standing fish counted", result.FishGained, Units.Kilogram);
        Keep("year.crop", "Crops picked in the year", result.CropPicked, Units.Kilogram);
        foreach (var crop in input.Stands.Select((stand, i) => (stand.Name, Mass: result.CropByStand[i])).GroupBy(c => c.Name))
        {
            Keep($"year.crop.{Desk.Slug(crop.Key)}", $"{crop.Key} picked in the year", crop.Sum(c => c.Mass), Units.Kilogram);
        }
        Keep("year.water.topped-up", "Water topped up in the year", result.ToppedUp, Units.Litre);
        Keep("year.water.evaporated", "Water evaporated in the year", result.Evaporated, Units.Litre);
        Keep("year.water.transpired", "Water given off by crops in the year", result.Transpired, Units.Litre);
        Keep("year.heat", "Heater energy in the year", result.Heat, Units.KilowattHour);
        for (var m = 0; m < 12; m++)
        {
            Keep($"year.heat.month.{m + 1}", $"Heater energy in {CalendarDay.MonthNames[m]}", result.HeatByMonth[m], Units.KilowattHour);
        }
        Keep("year.base", $"{input.Care.Base?.Name ?? "Base"} dosed in the year", result.Base, Units.Gram);
        Keep("year.iron", "Iron dosed in the year", result.Iron, Units.Gram);
        foreach (var mineral in Enum.GetValues<Mineral>())
        {
            Keep($"year.short.{Desk.Slug(mineral.ToString())}", $"{mineral} that crops lack in the year", result.Minerals.Short(mineral), Units.Gram);
        }
        var n = result.Nitrogen;
        Keep("year.nitrogen.in", "Nitrogen that came in with feed", n.In, Units.Gram);
        Keep("year.nitrogen.fish", "Nitrogen kept by fish", n.Fish, Units.Gram);
        Keep("year.nitrogen.plants", "Nitrogen taken up by crops", n.Plants, Units.Gram);
        Keep("year.nitrogen.water", "Nitrogen in water thrown away, and more of it dissolved", n.Water, Units.Gram);
        Keep("year.nitrogen.solids", "Nitrogen in solids", n.Solids, Units.Gram);
        Keep("year.nitrogen.lost", "Nitrogen lost to the air", n.Lost, Units.Gram);
        if (hours == 0)
        {
            return;
        }
        Keep("year.oxygen.lowest", "Lowest oxygen where the fish are", s.Oxygen.Take(hours).Min(), Units.MilligramPerLitre);
        Keep("year.temperature.coldest", "Coldest water", s.TankTemperature.Take(hours).Min(), Units.Celsius);
        Keep("year.temperature.warmest", "Warmest water", s.TankTemperature.Take(hours).Max(), Units.Celsius);
        Keep("year.ammonia.highest", "Highest total ammonia", s.Ammonia.Take(hours).Max(), Units.MilligramNitrogenPerLitre);
        Keep("year.ammonia.free.highest", "Highest un-ionised ammonia", s.FreeAmmonia.Take(hours).Max(), Units.MilligramNitrogenPerLitre);
        Keep("year.nitrite.highest", "Highest nitrite", s.Nitrite.Take(hours).Max(), Units.MilligramNitrogenPerLitre);
        Keep("year.nitrate.highest", "Highest nitrate", s.Nitrate.Take(hours).Max(), Units.MilligramNitrogenPerLitre);
        Keep("year.ph.lowest", "Lowest pH", s.PH.Take(hours).Min(), Units.PH);
    }

    private static void More(FigureBook book, StartUpResult? start, PowerCutResult? cut, double? days)
    {
        void Keep(string id, string label, double value, Unit unit) =>
            book.Name(Figure.Computed(unit.ToSi(value), unit, label, Model, [], Science), id, label, unit);

        if (start is not null)
        {
            if (start.AmmoniaFallsDay is { } falls)
            {
                Keep("year.start.ammonia.falls", "New loop: days until ammonia falls between doses", falls, Units.DayUnit);
            }
            Keep("year.start.nitrite.day", "New loop: day of the highest nitrite", start.Nitrite.Day, Units.DayUnit);
            Keep("year.start.nitrite", "New loop: highest nitrite", start.Nitrite.Value, Units.MilligramNitrogenPerLitre);
            if (start.ReadyDay is { } ready)
            {
                Keep("year.start.ready", "New loop: days until the first fish may go in", ready, Units.DayUnit);
                Keep("year.start.nitrifies", "New loop: ammonia that it then takes up each day", start.Nitrifies, Units.GramNitrogenPerDay);
            }
        }
        if (cut is { HoursToCritical: { } hours })
        {
            Keep("year.cut.hours", "Power cut at the worst hour: time until oxygen is critical", hours, Units.HourUnit);
        }
        if (days is { } d)
        {
            Keep("year.alkalinity.days", "Days until the alkalinity is gone without doses", d, Units.DayUnit);
        }
    }
}
