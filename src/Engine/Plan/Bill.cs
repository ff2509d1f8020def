using Runnel.Engine.Quantities;

namespace Runnel.Engine.Plan;

[PlanPart("Extra part")]
public sealed record ExtraPart
{
    /// <summary>Name that the grower gave it: the key in the plan.</summary>
    public string Name { get; init; } = "";

    [Input("number", "How much", Required = true, Example = "2", Help = "A count, or a length, weight, area or volume: 12 m, 0.4 m3.")]
    public Estimate Number { get; init; } = null!;

    [Input("section", "Section of the build list", Default = "sundries", Help = "vessels, media, plumbing, pump and air, heat, light, stand, fish and plants, tests, or sundries.")]
    public BuildSection Section { get; init; } = BuildSection.Sundries;

    [Input("life", "Life", Unit = "year", Min = 0.05, Max = 60)]
    public Estimate? Life { get; init; }
}

/// <summary>Sections of the build list, in the order in which they are printed.</summary>
public enum BuildSection
{
    Vessels,
    Media,
    Plumbing,
    PumpAndAir,
    Heat,
    Light,
    Stand,
    FishAndPlants,
    Tests,
    Sundries,
}

/// <summary>Names of the sections of the build list.</summary>
public static class BuildSectionNames
{
    /// <summary>As it is read: "Pump and air".</summary>
    public static string Title(this BuildSection section) => section switch
    {
        BuildSection.PumpAndAir => "Pump and air",
        BuildSection.FishAndPlants => "Fish and plants",
        _ => section.ToString(),
    };
}

[PlanPart("Supply")]
public sealed record Supply
{
    /// <summary>Name that the grower gave it: the key in the plan.</summary>
    public string Name { get; init; } = "";

    [Input("use", "How much", Required = true, Example = "40 g", Help = "Used up in the time given under every: a count, a weight or a volume.")]
    public Estimate Use { get; init; } = null!;

    [Input("every", "In each", Unit = "month", Min = 0.01, Max = 24, Default = "1 month", Help = "1 month, 1 year, 2 weeks.")]
    public Estimate Every { get; init; } = null!;

    [Input("kind", "Kind", Default = "additive", Help = "seed, additive or test.")]
    public SupplyKind Kind { get; init; } = SupplyKind.Additive;
}

public enum SupplyKind
{
    Seed,
    Additive,
    Test,
}

/// <summary>What a part costs.</summary>
[PlanPart("Price", Help = "Short: 30 to 50 USD each, likely 35, used, seen 2026-10-02, at the yard. Per 50 L means sold in packs of 50 L; per m3 or per kg, loose.")]
public sealed record Price
{
    /// <summary>Name of the part: the key in the price list.</summary>
    public string Name { get; init; } = "";

    [Input("price", "Price", Required = true, Unit = "money", Min = 0, Max = 1e12, Example = "30 to 50 EUR, likely 35")]
    public Estimate Amount { get; init; } = null!;

    /// <summary>How much one price buys: 1 piece, 50 L, 1 m. SI; dimension none for pieces.</summary>
    [Input("per", "For", Default = "1", Example = "50 L", Help = "What that price buys: 1 (each), 50 L, 1 yd3, 4 m.")]
    public Estimate Per { get; init; } = null!;

    [Input("packs", "Sold only in whole packs", Help = "yes or no. When left out: yes for each and for packs such as per 50 L, no for per m3, per kg, per m.")]
    public bool? WholePacks { get; init; }

    [Input("condition", "Condition", Default = "new", Help = "new, used or owned; owned parts cost nothing and are still listed.")]
    public Condition Condition { get; init; }

    [Input("seen", "Seen on", Example = "2026-10-02", Help = "Day on which you saw the price.")]
    public DateOnly? Seen { get; init; }

    [Input("at", "Supplier", Help = "Who sells it; see delivery.")]
    public string? Supplier { get; init; }

    /// <summary>Currency it was written in.</summary>
    public string Currency { get; init; } = "";
}

public enum Condition
{
    New,
    Used,
    Owned,
}

[PlanPart("Alternative")]
public sealed record Alternative
{
    [Input("of", "In place of", Required = true, Example = "tank connector", Help = "Name of the part that the plan uses.")]
    public string Of { get; init; } = "";

    [Input("use", "Use", Required = true, Example = "rubber grommet", Help = "Name of the other part; its price stands under prices.")]
    public string Use { get; init; } = "";

    [Input("each needs", "Needed for each", Unit = "", Min = 0, Max = 1e6, Default = "1", Help = "How many of the other one of the first needs.")]
    public Estimate EachNeeds { get; init; } = null!;

    [Input("gives up", "What is given up", Help = "In your words.")]
    public string? GivesUp { get; init; }
}

[PlanPart("Own work")]
public sealed record OwnWork
{
    [Input("a week", "Hours a week", Unit = "h", Min = 0, Max = 168, Example = "2 h")]
    public Estimate? AWeek { get; init; }

    [Input("to build", "Hours to build", Unit = "h", Min = 0, Max = 10000)]
    public Estimate? ToBuild { get; init; }

    [Input("worth", "Worth of an hour", Unit = "money/h", Min = 0, Max = 1e9, Help = "When given, results are shown with and without it.")]
    public Estimate? Worth { get; init; }
}

[PlanPart("Tariff", Help = "What the electricity company charges.")]
public sealed record Tariff
{
    [Input("fixed", "Fixed charge", Unit = "money/month", Min = 0, Max = 1e9, Default = "0 a month", DefaultSource = "no fixed charge",
        Help = "Paid whether or not you use anything. Counted only when counts fixed charge says so.")]
    public Estimate Fixed { get; init; } = null!;

    [Input("counts fixed charge", "Fixed charge is the loop's", Default = "no",
        Help = "no when the house pays it anyway; yes when the loop has a meter of its own.")]
    public bool CountsFixed { get; init; }

    [Input("other use", "The house's other use each month", Unit = "kWh", Min = 0, Max = 1e6, Default = "0 kWh",
        DefaultSource = "no other use: matters only for prices in blocks",
        Help = "With prices in blocks the loop comes on top of what the house uses.")]
    public Estimate OtherUse { get; init; } = null!;

    [Input("tax", "Tax on electricity", Unit = "%", Min = 0, Max = 200, Default = "0 %", DefaultSource = "assumes that prices include tax")]
    public Estimate Tax { get; init; } = null!;

    [Input("energy", "Price of energy", Required = true,
        Help = "One price, or a list of rates. The first rate in the list that fits an hour is taken, so put the general one last.")]
    public IReadOnlyList<Rate> Energy { get; init; } = [];
}

[PlanPart("Rate")]
public sealed record Rate
{
    [Input("price", "Price", Unit = "money/kWh", Min = -10, Max = 1e9, Example = "0.31 EUR per kWh", Help = "Leave out when blocks are given.")]
    public Estimate? Price { get; init; }

    [Input("blocks", "Prices in blocks", Help = "Each with up to, per month; the last has none.")]
    public IReadOnlyList<Block> Blocks { get; init; } = [];

    [Input("from", "From", Example = "1 October", Help = "First day of the season; may run over the new year.")]
    public CalendarDay? From { get; init; }

    [Input("to", "To", Example = "31 March", Help = "Last day of the season, included.")]
    public CalendarDay? To { get; init; }

    [Input("days", "Days", Default = "all", Help = "all, weekdays or weekends.")]
    public DayKind Days { get; init; }

    [Input("hours", "Hours", Example = "22:00 to 06:00", Help = "Clock hours; may run over midnight.")]
    public HourSpan? Hours { get; init; }
}

public enum DayKind
{
    All,
    Weekdays,
    Weekends,
}

/// <summary>From a clock hour, included, to a clock hour, excluded; may run over midnight.</summary>
public readonly record struct HourSpan(TimeOnly From, TimeOnly To);

[PlanPart("Block")]
public sealed record Block
{
    [Input("up to", "Up to, each month", Unit = "kWh", Min = 0, Max = 1e9)]
    public Estimate? UpTo { get; init; }

    [Input("price", "Price", Required = true, Unit = "money/kWh", Min = -10, Max = 1e9)]
    public Estimate Price { get; init; } = null!;
}
