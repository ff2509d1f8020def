using System.Text;
using Runnel.Engine.Plan;
using Runnel.Engine.Quantities;
using Runnel.Files.Values;

namespace Runnel.Files;

/// <summary>Writes prices: in one line where that can be read back, else key by key.</summary>
internal static class PriceWriter
{
    public static string? Short(Price price, string currency)
    {
        if (price.Supplier is { } shop && (shop.Contains(',', StringComparison.Ordinal) || shop.Trim() != shop || shop.Length == 0))
        {
            return null;
        }
        var clauses = new List<string>();
        if (!IsFree(price, currency))
        {
            var (amount, likely) = ValueText.Parts(price.Amount);
            clauses.Add(amount + Per(price));
            if (likely is not null)
            {
                clauses.Add($"likely {likely}");
            }
        }
        else if (Per(price).Length > 0)
        {
            return null;
        }
        if (price.Condition != Condition.New)
        {
            clauses.Add(ValueText.Of(price.Condition));
        }
        if (price.WholePacks is { } whole && whole != PriceText.IsPack(AsQuantity(price.Per)))
        {
            clauses.Add(whole ? "whole packs" : "loose");
        }
        if (price.Seen is { } seen)
        {
            clauses.Add($"seen {ValueText.Of(seen)}");
        }
        if (price.Supplier is not null)
        {
            clauses.Add($"at {price.Supplier}");
        }
        return string.Join(", ", clauses);
    }

    public static void Long(StringBuilder text, Price price, string currency, int indent)
    {
        void Say(string key, string value) => PlanWriter.Scalar(PlanWriter.Key(text, indent, key), value);
        if (!IsFree(price, currency))
        {
            Say("price", ValueText.Write(price.Amount));
        }
        if (price.Per.From.Kind != OriginKind.Default)
        {
            Say("per", ValueText.Write(price.Per));
        }
        if (price.WholePacks is { } whole)
        {
            Say("packs", ValueText.Of(whole));
        }
        Say("condition", ValueText.Of(price.Condition));
        if (price.Seen is { } seen)
        {
            Say("seen", ValueText.Of(seen));
        }
        if (price.Supplier is not null)
        {
            Say("at", price.Supplier);
        }
    }

    private static bool IsFree(Price price, string currency) =>
        price.Condition == Condition.Owned && price.Amount.High == 0 && price.Amount.Low == 0 && price.Amount.Unit.Symbol == currency;

    private static Quantity AsQuantity(Estimate per) => new(per.Low, per.Likely, per.High, per.Unit);

    private static string Per(Price price)
    {
        var per = price.Per;
        var one = Math.Abs(per.Unit.FromSi(per.Likely) - 1) < 1e-9;
        if (per.Unit.Dimension == Dimension.None)
        {
            return !one ? $" per {ValueText.Write(per)}" : per.From.Kind == OriginKind.Default ? "" : " each";
        }
        return one ? $" per {Hints.Spelled(per.Unit)}" : $" per {ValueText.Write(per)}";
    }
}
