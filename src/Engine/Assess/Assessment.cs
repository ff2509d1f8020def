using Runnel.Engine.Figures;
using Runnel.Engine.Findings;
using Runnel.Engine.Levels;
using Runnel.Engine.Plan;

namespace Runnel.Engine.Assess;

/// <summary>All figures and findings of one plan.</summary>
public sealed record Assessment
{
    public required LoopPlan Plan { get; init; }

    /// <summary>Every named figure, in the order of the report.</summary>
    public required FigureBook Figures { get; init; }

    /// <summary>The gravest first.</summary>
    public required IReadOnlyList<Finding> Findings { get; init; }

    /// <summary>What it costs to build.</summary>
    public required BuildBill Build { get; init; }

    /// <summary>What it costs to run, by month and part.</summary>
    public required RunBill Run { get; init; }

    /// <summary>Feed, fish, beds, filter, oxygen against each other.</summary>
    public required Balance Balance { get; init; }

    /// <summary>Where the water stands in every case a grower must fear; null while the plan has no pipes or heights that cannot be.</summary>
    public LevelStudy? Levels { get; init; }

    /// <summary>How many times the plan's ranges were drawn; 0 when only the likely values were computed.</summary>
    public int Draws { get; init; }
}

/// <summary>The build list.</summary>
/// <param name="Sections">Sections in print order, each with its lines; empty sections left out.</param>
/// <param name="Unpriced">Names of parts without a price: while there are any, the total is incomplete.</param>
/// <param name="Alternatives">Other parts that could do the job.</param>
public sealed record BuildBill(
    IReadOnlyList<BuildGroup> Sections, IReadOnlyList<string> Unpriced, IReadOnlyList<AlternativePart> Alternatives)
{
    /// <summary>Every line.</summary>
    public IEnumerable<PartLine> Lines => Sections.SelectMany(s => s.Lines);

    /// <summary>False while a part has no price.</summary>
    public bool Complete => Unpriced.Count == 0;
}

/// <summary>One section of the build list. <paramref name="Total"/> is null while nothing in it has a price.</summary>
public sealed record BuildGroup(BuildSection Section, IReadOnlyList<PartLine> Lines, Figure? Total);

/// <summary>One part.</summary>
/// <param name="Part">Its name, as prices use it.</param>
/// <param name="Section">Where it stands in the list.</param>
/// <param name="Quantity">How much the plan needs, with its working.</param>
/// <param name="Packs">How many packs are bought, or null when it is sold loose or has no price.</param>
/// <param name="Price">The price taken, or null.</param>
/// <param name="Cost">Quantity or packs × price, or null without a price; nothing for owned parts.</param>
/// <param name="For">What in the plan asks for it: "bed one, bed two".</param>
/// <param name="Life">How long it lasts, or null when it is not put aside for.</param>
public sealed record PartLine(
    string Part, BuildSection Section, Figure Quantity, Figure? Packs, Price? Price, Figure? Cost, string For, Figure? Life);

/// <summary>Another part for a line, with what it saves (negative when it costs more) and what is given up.</summary>
public sealed record AlternativePart(string Part, string Use, Figure Cost, Figure Saves, string GivesUp, string? Source);

/// <summary>The running bill.</summary>
/// <param name="Lines">By part, in print order.</param>
/// <param name="Months">Total of each month from January.</param>
/// <param name="MonthEnergy">Electricity of each month from January.</param>
/// <param name="Unpriced">What is used and has no price.</param>
public sealed record RunBill(
    IReadOnlyList<RunLine> Lines, IReadOnlyList<Figure> Months, IReadOnlyList<Figure> MonthEnergy, IReadOnlyList<string> Unpriced);

/// <summary>One part of the running bill.</summary>
/// <param name="Id">Stable name: lamps, pumps, air, heater, fans, dehumidifier, fixed, feed, fish, seed, additives, tests, water, wear.</param>
/// <param name="Label">On screen.</param>
/// <param name="Months">Cost of each month from January; empty when it has no price.</param>
/// <param name="Energy">Electricity of each month, or empty.</param>
/// <param name="Year">Cost of the year, or null when it has no price.</param>
/// <param name="Month">Mean month: opens to the sum as a person would write it; null when it has no price.</param>
public sealed record RunLine(
    string Id, string Label, IReadOnlyList<Figure> Months, IReadOnlyList<Figure> Energy, Figure? Year, Figure? Month);

/// <summary>What limits the loop.</summary>
/// <param name="Limits">Each limit with the feed it allows, the tightest first.</param>
/// <param name="Feed">Feed each day that the plan comes to.</param>
/// <param name="FeedFrom">Which end it was worked out from.</param>
public sealed record Balance(IReadOnlyList<BalanceLimit> Limits, Figure? Feed, BalanceEnd FeedFrom);

/// <summary>One limit of the loop.</summary>
/// <param name="Id">beds, filter, oxygen, stocking, fish.</param>
/// <param name="Label">On screen.</param>
/// <param name="Allows">Feed each day that it allows.</param>
/// <param name="Margin">Allowed ÷ fed − 1: negative when it is overrun.</param>
public sealed record BalanceLimit(string Id, string Label, Figure Allows, Figure Margin);

/// <summary>The end from which a balance is solved.</summary>
public enum BalanceEnd
{
    /// <summary>The plan states the feed.</summary>
    Feed,

    /// <summary>From what the fish eat.</summary>
    Fish,

    /// <summary>From what the beds can use.</summary>
    Beds,

    /// <summary>From what the tank can hold.</summary>
    Tank,
}
