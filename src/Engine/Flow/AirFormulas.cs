using Runnel.Engine.Figures;
using Runnel.Engine.Quantities;

namespace Runnel.Engine.Flow;

/// <summary>The formulary's rules about air in water.</summary>
public static class AirFormulas
{
    private static readonly Source Asce = new("ASCE 2-91, Measurement of oxygen transfer in clean water, form of public wastewater texts; IS 13166:1992");

    private static readonly FormulaInput Depth = new("depth", "Depth of the stones", Units.Metre, 0, 5);

    public static readonly Formula StandardTransfer = new Formula
    {
        Id = "oxygen-transfer-standard",
        Name = "Oxygen from bubbles, clean water at 20 °C without oxygen",
        Subject = FlowFormulas.Subject,
        Equation = "SOTR = Q 0.279 SOTE; SOTE = s d, at most 0.9; Q in L, 0.279 g/L",
        Inputs =
        [
            new("air", "Air", Units.LitrePerMinute, 0, 1000),
            Depth,
            new("efficiency", "Share of oxygen left behind for each metre", Units.PercentPerMetre, 0, 15, 100 * OxygenTransfer.CoarseBubbles,
                "from memory: coarse bubbles 2 to 3 %/m; fine ones 5 to 7 %/m, 6 in a published worked example"),
        ],
        Output = new("oxygen", "Standard oxygen transfer rate", Units.GramPerHour),
        Sources = [Asce, Source.FromMemory("spans for each metre: wastewater handbooks")],
        Confidence = Confidence.Textbook,
        Error = "the span of the share, a factor of two between coarse and fine; tanks shallower than 1 m are outside what was measured",
        NotFor = "oxygen that passes through the stirred surface, which in shallow tanks may be more; airlifts, falling water",
        Compute = x => OxygenTransfer.Standard(x[0], x[1], x[2]),
    }.InItsUnits();

    public static readonly Formula FieldTransfer = new Formula
    {
        Id = "oxygen-transfer-field",
        Name = "Oxygen from bubbles, in the water as it is",
        Subject = FlowFormulas.Subject,
        Equation = "OTR = SOTR α F (β C*_T − C)/C*_20 × 1.024^(T−20)",
        Inputs =
        [
            new("standard", "Standard oxygen transfer rate", Units.GramPerHour, 0, 10000),
            new("temperature", "Water temperature", Units.Celsius, 0, 40),
            new("dissolved", "Dissolved oxygen in the water", Units.MilligramPerLitre, 0, 20),
            new("pressure", "Air pressure", Units.Kilopascal, 50, 110, 101.325, "one standard atmosphere, sea level"),
            new("alpha", "Transfer against clean water, α", Units.One, 0.2, 1.1, 0.9, "from memory: Boyd, fish water 0.9 to 0.95"),
            new("beta", "Saturation against clean water, β", Units.One, 0.8, 1, 0.98, "wastewater texts 0.95 to 0.98; from memory: fish water to 1"),
            new("fouling", "Used stone against new, F", Units.One, 0.2, 1, 1, "new stones; 0.85 to 1 in wastewater texts"),
        ],
        Output = new("oxygen", "Oxygen transferred", Units.GramPerHour),
        Sources = [Asce, new("A pond trade table of the share of a rating still delivered, by dissolved oxygen")],
        Confidence = Confidence.PublishedExample,
        Error = "10 to 20 %, mostly α and F; another table of saturation moves it by 2 %",
        NotFor = "water supersaturated by algae, where the result is negative: oxygen driven out",
        Compute = x => OxygenTransfer.Field(x[0], x[1], x[2], x[3] / 1000, x[4], x[5], x[6]),
    }.InItsUnits();

    public static readonly Formula Pressure = new Formula
    {
        Id = "depth-pressure",
        Name = "Pressure at a depth",
        Subject = FlowFormulas.Subject,
        Equation = "p = ρ g d",
        Inputs = [Depth],
        Output = new("pressure", "Pressure above the air's", Units.Kilopascal),
        Sources = [Source.Definition("weight of water"), new("A pump maker's figure: 0.433 psi for each foot")],
        Confidence = Confidence.PublishedExample,
        Error = "0.3 % from 0 to 30 °C",
        NotFor = "hose, valve and stone, which may take as much again",
        Compute = x => OxygenTransfer.Pressure(x[0]),
    }.InItsUnits();
}
