using Runnel.Engine.Quantities;

namespace Runnel.Engine.Plan;

[PlanPart("Batch of fish")]
public sealed record FishBatch
{
    [Input("species", "Species", Required = true, Example = "Nile tilapia", Help = "A name from the catalogue.")]
    public string Species { get; init; } = "";

    [Input("number", "How many", Unit = "", Required = true, Min = 1, Max = 1e6)]
    public Estimate Number { get; init; } = null!;

    [Input("weight", "Weight of one when it goes in", Unit = "g", Min = 0.01, Max = 20000, Required = true)]
    public Estimate Weight { get; init; } = null!;

    [Input("in", "Goes in", Example = "1 March")]
    public CalendarDay? In { get; init; }

    [Input("harvest at", "Harvested at", Unit = "g", Min = 0.1, Max = 50000, Help = "Weight of one; leave out for fish to look at.")]
    public Estimate? HarvestAt { get; init; }

    [Input("survival", "Survival", Unit = "%", Min = 1, Max = 100, Default = "85 to 98 %, likely 95 %", DefaultSource = "common practice, no source")]
    public Estimate Survival { get; init; } = null!;

    [Input("lives in", "Lives in", Help = "Name of the fish tank; the only one when left out.")]
    public string? LivesIn { get; init; }

    [Input("batches a year", "Batches bought each year", Unit = "", Min = 0, Max = 52, Default = "1", DefaultSource = "one batch a year")]
    public Estimate BatchesAYear { get; init; } = null!;
}

/// <summary>A day of the year.</summary>
public readonly record struct CalendarDay(int Month, int Day)
{
    private static readonly string[] Names =
        ["January", "February", "March", "April", "May", "June", "July", "August", "September", "October", "November", "December"];

    /// <summary>Day of a 365-day year, 0 for 1 January; 29 February counts as 1 March.</summary>
    public int DayOfYear => Math.Min(YearCalendar.Start[Month - 1] + Day - 1, 364);

    /// <summary>English names of the months.</summary>
    public static IReadOnlyList<string> MonthNames => Names;

    /// <inheritdoc />
    public override string ToString() => $"{Day} {Names[Month - 1]}";
}

[PlanPart("Crop")]
public sealed record Crop
{
    [Input("crop", "Crop", Required = true, Example = "butterhead lettuce", Help = "A name from the catalogue.")]
    public string Name { get; init; } = "";

    [Input("in", "In", Help = "Name of the bed, or several; all planted beds when left out.")]
    public IReadOnlyList<string> In { get; init; } = [];

    [Input("share", "Share of the bed", Unit = "%", Min = 1, Max = 100, Default = "100 %")]
    public Estimate Share { get; init; } = null!;

    [Input("plants", "Plants at a time", Unit = "", Min = 1, Max = 100000, Help = "When left out: the catalogue's spacing.")]
    public Estimate? Plants { get; init; }

    [Input("every", "Sown every", Unit = "week", Min = 0.1, Max = 60)]
    public Estimate? Every { get; init; }
}

[PlanPart("Feed", Help = "Its price stands under prices as fish feed.")]
public sealed record Feed
{
    [Input("protein", "Protein", Unit = "%", Min = 5, Max = 70, Default = "32 %",
        DefaultSource = "FAO Technical Paper 589 (2014), section 8.1: its feed ratios are for feed of 32 % protein")]
    public Estimate Protein { get; init; } = null!;

    [Input("each day", "Fed each day", Unit = "g/d", Min = 0, Max = 1e6, Help = "When you know it; else worked out from fish and beds.")]
    public Estimate? EachDay { get; init; }

    [Input("ratio", "Feed for each square metre planted", Unit = "g/m²/d", Min = 1, Max = 200,
        Help = "When left out, the catalogue's range for the crop: sources differ by six times.")]
    public Estimate? Ratio { get; init; }

    [Input("share of body weight", "Fed each day, share of body weight", Unit = "%/d", Min = 0.1, Max = 20,
        Help = "When left out, the catalogue's value for the species.")]
    public Estimate? ShareOfBodyWeight { get; init; }
}
