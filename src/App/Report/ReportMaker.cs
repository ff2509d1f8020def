using Runnel.Engine.Assess;
using Runnel.Engine.Figures;
using Runnel.Engine.Findings;
using Runnel.Engine.Plan;
using Runnel.Engine.Quantities;
using Runnel.Files;

namespace Runnel.App.Report;

/// <summary>Writes assessments as documents for other programs.</summary>
public sealed class ReportMaker(Style style)
{
    private readonly Working _working = new(style);

    /// <summary>All figures, findings and assumptions.</summary>
    public PlanReport Check(Assessment assessment, string file) => Base("check", assessment, file);

    /// <summary>The same with the build list, the running bill and its months.</summary>
    public PlanReport Cost(Assessment assessment, string file)
    {
        ArgumentNullException.ThrowIfNull(assessment);
        return Base("cost", assessment, file) with
        {
            Parts = [.. assessment.Build.Lines.Select(Part)],
            Unpriced = [.. assessment.Build.Unpriced, .. assessment.Run.Unpriced],
            Alternatives = [.. assessment.Build.Alternatives.Select(a => new AlternativeReport(a.Part, a.Use, a.Cost.Si, a.Saves.Si, a.GivesUp, a.Source))],
            Running = [.. assessment.Run.Lines.Select(l => RunLine(l, assessment))],
            Months = [.. Enumerable.Range(0, 12).Select(m => Month(m, assessment.Run))],
        };
    }

    /// <summary>The same with the limits of the loop.</summary>
    public PlanReport Balance(Assessment assessment, string file)
    {
        ArgumentNullException.ThrowIfNull(assessment);
        return Base("balance", assessment, file) with
        {
            Limits = [.. assessment.Balance.Limits.Select(l => new LimitReport(
                l.Id, l.Label, In(l.Allows, l.Allows.Si), style.UnitOf(l.Allows).Symbol, l.Margin.Si))],
        };
    }

    /// <summary>A balance solved from one end.</summary>
    public PlanReport Balance(FigureBook book, int draws, string? plan = null, string? file = null)
    {
        ArgumentNullException.ThrowIfNull(book);
        return new()
        {
            Report = "balance",
            Plan = plan,
            File = file,
            Units = Words(style.System),
            Draws = draws,
            Figures = [.. book.All.Select(Figure)],
            Findings = [],
            Assumed = Assumed(book),
        };
    }

    /// <summary>One figure.</summary>
    public FigureReport Figure(Figure figure)
    {
        ArgumentNullException.ThrowIfNull(figure);
        return new(
            figure.Id ?? "", figure.Label ?? "", In(figure, figure.Si), style.UnitOf(figure).Symbol, In(figure, figure.Low), In(figure, figure.High),
            _working.Sentence(figure), [.. Working.Steps(figure).Where(s => s.Id is not null).Select(s => s.Id!)],
            [.. Working.Sources(figure).Select(s => s.Text)]);
    }

    /// <summary>One finding.</summary>
    public FindingReport Finding(Finding finding)
    {
        ArgumentNullException.ThrowIfNull(finding);
        return new(
            finding.Code, Words(finding.Severity), finding.Where, style.Print(finding.Saw), style.Print(finding.Wanted), style.Print(finding.Do),
            finding.Path, finding.Source);
    }

    /// <summary>Errors of a plan or of what was asked.</summary>
    public static ErrorReport Errors(IEnumerable<PlanError> errors) =>
        new([.. errors.Select(e => new ErrorLine(e.File, e.Line, e.Column, e.Where, e.Read, e.Problem, e.Mend))]);

    private static string Words(UnitSystem system) => system == UnitSystem.Us ? "us" : "metric";

    private static string Words(Severity severity) => severity switch
    {
        Severity.Grave => "grave",
        Severity.Warning => "warning",
        _ => "note",
    };

    private PlanReport Base(string report, Assessment assessment, string file)
    {
        ArgumentNullException.ThrowIfNull(assessment);
        return new()
        {
            Report = report,
            Plan = assessment.Plan.Name,
            File = file,
            Units = Words(style.System),
            Currency = assessment.Plan.Currency,
            Draws = assessment.Draws,
            BuildComplete = assessment.Build.Complete,
            RunComplete = assessment.Run.Unpriced.Count == 0,
            Figures = [.. assessment.Figures.All.Select(Figure)],
            Findings = [.. assessment.Findings.Select(Finding)],
            Assumed = Assumed(assessment.Figures),
        };
    }

    private List<AssumptionReport> Assumed(FigureBook book) =>
    [
        .. Assumption.Of(book).Select(a =>
        {
            var e = a.Estimate;
            var unit = style.UnitOf(e.Unit);
            return new AssumptionReport(
                e.From.Path, e.From.Label, unit.FromSi(e.Likely), unit.Symbol, unit.FromSi(e.Low), unit.FromSi(e.High), e.From.Source, a.OnlyUnderGlass);
        }),
    ];

    private double In(Figure figure, double si) => style.UnitOf(figure).FromSi(si);

    private PartReport Part(PartLine line)
    {
        var unit = style.UnitOf(line.Quantity);
        return new(
            line.Part, line.Section.Title(), line.For, unit.FromSi(line.Quantity.Si), unit.Symbol, line.Packs?.Si,
            line.Price is { Condition: not Condition.Owned } p ? p.Amount.Likely : null, line.Price is null ? null : PriceWords.PriceFor(line.Price),
            line.Price?.Currency, line.Price?.Condition.ToString().ToLowerInvariant(), line.Price?.Supplier, line.Price?.Seen?.ToString("yyyy-MM-dd"),
            line.Cost?.Si, line.Cost?.Low, line.Cost?.High);
    }

    private static RunLineReport RunLine(RunLine line, Assessment assessment)
    {
        var total = assessment.Figures["run.year.total"].Si;
        return new(
            line.Id, line.Label, line.Month?.Si, line.Year?.Si, line.Year is { } year && total > 0 ? year.Si / total : null,
            line.Energy.Count == 0 ? null : line.Energy.Sum(e => Units.KilowattHour.FromSi(e.Si)));
    }

    private static MonthReport Month(int month, RunBill run)
    {
        var total = run.Months[month];
        return new(
            month + 1, CalendarDay.MonthNames[month], total.Si, total.Low, total.High,
            run.MonthEnergy.Count == 0 ? 0 : Units.KilowattHour.FromSi(run.MonthEnergy[month].Si),
            [.. run.Lines.Select(l => new MonthLineReport(
                l.Id, l.Label, l.Months.Count == 0 ? null : l.Months[month].Si, l.Energy.Count == 0 ? null : Units.KilowattHour.FromSi(l.Energy[month].Si)))]);
    }
}
