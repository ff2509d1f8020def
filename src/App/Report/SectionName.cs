using Runnel.Engine.Plan;
using Runnel.Engine.Quantities;

namespace Runnel.App.Report;

/// <summary>Names of what the build list holds, as they are read.</summary>
public static class SectionName
{
    /// <summary>"Pump and air".</summary>
    public static string Of(BuildSection section) => section switch
    {
        BuildSection.PumpAndAir => "Pump and air",
        BuildSection.FishAndPlants => "Fish and plants",
        _ => section.ToString(),
    };

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
