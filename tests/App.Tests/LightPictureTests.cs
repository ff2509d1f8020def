using System.Xml.Linq;
using CsCheck;
using Runnel.App.Light;
using Runnel.Engine.Light;

namespace Runnel.App.Tests;

/// <summary>A bed's light in characters and as SVG.</summary>
public sealed class LightPictureTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    private static (LightMap Map, IReadOnlyList<LampSpot> Lamps) Four(double photons = 40)
    {
        var bed = new BedOutline(1.2, 0.6);
        var lamps = LampPlacement.Even(bed, 2);
        return (LightMap.Of(new(bed, lamps, 0.3, new SpotEmitter(), photons)), lamps);
    }

    [Fact]
    public void In_characters_the_middle_is_bright_and_the_edge_dark()
    {
        var (map, _) = Four();
        var lines = LightPicture.Text(map, "Two lamps", new Style()).Split('\n');
        Assert.Equal("Two lamps", lines[0]);
        var rows = lines.Where(l => l.StartsWith('|')).ToList();
        Assert.Equal(12, rows.Count);
        Assert.All(rows, r => Assert.Equal(50, r.Length));
        Assert.Contains(rows[0][1], " .");
        Assert.Equal('@', rows[6][13]);
        Assert.Equal(rows[0], rows[^1]);
        Assert.All(rows, r => Assert.Equal(r, new string([.. r.Reverse()])));
        Assert.Contains("µmol/m²/s", string.Join('\n', lines));
        Assert.StartsWith("Mean ", lines[^2]);
    }

    [Fact]
    public void As_svg_it_is_well_formed_named_and_told_in_words()
    {
        var (map, lamps) = Four();
        var svg = XElement.Parse(LightPicture.Svg(map, "Lamps <over> \"bed\" & co", new Style(), "bed-one", lamps));
        Assert.Equal("img", svg.Attribute("role")!.Value);
        Assert.Equal("bed-one-title bed-one-desc", svg.Attribute("aria-labelledby")!.Value);
        Assert.Equal("Lamps <over> \"bed\" & co", svg.Element(Svg + "title")!.Value);
        Assert.Equal(LightPicture.Summary(map, new Style()), svg.Element(Svg + "desc")!.Value);
        Assert.Equal(2, svg.Elements(Svg + "circle").Count());
        Assert.Contains(svg.Elements(Svg + "text"), t => t.Value == "µmol/m²/s");
        // The cells cover the bed once: their areas add up to it, but for the hair between them.
        var cells = svg.Elements(Svg + "rect").Where(r => r.Attribute("stroke") is null).ToList();
        var area = cells.Sum(r => (double)r.Attribute("width")! * (double)r.Attribute("height")!);
        Assert.Equal(640 * 320, area, 0.05 * 640 * 320);
    }

    [Fact]
    public void A_name_that_is_none_is_refused() =>
        Assert.Throws<ArgumentException>(() => LightPicture.Svg(Four().Map, "x", new Style(), "a\"b"));

    [Theory]
    [InlineData(0)]
    [InlineData(1e-3)]
    [InlineData(1e5)]
    public void Any_strength_has_a_picture(double photons)
    {
        var (map, _) = Four(photons);
        Assert.NotEmpty(LightPicture.Text(map, "x", new Style()));
        Assert.Equal("svg", XElement.Parse(LightPicture.Svg(map, "x", new Style())).Name.LocalName);
    }

    [Fact]
    public void Bands_are_round_few_and_hold_every_value() =>
        Gen.Select(Gen.Double[0, 2000], Gen.Double[0, 2000]).Sample((a, b) =>
        {
            var (least, greatest) = (Math.Min(a, b), Math.Max(a, b));
            var bands = LightBands.Of(least, greatest);
            Assert.InRange(bands.Count, 1, 11);
            foreach (var value in new[] { least, greatest, (least + greatest) / 2 })
            {
                var band = bands.At(value);
                Assert.True(bands.From(band) <= value + 1e-6 * bands.Step && value < bands.From(band + 1) + 1e-6 * bands.Step);
            }
        });
}
