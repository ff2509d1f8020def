using Runnel.Engine.Plan;

namespace Runnel.Files.Tests;

/// <summary>How a vessel empties, as growers write it.</summary>
public class DrainTests
{
    [Theory]
    [InlineData("siphon, 32 mm standpipe, 22 cm high", DrainKind.Siphon, 0.032, 0.22)]
    [InlineData("standpipe, 50 mm, 20 cm high", DrainKind.Standpipe, 0.05, 0.20)]
    [InlineData("2 in standpipe, 8 in high", DrainKind.Standpipe, 0.0508, 0.2032)]
    [InlineData("Siphon", DrainKind.Siphon, null, null)]
    [InlineData("standpipe with holes, 180 mm high", DrainKind.StandpipeWithHoles, null, 0.18)]
    [InlineData("22 high, siphon", DrainKind.Siphon, null, 0.22)]
    [InlineData("none", DrainKind.None, null, null)]
    public void A_drain_is_read(string text, DrainKind kind, double? bore, double? height)
    {
        var drain = Read(text).Plan!.Vessels["bed"].Drain!;

        Assert.Equal((text, kind), (drain.Text, drain.Kind));
        Assert.Equal(bore, drain.Bore?.Likely);
        Assert.Equal(height, drain.Height is { } h ? Math.Round(h.Likely, 9) : null);
    }

    [Theory]
    [InlineData("siphon, 20 to 24 cm high, likely 21 cm")]
    [InlineData("siphon, 20 to 24 cm, likely 21 cm high")]
    public void Its_height_may_be_a_range(string text)
    {
        var height = Read(text).Plan!.Vessels["bed"].Drain!.Height!;

        Assert.Equal((0.20, 0.21, 0.24), (Math.Round(height.Low, 9), Math.Round(height.Likely, 9), Math.Round(height.High, 9)));
        Assert.Equal("vessels/bed/drain#height", height.From.Path);
    }

    [Theory]
    [InlineData("sifon, 22 cm high", "one of these words", "siphon")]
    [InlineData("22 cm high", "what kind", "siphon")]
    [InlineData("siphon, 22 L high", "a volume", "")]
    [InlineData("siphon, 22 cm high, 23 cm high", "second height", "siphon")]
    [InlineData("siphon, standpipe", "second kind", "siphon")]
    [InlineData("none, 22 cm high", "neither", "none alone")]
    [InlineData("siphon, 22 cm hihg", "hihg", "")]
    [InlineData("siphon, 42 cm high", "above the rim", "check")]
    public void What_is_no_drain_is_said_with_a_mend(string text, string problem, string mend)
    {
        var error = Assert.Single(Read(text).Errors);

        Assert.Equal("vessels / bed / drain", error.Where);
        Assert.Contains(problem, error.Problem, StringComparison.Ordinal);
        Assert.NotEmpty(error.Mend);
        Assert.Contains(mend, error.Mend, StringComparison.Ordinal);
    }

    private static PlanFile Read(string drain) => PlanFile.Parse($$"""
        runnel: 1
        name: small
        currency: EUR
        place: {setting: indoors}
        vessels:
          bed: {role: media bed, shape: box 80 x 40 x 30 cm, drain: "{{drain}}"}
        """, "plan.yaml");
}
