using Runnel.Engine.Light;
using Runnel.Engine.Plan;
using Runnel.Engine.Quantities;

namespace Runnel.Engine.Tests.Light;

/// <summary>The tables of lamps and glazings, checked by integrating spectra here and by their own consistency.</summary>
public class LampTableTests
{
    // CIE 1924 photopic sensitivity, 400 to 700 nm by 10 nm.
    private static readonly double[] Eye =
    [
        0.000396, 0.00121, 0.0040, 0.0116, 0.0230, 0.0380, 0.0600, 0.09098, 0.13902, 0.20802, 0.3230, 0.5030, 0.7100, 0.8620, 0.9540,
        0.99495, 0.9950, 0.9520, 0.8700, 0.7570, 0.6310, 0.5030, 0.3810, 0.2650, 0.1750, 0.1070, 0.0610, 0.0320, 0.0170, 0.00821, 0.004102,
    ];

    [Theory]
    [InlineData(2856, LampKind.Incandescent)]
    [Proof("photons-from-lumens", Evidence.Derived, "Planck's law at 2856 K (CIE illuminant A) with the CIE 1924 eye sensitivity and 119.627 nm·µmol/J")]
    public void An_incandescent_filament_is_a_glowing_body(double kelvin, LampKind kind)
    {
        var lux = LuxPerMicromole(nm => Math.Pow(nm, -5) / (Math.Exp(1.4388e7 / (nm * kelvin)) - 1));
        var row = LuxPerPhoton.Of(kind);
        Assert.Equal(lux, row.Unit.FromSi(row.High), 0.5);
        Assert.Equal(lux, row.Unit.FromSi(row.Likely), 0.5);
    }

    [Theory]
    [InlineData(450, 7.4)]
    [InlineData(660, 8.3)]
    public void Red_and_blue_diodes_of_horticulture_lie_at_the_low_end(double peak, double printed)
    {
        var lux = LuxPerMicromole(nm => Math.Exp(-4 * Math.Log(2) * Math.Pow((nm - peak) / 20, 2)));
        // A table of 10 nm under a band of 20 nm is a coarse sum: 8 %.
        Assert.Equal(printed, lux, 0.08 * printed);
        var row = LuxPerPhoton.Of(LampKind.RedAndBlueLed);
        Assert.InRange(lux, row.Unit.FromSi(row.Low), row.Unit.FromSi(row.High));
    }

    [Fact]
    public void Red_diodes_of_630_nm_are_the_high_end() =>
        Assert.Equal(34, LuxPerMicromole(nm => Math.Exp(-4 * Math.Log(2) * Math.Pow((nm - 630) / 20, 2))), 0.08 * 34);

    [Theory]
    [InlineData(LampKind.FluorescentTube, 74)]
    [InlineData(LampKind.CompactFluorescent, 76)]
    [InlineData(LampKind.Sodium, 82)]
    [InlineData(LampKind.MetalHalide, 71)]
    [InlineData(LampKind.Incandescent, 50)]
    public void Thimijan_and_Heins_lie_within_the_rows(LampKind kind, double printed)
    {
        var row = LuxPerPhoton.Of(kind);
        Assert.InRange(printed, row.Unit.FromSi(row.Low), row.Unit.FromSi(row.High));
    }

    [Theory]
    [InlineData(LampKind.WhiteLed, 2733, 67.0)]
    [InlineData(LampKind.WhiteLed, 6598, 69.4)]
    [InlineData(LampKind.WhiteLed, 2000, 67.0)]
    [InlineData(LampKind.WhiteLed, 9000, 69.4)]
    [InlineData(LampKind.WhiteLed, 4606, 70.65)]
    [InlineData(LampKind.CompactFluorescent, 6500, 72.6)]
    public void Colour_temperature_is_looked_up_between_the_rows(LampKind kind, double kelvin, double lux)
    {
        var row = LuxPerPhoton.Of(kind, kelvin);
        Assert.Equal(lux, row.Unit.FromSi(row.Likely), 9);
        Assert.Equal(lux * 0.95, row.Unit.FromSi(row.Low), 9);
        Assert.Equal(lux * 1.05, row.Unit.FromSi(row.High), 9);
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(27)]
    [InlineData(65000)]
    public void A_colour_temperature_that_is_none_is_refused(double kelvin) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => LuxPerPhoton.Of(LampKind.WhiteLed, kelvin));

    [Fact]
    public void Every_kind_has_a_row_with_a_range_and_a_source_and_can_be_used_by_its_formula()
    {
        foreach (var kind in Enum.GetValues<LampKind>())
        {
            Sound(LuxPerPhoton.Of(kind), LightFormulas.PhotonsFromLumens.Inputs[1].Min, LightFormulas.PhotonsFromLumens.Inputs[1].Max);
            Sound(TypicalEfficacy.Of(kind), LightFormulas.PhotonsFromPower.Inputs[1].Min, LightFormulas.PhotonsFromPower.Inputs[1].Max);
        }
        foreach (var glazing in Enum.GetValues<Glazing>())
        {
            Sound(GlazingTransmission.Of(glazing), 0, 100);
        }
        Sound(GlazingTransmission.Shade, 0, 100);
    }

    [Theory]
    [InlineData(LampKind.Sodium, 1.02)]
    [InlineData(LampKind.Sodium, 1.70)]
    [InlineData(LampKind.MetalHalide, 1.46)]
    [InlineData(LampKind.FluorescentTube, 0.95)]
    [InlineData(LampKind.RedAndBlueLed, 1.66)]
    public void Nelson_and_Bugbee_lie_within_the_rows(LampKind kind, double printed)
    {
        var row = TypicalEfficacy.Of(kind);
        Assert.InRange(printed, row.Unit.FromSi(row.Low), row.Unit.FromSi(row.High) + 1e-9);
    }

    [Fact]
    public void Glass_less_frame_and_dirt_is_what_whole_greenhouses_pass()
    {
        var glass = GlazingTransmission.Of(Glazing.SingleGlass);
        var passed = DailyLight.UnderCover(100, glass.Unit.FromSi(glass.Likely), 25);
        Assert.InRange(passed, 35, 70);
    }

    private static void Sound(Estimate row, double min, double max)
    {
        Assert.True(row.Low < row.Likely && row.Likely < row.High, row.From.Path);
        Assert.InRange(row.Unit.FromSi(row.Low), min, max);
        Assert.InRange(row.Unit.FromSi(row.High), min, max);
        Assert.Equal(OriginKind.Catalogue, row.From.Kind);
        Assert.False(string.IsNullOrWhiteSpace(row.From.Source));
    }

    private static double LuxPerMicromole(Func<double, double> spectrum)
    {
        var (lumens, photons) = (0.0, 0.0);
        for (var i = 0; i < Eye.Length; i++)
        {
            var nm = 400 + 10 * i;
            var weight = i == 0 || i == Eye.Length - 1 ? 0.5 : 1;
            lumens += weight * 683 * Eye[i] * spectrum(nm);
            photons += weight * nm / 119.627 * spectrum(nm);
        }
        return lumens / photons;
    }
}
