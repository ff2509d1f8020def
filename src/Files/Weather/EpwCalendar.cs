using Runnel.Engine.Quantities;

namespace Runnel.Files.Weather;

/// <summary>The hours of a year of 365 or 366 days, by month, day and hour.</summary>
internal static class EpwCalendar
{
    public const int Hours = 8760;
    public const int LeapHours = 8784;

    /// <summary>Place of the first hour of 29 February.</summary>
    public const int LeapDayStart = (31 + 28) * 24;

    /// <summary>Days in a month from 1 to 12.</summary>
    public static int Days(int month, bool leap) => YearCalendar.Length[month - 1] + (leap && month == 2 ? 1 : 0);

    /// <summary>Place of an hour from 1 to 24.</summary>
    public static int Index(int month, int day, int hour, bool leap)
    {
        var days = day - 1;
        for (var m = 1; m < month; m++)
        {
            days += Days(m, leap);
        }
        return days * 24 + hour - 1;
    }

    /// <summary>"29 February, hour 3", for errors.</summary>
    public static string Say(int index, bool leap)
    {
        var day = index / 24;
        for (var month = 1; month <= 12; month++)
        {
            if (day < Days(month, leap))
            {
                return $"{day + 1} {Engine.Plan.CalendarDay.MonthNames[month - 1]}, hour {index % 24 + 1}";
            }
            day -= Days(month, leap);
        }
        return "the end of the year";
    }
}
