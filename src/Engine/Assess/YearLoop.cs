using Runnel.Engine.Crops;
using Runnel.Engine.Heat;
using Runnel.Engine.Plan;
using Runnel.Engine.Water;
using Runnel.Engine.Year;

namespace Runnel.Engine.Assess;

/// <summary>Reads a plan as the input of a year. What the plan leaves out is assumed here, each assumption with its span.</summary>
internal sealed class YearLoop
{
    /// <summary>Share of its greatest flow that a pump moves against its own pipes; half to two thirds where none is worked out. Common practice, no source.</summary>
    private const double FlowOfCurve = 0.5;

    /// <summary>Fall of water that comes back into the tank, m. A guess: 0.1 to 0.4.</summary>
    private const double Fall = 0.2;

    /// <summary>Share of the deficit made good in a bed that floods and drains, or a film. A guess: 0.3 to 0.8.</summary>
    private const double FloodAndDrain = 0.5;

    /// <summary>Share of solids that a settling or swirl vessel takes out. From memory: 0.4 to 0.6.</summary>
    private const double Settled = 0.5;

    /// <summary>Share that goes out without one, with what the grower nets and rinses. A guess.</summary>
    private const double Netted = 0.05;

    /// <summary>Share of a top's exchange that goes on under a lid. A guess.</summary>
    private const double UnderLid = 0.1;

    /// <summary>Energy with a mole of photons, MJ: sun 1/2.06; white lamps about 0.22 of light alone.</summary>
    private const double SunEnergy = 0.485;

    private const double LampEnergy = 0.22;
    private const double VisitHour = 8;

    private readonly Desk _desk;
    private readonly IReadOnlyList<VesselFacts> _vessels;
    private readonly Living _living;

    public YearLoop(Desk desk)
    {
        _desk = desk;
        _vessels = Vessels.Measure(desk);
        _living = Living.Read(desk, _vessels);
    }

    private LoopPlan Plan => _desk.Plan;

    public YearInput Input(YearAir air, double? pumpFlow)
    {
        var start = Plan.Fish.Select(f => f.In?.DayOfYear).OfType<int>().DefaultIfEmpty(0).Min();
        var places = Places(air);
        return new()
        {
            Name = Plan.Name,
            Air = air.Air,
            Humidity = air.Humidity,
            StartHour = start * 24 + (int)VisitHour,
            Loop = Body(pumpFlow),
            Places = [.. places.Select(p => p.Place)],
            Fish = Fish(start),
            Stands = Stands(places),
            Care = new() { Exchange = 0.002, MostFeed = Plan.Feed.EachDay is { } stated ? _desk.Take(stated).Si * 86400 * 1000 : double.PositiveInfinity },
        };
    }

    private LoopBody Body(double? pumpFlow)
    {
        var tanks = _vessels.Where(v => !v.IsBed).ToList();
        var beds = _vessels.Where(v => v.IsBed).ToList();
        var water = tanks.Sum(v => v.Water.Si);
        var flow = pumpFlow is { } known ? known * OnShare : Flow(water);
        var stones = Plan.AirPumps.Values.Sum(p => p.Flow is { } q
            ? Aeration.ByStones(Math.Min(_desk.Take(q).Si * 60000 * _desk.Take(p.Count).Si, 1e4), p.Depth is { } d ? Math.Min(_desk.Take(d).Si, 5) : 0.3) * _desk.Take(p.Hours).Si
            : 0);
        var open = tanks.Sum(v => v.Top.Si * (Warmth.IsOpen(v) ? 1 : UnderLid));
        var area = _vessels.Where(v => v.Media is not null && v.Medium is not null).Sum(v => v.Media!.Si * _desk.Take(v.Medium!.Surface).Si)
            + _vessels.Where(v => v.Vessel.Role == VesselRole.RaftBed).Sum(v => v.Wetted.Si + v.Top.Si) + tanks.Sum(v => v.Wetted.Si);
        var drained = beds.Count == 0 ? 0 : beds.Where(b => b.Vessel.Role is VesselRole.MediaBed or VesselRole.Channel).Sum(b => b.Top.Si) / beds.Sum(b => b.Top.Si);
        var falls = flow * Aeration.ByFall(Fall, 20);
        return new()
        {
            TankWater = water,
            BedWater = beds.Sum(v => v.Water.Si),
            PumpFlow = flow,
            TankConductance = tanks.Sum(Conductance),
            BedConductance = beds.Sum(Conductance),
            // Media hold about a quarter of the heat of as much water.
            BedHeatStore = 0.25 * beds.Sum(v => v.Media?.Si ?? 0),
            TankOpen = tanks.Sum(v => v.Top.Si * (Warmth.IsOpen(v) ? 1 : UnderLid / 2)),
            BedOpen = 0.1 * beds.Sum(v => v.Top.Si),
            PumpHeat = Plan.Pumps.Values.Sum(p => _desk.Take(p.Watts).Si * _desk.Take(p.Count).Si * _desk.Take(p.Hours).Si),
            HeaterWatts = Plan.Heaters.Values.Sum(h => _desk.Take(h.Watts).Si * _desk.Take(h.Count).Si),
            Keep = Plan.Heaters.Values.Select(h => _desk.Take(h.Keep).Si).DefaultIfEmpty(0).Max(),
            Pressure = PressureAtElevation.StandardAtmosphere(_desk.Take(Plan.Place.Elevation).Si),
            Bubbles = stones,
            Falls = falls,
            TankSurface = Aeration.QuietSurface * open,
            BedExchange = drained * flow * FloodAndDrain + (1 - drained) * falls,
            FilterArea = area,
            SolidsCaught = _vessels.Any(v => v.Vessel.Role == VesselRole.SolidsSeparator) ? Settled : Netted,
            SourceAlkalinity = Plan.Water.Alkalinity is { } alkalinity ? _desk.Take(alkalinity).Si * 1000 : 100,
            SourceTemperature = Plan.Water.Temperature is { } temperature ? _desk.Take(temperature).Si : 12,
            CarbonDioxide = Plan.Place.Setting == Setting.Indoors ? 700 : 420,
        };
    }

    /// <summary>Share of the day that the pumps run, the mean of them.</summary>
    private double OnShare => Plan.Pumps.Count == 0 ? 0 : Plan.Pumps.Values.Average(p => _desk.Take(p.Hours).Si);

    /// <summary>Water moved, m³/h: as stated, or half of what the pump's curve begins with, or the tank once an hour.</summary>
    private double Flow(double tank)
    {
        if (Plan.Pumps.Count == 0)
        {
            return 0;
        }
        return Plan.Pumps.Values.Sum(p => _desk.Take(p.Hours).Si * _desk.Take(p.Count).Si * (p.Flow is { } stated ? _desk.Take(stated).Si * 3600
            : p.Curve.Count > 0 ? FlowOfCurve * p.Curve.Max(c => _desk.Take(c.Flow).Si) * 3600
            : tank));
    }

    private double Conductance(VesselFacts v)
    {
        var insulation = v.Vessel.Insulation;
        var wall = WallTransmittance.Iso6946(
            Math.Min(_desk.Take(v.Vessel.WallThickness).Si * 1000, 1000), Warmth.WallConductivity(v.Vessel.Wall).Value,
            insulation is null ? 0 : Math.Min(_desk.Take(insulation.Thickness).Si * 1000, 1000), insulation is null ? 1 : Warmth.InsulationConductivity(insulation.Kind).Value);
        return wall * v.Wetted.Si + Warmth.TopTransmittance(_desk, v).Si * v.Top.Si;
    }

    private List<(VesselFacts Bed, BedPlace Place)> Places(YearAir air)
    {
        var places = new List<(VesselFacts, BedPlace)>();
        foreach (var bed in _vessels.Where(v => v.Planted is { Si: > 0 }))
        {
            var (light, lamps, sun) = (new double[YearInput.HoursOfYear], 0.0, 0.0);
            foreach (var lamp in Plan.Lamps.Values.Where(l => Over(l, bed)))
            {
                var area = _vessels.Where(v => v.Planted is not null && Over(lamp, v)).Sum(v => v.Planted!.Si);
                if (Lighting.Photons(_desk, lamp) is not { } one || area <= 0)
                {
                    continue;
                }
                var hourly = _desk.Take(lamp.Count).Si * one.Si * _desk.Take(lamp.Reaching).Si / area * 3600;
                var hours = _desk.Take(lamp.Hours).Si * 24;
                for (var h = 0; h < light.Length; h++)
                {
                    // An hour that is lit in part counts in part.
                    var since = (h - lamp.OnFrom.Hour + 24) % 24;
                    light[h] += hourly * Math.Clamp(hours - since, 0, 1);
                    lamps += hourly * Math.Clamp(hours - since, 0, 1);
                }
            }
            for (var h = 0; h < light.Length && air.Sun is not null; h++)
            {
                light[h] += air.Sun[h];
                sun += air.Sun[h];
            }
            var energy = lamps + sun > 0 ? (lamps * LampEnergy + sun * SunEnergy) / (lamps + sun) : SunEnergy;
            places.Add((bed, new(bed.Vessel.Name, bed.Planted!.Si, light, energy)));
        }
        return places;
    }

    private static bool Over(Lamp lamp, VesselFacts bed) => lamp.Over.Count == 0 || lamp.Over.Contains(bed.Vessel.Name, StringComparer.OrdinalIgnoreCase);

    private List<FishStock> Fish(int start)
    {
        var stocks = new List<FishStock>();
        foreach (var facts in _living.Batches.Where(b => b.Species is not null))
        {
            var (batch, kind) = (facts.Batch, facts.Species!);
            var best = (kind.Thrives.Low + kind.Thrives.High) / 2;
            var weight = _desk.Take(batch.Weight).Si * 1000;
            var harvest = batch.HarvestAt is { } at ? _desk.Take(at).Si * 1000 : double.PositiveInfinity;
            var growth = _desk.Take(kind.Growth).Si;
            // Deaths are spread over the time that growth takes at the best temperature and a third more.
            var days = double.IsFinite(harvest) ? Math.Max(60, 1.33 * 100 * (Math.Cbrt(harvest) - Math.Cbrt(weight)) / (growth * best)) : 365;
            var times = Math.Max(1, (int)Math.Round(_desk.Take(batch.BatchesAYear).Si));
            for (var k = 0; k < times; k++)
            {
                stocks.Add(new()
                {
                    Name = kind.Name,
                    Number = facts.Number.Si,
                    Weight = weight,
                    InAfter = ((batch.In?.DayOfYear ?? start) - start + 365) % 365 * 24 + k * YearInput.HoursOfYear / times,
                    HarvestAt = harvest,
                    Mortality = 1 - Math.Pow(Math.Clamp(_desk.Take(batch.Survival).Si, 0.01, 1), 1 / days),
                    Growth = growth,
                    Least = kind.StopsFeedingBelow is { } stops ? _desk.Take(stops).Si : kind.Survives.Low,
                    Best = best,
                    Most = kind.Survives.High,
                    SurvivesLow = kind.Survives.Low,
                    SurvivesHigh = kind.Survives.High,
                    FeedConversion = _desk.Take(kind.FeedConversion).Si,
                    Protein = _desk.Take(Plan.Feed.Protein).Si,
                    Oxygen = kind.Oxygen.Low * 1000,
                    CriticalOxygen = 0.75 * kind.Oxygen.Low * 1000,
                    MostRation = Plan.Feed.ShareOfBodyWeight is { } share ? _desk.Take(share).Si * 86400 : double.PositiveInfinity,
                });
            }
        }
        return stocks;
    }

    private List<CropStand> Stands(List<(VesselFacts Bed, BedPlace Place)> places)
    {
        const int MostTogether = 26;
        var stands = new List<CropStand>();
        foreach (var crop in _living.Crops.Where(c => c.Kind is not null))
        {
            var kind = crop.Kind!;
            var area = crop.Area.Si;
            if (crop.Crop.Plants is { } plants)
            {
                area = Math.Min(area, _desk.Take(plants).Si / _desk.Take(kind.Spacing).Si);
            }
            var whole = crop.Beds.Sum(b => b.Planted!.Si);
            var every = kind.Picking == Picking.Whole && crop.Crop.Every is { } e ? _desk.Take(e).Si / 86400 : double.PositiveInfinity;
            var together = double.IsFinite(every) ? Math.Clamp((int)Math.Round(_desk.Take(kind.DaysInBed).Si / 86400 / every), 1, MostTogether) : 1;
            foreach (var bed in crop.Beds.Where(b => b.Planted!.Si > 0))
            {
                var place = places.FindIndex(p => p.Bed == bed);
                for (var k = 0; k < together && area > 0; k++)
                {
                    stands.Add(new()
                    {
                        Name = kind.Name,
                        Place = place,
                        Area = area * bed.Planted!.Si / whole / together,
                        InAfter = k == 0 ? 0 : (int)(k * every * 24),
                        Picking = kind.Picking,
                        Least = kind.Survives.Low,
                        // Three quarters up the band in which it does well: growth is fastest towards its warm end.
                        Best = kind.Thrives.Low + 0.75 * (kind.Thrives.High - kind.Thrives.Low),
                        Most = kind.Survives.High,
                        PlantedAs = kind.Picking == Picking.Fruit ? 5 : 2.5,
                        PickedAt = _desk.Take(kind.DryMassWhenPicked).Si * 1000,
                        Stays = _desk.Take(kind.Stays).Si / 86400,
                        FruitShare = kind.FruitShare is { } fruit ? _desk.Take(fruit).Si : 0,
                        LeafArea = _desk.Take(kind.LeafArea).Si / 1000,
                        Nitrogen = _desk.Take(kind.Nitrogen).Si,
                        DryMatter = _desk.Take(kind.DryMatter).Si,
                    });
                }
            }
        }
        return stands;
    }
}
