using CsCheck;
using Runnel.Engine.Flow;
using Runnel.Engine.Water;

namespace Runnel.Engine.Tests.Flow;

public class AirTests
{
    private const double Litre = 0.001;

    [Theory]
    [InlineData(0, 91)]
    [InlineData(1, 82)]
    [InlineData(2, 72)]
    [InlineData(3, 62)]
    [InlineData(4, 51)]
    [InlineData(5, 41)]
    [Proof("oxygen-transfer-field", Evidence.Published, "a pond trade table at 20 °C, share of the rating still delivered by dissolved oxygen; α 0.92, β 1: 1.5 points")]
    public void A_trade_table_of_what_is_left_of_a_rating(double dissolved, double percent) =>
        Assert.Equal(percent, 100 * OxygenTransfer.Field(1, 20, dissolved / 1000, alpha: 0.92, beta: 1), 1.5);

    [Theory]
    [InlineData(0.9, 0.98, 0.345)]
    [InlineData(1, 1, 0.404)]
    [Proof("oxygen-transfer-field", Evidence.Derived, "by hand: 1 kg/h, 25 °C, 5 mg/L, saturation 8.26 and 9.09 mg/L: 1 %")]
    public void Field_transfer_by_hand(double alpha, double beta, double kilograms) =>
        Assert.Equal(kilograms, OxygenTransfer.Field(1, 25, 0.005, alpha: alpha, beta: beta), 0.01 * kilograms);

    [Fact]
    [Proof("oxygen-transfer-field", Evidence.Derived, "the standard's own conditions give the standard rate; none at saturation; less with more oxygen in the water")]
    public void At_the_standards_conditions_it_is_the_standard_rate()
    {
        Assert.Equal(1, OxygenTransfer.Field(1, 20, 0, alpha: 1, beta: 1), 12);
        Gen.Select(Gen.Double[0, 35], Gen.Double[0, 0.012]).Sample((celsius, dissolved) =>
        {
            var saturation = OxygenSaturation.BensonKrause(celsius) / 1000;
            Assert.Equal(0, OxygenTransfer.Field(1, celsius, saturation, beta: 1), 1e-12);
            Assert.True(OxygenTransfer.Field(1, celsius, dissolved + 0.001) < OxygenTransfer.Field(1, celsius, dissolved));
        });
    }

    [Fact]
    [Proof("oxygen-transfer-standard", Evidence.Derived, "by hand: 40 L/min at 0.5 m, 6.5 %/m: 669.6 g/h of oxygen, 3.25 % of it, 21.8 g/h")]
    public void Standard_transfer_by_hand()
    {
        Assert.Equal(21.8, AirFormulas.StandardTransfer.Compute([40, 0.5, 6.5]), 0.05);
        Assert.Equal(2 * AirFormulas.StandardTransfer.Compute([40, 0.5, 6.5]), AirFormulas.StandardTransfer.Compute([40, 1, 6.5]), 1e-9);
    }

    [Fact]
    [Proof("oxygen-transfer-standard", Evidence.Derived, "oxygen in air: 0.2095 of an ideal gas at 20 °C and 101 325 Pa, 31.998 g/mol: 0.3 %")]
    public void Oxygen_in_air_is_the_ideal_gass() =>
        Assert.Equal(0.2095 * 101325 * 0.031998 / (8.314462618 * 293.15), OxygenTransfer.OxygenInAir, 0.003 * 0.279);

    [Fact]
    [Proof("depth-pressure", Evidence.Published, "a pump maker's 0.433 psi for each foot: 0.3 %")]
    public void A_foot_of_water_presses() => Assert.Equal(0.433, OxygenTransfer.Pressure(0.3048) / 6894.757, 0.003 * 0.433);

    [Fact]
    public void An_air_pump_between_its_makers_points()
    {
        // A maker's table: 51 L/min to 1.4 psi, 45 at 2 psi, 37 at 3 psi; between them straight lines.
        static double Depth(double psi) => psi * 6894.757 / OxygenTransfer.Pressure(1);
        var pump = AirPumpCurve.Through((Depth(2), 45 * Litre), (Depth(1.4), 51 * Litre), (Depth(3), 37 * Litre));
        Assert.Equal(45, pump.FlowAt(Depth(2)) / Litre, 9);
        Assert.Equal(41, pump.FlowAt(Depth(2.5)) / Litre, 9);
        Assert.Equal(51, pump.FlowAt(0) / Litre, 9);
        Assert.Equal(29, pump.FlowAt(Depth(4)) / Litre, 9);
        Assert.Equal(0, pump.FlowAt(9));
        Assert.Throws<ArgumentException>(() => AirPumpCurve.Through((1, 0.001)));
        Assert.Throws<ArgumentException>(() => AirPumpCurve.Through((1, 0.001), (2, 0.002)));
    }
}
