using CsCheck;
using MathNet.Numerics.Integration;
using Runnel.Engine.Light;

namespace Runnel.Engine.Tests.Light;

/// <summary>What is left of lamps' light, what it costs, how long they must burn, and daylight behind a window.</summary>
public class LampLifeTests
{
    [Theory]
    [InlineData(50000, 0.7)]
    [InlineData(10000, 0.9312)]
    [InlineData(25000, 0.8367)]
    [Proof("light-left", Evidence.Derived, "L70 of 50 000 h: α = ln(1/0.7)/50 000 = 7.1335e-6 /h, exp(−αt) by hand")]
    public void A_diode_lamp_of_fifty_thousand_hours(double hours, double left)
    {
        Assert.Equal(left, Ageing.FromL70(50000).After(hours), 6e-5);
        Assert.Equal(Math.Exp(-7.1335e-6 * hours), Ageing.FromL70(50000).After(hours), 5e-6);
    }

    [Fact]
    public void Twenty_thousand_lumens_at_their_l70_are_fourteen_thousand() =>
        // Published: a maker's example of L70, 20 000 lm and 50 000 h.
        Assert.Equal(14000, 20000 * Ageing.FromL70(50000).After(50000), 1e-6);

    [Theory]
    [InlineData(6000)]
    [InlineData(8000)]
    [InlineData(10000)]
    public void A_compact_fluorescent_lamp_keeps_both_of_its_criteria(double life)
    {
        // Published: ENERGY STAR, 90 % or more at 1000 h, 80 % or more at 40 % of rated life of 6000 h or more.
        var lamp = Ageing.CompactFluorescent(life);
        Assert.True(lamp.After(1000) >= 0.9);
        Assert.Equal(0.8, lamp.After(0.4 * life), 12);
    }

    [Fact]
    public void The_mean_of_a_span_is_its_integral() =>
        Gen.Select(Gen.Double[1000, 90000], Gen.Double[10, 100], Gen.Double[0, 20000], Gen.Double[1, 30000]).Sample((known, share, from, span) =>
        {
            var ageing = new Ageing(known, share);
            var mean = GaussLegendreRule.Integrate(ageing.After, from, from + span, 64) / span;
            Assert.Equal(mean, ageing.Mean(from, from + span), 1e-7);
        }, iter: 200);

    [Fact]
    [Proof("energy-of-a-mole", Evidence.Derived, "the lamp run for an hour: kilowatt hours taken over moles on the leaves; and the energy rule of a daily light, for one mole on one square metre")]
    public void Energy_of_a_mole_by_three_roads() =>
        Gen.Select(Gen.Double[5, 600], Gen.Double[0.5, 3], Gen.Double[20, 100], Gen.Double[10, 100]).Sample((watts, efficacy, left, reaching) =>
        {
            var photons = watts * efficacy;
            var energy = LampOffer.EnergyOfAMole(watts, photons, left, reaching);
            Assert.Equal(watts / 1000 / (photons * 3600e-6 * left / 100 * reaching / 100), energy, 1e-9 * energy);
            Assert.Equal(DailyLight.LampEnergy(1, efficacy, reaching) / (left / 100), energy, 1e-9 * energy);
        });

    [Fact]
    public void A_lamp_by_hand()
    {
        // Derived: 40 W, 60 µmol/s, no ageing, all reaching: 40/(3.6 x 60) kWh/mol; 10 000 h x 0.0036 x 60 = 2160 mol for 54 of money.
        var cost = new LampOffer(54, 10000, 40, 60, Ageing.None).Cost(0.30, 100);
        Assert.Equal(0.185185, cost.Energy, 1e-6);
        Assert.Equal(2160, cost.Moles, 1e-6);
        Assert.Equal(0.025, cost.ForLamp, 1e-9);
        Assert.Equal(0.055556, cost.ForEnergy, 1e-6);
        Assert.Equal(0.080556, cost.Total, 1e-6);
    }

    [Fact]
    public void A_dear_lamp_that_draws_less_may_be_cheaper_for_each_mole()
    {
        // A 26 W compact fluorescent of 1700 lm (21.8 µmol/s) and 10 000 h; a 40 W LED of 4400 lm (63.1 µmol/s) and 50 000 h. Prices invented.
        var bulb = new LampOffer(8, 10000, 26, 21.8, Ageing.CompactFluorescent(10000)).Cost(0.25, 60);
        var led = new LampOffer(60, 50000, 40, 63.1, Ageing.FromL70(50000)).Cost(0.25, 60);
        Assert.True(led.Total < bulb.Total);
        Assert.True(led.Left > 0.8 && bulb.Left < led.Left);
    }

    [Fact]
    [Proof("hours-for-light", Evidence.Derived, "going round: those hours under that light give what the sun leaves wanting")]
    public void Hours_that_give_the_light_back() =>
        Gen.Select(Gen.Double[0, 40], Gen.Double[0, 40], Gen.Double[50, 1500]).Sample((wished, sun, density) =>
        {
            var hours = LitHours.For(wished, sun, density);
            if (hours <= 24)
            {
                Assert.Equal(Math.Max(wished, sun), sun + DailyLight.Integral(density, hours), 1e-9);
            }
            var within = LitHours.Within(wished, sun, density, 16);
            Assert.Equal(hours <= 16, within.Suffices);
            Assert.Equal(Math.Max(0, wished - sun), DailyLight.Integral(within.DensityNeeded, 16), 1e-9);
        });

    [Theory]
    [InlineData(60, 800)]
    [InlineData(40, 450)]
    [InlineData(100, 1600)]
    public void A_claim_is_a_promise_of_lumens(double claim, double lumens) => Assert.Equal(lumens, EquivalentWatts.Lumens(claim));

    [Fact]
    public void A_claim_beyond_the_table_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => EquivalentWatts.Lumens(300));
        Assert.Equal(950, EquivalentWatts.Lumens(67.5), 9);
    }

    [Fact]
    [Proof("mean-daylight-factor", Evidence.Derived, "by hand: 0.68 x 3 x 65 / (90 x 0.75) = 1.964")]
    public void A_room_with_a_window() => Assert.Equal(1.964, WindowLight.MeanFactor(68, 3, 65, 90, 50), 5e-4);

    [Fact]
    [Proof("window-sky", Evidence.Derived, "sum over the patches of sky seen through the glass, by the general-purpose library MathNet; an endless window gives half the sky")]
    public void A_window_is_the_sum_of_its_patches_of_sky()
    {
        Gen.Select(Gen.Double[0.3, 3], Gen.Double[0, 1], Gen.Double[0.3, 2], Gen.Double[0.2, 4]).Sample((width, sill, glass, distance) =>
        {
            // Even sky of luminance 1: a patch dA of the glass lights a level place by cos(level) cos(glass) dA / d², open ground has π.
            var sum = GaussLegendreRule.Integrate((y, z) =>
            {
                var d2 = distance * distance + y * y + z * z;
                return z * distance / (d2 * d2);
            }, -width / 2, width / 2, sill, sill + glass, 128);
            Assert.Equal(100 * sum / Math.PI, WindowLight.SkyShare(100, width, sill, glass, distance), 1e-4);
        }, iter: 50);
        Assert.Equal(50, WindowLight.SkyShare(100, 30, 0, 30, 0.01), 0.1);
    }

    [Fact]
    public void Window_light_falls_as_practice_says()
    {
        // Common practice, from memory: on the sill 25 to 40 % of outdoors, 1 m in 5 to 10 %, 2 m in about 2 %.
        double At(double distance) => WindowLight.SkyShare(80, 1.5, 0, 1.3, distance);
        Assert.InRange(At(0.15), 25, 40);
        Assert.InRange(At(1), 4, 10);
        Assert.InRange(At(2), 1, 3);
        Assert.Equal(0, WindowLight.SkyShare(80, 1.5, 0, 1.3, 2, 60), 12);
        Assert.True(WindowLight.SkyShare(80, 1.5, 0, 1.3, 1, 20) < At(1));
    }

    [Fact]
    public void Twelve_months_of_lamps_and_sun()
    {
        double[] outdoors = [5, 10, 18, 25, 36, 37, 37, 30, 20, 12, 6, 3];
        var months = LightByMonth.Of(200, [16], Ageing.None, 0, outdoors, 50);
        Assert.Equal(12, months.Count);
        Assert.Equal(11.52, months[0].Lamps, 9);
        Assert.Equal(11.52 + 2.5, months[0].Total, 9);
        var aged = LightByMonth.Of(200, [16], Ageing.FromL70(5840), 0, [], 0);
        Assert.All(aged.Zip(aged.Skip(1)), p => Assert.True(p.Second.Lamps < p.First.Lamps));
        // A year of 16 h a day is 5840 h: the mean of December lies just above 70 %.
        Assert.InRange(aged[11].Lamps / 11.52, 0.70, 0.715);
        Assert.Equal(0, aged[5].Sun);
        Assert.Throws<ArgumentException>(() => LightByMonth.Of(200, [16, 16], Ageing.None, 0, [], 0));
        Assert.Throws<ArgumentException>(() => LightByMonth.Of(200, [16], Ageing.None, 0, [1, 2], 0));
    }
}
