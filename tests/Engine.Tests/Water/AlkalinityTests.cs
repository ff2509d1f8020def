using Runnel.Engine.Quantities;
using Runnel.Engine.Water;
using static Runnel.Engine.Tests.Formulary;

namespace Runnel.Engine.Tests.Water;

public sealed class AlkalinityTests
{
    private const string Handbook = "molar masses of a chemistry handbook (from memory), over the acid one mol takes up, to 0.05 %";

    [Fact]
    [Proof("alkalinity-used", Evidence.Measured, "USEPA 1975 as restated in a University of Wisconsin report: 6.3 to 7.4 in attached growth")]
    public void Attached_growth_used_as_much() => Assert.InRange(AlkalinityUsed.Ebeling(1), 6.3, 7.4);

    [Fact]
    [Proof("alkalinity-used", Evidence.Published, "Rakocy and McGinty, tank culture of tilapia: about 7")]
    public void A_bulletin_says_about_seven() => Assert.Equal(7, AlkalinityUsed.Ebeling(1), 0.1);

    [Fact]
    [Proof("alkalinity-used", Evidence.Derived, "two mol of acid for each mol of nitrogen, none built into bacteria: an upper limit")]
    public void It_stays_a_little_under_the_stoichiometry_without_growth() =>
        Assert.InRange(AlkalinityUsed.Ebeling(1) / (2 * 50.04 / 14.007), 0.98, 1);

    [Fact]
    [Proof("base-sodium-bicarbonate", Evidence.Published, "a water treatment note: 7.14 of alkalinity as CaCO3 are 12 of sodium bicarbonate")]
    public void Twelve_of_bicarbonate_stand_for_7_14_of_alkalinity() =>
        Assert.Equal(12, BaseDose.ByEquivalentWeight(7.14, BaseChemical.SodiumBicarbonate), 0.05);

    [Theory]
    [InlineData("sodium-bicarbonate", 84.007, 1)]
    [InlineData("potassium-bicarbonate", 100.115, 1)]
    [InlineData("calcium-carbonate", 100.087, 2)]
    [InlineData("calcium-hydroxide", 74.093, 2)]
    [InlineData("potassium-hydroxide", 56.106, 1)]
    [Proof("base-sodium-bicarbonate", Evidence.Derived, Handbook)]
    [Proof("base-potassium-bicarbonate", Evidence.Derived, Handbook)]
    [Proof("base-calcium-carbonate", Evidence.Derived, Handbook)]
    [Proof("base-calcium-hydroxide", Evidence.Derived, Handbook)]
    [Proof("base-potassium-hydroxide", Evidence.Derived, Handbook)]
    public void Each_base_goes_by_its_equivalent_weight(string id, double molarMass, int acid)
    {
        var chemical = BaseChemical.All.Single(c => c.Id == id);
        var expected = 100 * (molarMass / acid) / (100.087 / 2);
        Assert.Equal(expected, BaseDose.ByEquivalentWeight(100, chemical), 0.0005 * expected);
        var formula = WaterFormulas.All.Single(f => f.Id == $"base-{id}");
        Assert.Equal(expected, formula.Apply(Of(100, Units.GramCalciumCarbonatePerDay)).Value, 0.0005 * expected);
    }

    [Fact]
    public void Calcium_carbonate_stands_for_itself() =>
        Assert.Equal(41.5, BaseDose.ByEquivalentWeight(41.5, BaseChemical.CalciumCarbonate), 1e-9);

    [Fact]
    public void The_caustic_ones_say_so() =>
        Assert.All(
            new[] { WaterFormulas.BaseCalciumHydroxide, WaterFormulas.BasePotassiumHydroxide },
            f => Assert.Contains("goggles", f.NotFor, StringComparison.Ordinal));

    [Fact]
    public void Nitrogen_goes_in_and_a_mass_of_powder_comes_out()
    {
        var nitrified = Of(5.888, Units.GramNitrogenPerDay);
        var alkalinity = WaterFormulas.AlkalinityUsed.Apply(nitrified);
        // By hand: 5.888 × 7.05 = 41.51; × 100.115 / 50.044 = 83.05.
        Assert.Equal(41.51, alkalinity.Value, 0.005);
        Assert.Equal(83.05, WaterFormulas.BasePotassiumBicarbonate.Apply(alkalinity).Value, 0.03);
        Assert.Throws<UnitMismatchException>(() => WaterFormulas.BasePotassiumBicarbonate.Apply(nitrified));
    }
}
