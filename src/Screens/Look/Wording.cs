using Runnel.App;
using Runnel.Engine.Figures;
using Runnel.Engine.Plan;
using Runnel.Engine.Quantities;

namespace Runnel.Screens.Look;

/// <summary>Short wordings of the page.</summary>
public static class Wording
{
    /// <summary>With a capital letter in front.</summary>
    public static string Capital(this string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];

    /// <summary>With a full stop, unless it ends in a mark of its own.</summary>
    public static string Stop(this string text) => text.Length == 0 || text[^1] is '.' or '?' or '!' or ':' or '…' ? text : text + ".";

    /// <summary>What a price is for and what is known of it: "per 50 L, used, seen 2026-10-02, at the yard".</summary>
    public static string About(Price price, Style style)
    {
        ArgumentNullException.ThrowIfNull(price);
        ArgumentNullException.ThrowIfNull(style);
        if (price.Condition == Condition.Owned)
        {
            return "owned";
        }
        var each = price.Per.Unit.Dimension == Dimension.None && price.Per.Likely is 1;
        var one = Math.Abs(price.Per.Unit.FromSi(price.Per.Likely) - 1) < 1e-9 && style.UnitOf(price.Per.Unit) == price.Per.Unit;
        var words = new List<string> { each ? "each" : one ? $"per {price.Per.Unit.Symbol}" : $"per {style.Write(new Amount(price.Per.Likely, price.Per.Unit))}" };
        if (price.Condition == Condition.Used)
        {
            words.Add("used");
        }
        if (price.Seen is { } day)
        {
            words.Add($"seen {day:yyyy-MM-dd}");
        }
        if (price.Supplier is { Length: > 0 } supplier)
        {
            words.Add($"at {supplier}");
        }
        return string.Join(", ", words);
    }

    /// <summary>Where a figure comes from, in a word or two.</summary>
    public static string From(Figure figure)
    {
        ArgumentNullException.ThrowIfNull(figure);
        return figure.How switch
        {
            Given given => Working.Said(given.Estimate.From),
            Fixed { Source.Text: var text } when text.StartsWith("your plan", StringComparison.Ordinal) => "from your plan",
            Fixed => "fixed",
            Applied applied => $"a rule: {applied.Formula.Name}",
            Procedure => "worked out step by step",
            _ => "worked out",
        };
    }

    /// <summary>How sure a rule is.</summary>
    public static string Of(Confidence confidence) => confidence switch
    {
        Confidence.Textbook => "stands in a textbook or handbook; not checked further",
        Confidence.PublishedExample => "checked against a published example or table",
        Confidence.Measured => "checked against independent measurements",
        Confidence.Logbook => "checked against a grower's logbook",
        _ => throw new ArgumentOutOfRangeException(nameof(confidence), confidence, "unknown confidence"),
    };

    /// <summary>How well a source is known.</summary>
    public static string Of(SourceKind kind) => kind switch
    {
        SourceKind.Published => "published",
        SourceKind.FromMemory => "from memory, not read again",
        SourceKind.CommonPractice => "rule of the trade",
        SourceKind.Definition => "by definition",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "unknown kind of source"),
    };
}
