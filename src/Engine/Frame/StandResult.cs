using Runnel.Engine.Figures;
using Runnel.Engine.Findings;
using Runnel.Engine.Plan;

namespace Runnel.Engine.Frame;

/// <summary>What the check of a stand gave.</summary>
/// <param name="Pieces">Each kind of piece that carries, in the order of the plan.</param>
/// <param name="Findings">What the grower should know, cautions included.</param>
public sealed record StandResult(IReadOnlyList<PieceCheck> Pieces, IReadOnlyList<Finding> Findings)
{
    /// <summary>The piece that is nearest to breaking, or null when none could be checked.</summary>
    public PieceCheck? Worst => Pieces.Where(p => p.Strength is not null).MaxBy(p => p.Strength!.Ratio.Si);
}

/// <summary>One kind of piece, checked: all figures are of the one piece that bears most.</summary>
/// <param name="Lumber">The piece in the plan.</param>
/// <param name="Values">Reference values it was checked with.</param>
/// <param name="Load">Mass on the piece, kg.</param>
/// <param name="Checks">Each way in which it could fail.</param>
public sealed record PieceCheck(Lumber Lumber, TimberValues Values, Figure Load, IReadOnlyList<Utilisation> Checks)
{
    /// <summary>What is used hardest, sag included.</summary>
    public Utilisation? Worst => Checks.MaxBy(c => c.Ratio.Si);

    /// <summary>The way in which it is nearest to breaking.</summary>
    public Utilisation? Strength => Checks.Where(c => c.Mode != "sag").MaxBy(c => c.Ratio.Si);
}

/// <summary>One way in which a piece could fail.</summary>
/// <param name="Mode">Stable name: <c>bending</c>, <c>shear</c>, <c>bearing</c>, <c>sag</c> or <c>compression</c>.</param>
/// <param name="Demand">Stress, MPa; for sag the deflection after years, m.</param>
/// <param name="Allowed">What is allowed of it.</param>
/// <param name="Ratio">Demand over allowed, a pure number: over 1 is overloaded.</param>
public sealed record Utilisation(string Mode, Figure Demand, Figure Allowed, Figure Ratio);
