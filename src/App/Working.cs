using Runnel.Engine.Figures;
using Runnel.Engine.Quantities;

namespace Runnel.App;

/// <summary>Writes how a figure was made, as a person would write the sum.</summary>
/// <remarks>A product of products reads as a chain: <c>18 lamps × 40 W = 720 W; × 14 h/d = 10.08 kWh/d</c>.</remarks>
public sealed class Working(Style style)
{
    private const int LongSum = 12;

    /// <summary>The sum in one line.</summary>
    public string Sentence(Figure figure)
    {
        ArgumentNullException.ThrowIfNull(figure);
        return figure.How switch
        {
            Given given => SayGiven(figure, given),
            Fixed => style.Write(figure),
            Product product => Chain(product.Factors, "×", figure),
            Quotient quotient => Chain([quotient.Dividend, quotient.Divisor], "÷", figure),
            Total total => Equals(SayTotal(total), figure),
            Difference difference => Equals($"{Named(difference.From)} − {Named(difference.Take)}", figure),
            Extreme extreme => $"the {(extreme.Largest ? "largest" : "smallest")} of {string.Join(", ", extreme.Of.Select(Named))}: {style.Write(figure)}",
            Rounded rounded => $"{Term(rounded.Of)} rounded up = {style.Write(figure)}",
            Applied applied => Equals($"{applied.Formula.Name} with {Arguments(applied)}", figure),
            Procedure procedure => $"{procedure.Method}: {style.Write(figure)}",
            _ => throw new InvalidOperationException($"no words for {figure.How.GetType().Name}"),
        };
    }

    /// <summary>What this number rests on, up to the next figure with a name of its own.</summary>
    public static IReadOnlyList<Source> Sources(Figure figure)
    {
        ArgumentNullException.ThrowIfNull(figure);
        var found = new List<Source>();
        Collect(figure, isRoot: true);
        return [.. found.Distinct()];

        void Collect(Figure at, bool isRoot)
        {
            if (!isRoot && at.Id is not null)
            {
                return;
            }
            found.AddRange(at.How.Sources);
            foreach (var parent in at.Parents)
            {
                Collect(parent, isRoot: false);
            }
        }
    }

    /// <summary>The steps under a figure that a reader can open next: its parents, through steps that have no name.</summary>
    public static IReadOnlyList<Figure> Steps(Figure figure)
    {
        ArgumentNullException.ThrowIfNull(figure);
        var found = new List<Figure>();
        foreach (var parent in figure.Parents)
        {
            if (parent.Label is null)
            {
                found.AddRange(Steps(parent));
            }
            else
            {
                found.Add(parent);
            }
        }
        return [.. found.Distinct()];
    }

    /// <summary>All inputs under a figure, each once.</summary>
    public static IReadOnlyList<Estimate> Inputs(Figure figure)
    {
        ArgumentNullException.ThrowIfNull(figure);
        var found = new Dictionary<string, Estimate>(StringComparer.Ordinal);
        var seen = new HashSet<Figure>(ReferenceEqualityComparer.Instance);
        Collect(figure);
        return [.. found.Values];

        void Collect(Figure at)
        {
            if (!seen.Add(at))
            {
                return;
            }
            if (at.How is Given given)
            {
                found.TryAdd(given.Estimate.From.Path, given.Estimate);
            }
            foreach (var parent in at.Parents)
            {
                Collect(parent);
            }
        }
    }

    /// <summary>Who said a given number, in words.</summary>
    public static string Said(Origin origin)
    {
        ArgumentNullException.ThrowIfNull(origin);
        return origin.Kind switch
        {
            OriginKind.Plan => "from your plan",
            OriginKind.Default => "assumed, not in your plan",
            OriginKind.Catalogue => "from the catalogue",
            OriginKind.Constant => "constant",
            _ => throw new ArgumentOutOfRangeException(nameof(origin), origin.Kind, "unknown kind of origin"),
        };
    }

    private string SayGiven(Figure figure, Given given)
    {
        var estimate = given.Estimate;
        var range = estimate.IsRange
            ? $" ({style.Write(new Amount(estimate.Low, estimate.Unit))} to {style.Write(new Amount(estimate.High, estimate.Unit))})"
            : "";
        return $"{style.Write(figure)}{range}, {Said(estimate.From)}";
    }

    private string Chain(IReadOnlyList<Figure> operands, string sign, Figure result)
    {
        var first = operands[0];
        var goesOn = first is { Label: not null, How: Product or Quotient };
        var head = goesOn ? Sentence(first) + ";" : Term(first);
        var tail = string.Concat(operands.Skip(1).Select(o => $" {sign} {Term(o)}"));
        return $"{head}{tail} = {style.Write(result)}";
    }

    private string SayTotal(Total total) =>
        total.Terms.Count > LongSum
            ? $"sum of {total.Terms.Count}: {Named(total.Terms[0])} + {Named(total.Terms[1])} + … + {Named(total.Terms[^1])}"
            : string.Join(" + ", total.Terms.Select(Named));

    private string Arguments(Applied applied)
    {
        var said = applied.Formula.Inputs.Zip(applied.Arguments, (input, argument) => $"{input.Label.ToLowerInvariant()} {style.Write(argument)}");
        return string.Join(", ", said);
    }

    /// <summary>A number among factors: bare, or its own sum in brackets when it has no name.</summary>
    private string Term(Figure figure) => figure switch
    {
        { Label: null, How: Total total } => $"({string.Join(" + ", total.Terms.Select(Term))})",
        { Label: null, How: Difference difference } => $"({Term(difference.From)} − {Term(difference.Take)})",
        { Label: null, How: Product product } => string.Join(" × ", product.Factors.Select(Term)),
        { Label: null, How: Quotient quotient } => $"{Term(quotient.Dividend)} ÷ {Term(quotient.Divisor)}",
        _ => style.Write(figure),
    };

    /// <summary>A number among terms, with its name.</summary>
    private string Named(Figure figure) => figure switch
    {
        // Parts carry the grower's own names: their capitals stay.
        { Label: { } label, Id: { } id } when id.StartsWith("part.", StringComparison.Ordinal) => $"{label} {style.Write(figure)}",
        { Label: { } label } => $"{Short(label)} {style.Write(figure)}",
        _ => Term(figure),
    };

    private string Equals(string sum, Figure figure) => $"{sum} = {style.Write(figure)}";

    private static string Short(string label) => label.Length > 0 && char.IsUpper(label[0]) && (label.Length == 1 || !char.IsUpper(label[1]))
        ? char.ToLowerInvariant(label[0]) + label[1..]
        : label;
}
