using Runnel.Engine.Quantities;

namespace Runnel.Engine.Plan;

/// <summary>One loop of water as the grower describes it. Everything that can be worked out is left out.</summary>
/// <remarks>
/// A property that holds <see cref="Estimate"/> may be written as a range; one that has a default is never null after reading.
/// </remarks>
[PlanPart("Plan", Help = "One file describes one loop.")]
public sealed record LoopPlan
{
    [Input("runnel", "Format of this file", Required = true, Min = 1, Max = 1, Example = "1", Help = "Always 1 for this format.")]
    public int Format { get; init; } = 1;

    [Input("name", "Name", Required = true, Example = "Pantry loop", Help = "What you call the loop.")]
    public string Name { get; init; } = "";

    [Input("note", "Note", Help = "Anything you want to remember; printed on the report, never computed with.")]
    public string? Note { get; init; }

    [Input("units", "Units on screen", Default = "metric", Help = "metric or us; values may be written in either, whatever this says.")]
    public UnitSystem Units { get; init; }

    [Input("currency", "Currency", Required = true, Example = "EUR", Help = "Three-letter ISO 4217 code. All results are in it.")]
    public string Currency { get; init; } = "";

    [Input("exchange", "Exchange rates", Unit = "", Min = 1e-9, Max = 1e9, Example = "{USD: 0.92}",
        Help = "What one unit of another currency costs in yours, for prices written in the other.")]
    public IReadOnlyDictionary<string, Estimate> Exchange { get; init; } = new Dictionary<string, Estimate>();

    [Input("year", "Calendar year", Default = "2026", Min = 1900, Max = 2200,
        Help = "Only its weekdays matter, for tariffs that differ at weekends. February always has 28 days.")]
    public int Year { get; init; } = 2026;

    [Input("place", "Place", Required = true)]
    public Place Place { get; init; } = new();

    [Input("water", "Source water")]
    public SourceWater Water { get; init; } = new();

    [Input("vessels", "Vessels", Required = true, Help = "Everything that holds water, by the name you give it.")]
    public IReadOnlyDictionary<string, Vessel> Vessels { get; init; } = new Dictionary<string, Vessel>();

    [Input("pipes", "Pipes and drains", Help = "One entry for each run of pipe.")]
    public IReadOnlyList<Pipe> Pipes { get; init; } = [];

    [Input("pumps", "Pumps")]
    public IReadOnlyDictionary<string, Pump> Pumps { get; init; } = new Dictionary<string, Pump>();

    [Input("air pumps", "Air pumps")]
    public IReadOnlyDictionary<string, AirPump> AirPumps { get; init; } = new Dictionary<string, AirPump>();

    [Input("heaters", "Heaters")]
    public IReadOnlyDictionary<string, Heater> Heaters { get; init; } = new Dictionary<string, Heater>();

    [Input("lamps", "Lamps")]
    public IReadOnlyDictionary<string, Lamp> Lamps { get; init; } = new Dictionary<string, Lamp>();

    [Input("fans", "Fans")]
    public IReadOnlyDictionary<string, Fan> Fans { get; init; } = new Dictionary<string, Fan>();

    [Input("dehumidifiers", "Dehumidifiers")]
    public IReadOnlyDictionary<string, Dehumidifier> Dehumidifiers { get; init; } = new Dictionary<string, Dehumidifier>();

    [Input("stand", "Stand", Help = "The lumber of the stand, by the name of the piece.")]
    public IReadOnlyDictionary<string, Lumber> Stand { get; init; } = new Dictionary<string, Lumber>();

    [Input("fish", "Fish", Help = "One entry for each batch.")]
    public IReadOnlyList<FishBatch> Fish { get; init; } = [];

    [Input("crops", "Crops", Help = "One entry for each crop in a bed.")]
    public IReadOnlyList<Crop> Crops { get; init; } = [];

    [Input("feed", "Feed")]
    public Feed Feed { get; init; } = new();

    [Input("extra parts", "Extra parts", Help = "What nobody counts: sealant, screws, thread tape, a test kit. By name; prices stand under prices.")]
    public IReadOnlyDictionary<string, ExtraPart> ExtraParts { get; init; } = new Dictionary<string, ExtraPart>();

    [Input("supplies", "Supplies", Help = "What is used up while the loop runs, by name: seed, additives, test refills. Prices stand under prices.")]
    public IReadOnlyDictionary<string, Supply> Supplies { get; init; } = new Dictionary<string, Supply>();

    [Input("price list", "Price list", Example = "prices.yaml",
        Help = "A file beside this one that holds prices: as here. A price in the plan wins over one in the list.")]
    public string? PriceList { get; init; }

    [Input("prices", "Prices", Help = "By the name of the part. A part without a price is named as unpriced, never guessed.")]
    public IReadOnlyDictionary<string, Price> Prices { get; init; } = new Dictionary<string, Price>();

    [Input("instead", "Alternatives", Help = "Another part that could do the job: what it saves and what is given up.")]
    public IReadOnlyList<Alternative> Instead { get; init; } = [];

    [Input("delivery", "Delivery", Unit = "money", Min = 0, Max = 1e9, Example = "{the pipe shop: 12 EUR}",
        Help = "What each supplier charges to deliver, by the name used after at: in prices.")]
    public IReadOnlyDictionary<string, Estimate> Delivery { get; init; } = new Dictionary<string, Estimate>();

    [Input("sales tax", "Sales tax on parts", Unit = "%", Min = 0, Max = 100, Default = "0 %", DefaultSource = "assumes that prices include tax",
        Help = "Added to new and used parts and delivery; leave out when your prices include it.")]
    public Estimate SalesTax { get; init; } = null!;

    [Input("spare money", "Spare money", Unit = "%", Min = 0, Max = 200, Default = "10 %",
        DefaultSource = "common practice, no source: 10 to 20 % is usual",
        Help = "Share of the build put aside for what was forgotten, broken or bought twice.")]
    public Estimate SpareMoney { get; init; } = null!;

    [Input("own work", "Own work")]
    public OwnWork OwnWork { get; init; } = new();

    [Input("tariff", "Electricity tariff")]
    public Tariff? Tariff { get; init; }
}

/// <summary>Which units hosts print.</summary>
public enum UnitSystem
{
    Metric,
    Us,
}
