using Runnel.Engine.Plan;
using Runnel.Engine.Sun;

namespace Runnel.Files.Weather;

/// <summary>Whether a file's sun can be that of the place it names: finds wrong signs, wrong units and clocks that are off.</summary>
internal static class EpwSense
{
    // Above the air nothing is lost; the slack is for the simple declination around the polar night.
    private const double Slack = 0.3;
    private const double MostHoursOff = 1.5;
    private const double MegajoulePerWattHour = 0.0036;

    public static void Check(EpwFile file, EpwErrors errors, int firstLine)
    {
        TooMuchSun(file, errors, firstLine);
        NoonElsewhere(file, errors, firstLine);
    }

    private static void TooMuchSun(EpwFile file, EpwErrors errors, int firstLine)
    {
        var means = file.MonthlyMeans(file.Hours.Global);
        var day = 1;
        for (var m = 0; m < means.Count; m++)
        {
            var days = EpwCalendar.Days(m + 1, leap: false);
            var above = 0.0;
            for (var d = 0; d < days; d++)
            {
                above += ExtraterrestrialRadiation.Fao56(file.Latitude, day + d) / days;
            }
            var sun = means[m] * 24 * MegajoulePerWattHour;
            if (sun > above + Slack)
            {
                errors.Add("sun", firstLine + EpwCalendar.Index(m + 1, 1, 1, file.HasLeapDay), 1, EpwColumn.Global.Name, "",
                    $"{CalendarDay.MonthNames[m]} has {sun:F1} MJ/m²/d of sun, but only {above:F1} reach latitude {file.Latitude} above the air",
                    "check the sign of the latitude in the line LOCATION, and that radiation is in Wh/m²");
            }
            day += days;
        }
    }

    private static void NoonElsewhere(EpwFile file, EpwErrors errors, int firstLine)
    {
        // Mean direction of the clock's hand while the sun shines: a day that runs over midnight counts right.
        double cos = 0, sin = 0;
        for (var h = 0; h < file.Hours.Count; h++)
        {
            var angle = (h % 24 + 0.5) * Math.PI / 12;
            cos += file.Hours.Global[h] * Math.Cos(angle);
            sin += file.Hours.Global[h] * Math.Sin(angle);
        }
        if (cos == 0 && sin == 0)
        {
            return;
        }
        var noon = 12 + file.TimeZone - file.Longitude / 15;
        var off = Math.IEEERemainder(Math.Atan2(sin, cos) * 12 / Math.PI - noon, 24);
        if (Math.Abs(off) > MostHoursOff)
        {
            errors.Add("noon", 1, 1, "LOCATION", "",
                $"the sun of the hours stands highest {Math.Abs(off):F1} h {(off > 0 ? "after" : "before")} the noon of longitude {file.Longitude} in time zone {file.TimeZone}",
                $"check the signs of longitude and time zone (east is positive), and that the hours from line {firstLine} are standard time");
        }
    }
}
