using Runnel.Engine.Plan;
using Runnel.Engine.Quantities;

namespace Runnel.Files.Tests;

public class SampleTests
{
    [Fact]
    public void The_sample_plan_reads_without_errors()
    {
        var file = PlanFile.Parse(Samples.Cellar, "cellar.yaml");
        Assert.Empty(file.Errors);
        Assert.NotNull(file.Plan);
    }
}
