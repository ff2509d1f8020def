using CsCheck;
using Runnel.Engine.Plan;

namespace Runnel.Files.Tests;

/// <summary>Written and read again, a plan is the same plan.</summary>
public class RoundTripTests
{
    [Fact]
    public void Random_plans_survive_writing_and_reading() => RandomPlans.Texts.Sample(text =>
    {
        Same(Read(text));
    }, iter: 1000, threads: 1);

    [Fact]
    public void Plans_of_the_repository_survive_writing_and_reading()
    {
        foreach (var plan in Samples.Plans.Select(PlanFile.Read).Select(f => f.Plan).OfType<LoopPlan>())
        {
            Same(plan with { PriceList = null });
        }
    }

    [Fact]
    public void Every_value_of_a_random_plan_can_be_replaced_by_itself() => RandomPlans.Texts.Sample(text =>
    {
        var file = PlanFile.Parse(PlanWriter.Write(Read(text)), "random.yaml");
        foreach (var path in Estimates.Of(file.Plan!).Select(e => e.From.Path).Where(p => file.TextAt(p) is not null).Distinct(StringComparer.Ordinal).Take(10))
        {
            Assert.Equal(file.Text, file.With(path, file.TextAt(path)!).Text);
        }
    }, iter: 50, threads: 1);

    private static LoopPlan Read(string text)
    {
        var file = PlanFile.Parse(text, "random.yaml");
        return file.Plan ?? throw new InvalidOperationException($"{string.Join('\n', file.Errors)}\n{text}");
    }

    private static void Same(LoopPlan plan)
    {
        var text = PlanWriter.Write(plan);
        var again = PlanFile.Parse(text, "written.yaml");
        Assert.True(again.Plan is not null, $"{string.Join('\n', again.Errors)}\n{text}");
        Assert.Null(Estimates.Difference(plan, again.Plan));
        Assert.Equal(text, PlanWriter.Write(again.Plan!));
    }
}
