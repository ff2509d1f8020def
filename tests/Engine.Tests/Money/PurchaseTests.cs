using Runnel.Engine.Money;
using Runnel.Engine.Plan;
using Runnel.Engine.Quantities;

namespace Runnel.Engine.Tests.Money;

/// <summary>Common practice, no source: how shops sell.</summary>
public class PurchaseTests
{
    private static readonly Origin Here = new("prices/x/per", "For");

    [Fact]
    public void Pieces_and_packs_are_whole_a_measure_is_loose()
    {
        Assert.True(Purchase.InWholePacks(PerPrice(1, Unit.Count("each"))));
        Assert.True(Purchase.InWholePacks(PerPrice(50, Units.Litre)));
        Assert.True(Purchase.InWholePacks(PerPrice(4, Units.Metre)));
        Assert.False(Purchase.InWholePacks(PerPrice(1, Units.Metre)));
        Assert.False(Purchase.InWholePacks(PerPrice(1, Units.UsGallon)));
    }

    [Fact]
    public void What_the_plan_says_wins()
    {
        Assert.False(Purchase.InWholePacks(PerPrice(50, Units.Litre) with { WholePacks = false }));
        Assert.True(Purchase.InWholePacks(PerPrice(1, Units.Metre) with { WholePacks = true }));
    }

    private static Price PerPrice(double amount, Unit unit) => new() { Per = Estimate.Of(amount, unit, Here) };
}
