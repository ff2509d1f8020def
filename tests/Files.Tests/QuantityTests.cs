using Runnel.Engine.Quantities;
using Runnel.Files.Values;

namespace Runnel.Files.Tests;

/// <summary>Values as people write them. Factors: published, NIST SP 811 (2008) appendix B and SI brochure, exact by definition, as literals.</summary>
public class QuantityTests
{
    private static readonly ValueContext Context = new("EUR", true, new Dictionary<string, double> { ["USD"] = 0.92 });

    [Theory]
    // Volume. NIST SP 811: gallon (US) 3.785 411 784 E-03 m3; gallon (Canadian and UK) 4.546 09 E-03 m3; yard3 from 0.9144 m.
    [InlineData("55 gal", "L", 0.20819764812)]
    [InlineData("55 US gal", "L", 0.20819764812)]
    [InlineData("55 gallons", "L", 0.20819764812)]
    [InlineData("1 gallon", "L", 0.003785411784)]
    [InlineData("10 imp gal", "L", 0.0454609)]
    [InlineData("10 imperial gallons", "L", 0.0454609)]
    [InlineData("208 L", "L", 0.208)]
    [InlineData("208 litres", "L", 0.208)]
    [InlineData("208", "L", 0.208)]
    [InlineData("1 yd3", "L", 0.764554857984)]
    [InlineData("1 cubic yard", "L", 0.764554857984)]
    [InlineData("2 ft³", "L", 0.056633693184)]
    [InlineData("1 qt", "L", 0.000946352946)]
    [InlineData("250 mL", "L", 0.00025)]
    [InlineData("0.4 m3", "L", 0.4)]
    // Length: foot 0.3048 m, inch 0.0254 m, yard 0.9144 m.
    [InlineData("8 ft 2 in", "m", 2.4892)]
    [InlineData("8' 2\"", "m", 2.4892)]
    [InlineData("8'2\"", "m", 2.4892)]
    [InlineData("8 feet 2 inches", "m", 2.4892)]
    [InlineData("3/4 in", "mm", 0.01905)]
    [InlineData("1 1/2 in", "mm", 0.0381)]
    [InlineData("1-1/2 in", "mm", 0.0381)]
    [InlineData("1½ in", "mm", 0.0381)]
    [InlineData("2 yards", "m", 1.8288)]
    [InlineData("62 cm", "cm", 0.62)]
    [InlineData("62", "cm", 0.62)]
    // Area.
    [InlineData("10 ft2", "m²", 0.9290304)]
    [InlineData("10 sq ft", "m²", 0.9290304)]
    [InlineData("1.2 m^2", "m²", 1.2)]
    // Flow: per hour and per minute of the gallon above.
    [InlineData("400 gal/h", "L/h", 0.00042060130933333335)]
    [InlineData("400 gph", "L/h", 0.00042060130933333335)]
    [InlineData("5 gal/min", "L/h", 0.000315450982)]
    [InlineData("5 gallons per minute", "L/h", 0.000315450982)]
    [InlineData("2400 L/h", "L/h", 0.00066666666666666664)]
    // Temperature: t/°C = (t/°F - 32)/1.8.
    [InlineData("68 F", "°C", 20)]
    [InlineData("68 °F", "°C", 20)]
    [InlineData("20 °C", "°C", 20)]
    [InlineData("20 C", "°C", 20)]
    [InlineData("293.15 K", "°C", 20)]
    [InlineData("-5 °C", "°C", -5)]
    // Weight: pound 0.453 592 37 kg, ounce one sixteenth of it.
    [InlineData("1 lb", "g", 0.45359237)]
    [InlineData("2 lb 8 oz", "g", 1.133980925)]
    [InlineData("450 g", "g", 0.45)]
    [InlineData("40 lb/ft2", "kg/m²", 195.29709)]
    // Power and energy: horsepower 550 ft·lbf/s = 745.6999 W; kWh 3.6 E+06 J.
    [InlineData("23 W", "W", 23)]
    [InlineData("0.3 kW", "W", 300)]
    [InlineData("0.5 hp", "W", 372.84994)]
    [InlineData("3 kWh", "kWh", 10800000)]
    [InlineData("3 kwh", "kWh", 10800000)]
    // Counts, shares, times.
    [InlineData("2 x 7", "", 14)]
    [InlineData("22 fish", "", 22)]
    [InlineData("10 %", "%", 0.1)]
    [InlineData("10", "%", 0.1)]
    [InlineData("14", "h/d", 14.0 / 24)]
    [InlineData("14 h", "h/d", 14.0 / 24)]
    [InlineData("14 h a day", "h/d", 14.0 / 24)]
    [InlineData("14 hours per day", "h/d", 14.0 / 24)]
    [InlineData("3 years", "year", 94608000)]
    [InlineData("2 weeks", "month", 1209600)]
    [InlineData("120 mg/L as CaCO3", "mg CaCO3/L", 0.12)]
    [InlineData("120 mg CaCO3/L", "mg CaCO3/L", 0.12)]
    [InlineData("2.4 umol/J", "µmol/J", 2.4e-6)]
    [InlineData("6.6 W", "°", -6.6)]
    [InlineData("53.2° N", "°", 53.2)]
    [InlineData("40 g a day", "g/d", 0.04 / 86400)]
    // Money: one unit of the plan's currency.
    [InlineData("4 EUR each", "money", 4)]
    [InlineData("€4", "money", 4)]
    [InlineData("EUR 4", "money", 4)]
    [InlineData("4", "money", 4)]
    [InlineData("10 USD", "money", 9.2)]
    [InlineData("0.36 EUR per kWh", "money/kWh", 1e-7)]
    [InlineData("36 cents per kWh", "money/kWh", 1e-7)]
    [InlineData("36 ct/kWh", "money/kWh", 1e-7)]
    [InlineData("0.36", "money/kWh", 1e-7)]
    [InlineData("1.90 EUR per m3", "money/m³", 1.9)]
    [InlineData("12 EUR a year", "money/month", 12.0 / 31536000)]
    [InlineData("0 a month", "money/month", 0)]
    // Numbers.
    [InlineData("1,234.5 L", "L", 1.2345)]
    [InlineData("1.234,5 L", "L", 1.2345)]
    [InlineData("1,5 L", "L", 0.0015)]
    [InlineData("0,234 L", "L", 0.000234)]
    [InlineData("1,234,567 L", "L", 1234.567)]
    [InlineData("1'000 L", "L", 1)]
    [InlineData("1e3 L", "L", 1)]
    public void A_quantity_reads_as_its_definition_says(string text, string unit, double si)
    {
        Assert.True(QuantityText.TryRead(text, new(unit, unit is "h/d" or "g/d" ? "hours a day" : unit == "" ? "number How many" : ""), Context, out var read, out var trouble), trouble?.ToString());
        Assert.Equal(si, read.Likely, Math.Abs(si) * 1e-7 + 1e-12);
        Assert.Equal(read.Low, read.High);
    }

    [Theory]
    [InlineData("30 to 50 EUR", "money", 30, 40, 50)]
    [InlineData("30 to 50 EUR, likely 35", "money", 30, 35, 50)]
    [InlineData("30-50 EUR, likely 35 EUR", "money", 30, 35, 50)]
    [InlineData("15-20 °C", "°C", 15, 17.5, 20)]
    [InlineData("15 – 20 °C", "°C", 15, 17.5, 20)]
    [InlineData("15 °C to 20 °C", "°C", 15, 17.5, 20)]
    [InlineData("-5 to 3 °C", "°C", -5, -1, 3)]
    [InlineData("-5--3 °C", "°C", -5, -4, -3)]
    [InlineData("30 cm to 1 m", "cm", 0.3, 0.65, 1)]
    [InlineData("1 to 3 % a day, likely 1.5 % a day", "%/d", 0.01 / 86400, 0.015 / 86400, 0.03 / 86400)]
    [InlineData("10 to 15", "%", 0.1, 0.125, 0.15)]
    [InlineData("1,5 to 2,5 L", "L", 0.0015, 0.002, 0.0025)]
    public void A_range_reads_with_its_likely_value(string text, string unit, double low, double likely, double high)
    {
        Assert.True(QuantityText.TryRead(text, new(unit), Context, out var read, out var trouble), trouble?.ToString());
        Assert.Equal(low, read.Low, 1e-12);
        Assert.Equal(likely, read.Likely, 1e-12);
        Assert.Equal(high, read.High, 1e-12);
    }

    [Theory]
    [InlineData("22 mph", "cm", "a speed, a length was expected", "22 cm")]
    [InlineData("0.3 kWh", "W", "energy", "kWh in each hour")]
    [InlineData("2 kW", "kWh", "power", "hours")]
    [InlineData("2 kW/h", "kWh", "neither power nor energy", "2 kWh")]
    [InlineData("0.31 EUR per kW", "money/kWh", "for each kW", "0.31 EUR per kWh")]
    [InlineData("0.31 EUR", "money/kWh", "how much energy", "0.31 EUR per kWh")]
    [InlineData("120 mg/L", "mg CaCO3/L", "of what", "120 mg/L as CaCO3")]
    [InlineData("1,234 L", "L", "thousands or decimals", "1234 or 1.234")]
    [InlineData("12 GBP", "money", "no exchange rate", "exchange: {GBP")]
    [InlineData("12 gallns", "L", "no unit", "gallons")]
    [InlineData("50 to 30 cm", "cm", "high to low", "smaller value first")]
    [InlineData("30 to 50 cm, likely 60", "cm", "outside the range", "between")]
    [InlineData("much", "W", "a number was expected", "W")]
    [InlineData("", "W", "a number was expected", "W")]
    [InlineData("3 ft 2 lb", "m", "do not belong together", "m")]
    [InlineData("1/0 m", "m", "divided by 0", "3/4")]
    [InlineData("5 m x 3", "m", "no unit", "docs/plan-format.md")]
    public void What_cannot_be_read_says_why_and_what_would_be_right(string text, string unit, string problem, string mend)
    {
        Assert.False(QuantityText.TryRead(text, new(unit), Context, out _, out var trouble));
        Assert.Contains(problem, trouble!.Problem, StringComparison.Ordinal);
        Assert.Contains(mend, trouble.Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void A_bare_temperature_in_a_plan_in_US_units_is_asked_about()
    {
        var us = new ValueContext("USD", BareTemperatures: false);
        Assert.False(QuantityText.TryRead("70", new("°C"), us, out _, out var trouble));
        Assert.Equal("write 70 °F or 70 °C", trouble!.Mend);
        Assert.True(QuantityText.TryRead("70 F", new("°C"), us, out _, out _));
        Assert.True(QuantityText.TryRead("70", new("cm"), us, out _, out _));
    }

    [Fact]
    public void Bounds_are_checked_in_the_unit_that_was_asked_for()
    {
        var wanted = new Wanted("°C") { Min = 0, Max = 40 };
        Assert.True(QuantityText.TryRead("104 °F", wanted, Context, out _, out _));
        Assert.False(QuantityText.TryRead("105 °F", wanted, Context, out _, out var trouble));
        Assert.Contains("more than 40 °C", trouble!.Problem, StringComparison.Ordinal);
    }

    [Fact]
    public void The_unit_is_kept_as_it_was_written()
    {
        Assert.True(QuantityText.TryRead("5 gal per minute", new("L/h"), Context, out var flow, out _));
        Assert.Same(Units.GallonPerMinute, flow.Unit);
        Assert.True(QuantityText.TryRead("0.31", new("money/kWh"), Context, out var price, out _));
        Assert.Equal("EUR/kWh", price.Unit.Symbol);
    }

    [Theory]
    [InlineData("each", "2", 2)]
    [InlineData("length", "12 m", 12)]
    [InlineData("weight", "40 g", 0.04)]
    [InlineData("area", "0.8 m2", 0.8)]
    [InlineData("volume", "50 L", 0.05)]
    public void An_amount_of_a_part_may_be_a_count_or_a_measure(string what, string text, double si)
    {
        Assert.NotEmpty(what);
        Assert.True(QuantityText.TryRead(text, new(null), Context, out var read, out _));
        Assert.Equal(si, read.Likely, 1e-12);
        Assert.False(QuantityText.TryRead("3 kWh", new(null), Context, out _, out var trouble));
        Assert.Contains("a count, a length", trouble!.Problem, StringComparison.Ordinal);
    }
}
