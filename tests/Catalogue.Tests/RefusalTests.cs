namespace Runnel.Catalogue.Tests;

/// <summary>The loader takes no row that is not whole: each fault is made in one good row and must be named with file and row.</summary>
public sealed class RefusalTests
{
    private const string Medium = """
        - name: test stone
          also called: [pebble]
          surface: { low: 100, high: 200, source: "a" }
          voids: { value: 40, source: "b" }
          density: { value: 1500, source: "c" }
          caution: "d"

        """;

    private const string Fish = """
        - name: test fish
          scientific: Piscis piscis
          food: yes
          survives: { low: 10, high: 30, source: "a" }
          thrives: { low: 20, high: 25, source: "a" }
          oxygen: { value: 4, source: "a" }
          ammonia: { value: 1, source: "a" }
          protein: { value: 30, source: "a" }
          ration: { low: 1, likely: 1.5, high: 2, source: "a" }
          feed conversion: { value: 1.5, source: "a" }
          growth: { value: 0.1, source: "a" }
          caution: "a"
        """;

    private const string Crop = """
        - name: test crop
          fruiting: no
          daily light: { low: 10, high: 20, source: "a" }
          thrives: { low: 15, high: 20, source: "a" }
          survives: { low: 5, high: 30, source: "a" }
          spacing: { value: 20, source: "a" }
          days in bed: { value: 30, source: "a" }
          picked: whole
          dry matter: { value: 5, source: "a" }
          nitrogen: { value: 4, source: "a" }
          dry mass when picked: { value: 0.17, source: "a" }
          stays: { value: 70, source: "a" }
          leaf area: { value: 40, source: "a" }
        """;

    private const string Climate = """
        - name: test climate
          latitude: 10
          source: "a"
          air: { unit: °C, months: [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12] }
          radiation: { unit: kWh/m²/d, months: [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12], within percent: 10 }
        """;

    [Fact]
    public void The_rows_used_here_are_good()
    {
        Assert.Equal(0.4, Assert.Single(Loader.Media("m.yaml", Medium)).Voids.Likely, 1e-12);
        Assert.Null(Assert.Single(Loader.Species("f.yaml", Fish)).StopsFeedingBelow);
        Assert.Equal(0.05, Assert.Single(Loader.Crops("c.yaml", Crop)).DryMatter.Likely, 1e-12);
        Assert.Equal(12, Assert.Single(Loader.Climates("c.yaml", Climate)).Air.Count);
    }

    [Theory]
    [InlineData("low: 100", "low: 300", "low under its high")]
    [InlineData("low: 100", "low: 200", "low under its high")]
    [InlineData("low: 100,", "", "one value, or a low")]
    [InlineData("low: 100, high: 200", "value: 150, high: 200", "one value, or a low")]
    [InlineData("low: 100, high: 200", "low: 100, likely: 250, high: 200", "likely between")]
    [InlineData("low: 100", "low: ten", "not a number")]
    [InlineData("low: 100", "low: NaN", "not a number")]
    [InlineData("low: 100", "low: 1", "outside")]
    [InlineData("value: 40", "value: 0.4", "outside")]
    [InlineData(", source: \"a\"", "", "surface has no source")]
    [InlineData("source: \"a\"", "source: \"\"", "empty")]
    [InlineData("source: \"a\"", "sauce: \"a\"", "nothing reads, \"sauce\"")]
    [InlineData("density:", "weight:", "has no density")]
    [InlineData("  caution", "  colour: grey\n  caution", "nothing reads, \"colour\"")]
    [InlineData("  caution", "  voids: { value: 41, source: x }\n  caution", "uplicate")]
    [InlineData("[pebble]", "pebble", "not a list")]
    [InlineData("[pebble]", "[Test stone]", "already a name")]
    [InlineData("{ value: 40, source: \"b\" }", "40", "not a value with its source")]
    public void A_faulty_row_is_refused_by_name(string good, string bad, string said)
    {
        var text = Medium.Replace(good, bad);
        Assert.NotEqual(Medium, text);
        var e = Assert.Throws<CatalogueException>(() => Loader.Media("m.yaml", text));
        Assert.Contains("m.yaml", e.Message, StringComparison.Ordinal);
        Assert.Contains(said, e.Message, StringComparison.Ordinal);
        if (!said.Contains("uplicate", StringComparison.Ordinal))
        {
            Assert.Contains("test stone", e.Message, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("low: 20, high: 25", "low: 9, high: 25", "survives only")]
    [InlineData("low: 20, high: 25", "low: 20, high: 31", "survives only")]
    [InlineData("food: yes", "food: perhaps", "neither yes nor no")]
    [InlineData("  caution: \"a\"", "", "has no caution")]
    [InlineData("growth: { value: 0.1", "growth: { value: 10", "outside")]
    [InlineData("name: test fish", "nam: test fish", "row 1")]
    public void A_faulty_fish_is_refused(string good, string bad, string said)
    {
        var text = Fish.Replace(good, bad);
        Assert.NotEqual(Fish, text);
        Assert.Contains(said, Assert.Throws<CatalogueException>(() => Loader.Species("f.yaml", text)).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("picked: whole", "picked: often", "none of whole, cut and fruit")]
    [InlineData("picked: whole", "picked: fruit", "needs a fruit share")]
    [InlineData("  leaf area", "  fruit share: { value: 50, source: x }\n  leaf area", "needs a fruit share")]
    [InlineData("dry matter: { value: 5", "dry matter: { value: 0.05", "outside")]
    [InlineData("nitrogen: { value: 4", "nitrogen: { value: 40", "outside")]
    [InlineData("dry mass when picked: { value: 0.17", "dry mass when picked: { value: 170", "outside")]
    [InlineData("  stays: { value: 70, source: \"a\" }\n", "", "has no stays")]
    public void A_faulty_crop_is_refused(string good, string bad, string said)
    {
        var text = Crop.Replace(good, bad);
        Assert.NotEqual(Crop, text);
        Assert.Contains(said, Assert.Throws<CatalogueException>(() => Loader.Crops("c.yaml", text)).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("11, 12] }", "11] }", "twelve months")]
    [InlineData("11, 12] }", "11, 12, 13] }", "twelve months")]
    [InlineData("unit: °C", "unit: °F", "one of the units °C")]
    [InlineData("unit: kWh/m²/d, ", "", "one of the units MJ")]
    [InlineData("latitude: 10", "latitude: 100", "outside")]
    [InlineData("  latitude: 10", "", "has no latitude")]
    [InlineData("within percent: 10", "within percent: 90", "outside")]
    public void A_faulty_climate_is_refused(string good, string bad, string said)
    {
        var text = Climate.Replace(good, bad);
        Assert.NotEqual(Climate, text);
        Assert.Contains(said, Assert.Throws<CatalogueException>(() => Loader.Climates("c.yaml", text)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_rows_of_one_name_are_refused() =>
        Assert.Contains("already a name of test stone",
            Assert.Throws<CatalogueException>(() => Loader.Media("m.yaml", Medium + Medium.Replace("test stone", "TEST stone"))).Message, StringComparison.Ordinal);

    [Theory]
    [InlineData("")]
    [InlineData("name: one row, no list")]
    [InlineData("- [1, 2]")]
    [InlineData("- name: {")]
    public void A_file_that_is_no_list_of_rows_is_refused(string text) =>
        Assert.Contains("m.yaml", Assert.Throws<CatalogueException>(() => Loader.Media("m.yaml", text)).Message, StringComparison.Ordinal);
}
