using Runnel.Engine.Plan;
using Runnel.Engine.Quantities;

namespace Runnel.Engine.Money;

/// <summary>How parts are sold. What they then cost is plain arithmetic on figures.</summary>
public static class Purchase
{
    /// <summary>True if a part is bought in whole packs, so that the number of packs is rounded up.</summary>
    /// <remarks>
    /// What the plan says; else loose for one of a measure (a metre, a kilogram, a cubic metre) and whole for pieces and for any other
    /// amount (50 L, 4 m). Common practice, no source.
    /// </remarks>
    public static bool InWholePacks(Price price)
    {
        ArgumentNullException.ThrowIfNull(price);
        var per = price.Per;
        return price.WholePacks
            ?? (per.Unit.Dimension == Dimension.None || Math.Abs(per.Unit.FromSi(per.Likely) - 1) > 1e-9);
    }
}
