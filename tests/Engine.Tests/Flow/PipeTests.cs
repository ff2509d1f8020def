using CsCheck;
using Runnel.Engine.Flow;

namespace Runnel.Engine.Tests.Flow;

public class PipeTests
{
    private const double Foot = 0.3048;
    private const double Inch = 0.0254;
    private const double GallonPerMinute = 0.003785411784 / 60;
    private const double CubicFoot = Foot * Foot * Foot;

    [Theory]
    [InlineData(25, 997.075)]
    [Proof("water-density", Evidence.Published, "Maurer, R package hydraulics, vignette: 997.075 kg/m³ at 25 °C: 0.01 %")]
    public void Density_is_the_vignettes(double celsius, double kilograms) => Assert.Equal(kilograms, WaterProperties.Density(celsius), 1e-4 * kilograms);

    [Theory]
    [InlineData(0, 999.84)]
    [InlineData(4, 999.972)]
    [InlineData(20, 998.204)]
    [InlineData(40, 992.216)]
    [Proof("water-density", Evidence.Derived, "steam tables (values from memory): 0.001 %; greatest near 4 °C")]
    public void Density_is_the_steam_tables(double celsius, double kilograms)
    {
        Assert.Equal(kilograms, WaterProperties.Density(celsius), 1e-5 * kilograms);
        Assert.True(WaterProperties.Density(celsius) <= WaterProperties.Density(3.98));
    }

    [Theory]
    [InlineData(20, 1.0016e-3)]
    [InlineData(25, 0.8900e-3)]
    [Proof("water-viscosity", Evidence.Derived, "1.0016 mPa·s at 20 °C (ISO/TR 3666) and 0.8900 at 25 °C (IAPWS), from memory: 0.01 %")]
    public void Viscosity_is_the_standards(double celsius, double pascalSeconds) =>
        Assert.Equal(pascalSeconds, WaterProperties.DynamicViscosity(celsius), 1e-4 * pascalSeconds);

    [Theory]
    [InlineData(10, 1.31e-6, 0.01)]
    [InlineData(15, 1.15e-6, 0.02)]
    [InlineData(20, 1.02e-6, 0.02)]
    [InlineData(25, 9.135e-7, 0.025)]
    [InlineData(30, 8.21e-7, 0.03)]
    [Proof("water-viscosity", Evidence.Published, "Maurer, R package hydraulics, vignette, whose values run 1 to 2.5 % above IAPWS")]
    public void Viscosity_is_near_the_vignettes(double celsius, double squareMetres, double tolerance) =>
        Assert.Equal(squareMetres, WaterProperties.KinematicViscosity(celsius), tolerance * squareMetres);

    [Fact]
    [Proof("reynolds-number", Evidence.Published, "Crane TP-410M example 7-1 as quoted by C. Bell, fluids: 200 L/min in 52.5 mm, 30 °C, Re 100 600: 0.5 %")]
    [Proof("friction-colebrook", Evidence.Published, "Crane TP-410M example 7-1, f 0.0179, smooth plastic: 0.5 %")]
    public void Crane_7_1()
    {
        var reynolds = PipeVelocity.Reynolds(0.2 / 60, 0.0525, WaterProperties.KinematicViscosity(30));
        Assert.Equal(100600, reynolds, 500.0);
        Assert.Equal(0.0179, FrictionFactor.ColebrookWhite(reynolds, 0), 1e-4);
        Assert.Equal(100600, PipeFormulas.Reynolds.Compute([12000, 52.5, 30]), 500.0);
    }

    [Fact]
    [Proof("friction-colebrook", Evidence.Published, "C. Bell, fluids, docstring: Re 1e5, ε/D 1e-4, 0.0185138661")]
    [Proof("friction-swamee-jain", Evidence.Published, "C. Bell, fluids, docstring: Re 1e5, ε/D 1e-4, 0.0184524")]
    public void The_librarys_point()
    {
        Assert.Equal(0.0185138661, FrictionFactor.ColebrookWhite(1e5, 1e-4), 1e-9);
        Assert.Equal(0.0184524, FrictionFactor.SwameeJain(1e5, 1e-4), 1e-7);
    }

    [Fact]
    [Proof("friction-colebrook", Evidence.Published, "Lindeburg example 17.2 as quoted by Embry, iemisc: Re 4e5, ε/D 0.004, 0.0287")]
    [Proof("friction-swamee-jain", Evidence.Published, "Lindeburg example 17.2 as quoted by Embry, iemisc: Re 4e5, ε/D 0.004, 0.0288")]
    public void Lindeburgs_example()
    {
        Assert.Equal(0.0287, FrictionFactor.ColebrookWhite(4e5, 0.004), 5e-5);
        Assert.Equal(0.0288, FrictionFactor.SwameeJain(4e5, 0.004), 5e-5);
    }

    [Fact]
    [Proof("friction-colebrook", Evidence.Derived, "put back into its own equation: 1e-13")]
    public void Colebrook_solves_its_equation() =>
        Gen.Select(Gen.Double[3.61, 9], Gen.Double[0, 0.05]).Sample((power, rough) =>
        {
            var re = Math.Pow(10, power);
            var f = FrictionFactor.ColebrookWhite(re, rough);
            Assert.Equal(1 / Math.Sqrt(f), -2 * Math.Log10(rough / 3.7 + 2.51 / (re * Math.Sqrt(f))), 1e-13 / Math.Sqrt(f));
        });

    [Fact]
    [Proof("friction-swamee-jain", Evidence.Derived, "against Colebrook and White: 1 % from Re 1e4 to 1e7 with ε/D up to 0.001, 3.4 % anywhere")]
    public void Swamee_and_Jain_are_near_Colebrook()
    {
        static double Ratio(double power, double rough) =>
            FrictionFactor.SwameeJain(Math.Pow(10, power), rough) / FrictionFactor.ColebrookWhite(Math.Pow(10, power), rough);
        Gen.Select(Gen.Double[4, 7], Gen.Double[0, 0.001]).Sample((power, rough) => Assert.InRange(Ratio(power, rough), 0.99, 1.01));
        Gen.Select(Gen.Double[3.61, 8], Gen.Double[0, 0.05]).Sample((power, rough) => Assert.InRange(Ratio(power, rough), 0.966, 1.034));
    }

    [Fact]
    [Proof("friction-transition", Evidence.Derived, "meets 64/Re at 2000 and Swamee and Jain at 4000, without a step and, at 4000, without a kink")]
    [Proof("friction-laminar", Evidence.Derived, "meets the transition at 2000")]
    public void The_transition_joins_both_ends() =>
        Gen.Double[0, 0.05].Sample(rough =>
        {
            Assert.Equal(FrictionFactor.Laminar(2000), FrictionFactor.Dunlop(2000, rough), 1e-12);
            Assert.Equal(FrictionFactor.SwameeJain(4000, rough), FrictionFactor.Dunlop(4000, rough), 1e-9);
            var below = (FrictionFactor.Dunlop(4000, rough) - FrictionFactor.Dunlop(3999, rough)) / 1;
            var above = (FrictionFactor.SwameeJain(4001, rough) - FrictionFactor.SwameeJain(4000, rough)) / 1;
            Assert.Equal(below, above, 1e-7);
        });

    [Fact]
    [Proof("friction-laminar", Evidence.Published, "h = 128 ν L Q/(π g D⁴), EPANET 2.2 manual, chapter 12")]
    public void Laminar_loss_is_Poiseuilles()
    {
        const double flow = 2e-6, diameter = 0.008, viscosity = 1e-6;
        Assert.True(PipeVelocity.Reynolds(flow, diameter, viscosity) < 2000);
        Assert.Equal(
            128 * viscosity * 3 * flow / (Math.PI * WaterProperties.Gravity * Math.Pow(diameter, 4)),
            HeadLoss.Pipe(flow, diameter, 3, 1e-6, viscosity), 1e-12);
    }

    [Fact]
    [Proof("head-loss", Evidence.Published, "Kudela, example 1, as quoted by Embry, iemisc: 0.2 m³/s, 500 m, 200 mm, ε 0.26 mm, ν 1e-5, 117 m: 1.5 % (Swamee and Jain; Colebrook 0.5 %)")]
    public void Kudelas_oil()
    {
        Assert.Equal(117, HeadLoss.Pipe(0.2, 0.2, 500, 0.26e-3, 1e-5), 0.015 * 117);
        var friction = FrictionFactor.ColebrookWhite(PipeVelocity.Reynolds(0.2, 0.2, 1e-5), 0.26 / 200);
        Assert.Equal(117, HeadLoss.DarcyWeisbach(friction, 500, 0.2, 0.2), 0.005 * 117);
    }

    [Fact]
    [Proof("head-loss", Evidence.Published, "a published examination question (GATE 2019): siphon of 0.1 m, 5000 m, f 0.02, 5 m: 2.4597e-3 m³/s")]
    public void An_examiners_siphon() => Assert.Equal(5, HeadLoss.DarcyWeisbach(0.02, 5000, 0.1, 2.4597e-3), 0.005);

    [Fact]
    [Proof("head-loss", Evidence.Published, "Subramanian, as quoted by Embry, iemisc: 1500 gpm, 1600 ft, 8 in, ε 8.5e-4 ft, ν 1.15e-4 ft²/s, 83.7 ft: 1.5 %")]
    public void Subramanians_pipe()
    {
        var loss = HeadLoss.Pipe(1500 * GallonPerMinute, 8 * Inch, 1600 * Foot, 8.5e-4 * Foot, 1.15e-4 * Foot * Foot) / Foot;
        Assert.Equal(83.7, loss, 0.015 * 83.7);
    }

    [Fact]
    [Proof("head-loss", Evidence.Published, "Maurer, R package hydraulics, vignette: 4 ft³/s, 20 in, 10 560 ft, ε 0.0005 ft: Re 248 625, f 0.0173, 5.72 ft: 1 %")]
    public void Maurers_pipe()
    {
        // Its viscosity, from its Reynolds number.
        var viscosity = 4 * 4 / (Math.PI * 20 / 12 * 248625) * Foot * Foot;
        Assert.Equal(0.0173, FrictionFactor.ColebrookWhite(248625, 0.0005 / (20.0 / 12)), 5e-5);
        Assert.Equal(5.72, HeadLoss.Pipe(4 * CubicFoot, 20 * Inch, 10560 * Foot, 0.0005 * Foot, viscosity) / Foot, 0.01 * 5.72);
    }

    [Fact]
    [Proof("pipe-capacity", Evidence.Published, "Maurer, vignette, pipe of 25 mm, 3 m, ε 0.473 mm, 0.052 m: 0.20 L/s: 2 % (head printed to two figures; Swamee and Jain 2 % above Colebrook here)")]
    public void Maurers_small_pipe_backwards()
    {
        // Friction only: an exit is not in the example.
        var flow = new FullPipe(0.025, 3, 0, 0.473e-3).FlowUnder(0.052, 1.02e-6);
        Assert.Equal(0.20e-3, flow, 0.02 * 0.20e-3);
    }

    [Fact]
    [Proof("pipe-capacity", Evidence.Published, "a published exercise, siphon without friction under 1.00 m: 4.42 to 4.43 m/s")]
    public void A_frictionless_siphon_falls_freely() =>
        Assert.InRange(PipeVelocity.Mean(new FullPipe(0.02, 0, 1).FlowUnder(1, 1e-6), 0.02), 4.42, 4.43);

    [Fact]
    [Proof("pipe-capacity", Evidence.Derived, "the head of the flow is the head it was found for: 1e-9")]
    public void Flow_and_head_undo_each_other() =>
        Gen.Select(Gen.Double[0.01, 20], Gen.Double[0.008, 0.15], Gen.Double[0, 30], Gen.Double[1, 20], Gen.Double[0, 0.3]).Sample((head, bore, length, k, rough) =>
        {
            var pipe = new FullPipe(bore, length, k, rough / 1000);
            Assert.Equal(head, pipe.HeadFor(pipe.FlowUnder(head, 1e-6), 1e-6), 1e-9 * head);
        });

    [Theory]
    [InlineData(1, 5, 1.52)]
    [InlineData(1, 10, 5.50)]
    [InlineData(1.25, 5, 0.39)]
    [InlineData(1.25, 10, 1.46)]
    [InlineData(1.25, 20, 5.23)]
    [InlineData(1.5, 10, 0.70)]
    [InlineData(1.5, 20, 2.46)]
    [InlineData(1.5, 30, 5.22)]
    [InlineData(2, 10, 0.21)]
    [InlineData(2, 20, 0.74)]
    [InlineData(2, 30, 1.54)]
    [InlineData(2, 50, 3.98)]
    [InlineData(3, 50, 0.58)]
    [InlineData(3, 100, 2.09)]
    [InlineData(4, 50, 0.16)]
    [InlineData(4, 100, 0.55)]
    [Proof("head-loss-hazen-williams", Evidence.Published, "Illinois Administrative Code 77-906, exhibit I, schedule 40, C 150, ft for each 100 ft: 1 % and the printed rounding; below 1 ft 4 % at most")]
    public void The_codes_friction_table(double inches, double gallons, double feet)
    {
        var loss = 100 * HeadLoss.HazenWilliams(gallons * GallonPerMinute, InsideDiameter.Schedule40FromMinimumWall(inches), 1, 150);
        Assert.Equal(feet, loss, feet >= 1 ? 0.01 * feet + 0.005 : Math.Min(0.02, Math.Max(0.04 * feet, 0.006)));
    }

    [Theory]
    [InlineData(14, 617.42, 1.29, 0.80)]
    [InlineData(12, 382.51, 1.09, 0.69)]
    [InlineData(8, 159.91, 1.02, 1.00)]
    [InlineData(8, 29.34, 0.19, 0.04)]
    [InlineData(8, 90.09, 0.57, 0.34)]
    [InlineData(10, 292.42, 1.19, 1.03)]
    [InlineData(6, 55.58, 0.63, 0.57)]
    [InlineData(6, 44.42, 0.50, 0.38)]
    [Proof("head-loss-hazen-williams", Evidence.Published, "EPANET 2.2 manual, tutorial, table of links at hour 0, C 100: ft for each 1000 ft, printed rounding")]
    [Proof("pipe-velocity", Evidence.Published, "EPANET 2.2 manual, tutorial, table of links at hour 0: ft/s, printed rounding")]
    public void The_tutorials_pipes(double inches, double gallons, double feetPerSecond, double feetPerThousand)
    {
        Assert.Equal(feetPerSecond, PipeVelocity.Mean(gallons * GallonPerMinute, inches * Inch) / Foot, 0.006);
        Assert.Equal(feetPerThousand, HeadLoss.HazenWilliams(gallons * GallonPerMinute, inches * Inch, 1000, 100), 0.006);
    }

    [Fact]
    [Proof("fitting-loss", Evidence.Published, "EPANET 2.2 manual: m = 0.02517 K/d⁴ in feet and ft³/s: 0.1 % (g of 32.2 ft/s²)")]
    public void Minor_loss_is_the_manuals() =>
        Assert.Equal(0.02517 * 2.5 / Math.Pow(0.1, 4) * 0.05 * 0.05, HeadLoss.Fitting(2.5, 0.05 * CubicFoot, 0.1 * Foot) / Foot, 1e-3 * 1.6);

    [Fact]
    [Proof("head-loss", Evidence.Derived, "against Hazen and Williams, C 150, where both claim to hold (0.6 to 3 m/s, 25 to 110 mm, 15 to 20 °C): 15 %")]
    [Proof("head-loss-hazen-williams", Evidence.Derived, "against Darcy and Weisbach where both claim to hold (0.6 to 3 m/s, 25 to 110 mm, 15 to 20 °C): 15 %")]
    public void Two_unlike_rules_agree() =>
        Gen.Select(Gen.Double[0.6, 3], Gen.Double[0.025, 0.110], Gen.Double[15, 20]).Sample((speed, bore, celsius) =>
        {
            var flow = speed * PipeVelocity.Area(bore);
            var darcy = HeadLoss.Pipe(flow, bore, 10, FullPipe.PlasticRoughness, WaterProperties.KinematicViscosity(celsius));
            Assert.InRange(HeadLoss.HazenWilliams(flow, bore, 10, 150) / darcy, 0.85, 1.15);
        });

    [Fact]
    [Proof("head-loss", Evidence.Derived, "never falls as flow rises, through all three regimes, and turns its sign with the flow")]
    public void Head_loss_never_falls() =>
        Gen.Select(Gen.Double[0, 3e-3], Gen.Double[0, 1e-4], Gen.Double[0.01, 0.1], Gen.Double[0, 1e-4]).Sample((flow, more, bore, rough) =>
        {
            var loss = HeadLoss.Pipe(flow, bore, 1, rough, 1e-6);
            Assert.True(HeadLoss.Pipe(flow + more, bore, 1, rough, 1e-6) >= loss);
            Assert.Equal(-loss, HeadLoss.Pipe(-flow, bore, 1, rough, 1e-6));
        });

    [Fact]
    [Proof("head-loss", Evidence.Derived, "by hand: 2000 L/h in 26.64 mm, 5 m, 20 °C: friction 0.231 m, fittings of K 5.3 0.268 m: 1 %")]
    [Proof("fitting-loss", Evidence.Derived, "by hand: 2000 L/h in 26.64 mm, K 5.3: 0.268 m")]
    public void A_home_pipe_by_hand()
    {
        var flow = 2.0 / 3600;
        Assert.Equal(0.9967, PipeVelocity.Mean(flow, 0.02664), 1e-4);
        Assert.Equal(0.231, HeadLoss.Pipe(flow, 0.02664, 5, 1.5e-6, WaterProperties.KinematicViscosity(20)), 0.0025);
        Assert.Equal(0.268, HeadLoss.Fitting(5.3, flow, 0.02664), 0.0005);
    }
}
