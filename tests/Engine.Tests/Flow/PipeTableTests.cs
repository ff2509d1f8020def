using Runnel.Engine.Flow;
using Runnel.Engine.Plan;
using Runnel.Engine.Quantities;

namespace Runnel.Engine.Tests.Flow;

public class PipeTableTests
{
    [Theory]
    [InlineData(0.5, 15.80)]
    [InlineData(0.75, 20.93)]
    [InlineData(1, 26.64)]
    [InlineData(1.25, 35.05)]
    [InlineData(1.5, 40.89)]
    [InlineData(2, 52.50)]
    [InlineData(2.5, 62.71)]
    [InlineData(3, 77.93)]
    [InlineData(4, 102.26)]
    public void Schedule_40_bores_are_D1785s(double inches, double millimetres) =>
        // Published: C. Bell, fluids, table of ASTM D1785.
        Assert.Equal(millimetres, 1000 * InsideDiameter.Schedule40FromMinimumWall(inches), 0.006);

    [Theory]
    [InlineData("1 in PVC", 0.0254, "PVC", 26.24, 26.64)]
    [InlineData("3/4 in PVC", 0.01905, "PVC", 20.57, 20.93)]
    [InlineData("1\" PVC", 0.0254, "PVC", 26.24, 26.64)]
    [InlineData("25 mm PVC", 0.025, "PVC", 21.2, 22.0)]
    [InlineData("50 mm PVC", 0.050, "PVC", 42.6, 45.2)]
    [InlineData("3/4 in hose", 0.01905, "hose", 18.1, 19.63)]
    [InlineData("16 mm hose", 0.016, "hose", 15.2, 16.48)]
    public void A_plans_pipe_finds_its_bore(string text, double nominal, string material, double low, double high)
    {
        var bore = InsideDiameter.Of(new PipeSize(text, nominal, material));
        Assert.Equal(low, 1000 * bore.Low, 0.011);
        Assert.Equal(high, 1000 * bore.High, 0.011);
        Assert.InRange(bore.Likely, bore.Low, bore.High);
        Assert.Equal(OriginKind.Catalogue, bore.From.Kind);
        Assert.NotEmpty(bore.From.Source!);
    }

    [Theory]
    [InlineData("28 mm PE", 0.028, "PE")]
    [InlineData("7 in PVC", 0.1778, "PVC")]
    public void A_pipe_in_no_table_is_a_guess_and_says_so(string text, double nominal, string material)
    {
        var bore = InsideDiameter.Of(new PipeSize(text, nominal, material));
        Assert.Equal(OriginKind.Default, bore.From.Kind);
        Assert.Contains("no source", bore.From.Source);
        Assert.True(bore.IsRange);
    }

    [Fact]
    public void Every_fitting_has_its_span_and_source()
    {
        foreach (var fitting in Enum.GetValues<Fitting>())
        {
            var k = FittingLoss.Of(fitting);
            Assert.InRange(k.Likely, k.Low, k.High);
            Assert.True(k.Low > 0);
            Assert.NotEmpty(k.From.Source!);
        }
        // Published: EPANET 2.2 manual, table 3.3.
        Assert.Equal([0.9, 0.6, 1.8, 0.2, 0.5, 1.0, 2.5],
            new[] { Fitting.Elbow, Fitting.TeeRun, Fitting.TeeBranch, Fitting.Valve, Fitting.FlushEntrance, Fitting.Exit, Fitting.CheckValve }
                .Select(f => FittingLoss.Of(f).Likely));
    }

    [Theory]
    [InlineData(Fitting.Elbow, 30, 0.66)]
    [InlineData(Fitting.TeeRun, 20, 0.44)]
    [InlineData(Fitting.TeeBranch, 60, 1.32)]
    public void The_low_end_is_Cranes(Fitting fitting, double multiplier, double k)
    {
        // Published: Crane TP-410 friction factor 0.022 for 25 mm (via fluids); multipliers from memory.
        Assert.Equal(k, multiplier * 0.022, 3);
        Assert.Equal(k, FittingLoss.Of(fitting).Low);
    }

    [Theory]
    [InlineData("PVC", 0.0015)]
    [InlineData("hose", 0.0015)]
    [InlineData("galvanised steel", 0.1524)]
    [InlineData("steel", 0.04572)]
    public void Roughness_is_the_manuals(string material, double millimetres) =>
        // Published: EPANET 2.2 manual, table 3.2, thousandths of a foot.
        Assert.Equal(millimetres, 1000 * Roughness.Of(material).Likely, 1e-6);

    [Fact]
    public void Ribs_cost_several_smooth_pipes()
    {
        var (smooth, ribbed) = (Roughness.Of("hose").Likely, Roughness.Of("corrugated hose").Likely);
        var ratio = HeadLoss.Pipe(5e-4, 0.025, 1, ribbed, 1e-6) / HeadLoss.Pipe(5e-4, 0.025, 1, smooth, 1e-6);
        Assert.InRange(ratio, 2, 4);
    }
}
