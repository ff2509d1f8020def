using Runnel.Engine.Figures;
using Runnel.Engine.Quantities;

namespace Runnel.Engine.Frame;

/// <summary>The formulary's rules about what lumber may be asked to bear; listed with <see cref="FrameFormulas"/>.</summary>
public static class StrengthFormulas
{
    private const string Subject = "Frame";

    private const string Engineer = "deciding that a stand is safe: what holds it, its joints and its sway are not in it; a local engineer and code decide";

    private const string ByTheBook = "as good as grading: it rests on graded, sound, straight lumber; pallets and salvage are not";

    private static readonly Source Nds = Source.FromMemory("National Design Specification for Wood Construction, table 4.3.1");

    private static readonly Source MstExample = new(
        "Missouri University of Science and Technology, course 5260, problem 4.30: hem-fir No. 2 2x10 roof joist at 16 in, dead load and snow");

    private static readonly FormulaInput Duration = new("duration", "Load duration factor C_D", Units.One, Strength.MinFactor, Strength.MaxFactor, 0.9,
        "NDS 2.3.2, permanent load: a bed of water never goes away (0.9 read in a course example)");

    private static readonly FormulaInput Wet = new("wet", "Wet service factor C_M", Units.One, Strength.MinFactor, Strength.MaxFactor);

    private static readonly FormulaInput Size = new("size", "Size factor C_F", Units.One, Strength.MinFactor, Strength.MaxFactor, 1, "none taken");

    private static readonly FormulaInput Stability = new("stability", "Elasticity for stability, E_min'", Units.Megapascal, Strength.MinStability, Strength.MaxStability);

    private static FormulaInput Reference(string what, string symbol) =>
        new("reference", $"Reference value in {what}, {symbol}", Units.Megapascal, Strength.MinStress, Strength.MaxStress);

    /// <summary>Allowable bending stress.</summary>
    public static readonly Formula AllowableBending = new()
    {
        Id = "allowable-bending",
        Name = "Allowable bending stress",
        Subject = Subject,
        Equation = "F_b' = F_b C_D C_M C_L C_F C_r",
        Inputs =
        [
            Reference("bending", "F_b"), Duration, Wet,
            new("beam-stability", "Beam stability factor C_L", Units.One, 0, 1, 1, "upper edge held sideways"),
            Size,
            new("repetitive", "Repetitive member factor C_r", Units.One, Strength.MinFactor, Strength.MaxFactor, 1,
                "none taken; 1.15 for three or more pieces at most 24 in apart under one deck (NELMA grading rules, table B)"),
        ],
        Output = new("allowable", "Allowable bending stress", Units.Megapascal),
        Sources = [Nds, MstExample],
        Confidence = Confidence.PublishedExample,
        Error = ByTheBook,
        NotFor = Engineer,
        Compute = x => Strength.Bending(x[0], x[1], x[2], x[3], x[4], x[5]),
    };

    /// <summary>Allowable shear stress.</summary>
    public static readonly Formula AllowableShear = new()
    {
        Id = "allowable-shear",
        Name = "Allowable shear stress along the grain",
        Subject = Subject,
        Equation = "F_v' = F_v C_D C_M",
        Inputs = [Reference("shear", "F_v"), Duration, Wet],
        Output = new("allowable", "Allowable shear stress", Units.Megapascal),
        Sources = [Nds, MstExample],
        Confidence = Confidence.PublishedExample,
        Error = ByTheBook,
        NotFor = "notched or split ends",
        Compute = x => Strength.Shear(x[0], x[1], x[2]),
    };

    /// <summary>Allowable bearing stress.</summary>
    public static readonly Formula AllowableBearing = new()
    {
        Id = "allowable-bearing",
        Name = "Allowable bearing stress across the grain",
        Subject = Subject,
        Equation = "F_c⊥' = F_c⊥ C_M",
        Inputs = [Reference("bearing across the grain", "F_c⊥"), Wet],
        Output = new("allowable", "Allowable bearing stress", Units.Megapascal),
        Sources = [Nds, MstExample],
        Confidence = Confidence.PublishedExample,
        Error = ByTheBook,
        NotFor = "bearing on the ends of the grain, which is compression",
        Compute = x => Strength.Bearing(x[0], x[1]),
    };

    /// <summary>Allowable compression along the grain.</summary>
    public static readonly Formula AllowableCompression = new()
    {
        Id = "allowable-compression",
        Name = "Allowable compression along the grain",
        Subject = Subject,
        Equation = "F_c' = F_c C_D C_M C_F C_P",
        Inputs =
        [
            Reference("compression", "F_c"), Duration, Wet, Size,
            new("column-stability", "Column stability factor C_P", Units.One, 0, 1, 1, "no buckling: gives F_c*, what the factor is worked out from"),
        ],
        Output = new("allowable", "Allowable compression", Units.Megapascal),
        Sources = [Nds, MstExample, new("Gere, Mechanics of Materials, problem 11.9-31")],
        Confidence = Confidence.PublishedExample,
        Error = ByTheBook,
        NotFor = Engineer,
        Compute = x => Strength.Compression(x[0], x[1], x[2], x[3], x[4]),
    };

    /// <summary>Stiffness of wet wood.</summary>
    public static readonly Formula AdjustedStiffness = new()
    {
        Id = "adjusted-elasticity",
        Name = "Elasticity in service",
        Subject = Subject,
        Equation = "E' = E C_M",
        Inputs = [new("elasticity", "Modulus of elasticity", Units.Megapascal, Beam.MinElasticity, Beam.MaxElasticity), Wet],
        Output = new("elasticity", "Elasticity in service", Units.Megapascal),
        Sources = [Nds, MstExample],
        Confidence = Confidence.PublishedExample,
        Error = "a fifth to a quarter between pieces of one grade",
        Compute = x => Range.Within(x[0], Beam.MinElasticity, Beam.MaxElasticity) * Range.Within(x[1], Strength.MinFactor, Strength.MaxFactor),
    };

    /// <summary>Slenderness of a beam.</summary>
    public static readonly Formula BeamSlenderness = new()
    {
        Id = "beam-slenderness",
        Name = "Slenderness of a rail or joist on edge",
        Subject = Subject,
        Equation = "R_B = √(l_e d/b²), l_e = 2.06 l_u for l_u/d < 7, else 1.63 l_u + 3 d",
        Inputs =
        [
            new("unbraced", "Length between points held sideways", Units.Metre, Beam.MinSpan, Beam.MaxSpan),
            new("thickness", "Actual thickness", Units.Millimetre, Section.MinSize, Section.MaxSize),
            new("depth", "Actual depth, in the direction of the load", Units.Millimetre, Section.MinSize, Section.MaxSize),
        ],
        Output = new("slenderness", "Slenderness R_B", Units.One),
        Sources = [new("National Design Specification for Wood Construction, 3.3.3 and table 3.3.3, as quoted in a public engineering wiki")],
        Confidence = Confidence.Textbook,
        Error = "a rule of the specification, without error",
        Compute = x => Beam.Slenderness(x[0], x[1], x[2]),
    };

    /// <summary>Beam stability factor.</summary>
    public static readonly Formula BeamStability = new()
    {
        Id = "beam-stability",
        Name = "Beam stability factor",
        Subject = Subject,
        Equation = "C_L = (1 + a)/1.9 − √(((1 + a)/1.9)² − a/0.95), a = 1.20 E_min'/(R_B² F_b*)",
        Inputs =
        [
            new("slenderness", "Slenderness R_B", Units.One, 0.1, Beam.MaxSlenderness), Stability,
            new("bending", "Bending value with all other factors, F_b*", Units.Megapascal, Strength.MinStress, Strength.MaxStress),
        ],
        Output = new("factor", "Beam stability factor C_L", Units.One),
        Sources =
        [
            Source.FromMemory("National Design Specification for Wood Construction, equation 3.3-6"),
            new("Example 5.3 of a structural engineering reference manual as quoted in public: F_bE/F_b* of 2.83 gives 0.974"),
        ],
        Confidence = Confidence.PublishedExample,
        Error = "a rule of the specification, without error",
        NotFor = "slenderness over 50, which is not allowed",
        Compute = x => Beam.StabilityFactor(x[0], x[1], x[2]),
    };

    /// <summary>Column stability factor.</summary>
    public static readonly Formula ColumnStability = new()
    {
        Id = "column-stability",
        Name = "Column stability factor",
        Subject = Subject,
        Equation = "C_P = (1 + a)/(2c) − √(((1 + a)/(2c))² − a/c), a = 0.822 E_min'/((l_e/d)² F_c*)",
        Inputs =
        [
            new("slenderness", "Effective length over the side it buckles across, l_e/d", Units.One, 0.1, Beam.MaxSlenderness), Stability,
            new("compression", "Compression value with all other factors, F_c*", Units.Megapascal, Strength.MinStress, Strength.MaxStress),
            new("straightness", "c", Units.One, 0.6, 1, Strength.SawnColumn, "National Design Specification, 3.7.1: sawn lumber"),
        ],
        Output = new("factor", "Column stability factor C_P", Units.One),
        Sources =
        [
            new("National Design Specification for Wood Construction, 3.7.1, as printed in a public course on wood engineering"),
            new("Gere, Mechanics of Materials, problem 11.9-31"),
            new("A public engineering wiki's worked 2x6 of Douglas fir-larch, construction grade"),
        ],
        Confidence = Confidence.PublishedExample,
        Error = "a rule of the specification, without error",
        NotFor = "slenderness over 50, which is not allowed; legs pushed sideways; loads off their centre",
        Compute = x => Strength.ColumnStability(x[0], x[1], x[2], x[3]),
    };

    /// <summary>Force on an area.</summary>
    public static readonly Formula Stress = new()
    {
        Id = "contact-stress",
        Name = "Stress by a force on an area: under the end of a rail, in a leg",
        Subject = Subject,
        Equation = "f = P/A",
        Inputs = [new("force", "Force", Units.Newton, 0, 1e7), new("area", "Area it acts on", Units.SquareCentimetre, Beam.MinArea, Beam.MaxArea)],
        Output = new("stress", "Stress", Units.Megapascal),
        Sources = [Source.Definition("force over area")],
        Confidence = Confidence.Textbook,
        Error = "exact for a force in the middle of its area",
        Compute = x => Strength.Stress(x[0], x[1]),
    };

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Formula> All { get; } =
        [AllowableBending, AllowableShear, AllowableBearing, AllowableCompression, AdjustedStiffness, BeamSlenderness, BeamStability, ColumnStability, Stress];
}
