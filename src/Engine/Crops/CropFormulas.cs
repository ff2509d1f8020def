using Runnel.Engine.Figures;
using Runnel.Engine.Quantities;

namespace Runnel.Engine.Crops;

/// <summary>The formulary's entries about crops.</summary>
public static class CropFormulas
{
    private const string Subject = "Crops";

    private const string RatioError = "Published feed ratios span sixfold, from 15 to 100 g/m²/d, with method, crop and how solids are kept.";

    private const string RatioNotFor =
        "A nitrogen balance: at 50 g/m²/d of 32 % protein more nitrogen comes in than lettuce takes up, and nitrate builds up.";

    private static readonly FormulaInput Area = new("area", "Planted area", Units.SquareMetre, 0, 1e5);

    private static readonly FormulaInput Ratio = new("ratio", "Feed ratio", Units.GramPerSquareMetreDay, 1, 200, 50,
        "FAO Technical Paper 589 (2014), section 8.1: 40 to 50 for leafy crops, 50 to 80 for fruiting ones; 50 lies in both");

    private static readonly FormulaInput Density = new("density", "Plants for each square metre", Units.PerSquareMetre, 0.1, 2000);

    public static readonly Formula FeedFromPlantedArea = new()
    {
        Id = "feed-from-planted-area",
        Name = "Feed that a planted area can use",
        Subject = Subject,
        Equation = "F = A q",
        Inputs = [Area, Ratio],
        Output = new("feed", "Feed", Units.GramPerDay),
        Sources = [Literature.RakocyGuidelines, Literature.FaoRatios],
        Confidence = Confidence.PublishedExample,
        Error = RatioError,
        NotFor = RatioNotFor,
        Compute = x => FeedRatio.FeedFromArea(x[0], x[1]),
    };

    public static readonly Formula PlantedAreaFromFeed = new()
    {
        Id = "planted-area-from-feed",
        Name = "Planted area that an amount of feed can supply",
        Subject = Subject,
        Equation = "A = F / q",
        Inputs = [new("feed", "Feed", Units.GramPerDay, 0, 1e6), Ratio],
        Output = new("area", "Planted area", Units.SquareMetre),
        Sources = [Literature.RakocyGuidelines, Literature.FaoRatios],
        Confidence = Confidence.PublishedExample,
        Error = RatioError,
        NotFor = RatioNotFor,
        Compute = x => FeedRatio.AreaFromFeed(x[0], x[1]),
    };

    public static readonly Formula PlantsInArea = new()
    {
        Id = "plants-in-area",
        Name = "Plants on an area",
        Subject = Subject,
        Equation = "n = A d",
        Inputs = [Area, Density],
        Output = new("plants", "Plants, not rounded", Unit.Count("plants")),
        Sources = [Source.Definition("area times plants for each square metre"), Literature.FaoRatios],
        Confidence = Confidence.Textbook,
        Error = "None in the product; whole rows decide in a small bed.",
        Compute = x => Spacing.PlantsInArea(x[0], x[1]),
    };

    public static readonly Formula AreaForPlants = new()
    {
        Id = "area-for-plants",
        Name = "Area for some plants",
        Subject = Subject,
        Equation = "A = n / d",
        Inputs = [new("plants", "Plants standing at one time", Unit.Count("plants"), 0, 1e7), Density],
        Output = new("area", "Planted area", Units.SquareMetre),
        Sources = [Source.Definition("plants over plants for each square metre"), Literature.FaoRatios],
        Confidence = Confidence.Textbook,
        Error = "None in the quotient; whole rows decide in a small bed.",
        Compute = x => Spacing.AreaForPlants(x[0], x[1]),
    };

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Formula> All { get; } = [FeedFromPlantedArea, PlantedAreaFromFeed, PlantsInArea, AreaForPlants];
}
