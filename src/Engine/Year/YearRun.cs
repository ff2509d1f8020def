using Runnel.Engine.Numerics;
using static Runnel.Engine.Year.LoopRates;

namespace Runnel.Engine.Year;

/// <summary>One loop through one year, hour by hour.</summary>
/// <remarks>
/// Each step: fish feed, digest and grow (exact for constant feed); crops' gain with nitrate in plenty (exact for constant light); water and bacteria by
/// <see cref="Ros2"/>, with what the living give off and want taken as constant over the step; crops' gain scaled by the nitrate they got. Weather,
/// lamps and meals are constant within each hour, and whatever the grower does happens at the start of an hour, so that every event
/// stands on the edge of a step. Order 2. A step that would take an amount below nothing is cut in half, again and again.
/// Nothing is allocated after construction but room for events beyond 4096.
/// </remarks>
public sealed class YearRun
{
    internal const int MostCuts = 8;

    /// <summary>Heat that a step may seem to take back where the thermostat goes off within it, Wh.</summary>
    private const double HeatSlack = 0.01;

    /// <summary>Water this cold is about to freeze, °C.</summary>
    private const double NearlyIce = 0.1;

    private readonly YearInput _input;
    private readonly WaterTable _table;
    private readonly LoopRates _rates;
    private readonly FishPens _fish;
    private readonly CropBeds _crops;
    private readonly Ros2 _solver = new(Count, StiffCount);
    private readonly double[] _state = new double[Count];
    private readonly double[] _before = new double[Count];
    private readonly Chores _chores;
    private readonly double[] _mealShare = new double[24];
    private readonly int[] _tooLong;
    private readonly BedPlace[] _places;

    /// <summary>Room and tables for runs of this input.</summary>
    /// <exception cref="ArgumentException">An array is not of a year's length, or the hours are not within a year.</exception>
    public YearRun(YearInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        Check(input);
        _input = input;
        _table = WaterTable.For(Math.Clamp(input.Loop.Pressure, 50, 110));
        _rates = new(input.Loop, _table);
        _fish = new(input.Fish);
        _crops = new(input.Stands, input.Places);
        _chores = new(input, _fish, _crops, _rates, _table);
        _tooLong = new int[input.Fish.Count];
        _places = [.. input.Places];
        foreach (var meal in input.Care.Meals)
        {
            _mealShare[meal] += 1.0 / input.Care.Meals.Count;
        }
    }

    /// <summary>A result of the right size, to be filled by <see cref="Run"/> as often as wanted.</summary>
    public YearResult MakeResult() => new(_input.Hours, _input.Fish.Count, _input.Stands.Count);

    /// <summary>Runs and returns a new result.</summary>
    public static YearResult Of(YearInput input)
    {
        var run = new YearRun(input);
        var result = run.MakeResult();
        run.Run(result);
        return result;
    }

    /// <summary>Runs the year from its start.</summary>
    /// <param name="result">Filled; what was in it is gone.</param>
    /// <param name="progress">Told the share of the year that is done, once for each day.</param>
    /// <param name="cancel">Stops between days.</param>
    public void Run(YearResult result, IProgress<double>? progress = null, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(result);
        result.Clear();
        Array.Clear(_tooLong);
        _chores.Begin(_state, result);
        if (_input.Loop.TankWater <= 0 || !double.IsFinite(_input.Loop.TankWater + _input.Loop.BedWater))
        {
            result.Failure = new(0, FailureKind.NoWater, -1, Math.Max(0, _input.Loop.TankWater), 0);
            return;
        }
        for (var hour = 0; hour < _input.Hours; hour++)
        {
            var ofYear = (_input.StartHour + hour) % YearInput.HoursOfYear;
            var ofDay = ofYear % 24;
            if (hour == 0 || ofDay == _input.Care.VisitHour)
            {
                cancel.ThrowIfCancellationRequested();
                progress?.Report((double)hour / _input.Hours);
                _chores.Visit(hour, _state, result);
            }
            if (!Hour(hour, ofYear, ofDay, result))
            {
                break;
            }
            result.HoursRun = hour + 1;
        }
        _chores.Finish(_state, result);
    }

    private bool Hour(int hour, int ofYear, int ofDay, YearResult result)
    {
        var air = _input.Air[ofYear];
        var humidity = _input.Humidity[ofYear];
        if (!double.IsFinite(air) || !double.IsFinite(humidity))
        {
            result.Failure = new(hour, FailureKind.NoWeather, -1, 0, 0);
            return false;
        }
        var most = WaterTable.OverAir(air);
        var vapour = most * Math.Clamp(humidity, 0, 100) / 100;
        var dark = _input.Cut is { } cut && hour >= cut.After && hour < cut.After + cut.Lasts;
        _rates.Powered = !dark;
        _rates.Air = air;
        _rates.AirVapour = vapour;
        var warming = 0.0;
        foreach (var place in _places)
        {
            warming += place.WarmingShare * place.Area * place.Light[ofYear] * place.EnergyEachMole / 0.0036;
        }
        _rates.BedWarming = warming;
        var heatBefore = _state[HeaterHeat];
        // Minute by minute without power: minutes matter then.
        var steps = dark ? 60 : _input.StepsEachHour;
        for (var i = 0; i < steps; i++)
        {
            Step(1.0 / steps, ofYear, air, most - vapour, dark ? 0 : _mealShare[ofDay], result);
            if (dark && result.HoursFromCutToCritical is null && Critical())
            {
                result.HoursFromCutToCritical = hour - _input.Cut!.After + (i + 1.0) / steps;
            }
        }
        var heat = _state[HeaterHeat] - heatBefore;
        result.HeatByMonth[Months.Of(ofYear)] += heat / 1000;
        Record(hour, heat, result);
        return Judge(hour, result);
    }

    /// <summary>True if a batch has less oxygen than its critical value.</summary>
    private bool Critical()
    {
        for (var i = 0; i < _fish.Number.Length; i++)
        {
            if (_fish.Number[i] > 0 && _state[TankOxygen] / _state[LoopRates.TankWater] < _fish.Stock(i).CriticalOxygen)
            {
                return true;
            }
        }
        return false;
    }

    private void Step(double step, int ofYear, double air, double deficit, double mealShare, YearResult result)
    {
        var fed = _fish.Step(step, mealShare);
        _crops.Prepare(step, ofYear, air, deficit);
        _chores.Digest(fed, step);
        _rates.Excreted = _fish.Excreted;
        _rates.SolidsIn = _chores.SolidsIn;
        _rates.SolidsNitrogenIn = _chores.SolidsNitrogenIn;
        _rates.DigestionDemand = YearConstants.DigestionOxygen * _fish.Digested;
        _rates.RestDemand = _fish.RestDemand;
        _rates.Wanted = _crops.Wanted;
        _rates.Transpired = _crops.Transpired;
        var taken = _state[TakenUp];
        Advance(step, 0, result);
        if (_crops.Wanted > 0)
        {
            _crops.Grow((_state[TakenUp] - taken) / (_crops.Wanted * step));
        }
        result.Transpired += _crops.Transpired * step;
    }

    private void Advance(double step, int cuts, YearResult result)
    {
        _state.AsSpan().CopyTo(_before);
        _solver.Step(_rates, _state, step);
        if (Above(_state) && _state[HeaterHeat] >= _before[HeaterHeat] - HeatSlack)
        {
            return;
        }
        if (cuts >= MostCuts)
        {
            // Oxygen that living things would draw below nothing is nothing; no other balance rests on it.
            _state[TankOxygen] = Math.Max(0, _state[TankOxygen]);
            _state[BedOxygen] = Math.Max(0, _state[BedOxygen]);
            return;
        }
        _before.AsSpan().CopyTo(_state);
        result.StepsCut++;
        Advance(step / 2, cuts + 1, result);
        Advance(step / 2, cuts + 1, result);
    }

    /// <summary>True if no amount is below nothing.</summary>
    private static bool Above(double[] state)
    {
        for (var i = TankOxygen; i <= TankWater; i++)
        {
            if (state[i] < 0)
            {
                return false;
            }
        }
        return true;
    }

    private void Record(int hour, double heat, YearResult result)
    {
        var s = result.Series;
        var volume = _state[LoopRates.TankWater] + _input.Loop.BedWater;
        var temperature = _state[TankHeat];
        var (hydrogen, _) = _rates.Acidity(temperature, _state[Alkalinity], _state[Carbon], volume);
        var ammonium = _table.Get(WaterTable.At(temperature), WaterTable.Ammonium);
        s.TankTemperature[hour] = temperature;
        s.BedTemperature[hour] = _state[BedHeat];
        s.Oxygen[hour] = _state[TankOxygen] / _state[LoopRates.TankWater];
        s.BedOxygen[hour] = _state[BedOxygen] / _input.Loop.BedNode;
        s.Ammonia[hour] = _state[Ammonia] / volume;
        s.Nitrite[hour] = _state[Nitrite] / volume;
        s.Nitrate[hour] = _state[Nitrate] / volume;
        s.Alkalinity[hour] = _state[Alkalinity] / volume;
        s.PH[hour] = -Math.Log10(hydrogen);
        s.FreeAmmonia[hour] = s.Ammonia[hour] * ammonium / (ammonium + hydrogen);
        s.Solids[hour] = _state[Solids];
        s.Water[hour] = volume * 1000;
        s.FishMass[hour] = _fish.Mass;
        s.CropMass[hour] = _crops.Standing;
        // The order-2 sum may undershoot nothing by a hair in an hour in which the thermostat goes off.
        s.HeaterPower[hour] = Math.Max(0, heat);
        s.OxygenDemand[hour] = _rates.DigestionDemand + _rates.RestDemand * _table.Get(WaterTable.At(temperature), WaterTable.Breath);
    }

    /// <summary>False once the loop has failed.</summary>
    private bool Judge(int hour, YearResult result)
    {
        var s = result.Series;
        var sum = 0.0;
        foreach (var value in _state)
        {
            sum += value;
        }
        if (!double.IsFinite(sum))
        {
            result.Failure = new(hour, FailureKind.Boundless, -1, 0, 0);
        }
        else if (_state[LoopRates.TankWater] < 0.2 * _input.Loop.TankWater)
        {
            result.Failure = new(hour, FailureKind.NoWater, -1, _state[LoopRates.TankWater], 0.2 * _input.Loop.TankWater);
        }
        else if (Math.Min(_state[TankHeat], _input.Loop.BedWater > 0 ? _state[BedHeat] : _state[TankHeat]) is var coldest && coldest < NearlyIce)
        {
            result.Failure = new(hour, FailureKind.Freezing, -1, coldest, 0);
        }
        else if (_state[TankHeat] >= WaterTable.Hottest)
        {
            result.Failure = new(hour, FailureKind.TooWarm, -1, _state[TankHeat], WaterTable.Hottest);
        }
        for (var i = 0; i < _fish.Number.Length && result.Failure is null; i++)
        {
            if (_fish.Number[i] > 0)
            {
                result.Failure = Harm(hour, i, s.Oxygen[hour], s.TankTemperature[hour], s.FreeAmmonia[hour]);
            }
        }
        return result.Failure is null;
    }

    /// <summary>What kills a batch: oxygen under half its critical value, a day outside the temperatures it survives, 2 mg/L of un-ionised ammonia.</summary>
    private YearFailure? Harm(int hour, int i, double oxygen, double temperature, double ammonia)
    {
        const double DeadlyAmmonia = 2;
        const int LongEnough = 24;
        var stock = _fish.Stock(i);
        _tooLong[i] = temperature < stock.SurvivesLow || temperature > stock.SurvivesHigh ? _tooLong[i] + 1 : 0;
        return (oxygen < stock.CriticalOxygen / 2, ammonia > DeadlyAmmonia, _tooLong[i] >= LongEnough) switch
        {
            (true, _, _) => new(hour, FailureKind.LowOxygen, i, oxygen, stock.CriticalOxygen / 2),
            (_, true, _) => new(hour, FailureKind.Ammonia, i, ammonia, DeadlyAmmonia),
            (_, _, true) when temperature < stock.SurvivesLow => new(hour, FailureKind.TooCold, i, temperature, stock.SurvivesLow),
            (_, _, true) => new(hour, FailureKind.TooWarm, i, temperature, stock.SurvivesHigh),
            _ => null,
        };
    }

    private static void Check(YearInput input)
    {
        if (input.Hours is < 1 or > YearInput.HoursOfYear || input.StartHour is < 0 or >= YearInput.HoursOfYear || input.StepsEachHour < 1)
        {
            throw new ArgumentException("a run lasts 1 to 8760 hours, starts within the year and takes at least one step an hour", nameof(input));
        }
        if (input.Air.Length != YearInput.HoursOfYear || input.Humidity.Length != YearInput.HoursOfYear
            || input.Places.Any(p => p.Light.Length != YearInput.HoursOfYear))
        {
            throw new ArgumentException("hourly arrays hold 8760 values", nameof(input));
        }
        if (input.Care.Meals.Any(m => m is < 0 or > 23) || input.Care.VisitHour is < 0 or > 23 || input.Stands.Any(s => s.Place < 0 || s.Place >= input.Places.Count))
        {
            throw new ArgumentException("an hour of the day or a place is out of range", nameof(input));
        }
    }
}
