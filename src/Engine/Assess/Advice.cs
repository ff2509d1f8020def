using Runnel.Engine.Figures;
using Runnel.Engine.Findings;
using Runnel.Engine.Plan;
using Runnel.Engine.Quantities;

namespace Runnel.Engine.Assess;

/// <summary>Findings that say what the plan lacks, and the cautions that stand where someone is about to act.</summary>
internal static class Advice
{
    public static Finding Unknown(string kind, string where, string read, string path, IEnumerable<string> known)
    {
        var nearest = Names.Nearest(read, known);
        return new(
            $"{kind}.unknown", Severity.Warning, where, $"“{read}” is not in the catalogue",
            nearest.Count == 0 ? $"a {kind} of the catalogue" : $"perhaps {string.Join(", ", nearest)}",
            "Use a name from the catalogue; until then figures that need it are left out.", path);
    }

    public static Finding NoMedia(string bed, string path) => new(
        "media.none", Severity.Warning, bed, "a media bed without media", "the name of what it is filled with",
        "Add media: to the bed; it is often the dearest line of the whole build.", path);

    public static Finding NoAir() => new(
        "heat.no-air", Severity.Warning, "place", "a heater, and no temperature of the air around the loop", "climate: or air: under place",
        "Add one of them; until then the heater's energy is left out of the bill.", "place");

    public static void HeaterSize(Desk desk, Figure peak, Figure gains, Figure watts, Figure kept)
    {
        var needed = Math.Max(0, peak.Si - gains.Si);
        if (needed > watts.Si)
        {
            desk.Say(new Finding(
                "heat.heater-too-small", Severity.Grave, "heater",
                Said.Of($"{new Amount(watts.Si, Units.Watt)} of heaters, and the water loses {new Amount(peak.Si, Units.Watt)} on average in the coldest month"),
                Said.Of($"at least {new Amount(needed, Units.Watt)} to hold {new Amount(kept.Si, Units.Celsius)}, and more for cold nights"),
                "Insulate walls and put lids on before you buy more watts; a lid stops most of the evaporation. Or keep fish that like it cooler.",
                "heaters"));
        }
    }

    public static void Unpriced(Desk desk, IReadOnlyList<string> parts)
    {
        if (parts.Count > 0)
        {
            desk.Say(new Finding(
                "price.missing", Severity.Warning, "prices",
                $"{parts.Count} {(parts.Count == 1 ? "part has" : "parts have")} no price: {string.Join(", ", parts)}",
                "a price for each part", "Add them under prices: (owned is a price too). Until then the build total is incomplete.", "prices"));
        }
    }

    public static void UnpricedRunning(Desk desk, IReadOnlyList<string> things)
    {
        if (things.Count > 0)
        {
            desk.Say(new Finding(
                "price.running-missing", Severity.Warning, "running cost",
                $"no price for {string.Join(", ", things)}", "a price for everything that is used up",
                "Add a tariff:, a price for water or the missing prices:. Until then the running total is incomplete.", "prices"));
        }
    }

    public static void UnusedPrices(Desk desk, IEnumerable<string> unused, IEnumerable<string> parts)
    {
        var known = parts.ToList();
        foreach (var name in unused)
        {
            var nearest = Names.Nearest(name, known);
            desk.Say(new Finding(
                "price.unused", Severity.Note, name, "a price for something that the plan does not use",
                nearest.Count == 0 ? "the name of a part of the plan" : $"perhaps {string.Join(", ", nearest)}",
                "Correct the name, or leave it for later.", $"prices/{name}"));
        }
    }

    /// <summary>Parts that nearly every list forgets.</summary>
    public static void Forgotten(Desk desk, IReadOnlyList<Need> needs, Living living)
    {
        if (living.Batches.Count > 0 && !needs.Any(n => n.Part.Contains("test", StringComparison.OrdinalIgnoreCase)))
        {
            desk.Say(new Finding(
                "build.no-test-kit", Severity.Note, "extra parts", "fish, and no water test kit in the list",
                "a kit for ammonia, nitrite, nitrate, pH and alkalinity", "Add it under extra parts: with section: tests. Without it ammonia is seen only when fish gasp.",
                "extra parts", "common practice, no source"));
        }
    }

    /// <summary>Cautions that belong to what the plan holds.</summary>
    public static void Cautions(Desk desk, IReadOnlyList<VesselFacts> vessels, Living living)
    {
        var plan = desk.Plan;
        if (plan.Pumps.Count + plan.AirPumps.Count + plan.Heaters.Count + plan.Lamps.Count > 0)
        {
            var watts = plan.Pumps.Values.Concat<Appliance>(plan.AirPumps.Values).Concat(plan.Heaters.Values).Concat(plan.Lamps.Values)
                .Concat(plan.Fans.Values).Concat(plan.Dehumidifiers.Values).Sum(a => desk.Take(a.Count).Si * desk.Take(a.Watts).Si);
            desk.Say(new Finding(
                "power.near-water", Severity.Note, "sockets",
                Said.Of($"up to {new Amount(watts, Units.Watt)} of mains electricity beside water"),
                "every socket behind a residual-current device (30 mA, or a GFCI in North America), a drip loop in each cord, plugs above the water line; a circuit carries at most 80 % of its rating for hours on end",
                "Unplug before hands go in. Have the circuit looked at by a licensed electrician; local codes decide. Put air on a circuit of its own: a tripped device kills fish unseen.",
                Source: "practice note on electricity near water; 80 % rule: NEC 210.20(A), section from memory"));
        }
        FloorLoad(desk, vessels);
        if (vessels.Any(v => !v.Vessel.Lid && v.Vessel.Role is VesselRole.FishTank or VesselRole.Sump))
        {
            desk.Say(new Finding(
                "safety.open-water", Severity.Note, "open tanks", "open water that a child can reach",
                "a rigid cover that bears a child, or a fence", "Toddlers drown in a few centimetres. Cover tanks, empty buckets. A lid also keeps fish in and heat loss down.",
                Source: "child-safety boards"));
        }
        if (plan.Water.Source is WaterSource.Tap)
        {
            desk.Say(new Finding(
                "safety.backflow", Severity.Note, "topping up", "water topped up from the tap",
                "an air gap of at least twice the outlet's width, never under 25 mm, or an approved backflow device",
                "Never leave the hose end under water. Treat chlorine and chloramine before the water meets fish or filter. Ask your water company for its rules.",
                Source: "municipal backflow pages"));
        }
        if (plan.Place.Setting == Setting.Indoors)
        {
            desk.Say(new Finding(
                "safety.damp", Severity.Note, "room", "a loop of water in a room", "about 50 % relative humidity, and no cold corner without moving air",
                "Cover the water, extract the air, look behind furniture for mould. A tray or drain under the loop; tell landlord and insurer.",
                Source: "practice note on damp"));
        }
        foreach (var caution in living.Batches.Where(b => b.Species?.Caution is not null).Select(b => (b.Batch.Species, b.Species!.Caution!, b.Path)).Distinct())
        {
            desk.Say(new Finding("fish.permit", Severity.Note, caution.Species, "a species of fish in the plan",
                "an answer from the fisheries or wildlife office for your address", caution.Item2, caution.Path));
        }
        if (living.Crops.Any(c => c.Kind is { Fruiting: false }))
        {
            desk.Say(new Finding(
                "safety.raw-leaves", Severity.Note, "leaves eaten raw", "leafy crops in water that fish live in",
                "system water that never touches the parts you eat", "Keep pets and birds away, wash hands, rinse leaves with drinking water, use one board for fish and another for salad.",
                Source: "university trials of 2020 and 2021"));
        }
        foreach (var caustic in plan.Supplies.Keys.Where(s => s.Contains("hydroxide", StringComparison.OrdinalIgnoreCase) || s.Contains("lime", StringComparison.OrdinalIgnoreCase)))
        {
            desk.Say(new Finding(
                "safety.caustic", Severity.Note, caustic, "a base that burns eyes and skin", "gloves, goggles, small steps",
                "Dissolve it first, chemical into water and never the other way, pour into the sump, raise pH by no more than 0.2 to 0.3 a day. Store it locked and labelled.",
                $"supplies/{caustic}"));
        }
    }

    private static void FloorLoad(Desk desk, IReadOnlyList<VesselFacts> vessels)
    {
        Figure? worst = null;
        var where = "";
        foreach (var v in vessels.Where(v => v.Top.Si > 0))
        {
            var density = Figure.Constant(1000, Units.KilogramPerCubicMetre, "Weight of water", Source.Definition("1 kg for each litre"));
            var mass = v.Water * density;
            if (v.Media is not null && v.Medium is not null)
            {
                mass += v.Media * desk.Take(v.Medium.Density);
            }
            var load = mass / v.Top;
            if (worst is null || load.Si > worst.Si)
            {
                (worst, where) = (load, v.Vessel.Name);
            }
        }
        if (worst is null)
        {
            return;
        }
        var named = desk.Name(worst, "floor.load", $"Heaviest on its own footprint: {where}", Units.KilogramPerSquareMetre);
        var stated = desk.Plan.Place.Room?.DesignLoad;
        var limit = stated?.Likely ?? 195;
        var onSlab = desk.Plan.Place.Room?.StandsOn == FloorKind.Slab || desk.Plan.Place.Setting != Setting.Indoors;
        if (named.Si <= limit || (onSlab && stated is null))
        {
            desk.Say(new Finding(
                "floor.load", Severity.Note, where, Said.Of($"{new Amount(named.Si, Units.KilogramPerSquareMetre)} under {where}, water and media only"),
                "a floor, a stand and a slab that bear it for years, wet",
                "Add the vessel, the stand and yourself. When in doubt ask a structural engineer; local codes decide.", "place/room"));
            return;
        }
        desk.Say(new Finding(
            "floor.load", Severity.Warning, where,
            Said.Of($"{new Amount(named.Si, Units.KilogramPerSquareMetre)} under {where}, water and media only"),
            stated is null
                ? Said.Of($"rooms are often designed for about {new Amount(limit, Units.KilogramPerSquareMetre)} over the whole floor")
                : Said.Of($"the stated design load of {new Amount(limit, Units.KilogramPerSquareMetre)}"),
            "Runnel does not say that this is fine: ask a structural engineer before you fill it. Stand it across several joists, near a wall, or on a slab.",
            "place/room", "IRC table R301.5: 40 lb/ft² in rooms"));
    }
}
