namespace Runnel.Engine.Water;

/// <summary>Ammonia that fish give off from the protein in their feed.</summary>
public static class AmmoniaFromFeed
{
    /// <summary>Total ammonia nitrogen from feed.</summary>
    /// <param name="feed">Feed, g/d, from 0 to 1 000 000.</param>
    /// <param name="protein">Crude protein in the feed, %, from 5 to 70.</param>
    /// <returns>Total ammonia nitrogen, g N/d.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range, or not a number.</exception>
    /// <remarks>P_TAN = F PC 0.092; 0.092 = 0.16 (nitrogen in protein) x 0.80 (assimilated) x 0.80 (excreted) x 0.90 (as ammonia, the rest
    /// urea). Source: Timmons and Ebeling 2013, Recirculating Aquaculture, as restated by Hager, Bright, Dusci and Tidwell 2021,
    /// Aquaponics Production Manual, Kentucky State University. Error: not stated; measured excretion at one feed differs by a factor of
    /// two with species, size, ration and hour. Not for: feed that is not eaten (all of its nitrogen ends in the water).</remarks>
    public static double TimmonsEbeling(double feed, double protein) =>
        Range.Within(feed, 0, 1e6) * Range.Within(protein, 5, 70) / 100 * 0.092;

    /// <summary>Ammonia from feed, by the chain of FAO Technical Paper 589.</summary>
    /// <param name="feed">Feed, g/d, from 0 to 1 000 000.</param>
    /// <param name="protein">Crude protein in the feed, %, from 5 to 70.</param>
    /// <returns>Ammonia counted as NH3 (not as nitrogen), g NH3/d.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range, or not a number.</exception>
    /// <remarks>A = F PC 0.16 x 0.61 x 1.2; 0.61 is the share of feed nitrogen that dissolves, 1.2 the NH3 in each g of nitrogen. Source,
    /// from memory: Somerville and others 2014, FAO Fisheries and Aquaculture Technical Paper 589, appendix 4. Error: not stated.
    /// Not for: comparing with a result as nitrogen before it is converted.</remarks>
    public static double Fao(double feed, double protein) =>
        Range.Within(feed, 0, 1e6) * Range.Within(protein, 5, 70) / 100 * 0.16 * 0.61 * 1.2;
}
