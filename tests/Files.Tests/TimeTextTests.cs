using Runnel.Engine.Money;
using Runnel.Engine.Plan;

namespace Runnel.Files.Tests;

/// <summary>Days, dates, clock times, yes and no, currencies: by way of a plan.</summary>
public class TimeTextTests
{
    private static PlanFile Fish(string day) => PlanFile.Parse(Plans.With($"fish:\n  - {{species: goldfish, number: 1, weight: 9 g, in: {day}}}\n"), "plan.yaml");

    [Theory]
    [InlineData("1 March", 3, 1)]
    [InlineData("March 1", 3, 1)]
    [InlineData("1 mar", 3, 1)]
    [InlineData("1st March", 3, 1)]
    [InlineData("03-01", 3, 1)]
    [InlineData("29 February", 2, 29)]
    [InlineData("31 Dec.", 12, 31)]
    public void A_day_of_the_year(string text, int month, int day) => Assert.Equal(new CalendarDay(month, day), Fish(text).Plan!.Fish[0].In);

    [Theory]
    [InlineData("31 April")]
    [InlineData("13-01")]
    [InlineData("March")]
    [InlineData("1 Marchember")]
    [InlineData("0 May")]
    public void What_is_no_day(string text) => Assert.Contains("1 March", Assert.Single(Fish(text).Errors).Mend, StringComparison.Ordinal);

    [Theory]
    [InlineData("06:00", 6, 0)]
    [InlineData("6:30", 6, 30)]
    [InlineData("24:00", 0, 0)]
    [InlineData("\"10 pm\"", 22, 0)]
    public void A_clock_time(string text, int hour, int minute) =>
        Assert.Equal(new TimeOnly(hour, minute), PlanFile.Parse(Plans.With($"fans:\n  f: {{watts: 3, on from: {text}}}\n"), "plan.yaml").Plan!.Fans["f"].OnFrom);

    [Theory]
    [InlineData("25:00")]
    [InlineData("6.30")]
    public void What_is_no_clock_time(string text) =>
        Assert.Contains("06:00", Assert.Single(PlanFile.Parse(Plans.With($"fans:\n  f: {{watts: 3, on from: {text}}}\n"), "plan.yaml").Errors).Mend, StringComparison.Ordinal);

    [Theory]
    [InlineData("yes", true)]
    [InlineData("no", false)]
    [InlineData("true", true)]
    public void Yes_and_no(string text, bool yes) =>
        Assert.Equal(yes, PlanFile.Parse(Plans.With($"tariff: {{counts fixed charge: {text}, energy: 0.3}}\n"), "plan.yaml").Plan!.Tariff!.CountsFixed);

    [Fact]
    public void Energy_may_be_one_price_one_rate_or_a_list()
    {
        foreach (var energy in new[] { "0.3 EUR per kWh", "{price: 0.3 EUR per kWh}", "[{price: 0.3 EUR per kWh}]", "[0.3 EUR per kWh]" })
        {
            var rate = Assert.Single(PlanFile.Parse(Plans.With($"tariff: {{energy: {energy}}}\n"), "plan.yaml").Plan!.Tariff!.Energy);
            Assert.Equal(0.3 / 3.6e6, rate.Price!.Likely, 1e-15);
        }
    }

    /// <summary>ISO 4217, from memory: euro and dollar have two digits after the point, yen none, Kuwaiti dinar three.</summary>
    [Theory]
    [InlineData("EUR", 2)]
    [InlineData("USD", 2)]
    [InlineData("JPY", 0)]
    [InlineData("KWD", 3)]
    public void A_currency_has_its_digits(string code, int digits)
    {
        Assert.True(Currency.IsKnown(code));
        Assert.Equal(digits, Currency.MinorDigits(code));
        Assert.False(Currency.IsKnown("EURO"));
    }

    [Fact]
    public void A_foreign_tariff_is_converted_by_its_rate()
    {
        var file = PlanFile.Parse(Plans.With("exchange: {USD: 0.9}\ntariff: {energy: 0.2 USD per kWh}\n"), "plan.yaml");
        Assert.Equal(0.18 / 3.6e6, file.Plan!.Tariff!.Energy[0].Price!.Likely, 1e-15);
    }
}
