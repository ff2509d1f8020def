using CsCheck;
using Runnel.Engine.Light;

namespace Runnel.Engine.Tests.Light;

public class LightTests
{
    [Theory]
    [InlineData(7400, 74, 100)]
    [InlineData(108000, 54, 2000)]
    [Proof("photons-from-lumens", Evidence.Published, "Thimijan and Heins 1983 as relayed: cool white 74, 7400 lx; full sun 54, 108 000 lx, about 2000 µmol/m²/s")]
    public void Lux_become_photons_as_printed(double lux, double factor, double photons) =>
        Assert.Equal(photons, PhotonFlux.ThimijanHeins(lux, factor), 1e-9);

    [Fact]
    [Proof("photons-from-power", Evidence.Derived, "lumens and watts of one lamp give the same photons: 806 lm at 9 W is 89.6 lm/W, at 67 lx per µmol/m²/s 1.337 µmol/J")]
    public void Two_ways_to_the_photons_of_one_lamp_agree() =>
        Gen.Select(Gen.Double[1, 500], Gen.Double[20, 150], Gen.Double[40, 90]).Sample((watts, lumensPerWatt, factor) =>
            Assert.Equal(PhotonFlux.ThimijanHeins(watts * lumensPerWatt, factor),
                PhotonFlux.FromPower(watts, lumensPerWatt / factor), 1e-9 * watts * lumensPerWatt));

    [Fact]
    [Proof("photon-flux-on-bed", Evidence.Derived, "the lumen method by hand: 4 lamps of 1700 lm, 48 % reaching 0.72 m², 78 lx per µmol/m²/s: 4533 lx, 58.1 µmol/m²/s")]
    public void Lumens_on_a_bench_by_two_roads()
    {
        var photons = DailyLight.MeanOnBed(PhotonFlux.ThimijanHeins(4 * 1700, 78), 48, 0.72);
        Assert.Equal(4533.333 / 78, photons, 1e-4);
    }

    [Fact]
    [Proof("photon-flux-on-bed", Evidence.Derived, "no photon is made or lost: flux density times area is the share that reaches the bed")]
    public void Photons_are_conserved() =>
        Gen.Select(Gen.Double[0, 5000], Gen.Double[0, 100], Gen.Double[0.1, 20]).Sample((flux, share, area) =>
            Assert.Equal(flux * share / 100, DailyLight.MeanOnBed(flux, share, area) * area, 1e-9 * Math.Max(1, flux)));

    [Theory]
    [InlineData(250, 16, 14.4, 0.005)]
    [InlineData(340, 12, 14.4, 0.3)]
    [InlineData(170, 24, 14.4, 0.3)]
    [Proof("daily-light", Evidence.Published, "Palmitessa et al., a lettuce trial's three treatments called 14.4 mol/m²/d; two of them are 2 % above by arithmetic")]
    public void A_lettuce_trials_daily_light(double density, double hours, double daily, double tolerance) =>
        Assert.Equal(daily, DailyLight.Integral(density, hours), tolerance);

    [Fact]
    [Proof("daily-light", Evidence.Derived, "a mole is 1 000 000 µmol and a day of 24 h has 86 400 s")]
    public void A_day_of_steady_light_is_its_seconds() =>
        Assert.Equal(100 * 86400e-6, DailyLight.Integral(100, 24), 12);

    [Fact]
    [Proof("daylight", Evidence.Published, "R package bigleaf, Rg.to.PPFD: 500 W/m² global is 1150 µmol/m²/s with share 0.5 and 4.6 µmol/J")]
    public void Watts_of_sun_become_photons_as_printed()
    {
        var daily = DailyLight.FromRadiation(500 * 86400 / 1e6, 0.5 * 4.6);
        Assert.Equal(1150 * 86400e-6, daily, 1e-9);
    }

    [Fact]
    [Proof("daylight", Evidence.Derived, "share of 0.45 times 4.57 µmol/J is the default factor; it lies within the published 1.94 to 2.3")]
    public void The_default_factor_is_the_product_of_its_sources()
    {
        Assert.Equal(0.45 * 4.57, DailyLight.UsualPhotons, 0.005);
        Assert.InRange(DailyLight.UsualPhotons, 1.94, 2.3);
        Assert.Equal(20.6, DailyLight.FromRadiation(10), 9);
    }

    [Fact]
    [Proof("daylight-under-cover", Evidence.Derived, "nothing is lost under nothing, all under a full shade, and the order of the losses does not matter")]
    public void Losses_of_a_cover_multiply()
    {
        Assert.Equal(30, DailyLight.UnderCover(30, 100, 0), 12);
        Assert.Equal(0, DailyLight.UnderCover(30, 88, 100), 12);
        Gen.Select(Gen.Double[0, 60], Gen.Double[0, 100], Gen.Double[0, 100]).Sample((daily, a, b) =>
            Assert.Equal(DailyLight.UnderCover(daily, a, 100 - b), DailyLight.UnderCover(daily, b, 100 - a), 1e-9));
    }

    [Fact]
    [Proof("lamp-energy-for-light", Evidence.Derived, "the lamp that takes this energy gives this light: flux on the bed, summed over the day, on one square metre")]
    public void The_energy_for_a_light_gives_that_light_back() =>
        Gen.Select(Gen.Double[1, 40], Gen.Double[0.3, 3.5], Gen.Double[10, 100], Gen.Double[4, 24]).Sample((daily, efficacy, share, hours) =>
        {
            var watts = DailyLight.LampEnergy(daily, efficacy, share) * 1000 / hours;
            var onBed = DailyLight.MeanOnBed(PhotonFlux.FromPower(watts, efficacy), share, 1);
            Assert.Equal(daily, DailyLight.Integral(onBed, hours), 1e-9 * daily);
        });

    [Fact]
    [Proof("lamp-energy-for-light", Evidence.Derived, "by hand: 14.4 / (3.6 x 1.5 x 0.8) is 3.333")]
    public void Lettuce_light_takes_three_kilowatt_hours() =>
        Assert.Equal(10.0 / 3, DailyLight.LampEnergy(14.4, 1.5, 80), 9);
}
