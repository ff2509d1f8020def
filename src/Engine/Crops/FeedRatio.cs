namespace Runnel.Engine.Crops;

/// <summary>Feed ratio: fish feed each day for each square metre of planted bed.</summary>
public static class FeedRatio
{
    /// <summary>Feed that a planted area can use.</summary>
    /// <param name="area">Planted area, m², from 0 to 100 000.</param>
    /// <param name="ratio">Feed ratio, g/m²/d, from 1 to 200.</param>
    /// <returns>Feed, g/d.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range, or not a number.</exception>
    /// <remarks>F = A q. Sources: Rakocy 2007, Ten guidelines for aquaponic systems, Aquaponics Journal 46 (60 to 100 on rafts, a quarter of
    /// that in film channels); FAO Technical Paper 589 (2014), section 8.1 (40 to 50 leafy, 50 to 80 fruiting, feed of 32 % protein). Error:
    /// published ratios span sixfold. Not for: a nitrogen balance: at 50 g/m²/d more nitrogen comes in than lettuce takes up.</remarks>
    public static double FeedFromArea(double area, double ratio = 50) => Range.Within(area, 0, 1e5) * Range.Within(ratio, 1, 200);

    /// <summary>Planted area that an amount of feed can supply.</summary>
    /// <param name="feed">Feed, g/d, from 0 to 1 000 000.</param>
    /// <param name="ratio">Feed ratio, g/m²/d, from 1 to 200.</param>
    /// <returns>Planted area, m².</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range, or not a number.</exception>
    /// <remarks>A = F / q, the inverse of <see cref="FeedFromArea"/>.</remarks>
    public static double AreaFromFeed(double feed, double ratio = 50) => Range.Within(feed, 0, 1e6) / Range.Within(ratio, 1, 200);
}
