using Runnel.Engine.Quantities;

namespace Runnel.Engine.Light;

/// <summary>Mean daily light on a bed in one month.</summary>
/// <param name="Lamps">From lamps, mol/m²/d.</param>
/// <param name="Sun">From the sun, mol/m²/d.</param>
public readonly record struct MonthLight(double Lamps, double Sun)
{
    /// <summary>Both, mol/m²/d.</summary>
    public double Total => Lamps + Sun;
}

/// <summary>Daily light on a bed, month by month: lamps as they age, and the sun.</summary>
public static class LightByMonth
{
    /// <summary>Twelve months from January.</summary>
    /// <param name="density">Photon flux density of the lamps when new, µmol/m²/s, from 0 to 100 000.</param>
    /// <param name="hours">Hours lit in each day, h/d, from 0 to 24: twelve values, or one for all months.</param>
    /// <param name="ageing">How the lamps' light falls off.</param>
    /// <param name="litBefore">Hours that they were lit before January, h, from 0 to 900 000.</param>
    /// <param name="outdoors">Daily light outdoors, mol/m²/d, from 0 to 120: twelve values, or none where no daylight comes.</param>
    /// <param name="passing">Share of it that reaches the bed, %, from 0 to 100: glazing less shade, or a window's share.</param>
    /// <exception cref="ArgumentException">Outside those ranges, or not so many values.</exception>
    /// <remarks>DLI = 0.0036 PPFD t m + DLI_out s; m is the month's mean share of the lamps' first light. Source: definitions. Not for: a
    /// share that differs much by season, as behind a window toward the sun.</remarks>
    public static IReadOnlyList<MonthLight> Of(
        double density, IReadOnlyList<double> hours, Ageing ageing, double litBefore, IReadOnlyList<double> outdoors, double passing)
    {
        ArgumentNullException.ThrowIfNull(hours);
        ArgumentNullException.ThrowIfNull(outdoors);
        if (hours.Count is not (1 or 12) || outdoors.Count is not (0 or 12))
        {
            throw new ArgumentException("hours need one or twelve values, outdoor light none or twelve", nameof(hours));
        }
        Range.Within(litBefore, 0, 0.9 * Ageing.MaxHours);
        Range.Within(passing, 0, 100);
        var lit = litBefore;
        var months = new MonthLight[12];
        for (var m = 0; m < 12; m++)
        {
            var daily = DailyLight.Integral(density, hours[hours.Count == 1 ? 0 : m]);
            var until = lit + YearCalendar.Length[m] * hours[hours.Count == 1 ? 0 : m];
            var sun = outdoors.Count == 0 ? 0 : Range.Within(outdoors[m], 0, DailyLight.MaxDaily) * passing / 100;
            months[m] = new(daily * ageing.Mean(lit, until), sun);
            lit = until;
        }
        return months;
    }
}
