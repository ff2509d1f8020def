using Runnel.Engine.Quantities;

namespace Runnel.Engine.Year;

/// <summary>The month of each hour of a year of 365 days.</summary>
public static class Months
{
    private static readonly byte[] OfHour = Make();

    /// <summary>Month of an hour of the calendar year, 0 for January.</summary>
    public static int Of(int hourOfYear) => OfHour[hourOfYear];

    private static byte[] Make()
    {
        var months = new byte[YearInput.HoursOfYear];
        var at = 0;
        for (var m = 0; m < YearCalendar.Months; m++)
        {
            Array.Fill(months, (byte)m, at, YearCalendar.Length[m] * 24);
            at += YearCalendar.Length[m] * 24;
        }
        return months;
    }
}
