using System.Reflection;
using Runnel.Engine.Figures;
using Runnel.Engine.Frame;
using Runnel.Engine.Heat;
using Runnel.Engine.Light;
using Runnel.Engine.Power;
using Runnel.Engine.Volumes;

namespace Runnel.Engine.Tests;

/// <summary>What holds for every formula about the place: the declared ranges are the ones that its method guards.</summary>
public class PlaceFormulaTests
{
    public static TheoryData<string, string> Inputs()
    {
        var data = new TheoryData<string, string>();
        foreach (var formula in All)
        {
            foreach (var input in formula.Inputs)
            {
                data.Add(formula.Id, input.Id);
            }
        }
        return data;
    }

    private static IEnumerable<Formula> All => [.. VolumeFormulas.All, .. HeatFormulas.All, .. LightFormulas.All, .. PowerFormulas.All, .. FrameFormulas.All];

    [Theory, MemberData(nameof(Inputs))]
    public void A_formula_holds_to_the_ends_of_its_declared_range_and_no_further(string id, string input)
    {
        var formula = All.Single(f => f.Id == id);
        var index = formula.Inputs.ToList().FindIndex(i => i.Id == input);
        var (min, max) = (formula.Inputs[index].Min, formula.Inputs[index].Max);
        var step = 1e-6 * Math.Max(1, max - min);

        Assert.True(double.IsFinite(At(min)), "at the least value");
        Assert.True(double.IsFinite(At(max)), "at the greatest value");
        foreach (var outside in (double[])[min - step, max + step, double.NaN, double.PositiveInfinity, double.NegativeInfinity])
        {
            Assert.Throws<ArgumentOutOfRangeException>(() => At(outside));
        }

        double At(double value)
        {
            var x = formula.Inputs.Select(i => i.Min + (i.Max - i.Min) / 3).ToArray();
            x[index] = value;
            return formula.Compute(x);
        }
    }

    [Fact]
    public void Ids_are_unique_and_defaults_lie_within_range_and_have_a_source()
    {
        var ids = All.Select(f => f.Id).ToList();
        Assert.Equal(ids.Count, ids.Distinct().Count());
        foreach (var input in All.SelectMany(f => f.Inputs).Where(i => i.Default is not null))
        {
            Assert.InRange(input.Default!.Value, input.Min, input.Max);
            Assert.False(string.IsNullOrWhiteSpace(input.DefaultSource), input.Id);
        }
    }

    [Fact]
    public void A_formula_claims_no_more_than_its_proofs_carry()
    {
        var proofs = typeof(PlaceFormulaTests).Assembly.GetTypes()
            .SelectMany(t => t.GetMethods(BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Instance | BindingFlags.Static))
            .SelectMany(m => m.GetCustomAttributes<ProofAttribute>())
            .ToLookup(p => p.Formula, p => p.Evidence);
        foreach (var formula in All)
        {
            var wanted = formula.Confidence switch
            {
                Confidence.Textbook => Evidence.Derived,
                Confidence.PublishedExample => Evidence.Published,
                _ => Evidence.Measured,
            };
            Assert.True(proofs[formula.Id].Any(e => e >= wanted), $"{formula.Id} claims {formula.Confidence} without a proof");
        }
    }

    [Fact]
    public void A_formula_on_figures_gives_what_its_rule_gives_on_numbers()
    {
        foreach (var formula in All)
        {
            var values = formula.Inputs.Select(i => i.Min + (i.Max - i.Min) / 3).ToArray();
            var figures = formula.Inputs
                .Zip(values, (i, v) => Figure.Constant(v, i.Unit, i.Label, Source.Definition("a test")))
                .ToArray();
            var wanted = formula.Compute(values);
            var figure = formula.Apply(figures);
            Assert.Equal(wanted, figure.Value, 1e-9 * Math.Max(1, Math.Abs(wanted)));
            Assert.Equal(formula.Output.Unit.Dimension, figure.Dimension);
        }
    }
}
