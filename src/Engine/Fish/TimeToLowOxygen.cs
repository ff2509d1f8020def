namespace Runnel.Engine.Fish;

/// <summary>How long fish have when pump and air stop.</summary>
public static class TimeToLowOxygen
{
    /// <summary>Time until fish have used the oxygen above a critical value, if none comes in.</summary>
    /// <param name="water">Water that the fish can reach, L, from 1 to 10 000 000.</param>
    /// <param name="fish">Live mass of all fish, kg, from 0.001 to 100 000.</param>
    /// <param name="respiration">Oxygen used by the fish, mg/kg/h, from 20 to 2000.</param>
    /// <param name="start">Dissolved oxygen when the air stops, mg/L, from 0 to 25.</param>
    /// <param name="critical">Dissolved oxygen at which fish come to harm, mg/L, from 0 to 15.</param>
    /// <returns>Time, h; 0 where the start is already at or under the critical value.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range, or not a number.</exception>
    /// <remarks>t = (C0 - Cc) V / (M R), a balance of oxygen. Error: the rate R, which differs by a factor of two to three with species,
    /// size, temperature and meal. Bacteria and solids shorten the time by a fifth to a third; the open surface lengthens it where stocking
    /// is light. Not for: deciding to leave fish without air.</remarks>
    public static double OxygenBalance(double water, double fish, double respiration, double start, double critical)
    {
        var store = (Range.Within(start, 0, 25) - Range.Within(critical, 0, 15)) * Range.Within(water, 1, 1e7);
        var use = Range.Within(fish, 0.001, 1e5) * Range.Within(respiration, 20, 2000);
        return Math.Max(0, store / use);
    }
}
