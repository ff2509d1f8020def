using Runnel.Engine.Crops;
using Runnel.Engine.Figures;
using Runnel.Engine.Filter;
using Runnel.Engine.Fish;
using Runnel.Engine.Plan;
using Runnel.Engine.Quantities;
using Runnel.Engine.Water;

namespace Runnel.Engine.Assess;

/// <summary>A batch of the plan with its row of the catalogue.</summary>
internal sealed record BatchFacts(FishBatch Batch, Species? Species, Figure Number, Figure MassIn, Figure MassAtMost, string Path);

/// <summary>A crop of the plan with its row of the catalogue and its bed.</summary>
internal sealed record CropFacts(Crop Crop, CropKind? Kind, IReadOnlyList<VesselFacts> Beds, Figure Area, string Path);

/// <summary>Fish, crops and feed: what the plan comes to and what each part of the loop allows.</summary>
internal sealed class Living
{
    private const double FaoDensityLimit = 20;

    private static readonly Source FaoDensity = Source.FromMemory("FAO Technical Paper 589 (2014), section 8.1: 10 to 20 kg of fish for each 1000 L, half of that under 500 L");

    private Figure? _eaten;
    private Figure? _used;

    private Living(IReadOnlyList<BatchFacts> batches, IReadOnlyList<CropFacts> crops)
    {
        Batches = batches;
        Crops = crops;
    }

    public IReadOnlyList<BatchFacts> Batches { get; }

    public IReadOnlyList<CropFacts> Crops { get; }

    /// <summary>Feed each day, or null when neither fish nor beds nor a stated feed give one.</summary>
    public Figure? Feed { get; private set; }

    public BalanceEnd FeedFrom { get; private set; }

    public Figure? FishMass { get; private set; }

    public static Living Read(Desk desk, IReadOnlyList<VesselFacts> vessels)
    {
        var living = new Living(ReadBatches(desk), ReadCrops(desk, vessels));
        living.FindFeed(desk);
        return living;
    }

    private static List<BatchFacts> ReadBatches(Desk desk)
    {
        var batches = new List<BatchFacts>();
        for (var i = 0; i < desk.Plan.Fish.Count; i++)
        {
            var batch = desk.Plan.Fish[i];
            var path = $"fish/{i}";
            var species = Names.Find(desk.Shelf.Species, s => s.Name, s => s.AlsoCalled, batch.Species);
            if (species is null)
            {
                desk.Say(Advice.Unknown("fish", batch.Species, batch.Species, $"{path}/species", desk.Shelf.Species.Select(s => s.Name)));
            }
            var number = desk.Take(batch.Number);
            if (desk.Try(batch.Species, () => Weigh(desk, batch, species, number, path)) is { } facts)
            {
                batches.Add(facts);
            }
        }
        return batches;
    }

    private static BatchFacts Weigh(Desk desk, FishBatch batch, Species? species, Figure number, string path)
    {
        var massIn = desk.Need(FishFormulas.FishMass, number, desk.Take(batch.Weight));
        var massAtMost = batch.HarvestAt is { } harvest
            ? (desk.Need(FishFormulas.FishMass, number, desk.Take(harvest)) * desk.Take(batch.Survival)).Called($"Fish at harvest, {batch.Species}", Units.Kilogram)
            : massIn;
        return new(batch, species, number, massIn, massAtMost, path);
    }

    private static List<CropFacts> ReadCrops(Desk desk, IReadOnlyList<VesselFacts> vessels)
    {
        var crops = new List<CropFacts>();
        for (var i = 0; i < desk.Plan.Crops.Count; i++)
        {
            var crop = desk.Plan.Crops[i];
            var path = $"crops/{i}";
            var kind = Names.Find(desk.Shelf.Crops, c => c.Name, c => c.AlsoCalled, crop.Name);
            if (kind is null)
            {
                desk.Say(Advice.Unknown("crop", crop.Name, crop.Name, $"{path}/crop", desk.Shelf.Crops.Select(c => c.Name)));
            }
            var beds = vessels.Where(v => v.Planted is not null && (crop.In.Count == 0 || crop.In.Contains(v.Vessel.Name, StringComparer.OrdinalIgnoreCase))).ToList();
            if (beds.Count == 0)
            {
                continue;
            }
            var area = Figure.Sum([.. beds.Select(b => b.Planted!)]) * desk.Take(crop.Share);
            crops.Add(new(crop, kind, beds, area.Called($"Area under {crop.Name}", Units.SquareMetre), path));
        }
        return crops;
    }

    private void FindFeed(Desk desk)
    {
        if (Batches.Count > 0)
        {
            FishMass = desk.Name(Figure.Sum([.. Batches.Select(b => b.MassAtMost)]), "fish.mass", "Fish when heaviest", Units.Kilogram);
        }
        _eaten = Total(Batches.Where(b => b.Species is not null).Select(b => desk.Try(b.Batch.Species, () =>
            desk.Need(FishFormulas.FeedFromFish, b.MassAtMost, Ration(desk, b.Species!)).Called($"Feed of {b.Batch.Species}", Units.GramPerDay))));
        _used = Total(Crops.Select(c => desk.Try(c.Crop.Name, () =>
            desk.Need(CropFormulas.FeedFromPlantedArea, c.Area, FeedRatio(desk, c)).Called($"Feed that {c.Crop.Name} can use", Units.GramPerDay))));
        if (desk.Plan.Feed.EachDay is { } stated)
        {
            (Feed, FeedFrom) = (desk.Take(stated), BalanceEnd.Feed);
        }
        else if (_eaten is not null)
        {
            (Feed, FeedFrom) = (_eaten, BalanceEnd.Fish);
        }
        else if (_used is not null)
        {
            (Feed, FeedFrom) = (_used, BalanceEnd.Beds);
        }
        if (Feed is not null)
        {
            Feed = desk.Name(Feed, "balance.feed", "Feed each day when the fish are heaviest", Units.GramPerDay);
        }
    }

    private static Figure Ration(Desk desk, Species species) =>
        desk.Plan.Feed.ShareOfBodyWeight is { } stated ? desk.Take(stated) : desk.Take(species.Ration);

    private static Figure? Total(IEnumerable<Figure?> feeds) => feeds.OfType<Figure>().ToList() is { Count: > 0 } some ? Figure.Sum([.. some]) : null;

    /// <summary>Feed for each square metre and day: the plan's own or the handbooks' span.</summary>
    private static Figure FeedRatio(Desk desk, CropFacts crop) => desk.Plan.Feed.Ratio is { } stated
        ? desk.Take(stated)
        : desk.Take(crop.Kind is { Fruiting: true } ? FruitingRatio : LeafyRatio);

    /// <summary>Sources differ by six times; the likely value is FAO's, which is for home-scale units.</summary>
    internal static readonly Estimate LeafyRatio = Desk.Assumed(
        "feed/ratio/leafy", "Feed for each square metre of leafy crop", 15, 45, 100, Units.GramPerSquareMetreDay,
        "likely: FAO Technical Paper 589 (2014), section 8.1, 40 to 50; low: Endut et al. 2010, 15 to 42; high: Rakocy 2007, 60 to 100 for rafts");

    internal static readonly Estimate FruitingRatio = Desk.Assumed(
        "feed/ratio/fruiting", "Feed for each square metre of fruiting crop", 20, 65, 100, Units.GramPerSquareMetreDay,
        "likely: FAO Technical Paper 589 (2014), section 8.1, 50 to 80; high: Rakocy 2007, 60 to 100 for rafts; low: common practice, no source");

    internal static readonly Estimate FilterRate = Desk.Assumed(
        "filter/rate", "Ammonia that each square metre of filter removes", 0.2, 0.57, 1.0, Units.GramAmmoniaPerSquareMetreDay,
        "likely: FAO Technical Paper 589 (2014), appendix 4 (from memory); span: Rakocy & McGinty, 0.2 to 1.1; Harwanto, Oh & Jo 2011 measured 0.576 as total ammonia");

    /// <summary>Feed against every limit, and what the feed brings with it.</summary>
    public Balance Solve(Desk desk, IReadOnlyList<VesselFacts> vessels, Figure? waterTemperature)
    {
        if (Feed is null || Feed.Si <= 0)
        {
            return new([], Feed, FeedFrom);
        }
        var protein = desk.Take(desk.Plan.Feed.Protein);
        var tan = desk.Apply(WaterFormulas.AmmoniaFromFeed, Feed, protein);
        if (tan is not null)
        {
            tan = desk.Name(tan, "balance.ammonia", "Ammonia that the fish give off, as nitrogen", Units.GramNitrogenPerDay);
            if (desk.Apply(WaterFormulas.AlkalinityUsed, tan) is { } alkalinity)
            {
                alkalinity = desk.Name(alkalinity, "balance.alkalinity", "Alkalinity used by the filter, at most", Units.GramCalciumCarbonatePerDay);
                if (desk.Apply(WaterFormulas.BasePotassiumBicarbonate, alkalinity) is { } bicarbonate)
                {
                    desk.Name(bicarbonate, "balance.base", "Potassium bicarbonate that would replace it", Units.GramPerDay);
                }
            }
        }
        desk.Try("solids", () => desk.Name(
            desk.Need(WaterFormulas.SolidsFromFeed, Feed, desk.Take(WaterFormulas.SolidsFromFeed.Assumed(1))), "balance.solids", "Solids to catch, dry", Units.GramPerDay));
        desk.Try("oxygen", () => desk.Name(
            desk.Need(WaterFormulas.OxygenFromFeed, Feed, desk.Take(WaterFormulas.OxygenFromFeed.Assumed(1))), "balance.oxygen", "Oxygen needed by fish and bacteria", Units.GramPerDay));

        var limits = new List<(string Id, string Label, Figure Allows)>();
        if (_used is { } used)
        {
            limits.Add(("beds", "Planted area", used));
        }
        if (desk.Try("biofilter", () => FilterAllows(desk, vessels, protein, waterTemperature)!) is { } filtered)
        {
            limits.Add(("filter", "Surface for bacteria", filtered));
        }
        if (desk.Try("fish tank", () => TankHolds(desk, vessels)!) is { } held && FishMass is not null)
        {
            limits.Add(("stocking", "Room for fish", Feed * held / FishMass));
        }
        if (FeedFrom != BalanceEnd.Fish && _eaten is { } eaten)
        {
            limits.Add(("fish", "What the fish eat", eaten));
        }
        var named = limits.Select(l =>
        {
            var allows = desk.Name(l.Allows, $"balance.{l.Id}.allows", $"{l.Label} allows feed of", Units.GramPerDay);
            var margin = desk.Name(
                (allows - Feed) / Feed, $"balance.{l.Id}.margin", $"{l.Label}: margin", Units.Percent);
            return new BalanceLimit(l.Id, l.Label, allows, margin);
        }).OrderBy(l => l.Margin.Si).ToList();
        if (named.Count > 0)
        {
            desk.Name(Figure.Smallest([.. named.Select(n => n.Allows)]), "balance.limit", $"Feed that the tightest limit allows ({named[0].Label.ToLowerInvariant()})", Units.GramPerDay);
        }
        return new(named, Feed, FeedFrom);
    }

    /// <summary>Feed whose ammonia the wetted surface can nitrify.</summary>
    private static Figure? FilterAllows(Desk desk, IReadOnlyList<VesselFacts> vessels, Figure protein, Figure? waterTemperature)
    {
        var surfaces = vessels.Where(v => v.Media is not null && v.Medium is not null)
            .Select(v => (v.Media! * desk.Take(v.Medium!.Surface)).Called($"Surface of the media in {v.Vessel.Name}", Units.SquareMetre)).ToList();
        surfaces.AddRange(vessels.Where(v => v.Vessel.Role == VesselRole.RaftBed)
            .Select(v => (v.Wetted + v.Top).Called($"Walls and raft of {v.Vessel.Name}", Units.SquareMetre)));
        if (surfaces.Count == 0)
        {
            return null;
        }
        var surface = desk.Name(Figure.Sum([.. surfaces]), "filter.area", "Surface for bacteria", Units.SquareMetre);
        var rate = desk.Take(FilterRate);
        var removed = surface * rate;
        if (waterTemperature is not null
            && FilterFormulas.NitrificationTemperatureFactor.Check(waterTemperature, desk.Take(FilterFormulas.NitrificationTemperatureFactor.Assumed(1))).Count == 0)
        {
            removed *= desk.Need(FilterFormulas.NitrificationTemperatureFactor, waterTemperature, desk.Take(FilterFormulas.NitrificationTemperatureFactor.Assumed(1)));
        }
        var removes = removed.Called("Ammonia that the filter can remove", Units.GramAmmoniaPerDay);
        // The published rule is linear in feed: what one gram of feed gives off, at this protein.
        var gram = Figure.Constant(1, Units.GramPerDay, "One gram of feed a day", Source.Definition("unit of feed"));
        var each = desk.Need(WaterFormulas.AmmoniaFromFeedFao, gram, protein).Called("Ammonia from one gram of feed a day", Units.GramAmmoniaPerDay);
        var needed = desk.Name(
            desk.Need(WaterFormulas.AmmoniaFromFeedFao, desk.Book["balance.feed"], protein) / rate, "filter.needed", "Surface needed at 20 °C", Units.SquareMetre);
        _ = needed;
        return (removes / each * gram).Called("Feed that the filter allows", Units.GramPerDay);
    }

    /// <summary>Fish that the tanks hold under the handbook's density.</summary>
    private static Figure? TankHolds(Desk desk, IReadOnlyList<VesselFacts> vessels)
    {
        var tanks = vessels.Where(v => v.Vessel.Role == VesselRole.FishTank).ToList();
        if (tanks.Count == 0)
        {
            return null;
        }
        var holds = tanks.Select(t =>
        {
            // Of one tank: the handbook's rule is about the size of each.
            var small = t.Water.Si / t.Count.Si < 0.5;
            var limit = desk.Take(Desk.Assumed(
                small ? "stocking/limit small" : "stocking/limit", small ? "Most fish in a tank under 500 L" : "Most fish in a tank",
                small ? FaoDensityLimit / 4 : FaoDensityLimit / 2, small ? FaoDensityLimit / 2 : FaoDensityLimit, small ? FaoDensityLimit / 2 : FaoDensityLimit,
                Units.KilogramPerCubicMetre, FaoDensity.Text));
            return (t.Water * limit).Called($"Fish that {t.Vessel.Name} holds", Units.Kilogram);
        }).ToList();
        var all = desk.Name(Figure.Sum([.. holds]), "stocking.most", "Most fish that the tanks should hold", Units.Kilogram);
        var water = Figure.Sum([.. tanks.Select(t => t.Water)]).Called("Water in the fish tanks", Units.Litre);
        if (desk.Book.Find("fish.mass") is { } mass)
        {
            desk.Name(desk.Need(FishFormulas.StockingDensity, mass, water), "stocking.density", "Fish in the tank when heaviest", Units.KilogramPerCubicMetre);
        }
        return all;
    }
}
