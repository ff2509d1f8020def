using Runnel.Engine.Money;

namespace Runnel.Engine.Tests.Money;

/// <summary>Derived by hand.</summary>
public class LoadTests
{
    [Theory]
    [InlineData(22, 23, 0)]
    [InlineData(23, 24, 0.5)]
    [InlineData(0, 1, 1)]
    [InlineData(2, 3, 1)]
    [InlineData(3, 4, 0.25)]
    [InlineData(4, 5, 0)]
    public void On_over_midnight_with_parts_of_hours(double from, double to, double share)
    {
        // From 23:30 for 3.75 h: until 03:15.
        var load = Load.Timed("pump", 20, 1, 3.75, new(23, 30));

        Tariffs.Same(share, load.ShareOn(from, to));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(0.1)]
    [InlineData(7.3)]
    [InlineData(23.99)]
    [InlineData(24)]
    public void The_shares_of_a_day_add_up_to_the_hours_a_day(double hours)
    {
        for (var on = 0.0; on < 24; on += 0.7)
        {
            var load = new Load("lamps", Enumerable.Repeat(1.0, 12).ToArray(), hours, on);

            Tariffs.Same(hours, Enumerable.Range(0, 24).Sum(h => load.ShareOn(h, h + 1)));
        }
    }

    [Fact]
    public void A_metered_load_gives_back_what_was_metered()
    {
        double[] kwh = [90, 80, 60, 30, 10, 0, 0, 0, 5, 30, 60, 85];

        var bill = ElectricityBill.Compute(Tariffs.YearOf(2026, Tariffs.Always), [Load.Metered("heater", kwh)], [EnergyPrice.Flat(0.3)]);

        for (var month = 0; month < 12; month++)
        {
            Tariffs.Same(kwh[month], bill.Loads[0].KwhInMonth[month]);
            Tariffs.Same(kwh[month] * 0.3, bill.Loads[0].CostInMonth[month]);
        }
    }

    [Theory]
    [InlineData(-1, 1)]
    [InlineData(double.NaN, 1)]
    [InlineData(double.PositiveInfinity, 1)]
    [InlineData(10, -0.1)]
    [InlineData(10, 24.1)]
    [InlineData(10, double.NaN)]
    public void What_cannot_be_is_refused(double watts, double hours) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Load.Timed("x", watts, 1, hours));

    [Fact]
    public void A_load_has_twelve_months() => Assert.Throws<ArgumentException>(() => Load.Steady("x", [1, 2, 3]));
}
