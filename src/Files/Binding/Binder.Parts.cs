using System.Collections;
using Runnel.Engine.Plan;
using Runnel.Engine.Quantities;
using Runnel.Files.Values;
using Runnel.Files.Yaml;

namespace Runnel.Files.Binding;

/// <summary>Maps and lists of parts.</summary>
internal sealed partial class Binder
{
    private object PartMap(InputInfo input, MapNode map, Site at)
    {
        Duplicates(map, at);
        if (input.Element == typeof(Vessel))
        {
            return Vessels(map, at);
        }
        if (input.Element == typeof(Price))
        {
            return Prices(map, at, at.Path);
        }
        var info = PartInfo.Of(input.Element);
        var named = (IDictionary)Activator.CreateInstance(typeof(Dictionary<,>).MakeGenericType(typeof(string), input.Element))!;
        foreach (var (key, node) in map.Entries)
        {
            var name = key.Value;
            var site = at.Below(name, key.Start, NamedAbout(info, name));
            if (name.Length == 0)
            {
                Error(key.Start, at, "", new("an entry has no name", "write a name before the colon"));
            }
            else if (node is MapNode part)
            {
                named[name] = Part(info, part, site, name);
            }
            else
            {
                Unexpected(node, site, $"keys and values of {info.Title.ToLowerInvariant()}", input);
            }
        }
        return named;
    }

    /// <summary>"lamps over the beds", "main pump": a name with the kind of thing, unless the name says it.</summary>
    private static string NamedAbout(PartInfo info, string name)
    {
        if (info.Type == typeof(Lamp))
        {
            return name.Contains("lamp", StringComparison.OrdinalIgnoreCase) ? name : $"lamps {name}";
        }
        var isAppliance = info.Type.IsSubclassOf(typeof(Appliance));
        return !isAppliance || info.Title.Split(' ').Any(w => name.Contains(w, StringComparison.OrdinalIgnoreCase)) ? name : $"{info.Title.ToLowerInvariant()} {name}";
    }

    private object PartList(InputInfo input, Node node, Site at)
    {
        var info = PartInfo.Of(input.Element);
        var list = (IList)Activator.CreateInstance(typeof(List<>).MakeGenericType(input.Element))!;
        if (input.Element == typeof(Rate) && node is ScalarNode or MapNode)
        {
            if (Rate(info, node, at, at.About) is { } rate)
            {
                list.Add(rate);
            }
            return list;
        }
        if (node is not ListNode items)
        {
            Unexpected(node, at, "a list, each entry beginning with a dash,", input);
            return list;
        }
        var previous = new List<string>();
        for (var i = 0; i < items.Items.Count; i++)
        {
            var about = ListAbout(info, items.Items[i] as MapNode, i);
            previous.Add(about);
            var same = previous.Count(p => p == about);
            var site = at.Item(i, items.Items[i].Start, same > 1 ? $"{about} ({same})" : about);
            if (input.Element == typeof(Rate))
            {
                if (Rate(info, items.Items[i], site, site.About) is { } rate)
                {
                    list.Add(rate);
                }
            }
            else if (items.Items[i] is MapNode map)
            {
                list.Add(Part(info, map, site));
            }
            else
            {
                Unexpected(items.Items[i], site, $"keys and values of {info.Title.ToLowerInvariant()}", input);
            }
        }
        return list;
    }

    private static string ListAbout(PartInfo info, MapNode? map, int index)
    {
        string? Text(string key) => map?[key] switch
        {
            ScalarNode { IsEmpty: false } s => s.Value,
            ListNode l when l.Items.All(i => i is ScalarNode) => string.Join(" and ", l.Items.Select(i => ((ScalarNode)i).Value)),
            _ => null,
        };
        return info.Type.Name switch
        {
            nameof(FishBatch) => Text("species"),
            nameof(Crop) => Text("crop"),
            nameof(Pipe) when Text("from") is { } from && Text("to") is { } to => $"pipe from {from} to {to}",
            nameof(Alternative) => Text("use"),
            _ => null,
        } ?? $"{info.Title.ToLowerInvariant()} {index + 1}";
    }

    private Rate? Rate(PartInfo info, Node node, Site at, string about)
    {
        var price = info.Find("price")!;
        if (node is ScalarNode scalar)
        {
            var read = Quantity(price, scalar, at, about.StartsWith("rate", StringComparison.Ordinal) ? $"Price of energy, {about}" : "Price of energy");
            return read is null ? null : new Rate { Price = read };
        }
        if (node is not MapNode map)
        {
            Error(node.Start, at, "", new("a list stands here, a rate was expected", "write - {price: 0.31 EUR per kWh}"));
            return null;
        }
        var rate = (Rate)Part(info, map, at);
        if (map.Find("price") is null && map.Find("blocks") is null)
        {
            Error(map.Start, at, "", new("a rate needs a price or blocks", "write price: 0.31 EUR per kWh"));
        }
        else if (map.Find("price") is { } both && map.Find("blocks") is not null)
        {
            Error(both.Key.Start, at, "price", new("a rate has a price or blocks, not both", "delete one of them"));
        }
        if (map.Find("from") is null != map.Find("to") is null)
        {
            var alone = map.Find("from") ?? map.Find("to");
            Error(alone!.Key.Start, at, alone.Key.Value, new("a season needs its first and its last day", "write from: 1 October and to: 31 March"));
        }
        Blocks(rate, map["blocks"] as ListNode, at);
        return rate;
    }

    private void Blocks(Rate rate, ListNode? nodes, Site at)
    {
        if (nodes is null || nodes.Items.Count != rate.Blocks.Count)
        {
            return;
        }
        for (var i = 0; i < rate.Blocks.Count; i++)
        {
            var up = rate.Blocks[i].UpTo;
            var last = i == rate.Blocks.Count - 1;
            var site = at.Below("blocks", nodes.Start, "").Item(i, nodes.Items[i].Start, "");
            var written = (nodes.Items[i] as MapNode)?.Find("up to");
            if (last && up is not null)
            {
                Error(written!.Key.Start, site, "up to", new("the last block has an end, so energy beyond it has no price", "leave up to out of the last block"));
            }
            else if (!last && up is null && written is null)
            {
                Error(nodes.Items[i].Start, site, "", new("up to is missing: only the last block has no end", "write up to: 200 kWh"));
            }
            else if (i > 0 && up is not null && rate.Blocks[i - 1].UpTo is { } before && up.Likely <= before.Likely)
            {
                Error(written!.Value.Start, site, ((ScalarNode)written.Value).Value, new("blocks must rise: this one ends where the one before it has ended", "order them from small to large"));
            }
        }
    }

    /// <summary>Binds prices, short or long.</summary>
    public Dictionary<string, Price> Prices(MapNode map, Site at, string pathPrefix)
    {
        Duplicates(map, at);
        var prices = new Dictionary<string, Price>(StringComparer.Ordinal);
        foreach (var (key, node) in map.Entries)
        {
            var site = at.Below(key.Value, key.Start, key.Value) with { Path = $"{pathPrefix}/{key.Value}" };
            var price = node switch
            {
                ScalarNode { IsEmpty: true } => null,
                ScalarNode scalar => ShortPrice(key.Value, scalar, site),
                MapNode part => LongPrice(key.Value, part, site),
                _ => null,
            };
            if (price is not null)
            {
                prices[key.Value] = price;
            }
            else if (node is ListNode || node is ScalarNode { IsEmpty: true })
            {
                Error(node.Start, site, "", new("a price was expected", "write it like 30 to 50 EUR, or owned; or delete the line: a part without a price is named as unpriced"));
            }
        }
        return prices;
    }

    private Price? ShortPrice(string name, ScalarNode scalar, Site site)
    {
        var info = PartInfo.Of<Price>();
        if (!PriceText.TryRead(scalar.Value, Context, info.Find("price")!.Input.Max, out var read, out var trouble))
        {
            Error(scalar.Start, site, scalar.Value, trouble!);
            return null;
        }
        var per = read.Per ?? new(1, 1, 1, Units.One);
        return new Price
        {
            Name = name,
            Amount = Amount(read, new(site.Path, $"Price of {name}")),
            Per = per.From(new($"{site.Path}#per", $"What the price of {name} buys", read.Per is null ? OriginKind.Default : OriginKind.Plan)),
            WholePacks = read.WholePacks ?? PriceText.IsPack(per),
            Condition = read.Condition ?? Condition.New,
            Seen = read.Seen,
            Supplier = read.Supplier,
            Currency = read.Amount is { } amount ? PriceText.CurrencyOf(amount.Unit, Context) : Context.Currency,
        };
    }

    private Estimate Amount(PriceText read, Origin origin) => read.Amount is { } amount
        ? amount.From(origin)
        : Estimate.Of(0, Unit.Money(Context.Currency), origin);

    private Price LongPrice(string name, MapNode map, Site site)
    {
        var info = PartInfo.Of<Price>();
        parts[map] = info;
        Keys(info, map, site);
        PriceText read = new();
        var origin = new Origin($"{site.Path}/price", $"Price of {name}");
        var owned = map["condition"] is ScalarNode c && c.Value.Trim().Equals("owned", StringComparison.OrdinalIgnoreCase);
        if (map["price"] is ScalarNode { IsEmpty: false } price)
        {
            if (!PriceText.TryRead(price.Value, Context, info.Find("price")!.Input.Max, out read, out var trouble))
            {
                Error(price.Start, site.Below("price", price.Start, ""), price.Value, trouble!);
            }
        }
        else if (!owned)
        {
            Error(site.At, site, "", new("price is missing", Example(info.Find("price")!)));
        }
        object? Scalar(string key)
        {
            var input = info.Find(key)!;
            return map[key] is { } node and not ScalarNode { IsEmpty: true } ? Value(input, node, site.Below(key, node.Start, ""), site) : null;
        }
        var written = Per(map, site);
        var per = written ?? read.Per ?? new(1, 1, 1, Units.One);
        var perPath = read.Per is null || written is not null ? $"{site.Path}/per" : $"{site.Path}/price#per";
        return new Price
        {
            Name = name,
            Amount = Amount(read, origin),
            Per = per.From(new(perPath, $"What the price of {name} buys", written is null && read.Per is null ? OriginKind.Default : OriginKind.Plan)),
            WholePacks = (bool?)Scalar("packs") ?? read.WholePacks ?? PriceText.IsPack(per),
            Condition = (Condition?)Scalar("condition") ?? read.Condition ?? Condition.New,
            Seen = (DateOnly?)Scalar("seen") ?? read.Seen,
            Supplier = (string?)Scalar("at") ?? read.Supplier,
            Currency = read.Amount is { } amount ? PriceText.CurrencyOf(amount.Unit, Context) : Context.Currency,
        };
    }

    private Quantity? Per(MapNode map, Site site)
    {
        if (map["per"] is not ScalarNode { IsEmpty: false } node)
        {
            return null;
        }
        if (PriceText.TryPer(node.Value, Context, out var per, out var trouble))
        {
            return per;
        }
        Error(node.Start, site.Below("per", node.Start, ""), node.Value, trouble!);
        return null;
    }
}
