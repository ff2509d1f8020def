using CsCheck;
using Runnel.Engine.Power;

namespace Runnel.Engine.Tests.Power;

public class PowerTests
{
    [Fact]
    [Proof("energy-from-power", Evidence.Published, "Crane TP-410M ex. 7-34 as quoted by C. Bell, fluids: 117.4 hp, 8000 h, 0.12 USD/kWh, 83 970 USD; 0.2 %")]
    public void A_years_cost_of_a_pump_as_printed()
    {
        var energy = Energy.FromPower(117.4 * 745.699872, 1, 24, 8000.0 / 24);
        Assert.Equal(83970, energy * 0.12, 0.002 * 83970);
    }

    [Fact]
    [Proof("energy-from-power", Evidence.Derived, "a thousand watts for an hour are a kilowatt hour; 25 W all year are 219 kWh")]
    [Proof("energy-from-mean-power", Evidence.Derived, "1000 W for 24 h are 24 kWh; days add up to the period")]
    public void A_kilowatt_for_an_hour_is_a_kilowatt_hour()
    {
        Assert.Equal(1, Energy.FromPower(1000, 1, 1, 1), 12);
        Assert.Equal(219, Energy.FromPower(25, 1, 24, 365), 9);
        Assert.Equal(24, Energy.OfADay(1000, 24), 12);
        Assert.Equal(Energy.FromPower(42, 1, 13, 30), 30 * Energy.OfADay(42, 13), 9);
    }

    [Fact]
    [Proof("energy-from-power", Evidence.Derived, "two lamps take twice what one takes")]
    public void Appliances_alike_add_up() =>
        Gen.Select(Gen.Double[0, 2000], Gen.Int[1, 50], Gen.Double[0, 24]).Sample((watts, count, hours) =>
            Assert.Equal(count * Energy.FromPower(watts, 1, hours, 30), Energy.FromPower(watts, count, hours, 30), 1e-6));

    [Theory]
    [InlineData(15, 120, 1440)]
    [InlineData(20, 120, 1920)]
    [Proof("continuous-load-limit", Evidence.Published, "electricians' texts on the US code: 15 A 1440 W, 20 A 1920 W at 120 V")]
    public void A_circuit_carries_four_fifths_for_hours(double amperes, double volts, double watts) =>
        Assert.Equal(watts, ContinuousLoad.Nec(amperes, volts), 9);

    [Fact]
    [Proof("continuous-load-limit", Evidence.Derived, "the same rule said the other way: the breaker is 125 % of the load")]
    public void The_breaker_is_125_percent_of_the_load() =>
        Gen.Double[1, 100].Sample(amperes => Assert.Equal(amperes, 1.25 * ContinuousLoad.Nec(amperes, 230) / 230, 1e-9));

    [Fact]
    [Proof("battery-run-time", Evidence.Published, "an electrotechnical text: 100 Ah measured at 1 A, so over 100 h; 5 A, exponent 1.2: 14.5 h")]
    public void A_battery_rated_at_one_ampere_lasts_as_printed() =>
        Assert.Equal(14.5, BatteryRunTime.Peukert(100, 5, 100, 1.2), 0.05);

    [Fact]
    [Proof("battery-run-time", Evidence.Derived, "at the rated current every battery lasts its rated time")]
    public void A_battery_lasts_its_rated_time_at_its_rated_current() =>
        Gen.Select(Gen.Double[1, 500], Gen.Double[5, 100], Gen.Double[1, 1.6]).Sample((capacity, rated, exponent) =>
            Assert.Equal(rated, BatteryRunTime.Peukert(capacity, capacity / rated, rated, exponent), 1e-9 * rated));

    [Fact]
    [Proof("battery-run-time", Evidence.Derived, "at twice the rated current it lasts less than half as long, the more so the larger the exponent")]
    public void Twice_the_current_is_worse_than_half_the_time()
    {
        Assert.Equal(10, BatteryRunTime.Peukert(100, 10, 20, 1), 9);
        Assert.True(BatteryRunTime.Peukert(100, 10, 20, 1.25) < BatteryRunTime.Peukert(100, 10, 20, 1.1));
        Assert.True(BatteryRunTime.Peukert(100, 10, 20, 1.1) < 10);
    }

    [Fact]
    [Proof("battery-for-hours", Evidence.Published, "an electrotechnical text: 100 Ah measured at 1 A, so over 100 h; 5 A, exponent 1.2: 14.5 h; the other way round, 0.5 %")]
    public void The_battery_that_lasts_as_printed_is_found_again() =>
        Assert.Equal(100, BatteryRunTime.ForHours(60, 14.5, 12, 100, 100, 100, 1.2), 0.5);

    [Fact]
    [Proof("battery-for-hours", Evidence.Derived, "plain sum: 45 W for 12 h from 12 V, half used, inverter 90 %: 100 Ah")]
    [Proof("battery-for-hours", Evidence.Derived, "the battery it names lasts the wanted time, by the other formula, for loads at least as heavy as the rated one")]
    public void The_battery_it_names_lasts_the_wanted_time()
    {
        Assert.Equal(100, BatteryRunTime.ForHours(45, 12, 12, 50, 90, 20, 1), 1e-9);
        Gen.Select(Gen.Double[2, 200], Gen.Double[0.5, 10], Gen.Double[50, 100], Gen.Double[1, 1.6]).Sample((power, hours, depth, exponent) =>
        {
            var capacity = BatteryRunTime.ForHours(power, hours, 12, depth, 90, 20, exponent);
            Assert.Equal(hours, depth / 100 * BatteryRunTime.Peukert(capacity, power / 12 / 0.9, 20, exponent), 1e-6 * hours);
        });
    }

    [Fact]
    [Proof("battery-for-hours", Evidence.Derived, "longer, heavier, shallower and worse never need less; never less than plain ampere hours")]
    public void A_harder_task_never_needs_a_smaller_battery() =>
        Gen.Select(Gen.Double[1, 500], Gen.Double[0.5, 48], Gen.Double[20, 90], Gen.Double[1, 1.5]).Sample((power, hours, depth, exponent) =>
        {
            var here = BatteryRunTime.ForHours(power, hours, 12, depth, 90, 20, exponent);
            Assert.True(BatteryRunTime.ForHours(power * 1.1, hours, 12, depth, 90, 20, exponent) >= here);
            Assert.True(BatteryRunTime.ForHours(power, hours * 1.1, 12, depth, 90, 20, exponent) >= here);
            Assert.True(BatteryRunTime.ForHours(power, hours, 12, depth / 1.1, 90, 20, exponent) >= here);
            Assert.True(BatteryRunTime.ForHours(power, hours, 12, depth, 80, 20, exponent) >= here);
            Assert.True(here >= power / (12 * 0.9) * hours / (depth / 100) - 1e-9);
        });

    [Theory]
    [InlineData(1440, 15, 120)]
    [InlineData(1920, 20, 120)]
    [Proof("circuit-use", Evidence.Published, "electricians' texts on the US code: 15 A 1440 W, 20 A 1920 W at 120 V are just full")]
    public void A_circuit_is_full_at_four_fifths(double watts, double amperes, double volts)
    {
        Assert.Equal(100, ContinuousLoad.Use(watts, amperes, volts), 1e-9);
        Assert.Equal(watts, ContinuousLoad.Nec(amperes, volts) * ContinuousLoad.Use(watts, amperes, volts) / 100, 1e-9);
    }

    [Fact]
    [Proof("circuit-use", Evidence.Published, "an electrical engineering text's shaded-pole motor: 12 W at 120 V draws 0.35 A, three and a half times its watts")]
    public void A_small_motor_takes_more_of_a_circuit_than_its_watts()
    {
        var factor = 12 / (120 * 0.35);
        Assert.Equal(0.35, ContinuousLoad.Use(12, 15, 120, factor) / 100 * 0.8 * 15, 1e-9);
        Assert.Equal(3.5, ContinuousLoad.Use(12, 15, 120, factor) / ContinuousLoad.Use(12, 15, 120), 1e-9);
    }
}
