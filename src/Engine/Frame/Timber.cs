using Runnel.Engine.Figures;
using Runnel.Engine.Plan;

namespace Runnel.Engine.Frame;

/// <summary>Reference design values of a kind of lumber for normal load duration and dry service, MPa, at one depth.</summary>
/// <param name="Name">What it is called on screen.</param>
/// <param name="Bending">F_b.</param>
/// <param name="Shear">F_v.</param>
/// <param name="Bearing">F_c⊥.</param>
/// <param name="Compression">F_c.</param>
/// <param name="Elasticity">E, mean.</param>
/// <param name="Stability">E_min, for buckling.</param>
/// <param name="Wet">Wet service factors.</param>
/// <param name="TakesSizeFactor">True where C_F of narrow pieces may be taken; false where the values hold it already or none is due.</param>
/// <param name="Source">Where the values come from.</param>
public sealed record TimberValues(
    string Name, double Bending, double Shear, double Bearing, double Compression, double Elasticity, double Stability, WetFactors Wet,
    bool TakesSizeFactor, Source Source);

/// <summary>Wet service factors C_M, for lumber over 19 % moisture.</summary>
/// <param name="Bending">On F_b.</param>
/// <param name="BendingSpared">F_b C_F at or under which the one on F_b is 1, MPa; 0 for never.</param>
/// <param name="Shear">On F_v.</param>
/// <param name="Bearing">On F_c⊥.</param>
/// <param name="Compression">On F_c.</param>
/// <param name="CompressionSpared">F_c C_F at or under which the one on F_c is 1, MPa; 0 for never.</param>
/// <param name="Elasticity">On E and E_min.</param>
/// <param name="Source">Where the factors come from.</param>
public sealed record WetFactors(
    double Bending, double BendingSpared, double Shear, double Bearing, double Compression, double CompressionSpared, double Elasticity, Source Source);

/// <summary>Reference design values by kind of wood.</summary>
/// <remarks>
/// North American groups: No. 2 dimension lumber, NDS Supplement tables 4A and 4B. European classes: grade stresses of BS 5268-2, the
/// last European code of permissible stresses, for they are long-term stresses that divide by C_D = 0.9 into the same basis; the
/// characteristic strengths of EN 338 are five-percent values for the other method of partial factors, and are not used.
/// </remarks>
public static class Timber
{
    private const double Psi = 0.006894757293168;

    // Grade stresses of BS 5268 are for permanent load; reference values of the NDS are for ten years, and permanent load takes 0.9 of them.
    private const double Permanent = 0.9;

    private static readonly WetFactors NdsWet = new(0.85, 1150 * Psi, 0.97, 0.67, 0.8, 750 * Psi, 0.9,
        new("NDS wet service factors of sawn lumber, as printed in Merritt and Ricketts, Building Design and Construction Handbook, table 10.6"));

    private static readonly WetFactors BritishWet = new(0.8, 0, 0.9, 0.6, 0.6, 0, 0.8, Source.FromMemory("BS 5268-2, table 16, service class 3"));

    private static readonly Source NdsTable = Source.FromMemory("NDS Supplement, table 4A, No. 2; F_b confirmed by the span table R802.5.1(2) of the IRC 2018");

    private static readonly Source SouthernTable = Source.FromMemory(
        "NDS Supplement, table 4B, No. 2, values since June 2013; F_b confirmed by the span table R802.5.1(2) of the IRC 2018");

    private static readonly Source British = Source.FromMemory("BS 5268-2, table 8, grade stresses, divided by 0.9");

    private static readonly Source Timbers = Source.FromMemory("NDS Supplement, table 4D, posts and timbers No. 2, the lowest of the common groups");

    /// <summary>Kinds that have values of their own.</summary>
    public static IReadOnlyList<Wood> Known { get; } = [Wood.SprucePineFir, Wood.HemFir, Wood.DouglasFirLarch, Wood.SouthernPine, Wood.C16, Wood.C24];

    /// <summary>Reference values of a piece.</summary>
    /// <param name="wood">Kind of wood; for unknown wood each value is the lowest of all kinds, and narrow pieces get no size factor.</param>
    /// <param name="size">Its actual size.</param>
    /// <exception cref="ArgumentOutOfRangeException">A board: no structural grade covers pieces under 35 mm thick.</exception>
    public static TimberValues Of(Wood wood, LumberSize size)
    {
        ArgumentNullException.ThrowIfNull(size);
        if (size.IsBoard)
        {
            throw new ArgumentOutOfRangeException(nameof(size), size.Thickness, "boards have no structural grade");
        }
        if (size.IsTimber)
        {
            return Weakest("posts and timbers, weakest", [Own(Wood.HemFir, size), Own(Wood.C16, size), PostsAndTimbers], Timbers);
        }
        return wood == Wood.Unknown
            ? Weakest("unknown softwood, weakest of all", [.. Known.Select(w => Own(w, size))],
                new("the lowest value of six kinds: No. 2 of four North American groups, C16 and C24; narrow pieces get no size factor", SourceKind.CommonPractice))
            : Own(wood, size);
    }

    private static TimberValues PostsAndTimbers => new(
        "posts and timbers No. 2", 500 * Psi, 125 * Psi, 375 * Psi, 500 * Psi, 1.0e6 * Psi, 370000 * Psi, NdsWet, false, Timbers);

    private static TimberValues Own(Wood wood, LumberSize size) => wood switch
    {
        Wood.SprucePineFir => Nds("spruce-pine-fir No. 2", 875, 135, 425, 1150, 1.4e6, 510000),
        Wood.HemFir => Nds("hem-fir No. 2", 850, 150, 405, 1300, 1.3e6, 470000),
        Wood.DouglasFirLarch => Nds("Douglas fir-larch No. 2", 900, 180, 625, 1350, 1.6e6, 580000),
        Wood.SouthernPine => SouthernPine(Inches(size.Depth)),
        Wood.C16 => Grade("C16", 5.3, 0.67, 1.7, 6.8, 8800, 5800),
        Wood.C24 => Grade("C24", 7.5, 0.71, 1.9, 7.9, 10800, 7200),
        _ => throw new ArgumentOutOfRangeException(nameof(wood), wood, "has no values of its own"),
    };

    private static TimberValues Nds(string name, double bending, double shear, double bearing, double compression, double elasticity, double stability) =>
        new(name, bending * Psi, shear * Psi, bearing * Psi, compression * Psi, elasticity * Psi, stability * Psi, NdsWet, true, NdsTable);

    // The tables of southern pine hold the size already; deeper than 12 in takes 0.9 of the last row.
    private static TimberValues SouthernPine(double inches)
    {
        var (bending, compression) = inches switch
        {
            <= 3.55 => (1100.0, 1450.0),
            <= 5.55 => (1000, 1400),
            <= 7.3 => (925, 1350),
            <= 9.3 => (800, 1300),
            <= 11.3 => (750, 1250),
            _ => (675, 1125),
        };
        return new("southern pine No. 2", bending * Psi, 175 * Psi, 565 * Psi, compression * Psi, 1.4e6 * Psi, 510000 * Psi, NdsWet, false, SouthernTable);
    }

    // Five-percent elasticity becomes E_min by the safety factor that the NDS puts on it (appendix D: 1.66, and 1.03 for shear, left out).
    private static TimberValues Grade(string name, double bending, double shear, double bearing, double compression, double elasticity, double least) =>
        new(name, bending / Permanent, shear / Permanent, bearing, compression / Permanent, elasticity, least / 1.66, BritishWet, false, British);

    private static TimberValues Weakest(string name, IReadOnlyList<TimberValues> of, Source source) => new(
        name, of.Min(v => v.Bending), of.Min(v => v.Shear), of.Min(v => v.Bearing), of.Min(v => v.Compression), of.Min(v => v.Elasticity),
        of.Min(v => v.Stability), BritishWet, false, source);

    private static double Inches(double metres) => metres / 0.0254;
}
