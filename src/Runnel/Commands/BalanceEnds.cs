using Runnel.Engine.Assess;
using Runnel.Engine.Plan;
using Runnel.Engine.Quantities;
using Runnel.Files.Values;

namespace Runnel.Host.Commands;

/// <summary>The ends from which a balance can be solved.</summary>
internal static class BalanceEnds
{
    private static readonly IReadOnlyDictionary<BalanceEnd, (string Word, string Label, string Unit)> All = new Dictionary<BalanceEnd, (string, string, string)>
    {
        [BalanceEnd.Beds] = ("beds", "Planted area", "m²"),
        [BalanceEnd.Fish] = ("fish", "Weight of all fish", "kg"),
        [BalanceEnd.Feed] = ("feed", "Feed each day", "g/d"),
        [BalanceEnd.Tank] = ("tank", "Water in the fish tank", "L"),
    };

    public static string Word(BalanceEnd end) => All[end].Word;

    /// <summary>The end of that name.</summary>
    public static BalanceEnd Read(string word)
    {
        foreach (var (end, (name, _, _)) in All)
        {
            if (name.Equals(word, StringComparison.OrdinalIgnoreCase))
            {
                return end;
            }
        }
        throw new RefusedException("--from", word, "that is no end of the balance", "write beds, fish, feed or tank");
    }

    /// <summary>An amount as it was typed.</summary>
    public static Estimate Amount(BalanceEnd end, string text)
    {
        var (word, label, unit) = All[end];
        if (!QuantityText.TryRead(text, new Wanted(unit, label) { Min = 0 }, new ValueContext(""), out var quantity, out var trouble))
        {
            throw new RefusedException($"--{word}", text, trouble!.Problem, trouble.Mend);
        }
        if (quantity.Low <= 0)
        {
            throw new RefusedException($"--{word}", text, "nothing follows from nothing", $"write more than 0 {unit}");
        }
        return quantity.From(new Origin($"given/{word}", label));
    }

    /// <summary>What a plan has of that end.</summary>
    public static Estimate Of(Assessment assessment, BalanceEnd end)
    {
        ArgumentNullException.ThrowIfNull(assessment);
        var (word, label, _) = All[end];
        var figures = assessment.Figures;
        var si = end switch
        {
            BalanceEnd.Beds => figures.Find("area.planted")?.Si,
            BalanceEnd.Fish => figures.Find("fish.mass")?.Si,
            BalanceEnd.Feed => figures.Find("balance.feed")?.Si,
            BalanceEnd.Tank => InTanks(assessment),
            _ => throw new ArgumentOutOfRangeException(nameof(end), end, "unknown end"),
        };
        if (si is not > 0)
        {
            throw new RefusedException("--from", word, "the plan has none of that", "start from another end: beds, fish, feed or tank");
        }
        var unit = end switch
        {
            BalanceEnd.Beds => Units.SquareMetre,
            BalanceEnd.Fish => Units.Kilogram,
            BalanceEnd.Feed => Units.GramPerDay,
            _ => Units.Litre,
        };
        return new Estimate(si.Value, si.Value, si.Value, unit, new Origin($"given/{word}", $"{label}, as planned"));
    }

    // By label: ids of vessels may carry a number where two names read alike.
    private static double? InTanks(Assessment assessment)
    {
        var labels = assessment.Plan.Vessels.Values.Where(v => v.Role == VesselRole.FishTank).Select(v => $"Water in {v.Name}").ToHashSet(StringComparer.Ordinal);
        var water = assessment.Figures.All
            .Where(f => f.Id!.StartsWith("vessel.", StringComparison.Ordinal) && f.Id.EndsWith(".water", StringComparison.Ordinal) && labels.Contains(f.Label!)).ToList();
        return water.Count == 0 ? null : water.Sum(f => f.Si);
    }
}
