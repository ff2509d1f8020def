using Runnel.Engine.Figures;
using Runnel.Engine.Quantities;

namespace Runnel.Engine.Frame;

/// <summary>The formulary's rules about stand and floor: sections, beams and loads; strength stands in <see cref="StrengthFormulas"/>.</summary>
public static class FrameFormulas
{
    private const string Subject = "Frame";

    private const string Engineer = "deciding that a stand is safe: what holds it, its joints and its sway are not in it; a local engineer and code decide";

    private static readonly Source Mechanics = Source.FromMemory("any text on mechanics of materials, simple span under an even load");
    private static readonly Source Gere = new("Gere, Mechanics of Materials, problem 5.6-7: planks of 10.5 ft, 120 psf, 16 in apart, 1350 psi");
    private static readonly Source SpanTable = new("International Residential Code 2018, table R802.5.1(2), joist spans of No. 2 lumber at 24 in, 20 + 10 psf");
    private static readonly Source FloorTable = new("International Residential Code 2003, floor joists 2x8 of spruce-pine-fir No. 2 at 16 in, 40 + 10 psf: 12 ft 3 in");
    private static readonly Source DressedSizes = new("American Softwood Lumber Standard, PS 20, dressed sizes");

    private static readonly FormulaInput Thickness = new("thickness", "Actual thickness", Units.Millimetre, Section.MinSize, Section.MaxSize);
    private static readonly FormulaInput Depth = new("depth", "Actual depth, in the direction of the load", Units.Millimetre, Section.MinSize, Section.MaxSize);
    private static readonly FormulaInput Load = new("load", "Even load on each length", Units.NewtonPerMetre, 0, Beam.MaxLoad);
    private static readonly FormulaInput Span = new("span", "Span between supports", Units.Metre, Beam.MinSpan, Beam.MaxSpan);
    private static readonly FormulaInput Area = new("area", "Area of the section", Units.SquareCentimetre, Beam.MinArea, Beam.MaxArea);
    private static readonly FormulaInput Modulus = new("section-modulus", "Section modulus", Units.CubicCentimetre, Beam.MinModulus, Beam.MaxModulus);
    private static readonly FormulaInput Inertia = new("inertia", "Moment of inertia", Units.CentimetreToTheFourth, Beam.MinInertia, Beam.MaxInertia);
    private static readonly FormulaInput Elasticity = new("elasticity", "Modulus of elasticity", Units.Megapascal, Beam.MinElasticity, Beam.MaxElasticity);
    private static readonly FormulaInput Mass = new("mass", "Mass carried", Units.Kilogram, 0, Weight.MaxMass);

    /// <summary>Area of a section.</summary>
    public static readonly Formula SectionArea = new()
    {
        Id = "section-area",
        Name = "Area of a piece of lumber",
        Subject = Subject,
        Equation = "A = b d",
        Inputs = [Thickness, Depth],
        Output = new("area", "Area of the section", Units.SquareCentimetre),
        Sources = [Source.Definition("geometry of a rectangle"), DressedSizes],
        Confidence = Confidence.Textbook,
        Error = "exact for actual sizes; a nominal 2x4 is 1.5 in by 3.5 in",
        NotFor = "nominal sizes, notched or bored pieces",
        Compute = x => Section.Area(x[0], x[1]),
    };

    /// <summary>Section modulus.</summary>
    public static readonly Formula SectionModulus = new()
    {
        Id = "section-modulus",
        Name = "Section modulus of a piece of lumber",
        Subject = Subject,
        Equation = "S = b d²/6",
        Inputs = [Thickness, Depth],
        Output = new("section-modulus", "Section modulus", Units.CubicCentimetre),
        Sources = [Source.Definition("geometry of a rectangle"), DressedSizes, Gere],
        Confidence = Confidence.PublishedExample,
        Error = "exact for actual sizes",
        NotFor = "nominal sizes, notched or bored pieces; pieces nailed together side by side add up, one on top of the other do not",
        Compute = x => Section.Modulus(x[0], x[1]),
    };

    /// <summary>Moment of inertia.</summary>
    public static readonly Formula SectionInertia = new()
    {
        Id = "section-inertia",
        Name = "Moment of inertia of a piece of lumber",
        Subject = Subject,
        Equation = "I = b d³/12",
        Inputs = [Thickness, Depth],
        Output = new("inertia", "Moment of inertia", Units.CentimetreToTheFourth),
        Sources = [Source.Definition("geometry of a rectangle"), DressedSizes],
        Confidence = Confidence.Textbook,
        Error = "exact for actual sizes",
        NotFor = "nominal sizes, notched or bored pieces",
        Compute = x => Section.Inertia(x[0], x[1]),
    };

    /// <summary>Bending stress.</summary>
    public static readonly Formula BendingStress = new()
    {
        Id = "bending-stress",
        Name = "Bending stress of a rail or joist",
        Subject = Subject,
        Equation = "f_b = w L²/(8 S)",
        Inputs = [Load, Span, Modulus],
        Output = new("stress", "Bending stress", Units.Megapascal),
        Sources = [Mechanics, Gere, SpanTable],
        Confidence = Confidence.PublishedExample,
        Error = "exact for an even load on two supports; a load gathered at mid-span bends up to twice as hard",
        NotFor = Engineer,
        Compute = x => Beam.BendingStress(x[0], x[1], x[2]),
    };

    /// <summary>Shear stress.</summary>
    public static readonly Formula ShearStress = new()
    {
        Id = "shear-stress",
        Name = "Shear stress along the grain of a rail or joist",
        Subject = Subject,
        Equation = "f_v = 3 (w L/2)/(2 A)",
        Inputs = [Load, Span, Area],
        Output = new("stress", "Shear stress", Units.Megapascal),
        Sources = [Mechanics],
        Confidence = Confidence.Textbook,
        Error = "exact for an even load on two supports, and a little too large since loads beside the support are counted",
        NotFor = "notched ends",
        Compute = x => Beam.ShearStress(x[0], x[1], x[2]),
    };

    /// <summary>Deflection by bending.</summary>
    public static readonly Formula Deflection = new()
    {
        Id = "beam-deflection",
        Name = "Sag of a rail or joist by bending, at first",
        Subject = Subject,
        Equation = "Δ = 5 w L⁴/(384 E I)",
        Inputs = [Load, Span, Elasticity, Inertia],
        Output = new("deflection", "Deflection at mid-span", Units.Millimetre),
        Sources = [Mechanics, FloorTable],
        Confidence = Confidence.PublishedExample,
        Error = "a fifth to a quarter: pieces of one grade differ that much in stiffness",
        NotFor = "years under load: see long-term-deflection",
        Compute = x => Beam.Deflection(x[0], x[1], x[2], x[3]),
    };

    /// <summary>Deflection by shear.</summary>
    public static readonly Formula ShearDeflection = new()
    {
        Id = "shear-deflection",
        Name = "Sag of a rail or joist by shear",
        Subject = Subject,
        Equation = "Δ_s = w L²/(8 G (5/6) A), G = E/16",
        Inputs = [Load, Span, Elasticity, Area],
        Output = new("deflection", "Deflection by shear", Units.Millimetre),
        Sources =
        [
            new("Soltis, Wood Handbook, chapter 8, Structural analysis equations, equation 8-2"),
            Source.FromMemory("G of E/16, a convention of design texts; 1/12 to 1/20 by species"),
        ],
        Confidence = Confidence.Textbook,
        Error = "a quarter, of something that is under a tenth of the sag unless the piece is short and deep",
        NotFor = "pieces shorter than four times their depth",
        Compute = x => Beam.ShearDeflection(x[0], x[1], x[2], x[3]),
    };

    /// <summary>Deflection after years.</summary>
    public static readonly Formula LongTermDeflection = new()
    {
        Id = "long-term-deflection",
        Name = "Sag after years under load",
        Subject = Subject,
        Equation = "Δ_T = K_cr Δ_LT + Δ_ST",
        Inputs =
        [
            new("permanent", "Deflection by what stays on, at first", Units.Millimetre, 0, 1e3),
            new("creep", "Factor for creep", Units.One, 1, 3, 2, "from memory: NDS 3.5.2, wet or unseasoned lumber; 1.5 for seasoned lumber kept dry"),
            new("passing", "Deflection by what comes and goes", Units.Millimetre, 0, 1e3, 0, "nothing: a bed of water stays on"),
        ],
        Output = new("deflection", "Deflection after years", Units.Millimetre),
        Sources = [Source.FromMemory("National Design Specification for Wood Construction, 3.5.2")],
        Confidence = Confidence.Textbook,
        Error = "half: creep depends on how wet, how dry in turn, and how near to its strength the piece is loaded",
        NotFor = "pieces loaded beyond what is allowed, whose creep does not end",
        Compute = x => Beam.LongTermDeflection(x[0], x[1], x[2]),
    };

    /// <summary>Longest span by bending.</summary>
    public static readonly Formula SpanByBending = new()
    {
        Id = "span-by-bending",
        Name = "Longest span by strength",
        Subject = Subject,
        Equation = "L = √(8 S F_b'/w)",
        Inputs = [Load with { Min = 1 }, Modulus, new("allowable", "Allowable bending stress", Units.Megapascal, Strength.MinStress, Strength.MaxStress)],
        Output = new("span", "Longest span", Units.Metre),
        Sources = [Mechanics, SpanTable],
        Confidence = Confidence.PublishedExample,
        Error = "reproduces the code's span table to the inch",
        NotFor = Engineer,
        Compute = x => Beam.SpanByBending(x[0], x[1], x[2]),
    };

    /// <summary>Longest span by sag.</summary>
    public static readonly Formula SpanByDeflection = new()
    {
        Id = "span-by-deflection",
        Name = "Longest span by sag",
        Subject = Subject,
        Equation = "L = (384 E I/(5 w n))^(1/3)",
        Inputs =
        [
            Load with { Min = 1 }, Elasticity, Inertia,
            new("limit", "The n of a limit of span/n", Units.One, 100, 1000, 240, "joist tables: span/240 under the whole load, span/360 under what comes and goes"),
        ],
        Output = new("span", "Longest span", Units.Metre),
        Sources = [Mechanics, FloorTable],
        Confidence = Confidence.PublishedExample,
        Error = "reproduces the code's span table to the inch",
        NotFor = Engineer,
        Compute = x => Beam.SpanByDeflection(x[0], x[1], x[2], x[3]),
    };

    /// <summary>Mass of flooded media.</summary>
    public static readonly Formula FloodedMedia = new()
    {
        Id = "flooded-media-mass",
        Name = "Mass of media full of water",
        Subject = Subject,
        Equation = "m = V (ρ + 1000 ε)",
        Inputs =
        [
            new("volume", "Bulk volume of the media", Units.Litre, 0, 1e6),
            new("density", "Bulk density, dry", Units.KilogramPerCubicMetre, 5, 3000),
            new("voids", "Share between the grains", Units.Percent, 0, 100),
        ],
        Output = new("mass", "Mass, flooded", Units.Kilogram),
        Sources = [Source.Definition("bulk density and porosity"), new("Engineering ToolBox, dirt and mud densities: gravel 1680 kg/m³ dry, 2000 kg/m³ wet")],
        Confidence = Confidence.PublishedExample,
        Error = "5 to 10 %: densities of one kind of gravel in print differ that much",
        NotFor = "grains that drink, such as expanded clay: add a tenth to a fifth of their dry mass or more",
        Compute = x => Weight.FloodedMedia(x[0], x[1], x[2]),
    };

    /// <summary>Line load on a rail.</summary>
    public static readonly Formula LineLoad = new()
    {
        Id = "line-load",
        Name = "Load on each length of the rails that share a weight",
        Subject = Subject,
        Equation = "w = m g/(n l)",
        Inputs =
        [
            Mass,
            new("pieces", "Pieces that share it", Units.One, 1, Weight.MaxPieces),
            new("length", "Length over which it lies on each", Units.Metre, Beam.MinSpan, Beam.MaxSpan),
        ],
        Output = new("load", "Load on each length", Units.NewtonPerMetre),
        Sources = [Source.Definition("weight is mass times standard gravity, 9.80665 m/s²"), Gere],
        Confidence = Confidence.PublishedExample,
        Error = "exact where the pieces share evenly; on an uneven floor half of them may carry all",
        Compute = x => Weight.LineLoad(x[0], x[1], x[2]),
    };

    /// <summary>Load on a leg.</summary>
    public static readonly Formula LegLoad = new()
    {
        Id = "leg-load",
        Name = "Load on each leg",
        Subject = Subject,
        Equation = "P = m g/n",
        Inputs = [Mass, new("legs", "Legs that share it", Units.One, 1, Weight.MaxPieces)],
        Output = new("load", "Load on a leg", Units.Newton),
        Sources = [Source.Definition("weight is mass times standard gravity, 9.80665 m/s²")],
        Confidence = Confidence.Textbook,
        Error = "exact where the legs share evenly; on an uneven floor two of four may carry all",
        Compute = x => Weight.LegLoad(x[0], x[1]),
    };

    /// <summary>Load on an area of floor.</summary>
    public static readonly Formula FloorLoad = new()
    {
        Id = "floor-load",
        Name = "Load on each area of floor",
        Subject = Subject,
        Equation = "q = m/A",
        Inputs = [Mass, new("area", "Floor it stands on", Units.SquareMetre, 0.001, 1e4)],
        Output = new("load", "Load on each area", Units.KilogramPerSquareMetre),
        Sources = [Source.Definition("mass over area"), new("Tote sellers' figures: a full tote presses 182 lb/ft² on its footprint")],
        Confidence = Confidence.PublishedExample,
        Error = "exact under the whole footprint; under a foot it is many times as much",
        NotFor = "deciding that a floor is safe: it depends on joists, their span and what else stands there; a structural engineer decides",
        Compute = x => Weight.FloorLoad(x[0], x[1]),
    };

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Formula> All { get; } =
    [
        SectionArea, SectionModulus, SectionInertia, FloodedMedia, LineLoad, LegLoad, FloorLoad, BendingStress, ShearStress, Deflection, ShearDeflection,
        LongTermDeflection, SpanByBending, SpanByDeflection, .. StrengthFormulas.All,
    ];
}
