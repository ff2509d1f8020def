namespace Runnel.Engine.Water;

/// <summary>Solids that fish leave in the water.</summary>
public static class SolidsFromFeed
{
    /// <summary>Suspended solids in proportion to feed.</summary>
    /// <param name="feed">Feed, g/d, from 0 to 1 000 000.</param>
    /// <param name="ratio">Dry solids for each mass of feed, kg/kg, from 0.2 to 0.4.</param>
    /// <returns>Solids counted dry, g/d: the wet sludge is 50 to 100 times as heavy.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range, or not a number.</exception>
    /// <remarks>S = F a. Source, from memory: Timmons and Ebeling 2013, Recirculating Aquaculture, chapter 4. Error: the span of the
    /// ratio. Not for: uneaten feed, which is solids in full.</remarks>
    public static double Ratio(double feed, double ratio = 0.25) => Range.Within(feed, 0, 1e6) * Range.Within(ratio, 0.2, 0.4);
}
