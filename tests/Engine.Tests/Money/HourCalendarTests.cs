using Runnel.Engine.Money;
using Runnel.Engine.Plan;
using static Runnel.Engine.Tests.Money.Tariffs;

namespace Runnel.Engine.Tests.Money;

/// <summary>Expected values are derived: counted by hand on the calendar of the year. No published table exists.</summary>
public class HourCalendarTests
{
    [Fact]
    public void A_rate_without_limits_takes_all_8760_hours()
    {
        var year = YearOf(2026, Always);

        Assert.Equal(8760, year.HoursOfYear(0));
        Assert.Equal(0, year.HoursOfYear(year.Unpriced));
        Assert.Equal(24, year.Slots.Count);
        Assert.Equal(31, year.HoursInClockHour(January, 7, 0));
        Assert.Equal(28 * 24, year.Hours(February, 0));
        Assert.Empty(year.Gaps);
    }

    [Fact]
    public void Weekends_follow_the_calendar_year()
    {
        var weekends = Rate(days: DayKind.Weekends);

        // 1 January 2026 is a Thursday: Saturdays on 3, 10, 17, 24, 31, Sundays on 4, 11, 18, 25; 52 weeks and a Thursday.
        var year = YearOf(2026, weekends, Always);
        Assert.Equal(9 * 24, year.Hours(January, 0));
        Assert.Equal(22 * 24, year.Hours(January, 1));
        Assert.Equal(104 * 24, year.HoursOfYear(0));

        // 2023 begins and ends on a Sunday.
        Assert.Equal(105 * 24, YearOf(2023, weekends, Always).HoursOfYear(0));
    }

    [Fact]
    public void A_leap_year_drops_29_February_and_keeps_the_weekdays_of_all_other_dates()
    {
        // 2028 runs from a Saturday to a Sunday, 53 weekends; its 29 February is a Tuesday. Weekdays that ran on over the gap would
        // give 105 weekend days.
        var year = YearOf(2028, Rate(days: DayKind.Weekends), Always);

        Assert.Equal(106 * 24, year.HoursOfYear(0));
        Assert.Equal(8760, year.HoursOfYear(0) + year.HoursOfYear(1));
        Assert.Equal(28 * 24, year.Hours(February, 0) + year.Hours(February, 1));
    }

    [Fact]
    public void Hours_over_midnight_belong_to_both_ends_of_the_day()
    {
        var year = YearOf(2026, Rate("22:00", "06:00"), Always);

        Assert.Equal(8 * 365, year.HoursOfYear(0));
        Assert.Equal(31, year.HoursInClockHour(January, 22, 0));
        Assert.Equal(31, year.HoursInClockHour(January, 5, 0));
        Assert.Equal(0, year.HoursInClockHour(January, 6, 0));
        Assert.Equal(0, year.HoursInClockHour(January, 21, 0));
    }

    [Fact]
    public void The_night_into_Saturday_is_at_the_weekend_rate_from_midnight()
    {
        // Saturdays and Sundays each have 22 to 24 and 0 to 6.
        var year = YearOf(2026, Rate("22:00", "06:00", DayKind.Weekends), Always);

        Assert.Equal(9, year.HoursInClockHour(January, 3, 0));
        Assert.Equal(9, year.HoursInClockHour(January, 23, 0));
    }

    [Fact]
    public void An_hour_partly_inside_counts_by_its_share()
    {
        var year = YearOf(2026, Rate("22:30", "05:45"), Always);

        Same(15.5, year.HoursInClockHour(January, 22, 0));
        Same(15.5, year.HoursInClockHour(January, 22, 1));
        Same(31 * 0.75, year.HoursInClockHour(January, 5, 0));
        Same(365 * 7.25, year.HoursOfYear(0));
        Assert.Equal(26, year.Slots.Count);
    }

    [Fact]
    public void A_span_that_ends_where_it_begins_is_the_whole_day_and_midnight_ends_one()
    {
        Assert.Equal(8760, YearOf(2026, Rate("00:00", "00:00")).HoursOfYear(0));
        Assert.Equal(8760, YearOf(2026, Rate("07:00", "07:00")).HoursOfYear(0));
        Assert.Equal(6 * 365, YearOf(2026, Rate("18:00", "00:00"), Always).HoursOfYear(0));
    }

    [Fact]
    public void A_season_takes_both_its_days_and_may_run_over_the_new_year()
    {
        // October 31, November 30, December 31, January 31, February 28, March 31 = 182 days.
        var year = YearOf(2026, Rate(since: new(10, 1), until: new(3, 31)), Always);

        Assert.Equal(182 * 24, year.HoursOfYear(0));
        Assert.Equal(31 * 24, year.Hours(March, 0));
        Assert.Equal(0, year.Hours(March + 1, 0));

        Assert.Equal(24, YearOf(2026, Rate(since: new(6, 15), until: new(6, 15)), Always).HoursOfYear(0));
        Assert.Equal(184 * 24, YearOf(2026, Rate(since: new(7, 1)), Always).HoursOfYear(0));
        Assert.Equal(181 * 24, YearOf(2026, Rate(until: new(6, 30)), Always).HoursOfYear(0));
    }

    [Fact]
    public void A_season_that_ends_or_begins_on_29_February_parts_February_from_March()
    {
        var ends = YearOf(2026, Rate(until: new(2, 29)), Always);
        Assert.Equal(59 * 24, ends.HoursOfYear(0));
        Assert.Equal(0, ends.Hours(March, 0));

        var begins = YearOf(2028, Rate(since: new(2, 29)), Always);
        Assert.Equal(0, begins.Hours(February, 0));
        Assert.Equal(306 * 24, begins.HoursOfYear(0));
    }

    [Fact]
    public void The_first_rate_that_fits_wins()
    {
        var year = YearOf(2026, Always, Rate("22:00", "06:00"));

        Assert.Equal(8760, year.HoursOfYear(0));
        Assert.Equal(0, year.HoursOfYear(1));
    }

    [Fact]
    public void Hours_without_a_price_are_counted_and_told()
    {
        // July 2026 has its weekends on 4, 5, 11, 12, 18, 19, 25, 26.
        var year = YearOf(2026, Rate(days: DayKind.Weekdays), Rate("04:00", "03:00", DayKind.Weekends));

        Assert.Equal(104, year.HoursOfYear(year.Unpriced));
        Assert.Equal(8760, year.HoursOfYear(0) + year.HoursOfYear(1) + year.HoursOfYear(2));
        Assert.Equal(12, year.Gaps.Count);
        Assert.Equal(new PriceGap(July, DayKind.Weekends, new(new(3, 0), new(4, 0)), 8), year.Gaps[July]);
        Assert.Equal("weekends 03:00 to 04:00 in July", year.Gaps[July].ToString());
    }

    [Fact]
    public void A_month_without_a_rate_is_one_gap()
    {
        var year = YearOf(2026, Rate(since: new(8, 1), until: new(6, 30)));

        var gap = Assert.Single(year.Gaps);
        Assert.Equal("every day all day in July", gap.ToString());
        Assert.Equal(31 * 24, gap.Hours);
    }

    [Fact]
    public void Without_a_tariff_no_hour_has_a_price()
    {
        var year = YearOf(2026);

        Assert.Equal(8760, year.HoursOfYear(year.Unpriced));
        Assert.Equal(12, year.Gaps.Count);
    }

    [Fact]
    public void A_season_that_cuts_a_month_cuts_the_blocks_of_both_rates()
    {
        var year = YearOf(2026, Rate(since: new(6, 16), until: new(9, 10)), Always);

        Assert.Equal(0.5, year.LimitShare(June, 0));
        Assert.Equal(0.5, year.LimitShare(June, 1));
        Assert.Equal(1, year.LimitShare(July, 0));
        Assert.Equal(0, year.LimitShare(July, 1));
        Same(10.0 / 30, year.LimitShare(8, 0));
        Assert.Equal(0, year.LimitShare(January, 0));
    }

    [Fact]
    public void Rates_by_hour_and_by_day_keep_their_whole_blocks()
    {
        var year = YearOf(2026, Rate("22:00", "06:00"), Rate(days: DayKind.Weekends), Always);

        Assert.All([0, 1, 2], rate => Assert.Equal(1, year.LimitShare(January, rate)));
    }
}
