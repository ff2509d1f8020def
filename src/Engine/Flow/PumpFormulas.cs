using Runnel.Engine.Figures;
using Runnel.Engine.Quantities;

namespace Runnel.Engine.Flow;

/// <summary>The formulary's rules about pumps.</summary>
public static class PumpFormulas
{
    private static readonly Source Crane = new("Crane, Flow of Fluids, TP-410M (2009), examples 7-33 and 7-34, as quoted by C. Bell, fluids");

    private static readonly FormulaInput Head = new("head", "Head", Units.Metre, 0, 200);
    private static readonly FormulaInput Ratio = new("ratio", "New speed over old", Units.One, 0.1, 3);

    public static readonly Formula OnePointCurve = new Formula
    {
        Id = "pump-one-point",
        Name = "Head of a pump of which one point is known",
        Subject = FlowFormulas.Subject,
        Equation = "H = 4/3 H0 − (H0/3)(Q/Q0)²",
        Inputs =
        [
            new("design-flow", "Flow at the known point", Units.LitrePerHour, 1, 1e6),
            new("design-head", "Head at the known point", Units.Metre, 0.01, 200),
            new("flow", "Flow", Units.LitrePerHour, 0, 1e6),
        ],
        Output = new("head", "Head", Units.Metre),
        Sources = [new("EPANET 2.2 User Manual (2020), tutorial, curve of one point")],
        Confidence = Confidence.PublishedExample,
        Error = "a guess about any one pump; negative beyond twice the known flow",
        NotFor = "the flow printed on a box, which is at no head; a pump whose curve is known",
        Compute = x => PumpCurve.FromDesignPoint(x[0], x[1]).HeadAt(x[2]),
    }.InItsUnits();

    public static readonly Formula AffinityFlow = new Formula
    {
        Id = "affinity-flow",
        Name = "Flow of a pump at another speed",
        Subject = FlowFormulas.Subject,
        Equation = "Q2 = Q1 (n2/n1)",
        Inputs = [PipeFormulas.Flow, Ratio],
        Output = new("flow", "Flow", Units.LitrePerHour),
        Sources = [Crane],
        Confidence = Confidence.PublishedExample,
        Error = "a few percent near the old speed",
        NotFor = "the flow in a loop that lifts water: lift does not shrink with speed; lay the new curve over the pipes",
        Compute = x => Affinity.Flow(x[0], x[1]),
    }.InItsUnits();

    public static readonly Formula AffinityHead = new Formula
    {
        Id = "affinity-head",
        Name = "Head of a pump at another speed",
        Subject = FlowFormulas.Subject,
        Equation = "H2 = H1 (n2/n1)²",
        Inputs = [Head, Ratio],
        Output = new("head", "Head", Units.Metre),
        Sources = [Crane],
        Confidence = Confidence.PublishedExample,
        Error = "a few percent near the old speed",
        Compute = x => Affinity.Head(x[0], x[1]),
    }.InItsUnits();

    public static readonly Formula AffinityPower = new Formula
    {
        Id = "affinity-power",
        Name = "Shaft power of a pump at another speed",
        Subject = FlowFormulas.Subject,
        Equation = "P2 = P1 (n2/n1)³",
        Inputs = [new("power", "Shaft power", Units.Watt, 0, 1e5), Ratio],
        Output = new("power", "Shaft power", Units.Watt),
        Sources = [Crane],
        Confidence = Confidence.PublishedExample,
        Error = "a few percent near the old speed",
        NotFor = "power at the plug of a small pump, whose motor loses most of it",
        Compute = x => Affinity.Power(x[0], x[1]),
    }.InItsUnits();

    public static readonly Formula HydraulicPower = new Formula
    {
        Id = "hydraulic-power",
        Name = "Power in moved water",
        Subject = FlowFormulas.Subject,
        Equation = "P = ρ g Q H",
        Inputs = [PipeFormulas.Flow, Head],
        Output = new("power", "Hydraulic power", Units.Watt),
        Sources = [Source.Definition("work of lifting"), Crane],
        Confidence = Confidence.PublishedExample,
        Error = "0.3 % from 0 to 30 °C",
        Compute = x => PumpPower.Hydraulic(x[0], x[1]),
    }.InItsUnits();

    public static readonly Formula WireToWater = new Formula
    {
        Id = "wire-to-water",
        Name = "Share of a pump's electricity that reaches the water",
        Subject = FlowFormulas.Subject,
        Equation = "η = ρ g Q H/P",
        Inputs = [PipeFormulas.Flow, Head, new("power", "Power at the plug", Units.Watt, 0.1, 1e5)],
        Output = new("efficiency", "Wire-to-water efficiency", Units.Percent),
        Sources = [Crane, new("J. Evans, Pumps and Systems: efficiencies of pump, motor and drive multiply")],
        Confidence = Confidence.PublishedExample,
        Error = "as good as flow, head and watts; 5 to 30 % is usual below 500 W (from memory), above 100 % a number is wrong",
        Compute = x => PumpPower.WireToWater(x[0], x[1], x[2]),
    }.InItsUnits();
}
