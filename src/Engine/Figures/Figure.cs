using Runnel.Engine.Quantities;

namespace Runnel.Engine.Figures;

/// <summary>
/// A number that can be opened: its unit, its value, its range and the figures and rules that made it. Figures are combined with
/// ordinary arithmetic; units are checked when they meet.
/// </summary>
public sealed class Figure
{
    private Figure(double si, Dimension dimension, How how, Unit? unit = null, string? label = null)
    {
        if (!double.IsFinite(si))
        {
            throw new ArithmeticException($"{label ?? "a figure"} is not a finite number");
        }
        Si = si;
        Dimension = dimension;
        How = how;
        Unit = unit;
        Label = label;
        Low = High = si;
    }

    /// <summary>Stable name such as <c>energy.year.lamps</c>; null for an unnamed step.</summary>
    public string? Id { get; private init; }

    /// <summary>What it is called on screen.</summary>
    public string? Label { get; }

    /// <summary>Value in SI (°C for temperatures on a scale).</summary>
    public double Si { get; }

    /// <summary>What it measures.</summary>
    public Dimension Dimension { get; }

    /// <summary>The metric unit it is best printed in; null for an unnamed step.</summary>
    public Unit? Unit { get; }

    /// <summary>How it was made.</summary>
    public How How { get; }

    /// <summary>SI value that nine draws in ten exceed, once the plan's ranges have been drawn; the value itself before.</summary>
    public double Low { get; private set; }

    /// <summary>SI value that one draw in ten exceeds.</summary>
    public double High { get; private set; }

    /// <summary>True once draws have shown that the value may differ.</summary>
    public bool IsRange => High > Low;

    /// <summary>Value in its own unit.</summary>
    public double Value => Unit is null ? Si : Unit.FromSi(Si);

    /// <summary>The figures it was made from.</summary>
    public IReadOnlyList<Figure> Parents => How.Parents;

    /// <summary>A number from the plan, a default or the catalogue, at the value drawn for it.</summary>
    public static Figure Given(Estimate estimate, double si)
    {
        ArgumentNullException.ThrowIfNull(estimate);
        return new(si, estimate.Unit.Dimension, new Given(estimate), estimate.Unit, estimate.From.Label);
    }

    /// <summary>A number given as its most likely value.</summary>
    public static Figure Given(Estimate estimate) => Given(estimate, (estimate ?? throw new ArgumentNullException(nameof(estimate))).Likely);

    /// <summary>A definition, a count made from the plan, or a constant, with what says so.</summary>
    public static Figure Constant(double value, Unit unit, string label, Source source)
    {
        ArgumentNullException.ThrowIfNull(unit);
        return new(unit.ToSi(value), unit.Dimension, new Fixed(source), unit, label);
    }

    /// <summary>The result of a longer computation (an hour-by-hour sum) that says in words what it did.</summary>
    public static Figure Computed(double si, Unit unit, string label, string method, IReadOnlyList<Figure> from, params IReadOnlyList<Source> sources)
    {
        ArgumentNullException.ThrowIfNull(unit);
        return new(si, unit.Dimension, new Procedure(method, from, sources), unit, label);
    }

    /// <summary>The result of a formula of the formulary. Called by <see cref="Formula.Apply"/>.</summary>
    internal static Figure FromFormula(Formula formula, IReadOnlyList<Figure> arguments, double si) =>
        new(si, formula.Output.Unit.Dimension, new Applied(formula, arguments), formula.Output.Unit, formula.Output.Label);

    /// <summary>The same figure with a stable name, a label and the unit it is printed in.</summary>
    /// <exception cref="UnitMismatchException">The unit does not measure what the figure is.</exception>
    public Figure As(string id, string label, Unit unit)
    {
        ArgumentNullException.ThrowIfNull(unit);
        if (unit.Dimension != Dimension)
        {
            throw new UnitMismatchException($"{id} is {Dimension}, not {unit.Dimension} ({unit.Symbol})");
        }
        return new(Si, Dimension, How, unit, label) { Id = id };
    }

    /// <summary>The same value with a label and a unit, for a step that a reader should see by name.</summary>
    public Figure Called(string label, Unit unit) => As(null!, label, unit);

    /// <summary>Sets the range that draws have shown.</summary>
    internal void SetRange(double low, double high) => (Low, High) = (low, high);

    public static Figure operator +(Figure a, Figure b) => Sum(a, b);

    public static Figure operator -(Figure a, Figure b)
    {
        ArgumentNullException.ThrowIfNull(a);
        ArgumentNullException.ThrowIfNull(b);
        var dimension = Dimension.Subtract(a.Dimension, b.Dimension);
        return new(a.Si - b.Si, dimension, new Difference(a, b), UnitFor(dimension, [a, b]));
    }

    public static Figure operator *(Figure a, Figure b)
    {
        ArgumentNullException.ThrowIfNull(a);
        ArgumentNullException.ThrowIfNull(b);
        IReadOnlyList<Figure> factors = a is { Label: null, How: Product p } ? [.. p.Factors, b] : [a, b];
        return new(a.Si * b.Si, a.Dimension * b.Dimension, new Product(factors));
    }

    public static Figure operator /(Figure a, Figure b)
    {
        ArgumentNullException.ThrowIfNull(a);
        ArgumentNullException.ThrowIfNull(b);
        return new(a.Si / b.Si, a.Dimension / b.Dimension, new Quotient(a, b));
    }

    public static Figure Add(Figure left, Figure right) => left + right;

    public static Figure Subtract(Figure left, Figure right) => left - right;

    public static Figure Multiply(Figure left, Figure right) => left * right;

    public static Figure Divide(Figure left, Figure right) => left / right;

    /// <summary>The sum of one or more figures of one dimension.</summary>
    public static Figure Sum(params IReadOnlyList<Figure> terms)
    {
        ArgumentNullException.ThrowIfNull(terms);
        if (terms.Count == 0)
        {
            throw new ArgumentException("a sum needs at least one figure", nameof(terms));
        }
        if (terms.Count == 1)
        {
            return terms[0];
        }
        var si = terms[0].Si;
        var dimension = terms[0].Dimension;
        for (var i = 1; i < terms.Count; i++)
        {
            dimension = Dimension.Add(dimension, terms[i].Dimension);
            si += terms[i].Si;
        }
        return new(si, dimension, new Total(terms), UnitFor(dimension, terms));
    }

    // Two temperatures in °F differ by kelvins, not by degrees on that scale: a unit is kept only where it measures the result.
    private static Unit? UnitFor(Dimension dimension, IReadOnlyList<Figure> terms) =>
        terms.FirstOrDefault(t => t.Unit?.Dimension == dimension)?.Unit;

    /// <summary>The smallest of some figures: what limits.</summary>
    public static Figure Smallest(params IReadOnlyList<Figure> figures) => Pick(figures, largest: false);

    /// <summary>The largest of some figures.</summary>
    public static Figure Largest(params IReadOnlyList<Figure> figures) => Pick(figures, largest: true);

    /// <summary>The next whole number up of a pure number: whole packs.</summary>
    public Figure RoundUp(string things)
    {
        if (Dimension != Dimension.None)
        {
            throw new UnitMismatchException($"{Label} is {Dimension}: only a pure number can be rounded up");
        }
        // A hair of tolerance, so that 3.0000000001 packs of arithmetic noise are 3 packs.
        return new(Math.Ceiling(Si - 1e-9), Dimension, new Rounded(this), Unit.Count(things));
    }

    private static Figure Pick(IReadOnlyList<Figure> figures, bool largest)
    {
        ArgumentNullException.ThrowIfNull(figures);
        if (figures.Count == 0)
        {
            throw new ArgumentException("needs at least one figure", nameof(figures));
        }
        var best = figures[0];
        foreach (var figure in figures.Skip(1))
        {
            if (figure.Dimension != best.Dimension)
            {
                throw new UnitMismatchException($"cannot compare {best.Dimension} with {figure.Dimension}");
            }
            if (largest ? figure.Si > best.Si : figure.Si < best.Si)
            {
                best = figure;
            }
        }
        return new(best.Si, best.Dimension, new Extreme(figures, best, largest), best.Unit);
    }

    /// <inheritdoc />
    public override string ToString() => $"{Label ?? Id ?? "figure"} = {Value:G6} {Unit?.Symbol ?? Dimension.ToString()}";
}
