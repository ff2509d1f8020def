using Runnel.Engine.Quantities;

namespace Runnel.Engine.Figures;

/// <summary>
/// One published rule as it stands in the formulary: what goes in, what comes out, the equation, its source, its valid range and
/// how sure we are of it. The arithmetic itself is a static method beside it; this describes it once for the assessment, the quick
/// sum, the documentation and the tests.
/// </summary>
public sealed record Formula
{
    /// <summary>Stable name, the result first: <c>oxygen-saturation</c>.</summary>
    public required string Id { get; init; }

    /// <summary>What it gives, in words.</summary>
    public required string Name { get; init; }

    /// <summary>The subject it belongs to: the folder, the page of docs/science and the heading in lists, such as "Water".</summary>
    public required string Subject { get; init; }

    /// <summary>The equation with the letters of the source, in plain text.</summary>
    public required string Equation { get; init; }

    /// <summary>What goes in, in the order of <see cref="Compute"/>.</summary>
    public required IReadOnlyList<FormulaInput> Inputs { get; init; }

    /// <summary>What comes out.</summary>
    public required FormulaOutput Output { get; init; }

    /// <summary>Published sources.</summary>
    public required IReadOnlyList<Source> Sources { get; init; }

    /// <summary>How sure we are: a test refuses a level without its proof.</summary>
    public required Confidence Confidence { get; init; }

    /// <summary>Error that the source claims, or what is known of it.</summary>
    public required string Error { get; init; }

    /// <summary>When not to use it.</summary>
    public string? NotFor { get; init; }

    /// <summary>The rule on plain numbers, each in the unit of its <see cref="Inputs"/>, result in the unit of <see cref="Output"/>.</summary>
    public required Func<IReadOnlyList<double>, double> Compute { get; init; }

    /// <summary>The arguments that lie outside their valid range; empty when the formula may be used.</summary>
    public IReadOnlyList<RangeFault> Check(params IReadOnlyList<Figure> arguments)
    {
        var values = InUnits(arguments);
        var faults = new List<RangeFault>();
        for (var i = 0; i < values.Length; i++)
        {
            // A hair of tolerance for what unit conversion does to a limit.
            var slack = 1e-9 * Math.Max(1, Math.Abs(values[i]));
            if (!(values[i] >= Inputs[i].Min - slack && values[i] <= Inputs[i].Max + slack))
            {
                faults.Add(new(this, Inputs[i], values[i]));
            }
        }
        return faults;
    }

    /// <summary>The formula on figures.</summary>
    /// <exception cref="UnitMismatchException">An argument measures something else.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument lies outside the valid range.</exception>
    public Figure Apply(params IReadOnlyList<Figure> arguments)
    {
        if (Check(arguments) is [var fault, ..])
        {
            throw new ArgumentOutOfRangeException(nameof(arguments), fault.Value, fault.ToString());
        }
        var values = InUnits(arguments);
        for (var i = 0; i < values.Length; i++)
        {
            values[i] = Math.Clamp(values[i], Inputs[i].Min, Inputs[i].Max);
        }
        return Figure.FromFormula(this, arguments, Output.Unit.ToSi(Compute(values)));
    }

    /// <summary>What is taken for an input that nobody gives: its default, an assumption with its source.</summary>
    /// <exception cref="InvalidOperationException">That input has no default.</exception>
    public Estimate Assumed(int input)
    {
        var described = Inputs[input];
        var value = described.Default ?? throw new InvalidOperationException($"{Id}: {described.Id} has no default");
        return Estimate.Of(value, described.Unit, new Origin(
            $"formula/{Id}/{described.Id}", described.Label, OriginKind.Default, described.DefaultSource ?? Sources[0].Text));
    }

    private double[] InUnits(IReadOnlyList<Figure> arguments)
    {
        if (arguments.Count != Inputs.Count)
        {
            throw new ArgumentException($"{Id} takes {Inputs.Count} inputs, not {arguments.Count}", nameof(arguments));
        }
        var values = new double[arguments.Count];
        for (var i = 0; i < values.Length; i++)
        {
            if (arguments[i].Dimension != Inputs[i].Unit.Dimension)
            {
                throw new UnitMismatchException(
                    $"{Id}: {Inputs[i].Id} is {Inputs[i].Unit.Dimension}, but {arguments[i].Label ?? "the argument"} is {arguments[i].Dimension}");
            }
            values[i] = Inputs[i].Unit.FromSi(arguments[i].Si);
        }
        return values;
    }
}

/// <summary>One input of a formula.</summary>
/// <param name="Id">Stable name, used by the quick sum: <c>temperature</c>.</param>
/// <param name="Label">What it is.</param>
/// <param name="Unit">Unit that the rule is written in.</param>
/// <param name="Min">Least value for which the rule holds, in that unit.</param>
/// <param name="Max">Greatest value for which the rule holds.</param>
/// <param name="Default">Value that a quick sum takes when none is given, or null.</param>
/// <param name="DefaultSource">Where that default comes from.</param>
public sealed record FormulaInput(
    string Id, string Label, Unit Unit, double Min, double Max, double? Default = null, string? DefaultSource = null);

/// <summary>What a formula gives.</summary>
public sealed record FormulaOutput(string Id, string Label, Unit Unit);

/// <summary>An argument outside the range for which a rule holds.</summary>
public sealed record RangeFault(Formula Formula, FormulaInput Input, double Value)
{
    /// <inheritdoc />
    public override string ToString() =>
        $"{Formula.Name} holds for {Input.Label.ToLowerInvariant()} from {Input.Min:G6} to {Input.Max:G6} {Input.Unit.Symbol}, not {Value:G6}";
}

/// <summary>How sure we are of a rule.</summary>
public enum Confidence
{
    /// <summary>Stands in a textbook or handbook; nothing else checked.</summary>
    Textbook = 1,

    /// <summary>Reproduces a published worked example or table.</summary>
    PublishedExample = 2,

    /// <summary>Agrees with independent measurements.</summary>
    Measured = 3,

    /// <summary>Agrees with a grower's logbook.</summary>
    Logbook = 4,
}
