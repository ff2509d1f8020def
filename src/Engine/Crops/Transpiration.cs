namespace Runnel.Engine.Crops;

/// <summary>Water that leaves give off.</summary>
public static class Transpiration
{
    /// <summary>Share of the radiation that a closed stand turns into vapour. From memory: 0.2 to 0.7 in Baille et al. 1994; Hanan 1998 about 0.7.</summary>
    public const double RadiationShare = 0.6;

    /// <summary>Heat of vapour for each unit of leaf area and vapour deficit, W/m²/kPa. From memory: Baille et al. 1994, 8 to 40.</summary>
    public const double DeficitTerm = 10;

    /// <summary>Transpiration of a stand.</summary>
    /// <param name="radiation">Short-wave radiation on the stand, W/m², from 0 to 1400.</param>
    /// <param name="leafArea">Leaf area index, from 0 to 20.</param>
    /// <param name="deficit">Vapour pressure deficit of the air, kPa, from 0 to 12.</param>
    /// <param name="extinction">Extinction coefficient, from 0.2 to 1.</param>
    /// <returns>Water, L/m²/h.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range, or not a number.</exception>
    /// <remarks>λE = a (1 − exp(−k L)) G + b min(L, 3) D, λ = 2454 kJ/kg. Source: Baille, Baille and Laury 1994, Scientia Horticulturae 59, 217-233
    /// (form and constants from memory). Leaf area over 3 is counted as 3: lower leaves stand in still, moist air (our choice). Error: a third. Not
    /// for: wilting plants, wind.</remarks>
    public static double Baille(double radiation, double leafArea, double deficit, double extinction = LightUse.Extinction)
    {
        var closed = LightUse.MonsiSaeki(leafArea, extinction);
        var watts = RadiationShare * closed * Range.Within(radiation, 0, 1400) + DeficitTerm * Math.Min(leafArea, 3) * Range.Within(deficit, 0, 12);
        return watts * 3.6 / 2454;
    }
}
