using Runnel.Engine.Quantities;

namespace Runnel.Engine.Figures;

/// <summary>How a figure was made: one step of arithmetic, a formula, or a number that was given.</summary>
public abstract record How
{
    /// <summary>The figures it was made from.</summary>
    public abstract IReadOnlyList<Figure> Parents { get; }

    /// <summary>What this step rests on; empty for plain arithmetic.</summary>
    public virtual IReadOnlyList<Source> Sources => [];
}

/// <summary>Given by the plan, a default or the catalogue.</summary>
public sealed record Given(Estimate Estimate) : How
{
    public override IReadOnlyList<Figure> Parents => [];

    public override IReadOnlyList<Source> Sources => Estimate.From.Source is { } text ? [new Source(text)] : [];
}

/// <summary>A definition or a constant.</summary>
public sealed record Fixed(Source Source) : How
{
    public override IReadOnlyList<Figure> Parents => [];

    public override IReadOnlyList<Source> Sources => [Source];
}

/// <summary>a × b × …</summary>
public sealed record Product(IReadOnlyList<Figure> Factors) : How
{
    public override IReadOnlyList<Figure> Parents => Factors;
}

/// <summary>a ÷ b.</summary>
public sealed record Quotient(Figure Dividend, Figure Divisor) : How
{
    public override IReadOnlyList<Figure> Parents => [Dividend, Divisor];
}

/// <summary>a + b + …</summary>
public sealed record Total(IReadOnlyList<Figure> Terms) : How
{
    public override IReadOnlyList<Figure> Parents => Terms;
}

/// <summary>a − b.</summary>
public sealed record Difference(Figure From, Figure Take) : How
{
    public override IReadOnlyList<Figure> Parents => [From, Take];
}

/// <summary>The smallest or largest of some.</summary>
public sealed record Extreme(IReadOnlyList<Figure> Of, Figure Picked, bool Largest) : How
{
    public override IReadOnlyList<Figure> Parents => Of;
}

/// <summary>Rounded up to a whole number.</summary>
public sealed record Rounded(Figure Of) : How
{
    public override IReadOnlyList<Figure> Parents => [Of];
}

/// <summary>A formula of the formulary, with its arguments in the order of its inputs.</summary>
public sealed record Applied(Formula Formula, IReadOnlyList<Figure> Arguments) : How
{
    public override IReadOnlyList<Figure> Parents => Arguments;

    public override IReadOnlyList<Source> Sources => Formula.Sources;
}

/// <summary>A longer computation, said in words.</summary>
public sealed record Procedure(string Method, IReadOnlyList<Figure> From, IReadOnlyList<Source> Rests) : How
{
    public override IReadOnlyList<Figure> Parents => From;

    public override IReadOnlyList<Source> Sources => Rests;
}
