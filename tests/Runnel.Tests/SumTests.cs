using Runnel.Engine.Assess;

namespace Runnel.Host.Tests;

/// <summary>Quick sums against published values, typed as a grower types them.</summary>
public sealed class SumTests
{
    /// <summary>Published: each row names its source and, where it is wider than the last printed digit, the reason of its tolerance.</summary>
    [Theory]
    // Benson and Krause 1984, as tabulated in Standard Methods 4500-O: 9.092 mg/L at 20 °C, 8.263 at 25 °C, 101.325 kPa, fresh water.
    [InlineData("oxygen-saturation temperature=20C pressure=101.325kPa", 9.092, 0.001)]
    [InlineData("oxygen-saturation temperature=77F", 8.263, 0.001)]
    [InlineData("oxygen-saturation temp=293.15 K pressure=1013.25 mbar salinity=0", 9.092, 0.001)]
    // Emerson et al. 1975, table of the un-ionised share: 20 °C, pH 7.0: 0.396 %, pH 8.0: 3.82 %; from memory of the printed table.
    // Within half a percent of the value: the table was computed with T = t + 273.2.
    [InlineData("un-ionised-ammonia-share temperature=20 ph=7", 0.396, 0.002)]
    [InlineData("un-ionised-ammonia-share temperature=20 C ph=8", 3.82, 0.019)]
    // ISO 2533:1975, table: 89.874 kPa at 1000 m of geopotential height.
    [InlineData("pressure-at-elevation elevation=1000", 89.874, 0.005)]
    [InlineData("pressure-at-elevation elevation=3280.84ft", 89.874, 0.005)]
    // FAO Technical Paper 589 (2014), section 8.1: 40 to 50 g a day for each square metre of leafy vegetables.
    [InlineData("feed-from-planted-area area=4m2 ratio=50", 200, 1e-9)]
    public async Task Sums_give_published_values(string typed, double expected, double tolerance)
    {
        var ran = await Ran.Here(["sum", .. typed.Split(' '), "--json"]);

        Assert.Equal(0, ran.Code);
        var figure = Assert.Single(ran.Json.GetProperty("figures").EnumerateArray());
        Assert.Equal(expected, figure.GetProperty("value").GetDouble(), tolerance);
    }

    [Fact]
    public async Task A_sum_shows_what_it_rests_on()
    {
        var ran = await Ran.Here("sum", "oxygen-saturation", "temperature=20C", "pressure=101.3kPa");

        Assert.StartsWith("Dissolved oxygen at saturation: 9.09 mg/L", ran.Out, StringComparison.Ordinal);
        foreach (var word in new[] { "equation", "source", "error", "how sure", "not for", "holds from", "Benson and Krause 1984", "Salinity was assumed" })
        {
            Assert.Contains(word, ran.Out, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task The_example_of_every_rule_can_be_typed()
    {
        foreach (var formula in Formulary.All)
        {
            var described = await Ran.Here("sum", formula.Id);
            Assert.All(described.Lines, l => Assert.True(l.Length <= 80, l));
            var example = string.Join(' ', described.Lines.SkipWhile(l => !l.StartsWith("Next: ", StringComparison.Ordinal))
                .TakeWhile(l => !l.StartsWith("      ", StringComparison.Ordinal)).Select(l => l.Trim()))["Next: runnel ".Length..];
            var ran = await Ran.Here(example.Split(' '));
            Assert.True(ran.Code == 0, $"{example}: {ran.Error}");
            Assert.All(ran.Lines, l => Assert.True(l.Length <= 80, l));
        }
    }

    [Fact]
    public async Task The_list_names_every_rule_once()
    {
        var listed = (await Ran.Here("sum", "--list", "--json")).Json.GetProperty("formulas").EnumerateArray().ToList();

        Assert.Equal(Formulary.All.Select(f => f.Id), listed.Select(f => f.GetProperty("id").GetString()));
        Assert.All(listed, f =>
        {
            Assert.NotEmpty(f.GetProperty("equation").GetString()!);
            Assert.NotEmpty(f.GetProperty("sources").EnumerateArray());
            Assert.InRange(f.GetProperty("confidence").GetInt32(), 1, 4);
            Assert.All(f.GetProperty("inputs").EnumerateArray(), i => Assert.All(new[] { "id", "label", "unit" }, n => Assert.NotNull(i.GetProperty(n).GetString())));
        });
        var page = await Ran.Here("sum");
        Assert.All(Formulary.All, f => Assert.Contains($"  {f.Id} ", page.Out, StringComparison.Ordinal));
        Assert.All(page.Lines, l => Assert.True(l.Length <= 80, l));
    }
}
