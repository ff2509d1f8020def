using Runnel.Engine.Figures;
using Runnel.Engine.Plan;

namespace Runnel.App.Report;

/// <summary>How one number came about, opened down to what was given.</summary>
/// <param name="Id">Stable name, or null for a step without one.</param>
/// <param name="Name">What it is called.</param>
/// <param name="Value">Likely value, unrounded.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="Low">Nine draws in ten exceed it.</param>
/// <param name="High">One draw in ten exceeds it.</param>
/// <param name="Sentence">The sum in one line.</param>
/// <param name="Equation">The equation of the formula used, or null.</param>
/// <param name="Sure">How sure we are of that formula, or null.</param>
/// <param name="Sources">What this step itself rests on.</param>
/// <param name="Closed">Why its steps are left out: "above", they are shown where it first came; "alike", one like it is opened beside it.</param>
/// <param name="Steps">What it is made from.</param>
public sealed record WorkingTree(
    string? Id, string Name, double Value, string Unit, double Low, double High, string Sentence, string? Equation, string? Sure,
    IReadOnlyList<string> Sources, string? Closed, IReadOnlyList<WorkingTree> Steps)
{
    public const string Above = "above";
    public const string Alike = "alike";

    /// <summary>Opens a figure.</summary>
    public static WorkingTree Of(Figure figure, Style style)
    {
        ArgumentNullException.ThrowIfNull(figure);
        ArgumentNullException.ThrowIfNull(style);
        var working = new Working(style);
        var seen = new HashSet<string>(StringComparer.Ordinal);
        return Open(figure, alike: false);

        WorkingTree Open(Figure at, bool alike)
        {
            var unit = style.UnitOf(at);
            var sentence = working.Sentence(at);
            var applied = at.How as Applied;
            var children = Working.Steps(at);
            var closed = children.Count == 0 ? null : alike ? Alike : seen.Add($"{at.Label} {sentence}") ? null : Above;
            var months = at.How is Total && children.Count == CalendarDay.MonthNames.Count && children.Zip(CalendarDay.MonthNames).All(p =>
                p.First.Label?.Contains(p.Second, StringComparison.Ordinal) == true);
            return new(
                at.Id, at.Label ?? "", unit.FromSi(at.Si), unit.Symbol, unit.FromSi(at.Low), unit.FromSi(at.High), sentence,
                applied?.Formula.Equation, applied is null ? null : FormulaReport.Sure(applied.Formula.Confidence),
                [.. OwnSources(at).Select(s => s.Text).Distinct()], closed,
                closed is null ? [.. children.Select((c, i) => Open(c, months && i > 0))] : []);
        }
    }

    /// <summary>Sources of a step and of the unnamed steps that are written into its sentence.</summary>
    private static IEnumerable<Source> OwnSources(Figure figure) =>
        figure.How.Sources.Concat(figure.Parents.Where(p => p.Label is null).SelectMany(OwnSources));
}
