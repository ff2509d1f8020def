namespace Runnel.Engine.Frame;

/// <summary>A beam on two supports under an even load.</summary>
public static class Beam
{
    internal const double MaxLoad = 1e6;
    internal const double MinSpan = 0.05;
    internal const double MaxSpan = 20;
    internal const double MinArea = 0.25;
    internal const double MaxArea = 3600;
    internal const double MinModulus = 0.02;
    internal const double MaxModulus = 36000;
    internal const double MinInertia = 0.005;
    internal const double MaxInertia = 1.08e6;
    internal const double MinElasticity = 1000;
    internal const double MaxElasticity = 30000;
    internal const double MaxSlenderness = 50;

    /// <summary>Young's modulus over shear modulus of softwood: a convention of design texts.</summary>
    public const double ShearRatio = 16;

    /// <summary>Greatest bending stress.</summary>
    /// <param name="load">Even load on each length, N/m, from 0 to 1 000 000.</param>
    /// <param name="span">Span between supports, m, from 0.05 to 20.</param>
    /// <param name="modulus">Section modulus, cm³, from 0.02 to 36 000.</param>
    /// <returns>Bending stress, MPa.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>f_b = M/S, M = w L²/8. Source: any text on mechanics of materials. Not for: a load gathered at mid-span, which bends up to twice
    /// as hard; overhangs; notches.</remarks>
    public static double BendingStress(double load, double span, double modulus)
    {
        Range.Within(load, 0, MaxLoad);
        Range.Within(span, MinSpan, MaxSpan);
        Range.Within(modulus, MinModulus, MaxModulus);
        return load * span * span / 8 / modulus;
    }

    /// <summary>Greatest shear stress along the grain.</summary>
    /// <param name="load">Even load on each length, N/m, from 0 to 1 000 000.</param>
    /// <param name="span">Span between supports, m, from 0.05 to 20.</param>
    /// <param name="area">Area of the section, cm², from 0.25 to 3600.</param>
    /// <returns>Shear stress, MPa.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>f_v = 3 V/(2 A), V = w L/2. Source: any text on mechanics of materials. Here at the support; the NDS lets loads within a depth
    /// of the support be left out, which we do not. Not for: notched ends.</remarks>
    public static double ShearStress(double load, double span, double area)
    {
        Range.Within(load, 0, MaxLoad);
        Range.Within(span, MinSpan, MaxSpan);
        Range.Within(area, MinArea, MaxArea);
        return 1.5 * (load * span / 2) / area / 100;
    }

    /// <summary>Deflection at mid-span by bending.</summary>
    /// <param name="load">Even load on each length, N/m, from 0 to 1 000 000.</param>
    /// <param name="span">Span between supports, m, from 0.05 to 20.</param>
    /// <param name="elasticity">Modulus of elasticity, MPa, from 1000 to 30 000.</param>
    /// <param name="inertia">Moment of inertia, cm⁴, from 0.005 to 1 080 000.</param>
    /// <returns>Deflection, mm, when the load comes on.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>Δ = 5 w L⁴/(384 E I). Source: any text on mechanics of materials. Not for: deflection over years, see
    /// <see cref="LongTermDeflection"/>; deflections no longer small beside the span.</remarks>
    public static double Deflection(double load, double span, double elasticity, double inertia)
    {
        Range.Within(load, 0, MaxLoad);
        Range.Within(span, MinSpan, MaxSpan);
        Range.Within(elasticity, MinElasticity, MaxElasticity);
        Range.Within(inertia, MinInertia, MaxInertia);
        return 5 * load * Math.Pow(span, 4) / (384 * elasticity * inertia) * 1e5;
    }

    /// <summary>Deflection at mid-span by shear, which is added to that by bending.</summary>
    /// <param name="load">Even load on each length, N/m, from 0 to 1 000 000.</param>
    /// <param name="span">Span between supports, m, from 0.05 to 20.</param>
    /// <param name="elasticity">Modulus of elasticity, MPa, from 1000 to 30 000.</param>
    /// <param name="area">Area of the section, cm², from 0.25 to 3600.</param>
    /// <returns>Deflection, mm.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>Δ_s = w L²/(8 G A'), A' = 5 A/6, G = E/16. Source: Soltis, Wood Handbook, chapter 8, equation 8-2; G by convention, from memory.
    /// The E of design tables already holds some of it (NDS: 3 to 5 %), so the sum is a little too large.</remarks>
    public static double ShearDeflection(double load, double span, double elasticity, double area)
    {
        Range.Within(load, 0, MaxLoad);
        Range.Within(span, MinSpan, MaxSpan);
        Range.Within(elasticity, MinElasticity, MaxElasticity);
        Range.Within(area, MinArea, MaxArea);
        var stiffness = elasticity / ShearRatio * 1e6 * (5.0 / 6 * area * 1e-4);
        return load * span * span / 8 / stiffness * 1000;
    }

    /// <summary>Deflection after years under load.</summary>
    /// <param name="permanent">Deflection by what stays on, when it comes on, mm, from 0 to 1000.</param>
    /// <param name="creep">Factor for creep, from 1 to 3: 1.5 for seasoned lumber kept dry, 2.0 for wet or unseasoned.</param>
    /// <param name="passing">Deflection by what comes and goes, mm, from 0 to 1000.</param>
    /// <returns>Deflection, mm.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>Δ_T = K_cr Δ_LT + Δ_ST. Source: NDS 3.5.2.</remarks>
    public static double LongTermDeflection(double permanent, double creep, double passing) =>
        Range.Within(creep, 1, 3) * Range.Within(permanent, 0, 1e3) + Range.Within(passing, 0, 1e3);

    /// <summary>Longest span whose bending stress is allowed.</summary>
    /// <param name="load">Even load on each length, N/m, from 1 to 1 000 000.</param>
    /// <param name="modulus">Section modulus, cm³, from 0.02 to 36 000.</param>
    /// <param name="allowable">Allowable bending stress, MPa, from 0.1 to 100.</param>
    /// <returns>Span, m.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>L = √(8 S F_b'/w). Source: as for <see cref="BendingStress"/>; so are joist tables of codes worked out.</remarks>
    public static double SpanByBending(double load, double modulus, double allowable)
    {
        Range.Within(load, 1, MaxLoad);
        Range.Within(modulus, MinModulus, MaxModulus);
        Range.Within(allowable, Strength.MinStress, Strength.MaxStress);
        return Math.Sqrt(8 * modulus * allowable / load);
    }

    /// <summary>Longest span that sags no more than a share of itself.</summary>
    /// <param name="load">Even load on each length, N/m, from 1 to 1 000 000.</param>
    /// <param name="elasticity">Modulus of elasticity, MPa, from 1000 to 30 000.</param>
    /// <param name="inertia">Moment of inertia, cm⁴, from 0.005 to 1 080 000.</param>
    /// <param name="limit">The n of a limit of span/n, from 100 to 1000.</param>
    /// <returns>Span, m.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>L = (384 E I/(5 w n))^(1/3). Source: as for <see cref="Deflection"/>.</remarks>
    public static double SpanByDeflection(double load, double elasticity, double inertia, double limit)
    {
        Range.Within(load, 1, MaxLoad);
        Range.Within(elasticity, MinElasticity, MaxElasticity);
        Range.Within(inertia, MinInertia, MaxInertia);
        Range.Within(limit, 100, 1000);
        return Math.Cbrt(384 * (elasticity * inertia / 100) / (5 * load * limit));
    }

    /// <summary>Slenderness of a beam whose upper edge nothing holds sideways.</summary>
    /// <param name="unbraced">Length between points held sideways, m, from 0.05 to 20.</param>
    /// <param name="thickness">Actual thickness, mm, from 5 to 600.</param>
    /// <param name="depth">Actual depth, mm, from 5 to 600.</param>
    /// <returns>R_B, a pure number; over 50 is not allowed.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>R_B = √(l_e d/b²), l_e = 2.06 l_u for l_u/d under 7, else 1.63 l_u + 3 d. Source: NDS 3.3.3, table 3.3.3, even load.</remarks>
    public static double Slenderness(double unbraced, double thickness, double depth)
    {
        var length = Range.Within(unbraced, MinSpan, MaxSpan) * 1000;
        Range.Within(thickness, Section.MinSize, Section.MaxSize);
        Range.Within(depth, Section.MinSize, Section.MaxSize);
        var effective = length / depth < 7 ? 2.06 * length : 1.63 * length + 3 * depth;
        return Math.Sqrt(effective * depth) / thickness;
    }

    /// <summary>Share of its bending strength that a beam keeps though it may topple sideways.</summary>
    /// <param name="slenderness">R_B, from 0.1 to 50.</param>
    /// <param name="elasticity">Adjusted modulus of elasticity for stability, E_min', MPa, from 500 to 20 000.</param>
    /// <param name="bending">Bending value with all other factors, F_b*, MPa, from 0.1 to 100.</param>
    /// <returns>C_L, from 0 to 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>C_L = (1 + a)/1.9 − √(((1 + a)/1.9)² − a/0.95), a = F_bE/F_b*, F_bE = 1.20 E_min'/R_B². Source: NDS 3.3.3, equation 3.3-6.</remarks>
    public static double StabilityFactor(double slenderness, double elasticity, double bending)
    {
        Range.Within(slenderness, 0.1, MaxSlenderness);
        Range.Within(elasticity, Strength.MinStability, Strength.MaxStability);
        Range.Within(bending, Strength.MinStress, Strength.MaxStress);
        return Strength.Interaction(1.2 * elasticity / (slenderness * slenderness) / bending, 0.95);
    }
}
