namespace Runnel.Files.Tests;

/// <summary>Each kind of error once: its place, what was read, and what would be right.</summary>
public class ErrorTests
{
    private static PlanError One(string text)
    {
        var file = PlanFile.Parse(text, "plan.yaml");
        Assert.Null(file.Plan);
        return Assert.Single(file.Errors);
    }

    private static void Is(PlanError error, int line, int column, string where, string read, string problem, string mend)
    {
        Assert.Equal((line, column, where, read), (error.Line, error.Column, error.Where, error.Read));
        Assert.Contains(problem, error.Problem, StringComparison.Ordinal);
        Assert.Contains(mend, error.Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void An_error_reads_as_one_line()
    {
        var text = Plans.Small.ReplaceLineEndings("\n").Replace("45 x 45 cm}", "45 x 45 cm, level: 22 mph}", StringComparison.Ordinal);
        Assert.Equal("plan.yaml:6:62: vessels / tank / level: read \"22 mph\"; that is a speed, a length was expected; write it like 22 cm", One(text).ToString());
    }

    [Fact]
    public void A_wrong_dimension() =>
        Is(One(Plans.With("fans:\n  f: {watts: 3 L}\n")), 11, 14, "fans / f / watts", "3 L", "a volume, power", "3 W");

    [Fact]
    public void Energy_where_power_is_expected() =>
        Is(One(Plans.With("fans:\n  f: {watts: 0.3 kWh}\n")), 11, 14, "fans / f / watts", "0.3 kWh", "kWh is energy", "300 W");

    [Fact]
    public void A_value_out_of_bounds() =>
        Is(One(Plans.With("fans:\n  f: {watts: 3 W, hours: 25}\n")), 11, 26, "fans / f / hours", "25", "more than 24 h a day", "h a day");

    [Fact]
    public void A_lamp_s_life_in_hours_belongs_under_life_hours() =>
        Is(One(Plans.With("lamps:\n  l: {watts: 9 W, life: 30000 h}\n")), 11, 25, "lamps / l / life", "30000 h", "on the calendar", "write life hours: 30000 h");

    [Fact]
    public void An_unknown_key_names_the_nearest() =>
        Is(One(Plans.With("fans:\n  f: {wats: 3 W, watts: 3}\n")), 11, 7, "fans / f", "wats", "no key of fan", "did you mean watts?");

    [Fact]
    public void An_unknown_key_of_the_plan() =>
        Is(One(Plans.With("airpumps: {}\n")), 10, 1, "", "airpumps", "no key of a plan", "did you mean air pumps?");

    [Fact]
    public void A_missing_key_gives_an_example() =>
        Is(One(Plans.With("fish:\n  - {species: goldfish, weight: 15 g}\n")), 11, 5, "fish / entry 1", "", "number is missing", "write number:");

    [Fact]
    public void A_missing_key_of_the_plan() =>
        Is(One(Plans.Small.ReplaceLineEndings("\n").Replace("currency: EUR\n", "", StringComparison.Ordinal)), 1, 1, "", "", "currency is missing", "currency: EUR");

    [Fact]
    public void A_key_twice() =>
        Is(One(Plans.With("fans:\n  f: {watts: 3, watts: 4}\n")), 11, 17, "fans / f", "watts", "twice, first in line 11", "keep one");

    [Fact]
    public void A_name_twice() =>
        Is(One(Plans.With("fans:\n  f: {watts: 3}\n  f: {watts: 4}\n")), 12, 3, "fans", "f", "twice, first in line 11", "another name");

    [Fact]
    public void A_word_that_is_no_choice() =>
        Is(One(Plans.With("water: {source: rian}\n")), 10, 17, "water / source", "rian", "tap, rain, well", "did you mean rain?");

    [Fact]
    public void An_empty_value() =>
        Is(One(Plans.With("water:\n  temperature:\n")), 11, 3, "water / temperature", "", "nothing is written", "delete the line");

    [Fact]
    public void A_list_where_one_value_belongs() =>
        Is(One(Plans.With("water: {temperature: [11, 12]}\n")), 10, 22, "water / temperature", "", "a list stands here", "");

    [Fact]
    public void One_value_where_a_part_belongs() =>
        Is(One(Plans.With("fans: two\n")), 10, 7, "fans", "two", "entries by name", "");

    [Fact]
    public void An_unknown_currency() =>
        Is(One(Plans.Small.ReplaceLineEndings("\n").Replace("currency: EUR", "currency: ERU", StringComparison.Ordinal)), 3, 11, "currency", "ERU", "ISO 4217", "did you mean EUR?");

    [Fact]
    public void Another_format() =>
        Is(One(Plans.Small.ReplaceLineEndings("\n").Replace("runnel: 1", "runnel: 2", StringComparison.Ordinal)), 1, 9, "runnel", "2", "another format", "format 1");

    [Theory]
    [InlineData("pipes:\n  - {from: tnk, to: bed, size: 25 mm PVC, length: 1 m}\n", 11, 12, "pipes / entry 1 / from", "tnk", "did you mean tank?")]
    [InlineData("pipes:\n  - {from: tank, to: [bed, bad], size: 25 mm PVC, length: 1 m}\n", 11, 28, "pipes / entry 1 / to", "bad", "did you mean bed?")]
    [InlineData("pipes:\n  - {from: tank, to: bed, pumped by: pmup, size: 25 mm PVC, length: 1 m}\n", 11, 38, "pipes / entry 1 / pumped by", "pmup", "did you mean pump?")]
    [InlineData("lamps:\n  l: {watts: 9 W, over: bedd}\n", 11, 25, "lamps / l / over", "bedd", "did you mean bed?")]
    [InlineData("crops:\n  - {crop: basil, in: bd}\n", 11, 23, "crops / entry 1 / in", "bd", "did you mean bed?")]
    [InlineData("fish:\n  - {species: goldfish, number: 1, weight: 9 g, lives in: tonk}\n", 11, 59, "fish / entry 1 / lives in", "tonk", "did you mean tank?")]
    public void A_name_that_does_not_exist_names_the_nearest(string more, int line, int column, string where, string read, string mend) =>
        Is(One(Plans.With(more)), line, column, where, read, "there is no", mend);

    [Theory]
    [InlineData("  a: {like: bod}\n", 8, 13, "vessels / a / like", "bod", "there is no vessel", "did you mean bed?")]
    [InlineData("  a: {like: a}\n", 8, 13, "vessels / a / like", "a", "like itself", "in full")]
    [InlineData("  a: {like: b}\n  b: {like: a}\n", 9, 13, "vessels / b / like", "a", "in a ring", "in full")]
    public void Likeness_that_leads_nowhere(string vessels, int line, int column, string where, string read, string problem, string mend) =>
        Is(One(Plans.Small.ReplaceLineEndings("\n").Replace("pumps:", vessels + "pumps:", StringComparison.Ordinal).Replace("vessels:\n  a", "vessels:\n  a", StringComparison.Ordinal)),
            line, column, where, read, problem, mend);

    [Fact]
    public void A_level_above_the_rim() =>
        Is(One(Plans.Small.ReplaceLineEndings("\n").Replace("30 cm}", "30 cm, level: 35 cm}", StringComparison.Ordinal)), 7, 61, "vessels / bed / level", "35 cm", "30 cm high", "check");

    [Fact]
    public void Blocks_that_do_not_rise() =>
        Is(One(Plans.With("tariff:\n  energy:\n    - blocks: [{up to: 200, price: 0.3}, {up to: 100, price: 0.4}, {price: 0.5}]\n")),
            12, 50, "tariff / energy / entry 1 / blocks / entry 2", "100", "blocks must rise", "small to large");

    [Fact]
    public void A_last_block_with_an_end() =>
        Is(One(Plans.With("tariff:\n  energy: {blocks: [{up to: 200, price: 0.3}]}\n")), 11, 22, "tariff / energy / blocks / entry 1", "up to", "no price", "leave up to out");

    [Fact]
    public void A_rate_without_a_price() =>
        Is(One(Plans.With("tariff:\n  energy: [{days: weekends}]\n")), 11, 12, "tariff / energy / entry 1", "", "a price or blocks", "price: 0.31");

    [Fact]
    public void A_season_without_its_end() =>
        Is(One(Plans.With("tariff:\n  energy: {price: 0.3, from: 1 May}\n")), 11, 24, "tariff / energy", "from", "last day", "31 March");

    [Fact]
    public void Eleven_months() =>
        Is(One(Plans.With("heaters:\n  h: {watts: 9, keep: 20, energy: [1,2,3,4,5,6,7,8,9,10,11]}\n")), 11, 35, "heaters / h / energy", "", "11 values", "energy:");

    [Theory]
    [InlineData("  - {from: tank, to: bed, size: 25, length: 1 m}\n", "pipes / entry 1 / size", "nominal size", "25 mm PVC")]
    public void A_size_without_material(string pipe, string where, string problem, string mend) =>
        Is(One(Plans.With("pipes:\n" + pipe)), 11, 33, where, "25", problem, mend);

    [Theory]
    [InlineData("bxo 80 x 40 x 30 cm", "a shape was expected", "did you mean box?")]
    [InlineData("box 80 x 40 cm", "3 sizes", "box 110 cm")]
    [InlineData("box 80 x 40 x 30", "in what?", "unit")]
    [InlineData("round 80 kg x 40 cm", "a weight, a length", "cm")]
    [InlineData("drum upright", "a number was expected", "L")]
    public void A_shape_that_is_none(string shape, string problem, string mend)
    {
        var error = One(Plans.Small.ReplaceLineEndings("\n").Replace("box 80 x 40 x 30 cm", shape, StringComparison.Ordinal));
        Is(error, 7, 33, "vessels / bed / shape", shape, problem, mend);
    }

    [Theory]
    [InlineData("water: {source: tap\n", "bracket", "close")]
    [InlineData("note: \"not closed\n", "quotation mark", "close")]
    [InlineData("water:\n\tsource: tap\n", "tab", "spaces")]
    [InlineData("note: a: b\n", "colon", "quotes")]
    [InlineData("note: &a text\n", "anchors", "quotes")]
    [InlineData("note: *a\n", "aliases", "quotes")]
    [InlineData("note: !!str text\n", "tags", "quotes")]
    [InlineData("--- \nname: b\n", "second document", "one file")]
    [InlineData("note: a\0b\n", "no text", "delete")]
    public void Broken_yaml_is_one_error_with_a_place(string more, string problem, string mend)
    {
        var error = One(Plans.With(more));
        Assert.InRange(error.Line, 10, 12);
        Assert.Contains(problem, error.Problem, StringComparison.Ordinal);
        Assert.Contains(mend, error.Mend, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("")]
    [InlineData("# nothing but a remark\n")]
    [InlineData("just text")]
    [InlineData("- a\n- b\n")]
    [InlineData("\uFEFF")]
    public void A_file_that_is_no_plan_is_one_error(string text) => Assert.NotEmpty(One(text).Mend);

    [Fact]
    public void All_errors_come_at_once_in_the_order_of_the_file()
    {
        var file = PlanFile.Parse(Plans.With("fans:\n  f: {watts: 3 L}\n  g: {wats: 2 W}\ncrops:\n  - {crop: basil, in: bd}\nlife: 3\n"), "plan.yaml");
        Assert.Equal([11, 12, 12, 14, 15], file.Errors.Select(e => e.Line));
    }

    [Fact]
    public void Deep_and_large_files_are_refused_quickly()
    {
        Assert.Contains("nested", One("a: " + new string('[', 100_000)).Problem, StringComparison.Ordinal);
        Assert.Contains("nested", One("a: " + string.Concat(Enumerable.Repeat("{a: ", 50_000))).Problem, StringComparison.Ordinal);
        Assert.Contains("characters", One(new string('a', 1_000_001)).Problem, StringComparison.Ordinal);
        var bomb = "a: &a [x, x, x]\n" + string.Concat(Enumerable.Range(0, 50).Select(i => $"b{i}: &b{i} [*a, *a]\n"));
        Assert.Contains("anchors", One(bomb).Problem, StringComparison.Ordinal);
    }

    [Fact]
    public void A_comma_in_braces_is_explained()
    {
        var file = PlanFile.Parse(Plans.With("prices: {thing: 12 EUR, used}\n"), "plan.yaml");
        Assert.Contains(file.Errors, e => e.Where == "prices / used");
    }
}
