using Runnel.Engine.Money;
using Runnel.Engine.Plan;
using Runnel.Engine.Quantities;
using Runnel.Files.Errors;

namespace Runnel.Files.Values;

/// <summary>What a short price says: "60 to 90 EUR per 50 L, used, seen 2026-10-02, at the yard".</summary>
internal sealed record PriceText
{
    private static readonly string[] Clauses = ["likely", "used", "new", "owned", "each", "seen", "at", "whole packs", "loose"];

    public Quantity? Amount { get; init; }

    public Quantity? Per { get; init; }

    public bool? WholePacks { get; init; }

    public Condition? Condition { get; init; }

    public DateOnly? Seen { get; init; }

    public string? Supplier { get; init; }

    public static bool TryRead(string text, ValueContext context, double max, out PriceText price, out Trouble? trouble)
    {
        price = new();
        trouble = null;
        var clauses = Split(text);
        string? amount = null;
        for (var i = 0; i < clauses.Count; i++)
        {
            var clause = clauses[i];
            var lower = clause.ToLowerInvariant();
            if (lower is "new" or "used" or "owned")
            {
                price = price with { Condition = lower switch { "used" => Engine.Plan.Condition.Used, "owned" => Engine.Plan.Condition.Owned, _ => Engine.Plan.Condition.New } };
            }
            else if (lower == "each")
            {
                amount += " each";
            }
            else if (lower is "whole packs" or "loose")
            {
                price = price with { WholePacks = lower == "whole packs" };
            }
            else if (lower.StartsWith("likely ", StringComparison.Ordinal) && amount is not null)
            {
                // Kept with the amount: per may follow the range, as in 30 to 50 USD each, likely 35.
                amount += $", {clause}";
            }
            else if (lower.StartsWith("seen ", StringComparison.Ordinal))
            {
                var day = lower[5..].Trim();
                if (!TimeText.TryDate(day.StartsWith("on ", StringComparison.Ordinal) ? day[3..] : day, out var seen, out trouble))
                {
                    return false;
                }
                price = price with { Seen = seen };
            }
            else if (lower.StartsWith("at ", StringComparison.Ordinal))
            {
                price = price with { Supplier = clause[3..].Trim() };
            }
            else if (i == 0)
            {
                amount = clause;
            }
            else
            {
                trouble = new($"\"{clause}\" is not understood in a price",
                    Nearest.Of(clause.Split(' ')[0], Clauses) is { } near ? $"did you mean {near}?" : "after the price may follow: used, new or owned; likely 35; seen 2026-10-02; at the shop");
                return false;
            }
        }
        if (amount is null)
        {
            trouble = price.Condition == Engine.Plan.Condition.Owned ? null : new("a price was expected", "write it like 30 to 50 EUR, or owned");
            return trouble is null;
        }
        return ReadAmount(amount, context, max, ref price, out trouble);
    }

    /// <summary>Whether a price buys whole packs when the plan does not say: yes for pieces and for packs such as 50 L, no for 1 m3, 1 kg, 1 m.</summary>
    public static bool IsPack(Quantity per) => per.Unit.Dimension == Dimension.None || Math.Abs(per.Unit.FromSi(per.Likely) - 1) > 1e-9;

    /// <summary>Reads what one price buys.</summary>
    public static bool TryPer(string text, ValueContext context, out Quantity per, out Trouble? trouble)
    {
        var plain = text.Trim();
        if (plain.Length == 0 || plain.ToLowerInvariant() is "each" or "piece" or "one")
        {
            (per, trouble) = (new(1, 1, 1, Units.One), null);
            return true;
        }
        var written = NumberText.Length(plain) > 0 || plain[0] == '-' ? plain : $"1 {plain}";
        if (!QuantityText.TryRead(written, new(null), context, out per, out trouble))
        {
            return false;
        }
        if (per.Low <= 0 || per.High > per.Low)
        {
            trouble = new("what a price buys must be one quantity above 0", "write it like per 50 L, or each");
            return false;
        }
        if (per.Unit.Symbol == "pieces")
        {
            per = per with { Unit = Units.One };
        }
        return true;
    }

    /// <summary>The code of the currency that an amount of money was written in.</summary>
    public static string CurrencyOf(Unit unit, ValueContext context) => Currency.IsKnown(unit.Symbol) ? unit.Symbol : context.Currency;

    private static bool ReadAmount(string text, ValueContext context, double max, ref PriceText price, out Trouble? trouble)
    {
        var likely = text.IndexOf(", likely ", StringComparison.OrdinalIgnoreCase);
        var tail = likely < 0 ? "" : text[likely..];
        var main = likely < 0 ? text : text[..likely];
        if (tail.EndsWith(" each", StringComparison.OrdinalIgnoreCase))
        {
            (main, tail) = (main + " each", tail[..^5]);
        }
        var (money, per) = Parts(main);
        if (per is not null)
        {
            if (!TryPer(per, context, out var buys, out trouble))
            {
                return false;
            }
            price = price with { Per = buys };
        }
        if (!QuantityText.TryRead(money + tail, new("money") { Min = 0, Max = max }, context with { KeepsCurrency = true }, out var amount, out trouble))
        {
            return false;
        }
        price = price with { Amount = amount };
        return true;
    }

    private static (string Money, string? Per) Parts(string text)
    {
        foreach (var word in (ReadOnlySpan<string>)[" per ", " a ", " an ", " for "])
        {
            var at = text.IndexOf(word, StringComparison.OrdinalIgnoreCase);
            if (at > 0)
            {
                return (text[..at], text[(at + word.Length)..]);
            }
        }
        foreach (var word in (ReadOnlySpan<string>)[" each", " apiece"])
        {
            if (text.EndsWith(word, StringComparison.OrdinalIgnoreCase))
            {
                return (text[..^word.Length], "");
            }
        }
        var slash = text.LastIndexOf('/');
        return slash > 0 && !char.IsAsciiDigit(text[..slash].TrimEnd()[^1]) ? (text[..slash], text[(slash + 1)..]) : (text, null);
    }

    // A comma between digits belongs to a number.
    private static List<string> Split(string text)
    {
        var clauses = new List<string>();
        var start = 0;
        for (var i = 0; i <= text.Length; i++)
        {
            if (i == text.Length || text[i] == ',' && !(i > 0 && i + 1 < text.Length && char.IsAsciiDigit(text[i - 1]) && char.IsAsciiDigit(text[i + 1])))
            {
                var clause = text[start..i].Trim();
                if (clause.Length > 0)
                {
                    clauses.Add(clause);
                }
                start = i + 1;
            }
        }
        return clauses;
    }
}
