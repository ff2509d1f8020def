using CsCheck;
using Runnel.Engine.Money;
using Runnel.Engine.Plan;

namespace Runnel.Engine.Tests.Money;

/// <summary>
/// Derived: a second, naive bill that walks through the year in steps of five minutes with the framework's own calendar and asks at
/// every step which rate holds and what is on. It shares no code with the sorted calendar.
/// </summary>
public class MinuteByMinuteTests
{
    private const int Step = 5;

    private static readonly Gen<TimeOnly> Clock = Gen.Int[0, 24 * 60 / Step - 1].Select(s => TimeOnly.MinValue.AddMinutes(s * Step));

    private static readonly Gen<CalendarDay> Day = Gen.Int[0, 365].Select(d => new DateTime(2028, 1, 1).AddDays(d))
        .Select(d => new CalendarDay(d.Month, d.Day));

    private static readonly Gen<Rate> Rates = Gen.Select(
        Gen.Bool, Clock, Clock, Gen.Int[0, 2], Gen.Int[0, 3], Day, Day,
        (timed, from, to, days, season, since, until) => new Rate
        {
            Hours = timed ? new HourSpan(from, to) : null,
            Days = (DayKind)days,
            From = season is 1 or 3 ? since : null,
            To = season is 2 or 3 ? until : null,
        });

    private static readonly Gen<PriceBlock[]> Prices = Gen.Select(
        Gen.Double[1, 60], Gen.Double[1, 100], Gen.Double[-0.1, 1], Gen.Double[-0.1, 1], Gen.Double[-0.1, 1], Gen.Int[1, 3],
        (first, width, a, b, c, blocks) => blocks switch
        {
            1 => new[] { new PriceBlock(double.PositiveInfinity, a) },
            2 => [new(first, a), new(double.PositiveInfinity, b)],
            _ => [new(first, a), new(first + width, b), new(double.PositiveInfinity, c)],
        });

    private static readonly Gen<Timer> Timers = Gen.Select(
        Gen.Double[0, 300].Array[12], Gen.Int[0, 24 * 60 / Step], Clock, (watts, steps, on) => new Timer(watts, steps * Step, on));

    private static readonly Gen<Case> Cases = Gen.Select(
        Gen.Int[1995, 2060], Gen.Select(Rates, Prices, (rate, price) => (rate, price)).Array[0, 4], Timers.Array[1, 4], Gen.Double[0, 200],
        Gen.Double[0, 20], Gen.Double[0, 0.3], (year, rates, timers, other, standing, tax) =>
            new Case(year, [.. rates.Select(r => r.rate)], [.. rates.Select(r => r.price)], timers, other, standing, tax));

    [Fact]
    public void The_bill_equals_a_walk_through_the_year() => Cases.Sample(
        c =>
        {
            var calendar = HourCalendar.Of(c.Rates, c.Year);
            Load[] loads = [.. c.Timers.Select((t, i) => new Load($"{i}", t.Watts, t.Minutes / 60.0, t.On.ToTimeSpan().TotalHours))];
            EnergyPrice[] prices = [.. c.Prices.Select(EnergyPrice.InBlocks)];

            var bill = ElectricityBill.Compute(calendar, loads, prices, c.OtherKwh, c.Standing, c.Tax);

            var naive = Walk(c);
            for (var load = 0; load < loads.Length; load++)
            {
                for (var month = 0; month < 12; month++)
                {
                    Tariffs.Same(naive.Kwh[load, month], bill.Loads[load].KwhInMonth[month]);
                    Tariffs.Same(naive.Cost[load, month], bill.Loads[load].CostInMonth[month]);
                }
            }
            Tariffs.Same(naive.UnpricedHours, calendar.HoursOfYear(calendar.Unpriced));
            Tariffs.Same(naive.UnpricedHours, calendar.Gaps.Sum(g => g.Hours));
            Tariffs.Same(naive.Total, bill.CostInYear);
        },
        iter: 60);

    [Fact]
    public void Every_tariff_sorts_all_8760_hours_and_every_clock_hour_of_every_month() => Gen.Select(Gen.Int[1995, 2060], Rates.Array[0, 5]).Sample(
        (year, rates) =>
        {
            var calendar = HourCalendar.Of(rates, year);

            Tariffs.Same(8760, Enumerable.Range(0, rates.Length + 1).Sum(calendar.HoursOfYear));
            for (var month = 0; month < 12; month++)
            {
                for (var hour = 0; hour < 24; hour++)
                {
                    Tariffs.Same(
                        DateTime.DaysInMonth(2026, month + 1), Enumerable.Range(0, rates.Length + 1).Sum(r => calendar.HoursInClockHour(month, hour, r)));
                }
            }
        },
        iter: 300);

    [Fact]
    public void Energy_is_power_times_hours_whatever_the_tariff() => Cases.Sample(
        c =>
        {
            var bill = Bill(c, c.Timers);
            for (var month = 0; month < 12; month++)
            {
                var days = DateTime.DaysInMonth(2026, month + 1);
                Tariffs.Same(c.Timers.Sum(t => t.Watts[month] / 1000 * t.Minutes / 60 * days), bill.KwhInMonth[month]);
            }
        },
        iter: 300);

    [Fact]
    public void The_order_of_the_loads_changes_no_amount() => Cases.Sample(
        c =>
        {
            var (forth, back) = (Bill(c, c.Timers), Bill(c, [.. c.Timers.Reverse()]));

            Tariffs.Same(forth.KwhInYear, back.KwhInYear);
            Tariffs.Same(forth.CostInYear, back.CostInYear);
            for (var load = 0; load < c.Timers.Length; load++)
            {
                Tariffs.Same(forth.Loads[load].CostInYear, back.Loads[^(load + 1)].CostInYear);
            }
        },
        iter: 300);

    private static ElectricityBill Bill(Case c, Timer[] timers) => ElectricityBill.Compute(
        HourCalendar.Of(c.Rates, c.Year),
        [.. timers.Select(t => new Load("", t.Watts, t.Minutes / 60.0, t.On.ToTimeSpan().TotalHours))],
        [.. c.Prices.Select(EnergyPrice.InBlocks)], c.OtherKwh, c.Standing, c.Tax);

    private static Walked Walk(Case c)
    {
        var none = c.Rates.Length;
        var kwh = new double[c.Timers.Length, 12, none + 1];
        var steps = new double[12, none + 1];
        var daysOfRate = new int[12, none + 1];
        for (var date = new DateTime(c.Year, 1, 1); date.Year == c.Year; date = date.AddDays(1))
        {
            if (date is { Month: 2, Day: 29 })
            {
                continue;
            }
            var month = date.Month - 1;
            var seen = new bool[none + 1];
            var weekend = date.DayOfWeek == DayOfWeek.Saturday || date.DayOfWeek == DayOfWeek.Sunday;
            for (var at = date; at.Date == date; at = at.AddMinutes(Step))
            {
                seen[Holds(c.Rates, at, true)] = true;
                seen[Holds(c.Rates, at, false)] = true;
                var rate = Holds(c.Rates, at, weekend);
                steps[month, rate]++;
                for (var i = 0; i < c.Timers.Length; i++)
                {
                    var sinceOn = (at.TimeOfDay - c.Timers[i].On.ToTimeSpan() + TimeSpan.FromDays(1)).TotalMinutes % 1440;
                    if (sinceOn < c.Timers[i].Minutes)
                    {
                        kwh[i, month, rate] += c.Timers[i].Watts[month] * Step / 60000;
                    }
                }
            }
            for (var rate = 0; rate <= none; rate++)
            {
                daysOfRate[month, rate] += seen[rate] ? 1 : 0;
            }
        }

        var walked = new Walked(new double[c.Timers.Length, 12], new double[c.Timers.Length, 12]);
        for (var month = 0; month < 12; month++)
        {
            var days = DateTime.DaysInMonth(2026, month + 1);
            walked.UnpricedHours += steps[month, none] * Step / 60;
            walked.Total += c.Standing * (1 + c.Tax);
            for (var rate = 0; rate <= none; rate++)
            {
                var loop = Enumerable.Range(0, c.Timers.Length).Sum(i => kwh[i, month, rate]);
                var house = c.OtherKwh * steps[month, rate] * Step / (days * 1440.0);
                var cut = (double)daysOfRate[month, rate] / days;
                var more = rate == none ? 0 : (Pay(c.Prices[rate], house + loop, cut) - Pay(c.Prices[rate], house, cut)) * (1 + c.Tax);
                walked.Total += more;
                for (var i = 0; i < c.Timers.Length; i++)
                {
                    walked.Kwh[i, month] += kwh[i, month, rate];
                    walked.Cost[i, month] += loop > 0 ? more * kwh[i, month, rate] / loop : 0;
                }
            }
        }
        return walked;
    }

    private static int Holds(Rate[] rates, DateTime at, bool weekend)
    {
        for (var i = 0; i < rates.Length; i++)
        {
            var day = at.Month * 100 + at.Day;
            var since = rates[i].From is { } f ? f.Month * 100 + f.Day : 101;
            var until = rates[i].To is { } t ? t.Month * 100 + t.Day : 1231;
            var season = since <= until ? since <= day && day <= until : day >= since || day <= until;
            var kind = rates[i].Days == DayKind.All || rates[i].Days == DayKind.Weekends == weekend;
            var clock = true;
            if (rates[i].Hours is { } h && h.From != h.To)
            {
                var (now, on, off) = (at.TimeOfDay, h.From.ToTimeSpan(), h.To.ToTimeSpan());
                clock = on < off ? now >= on && now < off : now >= on || now < off;
            }
            if (season && kind && clock)
            {
                return i;
            }
        }
        return rates.Length;
    }

    private static double Pay(PriceBlock[] blocks, double kwh, double cut)
    {
        var (money, below) = (0.0, 0.0);
        foreach (var block in blocks)
        {
            var limit = double.IsInfinity(block.UpToKwhInMonth) ? double.MaxValue : block.UpToKwhInMonth * cut;
            money += Math.Clamp(kwh - below, 0, limit - below) * block.PricePerKwh;
            below = limit;
        }
        return money;
    }

    private sealed record Timer(double[] Watts, int Minutes, TimeOnly On);

    private sealed record Case(int Year, Rate[] Rates, PriceBlock[][] Prices, Timer[] Timers, double OtherKwh, double Standing, double Tax);

    private sealed record Walked(double[,] Kwh, double[,] Cost)
    {
        public double UnpricedHours { get; set; }

        public double Total { get; set; }
    }
}
