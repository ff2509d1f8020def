using Runnel.Engine.Figures;
using Runnel.Engine.Quantities;

namespace Runnel.Engine.Flow;

/// <summary>The formulary's rules about water that runs by itself: holes, rims, drains, siphons.</summary>
public static class GravityFormulas
{
    private static readonly Source Hills = new(
        "Hills 1983, Designing piping for gravity flow, Chemical Engineering 90(18), 111-114, limits as quoted in public process-engineering texts");

    private static readonly FormulaInput Coefficient = new(
        "coefficient", "Discharge coefficient", Units.One, 0.4, 1, Runnel.Engine.Flow.Orifice.SharpEdged, "sharp-edged hole: 0.60 to 0.62 in handbooks");

    private static readonly FormulaInput Hole = new("hole", "Diameter of the hole", Units.Millimetre, 1, 500);

    public static readonly Formula Orifice = new Formula
    {
        Id = "orifice-flow",
        Name = "Flow through a hole",
        Subject = FlowFormulas.Subject,
        Equation = "Q = Cd (π/4) d² √(2 g h)",
        Inputs = [Hole, new("head", "Height of the water above the hole", Units.Metre, 0, 10), Coefficient],
        Output = new("flow", "Flow", Units.LitrePerHour),
        Sources = [new("Torricelli's law with the coefficients of hydraulic engineering courses, 0.60 to 0.62 sharp edged")],
        Confidence = Confidence.Textbook,
        Error = "2 % for a clean sharp edge; a burr or slime takes 10 to 30 % (guess)",
        NotFor = "a hole with a pipe behind it, water lower than about one hole's diameter",
        Compute = x => Runnel.Engine.Flow.Orifice.Flow(PipeVelocity.Area(x[0]), x[1], x[2]),
    }.InItsUnits();

    public static readonly Formula Overflow = new Formula
    {
        Id = "overflow-flow",
        Name = "What an open standpipe takes in",
        Subject = FlowFormulas.Subject,
        Equation = "Q = min(1.84 π D h^1.5, 0.6 (π/4) D² √(2 g h))",
        Inputs = [PipeFormulas.Diameter, new("head", "Height of the water above the rim", Units.Millimetre, 0, 1000)],
        Output = new("flow", "Flow", Units.LitrePerHour),
        Sources = [new("Stages of a riser in stormwater manuals (weir, then orifice); weir coefficient 2.8 to 3.33 in feet, 1.55 to 1.84 in metres")],
        Confidence = Confidence.Textbook,
        Error = "the weir coefficient alone spans 16 %; near h = 0.36 D, where the two meet, less by up to a third (guess)",
        NotFor = "a rim under a screen, cap or hair; a drain line behind it that is too small",
        Compute = x => Runnel.Engine.Flow.Overflow.Rim(x[0], x[1]),
    }.InItsUnits();

    public static readonly Formula DrainTime = new Formula
    {
        Id = "drain-time",
        Name = "Time in which a tank empties through a hole",
        Subject = FlowFormulas.Subject,
        Equation = "t = 2 A_t (√h1 − √h2)/(Cd (π/4) d² √(2 g))",
        Inputs =
        [
            new("area", "Area of the water surface (of a media bed, times its voids)", Units.SquareMetre, 0, 100),
            Hole,
            new("from", "Height above the hole at the start", Units.Metre, 0, 10),
            new("to", "Height above the hole at the end", Units.Metre, 0, 10, 0, "to the hole"),
            Coefficient,
        ],
        Output = new("time", "Time", Units.MinuteUnit),
        Sources = [new("Torricelli's law integrated, engineeringprep.com problem 435 and hydraulic engineering courses")],
        Confidence = Confidence.PublishedExample,
        Error = "as good as the discharge coefficient; the last centimetres drain slower",
        NotFor = "a tank that is being filled, sloping walls, a pipe behind the hole",
        Compute = x => Runnel.Engine.Flow.Orifice.DrainTime(x[0], PipeVelocity.Area(x[1]), x[2], x[3], x[4]),
    }.InItsUnits();

    public static readonly Formula PartFullPipe = new Formula
    {
        Id = "part-full-pipe",
        Name = "Flow in a sloping pipe that is not full",
        Subject = FlowFormulas.Subject,
        Equation = "Q = A R^(2/3) S^(1/2)/n; R = A/P",
        Inputs =
        [
            PipeFormulas.Diameter,
            new("depth", "Depth of water, share of the diameter", Units.Percent, 0, 100, 50, "National Standard Plumbing Code 2009, appendix K: drains are designed half full"),
            new("slope", "Fall", Units.Percent, 0.01, 50, 1, "common practice, no source: 1 to 2 %"),
            new("roughness", "Manning's n", Units.One, 0.006, 0.05, Manning.PlasticRoughness,
                "EPANET 2.2 manual, table 3.2, plastic 0.011 to 0.015; plumbing handbooks take 0.009 (from memory)"),
        ],
        Output = new("flow", "Flow", Units.LitrePerHour),
        Sources =
        [
            new("Manning's equation as in Maurer, R package hydraulics, vignette, and Cengel and Cimbala, Fluid Mechanics, quoted by C. Bell, fluids"),
            new("National Standard Plumbing Code 2009, appendix K: flow at other depths"),
        ],
        Confidence = Confidence.PublishedExample,
        Error = "n from 0.009 to 0.013 is 44 %; with n that varies by depth part-full pipes carry up to a fifth less",
        NotFor = "drains of a metre or two, which their mouth rules; drains that are to fill and suck",
        Compute = x => Manning.Flow(x[0], x[1], x[2], x[3]),
    }.InItsUnits();

    public static readonly Formula PipeFroude = new Formula
    {
        Id = "pipe-froude",
        Name = "Froude number of water falling in a pipe",
        Subject = FlowFormulas.Subject,
        Equation = "Fr = V/√(g D)",
        Inputs = [PipeFormulas.Flow, PipeFormulas.Diameter],
        Output = new("froude", "Froude number", Units.One),
        Sources = [Hills],
        Confidence = Confidence.PublishedExample,
        Error = "the limits of 0.3 (air escapes) and 1 (air is swept out) are cautious round numbers",
        NotFor = "flat pipes",
        Compute = x => Runnel.Engine.Flow.PipeFroude.Of(x[0], x[1]),
    }.InItsUnits();

    public static readonly Formula SiphonLeastInflow = new Formula
    {
        Id = "siphon-least-inflow",
        Name = "Least inflow at which a siphon starts",
        Subject = FlowFormulas.Subject,
        Equation = "Q = Fr (π/4) D² √(g D)",
        Inputs =
        [
            PipeFormulas.Diameter,
            new("froude", "Froude number at which air no longer escapes", Units.One, 0.1, 2, Runnel.Engine.Flow.PipeFroude.SelfVenting,
                "Hills 1983, as quoted in public process-engineering texts: 0.3; from 1 on it is swept out for certain"),
        ],
        Output = new("flow", "Flow", Units.LitrePerMinute),
        Sources = [Hills, Source.Practice("siphons of 25 mm work from 4 to 15 L/min, which is Froude 0.27 to 1.0")],
        Confidence = Confidence.Textbook,
        Error = "a factor of up to three: from 0.3 to 1 it depends on bell and drain. That the limit holds under a bell is our inference",
        NotFor = "loop siphons of thin hose, which start at less",
        Compute = x => Runnel.Engine.Flow.PipeFroude.Flow(x[1], x[0]),
    }.InItsUnits();

    public static readonly Formula BedFillTime = new Formula
    {
        Id = "bed-fill-time",
        Name = "Time in which a bed fills",
        Subject = FlowFormulas.Subject,
        Equation = "t = A φ h/Q",
        Inputs =
        [
            new("area", "Inside area of the bed", Units.SquareMetre, 0, 100),
            new("voids", "Share that water can fill", Units.Percent, 5, 100, 45, "common practice, no source: gravel and expanded clay 40 to 50 %"),
            new("rise", "How far the water rises", Units.Centimetre, 0, 300),
            new("flow", "Flow into the bed", Units.LitrePerHour, 1, 1e6),
        ],
        Output = new("time", "Time", Units.MinuteUnit),
        Sources = [Source.Definition("volume over flow")],
        Confidence = Confidence.Textbook,
        Error = "as good as the voids, 10 to 20 %; roots take some of them",
        Compute = x => x[0] * x[1] * x[2] / x[3],
    }.InItsUnits();
}
