using Runnel.Engine.Figures;
using Runnel.Engine.Plan;
using Runnel.Engine.Quantities;

namespace Runnel.Engine.Assess;

/// <summary>What it costs to run, by month and part.</summary>
internal static class RunCost
{
    private static readonly Source Calendar = Source.Definition("calendar: a year of 365 days");

    public static RunBill Add(Desk desk, IReadOnlyList<LoadLine> loads, Living living, BuildBill build, Pricing pricing)
    {
        var lines = new List<RunLine>(Tariffs.Bill(desk, loads));
        var unpriced = new List<string>();
        if (desk.Plan.Tariff is null && loads.Count > 0)
        {
            unpriced.Add("electricity");
        }
        FeedLine(desk, lines, unpriced, living, pricing);
        FishLine(desk, lines, unpriced, living, pricing);
        SupplyLines(desk, lines, unpriced, pricing);
        WaterLine(desk, lines, unpriced);
        WearLine(desk, lines, build);

        var nothing = Figure.Constant(0, desk.Currency, "Nothing priced", Source.Definition("nothing in the plan has a price"));
        var priced = lines.Where(l => l.Year is not null).ToList();
        var months = Enumerable.Range(0, 12).Select(m => desk.Name(
            priced.Count == 0 ? nothing : Figure.Sum([.. priced.Select(l => l.Months[m])]),
            $"run.month.{m + 1}.total", $"To run in {CalendarDay.MonthNames[m]}", desk.Currency)).ToList();
        var year = desk.Name(priced.Count == 0 ? nothing : Figure.Sum([.. priced.Select(l => l.Year!)]), "run.year.total", "To run for a year", desk.Currency);
        desk.Name(priced.Count == 0 ? nothing : Figure.Sum([.. priced.Select(l => l.Month!)]), "run.month.total", "To run in a mean month", desk.Currency);
        OwnWork(desk, year);
        Advice.UnpricedRunning(desk, unpriced);
        return new(lines, months, MonthEnergy(desk, loads), unpriced);
    }

    /// <summary>A cost of the year that falls on its days evenly.</summary>
    public static RunLine Spread(Desk desk, string id, string label, Figure yearCost)
    {
        var year = desk.Name(yearCost, $"run.year.{id}", $"{label} in a year", desk.Currency);
        var months = Enumerable.Range(0, 12)
            .Select(m => (year * Loads.Days(m) / Loads.DaysOfYear).Called($"{label} in {CalendarDay.MonthNames[m]}", desk.Currency)).ToList();
        var month = desk.Name(year / Loads.Twelve, $"run.month.{id}", $"{label} in a mean month", desk.Currency);
        return new(id, label, months, [], year, month);
    }

    private static void FeedLine(Desk desk, List<RunLine> lines, List<string> unpriced, Living living, Pricing pricing)
    {
        if (living.Feed is not { } feed)
        {
            return;
        }
        // Fish that grow eat less while they are small; until growth is modelled the share is an open assumption.
        var share = living.FeedFrom == BalanceEnd.Fish && living.Batches.Any(b => b.Batch.HarvestAt is not null)
            ? desk.Take(Desk.Assumed("feed/mean share", "Mean feed of the year, share of the feed when the fish are heaviest", 45, 60, 75, Units.Percent,
                "common practice, no source: a batch that grows from fingerling to harvest"))
            : null;
        var daily = share is null ? feed : (feed * share).Called("Mean feed each day", Units.GramPerDay);
        var year = desk.Name(daily * Loads.DaysOfYear, "feed.year", "Feed in a year", Units.Kilogram);
        if (Cost(pricing, Parts.FeedPart, year, loose: true) is not { } cost)
        {
            unpriced.Add(Parts.FeedPart);
            return;
        }
        lines.Add(Spread(desk, "feed", "Feed", cost.Called("Feed in a year", desk.Currency)));
    }

    private static void FishLine(Desk desk, List<RunLine> lines, List<string> unpriced, Living living, Pricing pricing)
    {
        var costs = new List<Figure>();
        foreach (var batch in living.Batches.Where(b => b.Batch.HarvestAt is not null))
        {
            var bought = (desk.Take(batch.Batch.Number) * desk.Take(batch.Batch.BatchesAYear)).Called($"{batch.Batch.Species} bought in a year", Unit.Count("fish"));
            if (Cost(pricing, batch.Batch.Species, bought, loose: false, ["fish", "fingerling"]) is { } cost)
            {
                costs.Add(cost.Called($"Bought: {batch.Batch.Species}", desk.Currency));
            }
            else
            {
                unpriced.Add(batch.Batch.Species);
            }
        }
        if (costs.Count > 0)
        {
            lines.Add(Spread(desk, "fish", "Fish", costs.Count == 1 ? costs[0] : Figure.Sum([.. costs])));
        }
    }

    private static void SupplyLines(Desk desk, List<RunLine> lines, List<string> unpriced, Pricing pricing)
    {
        foreach (var (kind, id, label) in new[]
            { (SupplyKind.Seed, "seed", "Seed"), (SupplyKind.Additive, "additives", "Additives"), (SupplyKind.Test, "tests", "Water tests") })
        {
            var costs = new List<Figure>();
            foreach (var supply in desk.Plan.Supplies.Values.Where(s => s.Kind == kind))
            {
                var times = (Figure.Constant(1, Units.Year, "A year", Calendar) / desk.Take(supply.Every)).Called($"{supply.Name}: times a year", Units.One);
                var year = (desk.Take(supply.Use) * times).Called($"{supply.Name} in a year", supply.Use.Unit);
                if (Cost(pricing, supply.Name, year, loose: true) is { } cost)
                {
                    costs.Add(cost.Called(supply.Name, desk.Currency));
                }
                else
                {
                    unpriced.Add(supply.Name);
                }
            }
            if (costs.Count > 0)
            {
                lines.Add(Spread(desk, id, label, costs.Count == 1 ? costs[0] : Figure.Sum([.. costs])));
            }
        }
    }

    private static void WaterLine(Desk desk, List<RunLine> lines, List<string> unpriced)
    {
        var litres = (desk.Book["water.total"] * desk.Take(desk.Plan.Water.Use)).Called("Water topped up each day", Units.LitrePerDay);
        var year = desk.Name(litres * Loads.DaysOfYear, "water.year", "Water topped up in a year", Units.CubicMetre);
        if (desk.Plan.Water.Price is { } price)
        {
            lines.Add(Spread(desk, "water", "Water", (year * desk.Take(price)).Called("Water in a year", desk.Currency)));
        }
        else if (desk.Plan.Water.Source != WaterSource.Rain && desk.Plan.Water.Source != WaterSource.Well)
        {
            unpriced.Add("water");
        }
    }

    private static void WearLine(Desk desk, List<RunLine> lines, BuildBill build)
    {
        var wear = build.Lines
            .Where(l => l is { Cost: not null, Life: not null, Price.Condition: not Condition.Owned })
            .Select(l => (l.Cost! * (Figure.Constant(1, Units.Year, "A year", Calendar) / l.Life!).Called($"Share of its life that {l.Part} uses up in a year", Units.One))
                .Called($"Put aside for {l.Part}", desk.Currency)).ToList();
        if (wear.Count > 0)
        {
            lines.Add(Spread(desk, "wear", "Wear put aside", Figure.Sum([.. wear])));
        }
    }

    private static void OwnWork(Desk desk, Figure year)
    {
        if (desk.Plan.OwnWork.AWeek is not { } week)
        {
            return;
        }
        var weeks = Figure.Constant(365.0 / 7, Units.One, "Weeks of the year", Calendar);
        var hours = desk.Name(desk.Take(week) * weeks, "work.year", "Own work in a year", Units.HourUnit);
        if (desk.Plan.OwnWork.Worth is { } worth)
        {
            var work = desk.Name(hours * desk.Take(worth), "run.year.own-work", "Own work in a year, priced", desk.Currency);
            desk.Name(year + work, "run.year.total.with-work", "To run for a year, own work priced", desk.Currency);
        }
    }

    private static List<Figure> MonthEnergy(Desk desk, IReadOnlyList<LoadLine> loads) => loads.Count == 0
        ? []
        : [.. Enumerable.Range(0, 12).Select(m => desk.Name(
            Figure.Sum([.. loads.Select(l => l.Energy[m])]), $"energy.month.{m + 1}.total", $"Electricity in {CalendarDay.MonthNames[m]}", Units.KilowattHour))];

    /// <summary>What is used up costs its share of a pack: the rest of the pack stays in the cupboard.</summary>
    private static Figure? Cost(Pricing pricing, string part, Figure quantity, bool loose, IReadOnlyList<string>? generic = null)
    {
        if (pricing.Find(part, generic) is not { } price)
        {
            return null;
        }
        return pricing.Buy(part, quantity, loose ? price with { WholePacks = false } : price)?.Cost;
    }
}
