using Runnel.Engine.Filter;
using Runnel.Engine.Fish;
using Runnel.Engine.Heat;
using Runnel.Engine.Water;

namespace Runnel.Engine.Year;

/// <summary>What depends on temperature alone, looked up between tenths of a degree: within 2·10⁻⁵ of the formulas.</summary>
internal sealed class WaterTable
{
    public const int Columns = 9;
    public const int Oxygen = 0, Vapour = 1, CarbonDioxide = 2, Acid = 3, Ammonium = 4, First = 5, Second = 6, Solids = 7, Breath = 8;
    public const double Hottest = 40;

    private const double Lowest = 0;
    private const double PerDegree = 10;
    private const int Rows = (int)((Hottest - Lowest) * PerDegree) + 2;
    private const double ColdestAir = -40;
    private const double HottestAir = 55;

    private static readonly double[] AirVapour = MakeAir();

    private static WaterTable? last;

    private readonly double _pressure;
    private readonly double[] _rows = new double[Rows * Columns];

    private WaterTable(double pressure)
    {
        _pressure = pressure;
        for (var i = 0; i < Rows; i++)
        {
            var t = Lowest + i / PerDegree;
            var row = _rows.AsSpan(i * Columns, Columns);
            row[Oxygen] = OxygenSaturation.BensonKrause(Math.Min(t, 40), pressure);
            row[Vapour] = SaturationVapourPressure.HylandWexler(t) / 1000;
            row[CarbonDioxide] = Carbonate.Dissolved(t, 1000) / 1000 * pressure / 101.325;
            row[Acid] = Math.Pow(10, -Carbonate.PlummerBusenberg(t));
            row[Ammonium] = Math.Pow(10, -(0.09018 + 2729.92 / (t + 273.15)));
            row[First] = NitrifierGrowth.Arrhenius(Math.Min(t, 36)) / 24;
            row[Second] = NitrifierGrowth.Arrhenius(Math.Min(t, 36), NitrifierGrowth.NitriteOxidisersAt20, NitrifierGrowth.NitriteOxidisersExponent) / 24;
            row[Solids] = YearConstants.SolidsDecay * Math.Pow(YearConstants.SolidsTheta, t - 20);
            row[Breath] = Math.Pow(RoutineRespiration.Theta, t - 20);
        }
    }

    /// <summary>The table for an air pressure, kPa; the last one made is kept, since a thousand years mostly share a place.</summary>
    public static WaterTable For(double pressure)
    {
        var kept = Volatile.Read(ref last);
        if (kept?._pressure == pressure)
        {
            return kept;
        }
        var made = new WaterTable(pressure);
        Volatile.Write(ref last, made);
        return made;
    }

    /// <summary>Where a temperature stands; clamped to the ends.</summary>
    public static Place At(double temperature)
    {
        var x = Math.Clamp((temperature - Lowest) * PerDegree, 0, Rows - 2 + 0.999999);
        var i = (int)x;
        return new(i * Columns, x - i);
    }

    public double Get(Place at, int column)
    {
        var low = _rows[at.Row + column];
        return low + at.Share * (_rows[at.Row + Columns + column] - low);
    }

    /// <summary>Change of a column with temperature.</summary>
    public double Slope(Place at, int column) => (_rows[at.Row + Columns + column] - _rows[at.Row + column]) * PerDegree;

    /// <summary>Saturation vapour pressure over water or ice at an air temperature, kPa.</summary>
    public static double OverAir(double air)
    {
        var x = Math.Clamp((air - ColdestAir) * PerDegree, 0, AirVapour.Length - 1.000001);
        var i = (int)x;
        return AirVapour[i] + (x - i) * (AirVapour[i + 1] - AirVapour[i]);
    }

    private static double[] MakeAir()
    {
        var table = new double[(int)((HottestAir - ColdestAir) * PerDegree) + 1];
        for (var i = 0; i < table.Length; i++)
        {
            table[i] = SaturationVapourPressure.HylandWexler(ColdestAir + i / PerDegree) / 1000;
        }
        return table;
    }

    /// <summary>A row and how far on to the next.</summary>
    public readonly record struct Place(int Row, double Share);
}
