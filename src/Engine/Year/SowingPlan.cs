namespace Runnel.Engine.Year;

/// <summary>Even harvests: how often to sow, and how much at a time, for a wished weekly harvest.</summary>
public static class SowingPlan
{
    /// <summary>Stands that follow one another and give the same each week.</summary>
    /// <param name="weekly">Wished harvest, kg fresh each week, above 0.</param>
    /// <param name="yield">Harvest of a full bed, kg/m², above 0.</param>
    /// <param name="daysInBed">Days from planting to harvest, above 0.</param>
    /// <param name="every">Days between sowings, above 0.</param>
    /// <returns>How many stands, the area of each and of all, m².</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range, or not a number.</exception>
    /// <remarks>n = ⌈d/e⌉ stands, each of area a = w (e/7) / y: every e days one is picked and sown again. By definition of a steady rotation.</remarks>
    public static Rotation ForWeekly(double weekly, double yield, double daysInBed, double every = 7)
    {
        Range.Within(weekly, 1e-6, 1e6);
        Range.Within(yield, 1e-3, 1e3);
        Range.Within(daysInBed, 1, 730);
        Range.Within(every, 0.5, 365);
        var stands = (int)Math.Ceiling(daysInBed / every - 1e-9);
        var area = weekly * every / 7 / yield;
        return new(stands, area, stands * area);
    }
}

/// <summary>A rotation of stands.</summary>
/// <param name="Stands">How many stand at a time.</param>
/// <param name="AreaOfEach">m².</param>
/// <param name="AreaOfAll">m².</param>
public readonly record struct Rotation(int Stands, double AreaOfEach, double AreaOfAll);
