using System.Text;
using Runnel.Engine.Plan;
using Runnel.Files.Binding;
using Runnel.Files.Values;

namespace Runnel.Files;

/// <summary>docs/plan-format.md: how a plan file is written, from the inputs' own descriptions.</summary>
public static class PlanFormatPage
{
    /// <summary>The small plan that the page shows. Invented.</summary>
    public const string Example = """
        # Invented: one tank, one bed, one pump, two lamps.
        runnel: 1
        name: Window loop
        currency: EUR

        place:
          setting: indoors
          air: 17 to 21 °C

        vessels:
          tank: {role: fish tank, shape: box 90 x 45 x 45 cm, level: 38 cm}
          bed:
            role: media bed
            shape: box 80 cm x 40 cm x 30 cm
            media: expanded clay
            above floor: 75 cm

        pipes:
          - {from: tank, to: bed, pumped by: pump, size: 16 mm hose, length: 1.4 m}
          - {from: bed, to: tank, size: 32 mm PVC, length: 40 cm, elbows: 1}

        pumps:
          pump: {watts: 8 W, hours: 24}
        lamps:
          over the bed: {count: 2, watts: 23 W, lumens: 1500 lm, hours: 14}

        fish:
          - {species: goldfish, number: 8, weight: 15 g}
        crops:
          - {crop: basil, in: bed}

        prices:
          expanded clay: 22 to 30 EUR per 50 L
          pump: 18 EUR, seen 2026-10-02
          tank: owned
        tariff:
          energy: 0.31 EUR per kWh
        """;

    private const string Intro = """
        # How a plan is written

        A plan is one text file that describes one loop: where it stands, what holds water, what moves and heats and lights it, what
        lives in it, and what you pay for things. Write down what you know; what can be worked out is left out. This page and the check
        of the file come from the same description, so they agree.

        The file is YAML: `key: value` on a line, parts indented below their key with spaces (no tabs), lists with a dash or in
        `[ ]`, short parts in `{ }`, and remarks after a `#`. Put a value in quotes when it holds a colon followed by a space, or a
        comma inside `{ }`. Anchors, aliases and tags are not used. `plan.schema.json` beside this page lets an editor complete and
        check keys while you type.

        ## A small plan


        """;

    private const string Values = """

        ## How values are written

        **A number with its unit**: `23 W`, `208 L`, `68 °F`, `400 gal/h`, `0.3 kW`. A number alone is taken in the unit that the
        tables below name. In a plan with `units: us` a temperature must say `°F` or `°C`. A unit that measures something else is an
        error that says what was expected: `kW` is what a device draws, `kWh` what it uses over time.

        **A range** where you are not sure: `30 to 50 EUR`, `15-20 °C`; and what you think likely: `30 to 50 EUR, likely 35`. Ranges
        are carried through to every result.

        **Numbers**: `1234.5`, `1,234.5`, `3/4`, `1 1/2`, `2 x 7`. A decimal comma is read where it can mean nothing else (`1,5`);
        `1,234` could be two numbers and is refused.

        **Lengths** may be in two units: `8 ft 2 in`, `8' 2"`. **A gallon** is the US gallon (3.785 L); the imperial one is written
        `imp gal` (4.546 L).

        **For each**: `per`, `a` and `/` are the same: `6.20 EUR a month`, `0.31 EUR per kWh`, `5 gal/min`, `2 h a week`,
        `1 to 3 % a day`.

        **Money** is written with its three-letter code (ISO 4217): `12 EUR`. Without one it is in the plan's currency. Another
        currency needs a rate under `exchange`. `28 cents per kWh` works where a hundred cents make one.

        **Days**: `1 March` or `03-01`; dates `2026-10-02`; clock times `06:00`; spans `22:00 to 06:00`. **Yes or no**: `yes`, `no`.

        **Prices** in one line, parted by commas: the price and what it buys, then in any order whether it is `used` or `owned`, when
        it was `seen`, and `at` whom: `30 to 50 USD each, likely 35, used, seen 2026-10-02, at the yard`. `per 50 L` means packs of
        50 L, bought whole; `per m3`, `per kg`, `per m` are sold loose. Say `whole packs` or `loose` where that is not so.


        """;

    /// <summary>The text of the page.</summary>
    public static string Markdown()
    {
        var page = new StringBuilder().Append(Intro).Append("```yaml\n").Append(Example).Append("\n```\n").Append(Values);
        page.Append("**Units** that are understood: ").AppendJoin(", ", UnitTable.Names.Select(s => $"`{s}`"))
            .Append("; most also by their names, in the singular or plural (`gallons`, `square feet`, `kilowatt hours`), and parted by `/` or `per`.\n\n");
        page.Append("## Parts and their keys\n\nA key in bold is needed; all others may be left out.\n");
        foreach (var part in PartInfo.All())
        {
            Table(page, part);
        }
        return page.Replace("\r\n", "\n").ToString();
    }

    /// <summary>One line that describes an input: help, unit, default with its source.</summary>
    internal static string Describe(InputInfo input)
    {
        var said = new List<string>();
        if (input.Input.Help.Length > 0)
        {
            said.Add(input.Input.Help);
        }
        if (input.Input.Default is { } value)
        {
            var source = input.Input.DefaultSource is { } s && s != value ? $" ({s})" : "";
            said.Add($"Default: {value}{source}.");
        }
        return string.Join(' ', said);
    }

    private static void Table(StringBuilder page, PartInfo part)
    {
        page.Append("\n### ").Append(part.Title).Append('\n');
        if (part.Help.Length > 0)
        {
            page.Append('\n').Append(part.Help).Append('\n');
        }
        page.Append("\n| key | what it is | written in | bounds | notes |\n| --- | --- | --- | --- | --- |\n");
        foreach (var input in part.Inputs)
        {
            var key = input.Input.Required ? $"**`{input.Key}`**" : $"`{input.Key}`";
            var notes = Describe(input);
            if (input.Input.Example is { } example)
            {
                notes += $"{(notes.Length > 0 ? " " : "")}Example: `{example}`";
            }
            page.Append("| ").AppendJoin(" | ", new[] { key, input.Input.Label, WrittenIn(input), Bounds(input), notes }.Select(c => c.Replace("|", "\\|", StringComparison.Ordinal))).Append(" |\n");
        }
    }

    private static string WrittenIn(InputInfo input) => input.Kind switch
    {
        InputKind.Quantity or InputKind.Quantities or InputKind.QuantityMap => (input.Kind, Unit(input)) switch
        {
            (InputKind.Quantities, var u) => $"{u}: one value, or twelve from January",
            (InputKind.QuantityMap, var u) => $"by name: {u}",
            (_, var u) => u,
        },
        InputKind.Word => "one of the words",
        InputKind.Text => "text",
        InputKind.Texts => "a name, or names in `[ ]`",
        InputKind.Whole => "a whole number",
        InputKind.YesNo => "`yes` or `no`",
        InputKind.Clock => "a clock time",
        InputKind.Date => "a date",
        InputKind.Day => "a day of the year",
        InputKind.Hours => "two clock times",
        InputKind.Extent => "length x width",
        InputKind.Shape => "a shape with its sizes",
        InputKind.Insulation => "thickness and kind",
        InputKind.PipeSize => "nominal size and material",
        InputKind.Drain => "kind, bore and height",
        InputKind.Curve => "points in `[ ]`",
        InputKind.Part => $"keys of [{Title(input)}]({Anchor(input)})",
        InputKind.PartMap => $"by name: [{Title(input)}]({Anchor(input)})",
        InputKind.PartList when input.Element == typeof(Rate) => $"a price, or a list of [{Title(input)}]({Anchor(input)})",
        InputKind.PartList => $"a list, each entry a [{Title(input)}]({Anchor(input)})",
        _ => "",
    };

    private static string Unit(InputInfo input) => input.Input.Unit switch
    {
        null => "a count, length, weight, area or volume",
        "" => "a number",
        "°" => "degrees",
        "money" => "money",
        var u when u.StartsWith("money/", StringComparison.Ordinal) => $"money per {u[6..]}",
        var u => Hints.Spelled(UnitText.OfSymbol(u, "EUR")),
    };

    private static string Bounds(InputInfo input) => (double.IsFinite(input.Input.Min), double.IsFinite(input.Input.Max)) switch
    {
        (true, true) when input.Input.Max >= 1e6 => $"{Hints.Number(input.Input.Min)} or more",
        (true, true) => $"{Hints.Number(input.Input.Min)} to {Hints.Number(input.Input.Max)}",
        (true, false) => $"{Hints.Number(input.Input.Min)} or more",
        (false, true) => $"up to {Hints.Number(input.Input.Max)}",
        _ => "",
    };

    private static string Title(InputInfo input) => PartInfo.Of(input.Element).Title.ToLowerInvariant();

    private static string Anchor(InputInfo input) => "#" + Title(input).Replace(' ', '-');
}
