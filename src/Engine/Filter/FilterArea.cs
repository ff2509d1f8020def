namespace Runnel.Engine.Filter;

/// <summary>Surface that the nitrifying bacteria of a biofilter need.</summary>
public static class FilterArea
{
    /// <summary>Surface for a load of ammonia, at a removal rate for each square metre; both counted as NH3.</summary>
    /// <param name="ammonia">Ammonia to be nitrified, g NH3/d, from 0 to 1 000 000.</param>
    /// <param name="rate">Removal rate, g NH3/m²/d, from 0.02 to 4.</param>
    /// <returns>Surface, m².</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range, or not a number.</exception>
    /// <remarks>A = L / r. Source, from memory: Somerville and others 2014, FAO Fisheries and Aquaculture Technical Paper 589, appendix 4,
    /// which takes 0.57 and calls it careful within 0.2 to 2. Error: the span of the rate, tenfold. Not for: a young filter; media finer
    /// than about 1000 m²/m³, whose surface does far less (Harwanto, Oh and Jo 2011).</remarks>
    public static double Fao(double ammonia, double rate = 0.57) => Range.Within(ammonia, 0, 1e6) / Range.Within(rate, 0.02, 4);

    /// <summary>Surface for a load of ammonia, at a removal rate for each square metre; both counted as nitrogen.</summary>
    /// <param name="nitrogen">Total ammonia nitrogen to be nitrified, g N/d, from 0 to 1 000 000.</param>
    /// <param name="rate">Removal rate, g N/m²/d, from 0.02 to 4.</param>
    /// <returns>Surface, m².</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range, or not a number.</exception>
    /// <remarks>A = L / r. Source: Miller, Biofilter decisions, Florida A and M University extension; rates 0.2 to 1 at 15 to 20 °C and 1 to
    /// 2 above 25 °C in trickling filters. Error: the span of the rate. Not for: a young filter; media finer than about 1000 m²/m³.
    /// </remarks>
    public static double FromNitrogen(double nitrogen, double rate = 0.47) =>
        Range.Within(nitrogen, 0, 1e6) / Range.Within(rate, 0.02, 4);
}
