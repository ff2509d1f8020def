using Runnel.Engine.Assess;
using Runnel.Engine.Figures;
using Runnel.Engine.Numerics;
using Runnel.Engine.Quantities;

namespace Runnel.App.Tests;

/// <summary>What holds for every figure of every example: it can be opened, and what it shows is what was computed.</summary>
public sealed class FigureTests
{
    public static TheoryData<string> Examples => [.. Plans.Examples.Select(e => Path.GetFileName(e))];

    private static Assessment Assess(string example, int draws = 0) => Workbench.Open(Path.Combine(HouseTests.Root, "examples", example)).Assess(draws, cancel: TestContext.Current.CancellationToken)!;

    [Theory]
    [MemberData(nameof(Examples))]
    public void Each_figure_equals_the_arithmetic_it_shows(string example)
    {
        var seen = new HashSet<Figure>(ReferenceEqualityComparer.Instance);
        foreach (var figure in Assess(example).Figures.All)
        {
            Check(figure);
        }
        Assert.True(seen.Count > 500, $"only {seen.Count} figures were looked at");

        void Check(Figure figure)
        {
            if (!seen.Add(figure))
            {
                return;
            }
            var again = figure.How switch
            {
                Product p => p.Factors.Aggregate(1.0, (x, f) => x * f.Si),
                Quotient q => q.Dividend.Si / q.Divisor.Si,
                Total t => t.Terms.Sum(f => f.Si),
                Difference d => d.From.Si - d.Take.Si,
                Extreme { Largest: true } e => e.Of.Max(f => f.Si),
                Extreme e => e.Of.Min(f => f.Si),
                Applied a => a.Formula.Output.Unit.ToSi(a.Formula.Compute([.. a.Arguments.Select((x, i) => a.Formula.Inputs[i].Unit.FromSi(x.Si))])),
                Given g => g.Estimate.Likely,
                _ => figure.Si,
            };
            Assert.Equal(again, figure.Si, 1e-9 * Math.Max(1e-12, Math.Abs(figure.Si)));
            foreach (var parent in figure.Parents)
            {
                Check(parent);
            }
        }
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void Each_figure_can_be_opened_in_both_unit_systems(string example)
    {
        var assessment = Assess(example);
        foreach (var system in Enum.GetValues<Engine.Plan.UnitSystem>())
        {
            var working = new Working(new Style(system, assessment.Plan.Currency));
            Assert.All(assessment.Figures.All, f =>
            {
                var sentence = working.Sentence(f);
                Assert.False(string.IsNullOrWhiteSpace(sentence), f.Id);
                Assert.DoesNotContain("NaN", sentence);
                Assert.DoesNotContain("^", sentence);
                Assert.NotEmpty(f.Label!);
            });
        }
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void Ranges_hold_the_value_and_are_the_same_every_time(string example)
    {
        var first = Assess(example, 64);
        var second = Assess(example, 64);

        Assert.All(first.Figures.All, f =>
        {
            Assert.InRange(f.Si, f.Low, f.High);
            Assert.Equal((f.Low, f.High), (second.Figures[f.Id!].Low, second.Figures[f.Id!].High));
        });
        Assert.True(first.Figures["build.total"].IsRange);
    }

    // Derived: the 10 % and 90 % points of a triangle from 100 to 200 with its peak at 120 are 100 + √(0.1 × 100 × 20) and
    // 200 − √(0.1 × 100 × 80).
    [Fact]
    public void A_single_range_comes_back_as_its_own_quantiles()
    {
        var assessment = Plans.Assess("""
            extra parts: {gadget: {number: 1}}
            spare money: 0 %
            prices: {gadget: "100 to 200 USD, likely 120"}
            """, draws: 1000);

        var total = assessment.Figures["build.total"];
        Assert.Equal(120, total.Value, 1e-9);
        Assert.Equal(100 + Math.Sqrt(0.1 * 100 * 20), total.Unit!.FromSi(total.Low), 0.3);
        Assert.Equal(200 - Math.Sqrt(0.1 * 100 * 80), total.Unit!.FromSi(total.High), 0.3);
    }

    [Fact]
    public void Inputs_that_are_the_same_thing_are_drawn_together()
    {
        // Two vessels written alike share their size: the ratio of their volumes cannot vary.
        var assessment = Plans.Assess("""
              one: {role: sump, shape: box 40 to 60 cm x 50 cm x 50 cm, level: 30 cm}
              two: {like: one}
            """, draws: 50);
        var (one, two) = (assessment.Figures["vessel.one.water"], assessment.Figures["vessel.two.water"]);

        Assert.True(one.IsRange);
        Assert.Equal((one.Low, one.High), (two.Low, two.High));
    }

    // Derived: quantiles of the triangular distribution against its distribution function by integration.
    [Fact]
    public void Drawn_values_follow_their_distribution()
    {
        var estimate = Estimate.Of(2, 10, Units.Metre, new Origin("x", "x"), 4);
        foreach (var share in new[] { 0.01, 0.25, 0.5, 0.9 })
        {
            var at = Distributions.At(estimate, share);
            const int Steps = 200_000;
            var area = Enumerable.Range(0, Steps).Select(i => 2 + (at - 2) * (i + 0.5) / Steps)
                .Sum(x => (x < 4 ? 2 * (x - 2) / (8 * 2) : 2 * (10 - x) / (8 * 6)) * (at - 2) / Steps);
            Assert.Equal(share, area, 1e-6);
        }
    }
}
