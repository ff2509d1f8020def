using CsCheck;
using Runnel.Engine.Crops;
using Runnel.Engine.Quantities;
using static Runnel.Engine.Tests.Formulary;

namespace Runnel.Engine.Tests.Crops;

public sealed class CropTests
{
    private const string Rakocy =
        "Rakocy 2007, Ten guidelines, Aquaponics Journal 46: 1000 g/d at 60 g/m²/d supply 16.7 m²; 200 m² at 100 g/m²/d take 20 kg/d";

    private const string FaoExample =
        "from memory: FAO Technical Paper 589, section 8.1: 100 heads at 25 each m² are 4 m², which at 50 g/m²/d take 200 g/d";

    private const string SandBeds =
        "McMurtry and others 1997, J. Applied Aquaculture 7(4), 33: yields of plot and plant give 4.0 and 13.7 plants at 4 each m²; bed areas "
        + "from bed and tank volumes (ratios 0.67 and 2.25; tank of 0.5 m³ from memory), 3 %";

    [Fact]
    [Proof("feed-from-planted-area", Evidence.Published, Rakocy)]
    [Proof("planted-area-from-feed", Evidence.Published, Rakocy)]
    public void The_examples_for_raft_beds_come_out()
    {
        Assert.Equal(16.7, FeedRatio.AreaFromFeed(1000, 60), 0.05);
        Assert.Equal(20000, FeedRatio.FeedFromArea(200, 100), 1e-9);
    }

    [Fact]
    [Proof("feed-from-planted-area", Evidence.Published, FaoExample)]
    [Proof("area-for-plants", Evidence.Published, FaoExample)]
    public void The_example_of_the_technical_paper_comes_out()
    {
        var area = Spacing.AreaForPlants(25 * 4, 25);
        Assert.Equal(4, area, 1e-12);
        Assert.Equal(200, FeedRatio.FeedFromArea(area), 1e-9);
    }

    [Fact]
    [Proof("feed-from-planted-area", Evidence.Published,
        "Rakocy, Shultz, Bailey and Thoman 2004, Acta Horticulturae: basil at 99.6 g/m²/d (area of 214 m² from memory) beside 4.37 t of fish a year, feed conversion 1.7 to 1.8")]
    public void A_year_of_basil_took_the_feed_that_its_fish_ate()
    {
        var tonnes = FeedRatio.FeedFromArea(214, 99.6) * 365 / 1e6;
        Assert.InRange(tonnes / 4.37, 1.7, 1.8);
    }

    [Theory]
    [InlineData(13.6, 3.4, 0.67)]
    [InlineData(31.6, 2.3, 2.25)]
    [Proof("plants-in-area", Evidence.Derived, SandBeds)]
    [Proof("area-for-plants", Evidence.Derived, SandBeds)]
    public void Sand_beds_held_the_plants_that_their_area_gives(double plotYield, double plantYield, double bedToTank)
    {
        var plants = plotYield / plantYield;
        var area = bedToTank * 0.5 / 0.33;
        Assert.Equal(plants, Spacing.PlantsInArea(area, 4), 0.03 * plants);
        Assert.Equal(area, Spacing.AreaForPlants(plants, 4), 0.03 * area);
    }

    [Fact]
    [Proof("feed-from-planted-area", Evidence.Derived, "there and back")]
    [Proof("planted-area-from-feed", Evidence.Derived, "there and back")]
    [Proof("plants-in-area", Evidence.Derived, "there and back")]
    [Proof("area-for-plants", Evidence.Derived, "there and back")]
    public void There_and_back_is_the_same() =>
        Gen.Select(Gen.Double[0.01, 1000], Gen.Double[1, 200]).Sample((area, per) =>
            Math.Abs(FeedRatio.AreaFromFeed(FeedRatio.FeedFromArea(area, per), per) / area - 1) < 1e-12
            && Math.Abs(Spacing.AreaForPlants(Spacing.PlantsInArea(area, per), per) / area - 1) < 1e-12);

    [Fact]
    public void Figures_in_other_units_give_the_same()
    {
        const double foot = 0.3048 * 0.3048;
        var area = Of(40, Units.SquareFoot);
        Assert.Equal(
            FeedRatio.FeedFromArea(40 * foot), CropFormulas.FeedFromPlantedArea.Apply(area, Of(50, Units.GramPerSquareMetreDay)).Value, 1e-9);
        Assert.Equal(
            FeedRatio.AreaFromFeed(453.59237, 60),
            CropFormulas.PlantedAreaFromFeed.Apply(Of(1, Units.PoundPerDay), Of(60, Units.GramPerSquareMetreDay)).Value,
            1e-9);
        Assert.Equal(Spacing.PlantsInArea(40 * foot, 2 / foot), CropFormulas.PlantsInArea.Apply(area, Of(2, Units.PerSquareFoot)).Value, 1e-9);
        Assert.Equal(80, CropFormulas.PlantsInArea.Apply(area, Of(2, Units.PerSquareFoot)).Value, 1e-9);
        Assert.Equal(40 * foot, CropFormulas.AreaForPlants.Apply(Of(80, Unit.Count("plants")), Of(2, Units.PerSquareFoot)).Value, 1e-9);
    }
}
