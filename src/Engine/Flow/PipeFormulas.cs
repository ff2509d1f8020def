using Runnel.Engine.Figures;
using Runnel.Engine.Quantities;

namespace Runnel.Engine.Flow;

/// <summary>The formulary's rules about full pipes.</summary>
public static class PipeFormulas
{
    private static readonly Source Epanet = new("Rossman and others 2020, EPANET 2.2 User Manual, US EPA, chapter 12 and tables 3.1 to 3.3");

    internal static readonly FormulaInput Flow = new("flow", "Flow", Units.LitrePerHour, 0, 1e6);
    internal static readonly FormulaInput Diameter = new("diameter", "Inside diameter", Units.Millimetre, 5, 500);
    internal static readonly FormulaInput Length = new("length", "Length", Units.Metre, 0, 1000);

    internal static readonly FormulaInput Temperature = new(
        "temperature", "Water temperature", Units.Celsius, WaterProperties.Min, WaterProperties.Max, WaterProperties.UsualTemperature,
        "common practice, no source: a mild loop");

    private static readonly FormulaInput RoughnessInput = new(
        "roughness", "Roughness of the wall", Units.Millimetre, 0, 0.5, 0.0015, "EPANET 2.2 manual, table 3.2: new plastic pipe");

    private static readonly FormulaInput Turbulent = new(
        "reynolds", "Reynolds number", Units.One, FrictionFactor.MinTurbulent, FrictionFactor.MaxReynolds);

    private static readonly FormulaInput RelativeRoughness = new("relative-roughness", "Roughness over inside diameter", Units.One, 0, 0.05);

    private static readonly FormulaOutput Friction = new("friction", "Darcy friction factor", Units.One);
    private static readonly FormulaOutput Loss = new("loss", "Head lost", Units.Metre);

    public static readonly Formula WaterDensity = new()
    {
        Id = "water-density",
        Name = "Density of water",
        Subject = FlowFormulas.Subject,
        Equation = "ρ = (999.83952 + 16.945176 t − 7.9870401e-3 t² − 46.170461e-6 t³ + 105.56302e-9 t⁴ − 280.54253e-12 t⁵)/(1 + 16.87985e-3 t)",
        Inputs = [Temperature],
        Output = new("density", "Density", Units.KilogramPerCubicMetre),
        Sources = [Source.FromMemory("Kell 1975, Journal of Chemical and Engineering Data 20, 97-105"), new("Maurer, R package hydraulics, vignette")],
        Confidence = Confidence.PublishedExample,
        Error = "under 0.01 %",
        NotFor = "salt water",
        Compute = x => WaterProperties.Density(x[0]),
    };

    public static readonly Formula WaterViscosity = new Formula
    {
        Id = "water-viscosity",
        Name = "Kinematic viscosity of water",
        Subject = FlowFormulas.Subject,
        Equation = "ν = μ/ρ; μ = 280.68 τ^−1.9 + 511.45 τ^−7.7 + 61.131 τ^−19.6 + 0.45903 τ^−40 µPa·s; τ = T/300 K",
        Inputs = [Temperature],
        Output = new("viscosity", "Kinematic viscosity", Units.SquareMillimetrePerSecond),
        Sources =
        [
            Source.FromMemory("IAPWS SR6-08(2011); Pátek and others 2009, Journal of Physical and Chemical Reference Data 38, 21-29"),
            new("Crane, Flow of Fluids, TP-410M (2009), example 7-1, as quoted by C. Bell, fluids"),
        ],
        Confidence = Confidence.PublishedExample,
        Error = "1 %; tables in print differ by 2 %",
        NotFor = "salt water",
        Compute = x => WaterProperties.KinematicViscosity(x[0]),
    }.InItsUnits();

    public static readonly Formula PipeVelocity = new Formula
    {
        Id = "pipe-velocity",
        Name = "Velocity in a full pipe",
        Subject = FlowFormulas.Subject,
        Equation = "V = 4 Q/(π D²)",
        Inputs = [Flow, Diameter],
        Output = new("velocity", "Mean velocity", Units.MetrePerSecond),
        Sources = [Source.Definition("flow over cross-section"), Epanet],
        Confidence = Confidence.PublishedExample,
        Error = "none but that of the bore: 5 % in diameter is 10 % in velocity",
        NotFor = "a pipe's nominal size in place of its bore; a pipe that is not full",
        Compute = x => Runnel.Engine.Flow.PipeVelocity.Mean(x[0], x[1]),
    }.InItsUnits();

    public static readonly Formula Reynolds = new Formula
    {
        Id = "reynolds-number",
        Name = "Reynolds number in a full pipe",
        Subject = FlowFormulas.Subject,
        Equation = "Re = V D/ν",
        Inputs = [Flow, Diameter, Temperature],
        Output = new("reynolds", "Reynolds number", Units.One),
        Sources = [Source.Definition("the Reynolds number"), new("Crane TP-410M (2009), example 7-1, as quoted by C. Bell, fluids")],
        Confidence = Confidence.PublishedExample,
        Error = "that of the viscosity, 1 to 2 %",
        Compute = x => Runnel.Engine.Flow.PipeVelocity.Reynolds(x[0], x[1], WaterProperties.KinematicViscosity(x[2])),
    }.InItsUnits();

    public static readonly Formula FrictionLaminar = new()
    {
        Id = "friction-laminar",
        Name = "Friction factor of laminar flow",
        Subject = FlowFormulas.Subject,
        Equation = "f = 64/Re",
        Inputs = [new("reynolds", "Reynolds number", Units.One, 1, FrictionFactor.MaxLaminar)],
        Output = Friction,
        Sources = [Epanet],
        Confidence = Confidence.Textbook,
        Error = "none in a long straight pipe",
        NotFor = "Reynolds numbers above 2000",
        Compute = x => FrictionFactor.Laminar(Range.Within(x[0], 1, FrictionFactor.MaxLaminar)),
    };

    public static readonly Formula FrictionColebrook = new()
    {
        Id = "friction-colebrook",
        Name = "Friction factor of turbulent flow",
        Subject = FlowFormulas.Subject,
        Equation = "1/√f = −2 log10((ε/D)/3.7 + 2.51/(Re √f))",
        Inputs = [Turbulent, RelativeRoughness],
        Output = Friction,
        Sources =
        [
            new("Colebrook 1939, Journal of the Institution of Civil Engineers 11, 133-156, as printed in Maurer, hydraulics, and Embry, iemisc"),
            new("Lindeburg, Civil Engineering Reference Manual, example 17.2, as quoted by Embry, iemisc"),
        ],
        Confidence = Confidence.PublishedExample,
        Error = "solved to 1e-15; the equation itself is good for 10 to 15 % of measured pipes (from memory)",
        NotFor = "corrugated hose, slimed pipe; texts with Fanning's factor, a quarter of this one",
        Compute = x => FrictionFactor.ColebrookWhite(x[0], Range.Within(x[1], 0, RelativeRoughness.Max)),
    };

    public static readonly Formula FrictionSwameeJain = new()
    {
        Id = "friction-swamee-jain",
        Name = "Friction factor of turbulent flow, without iteration",
        Subject = FlowFormulas.Subject,
        Equation = "f = 0.25/[log10((ε/D)/3.7 + 5.74/Re^0.9)]²",
        Inputs = [Turbulent, RelativeRoughness],
        Output = Friction,
        Sources = [Epanet, new("Lindeburg, example 17.2, as quoted by Embry, iemisc")],
        Confidence = Confidence.PublishedExample,
        Error = "1 % of Colebrook and White from Re 1e4 to 1e7 with ε/D up to 0.001; 3.4 % anywhere",
        NotFor = "corrugated hose, slimed pipe",
        Compute = x => FrictionFactor.SwameeJain(x[0], Range.Within(x[1], 0, RelativeRoughness.Max)),
    };

    public static readonly Formula FrictionDunlop = new()
    {
        Id = "friction-transition",
        Name = "Friction factor between laminar and turbulent flow",
        Subject = FlowFormulas.Subject,
        Equation = "f = X1 + R (X2 + R (X3 + R X4)); R = Re/2000; FB = FA (2 + AA AB/(Y2 Y3)); X1 = 7FA − FB; X2 = 0.128 − 17FA + 2.5FB; X3 = −0.128 + 13FA − 2FB; X4 = 0.032 − 3FA + 0.5FB",
        Inputs =
        [
            new("reynolds", "Reynolds number", Units.One, FrictionFactor.MaxLaminar, FrictionFactor.MinTurbulent),
            RelativeRoughness,
        ],
        Output = Friction,
        Sources = [new("Dunlop 1991, WADI Users Manual, as printed in the EPANET 2.2 User Manual, chapter 12")],
        Confidence = Confidence.Textbook,
        Error = "flow itself wavers here: 0.03 to 0.04 whatever the formula",
        Compute = x => FrictionFactor.Dunlop(x[0], Range.Within(x[1], 0, RelativeRoughness.Max)),
    };

    public static readonly Formula HeadLoss = new Formula
    {
        Id = "head-loss",
        Name = "Head lost along a pipe",
        Subject = FlowFormulas.Subject,
        Equation = "h = f (L/D) V²/2g; f = 64/Re to Re 2000, Dunlop's transition to 4000, Swamee and Jain's above",
        Inputs = [Flow, Diameter, Length, RoughnessInput, Temperature],
        Output = Loss,
        Sources =
        [
            Epanet,
            new("Kudela, Hydraulic losses in pipes, example 1; Subramanian, pipe flow example; both as quoted by Embry, iemisc"),
            new("Maurer, R package hydraulics, vignette"),
        ],
        Confidence = Confidence.PublishedExample,
        Error = "3.4 % of Colebrook and White; 10 to 15 % of measured clean pipe; a bore 5 % off is 25 %",
        NotFor = "corrugated hose, slimed pipe, pipe that is not full",
        Compute = x => Runnel.Engine.Flow.HeadLoss.Pipe(x[0], x[1], x[2], x[3], WaterProperties.KinematicViscosity(x[4])),
    }.InItsUnits();

    public static readonly Formula HeadLossHazenWilliams = new Formula
    {
        Id = "head-loss-hazen-williams",
        Name = "Head lost along a pipe, rule of waterworks",
        Subject = FlowFormulas.Subject,
        Equation = "h = 10.67 L Q^1.852/(C^1.852 D^4.8704)",
        Inputs =
        [
            Flow, Diameter, Length,
            new("coefficient", "Coefficient C of the pipe", Units.One, 40, 160, Roughness.PlasticC,
                "middle of the sources for PVC: 140 (Engineering ToolBox), 145, 150 (Illinois Administrative Code 77-906)"),
        ],
        Output = Loss,
        Sources = [new("Illinois Administrative Code title 77 part 906, appendix A, exhibit I: schedule 40 plastic pipe, C 150"), Epanet],
        Confidence = Confidence.PublishedExample,
        Error = "C from 140 to 150 is 14 %; forms in print differ by 1 %; up to 15 % low in small pipes at low flow",
        NotFor = "water far from 15 °C, small pipes at low flow: take head-loss",
        Compute = x => Runnel.Engine.Flow.HeadLoss.HazenWilliams(x[0], x[1], x[2], x[3]),
    }.InItsUnits();

    public static readonly Formula FittingLoss = new Formula
    {
        Id = "fitting-loss",
        Name = "Head lost in fittings",
        Subject = FlowFormulas.Subject,
        Equation = "h = K V²/2g",
        Inputs = [new("coefficient", "Loss coefficients K, added up", Units.One, 0, 1000), Flow, Diameter],
        Output = Loss,
        Sources = [Epanet],
        Confidence = Confidence.Textbook,
        Error = "coefficients in print differ twofold and more for one elbow",
        NotFor = "fittings so close that they disturb each other",
        Compute = x => Runnel.Engine.Flow.HeadLoss.Fitting(x[0], x[1], x[2]),
    }.InItsUnits();

    public static readonly Formula PipeCapacity = new Formula
    {
        Id = "pipe-capacity",
        Name = "Flow that a height drives through a full pipe",
        Subject = FlowFormulas.Subject,
        Equation = "H = (f L/D + ΣK) V²/2g, solved for V; Q = V π D²/4",
        Inputs =
        [
            new("head", "Height of the water above the outlet", Units.Metre, 0, 50),
            Diameter, Length,
            new("coefficient", "Loss coefficients K, added up, with 1 for the exit", Units.One, 1, 1000, 1.5, "a flush entrance 0.5 and the exit 1: EPANET 2.2 manual, table 3.3"),
            RoughnessInput, Temperature,
        ],
        Output = new("flow", "Flow", Units.LitrePerHour),
        Sources = [Source.Definition("energy equation of steady flow"), new("Maurer, R package hydraulics, vignette, pipe of 25 mm")],
        Confidence = Confidence.PublishedExample,
        Error = "5 to 10 %, as good as bore and coefficients",
        NotFor = "a drain that swallows air at its mouth: see overflow-flow; slimed pipe",
        Compute = x => new FullPipe(x[1], x[2], x[3], x[4]).FlowUnder(x[0], WaterProperties.KinematicViscosity(x[5])),
    }.InItsUnits();
}
