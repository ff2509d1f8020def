using Runnel.Engine.Plan;
using Runnel.Engine.Quantities;

namespace Runnel.Engine.Money;

/// <summary>
/// The hours of one year sorted by month, time of day and rate of a tariff: built once, after which any number of bills are a few
/// multiplications.
/// </summary>
/// <remarks>
/// <para>The first rate in the list that fits a moment is taken. Season and kind of day are those of the moment's own date: of
/// "weekends 22:00 to 06:00", the night from Friday to Saturday is at that rate from midnight on. Monday to Friday are weekdays;
/// public holidays are not known.</para>
/// <para>The year has 365 days. In a leap year 29 February is left out and every other date keeps its weekday. Clocks are never
/// changed: a tariff is taken to follow the clock that the appliances follow.</para>
/// <para>Months are counted from 0, January.</para>
/// </remarks>
public sealed class HourCalendar
{
    private const int MonthsInYear = 12;

    private readonly double[] _hours;
    private readonly double[] _rateHours;
    private readonly double[] _limitShare;

    private HourCalendar(DaySlot[] slots, double[] hours, double[] limitShare, int rates, IReadOnlyList<PriceGap> gaps)
    {
        Slots = slots;
        RateCount = rates;
        Gaps = gaps;
        _hours = hours;
        _limitShare = limitShare;
        _rateHours = new double[MonthsInYear * (rates + 1)];
        for (var i = 0; i < hours.Length; i++)
        {
            var month = i / ((rates + 1) * slots.Length);
            _rateHours[month * (rates + 1) + i % (rates + 1)] += hours[i];
        }
    }

    /// <summary>How many rates the tariff has.</summary>
    public int RateCount { get; }

    /// <summary>
    /// The clock hours, each cut further where a rate begins or ends inside it, so that no slot straddles two rates.
    /// </summary>
    public IReadOnlyList<DaySlot> Slots { get; }

    /// <summary>Stretches that no rate fits, January first; empty when every hour has a price.</summary>
    public IReadOnlyList<PriceGap> Gaps { get; }

    /// <summary>The index that stands for "no rate fits": one past the last rate.</summary>
    public int Unpriced => RateCount;

    /// <summary>Sorts a year's hours.</summary>
    /// <param name="rates">The rates of a tariff, in its order; none when there is no tariff: then no hour has a price.</param>
    /// <param name="year">Calendar year, for its weekdays, 1 to 9999.</param>
    /// <remarks>
    /// A season without a first day begins on 1 January, one without a last day ends on 31 December; one whose last day comes before
    /// its first runs over the new year. A span of hours that ends when it begins is the whole day.
    /// </remarks>
    public static HourCalendar Of(IReadOnlyList<Rate> rates, int year)
    {
        ArgumentNullException.ThrowIfNull(rates);
        ArgumentOutOfRangeException.ThrowIfLessThan(year, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(year, 9999);

        var slots = CutDay(rates);
        var columns = rates.Count + 1;
        var hours = new double[MonthsInYear * slots.Length * columns];
        var seasonDays = new int[MonthsInYear * columns];
        var gaps = new GapFinder(slots);
        var weekday = new int[slots.Length];
        var weekend = new int[slots.Length];
        for (var month = 0; month < MonthsInYear; month++)
        {
            for (var day = 1; day <= YearCalendar.Length[month]; day++)
            {
                Fill(weekday, rates, slots, month + 1, day, isWeekend: false);
                Fill(weekend, rates, slots, month + 1, day, isWeekend: true);
                var isWeekend = new DateOnly(year, month + 1, day).DayOfWeek is DayOfWeek.Saturday or DayOfWeek.Sunday;
                var today = isWeekend ? weekend : weekday;
                for (var slot = 0; slot < slots.Length; slot++)
                {
                    hours[(month * slots.Length + slot) * columns + today[slot]] += slots[slot].Hours;
                }
                for (var rate = 0; rate < rates.Count; rate++)
                {
                    if (weekday.AsSpan().Contains(rate) || weekend.AsSpan().Contains(rate))
                    {
                        seasonDays[month * columns + rate]++;
                    }
                }
                gaps.Note(month, isWeekend, today, rates.Count);
            }
        }
        var limitShare = new double[MonthsInYear * columns];
        for (var i = 0; i < limitShare.Length; i++)
        {
            limitShare[i] = (double)seasonDays[i] / YearCalendar.Length[i / columns];
        }
        return new(slots, hours, limitShare, rates.Count, gaps.Found());
    }

    /// <summary>Hours of a month that lie in a slot of the day and are at a rate.</summary>
    /// <param name="month">0 for January.</param>
    /// <param name="slot">Index in <see cref="Slots"/>.</param>
    /// <param name="rate">Index of the rate in the tariff, or <see cref="Unpriced"/>.</param>
    public double Hours(int month, int slot, int rate) => _hours[(month * Slots.Count + slot) * (RateCount + 1) + rate];

    /// <summary>Hours of a month at a rate.</summary>
    public double Hours(int month, int rate) => _rateHours[month * (RateCount + 1) + rate];

    /// <summary>Hours of a month that lie in a clock hour and are at a rate: 15.5 for half an hour on each of 31 days.</summary>
    public double HoursInClockHour(int month, int clockHour, int rate)
    {
        var sum = 0.0;
        for (var slot = 0; slot < Slots.Count; slot++)
        {
            if ((int)Slots[slot].FromHour == clockHour)
            {
                sum += Hours(month, slot, rate);
            }
        }
        return sum;
    }

    /// <summary>Hours of the year at a rate: 0 tells that rates before it in the list leave it nothing.</summary>
    public double HoursOfYear(int rate)
    {
        var sum = 0.0;
        for (var month = 0; month < MonthsInYear; month++)
        {
            sum += Hours(month, rate);
        }
        return sum;
    }

    /// <summary>
    /// The share of a month's days on which a rate is in season: by it a monthly block is cut when a season begins or ends inside
    /// the month.
    /// </summary>
    /// <remarks>
    /// A day counts if some moment of it would be at this rate were the day a weekday or were it a weekend. So a night rate or a
    /// weekend rate keeps its whole monthly block, and a general rate at the end of the list gives up the days that a seasonal one
    /// before it takes.
    /// </remarks>
    public double LimitShare(int month, int rate) => _limitShare[month * (RateCount + 1) + rate];

    internal ReadOnlySpan<double> HoursByRate(int month, int slot) =>
        _hours.AsSpan((month * Slots.Count + slot) * (RateCount + 1), RateCount + 1);

    private static DaySlot[] CutDay(IReadOnlyList<Rate> rates)
    {
        var cuts = new SortedSet<long>();
        for (var hour = 0; hour <= 24; hour++)
        {
            cuts.Add(hour * TimeSpan.TicksPerHour);
        }
        foreach (var rate in rates)
        {
            if (rate.Hours is { } span)
            {
                cuts.Add(span.From.Ticks);
                cuts.Add(span.To.Ticks);
            }
        }
        long[] at = [.. cuts];
        var slots = new DaySlot[at.Length - 1];
        for (var i = 0; i < slots.Length; i++)
        {
            slots[i] = new(new TimeOnly(at[i]), (at[i + 1] - at[i]) / (double)TimeSpan.TicksPerHour);
        }
        return slots;
    }

    private static void Fill(int[] rateOfSlot, IReadOnlyList<Rate> rates, DaySlot[] slots, int month, int day, bool isWeekend)
    {
        Array.Fill(rateOfSlot, rates.Count);
        for (var rate = rates.Count - 1; rate >= 0; rate--)
        {
            if (!InSeason(rates[rate], month, day) || !OnSuchDays(rates[rate].Days, isWeekend))
            {
                continue;
            }
            for (var slot = 0; slot < slots.Length; slot++)
            {
                if (Within(rates[rate].Hours, slots[slot].From))
                {
                    rateOfSlot[slot] = rate;
                }
            }
        }
    }

    private static bool InSeason(Rate rate, int month, int day)
    {
        // By month and day, not by day of the year: "to 29 February" must not take in 1 March.
        var at = (month, day);
        var from = rate.From is { } f ? (f.Month, f.Day) : (1, 1);
        var to = rate.To is { } t ? (t.Month, t.Day) : (12, 31);
        return from.CompareTo(to) <= 0
            ? at.CompareTo(from) >= 0 && at.CompareTo(to) <= 0
            : at.CompareTo(from) >= 0 || at.CompareTo(to) <= 0;
    }

    private static bool OnSuchDays(DayKind days, bool isWeekend) => days switch
    {
        DayKind.All => true,
        DayKind.Weekdays => !isWeekend,
        DayKind.Weekends => isWeekend,
    };

    private static bool Within(HourSpan? span, TimeOnly at) =>
        span is not { } s || s.From == s.To || at.IsBetween(s.From, s.To);
}

/// <summary>A stretch of the day, within one clock hour.</summary>
/// <param name="From">Its beginning.</param>
/// <param name="Hours">How long it is, h, up to 1.</param>
public readonly record struct DaySlot(TimeOnly From, double Hours)
{
    /// <summary>Its beginning, hours after midnight.</summary>
    public double FromHour => From.Ticks / (double)TimeSpan.TicksPerHour;

    /// <summary>Its end, hours after midnight, up to 24.</summary>
    public double ToHour => FromHour + Hours;
}
