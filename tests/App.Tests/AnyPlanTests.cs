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

    public static TheoryData<string> Examples => [.. Plans.Examples.Select(e => Path.GetFileName(e))];

    [Theory]
    [MemberData(nameof(Examples))]
    public void Every_input_of_an_example_may_go_to_its_extremes(string example)
    {
        var file = PlanFile.Read(Path.Combine(HouseTests.Root, "examples", example));
        var inputs = Plans.Assess(file).Figures.All.SelectMany(Working.Inputs).DistinctBy(i => i.From.Path).ToList();
        var (taken, refused) = (0, 0);
        foreach (var input in inputs.Where(i => file.CanChange(i.From.Path)))
        {
            var unit = input.Unit.Symbol;
            foreach (var number in new[] { "0", "0.000001", "1", "24", "100", "1000000", "0 to 1000" })
            {
                var changed = file.With(input.From.Path, $"{number} {unit}".Trim());
                if (changed.Plan is null)
                {
                    refused++;
                    continue;
                }
                taken++;
                Look(Plans.Assess(changed, draws: 1));
            }
        }
        Assert.True(taken > 200 && refused > 50, $"{taken} taken, {refused} refused");
    }

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
