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
}
