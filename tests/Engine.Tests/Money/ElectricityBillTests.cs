using Runnel.Engine.Money;
using Runnel.Engine.Plan;
using static Runnel.Engine.Tests.Money.Tariffs;

namespace Runnel.Engine.Tests.Money;

/// <summary>Derived by hand; the sums stand beside the cases.</summary>
public class ElectricityBillTests
{
    private static readonly double[] OneHundredKwh = [.. Enumerable.Repeat(100.0, 12)];

    // 18 × 40 W × 14 h = 10.08 kWh a day; × 365 ÷ 12 = 306.6 kWh in a mean month; × 0.21 = 64.386. The sum every lamp box asks for.
    [Fact]
    public void Eighteen_lamps_in_a_mean_month()
    {
        var bill = ElectricityBill.Compute(
            YearOf(2026, Always), [Load.Timed("lamps", 40, 18, 14, new(6, 0))], [EnergyPrice.Flat(0.21)]);

        Same(306.6, bill.KwhInYear / 12);
        Same(64.386, bill.CostInYear / 12);
        Same(10.08 * 31 * 0.21, bill.CostInMonth[January]);
        Same(10.08 * 28 * 0.21, bill.CostInMonth[February]);
    }

    [Fact]
    public void A_flat_tariff_is_energy_times_price_to_the_bit()
    {
        var bill = ElectricityBill.Compute(
            YearOf(2026, Always), [Load.Timed("pump", 23.7, 1, 17.3, new(5, 20))], [EnergyPrice.Flat(0.2871)], otherKwhInMonth: 317.7);

        Assert.All(Enumerable.Range(0, 12), m => Assert.Equal(bill.KwhInMonth[m] * 0.2871, bill.CostInMonth[m]));
        Same(0.0237 * 17.3 * 365, bill.KwhInYear);
    }

    // 100 W from 20:00 for 12 h; night 22 to 06. January: 8 h × 31 × 0.1 kW = 24.8 kWh at 0.10, 4 h: 12.4 kWh at 0.30.
    [Fact]
    public void Night_rate_over_midnight()
    {
        var bill = ElectricityBill.Compute(
            YearOf(2026, Rate("22:00", "06:00"), Always), [Load.Timed("lamps", 100, 1, 12, new(20, 0))],
            [EnergyPrice.Flat(0.10), EnergyPrice.Flat(0.30)]);

        Same(24.8, bill.Loads[0].Kwh(January, 0));
        Same(12.4, bill.Loads[0].Kwh(January, 1));
        Same(2.48 + 3.72, bill.CostInMonth[January]);
    }

    // A timer set to a night rate that begins at half past: not a minute at the day's price.
    [Fact]
    public void A_timer_that_follows_the_rate_within_the_hour_pays_that_rate_only()
    {
        var bill = ElectricityBill.Compute(
            YearOf(2026, Rate("22:30", "06:00"), Always), [Load.Timed("lamps", 100, 1, 7.5, new(22, 30))],
            [EnergyPrice.Flat(0.10), EnergyPrice.Flat(0.30)]);

        Same(0, bill.Loads[0].Kwh(January, 1));
        Same(0.75 * 365 * 0.10, bill.CostInYear);
    }

    // 100 W: 182 winter days × 2.4 kWh = 436.8 kWh × 0.40 = 174.72; 183 × 2.4 = 439.2 × 0.20 = 87.84.
    [Fact]
    public void Season_over_the_new_year()
    {
        var bill = ElectricityBill.Compute(
            YearOf(2026, Rate(since: new(10, 1), until: new(3, 31)), Always), [Load.Timed("pump", 100, 1, 24)],
            [EnergyPrice.Flat(0.40), EnergyPrice.Flat(0.20)]);

        Same(174.72 + 87.84, bill.CostInYear);
    }

    // 50 W day and night: January 2026 has 9 weekend days: 10.8 kWh × 0.15 + 22 × 1.2 = 26.4 kWh × 0.35.
    [Fact]
    public void Weekend_rate()
    {
        var bill = ElectricityBill.Compute(
            YearOf(2026, Rate(days: DayKind.Weekends), Always), [Load.Timed("pump", 50, 1, 24)],
            [EnergyPrice.Flat(0.15), EnergyPrice.Flat(0.35)]);

        Same(1.62 + 9.24, bill.CostInMonth[January]);
    }

    // Up to 100 at 0.10, to 300 at 0.20, then 0.50. The house uses 250: the loop's 100 are 50 × 0.20 + 50 × 0.50 = 35,
    // three quarters of it the heater's. With the house at 350 all 100 cost 0.50. Alone the loop would pay 10.
    [Theory]
    [InlineData(0, 7.5, 2.5)]
    [InlineData(250, 26.25, 8.75)]
    [InlineData(350, 37.5, 12.5)]
    public void Blocks_come_on_top_of_the_house_and_are_shared_by_energy(double house, double heater, double pump)
    {
        var blocks = EnergyPrice.InBlocks([new(100, 0.10), new(300, 0.20), new(double.PositiveInfinity, 0.50)]);

        var bill = ElectricityBill.Compute(
            YearOf(2026, Always), [Load.Metered("heater", [.. OneHundredKwh.Select(k => k * 0.75)]), Load.Metered("pump", [.. OneHundredKwh.Select(k => k / 4)])],
            [blocks], otherKwhInMonth: house);

        Same(heater, bill.Loads[0].CostInMonth[July]);
        Same(pump, bill.Loads[1].CostInMonth[July]);
        Same((heater + pump) * 12, bill.CostInYear);
    }

    // Summer from 16 June: both rates have half a month's limits. 200 kWh in June are 100 in each half:
    // 50 × 0.10 + 50 × 0.30 = 20 before, limit 100: 100 × 0.20 = 20 after.
    [Fact]
    public void A_season_that_begins_in_a_month_halves_both_blocks()
    {
        var bill = ElectricityBill.Compute(
            YearOf(2026, Rate(since: new(6, 16), until: new(9, 15)), Always), [Load.Metered("heater", [.. OneHundredKwh.Select(k => 2 * k)])],
            [EnergyPrice.InBlocks([new(200, 0.20), new(0, 0.60)]), EnergyPrice.InBlocks([new(100, 0.10), new(0, 0.30)])]);

        Same(40, bill.CostInMonth[June]);
        Same(40, bill.CostInMonth[July]); // 200 × 0.20
        Same(10 + 30, bill.CostInMonth[January]);
    }

    // The house's 240 kWh are even over the day: a third, 80, falls into the 8 h of night and fills 80 of its 100.
    [Fact]
    public void The_house_fills_the_blocks_of_each_rate_by_its_hours()
    {
        var bill = ElectricityBill.Compute(
            YearOf(2026, Rate("22:00", "06:00"), Always), [Load.Timed("lamps", 1000, 1, 1, new(0, 0))],
            [EnergyPrice.InBlocks([new(100, 0.10), new(0, 0.20)]), EnergyPrice.Flat(0.30)], otherKwhInMonth: 240);

        Same(20 * 0.10 + 11 * 0.20, bill.CostInMonth[January]); // 31 kWh
    }

    [Fact]
    public void Tax_falls_on_energy_and_fixed_charge()
    {
        var bill = ElectricityBill.Compute(
            YearOf(2026, Always), [Load.Metered("heater", OneHundredKwh)], [EnergyPrice.Flat(0.20)], fixedInMonth: 10, taxShare: 0.25);

        Same(12.5, bill.FixedInMonth);
        Same(25, bill.Loads[0].CostInMonth[January]);
        Same(37.5, bill.CostInMonth[January]);
        Same(7.5, bill.TaxInMonth[January]);
        Same(450, bill.CostInYear);
        Assert.Equal(0.20, bill.PricePerKwh(January, 0));
    }

    [Fact]
    public void A_negative_price_lowers_the_bill()
    {
        var bill = ElectricityBill.Compute(
            YearOf(2026, Rate("12:00", "14:00"), Always), [Load.Timed("lamps", 1000, 1, 4, new(12, 0))],
            [EnergyPrice.Flat(-0.05), EnergyPrice.Flat(0.05)]);

        Same(0, bill.CostInYear);
        Same(-0.05 * 2 * 31, bill.Loads[0].Kwh(January, 0) * bill.PricePerKwh(January, 0));
    }

    [Fact]
    public void Hours_without_a_price_count_as_energy_and_cost_nothing()
    {
        var year = YearOf(2026, Rate("06:00", "22:00"));

        var bill = ElectricityBill.Compute(year, [Load.Timed("pump", 100, 1, 24)], [EnergyPrice.Flat(0.30)]);

        Same(876, bill.KwhInYear);
        Same(876 * 0.30 * 2 / 3, bill.CostInYear);
        Same(0.8 * 31, bill.Loads[0].Kwh(January, year.Unpriced));
        Assert.NotEmpty(year.Gaps);
    }

    [Fact]
    public void No_loads_cost_the_fixed_charge()
    {
        var bill = ElectricityBill.Compute(YearOf(2026, Always), [], [EnergyPrice.Flat(0.3)], fixedInMonth: 7);

        Assert.Equal(0, bill.KwhInYear);
        Same(84, bill.CostInYear);
    }

    [Fact]
    public void What_cannot_be_is_refused()
    {
        var year = YearOf(2026, Always);

        Assert.Throws<ArgumentException>(() => ElectricityBill.Compute(year, [], []));
        Assert.Throws<ArgumentOutOfRangeException>(() => ElectricityBill.Compute(year, [], [EnergyPrice.Flat(1)], otherKwhInMonth: -1));
        Assert.Throws<ArgumentOutOfRangeException>(() => ElectricityBill.Compute(year, [], [EnergyPrice.Flat(1)], fixedInMonth: double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(
            () => ElectricityBill.Compute(year, [], [EnergyPrice.Flat(1)], taxShare: double.PositiveInfinity));
    }
}
