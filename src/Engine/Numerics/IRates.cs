namespace Runnel.Engine.Numerics;

/// <summary>
/// Rates of change of a state, and how the rates change with the stiff part of the state. Components are laid out so that the stiff ones come
/// first; the others (slow states and running totals) only follow.
/// </summary>
public interface IRates
{
    /// <summary>How many components.</summary>
    int Size { get; }

    /// <summary>How many of them, from the first, are solved for implicitly.</summary>
    int Stiff { get; }

    /// <summary>Rates of change of all components.</summary>
    void Rates(ReadOnlySpan<double> state, Span<double> rates);

    /// <summary>
    /// Rates, and the derivative of each by each stiff component, row by row (<see cref="Size"/> rows of <see cref="Stiff"/>). The same entries are
    /// written at every call, zero or not; those never written count as zero. Slopes may be incomplete: that costs stability, never order
    /// or balance, as long as one flux brings the same slopes to the component it leaves and the one it enters.
    /// </summary>
    void RatesAndSlopes(ReadOnlySpan<double> state, Span<double> rates, Span<double> slopes);
}
