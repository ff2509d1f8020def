using Runnel.Engine.Figures;
using Runnel.Engine.Plan;
using Runnel.Engine.Quantities;

namespace Runnel.Engine.Assess;

/// <summary>What it costs to build: every part, delivery, tax and spare money.</summary>
internal static class BuildCost
{
    public static BuildBill Price(Desk desk, IReadOnlyList<Need> needs, Pricing pricing)
    {
        var lines = new List<PartLine>();
        var unpriced = new List<string>();
        foreach (var need in needs)
        {
            var id = desk.SlugOf("part", $"{need.Part}{Again(lines, need)}");
            var quantity = desk.Name(need.Quantity, $"part.{id}.quantity", $"{need.Part}, needed", need.Quantity.Unit ?? Units.One);
            var price = pricing.Find(need.Part, need.Generic);
            var bought = price is null ? null : pricing.Buy(need.Part, quantity, price, need.Density);
            if (bought is not { } paid)
            {
                unpriced.Add(need.Part);
                lines.Add(new(need.Part, need.Section, quantity, null, price, null, need.For, need.Life));
                continue;
            }
            var cost = desk.Name(paid.Cost, $"part.{id}.cost", need.Part, desk.Currency);
            lines.Add(new(need.Part, need.Section, quantity, paid.Packs, price, cost, need.For, need.Life));
        }

        var groups = lines.GroupBy(l => l.Section).OrderBy(g => g.Key).Select(g =>
        {
            var priced = g.Where(l => l.Cost is not null).Select(l => l.Cost!).ToList();
            var total = priced.Count == 0 ? null
                : desk.Name(Figure.Sum([.. priced]), $"build.section.{Desk.Slug(g.Key.Title())}", g.Key.Title(), desk.Currency);
            return new BuildGroup(g.Key, [.. g], total);
        }).ToList();
        Total(desk, groups);
        Advice.Unpriced(desk, unpriced);
        return new(groups, unpriced, Alternatives(desk, lines, pricing));
    }

    /// <summary>Tells apart lines of one name: the same part in two sections or measures.</summary>
    private static string Again(List<PartLine> lines, Need need)
    {
        var before = lines.Count(l => l.Part.Equals(need.Part, StringComparison.OrdinalIgnoreCase));
        return before == 0 ? "" : $" {before + 1}";
    }

    private static void Total(Desk desk, List<BuildGroup> groups)
    {
        var nothing = Figure.Constant(0, desk.Currency, "No priced part", Source.Definition("nothing in the plan has a price"));
        var sections = groups.Where(g => g.Total is not null).Select(g => g.Total!).ToList();
        var parts = desk.Name(sections.Count == 0 ? nothing : Figure.Sum([.. sections]), "build.parts", "Parts", desk.Currency);
        var sums = new List<Figure> { parts };

        var suppliers = groups.SelectMany(g => g.Lines)
            .Where(l => l.Cost is not null && l.Price is { Supplier: not null, Condition: not Condition.Owned })
            .Select(l => l.Price!.Supplier!).ToHashSet(StringComparer.OrdinalIgnoreCase);
        var delivered = desk.Plan.Delivery.Where(d => suppliers.Contains(d.Key)).Select(d => desk.Take(d.Value)).ToList();
        if (delivered.Count > 0)
        {
            sums.Add(desk.Name(Figure.Sum([.. delivered]), "build.delivery", "Delivery", desk.Currency));
        }
        var salesTax = desk.Take(desk.Plan.SalesTax);
        if (salesTax.High() > 0)
        {
            sums.Add(desk.Name(Bracket(sums, "Parts and delivery", desk) * salesTax, "build.tax", "Sales tax", desk.Currency));
        }
        var spare = desk.Take(desk.Plan.SpareMoney);
        if (spare.High() > 0)
        {
            sums.Add(desk.Name(Bracket(sums, "Everything bought", desk) * spare, "build.spare", "Spare money", desk.Currency));
        }
        var total = desk.Name(Figure.Sum([.. sums]), "build.total", "To build", desk.Currency);
        if (desk.Plan.OwnWork is { ToBuild: { } hours, Worth: { } worth })
        {
            var work = desk.Name(desk.Take(hours) * desk.Take(worth), "build.own-work", "Own work on building", desk.Currency);
            desk.Name(total + work, "build.total.with-work", "To build, own work priced", desk.Currency);
        }
    }

    private static double High(this Figure figure) => figure.How is Given given ? given.Estimate.High : figure.Si;

    private static Figure Bracket(List<Figure> sums, string label, Desk desk) =>
        sums.Count == 1 ? sums[0] : Figure.Sum([.. sums]).Called(label, desk.Currency);

    private static List<AlternativePart> Alternatives(Desk desk, List<PartLine> lines, Pricing pricing)
    {
        var found = new List<AlternativePart>();
        foreach (var line in lines)
        {
            foreach (var other in desk.Plan.Instead.Where(i => Covers(i.Of, line.Part)))
            {
                Offer(line, other.Use, desk.Take(other.EachNeeds), other.GivesUp ?? Known(other.Of, other.Use)?.GivesUp ?? "not said", Known(other.Of, other.Use)?.Source);
            }
            foreach (var known in desk.Shelf.Substitutes.Where(s => Covers(s.Of, line.Part)
                && !desk.Plan.Instead.Any(i => Covers(i.Of, line.Part) && i.Use.EndsWith(s.Use, StringComparison.OrdinalIgnoreCase))))
            {
                Offer(line, known.Use, null, known.GivesUp, known.Source);
            }
        }
        return found;

        Substitute? Known(string of, string use) => desk.Shelf.Substitutes.FirstOrDefault(s =>
            of.EndsWith(s.Of, StringComparison.OrdinalIgnoreCase) && use.EndsWith(s.Use, StringComparison.OrdinalIgnoreCase));

        void Offer(PartLine line, string use, Figure? each, string givesUp, string? source)
        {
            if (line.Cost is null || pricing.Find(use) is not { } price)
            {
                return;
            }
            var quantity = each is null or { Si: 1 } ? line.Quantity : line.Quantity * each;
            if (pricing.Buy(use, quantity, price) is not { } paid)
            {
                return;
            }
            var id = $"instead.{desk.SlugOf("part", line.Part)}.{desk.SlugOf("use", use)}";
            if (desk.Book.Find($"{id}.cost") is not null)
            {
                return;
            }
            var cost = desk.Name(paid.Cost, $"{id}.cost", $"{use} in place of {line.Part}", desk.Currency);
            var saves = desk.Name(line.Cost - cost, $"{id}.saves", $"Saved by {use} in place of {line.Part}", desk.Currency);
            found.Add(new(line.Part, use, cost, saves, givesUp, source));
        }
    }

    private static bool Covers(string of, string part) =>
        part.Equals(of, StringComparison.OrdinalIgnoreCase) || part.EndsWith(" " + of, StringComparison.OrdinalIgnoreCase);
}
