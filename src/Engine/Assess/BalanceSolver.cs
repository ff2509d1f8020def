using Runnel.Engine.Crops;
using Runnel.Engine.Figures;
using Runnel.Engine.Filter;
using Runnel.Engine.Fish;
using Runnel.Engine.Plan;
using Runnel.Engine.Quantities;
using Runnel.Engine.Water;

namespace Runnel.Engine.Assess;

/// <summary>What a balance rests on: each value as the plan says, or the handbooks' span.</summary>
/// <param name="Ratio">Feed for each square metre planted, g/m²/d.</param>
/// <param name="Ration">Feed each day as a share of the fish, %/d.</param>
/// <param name="Protein">Protein in the feed, %.</param>
/// <param name="Density">Fish in the tank, kg/m³.</param>
/// <param name="FilterRate">Ammonia that each square metre of filter removes, g NH3/m²/d.</param>
public sealed record BalanceInputs(Estimate Ratio, Estimate Ration, Estimate Protein, Estimate Density, Estimate FilterRate)
{
    /// <summary>The handbooks' values for leafy crops and omnivorous fish.</summary>
    public static BalanceInputs Handbook { get; } = new(
        Living.LeafyRatio,
        Desk.Assumed("balance/ration", "Feed each day, share of body weight", 1, 1.5, 2, Units.PercentPerDay,
            "FAO Technical Paper 589 (2014), chapter 7: 1 to 2 % in grow-out"),
        Desk.Assumed("balance/protein", "Protein in the feed", 32, 32, 32, Units.Percent,
            "FAO Technical Paper 589 (2014), section 8.1: its feed ratios are for feed of 32 % protein"),
        Desk.Assumed("balance/density", "Fish in the tank", 10, 15, 20, Units.KilogramPerCubicMetre,
            "FAO Technical Paper 589 (2014), section 8.1: 10 to 20 kg for each 1000 L (from memory)"),
        Living.FilterRate);

    /// <summary>What a plan says, and the handbooks where it says nothing.</summary>
    public static BalanceInputs Of(LoopPlan plan, Shelf shelf)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(shelf);
        var species = plan.Fish.Select(b => Names.Find(shelf.Species, s => s.Name, s => s.AlsoCalled, b.Species)).FirstOrDefault(s => s is not null);
        var fruiting = plan.Crops.Count > 0
            && plan.Crops.All(c => Names.Find(shelf.Crops, k => k.Name, k => k.AlsoCalled, c.Name) is { Fruiting: true });
        return new(
            plan.Feed.Ratio ?? (fruiting ? Living.FruitingRatio : Living.LeafyRatio),
            plan.Feed.ShareOfBodyWeight ?? species?.Ration ?? Handbook.Ration,
            plan.Feed.Protein,
            Handbook.Density,
            Handbook.FilterRate);
    }
}

/// <summary>Solves feed, fish, beds, tank and filter against each other from any one of them.</summary>
public static class BalanceSolver
{
    /// <summary>Everything that follows from one end of the balance.</summary>
    /// <param name="end">Which end is given.</param>
    /// <param name="given">How much: m² of beds, kg of fish, g/d of feed or L of tank.</param>
    /// <param name="inputs">What the balance rests on.</param>
    /// <param name="draws">How many draws give the ranges; 0 for none.</param>
    /// <exception cref="UnitMismatchException">The amount does not measure that end.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The amount lies outside what the formulas hold for.</exception>
    public static FigureBook Solve(BalanceEnd end, Estimate given, BalanceInputs inputs, int draws = Assessor.UsualDraws)
    {
        ArgumentNullException.ThrowIfNull(given);
        ArgumentNullException.ThrowIfNull(inputs);
        var taken = new Dictionary<string, Figure>(StringComparer.Ordinal);
        var book = Once(end, given, inputs, e => Taken(e, e.Likely));
        if (draws > 0)
        {
            Ranges.Draw(book, [.. taken.Values.Select(f => ((Given)f.How).Estimate)], draws,
                draw =>
                {
                    var drawn = new Dictionary<string, Figure>(StringComparer.Ordinal);
                    return Once(end, given, inputs, e => drawn.TryGetValue(e.From.Path, out var f) ? f : drawn[e.From.Path] = Figure.Given(e, draw(e)));
                });
        }
        return book;

        Figure Taken(Estimate estimate, double si) =>
            taken.TryGetValue(estimate.From.Path, out var f) ? f : taken[estimate.From.Path] = Figure.Given(estimate, si);
    }

    private static FigureBook Once(BalanceEnd end, Estimate given, BalanceInputs inputs, Func<Estimate, Figure> take)
    {
        var book = new FigureBook();
        var amount = take(given);
        var (ratio, ration) = (take(inputs.Ratio), take(inputs.Ration));
        var feed = end switch
        {
            BalanceEnd.Feed => amount,
            BalanceEnd.Beds => CropFormulas.FeedFromPlantedArea.Apply(amount, ratio),
            BalanceEnd.Fish => FishFormulas.FeedFromFish.Apply(amount, ration),
            BalanceEnd.Tank => FishFormulas.FeedFromFish.Apply((amount * take(inputs.Density)).Called("Fish that the tank holds", Units.Kilogram), ration),
            _ => throw new ArgumentOutOfRangeException(nameof(end), end, "unknown end"),
        };
        feed = book.Name(feed, "balance.feed", "Feed each day", Units.GramPerDay);
        var fish = book.Name(
            end == BalanceEnd.Fish ? amount : FishFormulas.FishFromFeed.Apply(feed, ration), "balance.fish", "Fish", Units.Kilogram);
        book.Name(end == BalanceEnd.Tank ? amount : fish / take(inputs.Density), "balance.tank", "Water in the fish tank", Units.Litre);
        book.Name(end == BalanceEnd.Beds ? amount : CropFormulas.PlantedAreaFromFeed.Apply(feed, ratio), "balance.area", "Planted area", Units.SquareMetre);
        var protein = take(inputs.Protein);
        var tan = book.Name(WaterFormulas.AmmoniaFromFeed.Apply(feed, protein), "balance.ammonia", "Ammonia that the fish give off, as nitrogen", Units.GramNitrogenPerDay);
        book.Name(
            FilterFormulas.FilterArea.Apply(WaterFormulas.AmmoniaFromFeedFao.Apply(feed, protein), take(inputs.FilterRate)),
            "balance.filter", "Surface for bacteria, at least", Units.SquareMetre);
        book.Name(WaterFormulas.OxygenFromFeed.Apply(feed, take(WaterFormulas.OxygenFromFeed.Assumed(1))), "balance.oxygen", "Oxygen needed by fish and bacteria", Units.GramPerDay);
        book.Name(WaterFormulas.SolidsFromFeed.Apply(feed, take(WaterFormulas.SolidsFromFeed.Assumed(1))), "balance.solids", "Solids to catch, dry", Units.GramPerDay);
        book.Name(WaterFormulas.AlkalinityUsed.Apply(tan), "balance.alkalinity", "Alkalinity used by the filter, at most", Units.GramCalciumCarbonatePerDay);
        return book;
    }
}
