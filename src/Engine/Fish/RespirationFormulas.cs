using Runnel.Engine.Figures;
using Runnel.Engine.Quantities;

namespace Runnel.Engine.Fish;

/// <summary>The formulary's entries about the breath of fish; listed with <see cref="FishFormulas"/>.</summary>
public static class RespirationFormulas
{
    private const string Subject = "Fish";

    private static readonly FormulaOutput Oxygen = new("respiration", "Oxygen used by the fish", Units.MilligramPerKilogramHour);

    public static readonly Formula FishRespiration = new()
    {
        Id = "fish-respiration",
        Name = "Oxygen used by fish",
        Subject = Subject,
        Equation = "R = R_25 × 2^((T − 25)/10) × (W/100)^(−0.2)",
        Inputs =
        [
            new("temperature", "Temperature of the water", Units.Celsius, Respiration.MinTemperature, Respiration.MaxTemperature),
            new("weight", "Mean weight of one", Units.Gram, Respiration.MinWeight, Respiration.MaxWeight),
            new("rate", "Oxygen used at 25 °C by fish of 100 g", Units.MilligramPerKilogramHour, Respiration.MinRate, Respiration.MaxRate, Respiration.WarmWater,
                "from memory, Timmons and Ebeling 2013: fed warm-water fish 200 to 400; for trout take 450, 300 to 550"),
        ],
        Output = Oxygen,
        Sources =
        [
            Literature.TimmonsEbeling,
            Source.FromMemory("Clarke and Johnston 1999, Journal of Animal Ecology 68: metabolism of bony fish goes with weight to the power of 0.8"),
        ],
        Confidence = Confidence.Textbook,
        Error = "a factor of two either way: kind of fish, the last meal (a third to a half more for 1 to 3 h), fright",
        NotFor = "temperatures that the fish does not like; fish that breathe air; bacteria and solids, which take a quarter to a half on top",
        Compute = x => Respiration.Doubling(x[0], x[1], x[2]),
    };

    public static readonly Formula TilapiaRespiration = new()
    {
        Id = "tilapia-respiration",
        Name = "Oxygen used by young Nile tilapia",
        Subject = Subject,
        Equation = "R = 2014.45 + 2.75 W − 165.2 T + 0.007 W² + 3.93 T² − 0.21 W T",
        Inputs =
        [
            new("temperature", "Temperature of the water", Units.Celsius, Respiration.MinTilapiaTemperature, Respiration.MaxTilapiaTemperature),
            new("weight", "Mean weight of one", Units.Gram, Respiration.MinTilapiaWeight, Respiration.MaxTilapiaWeight),
        ],
        Output = Oxygen,
        Sources = [new("Khater and others 2021, Scientific Reports 11:24130, measured in recirculating tanks")],
        Confidence = Confidence.Textbook,
        Error = "that of a fit to one farm; other authors find up to twice as much",
        NotFor = "fish over 110 g: the polynomial turns there",
        Compute = x => Respiration.Khater(x[0], x[1]),
    };

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Formula> All { get; } = [FishRespiration, TilapiaRespiration];

    /// <summary>Rate of a kind of fish at 25 °C and 100 g, to be taken as an input: a guess with its range.</summary>
    /// <param name="species">Row of the catalogue, or null for a fish that is not in it.</param>
    /// <remarks>Fish that thrive in no more than 20 °C take the rate of trout. Young tilapia were measured lower by
    /// <see cref="TilapiaRespiration"/>; the general rule is kept for them too, for the time without air must not come out too long.</remarks>
    public static Estimate RateOf(Species? species)
    {
        var cold = species is not null && species.Thrives.High <= 20;
        return cold
            ? Rate("cold water", 300, Respiration.ColdWater, 550, "from memory, Timmons and Ebeling 2013: fed trout at 15 °C 150 to 300 mg/kg/h, brought to 25 °C")
            : Rate("warm water", 200, Respiration.WarmWater, 400, "from memory, Timmons and Ebeling 2013: fed warm-water fish 200 to 400 mg/kg/h");
    }

    private static Estimate Rate(string kind, double low, double likely, double high, string source) => Estimate.Of(
        low, high, Units.MilligramPerKilogramHour,
        new Origin($"respiration/{kind}", $"Oxygen used by {kind.Replace(' ', '-')} fish of 100 g at 25 °C", OriginKind.Default, source), likely);
}
