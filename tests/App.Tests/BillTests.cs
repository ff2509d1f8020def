using Runnel.Engine.Findings;

namespace Runnel.App.Tests;

/// <summary>What it costs to build and to run. Expected values: derived by hand from the plan in each test.</summary>
public sealed class BillTests
{
    [Fact]
    public void Lamps_cost_what_a_person_would_work_out()
    {
        var assessment = Plans.Assess("""
            lamps: {lamps: {count: 18, watts: 40 W, hours: 14 h}}
            tariff: {energy: 0.21 USD per kWh}
            """);

        var month = assessment.Figures["run.month.lamps"];
        // 18 × 40 W × 14 h × 365/12 d × 0.21 per kWh
        Assert.Equal(18 * 0.040 * 14 * (365.0 / 12) * 0.21, month.Value, 1e-9);
        Assert.Equal(
            "18 lamps × 40 W = 720 W; × 14 h/d = 10.08 kWh/d; × 30.42 d = 306.6 kWh; × 0.21 USD/kWh = 64.39 USD",
            new Working(new Style(Currency: "USD")).Sentence(month));
        Assert.Equal(month.Value * 12, assessment.Figures["run.year.lamps"].Value, 1e-9);
    }

    [Fact]
    public void Energy_by_season_and_hour_is_billed_at_its_own_rate()
    {
        // 100 W from 20:00 for 10 h: 3 h in the evening, 7 h at night. Winter is October to March: 182 days.
        var assessment = Plans.Assess("""
            lamps: {lamps: {watts: 100 W, hours: 10 h, on from: 20:00}}
            tariff:
              energy:
                - {price: 0.10 USD per kWh, hours: 23:00 to 07:00}
                - {price: 0.40 USD per kWh, from: 1 October, to: 31 March}
                - {price: 0.30 USD per kWh}
            """);

        Assert.Equal(0.1 * (7 * 365 * 0.10 + 3 * 182 * 0.40 + 3 * 183 * 0.30), assessment.Figures["run.year.lamps"].Value, 1e-9);
    }

    [Fact]
    public void Heater_energy_that_the_grower_knows_is_taken_as_it_is()
    {
        var assessment = Plans.Assess("""
            heaters: {heater: {watts: 100 W, keep: 24 °C, energy: [30, 28, 20, 10, 5, 0, 0, 0, 5, 10, 20, 32]}}
            tariff: {energy: 0.50 USD per kWh, tax: 10 %}
            """);

        Assert.Equal(160, assessment.Figures["energy.year.heater"].Value, 1e-9);
        Assert.Equal(160 * 0.50 * 1.1, assessment.Figures["run.year.heater"].Value, 1e-9);
    }

    [Fact]
    public void Whole_packs_loose_measures_owned_parts_delivery_tax_and_spare_money()
    {
        var assessment = Plans.Assess("""
            extra parts: {screws: {number: 30}, hose: {number: 7 m}, tape: {number: 1}, glue: {number: 2}}
            prices:
              box 100 cm x 100 cm x 100 cm: 100 USD, used
              box 200 cm x 100 cm x 30 cm: 80 USD, at the yard
              expanded clay: 20 USD per 50 L
              screws: 4 USD per 25
              hose: 1.50 USD per m
              tape: owned
              glue: 6 USD each
            delivery: {the yard: 15 USD, somewhere else: 99 USD}
            sales tax: 5 %
            spare money: 10 %
            """);

        // Bed of 2 m² x 0.30 m = 600 L: 12 packs. 30 screws: 2 packs.
        var parts = 100 + 80 + 12 * 20 + 2 * 4 + 7 * 1.50 + 0 + 2 * 6;
        Assert.Equal(parts, assessment.Figures["build.parts"].Value, 1e-9);
        Assert.Equal(15, assessment.Figures["build.delivery"].Value, 1e-9);
        Assert.Equal((parts + 15) * 1.05 * 1.10, assessment.Figures["build.total"].Value, 1e-9);
        Assert.True(assessment.Build.Complete);
        Assert.Contains(assessment.Build.Lines, l => l.Part == "tape" && l.Cost!.Value == 0);
    }

    [Fact]
    public void A_part_without_a_price_is_counted_named_and_left_out_of_the_total()
    {
        var assessment = Plans.Assess("prices: {expanded clay: 20 USD per 50 L}");

        Assert.False(assessment.Build.Complete);
        Assert.Equal(["box 100 cm x 100 cm x 100 cm", "box 200 cm x 100 cm x 30 cm"], assessment.Build.Unpriced);
        Assert.Equal(240 * 1.10, assessment.Figures["build.total"].Value, 1e-9);
        Assert.Contains(assessment.Findings, f => f.Code == "price.missing");
    }

    [Fact]
    public void Media_sold_by_weight_are_bought_by_their_density()
    {
        var assessment = Plans.Assess("prices: {expanded clay: 1 USD per kg}");
        var clay = Runnel.Catalogue.Shelves.Standard.Media.Single(m => m.Name == "expanded clay");

        Assert.Equal(0.6 * clay.Density.Likely, assessment.Build.Lines.Single(l => l.Part == "expanded clay").Cost!.Value, 1e-9);
    }

    [Fact]
    public void A_price_in_another_measure_is_said_and_not_guessed()
    {
        var assessment = Plans.Assess("""
            extra parts: {hose: {number: 7 m}}
            prices: {hose: 3 USD per kg}
            """);

        Assert.Contains(assessment.Findings, f => f.Code == "price.other-unit" && f.Where == "hose");
        Assert.Contains("hose", assessment.Build.Unpriced);
    }

    [Fact]
    public void Prices_in_another_currency_are_exchanged()
    {
        var assessment = Plans.Assess("""
            exchange: {EUR: 1.25}
            extra parts: {glue: {number: 2}}
            prices: {glue: 4 EUR each}
            """);

        Assert.Equal(10, assessment.Build.Lines.Single(l => l.Part == "glue").Cost!.Value, 1e-9);
    }

    [Fact]
    public void An_alternative_tells_its_saving_and_what_is_given_up()
    {
        var assessment = Plans.Assess("""
            pipes: [{from: bed, to: tank, size: 50 mm PVC, length: 1 m}]
            prices: {tank connector: 9 USD each, rubber grommet: 2 USD each}
            """);

        var other = Assert.Single(assessment.Build.Alternatives);
        Assert.Equal(("50 mm PVC tank connector", "rubber grommet"), (other.Part, other.Use));
        Assert.Equal(7, other.Saves.Value, 1e-9);
        Assert.NotEmpty(other.GivesUp);
    }

    [Fact]
    public void Two_beds_come_from_one_drum()
    {
        var assessment = Plans.Assess("""
              one: {role: media bed, shape: drum 55 gal lengthwise, media: expanded clay}
              two: {like: one}
            prices: {drum 55 gal: 20 USD}
            """);

        var drum = assessment.Build.Lines.Single(l => l.Part == "drum 55 gal");
        Assert.Equal(1, drum.Quantity.Value, 1e-9);
        Assert.Equal(20, drum.Cost!.Value, 1e-9);
    }

    [Fact]
    public void Wear_is_price_over_life()
    {
        var assessment = Plans.Assess("""
            pumps: {pump: {watts: 20 W, life: 4 years}}
            lamps: {lamp: {watts: 40 W, hours: 12 h, life hours: 21900 h}}
            prices: {pump: 48 USD, lamp: 100 USD}
            """);

        // 21900 h at 12 h a day last 5 years.
        Assert.Equal(48.0 / 4 + 100.0 / 5, assessment.Figures["run.year.wear"].Value, 1e-9);
    }

    [Fact]
    public void Months_lines_and_year_agree_in_every_example()
    {
        foreach (var example in Plans.Examples)
        {
            var assessment = Workbench.Open(example).Assess(cancel: TestContext.Current.CancellationToken)!;
            var year = assessment.Figures["run.year.total"].Value;
            Assert.Equal(year, assessment.Run.Months.Sum(m => m.Value), 1e-6 * year);
            Assert.Equal(year, assessment.Run.Lines.Where(l => l.Year is not null).Sum(l => l.Year!.Value), 1e-6 * year);
            Assert.Equal(year, 12 * assessment.Figures["run.month.total"].Value, 1e-6 * year);
            Assert.Equal(assessment.Figures["energy.year.total"].Value, assessment.Run.MonthEnergy.Sum(m => m.Value), 1e-6);
        }
    }

    [Fact]
    public void Without_a_tariff_electricity_is_unpriced_and_still_counted()
    {
        var assessment = Plans.Assess("pumps: {pump: {watts: 100 W}}");

        Assert.Equal(876, assessment.Figures["energy.year.pumps"].Value, 1e-9);
        Assert.Contains("electricity", assessment.Run.Unpriced);
        Assert.Null(assessment.Run.Lines.Single(l => l.Id == "pumps").Year);
        Assert.Contains(assessment.Findings, f => f is { Code: "price.running-missing", Severity: Severity.Warning });
    }

    [Fact]
    public void Own_hours_are_shown_with_and_without_a_price()
    {
        var assessment = Plans.Assess("own work: {a week: 2 h, to build: 10 h, worth: 15 USD per h}");

        Assert.Equal(2 * 365.0 / 7, assessment.Figures["work.year"].Value, 1e-9);
        Assert.Equal(assessment.Figures["run.year.total"].Value + 2 * 365.0 / 7 * 15, assessment.Figures["run.year.total.with-work"].Value, 1e-9);
        Assert.Equal(150, assessment.Figures["build.own-work"].Value, 1e-9);
    }

    [Fact]
    public void Without_lamps_under_glass_leaves_lamps_out_of_both_totals()
    {
        const string Rest = """
            prices: {lamp: 100 USD, box 100 cm x 100 cm x 100 cm: 50 USD}
            tariff: {energy: 0.20 USD per kWh}
            """;
        var with = Plans.Assess("lamps: {lamp: {count: 3, watts: 50 W, hours: 12 h}}\n" + Rest);

        Assert.Equal(50 * 1.1, with.Figures["build.total.under-glass"].Value, 1e-9);
        var without = Plans.Assess(Rest);
        Assert.Equal(without.Figures["run.year.total"].Value, with.Figures["run.year.total.under-glass"].Value, 1e-9);
    }
}
