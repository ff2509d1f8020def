using Runnel.Engine.Money;
using Runnel.Engine.Plan;
using Runnel.Files.Errors;
using Runnel.Files.Values;
using Runnel.Files.Yaml;

namespace Runnel.Files.Binding;

/// <summary>What reading a plan's text gave.</summary>
internal sealed record ReadPlan(LoopPlan? Plan, IReadOnlyList<PlanError> Errors, Node? Root, IReadOnlyDictionary<MapNode, PartInfo> Parts);

/// <summary>Reads a whole plan: tree, records, names that must exist, the price list beside it.</summary>
internal static class PlanReader
{
    private static readonly Dictionary<MapNode, PartInfo> NoParts = [];

    public static ReadPlan Read(string text, string fileName, Func<string, string?>? readBeside)
    {
        var root = YamlTree.Read(text, fileName, out var broken);
        if (broken is not null)
        {
            return new(null, [broken], null, NoParts);
        }
        var errors = new List<PlanError>();
        if (root is not MapNode map)
        {
            var empty = root is null or ScalarNode { IsEmpty: true };
            errors.Add(new(fileName, root?.Start.Line ?? 1, root?.Start.Column ?? 1, "", root is ScalarNode s ? s.Value : "",
                empty ? "the file is empty" : "a plan begins with keys, such as name: and place:", "see docs/plan-format.md for a small plan"));
            return new(null, errors, root, NoParts);
        }
        var context = Context(map);
        var binder = new Binder(fileName, context, errors);
        var plan = (LoopPlan)binder.Part(PartInfo.Of<LoopPlan>(), map, Site.Root);
        CheckCurrency(map, binder);
        CheckNames(map, binder);
        plan = PriceList(plan, map, fileName, binder, errors, readBeside);
        var ordered = errors.OrderBy(e => e.File != fileName).ThenBy(e => e.Line).ThenBy(e => e.Column).ToList();
        return new(errors.Count == 0 ? plan : null, ordered, root, binder.Parts);
    }

    // Units and currency decide how other values are read, so they are looked at first; their own errors come when they are bound.
    private static ValueContext Context(MapNode map)
    {
        var currency = map["currency"] is ScalarNode c && Currency.IsKnown(c.Value) ? c.Value : "EUR";
        var us = map["units"] is ScalarNode u && u.Value.Trim().Equals("us", StringComparison.OrdinalIgnoreCase);
        var rates = new Dictionary<string, double>(StringComparer.Ordinal);
        foreach (var (key, value) in (map["exchange"] as MapNode)?.Entries ?? [])
        {
            if (value is ScalarNode rate && QuantityText.TryRead(rate.Value, new(""), new(currency), out var quantity, out _))
            {
                rates[key.Value] = quantity.Likely;
            }
        }
        return new(currency, !us, rates);
    }

    private static void CheckCurrency(MapNode map, Binder binder)
    {
        if (map["currency"] is ScalarNode { IsEmpty: false } code && !Currency.IsKnown(code.Value))
        {
            binder.Error(code.Start, Site.Root.Below("currency", code.Start, ""), code.Value, Binder.CurrencyTrouble(code.Value));
        }
    }

    private static void CheckNames(MapNode map, Binder binder)
    {
        if (map["vessels"] is MapNode { Entries.Count: 0 } none)
        {
            binder.Error(none.Start, Site.Root.Below("vessels", none.Start, ""), "", new("a loop needs a vessel at least", "write a name, and below it role: and shape:"));
        }
        foreach (var reference in binder.References)
        {
            // Names as written: a vessel that has errors of its own still exists.
            var names = (map[reference.Target] as MapNode)?.Entries.Select(e => e.Key.Value).ToList() ?? [];
            if (!names.Contains(reference.Name, StringComparer.Ordinal))
            {
                binder.Error(reference.At, reference.Site, reference.Name, new(
                    $"there is no {reference.Target[..^1]} of that name", names.Count == 0 ? $"write it under {reference.Target}:" : Nearest.Mend(reference.Name, names, $"{reference.Target} here are")));
            }
        }
    }

    private static LoopPlan PriceList(LoopPlan plan, MapNode map, string fileName, Binder binder, List<PlanError> errors, Func<string, string?>? readBeside)
    {
        if (map["price list"] is not ScalarNode { IsEmpty: false } named)
        {
            return plan;
        }
        var site = Site.Root.Below("price list", named.Start, "");
        var name = named.Value;
        if (name.AsSpan().IndexOfAny('/', '\\', ':') >= 0 || name is "." or ".." || name == fileName)
        {
            binder.Error(named.Start, site, name, new("a price list lies in the same folder as the plan", "write its file name alone, such as prices.yaml"));
            return plan;
        }
        var text = readBeside?.Invoke(name);
        if (text is null)
        {
            binder.Error(named.Start, site, name, new("there is no such file beside the plan", "check its name, or write the prices under prices: here"));
            return plan;
        }
        var root = YamlTree.Read(text, name, out var broken);
        if (broken is not null)
        {
            errors.Add(broken);
            return plan;
        }
        var inner = new Binder(name, binder.Context, errors);
        if (root is not MapNode list || list["prices"] is not MapNode prices)
        {
            errors.Add(new(name, root?.Start.Line ?? 1, root?.Start.Column ?? 1, "", "", "a price list has one key, prices:, with prices by name below it", "write prices: and indent the prices below it"));
            return plan;
        }
        inner.Duplicates(list, Site.Root);
        foreach (var entry in list.Entries.Where(e => e.Key.Value != "prices"))
        {
            inner.Error(entry.Key.Start, Site.Root, entry.Key.Value, new("a price list holds nothing but prices:", "move it into the plan"));
        }
        var read = inner.Prices(prices, Site.Root.Below("prices", prices.Start, ""), $"{name}:prices");
        foreach (var (key, price) in plan.Prices)
        {
            read[key] = price;
        }
        return plan with { Prices = read };
    }
}
