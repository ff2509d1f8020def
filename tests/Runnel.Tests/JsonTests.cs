using System.Text.Json;

namespace Runnel.Host.Tests;

/// <summary>The documents for other programs.</summary>
public sealed class JsonTests
{
    private const string Laundry = "examples/laundry-room.yaml";
    private const string LeanTo = "examples/lean-to-greenhouse.yaml";

    private static readonly string[] CostIds =
    [
        "build.parts", "build.delivery", "build.spare", "build.total", "build.own-work", "build.total.with-work",
        "run.year.total", "run.month.total", "run.year.lamps", "run.month.lamps", "run.year.heater", "run.year.feed", "run.year.water", "run.year.wear",
        "energy.year.lamps", "energy.year.pumps", "energy.year.air", "energy.year.heater", "energy.year.total", "energy.month.total",
        "build.total.under-glass", "run.year.total.under-glass", "work.year",
    ];

    private static readonly string[] UsUnits = ["ft", "in", "ft²", "ft³", "yd³", "gal", "gal/h", "gal/min", "gal/d", "lb", "oz", "oz/d", "lb/ft²", "lb/gal", "°F", "°F difference", "psi"];

    private static readonly string[] MetricUnits = ["m", "cm", "mm", "m²", "m³", "L", "L/h", "L/d", "kg", "g", "g/d", "kg/m²", "kg/m³", "°C", "K", "kPa"];

    [Theory]
    [InlineData("check")]
    [InlineData("cost")]
    [InlineData("balance")]
    public async Task One_document_with_figures_and_findings(string command)
    {
        var ran = await Ran.Here(command, Laundry, "--json");

        Assert.Equal(0, ran.Code);
        Assert.Empty(ran.Error);
        var document = ran.Json;
        Assert.Equal(command, document.GetProperty("report").GetString());
        Assert.All(document.GetProperty("figures").EnumerateArray(), f =>
        {
            Assert.NotEmpty(f.GetProperty("id").GetString()!);
            Assert.NotEmpty(f.GetProperty("name").GetString()!);
            Assert.NotEmpty(f.GetProperty("working").GetString()!);
            Assert.NotNull(f.GetProperty("unit").GetString());
            var (value, low, high) = (f.GetProperty("value").GetDouble(), f.GetProperty("low").GetDouble(), f.GetProperty("high").GetDouble());
            Assert.True(low <= value && value <= high, f.ToString());
            Assert.Equal(JsonValueKind.Array, f.GetProperty("sources").ValueKind);
        });
        Assert.NotEmpty(document.GetProperty("findings").EnumerateArray());
        Assert.All(document.GetProperty("findings").EnumerateArray(), f =>
        {
            Assert.All(new[] { "code", "where", "saw", "wanted", "do" }, name => Assert.NotEmpty(f.GetProperty(name).GetString()!));
            Assert.Contains(f.GetProperty("severity").GetString(), new[] { "grave", "warning", "note" });
        });
    }

    [Fact]
    public async Task Ids_of_the_bill_are_there()
    {
        var figures = Figures((await Ran.Here("cost", Laundry, "--json")).Json);

        Assert.All(CostIds, id => Assert.True(figures.ContainsKey(id), id));
    }

    /// <summary>Derived: the bill must close, whichever way it is added up.</summary>
    [Theory]
    [InlineData(Laundry)]
    [InlineData(LeanTo)]
    public async Task The_bill_closes(string plan)
    {
        var document = (await Ran.Here("cost", plan, "--json")).Json;
        var figures = Figures(document);
        var months = document.GetProperty("months").EnumerateArray().ToList();

        Assert.Equal(Enumerable.Range(1, 12), months.Select(m => m.GetProperty("month").GetInt32()));
        Close(figures["run.year.total"], months.Sum(m => m.GetProperty("total").GetDouble()));
        Close(figures["energy.year.total"], months.Sum(m => m.GetProperty("energy").GetDouble()));
        Assert.All(months, m =>
        {
            var lines = m.GetProperty("lines").EnumerateArray().ToList();
            Close(m.GetProperty("total").GetDouble(), lines.Sum(l => Number(l, "cost")));
            Close(m.GetProperty("energy").GetDouble(), lines.Sum(l => Number(l, "energy")));
        });
        Close(figures["build.parts"], document.GetProperty("parts").EnumerateArray().Sum(p => Number(p, "cost")));
        Close(1, document.GetProperty("running").EnumerateArray().Sum(r => Number(r, "share")));
        Close(figures["run.year.total"] / 12, figures["run.month.total"]);
    }

    [Fact]
    public async Task A_part_without_a_price_is_named_and_the_total_is_called_incomplete()
    {
        var document = (await Ran.Here("cost", LeanTo, "--json")).Json;

        Assert.False(document.GetProperty("buildComplete").GetBoolean());
        var unpriced = Assert.Single(document.GetProperty("unpriced").EnumerateArray()).GetString();
        var part = document.GetProperty("parts").EnumerateArray().Single(p => p.GetProperty("part").GetString() == unpriced);
        Assert.False(part.TryGetProperty("cost", out _));
    }

    [Theory]
    [InlineData(Laundry, "us")]
    [InlineData(LeanTo, "us")]
    [InlineData(Laundry, "metric")]
    [InlineData(LeanTo, "metric")]
    public async Task Units_are_the_ones_asked_for(string plan, string units)
    {
        var document = (await Ran.Here("cost", plan, "--json", "--units", units)).Json;
        var wrong = units == "us" ? MetricUnits : UsUnits;

        Assert.Equal(units, document.GetProperty("units").GetString());
        Assert.All(document.GetProperty("figures").EnumerateArray(), f => Assert.DoesNotContain(f.GetProperty("unit").GetString(), wrong));
    }

    /// <summary>Derived: the same plan in other units is the same amount; 1 US gallon is 3.785411784 L by definition (NIST SP 811).</summary>
    [Fact]
    public async Task Units_change_the_writing_only()
    {
        var metric = Figures((await Ran.Here("cost", Laundry, "--json", "--units", "metric")).Json);
        var us = Figures((await Ran.Here("cost", Laundry, "--json", "--units", "us")).Json);

        Close(metric["run.year.total"], us["run.year.total"]);
        Close(metric["water.total"], us["water.total"] * 3.785411784);
    }

    [Fact]
    public async Task Working_is_a_tree_down_to_what_was_given()
    {
        var tree = (await Ran.Here("cost", Laundry, "--json", "--working", "run.month.lamps")).Json;
        var leaves = Leaves(tree).Select(l => l.GetProperty("sentence").GetString()!).ToList();

        Assert.Equal("run.month.lamps", tree.GetProperty("id").GetString());
        Assert.Contains(leaves, l => l.StartsWith("48 W", StringComparison.Ordinal));
        Assert.Contains(leaves, l => l.StartsWith("16 h/d", StringComparison.Ordinal));
        Assert.Contains(leaves, l => l.StartsWith("0.31 EUR/kWh", StringComparison.Ordinal));

        static IEnumerable<JsonElement> Leaves(JsonElement node) =>
            node.GetProperty("steps").GetArrayLength() == 0 ? [node] : node.GetProperty("steps").EnumerateArray().SelectMany(Leaves);
    }

    [Fact]
    public async Task Assumptions_carry_their_source()
    {
        var assumed = (await Ran.Here("check", Laundry, "--json")).Json.GetProperty("assumed").EnumerateArray().ToList();

        Assert.Contains(assumed, a => a.GetProperty("path").GetString() == "feed/ratio/leafy");
        Assert.All(assumed, a => Assert.NotEmpty(a.GetProperty("name").GetString()!));
    }

    private static Dictionary<string, double> Figures(JsonElement document) =>
        document.GetProperty("figures").EnumerateArray().ToDictionary(f => f.GetProperty("id").GetString()!, f => f.GetProperty("value").GetDouble());

    private static double Number(JsonElement element, string name) => element.TryGetProperty(name, out var value) ? value.GetDouble() : 0;

    private static void Close(double expected, double actual) => Assert.Equal(expected, actual, 1e-9 * Math.Max(1, Math.Abs(expected)));
}
