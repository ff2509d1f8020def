namespace Runnel.Engine.Year;

/// <summary>The hours of a run that a grower should fear, and runs that follow from them.</summary>
public static class WorstHours
{
    /// <summary>Alkalinity under which it counts as gone, mg/L as CaCO3: pH gives way and nitrification slows.</summary>
    public const double AlkalinityGone = 20;

    /// <summary>Hour of the run with the least of a curve; −1 for an empty run.</summary>
    public static int Least(double[] curve, int hours, Func<int, bool>? counts = null)
    {
        ArgumentNullException.ThrowIfNull(curve);
        var at = -1;
        for (var i = 0; i < Math.Min(hours, curve.Length); i++)
        {
            if ((counts is null || counts(i)) && (at < 0 || curve[i] < curve[at]))
            {
                at = i;
            }
        }
        return at;
    }

    /// <summary>Hour of the run with the most of a curve; −1 for an empty run.</summary>
    public static int Most(double[] curve, int hours)
    {
        ArgumentNullException.ThrowIfNull(curve);
        var at = -1;
        for (var i = 0; i < Math.Min(hours, curve.Length); i++)
        {
            if (at < 0 || curve[i] > curve[at])
            {
                at = i;
            }
        }
        return at;
    }

    /// <summary>The hour at which a power cut leaves the fish the least time: oxygen in store above the critical value over its use.</summary>
    /// <returns>Hour of the run, or −1 when no fish were in.</returns>
    public static int ForPowerCut(YearInput input, YearResult year)
    {
        ArgumentNullException.ThrowIfNull(input);
        ArgumentNullException.ThrowIfNull(year);
        if (input.Fish.Count == 0)
        {
            return -1;
        }
        var critical = input.Fish.Max(f => f.CriticalOxygen);
        var s = year.Series;
        var (at, least) = (-1, double.PositiveInfinity);
        for (var i = 0; i < year.HoursRun; i++)
        {
            if (s.FishMass[i] > 0 && s.OxygenDemand[i] > 0)
            {
                var time = (s.Oxygen[i] - critical) / s.OxygenDemand[i];
                (at, least) = time < least ? (i, time) : (at, least);
            }
        }
        return at;
    }

    /// <summary>Cuts the power after the worst hour.</summary>
    /// <param name="input">The loop.</param>
    /// <param name="year">Its run without a cut.</param>
    /// <param name="lasts">How long the power stays away, h.</param>
    /// <returns>When, and how long until oxygen is critical; null when there are no fish.</returns>
    public static PowerCutResult? CutPower(YearInput input, YearResult year, int lasts = 48)
    {
        var worst = ForPowerCut(input, year);
        if (worst < 0 || worst + 1 >= input.Hours)
        {
            return null;
        }
        var run = YearRun.Of(input with { Cut = new(worst + 1, lasts), Hours = Math.Min(input.Hours, worst + 1 + lasts) });
        return new(worst + 1, run.HoursFromCutToCritical, lasts);
    }

    /// <summary>Days until the alkalinity is gone when no base is dosed, or null when it lasts the year.</summary>
    public static double? DaysOfAlkalinity(YearInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        var run = YearRun.Of(input with { Care = input.Care with { Base = null }, Cut = null });
        for (var i = 0; i < run.HoursRun; i++)
        {
            if (run.Series.Alkalinity[i] < AlkalinityGone)
            {
                return (i + 1) / 24.0;
            }
        }
        return null;
    }
}

/// <summary>What a power cut does.</summary>
/// <param name="Hour">Hour of the run at which it begins.</param>
/// <param name="HoursToCritical">Hours until oxygen is critical, to the minute; null when it stays above for as long as it lasts.</param>
/// <param name="Lasts">How long the power stays away, h.</param>
public sealed record PowerCutResult(int Hour, double? HoursToCritical, int Lasts);
