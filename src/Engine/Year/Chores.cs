using Runnel.Engine.Crops;
using Runnel.Engine.Water;
using static Runnel.Engine.Year.LoopRates;

namespace Runnel.Engine.Year;

/// <summary>What the grower does at each visit, the start and the end of a run, and the books that must balance.</summary>
internal sealed class Chores(YearInput input, FishPens fish, CropBeds crops, LoopRates rates, WaterTable table)
{
    /// <summary>What is dissolved in the whole loop.</summary>
    private static readonly int[] Mixed = [Ammonia, Nitrite, Nitrate, Alkalinity, Carbon];

    private readonly bool[] _in = new bool[input.Fish.Count];
    private double _nitrogenFed, _nitrogenDosed, _fishOut, _fishPut, _plantsOut, _plantsPut, _waterOut, _solidsOut, _solidsLeft, _atStart;
    private double _fedBefore, _cropBefore, _cropOut, _fishStocked;
    private double _nextIron;

    /// <summary>Solids that stay in the loop and their nitrogen, g/h, over the coming step.</summary>
    public double SolidsIn { get; private set; }

    /// <inheritdoc cref="SolidsIn"/>
    public double SolidsNitrogenIn { get; private set; }

    /// <summary>The state at the start: the water in balance with the air.</summary>
    public void Begin(double[] state, YearResult result)
    {
        _nitrogenFed = _nitrogenDosed = _fishOut = _fishPut = _plantsOut = _plantsPut = _waterOut = _solidsOut = _solidsLeft = 0;
        _fedBefore = _cropBefore = _cropOut = _fishStocked = 0;
        _nextIron = 0;
        Array.Clear(_in);
        Array.Clear(state);
        for (var i = 0; i < fish.Number.Length; i++)
        {
            fish.TakeOut(i);
            (fish.Weight[i], fish.Eaten[i]) = (0, 0);
        }
        for (var i = 0; i < crops.Mass.Length; i++)
        {
            crops.CutTo(i, 0);
        }
        var body = input.Loop;
        if (body.TankWater <= 0)
        {
            return;
        }
        var air = input.Air[input.StartHour];
        var temperature = Math.Clamp(Math.Max(double.IsFinite(air) ? air : 15, body.HeaterWatts > 0 ? body.Keep : -50), 1, 38);
        var volume = body.TankWater + body.BedWater;
        var at = WaterTable.At(temperature);
        state[TankHeat] = state[BedHeat] = temperature;
        state[TankWater] = body.TankWater;
        state[TankOxygen] = table.Get(at, WaterTable.Oxygen) * body.TankWater;
        state[BedOxygen] = table.Get(at, WaterTable.Oxygen) * body.BedNode;
        state[Nitrate] = body.NitrateAtStart * volume;
        state[Alkalinity] = body.SourceAlkalinity * volume;
        state[Carbon] = CarbonOf(state[Alkalinity]) + 3 * body.CarbonDioxide * table.Get(at, WaterTable.CarbonDioxide) * volume;
        state[Oxidisers] = body.BacteriaAtStart * rates.MostOxidisers;
        state[NitriteOxidisers] = body.BacteriaAtStart * rates.MostNitriteOxidisers;
        _atStart = Dissolved(state);
        result.Minerals.Add(0, 0, state[Alkalinity]);
    }

    /// <summary>Shares out what was fed and digested over a step.</summary>
    public void Digest(double nitrogenFed, double step)
    {
        _nitrogenFed += nitrogenFed;
        var kept = 1 - input.Loop.SolidsCaught;
        SolidsIn = kept * YearConstants.Degradable * fish.SolidsDry;
        SolidsNitrogenIn = kept * YearConstants.Degradable * fish.SolidsNitrogen;
        var caught = input.Loop.SolidsCaught * fish.SolidsNitrogen * step;
        _solidsOut += caught;
        _solidsLeft += fish.SolidsNitrogen * step - caught - SolidsNitrogenIn * step;
    }

    public void Visit(int hour, double[] state, YearResult result)
    {
        Water(state, result);
        Fish(hour, state, result);
        Crops(hour, result);
        Dose(hour, state, result);
        var fed = fish.EatenByAll;
        var made = crops.Standing + _cropOut;
        result.Minerals.Add(fed - _fedBefore, Math.Max(0, made - _cropBefore), 0);
        (_fedBefore, _cropBefore) = (fed, made);
    }

    public void Finish(double[] state, YearResult result)
    {
        result.Heat = state[HeaterHeat] / 1000;
        result.Evaporated = state[Evaporated];
        result.Nitrified = state[LoopRates.Nitrified];
        for (var i = 0; i < fish.Eaten.Length; i++)
        {
            result.FeedByBatch[i] = fish.Eaten[i] / 1000;
            result.Feed += fish.Eaten[i] / 1000;
        }
        result.FishGained = fish.Mass + result.FishHarvested - _fishStocked;
        result.Nitrogen = new(
            _nitrogenFed + _nitrogenDosed,
            fish.Nitrogen + _fishOut - _fishPut,
            crops.Nitrogen + _plantsOut - _plantsPut,
            _waterOut + Dissolved(state) - _atStart,
            _solidsOut + _solidsLeft + state[SolidsNitrogen],
            state[Lost]);
    }

    private static double Dissolved(double[] state) => state[Ammonia] + state[Nitrite] + state[Nitrate];

    private static double CarbonOf(double alkalinity) => alkalinity * Carbonate.GramsPerMole / Carbonate.GramsPerEquivalent;

    /// <summary>Throws some water away, then fills up with source water of its own warmth, oxygen and alkalinity.</summary>
    private void Water(double[] state, YearResult result)
    {
        var body = input.Loop;
        var volume = state[TankWater] + body.BedWater;
        var drawn = Math.Min(input.Care.Exchange * volume, 0.9 * state[TankWater]);
        if (drawn > 0)
        {
            var left = 1 - drawn / volume;
            _waterOut += Dissolved(state) * (1 - left);
            foreach (var i in Mixed)
            {
                state[i] *= left;
            }
            state[TankOxygen] *= 1 - drawn / state[TankWater];
            state[TankWater] -= drawn;
        }
        var added = body.TankWater - state[TankWater];
        if (input.Care.TopsUp && added > 0)
        {
            state[TankHeat] = (state[TankHeat] * state[TankWater] + body.SourceTemperature * added) / body.TankWater;
            state[TankOxygen] += added * table.Get(WaterTable.At(body.SourceTemperature), WaterTable.Oxygen);
            state[Alkalinity] += added * body.SourceAlkalinity;
            // Tap water with about 5 mg/L of free carbon dioxide: pH near 7.7 at 120 mg/L of alkalinity.
            state[Carbon] += CarbonOf(added * body.SourceAlkalinity) + 5 * added;
            state[TankWater] = body.TankWater;
            result.ToppedUp += added * 1000;
            result.Minerals.Add(0, 0, added * body.SourceAlkalinity);
        }
    }

    private void Fish(int hour, double[] state, YearResult result)
    {
        var oxygen = state[TankOxygen] / state[TankWater];
        for (var i = 0; i < _in.Length; i++)
        {
            var stock = input.Fish[i];
            if (!_in[i] && hour >= stock.InAfter)
            {
                _in[i] = true;
                fish.Put(i);
                _fishPut += stock.Number * stock.Weight * YearConstants.FishNitrogen;
                _fishStocked += stock.Number * stock.Weight / 1000;
                result.Happened.Add(new(hour, YearEventKind.FishIn, i, stock.Number * stock.Weight / 1000));
            }
            if (fish.Number[i] <= 0)
            {
                continue;
            }
            if (hour > stock.InAfter)
            {
                _fishOut += fish.Bury(i);
            }
            if (fish.Weight[i] >= stock.HarvestAt)
            {
                var mass = fish.Number[i] * fish.Weight[i] / 1000;
                _fishOut += fish.TakeOut(i);
                result.FishByBatch[i] += mass;
                result.FishHarvested += mass;
                result.Happened.Add(new(hour, YearEventKind.FishHarvested, i, mass));
                continue;
            }
            fish.SetRation(i, state[TankHeat], oxygen);
        }
        fish.Limit(input.Care.MostFeed);
    }

    private void Crops(int hour, YearResult result)
    {
        for (var i = 0; i < crops.Mass.Length; i++)
        {
            var stand = input.Stands[i];
            if (crops.Planted[i] < 0)
            {
                if (hour >= stand.InAfter)
                {
                    Plant(i, hour, result);
                }
                continue;
            }
            var age = (hour - crops.Planted[i]) / 24.0;
            var over = age >= stand.Stays;
            switch (stand.Picking)
            {
                case Picking.Whole when over || crops.Mass[i] >= stand.PickedAt:
                    Pick(i, hour, crops.Mass[i], result);
                    Replant(i, hour, result);
                    break;
                case Picking.Cut when over || crops.Mass[i] >= stand.PickedAt:
                    var kept = over ? 0 : stand.PlantedAs * 3;
                    Pick(i, hour, crops.Mass[i] - kept, result);
                    if (over)
                    {
                        Replant(i, hour, result);
                    }
                    else
                    {
                        crops.CutTo(i, kept);
                    }
                    break;
                case Picking.Fruit:
                    crops.Bears[i] |= crops.Mass[i] >= stand.PickedAt;
                    if (crops.Fruit[i] > 0 && (over || (int)age % 7 == 0))
                    {
                        Pick(i, hour, crops.Fruit[i], result);
                        crops.Fruit[i] = 0;
                    }
                    if (over)
                    {
                        Clear(i, hour, result);
                        Replant(i, hour, result);
                    }
                    break;
                default:
                    break;
            }
        }
    }

    private void Plant(int i, int hour, YearResult result)
    {
        crops.Plant(i, hour);
        var stand = input.Stands[i];
        _plantsPut += stand.PlantedAs * stand.Area * stand.Nitrogen;
        _cropBefore += stand.PlantedAs * stand.Area;
        result.Happened.Add(new(hour, YearEventKind.Planted, i, stand.PlantedAs * stand.Area / stand.DryMatter / 1000));
    }

    private void Replant(int i, int hour, YearResult result)
    {
        crops.CutTo(i, 0);
        Plant(i, hour, result);
    }

    private void Pick(int i, int hour, double dry, YearResult result)
    {
        var stand = input.Stands[i];
        _plantsOut += dry * stand.Area * stand.Nitrogen;
        _cropOut += dry * stand.Area;
        var fresh = dry * stand.Area / stand.DryMatter / 1000;
        result.CropByStand[i] += fresh;
        result.CropPicked += fresh;
        result.Happened.Add(new(hour, YearEventKind.Picked, i, fresh));
    }

    private void Clear(int i, int hour, YearResult result)
    {
        var stand = input.Stands[i];
        _plantsOut += crops.Mass[i] * stand.Area * stand.Nitrogen;
        _cropOut += crops.Mass[i] * stand.Area;
        result.Happened.Add(new(hour, YearEventKind.Cleared, i, crops.Mass[i] * stand.Area / stand.DryMatter / 1000));
    }

    private void Dose(int hour, double[] state, YearResult result)
    {
        var care = input.Care;
        var volume = state[TankWater] + input.Loop.BedWater;
        var alkalinity = state[Alkalinity] / volume;
        if (care.Base is { } chemical && alkalinity < care.AlkalinityLow)
        {
            var rise = Math.Min(care.AlkalinityAim - alkalinity, care.MostRise) * volume;
            var grams = rise / Carbonate.GramsPerEquivalent * chemical.EquivalentWeight;
            state[Alkalinity] += rise;
            state[Carbon] += CarbonOf(rise) * CarbonEach(chemical);
            result.Base += grams;
            if (chemical == BaseChemical.PotassiumBicarbonate || chemical == BaseChemical.PotassiumHydroxide)
            {
                result.Minerals.Dose(Mineral.Potassium, rise / Carbonate.GramsPerEquivalent * 39.0983);
            }
            else if (chemical == BaseChemical.CalciumCarbonate || chemical == BaseChemical.CalciumHydroxide)
            {
                result.Minerals.Dose(Mineral.Calcium, rise / Carbonate.GramsPerEquivalent * 20.039);
            }
            result.Happened.Add(new(hour, YearEventKind.BaseDosed, -1, grams));
        }
        if (care.IronDose > 0 && care.IronEvery > 0 && hour >= _nextIron * 24 && crops.Mass.Length > 0)
        {
            _nextIron += care.IronEvery;
            result.Iron += care.IronDose * volume;
            result.Minerals.Dose(Mineral.Iron, care.IronDose * volume);
            result.Happened.Add(new(hour, YearEventKind.IronDosed, -1, care.IronDose * volume));
        }
        if (care.AmmoniaTo > 0 && fish.Mass <= 0 && state[Ammonia] / volume < care.AmmoniaTo && state[Nitrite] / volume < care.AmmoniaWaitsAt)
        {
            var grams = care.AmmoniaTo * volume - state[Ammonia];
            state[Ammonia] += grams;
            state[Alkalinity] += YearConstants.AlkalinityEachNitrogen * grams;
            _nitrogenDosed += grams;
            result.AmmoniaDosed += grams;
            result.Happened.Add(new(hour, YearEventKind.AmmoniaDosed, -1, grams));
        }
    }

    /// <summary>Moles of carbon that come with each equivalent of a base.</summary>
    private static double CarbonEach(BaseChemical chemical) =>
        chemical == BaseChemical.PotassiumBicarbonate || chemical == BaseChemical.SodiumBicarbonate ? 1
        : chemical == BaseChemical.CalciumCarbonate ? 0.5 : 0;
}
