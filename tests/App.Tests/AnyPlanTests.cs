using CsCheck;
using Runnel.Engine.Assess;
using Runnel.Files;
using Runnel.Files.Tests;

namespace Runnel.App.Tests;

/// <summary>Whatever a plan says within the format, it ends in figures and findings: impossible loops too.</summary>
public sealed class AnyPlanTests
{
    [Fact]
    public void Every_random_plan_that_can_be_read_can_be_assessed() => RandomPlans.Texts.Sample(text =>
    {
        var file = PlanFile.Parse(text, "random.yaml");
        if (file.Plan is null)
        {
            return;
        }
        Look(Plans.Assess(file, draws: 2));
    }, iter: 1500);

    internal static void Look(Assessment assessment)
    {
        var working = new Working(new Style(assessment.Plan.Units, assessment.Plan.Currency));
        foreach (var figure in assessment.Figures.All)
        {
            Assert.True(double.IsFinite(figure.Si) && double.IsFinite(figure.Low) && double.IsFinite(figure.High), figure.Id);
            Assert.NotEmpty(working.Sentence(figure));
        }
        var style = new Style(assessment.Plan.Units);
        Assert.All(assessment.Findings, f => Assert.NotEmpty(style.Print(f.Saw) + style.Print(f.Do)));
    }
}
