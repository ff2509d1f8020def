using Runnel.Engine.Money;
using Runnel.Engine.Quantities;
using Runnel.Files.Errors;

namespace Runnel.Files.Values;

/// <summary>Reads a unit as people write it: "kWh", "gal per minute", "EUR per kWh", "mg/L as CaCO3", "% a day".</summary>
internal static class UnitText
{
    private static readonly (string Written, string Name)[] Bases =
        [("as CaCO3", Units.AsCalciumCarbonate), ("CaCO3", Units.AsCalciumCarbonate), ("as NH3", Units.AsAmmonia), ("NH3", Units.AsAmmonia),
            ("as N", Units.AsNitrogen), ("N", Units.AsNitrogen)];

    /// <summary>The unit, or null with what is wrong.</summary>
    public static Unit? Read(string text, ValueContext context, out Trouble? trouble)
    {
        var plain = Plain(text);
        trouble = null;
        if (UnitTable.Find(plain) is { } known)
        {
            return known;
        }
        string? basis = null;
        foreach (var (written, name) in Bases)
        {
            if (plain.EndsWith(" " + written, StringComparison.OrdinalIgnoreCase))
            {
                (basis, plain) = (name, plain[..^(written.Length + 1)].TrimEnd());
                break;
            }
        }
        var parts = plain.Split('/', StringSplitOptions.TrimEntries);
        Unit? unit = null;
        for (var i = 0; i < parts.Length; i++)
        {
            if (parts[i].Length == 0 && i == 0 && parts.Length > 1)
            {
                unit = Units.One;
                continue;
            }
            var (part, counted) = TakeBasis(parts[i]);
            basis ??= counted;
            if (One(part, context, out trouble) is not { } next)
            {
                return null;
            }
            unit = unit is null ? next : Divide(unit, next);
        }
        if (unit is null || basis is null)
        {
            return unit;
        }
        return Known(unit with { Symbol = Basis(unit.Symbol, basis), Dimension = unit.Dimension with { Basis = basis } });
    }

    /// <summary>The unit of an attribute's symbol: "money/kWh" is the plan's currency for each kWh.</summary>
    public static Unit OfSymbol(string symbol, string currency)
    {
        if (symbol.Length == 0)
        {
            return Units.One;
        }
        if (symbol == "°")
        {
            return Degree;
        }
        if (symbol.StartsWith("money", StringComparison.Ordinal))
        {
            var money = Unit.Money(currency);
            return symbol.Length == 5 ? money : money.Per(UnitTable.Find(symbol[6..])!);
        }
        return UnitTable.Find(symbol) ?? throw new InvalidOperationException($"no unit has the symbol {symbol}");
    }

    /// <summary>Degrees of latitude and longitude: a plain number.</summary>
    public static readonly Unit Degree = Units.Degree;

    private static Unit Divide(Unit unit, Unit by)
    {
        // Two temperatures cannot be divided; "per °C" does not occur in a plan.
        if (unit.Dimension.IsPoint || by.Dimension.IsPoint || unit.Dimension.Basis is not null && by.Dimension.Basis is not null)
        {
            return new($"{unit.Symbol}/{by.Symbol}", new(Temperature: sbyte.MaxValue), 1);
        }
        if (by.Symbol == "pieces")
        {
            return unit;
        }
        return Known(unit.Per(by));
    }

    private static Unit Known(Unit unit) =>
        UnitTable.Find(unit.Symbol) is { } known && known.Dimension == unit.Dimension && Math.Abs(known.Factor - unit.Factor) <= 1e-12 * known.Factor
            ? known
            : unit;

    private static string Basis(string symbol, string basis)
    {
        var slash = symbol.IndexOf('/', StringComparison.Ordinal);
        var name = basis[3..];
        return slash < 0 ? $"{symbol} {name}" : $"{symbol[..slash]} {name}{symbol[slash..]}";
    }

    private static (string Part, string? Basis) TakeBasis(string part)
    {
        foreach (var (written, name) in Bases)
        {
            if (part.EndsWith(" " + written, StringComparison.OrdinalIgnoreCase))
            {
                return (part[..^(written.Length + 1)].TrimEnd(), name);
            }
        }
        return (part, null);
    }

    private static Unit? One(string name, ValueContext context, out Trouble? trouble)
    {
        trouble = null;
        if (UnitTable.Find(name) is { } known)
        {
            return known;
        }
        if (Money(name, context, ref trouble) is { } money)
        {
            return money;
        }
        trouble ??= new($"\"{name}\" is no unit that is known here",
            Nearest.Of(name, UnitTable.Spellings.Where(s => s.Length > 2)) is { } near ? $"did you mean {near}?" : "see the list of units in docs/plan-format.md");
        return null;
    }

    private static Unit? Money(string name, ValueContext context, ref Trouble? trouble)
    {
        var digits = Currency.MinorDigits(context.Currency);
        switch (name.ToLowerInvariant())
        {
            case "cent" or "cents" or "ct" or "cts" or "¢" when digits == 2:
                return new("cent", Units.MoneyDimension, 0.01);
            case "pence" or "p" or "penny" when context.Currency == "GBP":
                return new("p", Units.MoneyDimension, 0.01);
            case "$" when context.Currency is "USD" or "AUD" or "CAD" or "NZD" or "SGD" or "HKD" or "TWD" or "MXN" or "ARS" or "CLP" or "COP":
                return Unit.Money(context.Currency);
            case "$":
                trouble = new("$ may be the money of many countries", "write its code: USD, CAD, AUD");
                return null;
        }
        var code = name switch
        {
            "€" or "euro" or "euros" => "EUR",
            "£" => "GBP",
            _ => name.ToUpperInvariant(),
        };
        if (code == context.Currency)
        {
            return Unit.Money(code);
        }
        if (name.Length != 3 && code.Length != 3 || !Currency.IsKnown(code))
        {
            return null;
        }
        if (context.Exchange is null || !context.Exchange.TryGetValue(code, out var rate))
        {
            trouble = new($"{code} is not the currency of this plan ({context.Currency}) and has no exchange rate",
                $"write what 1 {code} costs in {context.Currency}, as in   exchange: {{{code}: 0.92}}");
            return null;
        }
        return new(code, Units.MoneyDimension, context.KeepsCurrency ? 1 : rate);
    }

    // One way of writing for: per, a, an, each, "/ ".
    private static string Plain(string text)
    {
        var words = text.Trim().Replace("·", " ", StringComparison.Ordinal).Replace("⋅", " ", StringComparison.Ordinal).Replace("μ", "µ", StringComparison.Ordinal)
            .Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var plain = new List<string>(words.Length);
        foreach (var word in words)
        {
            if (word is "per" or "a" or "an" && plain.Count + 1 < words.Length || word == "every")
            {
                plain.Add("/");
            }
            else if (word is "each" or "apiece" && plain.Count > 0)
            {
                // "4 USD each": for one piece; "2 h each day": for each day.
                plain.Add("/");
                if (word == "apiece" || words[^1] == word)
                {
                    plain.Add("piece");
                }
            }
            else
            {
                plain.Add(word);
            }
        }
        return string.Join(' ', plain).Replace(" /", "/", StringComparison.Ordinal).Replace("/ ", "/", StringComparison.Ordinal);
    }
}
