using Runnel.Engine.Figures;
using Runnel.Engine.Findings;
using Runnel.Engine.Plan;
using Runnel.Engine.Quantities;
using Runnel.Engine.Water;

namespace Runnel.Engine.Assess;

/// <summary>Does it fit: temperatures, stocking, feed, filter, oxygen and flow against what fish, crops and handbooks ask.</summary>
internal static class Fit
{
    public static void Check(Desk desk, IReadOnlyList<VesselFacts> vessels, Living living, Warmth warmth, Balance balance)
    {
        Temperatures(desk, living, warmth);
        Stocking(desk);
        FeedRatio(desk, living, balance);
        Filter(desk, vessels, living, balance);
        Protein(desk, living);
        Oxygen(desk, living, warmth);
        desk.Try("pump", () =>
        {
            Turnover(desk, vessels);
            return vessels;
        });
    }

    private static void Temperatures(Desk desk, Living living, Warmth warmth)
    {
        if (warmth.Water is not { } water)
        {
            desk.Say(new Finding("water.temperature-unknown", Severity.Warning, "place", "neither a heater nor a climate nor the air of the place",
                "one of them", "Add climate: or air: under place, so that the water's temperature can be judged.", "place"));
            return;
        }
        var (coldest, hottest) = (water.MinBy(w => w.Si)!, water.MaxBy(w => w.Si)!);
        foreach (var batch in living.Batches.Where(b => b.Species is not null))
        {
            Judge(desk, "fish", batch.Batch.Species, batch.Path, coldest, hottest, batch.Species!.Survives, batch.Species.Thrives,
                "A heater, insulation and lids, or a species that likes this water.", "Shade, more air, a cooler room, or a species that likes warm water.");
        }
        foreach (var crop in living.Crops.Where(c => c.Kind is not null))
        {
            Judge(desk, "crop", crop.Crop.Name, crop.Path, coldest, hottest, crop.Kind!.Survives, crop.Kind.Thrives,
                "Warmer water, another season, or a hardier crop.", "Cooler water, shade, or a crop that stands heat.");
        }
    }

    private static void Judge(
        Desk desk, string kind, string name, string path, Figure coldest, Figure hottest, Estimate survives, Estimate thrives, string warm, string cool)
    {
        var band = Said.Of($"{new Amount(thrives.Low, Units.Celsius)} to {new Amount(thrives.High, Units.Celsius)} to do well, {new Amount(survives.Low, Units.Celsius)} to {new Amount(survives.High, Units.Celsius)} to live");
        if (coldest.Si < thrives.Low - 0.05)
        {
            desk.Say(new Finding($"{kind}.too-cold", coldest.Si < survives.Low ? Severity.Grave : Severity.Warning, name,
                Said.Of($"water down to {new Amount(coldest.Si, Units.Celsius)} in the coldest month, on average"), band, warm, path, thrives.From.Source));
        }
        if (hottest.Si > thrives.High + 0.05)
        {
            desk.Say(new Finding($"{kind}.too-warm", hottest.Si > survives.High ? Severity.Grave : Severity.Warning, name,
                Said.Of($"water up to {new Amount(hottest.Si, Units.Celsius)} in the warmest month, on average"), band, cool, path, thrives.From.Source));
        }
    }

    private static void Stocking(Desk desk)
    {
        if (desk.Book.Find("stocking.density") is not { } density || desk.Book.Find("fish.mass") is not { } mass || desk.Book.Find("stocking.most") is not { } most
            || mass.Si <= most.Si)
        {
            return;
        }
        desk.Say(new Finding(
            "fish.stocking", mass.Si > 2 * most.Si ? Severity.Grave : Severity.Warning, "fish tank",
            Said.Of($"{new Amount(mass.Si, Units.Kilogram)} of fish when heaviest, {new Amount(density.Si, Units.KilogramPerCubicMetre)}"),
            Said.Of($"at most {new Amount(most.Si, Units.Kilogram)} in these tanks"),
            "Fewer fish, an earlier or staged harvest, or a larger tank. The denser, the less time when the air stops.",
            "fish", "FAO Technical Paper 589 (2014), section 8.1 (from memory): 20 kg for each 1000 L, half of that under 500 L"));
    }

    private static void FeedRatio(Desk desk, Living living, Balance balance)
    {
        if (balance.Feed is null || living.Crops.Count == 0 || balance.Limits.FirstOrDefault(l => l.Id == "beds") is not { } beds)
        {
            return;
        }
        if (desk.Plan.Feed.Ratio is null)
        {
            desk.Say(new Finding(
                "feed.ratio-span", Severity.Note, "feed",
                Said.Of($"beds taken to use {new Amount(Living.LeafyRatio.Likely, Units.GramPerSquareMetreDay)} of feed under leaves, {new Amount(Living.FruitingRatio.Likely, Units.GramPerSquareMetreDay)} under fruit"),
                Said.Of($"handbooks span six times, {new Amount(Living.LeafyRatio.Low, Units.GramPerSquareMetreDay)} to {new Amount(Living.LeafyRatio.High, Units.GramPerSquareMetreDay)}"),
                "Set feed: ratio: when you know your own. Watch nitrate: rising means too few plants, near zero means too little feed.", "feed/ratio", Living.LeafyRatio.From.Source));
        }
        if (beds.Margin.Si < -0.25)
        {
            desk.Say(new Finding(
                "feed.too-much", beds.Margin.Si < -0.6 ? Severity.Warning : Severity.Note, "feed and beds",
                Said.Of($"{new Amount(balance.Feed.Si, Units.GramPerDay)} of feed"), Said.Of($"about {new Amount(beds.Allows.Si, Units.GramPerDay)} for these beds"),
                "More planted area, fewer fish, or water changes: nitrate will rise.", "crops", Living.LeafyRatio.From.Source));
        }
        if (beds.Margin.Si > 1.5)
        {
            desk.Say(new Finding(
                "feed.too-little", Severity.Warning, "feed and beds",
                Said.Of($"{new Amount(balance.Feed.Si, Units.GramPerDay)} of feed"), Said.Of($"about {new Amount(beds.Allows.Si, Units.GramPerDay)} for these beds"),
                "More fish or feed, fewer plants, or plant food from a bottle: plants will be pale and slow.", "fish", Living.LeafyRatio.From.Source));
        }
    }

    private static void Filter(Desk desk, IReadOnlyList<VesselFacts> vessels, Living living, Balance balance)
    {
        if (living.Batches.Count == 0 || balance.Feed is null)
        {
            return;
        }
        if (balance.Limits.FirstOrDefault(l => l.Id == "filter") is not { } filter)
        {
            if (vessels.All(v => v.Media is null))
            {
                desk.Say(new Finding(
                    "filter.none", Severity.Grave, "biofilter", "fish, and nothing for bacteria to grow on", "a media bed, a raft bed or a biofilter with media",
                    "Without it ammonia kills the fish. Add a media bed or a biofilter with media volume.", "vessels"));
            }
            return;
        }
        if (filter.Margin.Si < 0)
        {
            desk.Say(new Finding(
                "filter.too-small", filter.Margin.Si < -0.5 ? Severity.Grave : Severity.Warning, "biofilter",
                Said.Of($"surface for {new Amount(filter.Allows.Si, Units.GramPerDay)} of feed"), Said.Of($"for {new Amount(balance.Feed.Si, Units.GramPerDay)}"),
                "More media, finer media, or fewer fish. Handbooks advise two to three times what is needed.", "vessels",
                "FAO Technical Paper 589 (2014), appendix 4 (from memory)"));
        }
    }

    private static void Protein(Desk desk, Living living)
    {
        foreach (var batch in living.Batches.Where(b => b.Species is not null && desk.Plan.Feed.Protein.Likely < b.Species!.Protein.Low - 1e-9))
        {
            desk.Say(new Finding(
                "feed.protein-low", Severity.Warning, batch.Batch.Species,
                Said.Of($"feed of {new Amount(desk.Plan.Feed.Protein.Likely, Units.Percent)} protein"),
                Said.Of($"{new Amount(batch.Species!.Protein.Low, Units.Percent)} to {new Amount(batch.Species.Protein.High, Units.Percent)}"),
                "Feed made for this fish; set feed: protein:.", "feed/protein", batch.Species.Protein.From.Source));
        }
    }

    /// <summary>What the water can hold at all in the warmest month against what the fish ask for.</summary>
    private static void Oxygen(Desk desk, Living living, Warmth warmth)
    {
        if (warmth.Water is not { } water)
        {
            return;
        }
        var hottest = water.MaxBy(w => w.Si)!;
        var pressure = desk.Apply(WaterFormulas.PressureAtElevation, desk.Take(desk.Plan.Place.Elevation));
        var fresh = Figure.Constant(0, WaterFormulas.OxygenSaturation.Inputs[2].Unit, "Salinity", Source.Definition("fresh water"));
        if (pressure is null || desk.Apply(WaterFormulas.OxygenSaturation, hottest, pressure, fresh) is not { } saturation)
        {
            return;
        }
        var most = desk.Name(saturation, "oxygen.saturation", "Oxygen that the water can hold in the warmest month", Units.MilligramPerLitre);
        foreach (var batch in living.Batches.Where(b => b.Species is not null && b.Species.Oxygen.Likely > 0.85 * most.Si))
        {
            desk.Say(new Finding(
                "oxygen.little", batch.Species!.Oxygen.Likely > most.Si ? Severity.Grave : Severity.Warning, batch.Batch.Species,
                Said.Of($"water that holds {new Amount(most.Si, Units.MilligramPerLitre)} at most in the warmest month"),
                Said.Of($"{new Amount(batch.Species.Oxygen.Likely, Units.MilligramPerLitre)} in the tank at all times"),
                "Cooler water holds more; stock thinly and aerate hard in summer.", batch.Path, batch.Species.Oxygen.From.Source));
        }
    }

    /// <summary>How often the pumps turn the fish tanks over.</summary>
    private static void Turnover(Desk desk, IReadOnlyList<VesselFacts> vessels)
    {
        var tanks = vessels.Where(v => v.Vessel.Role == VesselRole.FishTank).ToList();
        if (tanks.Count == 0 || desk.Plan.Pumps.Count == 0)
        {
            return;
        }
        var flows = new List<Figure>();
        foreach (var pump in desk.Plan.Pumps.Values)
        {
            if (FlowOf(desk, pump) is not { } flow)
            {
                return;
            }
            flows.Add((desk.Take(pump.Count) * flow * desk.Take(pump.Hours)).Called($"Mean flow of {pump.Name}", Units.LitrePerHour));
        }
        var water = Figure.Sum([.. tanks.Select(t => t.Water)]).Called("Water in the fish tanks", Units.Litre);
        var turnover = desk.Name(Figure.Sum([.. flows]) / water, "flow.turnover", "Tank volumes pumped each hour, at most", Units.PerHour);
        if (turnover.Value < 1)
        {
            desk.Say(new Finding(
                "flow.turnover", turnover.Value < 0.5 ? Severity.Warning : Severity.Note, "pump",
                Said.Of($"the tank is turned over {new Amount(turnover.Si, Units.PerHour)} at most"), Said.Of($"about {Amount.Of(1, Units.PerHour)}, {Amount.Of(2, Units.PerHour)} when stocked densely"),
                "A pump with more flow at its real head, or longer hours.", "pumps", "FAO Technical Paper 589 (2014), section 8 (from memory)"));
        }
    }

    /// <summary>Flow as measured, or from the curve at the height it lifts to: an upper bound, since pipe friction comes with the flow models.</summary>
    private static Figure? FlowOf(Desk desk, Pump pump)
    {
        if (pump.Flow is { } measured)
        {
            return desk.Take(measured);
        }
        if (pump.Curve.Count < 2)
        {
            return null;
        }
        var rises = desk.Plan.Pipes.Where(p => pump.Name.Equals(p.PumpedBy, StringComparison.OrdinalIgnoreCase) && p.Rise is not null).Select(p => desk.Take(p.Rise!)).ToList();
        var lift = rises.Count == 0 ? Figure.Constant(0, Units.Metre, "Lift: no rise given", Source.Definition("plan")) : Figure.Largest([.. rises]);
        var points = pump.Curve.Select(c => (Head: desk.Take(c.Head), Flow: desk.Take(c.Flow))).OrderBy(p => p.Head.Si).ToList();
        var flow = points[0].Flow.Si;
        for (var i = 0; i + 1 < points.Count; i++)
        {
            var (a, b) = (points[i], points[i + 1]);
            if (lift.Si >= b.Head.Si)
            {
                flow = b.Flow.Si;
            }
            else if (lift.Si >= a.Head.Si)
            {
                flow = a.Flow.Si + (lift.Si - a.Head.Si) / (b.Head.Si - a.Head.Si) * (b.Flow.Si - a.Flow.Si);
            }
        }
        return Figure.Computed(Math.Max(0, flow), Units.LitrePerHour, $"Flow of {pump.Name} at its lift, without pipe friction",
            "straight line between the points of the curve at the height the pump lifts to", [lift, .. points.SelectMany(p => new[] { p.Head, p.Flow })],
            Source.Practice("pipe friction left out: the real flow is lower"));
    }
}
