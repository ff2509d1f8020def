namespace Runnel.Engine.Year;

/// <summary>A mineral that loops run short of.</summary>
public enum Mineral
{
    Iron,
    Potassium,
    Calcium,
    Magnesium,
    Phosphorus,
}

/// <summary>Minerals in and out as plain balances, g: they tell what runs short, and do not slow growth.</summary>
/// <remarks>Contents from memory: feed 0.8 % K, 2 % Ca, 0.2 % Mg, 1.1 % P, 0.02 % Fe, of which about nine tenths of the potassium, 15 % of the calcium, half
/// of the magnesium, 40 % of the phosphorus and a tenth of the iron dissolve; dry crops 5 % K, 1.2 % Ca, 0.4 % Mg, 0.6 % P, 0.015 % Fe. Each may be
/// off by half. Hardness of the source water is taken as its alkalinity, an eighth of it magnesium.</remarks>
public sealed class MineralBalance
{
    private const int Kinds = 5;

    // Fe, K, Ca, Mg, P: dissolved for each gram of feed; in each gram of dry crop; for each gram of alkalinity (as CaCO3) of source water.
    private static readonly double[] Feed = [0.00002, 0.0072, 0.003, 0.001, 0.0044];
    private static readonly double[] Crop = [0.00015, 0.05, 0.012, 0.004, 0.006];
    private static readonly double[] Source = [0, 0.02, 0.35, 0.03, 0];

    private readonly double[] _given = new double[Kinds];
    private readonly double[] _taken = new double[Kinds];
    private readonly double[] _dosed = new double[Kinds];

    /// <summary>From feed and source water, g.</summary>
    public double Given(Mineral mineral) => _given[(int)mineral];

    /// <summary>Taken up by crops at their usual content, g.</summary>
    public double Taken(Mineral mineral) => _taken[(int)mineral];

    /// <summary>From doses of base and iron, g.</summary>
    public double Dosed(Mineral mineral) => _dosed[(int)mineral];

    /// <summary>What crops wanted beyond all that came in, g; 0 when there is enough.</summary>
    public double Short(Mineral mineral) => Math.Max(0, Taken(mineral) - Given(mineral) - Dosed(mineral));

    internal void Add(double feed, double crop, double sourceAlkalinity)
    {
        for (var i = 0; i < Kinds; i++)
        {
            _given[i] += Feed[i] * feed + Source[i] * sourceAlkalinity;
            _taken[i] += Crop[i] * crop;
        }
    }

    internal void Dose(Mineral mineral, double grams) => _dosed[(int)mineral] += grams;

    internal void Clear()
    {
        Array.Clear(_given);
        Array.Clear(_taken);
        Array.Clear(_dosed);
    }
}
