namespace Runnel.Engine.Water;

/// <summary>Oxygen that a loop uses up on account of the feed put in.</summary>
public static class OxygenFromFeed
{
    /// <summary>Oxygen used by fish, nitrifying bacteria and the bacteria on solids, in proportion to feed.</summary>
    /// <param name="feed">Feed, g/d, from 0 to 1 000 000.</param>
    /// <param name="ratio">Oxygen for each mass of feed, kg/kg, from 0.2 to 1: 0.25 for fish alone, 0.5 for a loop whose solids leave
    /// fast, to 1 where they stay.</param>
    /// <returns>Oxygen, g/d, as a mean over the day.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range, or not a number.</exception>
    /// <remarks>O2 = F a. Source, from memory: Timmons and Ebeling 2013, Recirculating Aquaculture, chapters 4 and 6. Error: the span of
    /// the ratio. Not for: the hours after a meal, when use is 1.3 to 1.5 times the mean (same source, from memory).</remarks>
    public static double Ratio(double feed, double ratio = 0.5) => Range.Within(feed, 0, 1e6) * Range.Within(ratio, 0.2, 1);
}
