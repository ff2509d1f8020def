namespace Runnel.App.Report;

/// <summary>An assessment as one document for other programs: numbers unrounded, in the units asked for.</summary>
/// <remarks>Ids are the engine's and stay. A field that does not apply is left out.</remarks>
public sealed record PlanReport
{
    /// <summary>Which question it answers: check, cost or balance.</summary>
    public required string Report { get; init; }

    /// <summary>Name of the plan; left out when there is none.</summary>
    public string? Plan { get; init; }

    /// <summary>The file as it was named.</summary>
    public string? File { get; init; }

    /// <summary>metric or us.</summary>
    public required string Units { get; init; }

    /// <summary>Currency code of all money.</summary>
    public string? Currency { get; init; }

    /// <summary>How often the plan's ranges were drawn; low and high hold eight draws in ten.</summary>
    public required int Draws { get; init; }

    /// <summary>False while a part has no price: the totals are then too low.</summary>
    public bool? BuildComplete { get; init; }

    /// <summary>False while something that is used up has no price.</summary>
    public bool? RunComplete { get; init; }

    public required IReadOnlyList<FigureReport> Figures { get; init; }

    public required IReadOnlyList<FindingReport> Findings { get; init; }

    /// <summary>What was taken because the plan does not say.</summary>
    public required IReadOnlyList<AssumptionReport> Assumed { get; init; }

    public IReadOnlyList<PartReport>? Parts { get; init; }

    public IReadOnlyList<string>? Unpriced { get; init; }

    public IReadOnlyList<AlternativeReport>? Alternatives { get; init; }

    public IReadOnlyList<RunLineReport>? Running { get; init; }

    public IReadOnlyList<MonthReport>? Months { get; init; }

    /// <summary>Limits of the loop, the tightest first.</summary>
    public IReadOnlyList<LimitReport>? Limits { get; init; }
}

/// <summary>One figure.</summary>
/// <param name="Id">Stable name.</param>
/// <param name="Name">What it is called.</param>
/// <param name="Value">Likely value, unrounded.</param>
/// <param name="Unit">Unit of the three numbers; empty for a pure number.</param>
/// <param name="Low">Nine draws in ten exceed it; the value itself where nothing is open.</param>
/// <param name="High">One draw in ten exceeds it.</param>
/// <param name="Working">The sum in one line, rounded as it is printed.</param>
/// <param name="From">Ids of the figures that it is made from.</param>
/// <param name="Sources">What it rests on.</param>
public sealed record FigureReport(
    string Id, string Name, double Value, string Unit, double Low, double High, string Working, IReadOnlyList<string> From,
    IReadOnlyList<string> Sources);

/// <summary>One finding; severity is grave, warning or note.</summary>
public sealed record FindingReport(
    string Code, string Severity, string Where, string Saw, string Wanted, string Do, string? Path, string? Source);

/// <summary>A value that was assumed. <paramref name="OnlyUnderGlass"/> marks what serves the comparison under glass alone.</summary>
public sealed record AssumptionReport(
    string Path, string Name, double Value, string Unit, double Low, double High, string? Source, bool OnlyUnderGlass);

/// <summary>
/// One part of the build list. Packs are whole packs, left out when it is sold loose or by the piece; price-for is what one price buys;
/// price and cost are left out without a price.
/// </summary>
public sealed record PartReport(
    string Part, string Section, string For, double Quantity, string QuantityUnit, double? Packs, double? Price, string? PriceFor,
    string? PriceCurrency, string? Condition, string? Supplier, string? Seen, double? Cost, double? CostLow, double? CostHigh);

/// <summary>Another part that could do the job.</summary>
public sealed record AlternativeReport(string Part, string Use, double Cost, double Saves, string GivesUp, string? Source);

/// <summary>One part of the running bill; left out where it has no price or takes no electricity.</summary>
public sealed record RunLineReport(string Id, string Name, double? Month, double? Year, double? Share, double? EnergyYear);

/// <summary>One month of the running bill: month from 1 for January, energy in kWh.</summary>
public sealed record MonthReport(
    int Month, string Name, double Total, double Low, double High, double Energy, IReadOnlyList<MonthLineReport> Lines);

/// <summary>One part in one month: cost in the plan's currency, electricity in kWh.</summary>
public sealed record MonthLineReport(string Id, string Name, double? Cost, double? Energy);

/// <summary>A limit of the loop. <paramref name="Margin"/> is allowed ÷ fed − 1.</summary>
public sealed record LimitReport(string Id, string Name, double Allows, string Unit, double Margin);

/// <summary>Everything that cannot be taken as it stands.</summary>
public sealed record ErrorReport(IReadOnlyList<ErrorLine> Errors);

/// <summary>One error; line and column are 0 where no file is meant.</summary>
public sealed record ErrorLine(string File, int Line, int Column, string Where, string Read, string Problem, string Mend);
