using Runnel.Engine.Figures;
using Runnel.Engine.Heat;
using Runnel.Engine.Plan;
using Runnel.Engine.Quantities;

namespace Runnel.Engine.Assess;

/// <summary>Air and water temperatures by month, what the water loses and what heaters must give.</summary>
internal sealed class Warmth
{
    private static readonly Source Physics = Source.Definition("heat flows by area and temperature difference");

    private Warmth(Climate? climate, IReadOnlyList<Figure>? air) => (Climate, Air) = (climate, air);

    /// <summary>The climate taken, or null.</summary>
    public Climate? Climate { get; }

    /// <summary>Mean air around the loop in each month, or null when the plan does not say.</summary>
    public IReadOnlyList<Figure>? Air { get; }

    /// <summary>Mean water temperature in each month, or null.</summary>
    public IReadOnlyList<Figure>? Water { get; private set; }

    /// <summary>Energy of all heaters in each month, or null when there is none or it cannot be worked out.</summary>
    public IReadOnlyList<Figure>? HeaterEnergy { get; private set; }

    public static Warmth Read(Desk desk, Climate? weather, IReadOnlyList<VesselFacts> vessels)
    {
        var climate = weather ?? FindClimate(desk);
        var warmth = new Warmth(climate, FindAir(desk, climate));
        warmth.FindWater(desk);
        desk.Try("heater", () =>
        {
            warmth.Heat(desk, vessels);
            return warmth;
        });
        return warmth;
    }

    private static Climate? FindClimate(Desk desk)
    {
        if (desk.Plan.Place.Climate is not { } name)
        {
            return null;
        }
        var climate = Names.Find(desk.Shelf.Climates, c => c.Name, c => c.AlsoCalled, name);
        if (climate is null)
        {
            desk.Say(Advice.Unknown("climate", "place", name, "place/climate", desk.Shelf.Climates.Select(c => c.Name)));
        }
        return climate;
    }

    private static Figure[]? FindAir(Desk desk, Climate? climate)
    {
        var place = desk.Plan.Place;
        if (place.Air.Count == 12)
        {
            return [.. place.Air.Select(desk.Take)];
        }
        if (place.Air.Count == 1)
        {
            return [.. Enumerable.Repeat(desk.Take(place.Air[0]), 12)];
        }
        if (place.Setting == Setting.Indoors)
        {
            var room = desk.Take(Desk.Assumed(
                "place/air", "Air around the loop", 15, 18, 21, Units.Celsius, "common practice, no source: an unheated to a lived-in room"));
            return [.. Enumerable.Repeat(room, 12)];
        }
        if (climate is null)
        {
            return null;
        }
        if (place.Setting == Setting.Outdoors)
        {
            return [.. climate.Air.Select(desk.Take)];
        }
        var gain = desk.Take(Desk.Assumed(
            "place/cover/warmer", "How much warmer a greenhouse is than outdoors, monthly mean", 2, 4, 6, Units.Kelvin,
            "common practice, no source: an unheated greenhouse by day and night together"));
        var floor = place.Cover?.NightMinimum is { } night ? desk.Take(night) : null;
        return [.. climate.Air.Select((a, m) =>
        {
            var inside = desk.Take(a) + gain;
            return (floor is null ? inside : Figure.Largest(inside.Called("Outdoor mean and what the cover adds", Units.Celsius), floor))
                .Called($"Air in the greenhouse, {CalendarDay.MonthNames[m]}", Units.Celsius);
        })];
    }

    private Figure? Kept(Desk desk)
    {
        var keeps = desk.Plan.Heaters.Values.Select(h => desk.Take(h.Keep)).ToList();
        return keeps.Count switch { 0 => null, 1 => keeps[0], _ => Figure.Largest([.. keeps]) };
    }

    private void FindWater(Desk desk)
    {
        var kept = Kept(desk);
        if (Air is null)
        {
            Water = kept is null ? null : [.. Enumerable.Repeat(kept, 12)];
            return;
        }
        var months = new Figure[12];
        for (var m = 0; m < 12; m++)
        {
            var water = kept is null ? Air[m] : Figure.Largest(kept, Air[m]);
            months[m] = desk.Name(water, $"water.temperature.month.{m + 1}", $"Water temperature, {CalendarDay.MonthNames[m]}", Units.Celsius);
        }
        Water = months;
    }

    private void Heat(Desk desk, IReadOnlyList<VesselFacts> vessels)
    {
        var heaters = desk.Plan.Heaters.Values.ToList();
        if (heaters.Count == 0)
        {
            return;
        }
        if (heaters.Any(h => h.Energy.Count == 12))
        {
            HeaterEnergy = [.. Enumerable.Range(0, 12).Select(m =>
                Figure.Sum([.. heaters.Where(h => h.Energy.Count == 12).Select(h => desk.Take(h.Energy[m]))])
                    .Called($"Heater energy in {CalendarDay.MonthNames[m]}, as metered", Units.KilowattHour))];
            return;
        }
        if (Air is null)
        {
            desk.Say(Advice.NoAir());
            return;
        }
        var kept = Kept(desk)!;
        var conductance = desk.Name(Conductance(desk, vessels), "heat.conductance", "Heat lost for each degree", Units.WattPerKelvin);
        var open = vessels.Where(IsOpen).Select(v => v.Top).ToList();
        var openArea = open.Count == 0 ? null : Figure.Sum([.. open]).Called("Open water surface", Units.SquareMetre);
        var watts = Figure.Sum([.. heaters.Select(h => desk.Take(h.Count) * desk.Take(h.Watts))]).Called("All heaters", Units.Watt);
        var pumps = desk.Plan.Pumps.Values.Select(p => desk.Take(p.Count) * desk.Take(p.Watts) * desk.Take(p.Hours)).ToList();
        var gains = pumps.Count == 0
            ? Figure.Constant(0, Units.Watt, "Heat from pumps", Physics)
            : Figure.Sum([.. pumps]).Called("Heat from pumps: a pump in the water turns all its power into heat", Units.Watt);

        var energy = new Figure[12];
        Figure? worst = null;
        for (var m = 0; m < 12; m++)
        {
            var month = CalendarDay.MonthNames[m];
            var cold = kept.Si > Air[m].Si;
            var difference = cold
                ? (kept - Air[m]).Called($"Water over air in {month}", Units.Kelvin)
                : Figure.Constant(0, Units.Kelvin, $"Water over air in {month}: the air is warm enough", Physics);
            var loss = conductance * difference;
            if (openArea is not null && cold && Evaporation(desk, kept, Air[m]) is { } rate
                && desk.Apply(HeatFormulas.EvaporationHeat, rate, openArea, kept) is { } latent)
            {
                loss += latent;
            }
            var lost = loss.Called($"Heat lost in {month}", Units.Watt);
            lost = desk.Name(lost, $"heat.loss.month.{m + 1}", $"Heat lost in {month}, mean", Units.Watt);
            if (worst is null || lost.Si > worst.Si)
            {
                worst = lost;
            }
            var hours = Figure.Constant(YearCalendar.Length[m] * 24, Units.HourUnit, $"Hours of {month}", Source.Definition("calendar"));
            var need = desk.Need(HeatFormulas.HeaterEnergy, lost, gains, hours);
            var most = (watts * hours).Called("All heaters on all month", Units.KilowattHour);
            energy[m] = Figure.Smallest(need, most).Called($"Heater energy in {month}", Units.KilowattHour);
        }
        HeaterEnergy = energy;
        var peak = desk.Name(worst!, "heat.loss.worst", "Heat lost in the coldest month, mean", Units.Watt);
        Advice.HeaterSize(desk, peak, gains, watts, kept);
    }

    internal static bool IsOpen(VesselFacts v) =>
        !v.Vessel.Lid && v.Vessel.Role is VesselRole.FishTank or VesselRole.Sump or VesselRole.SolidsSeparator or VesselRole.Biofilter or VesselRole.HeaderTank;

    private static Figure? Evaporation(Desk desk, Figure water, Figure air) => desk.Apply(
        HeatFormulas.Evaporation, water, air, desk.Take(desk.Plan.Place.Humidity),
        desk.Take(Desk.Assumed("heat/air speed", "Air moving over the water", 0.05, 0.1, 0.3, Units.MetrePerSecond, "common practice, no source: a still room")),
        desk.Take(Desk.Assumed("heat/activity", "Share of the evaporation of a busy pool", 0.5, 0.5, 0.74, Units.One,
            "ASHRAE Applications handbook, residential pool (from memory); Smith, Löf & Jones 1998 measured 0.74 for a still surface")));

    private static Figure Conductance(Desk desk, IReadOnlyList<VesselFacts> vessels)
    {
        var parts = new List<Figure>();
        foreach (var v in vessels)
        {
            var vessel = v.Vessel;
            var path = $"vessels/{vessel.Name}";
            var insulation = vessel.Insulation;
            var u = desk.Need(HeatFormulas.WallTransmittance,
                desk.Take(vessel.WallThickness),
                Conductivity(desk, $"{path}/wall conductivity", $"Conductivity of the wall of {vessel.Name}", WallConductivity(vessel.Wall)),
                insulation is null ? Figure.Constant(0, Units.Millimetre, "No insulation", Source.Definition("from the plan")) : desk.Take(insulation.Thickness),
                insulation is null
                    ? Figure.Constant(0.0355, Units.WattPerMetreKelvin, "Conductivity of no insulation: it cancels", Physics)
                    : Conductivity(desk, $"{path}/insulation conductivity", $"Conductivity of the insulation of {vessel.Name}", InsulationConductivity(insulation.Kind)),
                desk.Take(HeatFormulas.WallTransmittance.Assumed(4)),
                desk.Take(HeatFormulas.WallTransmittance.Assumed(5)));
            parts.Add((u * v.Wetted).Called($"Through the wall of {vessel.Name}", Units.WattPerKelvin));
            parts.Add((TopTransmittance(desk, v) * v.Top).Called($"Through the top of {vessel.Name}", Units.WattPerKelvin));
        }
        var water = desk.Book["water.total"];
        var use = desk.Take(desk.Plan.Water.Use);
        var heat = Figure.Constant(4186, new Unit("J/L/K", Units.Joule.Dimension / Units.Litre.Dimension / Units.Kelvin.Dimension, 1000), "Heat held by a litre of water for each degree",
            Source.FromMemory("textbook: 4.186 kJ/kg K near 20 °C"));
        parts.Add((water * use * heat).Called("Warming the water topped up", Units.WattPerKelvin));
        return Figure.Sum([.. parts]);
    }

    internal static Figure TopTransmittance(Desk desk, VesselFacts v) => v.Vessel.Role switch
    {
        VesselRole.RaftBed => desk.Take(Desk.Assumed("heat/raft", "Heat through a foam raft", 0.7, 0.9, 1.5, Units.WattPerSquareMetreKelvin,
            "40 mm of EPS and an air film, from conductivities in the ASHRAE Fundamentals handbook")),
        VesselRole.MediaBed => desk.Take(Desk.Assumed("heat/media top", "Heat through the dry top of a media bed", 2, 3.5, 6, Units.WattPerSquareMetreKelvin,
            "common practice, no source: a few centimetres of dry media and an air film")),
        _ when v.Vessel.Lid || v.Vessel.Role == VesselRole.Channel => desk.Take(Desk.Assumed("heat/lid", "Heat through a lid", 2, 3.5, 5, Units.WattPerSquareMetreKelvin,
            "common practice, no source: two air films and a layer of still air")),
        _ => desk.Take(HeatFormulas.SurfaceLoss.Assumed(HeatFormulas.SurfaceLoss.Inputs.Count - 1)),
    };

    private static Figure Conductivity(Desk desk, string path, string label, (double Value, string Source) of) =>
        desk.Take(Desk.Assumed(path, label, of.Value, of.Value, of.Value, Units.WattPerMetreKelvin, of.Source));

    private const string Ashrae = "ASHRAE Fundamentals handbook, material properties";

    internal static (double Value, string Source) WallConductivity(WallMaterial wall) => wall switch
    {
        WallMaterial.Plastic => (0.50, Ashrae + ": HDPE 0.50; others print 0.40 to 0.48"),
        WallMaterial.Wood => (0.13, Ashrae + ": timber of 500 kg/m³"),
        WallMaterial.Glass => (1.0, Ashrae + ": glass"),
        WallMaterial.Concrete => (1.6, Ashrae + ": concrete 1.15 to 2.0"),
        WallMaterial.Steel => (50, "textbook value for carbon steel, from memory"),
        WallMaterial.Liner => (0.25, Ashrae + ": EPDM"),
        _ => throw new ArgumentOutOfRangeException(nameof(wall), wall, "unknown wall material"),
    };

    internal static (double Value, string Source) InsulationConductivity(InsulationKind kind) => kind switch
    {
        InsulationKind.Eps => (0.0355, Ashrae + ": EPS beads"),
        InsulationKind.Xps => (0.029, Ashrae + ": XPS 0.026; labels of R 5 an inch give 0.029, taken as the careful one"),
        InsulationKind.Polyiso => (0.0235, Ashrae + ": polyiso, unfaced"),
        InsulationKind.Fibreglass => (0.043, Ashrae + ": fibreglass"),
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "unknown insulation"),
    };
}
