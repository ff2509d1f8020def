using System.Linq.Expressions;
using System.Reflection;
using Runnel.Engine.Plan;
using Runnel.Engine.Quantities;
using Runnel.Files;

namespace Runnel.Screens.Views;

/// <summary>A value of the plan that growers usually turn, with its address.</summary>
/// <param name="Path">Address in the plan.</param>
/// <param name="Label">What it is called within its group.</param>
/// <param name="Help">One line of help, or null.</param>
/// <param name="Assumed">What is taken while the plan does not say, or null.</param>
public sealed record Lever(string Path, string Label, string? Help, string? Assumed);

/// <summary>Levers of one part.</summary>
public sealed record LeverGroup(string Title, IReadOnlyList<Lever> Levers)
{
    /// <summary>True for a list too long to stand open beside the others.</summary>
    public bool Long => Levers.Count > 12;

    /// <summary>The usual levers of a plan, without those that its file cannot change in place.</summary>
    public static IReadOnlyList<LeverGroup> Of(PlanFile file)
    {
        ArgumentNullException.ThrowIfNull(file);
        if (file.Plan is not { } plan)
        {
            return [];
        }
        var groups = new List<LeverGroup>();
        void Add(string title, params IEnumerable<Lever?> levers)
        {
            var usable = levers.OfType<Lever>().Where(l => file.CanChange(l.Path)).ToList();
            if (usable.Count > 0)
            {
                groups.Add(new(title.Length == 0 ? title : char.ToUpperInvariant(title[0]) + title[1..], usable));
            }
        }

        foreach (var (name, lamp) in plan.Lamps)
        {
            var at = $"lamps/{name}";
            Add(name, In(at, lamp, l => l.Hours), In(at, lamp, l => l.Count), In(at, lamp, l => l.Watts), In(at, lamp, l => l.Efficacy), In(at, lamp, l => l.Reaching));
        }
        foreach (var (name, heater) in plan.Heaters)
        {
            Add(name, In($"heaters/{name}", heater, h => h.Keep), In($"heaters/{name}", heater, h => h.Watts));
        }
        Timed(plan.Pumps, "pumps");
        Timed(plan.AirPumps, "air pumps");
        Timed(plan.Fans, "fans");
        Timed(plan.Dehumidifiers, "dehumidifiers");
        if (plan.Tariff is { } tariff)
        {
            Add("Electricity tariff", [.. Rates(tariff, file), In("tariff", tariff, t => t.Fixed), In("tariff", tariff, t => t.Tax), In("tariff", tariff, t => t.OtherUse)]);
        }
        Add("Place and water", In("place", plan.Place, p => p.Humidity), new Lever("place/air", "Air around the loop", null, null), In("water", plan.Water, w => w.Price), In("water", plan.Water, w => w.Use));
        foreach (var (batch, i) in plan.Fish.Select((b, i) => (b, i)))
        {
            var at = $"fish/{i}";
            Add(batch.Species, In(at, batch, b => b.Number), In(at, batch, b => b.Weight), In(at, batch, b => b.HarvestAt), In(at, batch, b => b.BatchesAYear));
        }
        Add("Feed", In("feed", plan.Feed, f => f.Protein), In("feed", plan.Feed, f => f.EachDay), In("feed", plan.Feed, f => f.Ratio));
        Add("Own work", In("own work", plan.OwnWork, w => w.AWeek), In("own work", plan.OwnWork, w => w.ToBuild), In("own work", plan.OwnWork, w => w.Worth));
        Add("Money", [In("", plan, p => p.SpareMoney), In("", plan, p => p.SalesTax), .. plan.Delivery.Select(d => new Lever(d.Value.From.Path, $"Delivery, {d.Key}", null, null))]);
        Add("Prices of parts", plan.Prices.Values.OrderBy(p => p.Name, StringComparer.OrdinalIgnoreCase).Select(p => new Lever($"prices/{p.Name}", p.Name, null, null)));
        return groups;

        void Timed<T>(IReadOnlyDictionary<string, T> all, string key)
            where T : TimedAppliance
        {
            foreach (var (name, one) in all)
            {
                Add(name, In($"{key}/{name}", one, a => a.Watts), In($"{key}/{name}", one, a => a.Hours), In($"{key}/{name}", one, a => a.Count));
            }
        }
    }

    private static IEnumerable<Lever> Rates(Tariff tariff, PlanFile file)
    {
        var inputs = tariff.Energy.SelectMany(r => r.Blocks.Count == 0
            ? [(Rate: r, r.Price, Block: "")]
            : r.Blocks.Select(b => (Rate: r, (Estimate?)b.Price, Block: b.UpTo is { } upTo ? $", up to {upTo.Unit.FromSi(upTo.Likely):0.##} {upTo.Unit.Symbol} a month" : ", above that")));
        foreach (var (rate, price, block) in inputs)
        {
            if (price is not null && file.CanChange(price.From.Path))
            {
                yield return new(price.From.Path, $"Price {When(rate)}{block}", null, null);
            }
        }
    }

    private static string When(Rate rate)
    {
        var words = new List<string>();
        if (rate.From is { } from && rate.To is { } to)
        {
            words.Add($"{from} to {to}");
        }
        if (rate.Days != DayKind.All)
        {
            words.Add(rate.Days == DayKind.Weekdays ? "on weekdays" : "at weekends");
        }
        if (rate.Hours is { } hours)
        {
            words.Add($"{hours.From:HH\\:mm} to {hours.To:HH\\:mm}");
        }
        return words.Count == 0 ? "at all other times" : string.Join(", ", words);
    }

    private static Lever In<T>(string at, T part, Expression<Func<T, Estimate?>> property)
    {
        var member = (PropertyInfo)((MemberExpression)property.Body).Member;
        var input = member.GetCustomAttribute<InputAttribute>() ?? throw new InvalidOperationException($"{member.Name} is no input");
        var given = (Estimate?)member.GetValue(part);
        // A vessel or batch that takes over from another keeps the address of the value it took.
        var path = given?.From is { Kind: OriginKind.Plan, Path: { Length: > 0 } from } ? from : at.Length == 0 ? input.Key : $"{at}/{input.Key}";
        return new(path, input.Label, input.Help.Length == 0 ? null : input.Help, given?.From.Kind == OriginKind.Default ? input.Default : null);
    }
}
