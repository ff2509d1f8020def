namespace Runnel.Engine.Year;

/// <summary>A new loop before the first fish: ammonia is dosed until the bacteria keep up.</summary>
public static class StartUp
{
    /// <summary>Cells of each kind that a new loop starts with, g for each m³ of water: about a thousand in a millilitre. A guess; a
    /// hundredfold more or less moves the ready day by about a week each way at 25 °C.</summary>
    public const double Seed = 1e-4;

    /// <summary>Ammonia nitrogen dosed up to, mg N/L. Common practice: 2 to 4.</summary>
    public const double Dose = 3;

    /// <summary>Ammonia and nitrite nitrogen under which a loop counts as ready a day after a dose, mg N/L. Common practice.</summary>
    public const double Clear = 0.5;

    /// <summary>Runs a new loop without fish or crops.</summary>
    /// <param name="input">The loop; its fish and crops are left out.</param>
    /// <param name="days">Most days to wait.</param>
    public static StartUpResult Run(YearInput input, int days = 240)
    {
        ArgumentNullException.ThrowIfNull(input);
        var body = input.Loop;
        var volume = body.TankWater + body.BedWater;
        var full = Math.Max(1e-12, body.FilterArea * YearConstants.FilmRate * YearConstants.YieldFirst / Filter.NitrifierGrowth.AmmoniaOxidisersAt20);
        var start = input with
        {
            Fish = [],
            Stands = [],
            Hours = Math.Clamp(days * 24, 24, YearInput.HoursOfYear),
            Cut = null,
            Care = input.Care with { AmmoniaTo = Dose, AlkalinityLow = 80, AlkalinityAim = 100 },
            Loop = body with { BacteriaAtStart = Math.Min(1, Seed * volume / full), NitrateAtStart = 0 },
        };
        var result = YearRun.Of(start);
        var s = result.Series;
        var (clears, ready, given) = (-1, -1, 0.0);
        foreach (var e in result.Events)
        {
            if (e.Kind != YearEventKind.AmmoniaDosed)
            {
                continue;
            }
            if (clears < 0 && e.Hour > 0 && s.Ammonia[e.Hour - 1] < Clear)
            {
                clears = e.Hour;
            }
            // Dosed to the full each day, and both clear by the next visit: the hour before this dose.
            if (e.Hour > 0 && e.Amount >= (Dose - Clear) * volume && s.Nitrite[e.Hour - 1] < Clear && s.Ammonia[e.Hour - 1] < Clear)
            {
                (ready, given) = (e.Hour, e.Amount);
                break;
            }
        }
        var until = ready < 0 ? result.HoursRun : ready;
        return new(result, PeakOf(s.Ammonia, until), PeakOf(s.Nitrite, until), clears < 0 ? null : clears / 24.0, ready < 0 ? null : ready / 24.0, given);
    }

    private static Peak PeakOf(double[] curve, int until)
    {
        var at = 0;
        for (var i = 1; i < until; i++)
        {
            at = curve[i] > curve[at] ? i : at;
        }
        return new(at / 24.0, until > 0 ? curve[at] : 0);
    }
}

/// <summary>The top of a curve.</summary>
/// <param name="Day">Days after the start.</param>
/// <param name="Value">mg N/L.</param>
public readonly record struct Peak(double Day, double Value);

/// <summary>How a new loop ripens.</summary>
/// <param name="Run">The run, with its doses as events.</param>
/// <param name="Ammonia">Highest ammonia before it was ready.</param>
/// <param name="Nitrite">Highest nitrite before it was ready.</param>
/// <param name="AmmoniaFallsDay">Days until ammonia first falls under the clear mark between doses, or null.</param>
/// <param name="ReadyDay">Days until a full dose is clear within a day, or null when it never was.</param>
/// <param name="Nitrifies">Ammonia nitrogen that it then takes up each day, g N/d: as much as the first fish may give off.</param>
public sealed record StartUpResult(YearResult Run, Peak Ammonia, Peak Nitrite, double? AmmoniaFallsDay, double? ReadyDay, double Nitrifies);
