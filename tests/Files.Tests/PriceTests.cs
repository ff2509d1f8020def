using Runnel.Engine.Plan;
using Runnel.Engine.Quantities;

namespace Runnel.Files.Tests;

/// <summary>Prices, in one line and key by key.</summary>
public class PriceTests
{
    private static Price Read(string price)
    {
        var file = PlanFile.Parse(Plans.With($"exchange: {{USD: 0.9}}\nprices:\n  thing: {price}\n"), "plan.yaml");
        Assert.Empty(file.Errors);
        return file.Plan!.Prices["thing"];
    }

    [Theory]
    [InlineData("9 EUR", 9, 9, 1, "", true)]
    [InlineData("9 EUR each", 9, 9, 1, "", true)]
    [InlineData("30 to 50 EUR each, likely 35, used", 30, 50, 1, "", true)]
    [InlineData("30 to 50 EUR, likely 35, each", 30, 50, 1, "", true)]
    [InlineData("22 to 30 EUR per 50 L", 22, 30, 0.05, "L", true)]
    [InlineData("90 EUR per m3", 90, 90, 1, "m³", false)]
    [InlineData("90 EUR/m³", 90, 90, 1, "m³", false)]
    [InlineData("4 EUR per m", 4, 4, 1, "m", false)]
    [InlineData("4 EUR per 4 m", 4, 4, 4, "m", true)]
    [InlineData("3,50 EUR per kg, loose", 3.5, 3.5, 1, "kg", false)]
    [InlineData("3.50 EUR per kg, whole packs", 3.5, 3.5, 1, "kg", true)]
    [InlineData("12 EUR per 100", 12, 12, 100, "", true)]
    [InlineData("{price: 12 EUR, per: 1 yd3}", 12, 12, 0.764554857984, "yd³", false)]
    [InlineData("{price: 12 EUR per 20 kg}", 12, 12, 20, "kg", true)]
    [InlineData("{price: 12 EUR, per: 20 kg, packs: no}", 12, 12, 20, "kg", false)]
    [InlineData("12", 12, 12, 1, "", true)]
    public void A_price_says_how_much_it_buys(string text, double low, double high, double per, string unit, bool packs)
    {
        var price = Read(text);
        Assert.Equal(low, price.Amount.Low, 1e-12);
        Assert.Equal(high, price.Amount.High, 1e-12);
        Assert.Equal(per, price.Per.Likely, 1e-12);
        Assert.Equal(unit, price.Per.Unit.Symbol);
        Assert.Equal(packs, price.WholePacks);
        Assert.Equal("EUR", price.Currency);
    }

    [Fact]
    public void Clauses_say_condition_day_and_shop()
    {
        var price = Read("60 to 90 EUR, likely 70, used, seen 2026-10-02, at the yard");
        Assert.Equal(Condition.Used, price.Condition);
        Assert.Equal(new DateOnly(2026, 10, 2), price.Seen);
        Assert.Equal("the yard", price.Supplier);
        Assert.Equal(70, price.Amount.Likely);
        Assert.Equal("prices/thing", price.Amount.From.Path);
        Assert.Equal("prices/thing#per", price.Per.From.Path);
    }

    [Fact]
    public void An_owned_part_costs_nothing()
    {
        var price = Read("owned");
        Assert.Equal((Condition.Owned, 0.0), (price.Condition, price.Amount.High));
    }

    [Fact]
    public void A_price_in_another_currency_keeps_it_for_the_bill_to_convert()
    {
        var price = Read("20 USD");
        Assert.Equal(("USD", 20.0, "USD"), (price.Currency, price.Amount.Likely, price.Amount.Unit.Symbol));
    }

    [Fact]
    public void A_range_in_two_currencies_is_refused()
    {
        var error = Assert.Single(PlanFile.Parse(Plans.With("exchange: {USD: 0.9}\nprices:\n  thing: 20 USD to 30 EUR\n"), "plan.yaml").Errors);
        Assert.Contains("two currencies", error.Problem, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("12 EUR, sen 2026-10-02", "not understood", "seen")]
    [InlineData("12 EUR, seen yesterday", "a date was expected", "2026-10-02")]
    [InlineData("12 GBP", "no exchange rate", "exchange")]
    [InlineData("12 kg", "money was expected", "EUR")]
    [InlineData("12 EUR per 50 W", "an area or a volume was expected", "50 L")]
    [InlineData("used", "a price was expected", "owned")]
    [InlineData("12 EUR per 0 L", "above 0", "50 L")]
    public void What_is_wrong_with_a_price_is_said(string text, string problem, string mend)
    {
        var error = Assert.Single(PlanFile.Parse(Plans.With($"prices:\n  thing: {text}\n"), "plan.yaml").Errors);
        Assert.Equal("prices / thing", error.Where);
        Assert.Contains(problem, error.Problem, StringComparison.Ordinal);
        Assert.Contains(mend, error.Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void A_price_list_is_read_beside_the_plan_and_the_plan_wins()
    {
        const string List = "prices:\n  thing: 5 EUR\n  other: 7 EUR\n";
        var file = PlanFile.Parse(Plans.With("price list: list.yaml\nprices:\n  thing: 9 EUR\n"), "plan.yaml", name => name == "list.yaml" ? List : null);
        Assert.Empty(file.Errors);
        Assert.Equal(9, file.Plan!.Prices["thing"].Amount.Likely);
        Assert.Equal(7, file.Plan.Prices["other"].Amount.Likely);
        Assert.False(file.CanChange(file.Plan.Prices["other"].Amount.From.Path));
    }

    [Fact]
    public void Errors_of_a_price_list_carry_its_name_and_lines()
    {
        var file = PlanFile.Parse(Plans.With("price list: list.yaml\n"), "plan.yaml", _ => "prices:\n  thing: 5 EUR\n  other: 7 kg\n");
        var error = Assert.Single(file.Errors);
        Assert.Equal(("list.yaml", 3, 10), (error.File, error.Line, error.Column));
    }

    [Theory]
    [InlineData("../list.yaml")]
    [InlineData("/etc/list.yaml")]
    [InlineData("missing.yaml")]
    public void A_price_list_elsewhere_is_refused(string name)
    {
        var error = Assert.Single(PlanFile.Parse(Plans.With($"price list: {name}\n"), "plan.yaml", n => n == "missing.yaml" ? null : "prices:\n  a: 1\n").Errors);
        Assert.Equal("price list", error.Where);
    }
}
