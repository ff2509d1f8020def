using Runnel.Engine.Assess;
using Runnel.Engine.Quantities;

namespace Runnel.Catalogue.Tests;

/// <summary>Spot checks against the works that the rows name: each catches a slip of the pen in copying.</summary>
public sealed class PublishedTests
{
    private static readonly Shelf Shelf = Shelves.Standard;

    private static Engine.Fish.Species Fish(string name) => Names.Find(Shelf.Species, s => s.Name, s => s.AlsoCalled, name)!;

    private static Engine.Crops.CropKind Crop(string name) => Names.Find(Shelf.Crops, c => c.Name, c => c.AlsoCalled, name)!;

    private static Engine.Filter.Medium Medium(string name) => Names.Find(Shelf.Media, m => m.Name, m => m.AlsoCalled, name)!;

    private static Engine.Heat.Climate Climate(string name) => Names.Find(Shelf.Climates, c => c.Name, c => c.AlsoCalled, name)!;

    /// <summary>SRAC 283 prints Fahrenheit: no feeding under 63 °F, best at 85 to 88 °F. Converted here, not in the row.</summary>
    [Fact]
    public void Tilapia_after_SRAC_283()
    {
        var fish = Fish("Nile tilapia");
        Assert.Equal(Units.Fahrenheit.ToSi(63), fish.StopsFeedingBelow!.Likely, 0.5);
        Assert.InRange(Units.Fahrenheit.ToSi(88), fish.Thrives.Low, fish.Thrives.High + 0.5);
        Assert.True(fish.Survives.Low > Units.Fahrenheit.ToSi(52), "lethal at 50 to 52 °F");
    }

    /// <summary>McMahon &amp; Terrell 1982, channel catfish: 26 to 29 °C best, none under 18, lethal 33.5.</summary>
    [Fact]
    public void Channel_catfish_after_the_habitat_model()
    {
        var fish = Fish("channel catfish");
        Assert.True(fish.Thrives.Low <= 26 && fish.Thrives.High >= 29);
        Assert.Equal(18, fish.StopsFeedingBelow!.Likely);
        Assert.True(fish.Survives.High <= 33.5);
    }

    /// <summary>
    /// Kentucky State University, largemouth bass of 60 g: growth index 1.494 − 0.301 T + 0.0204 T² − 0.000367 T³. Its top and its
    /// values over nine tenths of the top lie within the band of FAO 589 that the row takes.
    /// </summary>
    [Fact]
    public void Largemouth_bass_grow_best_within_their_band()
    {
        static double Index(double t) => 1.494 - 0.301 * t + 0.0204 * t * t - 0.000367 * t * t * t;
        var fish = Fish("largemouth bass");
        var best = Enumerable.Range(100, 261).Select(t => t / 10.0).MaxBy(Index);
        Assert.Equal(26.8, best, 0.5);
        Assert.InRange(best, fish.Thrives.Low, fish.Thrives.High);
        Assert.True(Index(fish.Thrives.Low) > 0.85 * Index(best) && Index(fish.Thrives.High) > 0.85 * Index(best));
    }

    /// <summary>Hicks et al. 2009, bluegill: 28.0 to 119.4 g in 120 days at a conversion of 1.26 is 1.21 %/d of growth, so 1.5 %/d of feed.</summary>
    [Fact]
    public void Bluegill_ration_follows_from_growth_and_conversion()
    {
        var growth = Math.Log(119.4 / 28.0) / 120;
        var fish = Fish("bluegill");
        Assert.Equal(1.21, growth * 100, 0.01);
        Assert.Equal(growth * 1.26 * 100, Units.PercentPerDay.FromSi(fish.Ration.Likely), 0.05);
    }

    /// <summary>Leitritz &amp; Lewis 1980, rainbow trout at 15.0 °C: 1.5 % of body weight at 92 to 131 g.</summary>
    [Fact]
    public void Trout_ration_after_the_feed_table() => Assert.Equal(1.5, Units.PercentPerDay.FromSi(Fish("rainbow trout").Ration.Likely), 0.01);

    /// <summary>FAO EcoCrop database: optimal and absolute range of temperature, °C.</summary>
    [Theory]
    [InlineData("basil", 18, 27, 7, 36)]
    [InlineData("kale", 15, 22, 7, 30)]
    [InlineData("chard", 15, 25, 5, 35)]
    [InlineData("spinach", 13, 20, 2, 27)]
    [InlineData("parsley", 11, 20, 7, 28)]
    [InlineData("coriander", 15, 25, 4, 32)]
    [InlineData("arugula", 15, 25, 8, 29)]
    [InlineData("tomato", 20, 27, 7, 35)]
    [InlineData("sweet pepper", 17, 30, 8, 35)]
    [InlineData("cucumber", 18, 32, 6, 38)]
    [InlineData("bush bean", 16, 25, 7, 32)]
    [InlineData("strawberry", 11, 24, 6, 28)]
    [InlineData("eggplant", 20, 35, 9, 40)]
    [InlineData("pea", 10, 24, 4, 30)]
    [InlineData("chives", 10, 20, 2, 35)]
    [InlineData("watercress", 12, 17, 6, 32)]
    public void Crops_after_EcoCrop(string name, double low, double high, double least, double most)
    {
        var crop = Crop(name);
        Assert.Equal((low, high, least, most), (crop.Thrives.Low, crop.Thrives.High, crop.Survives.Low, crop.Survives.High));
    }

    /// <summary>Cornell's benchmark: 150 g butterhead on 17 mol/m²/d. Knott's Handbook: tomato and pepper grow best at 21 to 24 °C.</summary>
    [Fact]
    public void Handbook_optima_lie_within_the_bands()
    {
        Assert.Equal(17, Units.MolePerSquareMetreDay.FromSi(Crop("butterhead lettuce").DailyLight.High), 1e-9);
        foreach (var name in new[] { "tomato", "sweet pepper" })
        {
            Assert.True(Crop(name).Thrives.Low <= 21 && Crop(name).Thrives.High >= 24, name);
        }
    }

    /// <summary>
    /// Harwanto, Oh &amp; Jo 2011: 288.1 g of ammonia nitrogen per m³ and day on 500 m²/m³ is 0.576 g/m²/d, within 2 % of the 0.57 that
    /// FAO 589 sizes by.
    /// </summary>
    [Fact]
    public void Plastic_carriers_after_their_trial() =>
        Assert.Equal(0.57, 288.1 / Medium("plastic filter carriers").Surface.Likely, 0.012);

    /// <summary>A grower's 85 to 90 ft²/ft³ of pea gravel, in m²/m³ by the definition of the foot.</summary>
    [Fact]
    public void Pea_gravel_in_feet()
    {
        Assert.Equal(85 / 0.3048, Medium("pea gravel").Surface.Low, 0.5);
        Assert.InRange(90 / 0.3048, Medium("pea gravel").Surface.Low, Medium("pea gravel").Surface.High);
    }

    /// <summary>Published weights of river gravel, 95 to 105 lb/ft³ dry.</summary>
    [Fact]
    public void River_gravel_weighs_what_builders_reckon_with()
    {
        var density = Medium("river gravel").Density;
        Assert.InRange(95 * 0.45359237 / 0.028316846592, density.Low, density.High);
        Assert.InRange(105 * 0.45359237 / 0.028316846592, density.Low, density.High);
    }

    /// <summary>
    /// Chicago and Denver typical years: the annual means and sums computed from all 8760 hours (9.9880 °C, 1 406 646 Wh/m²;
    /// 10.8753 °C, 1 670 220 Wh/m²) against the twelve months of the row weighted by their days.
    /// </summary>
    [Theory]
    [InlineData("Chicago", 9.9880, 1406646)]
    [InlineData("Denver", 10.8753, 1670220)]
    public void Months_add_up_to_the_year_of_the_file(string place, double mean, double wattHours)
    {
        int[] days = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
        var climate = Climate(place);
        Assert.Equal(mean, days.Select((d, m) => d * climate.Air[m].Likely).Sum() / 365, 0.05);
        var sum = days.Select((d, m) => d * climate.Radiation[m].Likely * 86400 / 3600).Sum();
        Assert.Equal(1, sum / wattHours, 0.005);
    }

    /// <summary>WMO normals, Nairobi: July 10.1 and 20.6 °C. Rows in kWh: Phoenix in June, 8.4 kWh is 30.24 MJ.</summary>
    [Fact]
    public void Means_and_conversions_of_climates()
    {
        Assert.Equal((10.1 + 20.6) / 2, Climate("Nairobi").Air[6].Likely, 0.01);
        Assert.Equal(30.24, Units.MegajoulePerSquareMetreDay.FromSi(Climate("Phoenix").Radiation[5].Likely), 1e-9);
        Assert.Equal(22 * 0.9, Units.MegajoulePerSquareMetreDay.FromSi(Climate("Nairobi").Radiation[0].Low), 1e-9);
    }
}
