using Runnel.Engine.Assess;
using Runnel.Engine.Quantities;

namespace Runnel.Catalogue.Tests;

public sealed class PlausibleTests
{
    private static readonly Shelf Shelf = Shelves.Standard;

    private static readonly int[] Days = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

    private static IEnumerable<Estimate> All() =>
    [
        .. Shelf.Species.SelectMany(s => new[]
        {
            s.Survives, s.Thrives, s.StopsFeedingBelow, s.Oxygen, s.Ammonia, s.Protein, s.Ration, s.FeedConversion,
        }).OfType<Estimate>(),
        .. Shelf.Crops.SelectMany(c => new[] { c.DailyLight, c.Thrives, c.Survives, c.Spacing, c.DaysInBed, c.LongestDay }).OfType<Estimate>(),
        .. Shelf.Media.SelectMany(m => new[] { m.Surface, m.Voids, m.Density }),
        .. Shelf.Climates.SelectMany(c => c.Air.Concat(c.Radiation)),
    ];

    /// <summary>A source is a work with a year or a body that publishes, or says that it is from memory or mere practice.</summary>
    [Fact]
    public void Every_estimate_says_where_it_comes_from()
    {
        string[] marks =
        [
            "from memory: ", "common practice, no source: ", "FAO EcoCrop database", "SRAC ", "Queensland Government", "AgriFutures",
            "FAO cultured species sheet", "North Central Regional", "Wheaton, University of Maryland", "Universiti Malaysia Sabah",
            "published ", "hobby sources say", "feed of ", "span of ", "WMO normals", "monthly means computed from a public typical-year",
            "sources differ: ", "two entries in the FAO EcoCrop database", "12 leafy greens",
        ];
        foreach (var e in All())
        {
            Assert.Equal(OriginKind.Catalogue, e.From.Kind);
            var source = Assert.IsType<string>(e.From.Source);
            Assert.True(
                marks.Any(m => source.StartsWith(m, StringComparison.Ordinal)) || System.Text.RegularExpressions.Regex.IsMatch(source, @"\b(19|20)\d\d\b"),
                $"{e.From.Path}: \"{source}\"");
        }
    }

    /// <summary>"from memory" inside a sentence is easy to miss, so a row that rests on memory alone must say so first.</summary>
    [Fact]
    public void What_is_from_memory_says_so_first_or_says_what_else_was_read()
    {
        foreach (var e in All().Where(e => e.From.Source!.Contains("from memory", StringComparison.Ordinal)))
        {
            var source = e.From.Source!;
            Assert.True(
                source.StartsWith("from memory: ", StringComparison.Ordinal)
                || System.Text.RegularExpressions.Regex.IsMatch(source[..source.IndexOf("from memory", StringComparison.Ordinal)], @"\d"),
                $"{e.From.Path}: \"{source}\"");
        }
    }

    [Fact]
    public void Addresses_are_unique_and_labels_are_sentences()
    {
        var paths = All().Select(e => e.From.Path).ToList();
        Assert.Equal(paths.Count, paths.Distinct(StringComparer.Ordinal).Count());
        Assert.Contains("catalogue:species/Nile tilapia/survives", paths);
        Assert.Equal("Water temperature Nile tilapia survives", Shelf.Species.Single(s => s.Name == "Nile tilapia").Survives.From.Label);
        Assert.All(All(), e => Assert.True(char.IsUpper(e.From.Label[0]) && e.Low <= e.Likely && e.Likely <= e.High, e.From.Path));
    }

    [Fact]
    public void Fish_thrive_within_what_they_survive_and_feed_there()
    {
        foreach (var s in Shelf.Species)
        {
            Assert.True(s.Survives.Low <= s.Thrives.Low && s.Thrives.High <= s.Survives.High, s.Name);
            Assert.True(s.StopsFeedingBelow is null || (s.StopsFeedingBelow.High < s.Thrives.Low && s.StopsFeedingBelow.Low >= s.Survives.Low), s.Name);
            // A fish holds less protein than its feed, and cannot gain more dry mass than it eats.
            Assert.InRange(s.Protein.Likely, 0.25, 0.50);
            Assert.InRange(s.FeedConversion.Low, 0.9, 2.5);
            Assert.True(s.Ration.Likely < 0.05 / 86400, s.Name);
        }
    }

    /// <summary>Neutral wording at the point of choosing a fish: ask the office, never release.</summary>
    [Fact]
    public void Every_fish_carries_the_caution_on_permits_and_release()
    {
        foreach (var s in Shelf.Species)
        {
            var caution = Assert.IsType<string>(s.Caution);
            Assert.Contains("office", caution, StringComparison.Ordinal);
            Assert.Contains("before you buy", caution, StringComparison.Ordinal);
            Assert.True(
                caution.Contains("Never release", StringComparison.Ordinal) || caution.Contains("never released", StringComparison.Ordinal), s.Name);
            Assert.DoesNotContain("illegal", caution, StringComparison.OrdinalIgnoreCase);
            Assert.DoesNotContain("legal in", caution, StringComparison.OrdinalIgnoreCase);
        }
    }

    [Fact]
    public void Crops_thrive_within_what_they_survive_and_have_room()
    {
        foreach (var c in Shelf.Crops)
        {
            Assert.True(c.Survives.Low <= c.Thrives.Low && c.Thrives.High <= c.Survives.High, c.Name);
            Assert.True(c.Spacing.Low > 0 && c.DaysInBed.Low > 0 && c.DailyLight.Low > 0, c.Name);
            Assert.True(c.LongestDay is null || c.LongestDay.High <= 1, c.Name);
        }
        // The trade's grouping: fruit is spaced wider and wants more light than leaf, on the whole.
        double Mean(bool fruiting, Func<Engine.Crops.CropKind, double> of) => Shelf.Crops.Where(c => c.Fruiting == fruiting).Average(of);
        Assert.True(Mean(true, c => c.DailyLight.Likely) > Mean(false, c => c.DailyLight.Likely));
        Assert.True(Mean(true, c => c.Spacing.Likely) < Mean(false, c => c.Spacing.Likely));
    }

    /// <summary>
    /// Bulk density = grain density × (1 − voids). Grain densities of solid rock and plastic are textbook values; porous grains
    /// (clay, lava, pumice) may be anything up to rock.
    /// </summary>
    [Fact]
    public void Media_weigh_what_their_voids_leave()
    {
        foreach (var m in Shelf.Media)
        {
            Assert.InRange(m.Voids.Low, 0.2, 0.95);
            Assert.InRange(m.Voids.High, 0.2, 0.95);
            var grainLow = m.Density.Low / (1 - m.Voids.Low);
            var grainHigh = m.Density.High / (1 - m.Voids.High);
            Assert.InRange(grainLow, 400, 2900);
            Assert.InRange(grainHigh, 400, 3250);
            if (m.Name.Contains("gravel", StringComparison.Ordinal) && m.Name != "lava gravel")
            {
                Assert.InRange(m.Density.Likely / (1 - m.Voids.Likely), 2400, 2800);
            }
            Assert.False(string.IsNullOrWhiteSpace(m.Caution));
        }
        foreach (var stone in Shelf.Media.Where(m => m.Name.Contains("gravel", StringComparison.Ordinal) || m.Name.Contains("granite", StringComparison.Ordinal)))
        {
            Assert.Contains("vinegar", stone.Caution!, StringComparison.OrdinalIgnoreCase);
        }
    }

    /// <summary>Extraterrestrial radiation, FAO Irrigation and Drainage Paper 56 (Allen et al. 1998), Eq. 21 with Eqs. 23 to 25, MJ/m²/d.</summary>
    private static double Extraterrestrial(double latitude, int day)
    {
        var phi = latitude * Math.PI / 180;
        var distance = 1 + 0.033 * Math.Cos(2 * Math.PI * day / 365);
        var delta = 0.409 * Math.Sin(2 * Math.PI * day / 365 - 1.39);
        var sunset = Math.Acos(Math.Clamp(-Math.Tan(phi) * Math.Tan(delta), -1, 1));
        return 24 * 60 / Math.PI * 0.0820 * distance
            * (sunset * Math.Sin(phi) * Math.Sin(delta) + Math.Cos(phi) * Math.Cos(delta) * Math.Sin(sunset));
    }

    private static double ExtraterrestrialOfMonth(double latitude, int month)
    {
        var first = Days.Take(month).Sum() + 1;
        return Enumerable.Range(first, Days[month]).Average(day => Extraterrestrial(latitude, day));
    }

    /// <summary>Published: FAO-56 worked example 8 (3 September, 20° S, 32.2) and Annex 2 Table 2.6 (34° S, January, June, December).</summary>
    [Theory]
    [InlineData(-20, 246, 32.2, 0.1)]
    [InlineData(-34, 15, 43.4, 0.2)]
    [InlineData(-34, 166, 16.2, 0.2)]
    [InlineData(-34, 349, 44.3, 0.2)]
    [InlineData(0, 15, 36.2, 0.2)]
    public void The_sun_of_these_tests_is_that_of_FAO_56(double latitude, int day, double published, double tolerance) =>
        Assert.Equal(published, Extraterrestrial(latitude, day), tolerance);

    /// <summary>
    /// No month may get more than clear sky lets through (FAO-56 Eq. 37: 0.75 + 2e-5 z of the extraterrestrial; 0.80 covers 1700 m and
    /// clean dry air) nor less than overcast does (Eq. 35 with no sunshine: 0.25; 0.15 leaves room for thick winter cloud).
    /// </summary>
    [Fact]
    public void No_climate_has_more_sun_than_reaches_its_latitude()
    {
        foreach (var c in Shelf.Climates)
        {
            for (var m = 0; m < 12; m++)
            {
                var mega = c.Radiation[m].High * 86400 / 1e6;
                var top = ExtraterrestrialOfMonth(c.Latitude, m);
                Assert.True(mega <= 0.80 * top + 0.05, $"{c.Name}, month {m + 1}: {mega:F1} of {top:F1}");
                Assert.True(top < 3 || mega >= 0.15 * top, $"{c.Name}, month {m + 1}: only {mega:F1} of {top:F1}");
            }
        }
    }

    [Fact]
    public void Summer_is_warmer_than_winter_on_its_own_side_of_the_equator()
    {
        foreach (var c in Shelf.Climates.Where(c => Math.Abs(c.Latitude) > 23.4))
        {
            var north = c.Air[6].Likely + c.Air[7].Likely - c.Air[0].Likely - c.Air[1].Likely;
            Assert.True(c.Latitude > 0 ? north > 0 : north < 0, c.Name);
        }
    }

    [Fact]
    public void The_names_of_climates_tell_their_latitude()
    {
        foreach (var c in Shelf.Climates)
        {
            var words = c.Name.Split(' ');
            Assert.Equal(Math.Abs(c.Latitude), double.Parse(words[^2], System.Globalization.CultureInfo.InvariantCulture), 0.55);
            Assert.Equal(c.Latitude > 0 ? "N" : "S", words[^1]);
            Assert.NotEmpty(c.AlsoCalled);
        }
    }

    [Fact]
    public void Substitutes_say_what_is_given_up_and_where_it_is_said()
    {
        foreach (var s in Shelf.Substitutes)
        {
            Assert.False(string.IsNullOrWhiteSpace(s.GivesUp));
            Assert.StartsWith("common practice, no source", s.Source, StringComparison.Ordinal);
            Assert.NotEqual(s.Of, s.Use);
        }
    }
}
