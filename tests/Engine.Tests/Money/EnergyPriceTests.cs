using Runnel.Engine.Money;

namespace Runnel.Engine.Tests.Money;

/// <summary>Derived by hand: up to 100 kWh 0.10, up to 300 kWh 0.20, above 0.50.</summary>
public class EnergyPriceTests
{
    private static readonly EnergyPrice Blocks = EnergyPrice.InBlocks([new(100, 0.10), new(300, 0.20), new(double.PositiveInfinity, 0.50)]);

    [Theory]
    [InlineData(0, 80, 8)] // all in the first
    [InlineData(0, 400, 100)] // 100 × 0.10 + 200 × 0.20 + 100 × 0.50
    [InlineData(250, 100, 35)] // 50 × 0.20 + 50 × 0.50
    [InlineData(50, 300, 70)] // 50 × 0.10 + 200 × 0.20 + 50 × 0.50
    [InlineData(350, 100, 50)] // all in the last
    [InlineData(100, 200, 40)] // exactly one block
    public void What_comes_on_top_costs_the_bill_with_minus_the_bill_without(double others, double onTop, double cost) =>
        Tariffs.Same(cost, Blocks.Marginal(others, onTop) * onTop);

    [Theory]
    [InlineData(0, 0.10)]
    [InlineData(99, 0.10)]
    [InlineData(100, 0.20)]
    [InlineData(1000, 0.50)]
    public void With_nothing_on_top_it_is_the_price_of_the_next_bit(double others, double price) =>
        Assert.Equal(price, Blocks.Marginal(others, 0));

    // Limits 50 and 150: 50 × 0.10 + 100 × 0.20 + 50 × 0.50.
    [Fact]
    public void Half_a_month_has_half_the_limits() => Tariffs.Same(50, Blocks.Marginal(0, 200, 0.5) * 200);

    [Fact]
    public void A_flat_price_is_given_back_to_the_bit() => Assert.Equal(0.1 + 0.2, EnergyPrice.Flat(0.1 + 0.2).Marginal(1234.5678, 0.1));

    [Fact]
    public void Limits_that_cross_make_an_empty_block()
    {
        var crossed = EnergyPrice.InBlocks([new(100, 0.10), new(90, 0.20), new(double.PositiveInfinity, 0.50)]);

        Tariffs.Same(10 + 50, crossed.Marginal(0, 200) * 200);
    }

    [Fact]
    public void The_last_block_has_no_limit() =>
        Tariffs.Same(10 + 100, EnergyPrice.InBlocks([new(100, 0.10), new(200, 1)]).Marginal(0, 200) * 200);

    [Fact]
    public void A_negative_price_pays_back() => Tariffs.Same(-2, EnergyPrice.Flat(-0.02).Marginal(10, 100) * 100);

    [Fact]
    public void What_is_no_block_is_refused()
    {
        Assert.Throws<ArgumentException>(() => EnergyPrice.InBlocks([]));
        Assert.Throws<ArgumentException>(() => EnergyPrice.Flat(double.NaN));
        Assert.Throws<ArgumentException>(() => EnergyPrice.InBlocks([new(-1, 0.1), new(10, 0.2)]));
        Assert.Throws<ArgumentException>(() => EnergyPrice.InBlocks([new(double.NaN, 0.1), new(10, 0.2)]));
    }
}
