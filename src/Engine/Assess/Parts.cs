using Runnel.Engine.Figures;
using Runnel.Engine.Plan;
using Runnel.Engine.Quantities;

namespace Runnel.Engine.Assess;

/// <summary>A part that the plan needs.</summary>
/// <param name="Part">Name as prices use it: "25 mm PVC elbow".</param>
/// <param name="Generic">Shorter names under which a price is also found: "elbow".</param>
/// <param name="Section">Where it stands in the list.</param>
/// <param name="Quantity">How much.</param>
/// <param name="For">What asks for it.</param>
/// <param name="Life">How long it lasts, or null.</param>
/// <param name="Density">Bulk density, for media sold by weight.</param>
internal sealed record Need(
    string Part, IReadOnlyList<string> Generic, BuildSection Section, Figure Quantity, string For, Figure? Life = null, Estimate? Density = null);

/// <summary>The parts of the plan, with quantities worked out from it.</summary>
internal static class Parts
{
    public const string FeedPart = "fish feed";

    public static IReadOnlyList<Need> List(Desk desk, IReadOnlyList<VesselFacts> vessels, Living living)
    {
        var needs = new List<Need>();
        OfVessels(desk, vessels, needs);
        OfPipes(desk, needs);
        OfAppliances(desk, needs);
        foreach (var lumber in desk.Plan.Stand.Values)
        {
            needs.Add(new($"{lumber.Size} lumber", ["lumber"], BuildSection.Stand,
                (desk.Count(lumber.Count, "pieces") * desk.Take(lumber.Length)).Called($"Length of {lumber.Name}", Units.Metre), lumber.Name));
        }
        foreach (var batch in living.Batches)
        {
            needs.Add(new(batch.Batch.Species, ["fish", "fingerling"], BuildSection.FishAndPlants, desk.Take(batch.Batch.Number), "first stocking"));
        }
        if (living.Feed is not null)
        {
            var days = Figure.Constant(30, Units.DayUnit, "Days of the first feed", Source.Practice("a month of feed at hand when the fish go in"));
            needs.Add(new(FeedPart, [], BuildSection.FishAndPlants, (living.Feed * days).Called("First feed, at the full ration", Units.Kilogram), "first month"));
        }
        foreach (var part in desk.Plan.ExtraParts.Values)
        {
            needs.Add(new(part.Name, [], part.Section, desk.Take(part.Number), "added by you", part.Life is { } life ? desk.Take(life) : null));
        }
        return Gather(needs);
    }

    /// <summary>A name with single spaces, as it is compared.</summary>
    public static string Tidy(string name) => string.Join(' ', name.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    private static void OfVessels(Desk desk, IReadOnlyList<VesselFacts> vessels, List<Need> needs)
    {
        foreach (var v in vessels)
        {
            var vessel = v.Vessel;
            var (part, quantity) = (vessel.Part, vessel.Shape) switch
            {
                ({ } named, _) => (named, v.Count),
                (_, DrumShape { Lengthwise: true } drum) => (DrumPart(drum),
                    v.Count / Figure.Constant(2, Units.One, "Beds from one drum cut lengthwise", Source.Definition("two halves"))),
                (_, DrumShape drum) => (DrumPart(drum), v.Count),
                _ => (Tidy(vessel.Shape.Text), v.Count),
            };
            needs.Add(new(part, [], BuildSection.Vessels, quantity, vessel.Name));
            if (v.Media is not null && vessel.Media is not null)
            {
                needs.Add(new(v.Medium?.Name ?? vessel.Media, [], BuildSection.Media, v.Media, vessel.Name, Density: v.Medium?.Density));
            }
            if (vessel.Insulation is { } insulation)
            {
                needs.Add(new(Tidy(insulation.Text), ["insulation"], BuildSection.Heat, v.Wetted, vessel.Name));
            }
        }
    }

    /// <summary>The part name of a drum: its size without how it is cut.</summary>
    private static string DrumPart(DrumShape drum)
    {
        var words = Tidy(drum.Text).Split(' ').Where(w => !w.Equals("lengthwise", StringComparison.OrdinalIgnoreCase) && !w.Equals("upright", StringComparison.OrdinalIgnoreCase));
        return string.Join(' ', words);
    }

    private static void OfPipes(Desk desk, List<Need> needs)
    {
        foreach (var pipe in desk.Plan.Pipes)
        {
            var size = Tidy(pipe.Size.Text);
            var kind = pipe.Size.Material.Equals("hose", StringComparison.OrdinalIgnoreCase) ? size : $"{size} pipe";
            var run = $"{string.Join(", ", pipe.From)} to {string.Join(", ", pipe.To)}";
            needs.Add(new(kind, [pipe.Size.Material + " pipe", "pipe"], BuildSection.Plumbing, desk.Take(pipe.Length), run));
            Fitting("elbow", pipe.Elbows);
            Fitting("tee", pipe.Tees);
            Fitting("valve", pipe.Valves);
            Fitting("union", pipe.Unions);
            if (pipe.TankConnectors is not null)
            {
                Fitting("tank connector", pipe.TankConnectors);
            }
            else if (pipe.PumpedBy is null && pipe.From.Count > 0)
            {
                needs.Add(new($"{size} tank connector", ["tank connector"], BuildSection.Plumbing,
                    Figure.Constant(pipe.From.Count, Unit.Count(""), "Walls that the drain passes", Source.Practice("one for each vessel that a gravity drain leaves")), run));
            }

            void Fitting(string name, Estimate count)
            {
                if (count.High > 0)
                {
                    needs.Add(new($"{size} {name}", [name], BuildSection.Plumbing, desk.Take(count), run));
                }
            }
        }
    }

    private static void OfAppliances(Desk desk, List<Need> needs)
    {
        var plan = desk.Plan;
        Add(plan.Pumps.Values, "pumps", BuildSection.PumpAndAir, ["pump"], 1, 3, 5, "growers' reports: small submersible pumps 1 to 3 years, good ones 3 to 5 and more");
        Add(plan.AirPumps.Values, "air pumps", BuildSection.PumpAndAir, ["air pump"], 2, 3, 5, "growers' reports: 2 to 5 years, diaphragms less");
        Add(plan.Heaters.Values, "heaters", BuildSection.Heat, ["heater"], 2, 3, 4, "growers' reports: 2 to 4 years");
        Add(plan.Fans.Values, "fans", BuildSection.Heat, ["fan"], 2, 5, 8, "common practice, no source");
        Add(plan.Dehumidifiers.Values, "dehumidifiers", BuildSection.Heat, ["dehumidifier"], 3, 6, 10, "common practice, no source");
        foreach (var lamp in plan.Lamps.Values)
        {
            needs.Add(new(lamp.Name, ["lamps", "lamp"], BuildSection.Light, desk.Count(lamp.Count), "light", LampLife(desk, lamp)));
        }
        foreach (var air in plan.AirPumps.Values.Where(a => a.Stones.High > 0))
        {
            needs.Add(new("air stone", [], BuildSection.PumpAndAir, desk.Take(air.Stones), air.Name,
                desk.Take(Desk.Assumed("life/air stone", "Life of an air stone", 0.125, 0.3, 0.5, Units.Year, "growers' reports: 6 weeks to 6 months until it clogs"))));
        }

        void Add(IEnumerable<Appliance> appliances, string section, BuildSection build, string[] generic, double low, double likely, double high, string source)
        {
            foreach (var one in appliances)
            {
                var life = desk.TakeOr(one.Life, $"{section}/{one.Name}/life", $"Life of {one.Name}", low, likely, high, Units.Year, source);
                needs.Add(new(one.Name, generic, build, desk.Count(one.Count), section, life));
            }
        }
    }

    private static Figure? LampLife(Desk desk, Lamp lamp)
    {
        if (lamp.Life is { } years)
        {
            return desk.Take(years);
        }
        var (low, likely, high, source) = lamp.Kind switch
        {
            LampKind.WhiteLed or LampKind.RedAndBlueLed => (25000.0, 35000.0, 50000.0, "from memory: LED lamps 25 000 to 50 000 h; drivers fail first"),
            LampKind.CompactFluorescent => (6000, 8000, 10000, "ENERGY STAR criteria for compact fluorescent lamps: at least 6000 h, typical 10 000 h"),
            LampKind.FluorescentTube => (8000, 12000, 24000, "UK lamp table: 12 000 to 24 000 h; replaced before it looks dim"),
            LampKind.Sodium => (12000, 20000, 30000, "UK lamp table: 12 000 to 30 000 h"),
            LampKind.MetalHalide => (8000, 12000, 20000, "UK lamp table: 8000 to 20 000 h"),
            LampKind.Incandescent => (750, 1000, 2000, "common practice, no source"),
            _ => throw new ArgumentOutOfRangeException(nameof(lamp), lamp.Kind, "unknown kind of lamp"),
        };
        var hours = lamp.LifeHours is { } given
            ? desk.Take(given)
            : desk.Take(Desk.Assumed($"lamps/{lamp.Name}/life hours", $"Life in hours lit, {lamp.Name}", low, likely, high, Units.HourUnit, source));
        var lit = desk.Take(lamp.Hours);
        return lit.Si > 0 ? (hours / lit).Called($"Life of {lamp.Name}", Units.Year) : null;
    }

    /// <summary>One line for each part, with the quantities added up.</summary>
    private static List<Need> Gather(List<Need> needs) =>
    [
        .. needs
            .Select(n => n with { Part = Tidy(n.Part) })
            .GroupBy(n => (Part: n.Part.ToUpperInvariant(), n.Section, n.Quantity.Dimension))
            .Select(g => g.Count() == 1
                ? g.First()
                : g.First() with
                {
                    Quantity = Figure.Sum([.. g.Select(n => n.Quantity)]),
                    For = string.Join(", ", g.Select(n => n.For).Distinct()),
                })
            .OrderBy(n => n.Section),
    ];
}
