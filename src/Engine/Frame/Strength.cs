namespace Runnel.Engine.Frame;

/// <summary>What lumber may be asked to bear: reference values times factors, and a column's share.</summary>
public static class Strength
{
    internal const double MinStress = 0.1;
    internal const double MaxStress = 100;
    internal const double MinStability = 500;
    internal const double MaxStability = 20000;
    internal const double MinFactor = 0.1;
    internal const double MaxFactor = 2;

    /// <summary>Factor of all sawn columns: they are never quite straight.</summary>
    public const double SawnColumn = 0.8;

    /// <summary>Allowable bending stress.</summary>
    /// <param name="reference">Reference value F_b, MPa, from 0.1 to 100.</param>
    /// <param name="duration">Load duration factor C_D, from 0.1 to 2.</param>
    /// <param name="wet">Wet service factor C_M, from 0.1 to 2.</param>
    /// <param name="stability">Beam stability factor C_L, from 0 to 1.</param>
    /// <param name="size">Size factor C_F, from 0.1 to 2.</param>
    /// <param name="repetitive">Repetitive member factor C_r, from 0.1 to 2.</param>
    /// <returns>F_b', MPa.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>F_b' = F_b C_D C_M C_L C_F C_r. Source: NDS table 4.3.1. Factors for heat, incising and flat use are taken as 1.</remarks>
    public static double Bending(double reference, double duration, double wet, double stability, double size, double repetitive)
    {
        Range.Within(reference, MinStress, MaxStress);
        Range.Within(duration, MinFactor, MaxFactor);
        Range.Within(wet, MinFactor, MaxFactor);
        Range.Within(stability, 0, 1);
        Range.Within(size, MinFactor, MaxFactor);
        Range.Within(repetitive, MinFactor, MaxFactor);
        return reference * duration * wet * stability * size * repetitive;
    }

    /// <summary>Allowable shear stress along the grain.</summary>
    /// <param name="reference">Reference value F_v, MPa, from 0.1 to 100.</param>
    /// <param name="duration">Load duration factor C_D, from 0.1 to 2.</param>
    /// <param name="wet">Wet service factor C_M, from 0.1 to 2.</param>
    /// <returns>F_v', MPa.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>F_v' = F_v C_D C_M. Source: NDS table 4.3.1.</remarks>
    public static double Shear(double reference, double duration, double wet) =>
        Range.Within(reference, MinStress, MaxStress) * Range.Within(duration, MinFactor, MaxFactor) * Range.Within(wet, MinFactor, MaxFactor);

    /// <summary>Allowable bearing stress across the grain.</summary>
    /// <param name="reference">Reference value F_c⊥, MPa, from 0.1 to 100.</param>
    /// <param name="wet">Wet service factor C_M, from 0.1 to 2.</param>
    /// <returns>F_c⊥', MPa.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>F_c⊥' = F_c⊥ C_M. Source: NDS table 4.3.1: no factor for duration, since a dent and not a break sets the value; the factor for
    /// short bearings, 1 or more, is left out.</remarks>
    public static double Bearing(double reference, double wet) =>
        Range.Within(reference, MinStress, MaxStress) * Range.Within(wet, MinFactor, MaxFactor);

    /// <summary>Allowable compression along the grain.</summary>
    /// <param name="reference">Reference value F_c, MPa, from 0.1 to 100.</param>
    /// <param name="duration">Load duration factor C_D, from 0.1 to 2.</param>
    /// <param name="wet">Wet service factor C_M, from 0.1 to 2.</param>
    /// <param name="size">Size factor C_F, from 0.1 to 2.</param>
    /// <param name="stability">Column stability factor C_P, from 0 to 1; 1 gives F_c*.</param>
    /// <returns>F_c', MPa.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>F_c' = F_c C_D C_M C_F C_P. Source: NDS table 4.3.1.</remarks>
    public static double Compression(double reference, double duration, double wet, double size, double stability)
    {
        Range.Within(reference, MinStress, MaxStress);
        Range.Within(duration, MinFactor, MaxFactor);
        Range.Within(wet, MinFactor, MaxFactor);
        Range.Within(size, MinFactor, MaxFactor);
        Range.Within(stability, 0, 1);
        return reference * duration * wet * size * stability;
    }

    /// <summary>Share of its crushing strength that a column keeps though it may buckle.</summary>
    /// <param name="slenderness">Effective length over the side it buckles across, l_e/d, from 0.1 to 50.</param>
    /// <param name="elasticity">Adjusted modulus of elasticity for stability, E_min', MPa, from 500 to 20 000.</param>
    /// <param name="compression">Compression value with all other factors, F_c*, MPa, from 0.1 to 100.</param>
    /// <param name="straightness">c, from 0.6 to 1: 0.8 for sawn lumber.</param>
    /// <returns>C_P, from 0 to 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>C_P = (1 + a)/(2c) − √(((1 + a)/(2c))² − a/c), a = F_cE/F_c*, F_cE = 0.822 E_min'/(l_e/d)². Source: NDS 3.7.1. Not for: legs
    /// pushed sideways, loads off their centre.</remarks>
    public static double ColumnStability(double slenderness, double elasticity, double compression, double straightness = SawnColumn)
    {
        Range.Within(slenderness, 0.1, Beam.MaxSlenderness);
        Range.Within(elasticity, MinStability, MaxStability);
        Range.Within(compression, MinStress, MaxStress);
        Range.Within(straightness, 0.6, 1);
        return Interaction(0.822 * elasticity / (slenderness * slenderness) / compression, straightness);
    }

    /// <summary>Stress by a force on an area: bearing under a rail's end, compression in a leg.</summary>
    /// <param name="force">Force, N, from 0 to 10 000 000.</param>
    /// <param name="area">Area, cm², from 0.25 to 3600.</param>
    /// <returns>Stress, MPa.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>f = P/A.</remarks>
    public static double Stress(double force, double area) =>
        Range.Within(force, 0, 1e7) / Range.Within(area, Beam.MinArea, Beam.MaxArea) / 100;

    // Smaller root of c x² − (1 + a) x + a = 0, written so that nothing cancels where a is large.
    internal static double Interaction(double a, double c)
    {
        var half = (1 + a) / (2 * c);
        return a / c / (half + Math.Sqrt(Math.Max(0, half * half - a / c)));
    }
}
