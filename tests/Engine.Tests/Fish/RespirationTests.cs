using CsCheck;
using Runnel.Engine.Fish;

namespace Runnel.Engine.Tests.Fish;

public sealed class RespirationTests
{
    [Theory]
    [InlineData(24, 100, 154)]
    [InlineData(26, 100, 175)]
    [InlineData(28, 100, 227)]
    [InlineData(30, 100, 310)]
    [InlineData(32, 100, 425)]
    [InlineData(24, 10, 291)]
    [InlineData(28, 10, 439)]
    [InlineData(32, 10, 713)]
    [Proof("tilapia-respiration", Evidence.Derived, "the printed regression worked by hand; 0.5 mg/kg/h")]
    public void The_printed_regression_of_tilapia(double temperature, double weight, double rate) =>
        Assert.Equal(rate, Respiration.Khater(temperature, weight), 0.51);

    [Fact]
    [Proof("tilapia-respiration", Evidence.Derived, "over all its range larger fish use less for each kg, and warmer fish more: it stays clear of where the polynomial turns")]
    public void Within_its_range_the_regression_behaves_like_fish() =>
        Gen.Select(Gen.Double[24, 31.9], Gen.Double[3, 109.9]).Sample((t, w) =>
        {
            Assert.True(Respiration.Khater(t, w + 0.1) < Respiration.Khater(t, w));
            Assert.True(Respiration.Khater(t + 0.1, w) > Respiration.Khater(t, w));
        });

    [Fact]
    [Proof("fish-respiration", Evidence.Derived, "twice as much for 10 K, and an eighth less for twice the weight")]
    public void Ten_kelvin_double_it()
    {
        Assert.Equal(300, Respiration.Doubling(25, 100), 12);
        Assert.Equal(2 * Respiration.Doubling(15, 40), Respiration.Doubling(25, 40), 1e-9);
        Assert.Equal(0.87, Respiration.Doubling(20, 400) / Respiration.Doubling(20, 200), 0.005);
    }

    [Theory]
    [InlineData(54, 140)]
    [InlineData(507, 95)]
    [Proof("fish-respiration", Evidence.Published, "Akbulut 2012: Black Sea trout at 10 °C, 140 mg/kg/h at 54 g and 95 at 507 g; within the range of the rate, likely no more than a third above")]
    public void Measured_trout_lie_within_the_range_of_the_rate(double weight, double measured)
    {
        Assert.InRange(measured, Respiration.Doubling(10, weight, 300), Respiration.Doubling(10, weight, 550));
        Assert.InRange(Respiration.Doubling(10, weight, Respiration.ColdWater) / measured, 1, 1.35);
    }

    [Fact]
    [Proof("fish-respiration", Evidence.Derived, "against the tilapia regression, two unlike formulas: never under nine tenths of it and never over twice it")]
    public void The_general_rule_is_on_the_safe_side_of_young_tilapia() =>
        Gen.Select(Gen.Double[24, 32], Gen.Double[5, 110]).Sample((t, w) =>
            Assert.InRange(Respiration.Doubling(t, w) / Respiration.Khater(t, w), 0.9, 2.0));

    [Fact]
    public void What_comes_out_always_goes_into_the_time_without_air()
    {
        var input = FishFormulas.TimeToLowOxygen.Inputs.Single(i => i.Id == "respiration");
        var (t, w, r) = (RespirationFormulas.FishRespiration.Inputs[0], RespirationFormulas.FishRespiration.Inputs[1], RespirationFormulas.FishRespiration.Inputs[2]);
        // It rises with warmth and rate and falls with weight, so that the ends are at two corners.
        Assert.InRange(Respiration.Doubling(t.Min, w.Max, r.Min), input.Min, input.Max);
        Assert.InRange(Respiration.Doubling(t.Max, w.Min, r.Max), input.Min, input.Max);
    }

    [Fact]
    public void A_fish_of_no_known_kind_takes_the_rate_of_warm_water()
    {
        var rate = RespirationFormulas.RateOf(null);
        Assert.Equal(300, rate.Unit.FromSi(rate.Likely), 1e-9);
        Assert.True(rate.IsRange);
        Assert.Contains("from memory", rate.From.Source, StringComparison.Ordinal);
    }
}
