using CsCheck;
using Runnel.Engine.Fish;
using Runnel.Engine.Quantities;
using static Runnel.Engine.Tests.Formulary;

namespace Runnel.Engine.Tests.Fish;

public sealed class FishTests
{
    private const string Curriculum =
        "Fish Farms Curriculum, page 44: 5000 fish of 200 g are 1000 kg; fed 2 % of that each day, they get 20 kg";

    private const string Uvi = "Rakocy and others 2004, Sixth International Symposium on Tilapia in Aquaculture, measured at harvest";

    [Fact]
    [Proof("fish-mass", Evidence.Published, Curriculum)]
    [Proof("feed-from-fish", Evidence.Published, Curriculum)]
    [Proof("fish-from-feed", Evidence.Published, Curriculum)]
    public void The_example_of_a_curriculum_comes_out()
    {
        Assert.Equal(1000, Stocking.Mass(5000, 200), 1e-9);
        Assert.Equal(20000, FeedRation.FeedFromFish(1000, 2), 1e-9);
        Assert.Equal(1000, FeedRation.FishFromFeed(20000, 2), 1e-9);
    }

    [Fact]
    [Proof("feed-from-fish", Evidence.Published, "from memory: FAO Technical Paper 589, section 8.1: 200 g/d at 1 to 2 %/d feed 10 to 20 kg")]
    [Proof("fish-from-feed", Evidence.Published, "from memory: FAO Technical Paper 589, section 8.1: 200 g/d at 1 to 2 %/d feed 10 to 20 kg")]
    public void The_example_of_the_technical_paper_comes_out()
    {
        Assert.Equal(20, FeedRation.FishFromFeed(200, 1), 1e-9);
        Assert.Equal(10, FeedRation.FishFromFeed(200, 2), 1e-9);
        Assert.Equal(200, FeedRation.FeedFromFish(20, 1), 1e-9);
    }

    [Theory]
    [InlineData(77, 0.983, 813.8, 61.5)]
    [InlineData(154, 0.899, 512.5, 70.7)]
    [Proof("fish-mass", Evidence.Published, Uvi + ": number, survival and weight in each m³ give the density printed, 0.5 %")]
    [Proof("stocking-density", Evidence.Published, Uvi + ": number, survival and weight in each m³ give the density printed, 0.5 %")]
    public void A_harvest_of_tilapia_had_the_density_that_its_numbers_give(double number, double survival, double weight, double printed)
    {
        const double tank = 7800;
        var mass = Stocking.Mass(number * tank / 1000 * survival, weight);
        Assert.Equal(printed, Stocking.Density(mass, tank), 0.005 * printed);
    }

    [Fact]
    [Proof("stocking-density", Evidence.Published, Uvi + ": 4.16 t a year, a harvest each six weeks from a tank of 7.8 m³, 61.5 kg/m³")]
    public void The_years_harvest_gives_the_same_density() => Assert.Equal(61.5, Stocking.Density(4160.0 * 6 / 52, 7800), 0.3);

    [Fact]
    [Proof("feed-from-fish", Evidence.Derived, "there and back")]
    [Proof("fish-from-feed", Evidence.Derived, "there and back")]
    public void There_and_back_is_the_same() =>
        Gen.Select(Gen.Double[0.01, 30], Gen.Double[0.1, 25]).Sample((mass, ration) =>
            Math.Abs(FeedRation.FishFromFeed(FeedRation.FeedFromFish(mass, ration), ration) / mass - 1) < 1e-12);

    [Fact]
    [Proof("time-to-low-oxygen", Evidence.Derived, "balance: what the fish use in that time is what left the water")]
    public void What_fish_use_is_what_the_water_loses() =>
        Gen.Select(Gen.Double[100, 5000], Gen.Double[0.5, 100], Gen.Double[50, 800], Gen.Double[5, 12], Gen.Double[2, 5]).Sample((v, m, r, c0, c) =>
        {
            var used = m * r * TimeToLowOxygen.OxygenBalance(v, m, r, c0, c);
            return Math.Abs(used - (c0 - c) * v) <= 1e-9 * c0 * v;
        });

    [Fact]
    [Proof("time-to-low-oxygen", Evidence.Derived, "by hand: 3.5 mg/L of 1000 L are 3500 mg; 20 kg at 227 mg/kg/h use 4540 mg/h")]
    public void A_tank_of_tilapia_has_three_quarters_of_an_hour() =>
        Assert.Equal(46.3, 60 * TimeToLowOxygen.OxygenBalance(1000, 20, 227, 6.5, 3), 0.1);

    [Fact]
    public void No_time_is_left_where_oxygen_is_already_low() => Assert.Equal(0, TimeToLowOxygen.OxygenBalance(1000, 20, 300, 2.5, 3));

    [Fact]
    public void Figures_in_other_units_give_the_same()
    {
        const double pound = 0.45359237, gallon = 3.785411784;
        var mass = Of(20, Units.Pound);
        Assert.Equal(
            FeedRation.FeedFromFish(20 * pound, 1.5), FishFormulas.FeedFromFish.Apply(mass, Of(1.5, Units.PercentPerDay)).Value, 1e-9);
        Assert.Equal(
            FeedRation.FishFromFeed(pound * 1000, 1.5),
            FishFormulas.FishFromFeed.Apply(Of(1, Units.PoundPerDay), Of(1.5, Units.PercentPerDay)).Value,
            1e-9);
        Assert.Equal(Stocking.Density(20 * pound, 250 * gallon), FishFormulas.StockingDensity.Apply(mass, Of(250, Units.UsGallon)).Value, 1e-9);
        Assert.Equal(Stocking.Mass(40, 2 * pound * 1000), FishFormulas.FishMass.Apply(Of(40, Units.One), Of(2, Units.Pound)).Value, 1e-9);
        var minutes = FishFormulas.TimeToLowOxygen
            .Apply(
                Of(250, Units.UsGallon), mass, Of(300, Units.MilligramPerKilogramHour), Of(0.007, Units.KilogramPerCubicMetre),
                Of(3, Units.MilligramPerLitre))
            .Called("time", Units.MinuteUnit);
        Assert.Equal(60 * TimeToLowOxygen.OxygenBalance(250 * gallon, 20 * pound, 300, 7, 3), minutes.Value, 1e-9);
    }
}
