using Runnel.Engine.Figures;

namespace Runnel.Engine.Tests;

/// <summary>What every entry of the formulary owes its reader.</summary>
public sealed class FormulaDescriptionTests
{
    public static TheoryData<string> Ids() => [.. Formulary.All.Select(f => f.Id)];

    [Fact]
    public void Every_formula_has_its_own_name() => Assert.Distinct(Formulary.All.Select(f => f.Id));

    [Fact]
    public void Every_formula_that_is_written_is_listed() =>
        Assert.Empty(Formulary.Written.Except<Formula>(Formulary.All, ReferenceEqualityComparer.Instance).Select(f => f.Id));

    [Theory]
    [MemberData(nameof(Ids))]
    public void It_says_what_it_is_and_where_it_comes_from(string id)
    {
        var formula = Find(id);
        Assert.Matches("^[a-z0-9]+(-[a-z0-9]+)*$", formula.Id);
        Assert.NotEmpty(formula.Sources);
        Assert.All(formula.Sources, s => Assert.False(string.IsNullOrWhiteSpace(s.Text)));
        Assert.All(
            new[] { formula.Name, formula.Subject, formula.Equation, formula.Error, formula.Output.Id, formula.Output.Label },
            text => Assert.False(string.IsNullOrWhiteSpace(text)));
        Assert.Contains('=', formula.Equation);
        Assert.True(formula.NotFor is null || formula.NotFor.Length > 0);
        Assert.NotEmpty(formula.Inputs);
        Assert.Distinct(formula.Inputs.Select(i => i.Id));
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Each_input_has_a_range_that_holds_its_default(string id)
    {
        foreach (var input in Find(id).Inputs)
        {
            Assert.True(double.IsFinite(input.Min) && double.IsFinite(input.Max) && input.Min < input.Max, input.Id);
            Assert.Matches("^[a-z0-9]+(-[a-z0-9]+)*$", input.Id);
            Assert.False(string.IsNullOrWhiteSpace(input.Label), input.Id);
            if (input.Default is { } value)
            {
                Assert.InRange(value, input.Min, input.Max);
                Assert.False(string.IsNullOrWhiteSpace(input.DefaultSource), input.Id);
            }
        }
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void It_gives_a_number_all_over_its_range_and_refuses_all_else(string id)
    {
        var formula = Find(id);
        double[] inside = [.. formula.Inputs.Select(i => i.Default ?? (i.Min + i.Max) / 2)];
        Assert.True(double.IsFinite(formula.Compute(inside)));
        for (var i = 0; i < inside.Length; i++)
        {
            var input = formula.Inputs[i];
            foreach (var good in new[] { input.Min, input.Max })
            {
                Assert.True(double.IsFinite(formula.Compute(With(inside, i, good))), $"{input.Id} = {good}");
            }
            double[] bad =
            [
                Math.BitDecrement(input.Min), Math.BitIncrement(input.Max), double.NaN, double.PositiveInfinity, double.NegativeInfinity,
            ];
            foreach (var value in bad)
            {
                var e = Assert.Throws<ArgumentOutOfRangeException>(() => formula.Compute(With(inside, i, value)));
                Assert.False(string.IsNullOrEmpty(e.ParamName), $"{input.Id} = {value}");
            }
        }
        Assert.True(double.IsFinite(formula.Compute([.. formula.Inputs.Select(i => i.Min)])), "all at their least");
        Assert.True(double.IsFinite(formula.Compute([.. formula.Inputs.Select(i => i.Max)])), "all at their greatest");
    }

    [Fact]
    public void Every_proof_is_a_test_of_a_formula_that_is_there()
    {
        var known = Formulary.All.Select(f => f.Id).ToHashSet();
        Assert.All(Formulary.Proofs, p =>
        {
            Assert.Contains(p.Proof.Formula, known);
            Assert.NotEmpty(p.Proof.Source);
            Assert.NotEmpty(p.Test.GetCustomAttributes(typeof(FactAttribute), inherit: true));
        });
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void It_claims_no_more_than_its_proofs_carry(string id)
    {
        var proofs = Formulary.Proofs.Where(p => p.Proof.Formula == id).Select(p => p.Proof).ToList();
        Assert.Contains(proofs, p => p.Evidence > Evidence.Pinned);
        var enough = Find(id).Confidence switch
        {
            Confidence.Textbook => true,
            // A worked example that was recalled and not re-read carries no claim.
            Confidence.PublishedExample => proofs.Any(p => p.Evidence >= Evidence.Published && !p.Source.StartsWith("from memory")),
            Confidence.Measured => proofs.Any(p => p.Evidence == Evidence.Measured),
            _ => false,
        };
        Assert.True(enough, $"{id} claims {Find(id).Confidence}");
    }

    private static double[] With(double[] values, int at, double value)
    {
        double[] copy = [.. values];
        copy[at] = value;
        return copy;
    }

    private static Formula Find(string id) => Formulary.All.Single(f => f.Id == id);
}
