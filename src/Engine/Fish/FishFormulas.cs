using Runnel.Engine.Figures;
using Runnel.Engine.Quantities;

namespace Runnel.Engine.Fish;

/// <summary>The formulary's entries about fish.</summary>
public static class FishFormulas
{
    private const string Subject = "Fish";

    private const string RationError = "None in the product; feeding tables for one kind of fish differ by a factor of two.";

    private static readonly Source Curriculum = new("Fish Farms Curriculum, training material on geothermal fish farms, page 44");

    private static readonly Source FeedManual = new(
        "FAO, ADCP/REP/87/26, Feed and feeding of fish and shrimp, section 8.1: feed as a share of all the animals' weight");

    private static readonly FormulaInput Mass = new("mass", "Live mass of all fish", Units.Kilogram, 0, 1e5);

    public static readonly Formula FeedFromFish = new()
    {
        Id = "feed-from-fish",
        Name = "Feed for a mass of fish",
        Subject = Subject,
        Equation = "F = M r",
        Inputs = [Mass, new("ration", "Feed as a share of body weight", Units.PercentPerDay, 0, 25)],
        Output = new("feed", "Feed", Units.GramPerDay),
        Sources = [FeedManual, Curriculum],
        Confidence = Confidence.PublishedExample,
        Error = RationError,
        NotFor = "Fish outside their feeding temperature, which are not fed.",
        Compute = x => FeedRation.FeedFromFish(x[0], x[1]),
    };

    public static readonly Formula FishFromFeed = new()
    {
        Id = "fish-from-feed",
        Name = "Mass of fish that eats an amount of feed",
        Subject = Subject,
        Equation = "M = F / r",
        Inputs =
        [
            new("feed", "Feed", Units.GramPerDay, 0, 1e6),
            new("ration", "Feed as a share of body weight", Units.PercentPerDay, 0.1, 25),
        ],
        Output = new("mass", "Live mass of all fish", Units.Kilogram),
        Sources = [FeedManual, Curriculum],
        Confidence = Confidence.PublishedExample,
        Error = RationError,
        NotFor = "Fish outside their feeding temperature, which are not fed.",
        Compute = x => FeedRation.FishFromFeed(x[0], x[1]),
    };

    public static readonly Formula StockingDensity = new()
    {
        Id = "stocking-density",
        Name = "Stocking density",
        Subject = Subject,
        Equation = "D = M / V",
        Inputs = [Mass, new("volume", "Water in the tank they live in", Units.Litre, 1, 1e7)],
        Output = new("density", "Stocking density", Units.KilogramPerCubicMetre),
        Sources = [Source.Definition("mass of fish over the volume of their tank"), Literature.UviTilapia],
        Confidence = Confidence.PublishedExample,
        Error = "None: a definition. A weighed sample of fish is off by some percent.",
        NotFor = "The water of the whole loop: fish live in the tank only.",
        Compute = x => Stocking.Density(x[0], x[1]),
    };

    public static readonly Formula FishMass = new()
    {
        Id = "fish-mass",
        Name = "Mass of a number of fish",
        Subject = Subject,
        Equation = "M = n w",
        Inputs =
        [
            new("number", "How many fish", Unit.Count("fish"), 0, 1e6),
            new("weight", "Mean weight of one", Units.Gram, 0.01, 5e4),
        ],
        Output = new("mass", "Live mass of all fish", Units.Kilogram),
        Sources = [Source.Definition("number times mean weight"), Literature.UviTilapia, Curriculum],
        Confidence = Confidence.PublishedExample,
        Error = "That of the mean weight.",
        Compute = x => Stocking.Mass(x[0], x[1]),
    };

    public static readonly Formula TimeToLowOxygen = new()
    {
        Id = "time-to-low-oxygen",
        Name = "Time until oxygen is low after pump and air stop",
        Subject = Subject,
        Equation = "t = (C0 - Cc) V / (M R)",
        Inputs =
        [
            new("water", "Water that the fish can reach", Units.Litre, 1, 1e7),
            Mass with { Id = "fish", Min = 0.001 },
            new("respiration", "Oxygen used by the fish", Units.MilligramPerKilogramHour, 20, 2000, 300,
                "from memory: fed warm-water fish 200 to 400, quiet 100 to 200"),
            new("start", "Dissolved oxygen when the air stops", Units.MilligramPerLitre, 0, 25),
            new("critical", "Dissolved oxygen at which fish come to harm", Units.MilligramPerLitre, 0, 15, 3,
                "common practice, no source: a limit for warm-water fish; 5 for trout"),
        ],
        Output = new("time", "Time until oxygen is low", Units.HourUnit),
        Sources =
        [
            Source.Definition("balance of the oxygen in the water"),
            Source.FromMemory("Timmons and Ebeling 2013, Recirculating Aquaculture, for respiration"),
        ],
        Confidence = Confidence.Textbook,
        Error = "That of the respiration, which differs two to three times with species, size, temperature and the last meal; bacteria and "
            + "solids shorten the time by a fifth to a third.",
        NotFor = "Leaving fish without air. Lightly stocked, the open surface lengthens the time; this counts none of it.",
        Compute = x => Fish.TimeToLowOxygen.OxygenBalance(x[0], x[1], x[2], x[3], x[4]),
    };

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Formula> All { get; } = [FeedFromFish, FishFromFeed, StockingDensity, FishMass, TimeToLowOxygen, .. RespirationFormulas.All];
}
