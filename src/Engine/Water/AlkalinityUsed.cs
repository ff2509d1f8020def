namespace Runnel.Engine.Water;

/// <summary>Alkalinity that nitrification uses up.</summary>
public static class AlkalinityUsed
{
    /// <summary>Alkalinity used while bacteria turn ammonia into nitrate and grow on it.</summary>
    /// <param name="nitrified">Total ammonia nitrogen nitrified, g N/d, from 0 to 1 000 000.</param>
    /// <returns>Alkalinity, g CaCO3/d.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Below 0, above 1 000 000, or not a number.</exception>
    /// <remarks>Alk = 7.05 N. Source, from memory: Ebeling, Timmons and Bisogni 2006, Aquaculture 257, 346-358. Without growth of the
    /// bacteria it is 7.14 (two mol of HCO3 for each mol of N). Error: 1.3 % between those two; attached growth was measured from
    /// 6.3 to 7.4 (USEPA 1975). Not for: the whole balance of a loop, where plants that take up nitrate and denitrification give some back.
    /// </remarks>
    public static double Ebeling(double nitrified) => Range.Within(nitrified, 0, 1e6) * 7.05;
}
