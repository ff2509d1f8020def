using Runnel.Engine.Figures;
using Runnel.Engine.Findings;
using Runnel.Engine.Money;
using Runnel.Engine.Plan;
using Runnel.Engine.Quantities;

namespace Runnel.Engine.Assess;

/// <summary>Finds prices by the name of a part and turns quantities into money.</summary>
internal sealed class Pricing(Desk desk)
{
    private readonly Dictionary<string, Price> _byName = desk.Plan.Prices.Values
        .ToDictionary(p => Parts.Tidy(p.Name), StringComparer.OrdinalIgnoreCase);

    private readonly HashSet<string> _used = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>Names of prices that nothing in the plan asked for.</summary>
    public IEnumerable<string> Unused => _byName.Keys.Where(k => !_used.Contains(k));

    /// <summary>The price of a part, by its own name or a shorter one, or null.</summary>
    public Price? Find(string part, IReadOnlyList<string>? generic = null)
    {
        foreach (var name in (generic ?? []).Prepend(part))
        {
            if (_byName.TryGetValue(name, out var price) || _byName.TryGetValue(name + "s", out price))
            {
                _used.Add(Parts.Tidy(price.Name));
                return price;
            }
        }
        return null;
    }

    /// <summary>One price in the plan's currency.</summary>
    public Figure Amount(Price price)
    {
        var amount = desk.Take(price.Amount);
        if (price.Currency.Length == 0 || price.Currency.Equals(desk.Plan.Currency, StringComparison.OrdinalIgnoreCase)
            || !desk.Plan.Exchange.TryGetValue(price.Currency, out var rate))
        {
            return amount;
        }
        return (amount * desk.Take(rate)).Called($"Price of {price.Name} in {desk.Plan.Currency}", desk.Currency);
    }

    /// <summary>What a quantity costs, and in how many packs; null when price and quantity do not measure the same.</summary>
    public (Figure Cost, Figure? Packs)? Buy(string part, Figure quantity, Price price, Estimate? density = null)
    {
        if (price.Condition == Condition.Owned)
        {
            return (Figure.Constant(0, desk.Currency, $"{part}: already owned", Source.Definition("plan: owned")), null);
        }
        var per = desk.Take(price.Per);
        if (Measured(part, quantity, per, density) is not { } needed)
        {
            return null;
        }
        var amount = Amount(price);
        if (per.Dimension == Dimension.None && per.Si is 1)
        {
            if (!Purchase.InWholePacks(price))
            {
                return (needed * amount, null);
            }
            // A count that is whole already needs no rounding step in its sum.
            var whole = Math.Abs(needed.Si - Math.Round(needed.Si)) < 1e-9 ? needed : needed.RoundUp("");
            return (whole * amount, ReferenceEquals(whole, needed) ? null : whole);
        }
        if (Purchase.InWholePacks(price))
        {
            var packs = (needed / per).RoundUp(Packs(price, Math.Ceiling(needed.Si / per.Si - 1e-9)));
            return (packs * amount, packs);
        }
        var unit = per.Si == per.Unit!.Factor ? per.Unit : new Unit(Writes(price), per.Dimension, per.Si);
        return (needed * (amount / per).Called($"Price of {part}", desk.Currency.Per(unit)), null);
    }

    private Figure? Measured(string part, Figure quantity, Figure per, Estimate? density)
    {
        if (quantity.Dimension == per.Dimension)
        {
            return quantity;
        }
        if (density is not null && quantity.Dimension == Units.Litre.Dimension && per.Dimension == Units.Kilogram.Dimension)
        {
            return (quantity * desk.Take(density)).Called($"Weight of {part}", Units.Kilogram);
        }
        desk.Say(new Finding(
            "price.other-unit", Severity.Warning, part,
            Said.Of($"the plan needs {new Amount(quantity.Si, quantity.Unit ?? Units.One)}, the price is for {new Amount(per.Si, per.Unit ?? Units.One)}"),
            "quantity and price in the same measure", "Write the price per the same kind of unit, or weigh and measure one pack. It is counted as unpriced.",
            $"prices/{part}"));
        return null;
    }

    private static string Packs(Price price, double number)
    {
        var size = price.Per.Unit.Dimension == Dimension.None ? $"{price.Per.Likely:0.##}" : Writes(price);
        return number is 1 ? $"pack of {size}" : $"packs of {size}";
    }

    private static string Writes(Price price) => $"{price.Per.Unit.FromSi(price.Per.Likely):0.##} {price.Per.Unit.Symbol}";
}
