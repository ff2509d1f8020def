namespace Runnel.Engine.Tests;

/// <summary>Marks a test as proof of a formula: a formula may claim no more confidence than its proofs carry.</summary>
[AttributeUsage(AttributeTargets.Method, AllowMultiple = true)]
public sealed class ProofAttribute(string formula, Evidence evidence, string source) : Attribute
{
    /// <summary>Id of the formula.</summary>
    public string Formula { get; } = formula;

    public Evidence Evidence { get; } = evidence;

    /// <summary>Where the expected number comes from.</summary>
    public string Source { get; } = source;
}

/// <summary>What a reference test's number rests on.</summary>
public enum Evidence
{
    /// <summary>Our own output, to notice a change: proves nothing.</summary>
    Pinned,

    /// <summary>A rule of the trade without a source.</summary>
    CommonPractice,

    /// <summary>An exact solution, a balance that closes, a limit, two independent formulas that agree.</summary>
    Derived,

    /// <summary>A published worked example or table.</summary>
    Published,

    /// <summary>Independent measurements.</summary>
    Measured,
}
