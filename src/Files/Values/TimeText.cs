using System.Globalization;
using Runnel.Engine.Plan;

namespace Runnel.Files.Values;

/// <summary>Reads clock times, dates, days of the year and yes or no.</summary>
internal static class TimeText
{
    private static readonly int[] DaysOfMonth = [31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

    public static bool TryClock(string text, out TimeOnly time, out Trouble? trouble)
    {
        trouble = null;
        var plain = text.Trim().ToLowerInvariant();
        if (plain is "24:00" or "24" or "midnight")
        {
            time = default;
            return true;
        }
        if (plain == "noon")
        {
            time = new(12, 0);
            return true;
        }
        if (TimeOnly.TryParseExact(plain, ["H:mm", "HH:mm", "%H", "HH", "h:mm tt", "h tt", "h:mmtt", "htt"], CultureInfo.InvariantCulture, DateTimeStyles.None, out time))
        {
            return true;
        }
        trouble = new("a clock time was expected", "write it like 06:00 or 22:30");
        return false;
    }

    public static bool TryHours(string text, out HourSpan span, out Trouble? trouble)
    {
        span = default;
        var ends = text.Split([" to ", "–", "-"], StringSplitOptions.TrimEntries);
        if (ends.Length == 2 && TryClock(ends[0], out var from, out _) && TryClock(ends[1], out var to, out _))
        {
            span = new(from, to);
            trouble = from == to ? new("those hours begin where they end", "leave hours out for the whole day") : null;
            return trouble is null;
        }
        trouble = new("two clock times were expected", "write it like 22:00 to 06:00");
        return false;
    }

    public static bool TryDate(string text, out DateOnly date, out Trouble? trouble)
    {
        trouble = null;
        if (DateOnly.TryParseExact(text.Trim(), "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out date) ||
            DateOnly.TryParseExact(text.Trim(), ["d MMMM yyyy", "MMMM d yyyy", "MMMM d, yyyy", "d MMM yyyy"], CultureInfo.InvariantCulture, DateTimeStyles.None, out date))
        {
            return true;
        }
        trouble = new("a date was expected", "write year, month and day like 2026-10-02");
        return false;
    }

    public static bool TryDay(string text, out CalendarDay day, out Trouble? trouble)
    {
        var words = text.Trim().Replace(",", " ", StringComparison.Ordinal).Split([' ', '-'], StringSplitOptions.RemoveEmptyEntries);
        if (words.Length == 2)
        {
            var (first, second) = (Number(words[0]), Number(words[1]));
            var (month, number) = (first, second) switch
            {
                (0, > 0) => (Month(words[0]), second),
                ( > 0, 0) => (Month(words[1]), first),
                // Two numbers are month-day, as at the end of 2026-03-01.
                ( > 0, > 0) when text.Contains('-', StringComparison.Ordinal) => (first, second),
                _ => (0, 0),
            };
            if (month is >= 1 and <= 12 && number >= 1 && number <= DaysOfMonth[month - 1])
            {
                (day, trouble) = (new(month, number), null);
                return true;
            }
        }
        day = default;
        trouble = new("a day of the year was expected", "write it like 1 March or 03-01");
        return false;
    }

    public static bool TryYesNo(string text, out bool yes, out Trouble? trouble)
    {
        yes = text.Trim().ToLowerInvariant() is "yes" or "true" or "on" or "y";
        trouble = yes || text.Trim().ToLowerInvariant() is "no" or "false" or "off" or "n" or "none" ? null : new("yes or no was expected", "write yes or no");
        return trouble is null;
    }

    private static int Number(string word)
    {
        var plain = word.TrimEnd('.');
        foreach (var ending in (ReadOnlySpan<string>)["st", "nd", "rd", "th"])
        {
            plain = plain.EndsWith(ending, StringComparison.OrdinalIgnoreCase) && plain.Length > 2 ? plain[..^2] : plain;
        }
        return int.TryParse(plain, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : 0;
    }

    private static int Month(string word)
    {
        var names = CalendarDay.MonthNames;
        for (var i = 0; i < names.Count; i++)
        {
            if (names[i].Equals(word, StringComparison.OrdinalIgnoreCase) || word.TrimEnd('.').Length == 3 && names[i].StartsWith(word.TrimEnd('.'), StringComparison.OrdinalIgnoreCase))
            {
                return i + 1;
            }
        }
        return 0;
    }
}
