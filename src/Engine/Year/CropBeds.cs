using Runnel.Engine.Crops;
using Runnel.Engine.Numerics;

namespace Runnel.Engine.Year;

/// <summary>The stands of crops of a run: growth by light and temperature, leaves, water and nitrogen wanted.</summary>
/// <remarks>
/// With light and temperature constant over a step, leaf area grows as k L' = k s (1 − exp(−k L)), whose exact solution is
/// k ΔL = ln(z + (1 − z) exp(k s h)), z = exp(−k L) (the expolinear form of Goudriaan and Monteith 1990). A shortage of nitrate scales
/// the gain afterwards.
/// </remarks>
internal sealed class CropBeds
{
    private const double Extinction = LightUse.Extinction;

    private const double ColdestAir = -40;
    private const int ResponseRows = 951;

    private readonly CropStand[] _stands;
    private readonly BedPlace[] _places;
    private readonly double[] _gain;
    private readonly double[] _closed;
    private readonly double[] _response;
    private readonly int[] _responseOf;

    public CropBeds(IReadOnlyList<CropStand> stands, IReadOnlyList<BedPlace> places)
    {
        _stands = [.. stands];
        _places = [.. places];
        Mass = new double[stands.Count];
        Fruit = new double[stands.Count];
        Planted = new int[stands.Count];
        Bears = new bool[stands.Count];
        _gain = new double[stands.Count];
        _closed = new double[stands.Count];
        _responseOf = new int[stands.Count];
        Array.Fill(Planted, -1);
        var kinds = stands.Select(s => (s.Least, s.Best, s.Most)).Distinct().ToList();
        _response = new double[kinds.Count * ResponseRows];
        for (var k = 0; k < kinds.Count; k++)
        {
            for (var i = 0; i < ResponseRows; i++)
            {
                _response[k * ResponseRows + i] = TemperatureResponse.Beta(ColdestAir + i / 10.0, kinds[k].Least, kinds[k].Best, kinds[k].Most);
            }
        }
        for (var i = 0; i < stands.Count; i++)
        {
            _responseOf[i] = kinds.IndexOf((stands[i].Least, stands[i].Best, stands[i].Most)) * ResponseRows;
        }
    }

    /// <summary>Dry mass of leaves and stems, g/m²; 0 when not planted.</summary>
    public double[] Mass { get; }

    /// <summary>Dry fruit not yet picked, g/m².</summary>
    public double[] Fruit { get; }

    /// <summary>Hour of the run at which it was planted, or −1.</summary>
    public int[] Planted { get; }

    /// <summary>True once it bears fruit.</summary>
    public bool[] Bears { get; }

    /// <summary>Nitrogen wanted over the coming step, g/h; water given off, kg/h.</summary>
    public double Wanted { get; private set; }

    /// <inheritdoc cref="Wanted"/>
    public double Transpired { get; private set; }

    /// <summary>Nitrogen standing in the beds, g.</summary>
    public double Nitrogen
    {
        get
        {
            var sum = 0.0;
            for (var i = 0; i < Mass.Length; i++)
            {
                sum += (Mass[i] + Fruit[i]) * _stands[i].Area * _stands[i].Nitrogen;
            }
            return sum;
        }
    }

    /// <summary>Dry mass standing, g.</summary>
    public double Standing
    {
        get
        {
            var sum = 0.0;
            for (var i = 0; i < Mass.Length; i++)
            {
                sum += (Mass[i] + Fruit[i]) * _stands[i].Area;
            }
            return sum;
        }
    }

    public void Plant(int i, int hour) => (Mass[i], Fruit[i], Planted[i], Bears[i], _closed[i]) = (_stands[i].PlantedAs, 0, hour, false, 1 - Math.Exp(-Extinction * _stands[i].LeafArea * _stands[i].PlantedAs));

    /// <summary>Leaves a stand at a mass; 0 clears it.</summary>
    public void CutTo(int i, double mass)
    {
        Mass[i] = mass;
        _closed[i] = 1 - Math.Exp(-Extinction * _stands[i].LeafArea * mass);
        if (mass == 0)
        {
            (Fruit[i], Planted[i], Bears[i]) = (0, -1, false);
        }
    }

    /// <summary>Works out what each stand would gain with nitrate in plenty, and the water it gives off.</summary>
    public void Prepare(double step, int hourOfYear, double air, double deficit)
    {
        var (wanted, transpired) = (0.0, 0.0);
        var x = Math.Clamp((air - ColdestAir) * 10, 0, ResponseRows - 1.000001);
        var row = (int)x;
        // Stands of one kind in one place share what the light does: worked out once.
        var (sharedPlace, sharedRow, sharedLeaf, rise) = (-1, -1, -1.0, 1.0);
        for (var i = 0; i < Mass.Length; i++)
        {
            _gain[i] = 0;
            if (Planted[i] < 0)
            {
                continue;
            }
            var stand = _stands[i];
            var place = _places[stand.Place];
            var light = place.Light[hourOfYear];
            var leaf = stand.LeafArea * Mass[i];
            if (light > 0)
            {
                var leafShare = stand.LeafArea * (Bears[i] ? 1 - stand.FruitShare : 1);
                if (stand.Place != sharedPlace || _responseOf[i] != sharedRow || leafShare != sharedLeaf)
                {
                    (sharedPlace, sharedRow, sharedLeaf) = (stand.Place, _responseOf[i], leafShare);
                    var r = _responseOf[i] + row;
                    var response = _response[r] + (x - row) * (_response[r + 1] - _response[r]);
                    // Flux while lit, µmol/m²/s: mol in the hour over 3600 s.
                    var use = LightUse.Dim / (1 + light * (1e6 / 3600 / LightUse.Half)) * light * response;
                    rise = Math.Exp(Extinction * leafShare * use * step) - 1;
                }
                if (rise > 0)
                {
                    _gain[i] = Math.Log(1 + _closed[i] * rise) / (Extinction * leafShare);
                    wanted += _gain[i] * stand.Area * stand.Nitrogen;
                }
            }
            // Radiation in W/m² is MJ in the hour over 0.0036.
            var watts = Transpiration.RadiationShare * _closed[i] * light * place.EnergyEachMole / 0.0036
                + Transpiration.DeficitTerm * Math.Min(leaf, 3) * deficit;
            transpired += watts * 3.6 / 2454 * stand.Area;
        }
        (Wanted, Transpired) = (wanted / step, transpired);
    }

    /// <summary>Adds the gains, scaled by what the nitrate allowed.</summary>
    public void Grow(double supplied)
    {
        if (supplied <= 0)
        {
            return;
        }
        for (var i = 0; i < Mass.Length; i++)
        {
            if (_gain[i] <= 0)
            {
                continue;
            }
            var gain = _gain[i] * supplied;
            var fruit = Bears[i] ? _stands[i].FruitShare * gain : 0;
            Fruit[i] += fruit;
            Mass[i] += gain - fruit;
            _closed[i] = 1 - Math.Exp(-Extinction * _stands[i].LeafArea * Mass[i]);
        }
    }
}
