using Runnel.Engine.Figures;
using Runnel.Engine.Findings;
using Runnel.Engine.Plan;
using Runnel.Engine.Quantities;

namespace Runnel.Engine.Assess;

/// <summary>What one assessment works on and where it puts its figures and findings.</summary>
internal sealed class Desk
{
    private readonly Func<Estimate, double> _draw;
    private readonly Dictionary<string, Figure> _taken;
    private readonly Dictionary<(string Kind, string Name), string> _slugs = [];
    private readonly HashSet<string> _slugsTaken = new(StringComparer.Ordinal);
    private readonly HashSet<string> _said = new(StringComparer.Ordinal);

    /// <param name="plan">The grower's plan.</param>
    /// <param name="shelf">Rows of the catalogue.</param>
    /// <param name="draw">The value of an input in this draw.</param>
    /// <param name="taken">Inputs already taken in this draw, by path, shared with assessments of changed plans.</param>
    public Desk(LoopPlan plan, Shelf shelf, Func<Estimate, double> draw, Dictionary<string, Figure>? taken = null)
    {
        Plan = plan;
        Shelf = shelf;
        Currency = Unit.Money(plan.Currency);
        _draw = draw;
        _taken = taken ?? new(StringComparer.Ordinal);
    }

    public LoopPlan Plan { get; }

    public Shelf Shelf { get; }

    public FigureBook Book { get; } = new();

    public List<Finding> Findings { get; } = [];

    /// <summary>The plan's currency as a unit.</summary>
    public Unit Currency { get; }

    /// <summary>The value of an input in this draw.</summary>
    public Func<Estimate, double> Draw => _draw;

    /// <summary>Inputs taken so far, by path.</summary>
    public Dictionary<string, Figure> Taken => _taken;

    /// <summary>An input as a figure, at the value drawn for it: the one door through which inputs come in.</summary>
    public Figure Take(Estimate estimate)
    {
        if (!_taken.TryGetValue(estimate.From.Path, out var figure))
        {
            figure = Figure.Given(estimate, _draw(estimate));
            _taken.Add(estimate.From.Path, figure);
        }
        return figure;
    }

    /// <summary>An input or, when it is left out, an assumption with its source.</summary>
    public Figure TakeOr(Estimate? estimate, string path, string label, double low, double likely, double high, Unit unit, string source) =>
        Take(estimate ?? Assumed(path, label, low, likely, high, unit, source));

    /// <summary>An assumption: shown as a guess wherever it is used.</summary>
    public static Estimate Assumed(string path, string label, double low, double likely, double high, Unit unit, string source) =>
        Estimate.Of(low, high, unit, new Origin(path, label, OriginKind.Default, source), likely);

    /// <summary>A count as a figure with the name of what is counted; a count that the plan leaves at one is no assumption.</summary>
    public Figure Count(Estimate count, string things = "") => count.From.Kind == OriginKind.Default
        ? Figure.Constant(Take(count).Si, Unit.Count(things), count.From.Label, Source.Definition("one, since the plan names it once"))
        : Figure.Constant(Take(count).Si, Unit.Count(things), count.From.Label, Source.Definition($"your plan: {count.From.Path.Replace("/", " / ", StringComparison.Ordinal)}"));

    /// <summary>A figure of one thing for all alike: left as it is when there is only one.</summary>
    public Figure Times(Figure one, Figure count) => count.Si is 1 ? one : one * count;

    /// <summary>Names a figure and keeps it.</summary>
    public Figure Name(Figure figure, string id, string label, Unit unit) => Book.Name(figure, id, label, unit);

    /// <summary>A formula on figures; outside its valid range it says so and gives nothing.</summary>
    public Figure? Apply(Formula formula, params IReadOnlyList<Figure> arguments)
    {
        var faults = formula.Check(arguments);
        if (faults.Count == 0)
        {
            return formula.Apply(arguments);
        }
        foreach (var fault in faults)
        {
            Say(new Finding(
                "formula.out-of-range", Severity.Warning, formula.Name,
                Said.Of($"{fault.Input.Label} of {Amount.Of(fault.Value, fault.Input.Unit)}"),
                Said.Of($"{Amount.Of(fault.Input.Min, fault.Input.Unit)} to {Amount.Of(fault.Input.Max, fault.Input.Unit)}, where the rule holds"),
                "Figures that need this rule are left out. Check the value in the plan.",
                Source: formula.Sources[0].Text));
        }
        return null;
    }

    /// <summary>A formula on figures; outside its valid range it says so and gives up what rests on it, up to <see cref="Try"/>.</summary>
    public Figure Need(Formula formula, params IReadOnlyList<Figure> arguments) => Apply(formula, arguments) ?? throw new GaveUpException();

    /// <summary>A figure, or null when a formula that it needs does not hold or it divides by nothing: both are said as findings.</summary>
    public T? Try<T>(string what, Func<T> make)
        where T : class
    {
        try
        {
            return make();
        }
        catch (GaveUpException)
        {
            return null;
        }
        catch (ArithmeticException)
        {
            Say(new Finding(
                "figure.undefined", Severity.Warning, what, "a figure that divides by nothing or grows beyond all bounds", "amounts above nothing, and not absurd ones",
                "Look for a level, size, number or share of zero in this part of the plan. Figures that rest on it are left out."));
            return null;
        }
    }

    /// <summary>Keeps a finding; the same code about the same place is said once.</summary>
    public void Say(Finding finding)
    {
        if (_said.Add($"{finding.Code} {finding.Where} {finding.Path}"))
        {
            Findings.Add(finding);
        }
    }

    /// <summary>A grower's name as it stands in the ids of figures: "bed one" as "bed-one", and "bed-one-2" for another that reads alike.</summary>
    /// <param name="kind">Names of different kinds do not meet.</param>
    /// <param name="name">The grower's name.</param>
    public string SlugOf(string kind, string name)
    {
        if (_slugs.TryGetValue((kind, name), out var known))
        {
            return known;
        }
        var plain = Slug(name) is { Length: > 0 } some ? some : "unnamed";
        var slug = plain;
        for (var n = 2; !_slugsTaken.Add($"{kind} {slug}"); n++)
        {
            slug = $"{plain}-{n}";
        }
        _slugs.Add((kind, name), slug);
        return slug;
    }

    /// <summary>A word of our own as it stands in ids: "Pump and air" as "pump-and-air".</summary>
    public static string Slug(string name)
    {
        var slug = new System.Text.StringBuilder();
        foreach (var c in name.ToLowerInvariant())
        {
            if (char.IsLetterOrDigit(c))
            {
                slug.Append(c);
            }
            else if (slug.Length > 0 && slug[^1] != '-')
            {
                slug.Append('-');
            }
        }
        return slug.ToString().TrimEnd('-');
    }
}

/// <summary>A formula does not hold here: already said as a finding.</summary>
internal sealed class GaveUpException : Exception
{
    public GaveUpException()
        : base("a formula was used outside its range")
    {
    }

    public GaveUpException(string message)
        : base(message)
    {
    }

    public GaveUpException(string message, Exception innerException)
        : base(message, innerException)
    {
    }
}
