namespace Runnel.Engine.Fish;

/// <summary>Daily feed as a share of the fish's body weight.</summary>
public static class FeedRation
{
    /// <summary>Feed for a mass of fish.</summary>
    /// <param name="mass">Live mass of all fish, kg, from 0 to 100 000.</param>
    /// <param name="ration">Feed as a share of body weight, %/d, from 0 to 25.</param>
    /// <returns>Feed, g/d.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range, or not a number.</exception>
    /// <remarks>F = M r. Source: FAO Technical Paper 589 (2014), section 8.1, from memory: 1 to 2 %/d in grow-out. Error: none in the
    /// product; feeding tables for one fish differ by a factor of two. Not for: fish outside their feeding temperature, which are not fed.
    /// </remarks>
    public static double FeedFromFish(double mass, double ration) => Range.Within(mass, 0, 1e5) * 1000 * Range.Within(ration, 0, 25) / 100;

    /// <summary>Mass of fish that eats an amount of feed.</summary>
    /// <param name="feed">Feed, g/d, from 0 to 1 000 000.</param>
    /// <param name="ration">Feed as a share of body weight, %/d, from 0.1 to 25.</param>
    /// <returns>Live mass of all fish, kg.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range, or not a number.</exception>
    /// <remarks>M = F / r, the inverse of <see cref="FeedFromFish"/>.</remarks>
    public static double FishFromFeed(double feed, double ration) =>
        Range.Within(feed, 0, 1e6) / 1000 / (Range.Within(ration, 0.1, 25) / 100);
}
