using Runnel.Engine.Plan;
using Runnel.Engine.Quantities;

namespace Runnel.App.Report;

/// <summary>What a price is for, as it is read.</summary>
public static class PriceWords
{
    /// <summary>What one price buys: "each", "50 L", "m".</summary>
    public static string PriceFor(Price price)
    {
        ArgumentNullException.ThrowIfNull(price);
        var unit = price.Per.Unit;
        var amount = unit.FromSi(price.Per.Likely);
        if (unit.Dimension == Dimension.None)
        {
            return amount is 1 ? "each" : $"{amount:0.##}";
        }
        return Math.Abs(amount - 1) < 1e-9 ? unit.Symbol : $"{amount:0.##} {unit.Symbol}";
    }
}
