using CsCheck;
using Runnel.Engine.Frame;

namespace Runnel.Engine.Tests.Frame;

public class WeightTests
{
    [Fact]
    [Proof("flooded-media-mass", Evidence.Published, "Engineering ToolBox: gravel wet 2000 kg/m³ (125 lb/ft³); from 1600 dry with 40 % voids")]
    public void A_bed_of_wet_gravel_weighs_what_the_table_says()
    {
        Assert.Equal(2000, Weight.FloodedMedia(1000, 1600, 40), 1e-9);
        // A foot of it presses three times what a floor of 40 lb/ft² is meant for.
        var perSquareFoot = Weight.FloodedMedia(28.316846592, 1600, 40) / 0.45359237;
        Assert.Equal(125, perSquareFoot, 0.5);
        Assert.True(perSquareFoot > 3 * UniformLoad.Room.PoundsPerSquareFoot);
    }

    [Fact]
    [Proof("floor-load", Evidence.Published, "tote sellers: a full tote of 1000 L, about 1065 kg on 1.2 m x 1.0 m, presses 182 lb/ft²; 0.5 %")]
    public void A_full_tote_presses_as_printed() =>
        Assert.Equal(182, Weight.FloorLoad(1065, 1.2) * 0.3048 * 0.3048 / 0.45359237, 0.9);

    [Fact]
    [Proof("leg-load", Evidence.Derived, "the legs together carry the weight")]
    [Proof("line-load", Evidence.Derived, "the pieces together carry the weight")]
    [Proof("floor-load", Evidence.Derived, "load times area is the mass")]
    [Proof("flooded-media-mass", Evidence.Derived, "without voids it is the grains, without grains to speak of the water")]
    public void The_parts_carry_the_whole() =>
        Gen.Select(Gen.Double[1, 2000], Gen.Int[1, 20], Gen.Double[0.1, 5]).Sample((mass, pieces, length) =>
        {
            Assert.Equal(mass * 9.80665, pieces * Weight.LegLoad(mass, pieces), 1e-8 * mass);
            Assert.Equal(mass * 9.80665, pieces * length * Weight.LineLoad(mass, pieces, length), 1e-8 * mass);
            Assert.Equal(mass, length * Weight.FloorLoad(mass, length), 1e-9 * mass);
            Assert.Equal(1.7 * mass, Weight.FloodedMedia(mass, 1700, 0), 1e-9 * mass);
        });

    [Fact]
    public void The_codes_loads_in_metric()
    {
        // Published: the plan format's own conversion, 40 lb/ft² are 195 kg/m², by definition of the units.
        Assert.Equal(195.3, UniformLoad.Room.KilogramsPerSquareMetre, 0.05);
        Assert.Equal(146.5, UniformLoad.Bedroom.KilogramsPerSquareMetre, 0.05);
        Assert.Contains(UniformLoad.Garage, UniformLoad.All);
    }
}
