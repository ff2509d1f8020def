using Runnel.Engine.Figures;

namespace Runnel.App.Report;

/// <summary>One rule of the formulary.</summary>
public sealed record FormulaReport(
    string Id, string Name, string Subject, string Equation, IReadOnlyList<FormulaInputReport> Inputs, FormulaOutputReport Output,
    IReadOnlyList<string> Sources, int Confidence, string ConfidenceWords, string Error, string? NotFor)
{
    /// <summary>A formula as it stands, in the units that it is written in.</summary>
    public static FormulaReport Of(Formula formula)
    {
        ArgumentNullException.ThrowIfNull(formula);
        return new(
            formula.Id, formula.Name, formula.Subject, formula.Equation,
            [.. formula.Inputs.Select(i => new FormulaInputReport(i.Id, i.Label, i.Unit.Symbol, i.Min, i.Max, i.Default, i.DefaultSource))],
            new(formula.Output.Id, formula.Output.Label, formula.Output.Unit.Symbol), [.. formula.Sources.Select(s => s.Text)],
            (int)formula.Confidence, Sure(formula.Confidence), formula.Error, formula.NotFor);
    }

    /// <summary>How sure we are, in words.</summary>
    public static string Sure(Confidence confidence) => confidence switch
    {
        Engine.Figures.Confidence.Textbook => "textbook only",
        Engine.Figures.Confidence.PublishedExample => "matches a published example",
        Engine.Figures.Confidence.Measured => "matches independent measurements",
        Engine.Figures.Confidence.Logbook => "matches a grower's logbook",
        _ => throw new ArgumentOutOfRangeException(nameof(confidence), confidence, "unknown confidence"),
    };
}

/// <summary>One input; least and greatest are where the rule holds, in its unit.</summary>
public sealed record FormulaInputReport(string Id, string Label, string Unit, double Min, double Max, double? Default, string? DefaultSource);

/// <summary>What a rule gives.</summary>
public sealed record FormulaOutputReport(string Id, string Label, string Unit);

/// <summary>The whole formulary.</summary>
public sealed record FormularyReport(IReadOnlyList<FormulaReport> Formulas);

/// <summary>One quick sum.</summary>
public sealed record SumReport(FormulaReport Formula, IReadOnlyList<SumInputReport> Inputs, IReadOnlyList<FigureReport> Figures);

/// <summary>One input of a quick sum. <paramref name="Assumed"/> is true where the rule's default was taken.</summary>
public sealed record SumInputReport(string Id, string Label, double Value, string Unit, bool Assumed, string? Source);
