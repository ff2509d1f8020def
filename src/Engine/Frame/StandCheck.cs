using Runnel.Engine.Figures;
using Runnel.Engine.Findings;
using Runnel.Engine.Plan;
using Runnel.Engine.Quantities;

namespace Runnel.Engine.Frame;

/// <summary>Checks the lumber of a stand against the weight that the plan puts on it.</summary>
/// <remarks>
/// Assumes, on the side of caution: half of the pieces of one name bear all of it, two at least; every load is permanent; wood is wet
/// unless the plan says otherwise; no deck holds rails sideways and none shares their load; rails rest on 38 mm at each end; legs turn
/// freely at both ends over their whole length. Does not look at joints, screws, sway, tipping, uneven lengths, knots, rot or the floor.
/// </remarks>
public static class StandCheck
{
    /// <summary>Share of what is allowed beyond which Runnel asks to have it checked.</summary>
    public const double HaveItChecked = 0.5;

    /// <summary>Share of what is allowed beyond which the stand is overloaded.</summary>
    public const double Overloaded = 1;

    /// <summary>Checks every piece that carries something.</summary>
    /// <param name="plan">The plan, for its stand and the heights of its vessels.</param>
    /// <param name="masses">By name of vessel, the mass of all vessels of that name filled as full as they can be, kg.</param>
    /// <param name="take">Turns an input of the plan into a figure.</param>
    /// <returns>Figures and findings; nothing is thrown for a bad plan.</returns>
    public static StandResult Check(LoopPlan plan, IReadOnlyDictionary<string, Figure> masses, Func<Estimate, Figure> take)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(masses);
        ArgumentNullException.ThrowIfNull(take);
        var findings = new List<Finding>();
        var pieces = new List<PieceCheck>();
        foreach (var lumber in plan.Stand.Values.Where(l => l.Use != LumberUse.Other))
        {
            if (CheckPiece(lumber, masses, take, findings) is { } piece)
            {
                pieces.Add(piece);
                StandFindings.Judge(piece, findings);
            }
        }
        StandFindings.Unchecked(plan, masses, findings);
        if (plan.Stand.Count > 0 || pieces.Count > 0)
        {
            findings.Add(StandFindings.Caution(pieces.Count));
        }
        return new(pieces, findings);
    }

    private static PieceCheck? CheckPiece(Lumber lumber, IReadOnlyDictionary<string, Figure> masses, Func<Estimate, Figure> take, List<Finding> findings)
    {
        var carried = lumber.Carries.Distinct(StringComparer.Ordinal).Where(masses.ContainsKey).Select(v => masses[v]).ToList();
        if (carried.Count == 0)
        {
            findings.Add(StandFindings.CarriesNothing(lumber));
            return null;
        }
        if (LumberSize.Read(lumber.Size) is not { } size)
        {
            findings.Add(StandFindings.UnknownSize(lumber));
            return null;
        }
        if (size.IsBoard)
        {
            findings.Add(StandFindings.Board(lumber, size));
            return null;
        }
        var count = take(lumber.Count);
        var bearing = Figure.Computed(PiecesThatBear(count.Si), Units.One, $"Pieces of {lumber.Name} that bear all of it",
            "half of them rounded down, two at least, one if there is only one",
            [count], Source.Practice("on an uneven floor, or with a weight off the middle, half of the pieces carry all"));
        var mass = Figure.Sum([.. carried]).Called($"Weight on all {lumber.Name}", Units.Kilogram);
        var piece = new Piece(lumber, size, Timber.Of(lumber.Wood, size), mass, bearing, take);
        var checks = lumber.Use == LumberUse.Leg ? piece.AsLeg(findings) : piece.AsBeam(findings);
        return checks.Count == 0 ? null : new(lumber, piece.Values, (mass / bearing).Called($"Weight on one of {lumber.Name}", Units.Kilogram), checks);
    }

    /// <summary>How many of so many pieces bear all of it: half of them rounded down, two at least, one if there is only one.</summary>
    /// <param name="count">Pieces of one name.</param>
    /// <remarks>Common practice, no source: on an uneven floor two of four legs carry all.</remarks>
    public static double PiecesThatBear(double count) => count < 2 ? 1 : Math.Max(2, Math.Floor(count / 2));
}
