using CsCheck;
using Runnel.Engine.Flow;

namespace Runnel.Engine.Tests.Flow;

public class PumpTests
{
    private const double Foot = 0.3048;
    private const double GallonPerMinute = 0.003785411784 / 60;
    private const double LitrePerHour = 0.001 / 3600;
    private const double Horsepower = 745.69987158227;

    [Fact]
    [Proof("pump-one-point", Evidence.Published, "EPANET 2.2 manual, curve editor: 600 gpm at 150 ft gives 200.00 − 0.0001389 Q² ft")]
    public void One_point_is_the_manuals_curve()
    {
        var curve = PumpCurve.FromDesignPoint(600 * GallonPerMinute, 150 * Foot);
        Assert.Equal(200, curve.ShutOffHead / Foot, 9);
        Assert.Equal(200 - 1.38889e-4 * 617.42 * 617.42, curve.HeadAt(617.42 * GallonPerMinute) / Foot, 0.001);
        Assert.Equal(1200, curve.FreeFlow / GallonPerMinute, 1e-6);
    }

    [Fact]
    [Proof("affinity-flow", Evidence.Published, "Crane TP-410M example 7-33 as quoted by C. Bell, fluids: 3500 to 1700 rpm, 400 gpm to 194.3")]
    [Proof("affinity-head", Evidence.Published, "Crane TP-410M example 7-33 as quoted by C. Bell, fluids: 126 ft to 29.73")]
    [Proof("affinity-power", Evidence.Published, "Crane TP-410M example 7-33 as quoted by C. Bell, fluids: 17.5 hp to 2.005")]
    public void Crane_7_33()
    {
        const double ratio = 1700.0 / 3500;
        Assert.Equal(194.29, Affinity.Flow(400 * GallonPerMinute, ratio) / GallonPerMinute, 0.01);
        Assert.Equal(29.726, Affinity.Head(126 * Foot, ratio) / Foot, 0.003);
        Assert.Equal(2.0053, Affinity.Power(17.5 * Horsepower, ratio) / Horsepower, 0.0002);
    }

    [Fact]
    [Proof("hydraulic-power", Evidence.Published, "Crane TP-410M example 7-34 as quoted by C. Bell, fluids: 700 gpm, 428 ft, pump 0.707: 107.0 bhp: 0.3 %")]
    [Proof("wire-to-water", Evidence.Published, "Crane TP-410M example 7-34 as quoted by C. Bell, fluids: motor 0.95, drive 0.96: 117.4 hp at the plug: 0.3 %")]
    public void Crane_7_34()
    {
        var (flow, head) = (700 * GallonPerMinute, 428 * Foot);
        Assert.Equal(107.0, PumpPower.Hydraulic(flow, head) / 0.707 / Horsepower, 0.003 * 107);
        Assert.Equal(0.707 * 0.95 * 0.96, PumpPower.WireToWater(flow, head, 117.4 * Horsepower), 0.003 * 0.645);
    }

    [Fact]
    [Proof("wire-to-water", Evidence.Published, "a pond trade magazine 2011: 3000 gal/h at 4 ft for 250 W, 15 %")]
    public void A_small_submersible()
    {
        var efficiency = PumpPower.WireToWater(3000 * 0.003785411784 / 3600, 4 * Foot, 250);
        Assert.Equal(0.151, efficiency, 0.001);
    }

    [Fact]
    [Proof("hydraulic-power", Evidence.Derived, "a litre weighs 0.998 kg at 20 °C: a cubic metre an hour lifted by a metre is 2.72 W")]
    public void A_cubic_metre_an_hour_by_a_metre() => Assert.Equal(2.72, PumpFormulas.HydraulicPower.Compute([1000, 1]), 0.005);

    [Fact]
    public void Maurers_pump_meets_Maurers_pipe()
    {
        // Published: Maurer, R package hydraulics, vignette §6, least-squares fit h = a + c Q² of three points (a 82.467 ft, c −0.2009), friction
        // K 0.160 s²/ft⁵, lift 30 ft: 12.051 ft³/s, 53.285 ft.
        const double cubicFoot = Foot * Foot * Foot;
        var designFlow = Math.Sqrt(82.467 / 4 / 0.2009) * cubicFoot;
        var curve = PumpCurve.FromDesignPoint(designFlow, 0.75 * 82.467 * Foot);
        var (flow, head) = curve.WorkingPoint(q => (30 + 0.160 * Math.Pow(q / cubicFoot, 2)) * Foot);
        Assert.Equal(12.051, flow / cubicFoot, 0.01);
        Assert.Equal(53.285, head / Foot, 0.05);
    }

    [Fact]
    public void A_home_pump_by_hand()
    {
        // Derived: 3.0 (1 − (Q/4000)²) = 1.2 + 0.4998 (Q/2000)²: 2400 L/h at 1.92 m.
        var curve = PumpCurve.FromDesignPoint(2000 * LitrePerHour, 2.25);
        var (flow, head) = curve.WorkingPoint(q => 1.2 + 0.4998 * Math.Pow(q / (2000 * LitrePerHour), 2));
        Assert.Equal(2400, flow / LitrePerHour, 0.5);
        Assert.Equal(1.92, head, 0.001);
    }

    [Fact]
    public void Two_points_are_a_straight_line()
    {
        var curve = PumpCurve.Through((0, 2400 * LitrePerHour), (2.6, 0));
        Assert.Equal(1.3, curve.HeadAt(1200 * LitrePerHour), 12);
        Assert.Equal(2.6, curve.ShutOffHead, 12);
        Assert.Equal(2400, curve.FreeFlow / LitrePerHour, 1e-6);
        // The box's two ends under a bowed curve: the line promises less.
        Assert.True(curve.HeadAt(1200 * LitrePerHour) < PumpCurve.FromDesignPoint(1200 * LitrePerHour, 0.75 * 2.6).HeadAt(1200 * LitrePerHour));
    }

    [Fact]
    public void A_pump_that_cannot_lift_moves_nothing()
    {
        var (flow, head) = PumpCurve.Through((0, 1e-3), (2, 0)).WorkingPoint(q => 3 + q);
        Assert.Equal(0, flow);
        Assert.Equal(2, head, 12);
    }

    [Fact]
    public void A_curve_passes_its_points_and_never_rises() =>
        Gen.Select(Gen.Double[0.05, 1].Array[3, 7], Gen.Double[0.02, 1].Array[7]).Sample((widths, drops) =>
        {
            var points = new List<(double Head, double Flow)> { (5, 0) };
            for (var i = 0; i < widths.Length; i++)
            {
                points.Add((Math.Max(0, points[^1].Head - drops[i] * 0.6), points[^1].Flow + widths[i] * 1e-4));
            }
            var curve = PumpCurve.Through([.. points]);
            Assert.All(points, p => Assert.Equal(p.Head, curve.HeadAt(p.Flow), 12));
            var step = points[^1].Flow / 300;
            for (var q = -20 * step; q < 1.2 * points[^1].Flow; q += step)
            {
                Assert.True(curve.HeadAt(q + step) <= curve.HeadAt(q) + 1e-12);
                Assert.Equal((curve.HeadAt(q + 1e-9) - curve.HeadAt(q - 1e-9)) / 2e-9, curve.SlopeAt(q), 2e-3 * Math.Abs(curve.SlopeAt(q)) + 30);
            }
        }, iter: 50);

    [Fact]
    public void Speed_scales_the_whole_curve()
    {
        var curve = PumpCurve.Through((3, 0), (2.4, 2e-4), (1, 5e-4));
        var slow = curve.AtSpeed(0.7);
        for (var q = 0.0; q < 6e-4; q += 5e-5)
        {
            Assert.Equal(curve.HeadAt(q) * 0.49, slow.HeadAt(q * 0.7), 12);
        }
    }

    [Theory]
    [InlineData(2.0, 0.0, 3.0, 1e-3, "head must fall")]
    [InlineData(2.0, 0.0, 2.0, 1e-3, "head must fall")]
    [InlineData(2.0, 1e-4, 1.0, 1e-4, "head must fall")]
    [InlineData(double.NaN, 0.0, 1.0, 1e-4, "must be a number")]
    [InlineData(2.0, -1e-4, 1.0, 1e-4, "must be a number")]
    public void Bad_points_are_refused_with_the_reason(double h1, double q1, double h2, double q2, string reason)
    {
        Assert.False(PumpCurve.TryThrough([(h1, q1), (h2, q2)], out _, out var why));
        Assert.Contains(reason, why);
        Assert.Throws<ArgumentException>(() => PumpCurve.Through((h1, q1), (h2, q2)));
        Assert.False(PumpCurve.TryThrough([(1, 0)], out _, out _));
    }
}
