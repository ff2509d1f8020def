using Runnel.Engine.Crops;
using Runnel.Engine.Figures;
using Runnel.Engine.Filter;
using Runnel.Engine.Fish;
using Runnel.Engine.Numerics;
using Runnel.Engine.Quantities;
using Runnel.Engine.Water;

namespace Runnel.Engine.Year;

/// <summary>The formulary's entries about rates that the year runs on.</summary>
public static class YearFormulas
{
    private const string Subject = "Year";

    private static readonly FormulaInput Temperature = new("temperature", "Water temperature", Units.Celsius, 0, 50);

    private static readonly FormulaInput LeafArea = new("leaf-area", "Leaf area index, m² of leaf on each m²", Units.One, 0, 20);

    private static readonly FormulaInput Extinction =
        new("extinction", "Extinction coefficient", Units.One, 0.2, 1, LightUse.Extinction, "from memory: 0.5 to 0.9 for broad leaves");

    private static readonly Source Plummer = Source.FromMemory("Plummer and Busenberg 1982, Geochimica et Cosmochimica Acta 46, 1011-1040");

    public static readonly Formula ThermalGrowthWeight = new()
    {
        Id = "thermal-growth",
        Name = "Weight of a fish after a time of growth",
        Subject = Subject,
        Equation = "W = (W0^(1/3) + c/100 T d)^3",
        Inputs =
        [
            new("weight", "Weight at the start", Units.Gram, 0.01, 5e4),
            new("coefficient", "Thermal growth coefficient", Units.One, 0.01, 0.4),
            Temperature with { Max = 35 },
            new("days", "Time", Units.DayUnit, 0, 2000),
        ],
        Output = new("weight", "Weight at the end", Units.Gram),
        Sources = [new("Iwama and Tautz 1981, growth of salmonids in hatcheries"), new("Jobling 2003, caution on the thermal growth coefficient")],
        Confidence = Confidence.PublishedExample,
        Error = "A fifth or more from one stock to another.",
        NotFor = "Water warmer than the best temperature; fish on short rations.",
        Compute = x => ThermalGrowth.IwamaTautz(x[0], x[1], x[2], x[3]),
    };

    public static readonly Formula Response = new()
    {
        Id = "temperature-response",
        Name = "Share of its best at which a living thing grows",
        Subject = Subject,
        Equation = "r = ((M - T)/(M - B)) ((T - L)/(B - L))^((B - L)/(M - B))",
        Inputs =
        [
            new("temperature", "Temperature", Units.Celsius, -60, 70),
            new("least", "Temperature at which growth begins", Units.Celsius, -20, 40),
            new("best", "Best temperature", Units.Celsius, -10, 45),
            new("most", "Temperature at which growth ends", Units.Celsius, 0, 60),
        ],
        Output = new("share", "Share of the growth at its best", Units.One),
        Sources = [Source.FromMemory("Yin, Kropff, McLaren and Visperas 1995, Agricultural and Forest Meteorology 77, 1-16"), new("Yan and Hunt 1999, Annals of Botany 84, 607-614: the same with L = 0")],
        Confidence = Confidence.Textbook,
        Error = "That of the three temperatures, which differ by several degrees between sources.",
        NotFor = "Damage by frost or heat.",
        Compute = x => TemperatureResponse.Beta(x[0], x[1], x[2], x[3]),
    };

    public static readonly Formula FishRespiration = new()
    {
        Id = "fish-respiration-quiet",
        Name = "Oxygen used by quiet fish",
        Subject = Subject,
        Equation = "R = R0 (W/100)^-0.2 1.0718^(T - B)",
        Inputs =
        [
            new("weight", "Weight of one fish", Units.Gram, 0.01, 5e4),
            Temperature with { Max = 45 },
            new("best", "Temperature at which it grows best", Units.Celsius, 5, 35),
            new("rate", "At 100 g and the best temperature", Units.MilligramPerKilogramHour, 50, 400, RoutineRespiration.Usual, "from memory: quiet fish 100 to 200"),
        ],
        Output = new("respiration", "Oxygen used", Units.MilligramPerKilogramHour),
        Sources = [Source.FromMemory("Clarke and Johnston 1999, J. Animal Ecology 68, 893-905, for the weight; doubled by 10 °C, textbooks")],
        Confidence = Confidence.Textbook,
        Error = "Published rates of one size and temperature differ two to three times.",
        NotFor = "Fish that were just fed or handled.",
        Compute = x => RoutineRespiration.Routine(x[0], x[1], x[2], x[3]),
    };

    public static readonly Formula NitrifierGrowthRate = new()
    {
        Id = "nitrifier-growth",
        Name = "Greatest growth of nitrifying bacteria",
        Subject = Subject,
        Equation = "μ = μ20 exp(a (T - 20))",
        Inputs =
        [
            Temperature with { Max = 36 },
            new("at-20", "Growth at 20 °C", Units.PerDay, 0.1, 3, NitrifierGrowth.AmmoniaOxidisersAt20, "US EPA 1975 and Wiesmann 1994 agree, from memory"),
            new("exponent", "Exponent for each °C", Units.One, 0, 0.15, NitrifierGrowth.AmmoniaOxidisersExponent, "US EPA 1975, from memory"),
        ],
        Output = new("growth", "Specific growth", Units.PerDay),
        Sources = [Source.FromMemory("US EPA 1975, Process design manual for nitrogen control"), Source.FromMemory("Wiesmann 1994, Advances in Biochemical Engineering 51")],
        Confidence = Confidence.Textbook,
        Error = "Textbooks give 0.3 to 1.1 per day at 20 °C.",
        NotFor = "Over about 32 °C, where it levels off and falls.",
        Compute = x => NitrifierGrowth.Arrhenius(x[0], x[1], x[2]),
    };

    public static readonly Formula CarbonicAcid = new()
    {
        Id = "carbonic-acid",
        Name = "First dissociation of carbonic acid",
        Subject = Subject,
        Equation = "pK1 = 356.3094 + 0.06091964 T - 21834.37/T - 126.8339 log T + 1684915/T²",
        Inputs = [Temperature],
        Output = new("pk1", "pK1", Units.One),
        Sources = [Plummer],
        Confidence = Confidence.Textbook,
        Error = "0.005.",
        NotFor = "Salt water.",
        Compute = x => Carbonate.PlummerBusenberg(x[0]),
    };

    public static readonly Formula DissolvedCarbonDioxide = new()
    {
        Id = "carbon-dioxide-dissolved",
        Name = "Carbon dioxide of water in balance with air",
        Subject = Subject,
        Equation = "C = K0 p, log K0 = 108.3865 + 0.01985076 T - 6919.53/T - 40.45154 log T + 669365/T²",
        Inputs = [Temperature, new("air", "Carbon dioxide in the air, µmol/mol", Units.One, 0, 20000, 500, "from memory: outdoors 420, rooms 500 to 1000")],
        Output = new("carbon-dioxide", "Dissolved carbon dioxide", Units.MilligramPerLitre),
        Sources = [Plummer],
        Confidence = Confidence.Textbook,
        Error = "1 %; what the air of a room holds is the guess.",
        NotFor = "High altitude, where pressure is low.",
        Compute = x => Carbonate.Dissolved(x[0], x[1]),
    };

    public static readonly Formula PhFromAlkalinity = new()
    {
        Id = "ph-from-alkalinity",
        Name = "pH from alkalinity and carbon dioxide",
        Subject = Subject,
        Equation = "pH = -log H, H² + A H - K1 C = 0",
        Inputs =
        [
            Temperature,
            new("alkalinity", "Alkalinity", Units.MilligramCalciumCarbonatePerLitre, 0, 1000),
            new("carbon-dioxide", "Dissolved carbon dioxide", Units.MilligramPerLitre, 0.01, 500),
        ],
        Output = new("ph", "pH", Units.PH),
        Sources = [Source.FromMemory("Stumm and Morgan, Aquatic chemistry: charge balance of bicarbonate"), Plummer],
        Confidence = Confidence.Textbook,
        Error = "Carbonate is left out: 0.02 at pH 8.3, 0.1 at pH 9.",
        NotFor = "Over pH 9, salt water.",
        Compute = x => Carbonate.PH(x[0], x[1], x[2]),
    };

    public static readonly Formula AerationByStones = new()
    {
        Id = "aeration-by-stones",
        Name = "Water brought to saturation by air stones",
        Subject = Subject,
        Equation = "K = q e d O / C20",
        Inputs =
        [
            new("air", "Air flow", Units.LitrePerMinute, 0, 1e4),
            new("depth", "Depth of the stones", Units.Metre, 0, 5),
            new("share", "Share of oxygen that dissolves for each metre", Units.One, 0.005, 0.1, Aeration.StoneShare, "from memory: air stones 0.03 to 0.04"),
        ],
        Output = new("transfer", "Water brought to saturation", Units.CubicMetrePerHour),
        Sources = [Source.FromMemory("US EPA 1989, Design manual, fine pore aeration systems")],
        Confidence = Confidence.Textbook,
        Error = "Threefold with the stone, its age and the depth.",
        NotFor = "Venturis and falls.",
        Compute = x => Aeration.ByStones(x[0], x[1], x[2]),
    };

    public static readonly Formula AerationByFall = new()
    {
        Id = "aeration-by-fall",
        Name = "Share of the oxygen deficit that a fall makes good",
        Subject = Subject,
        Equation = "s = 1 - 1/r, r = 1 + 0.38 h (1 - 0.11 h)(1 + 0.046 T)",
        Inputs = [new("height", "Height of the fall", Units.Metre, 0, 3), Temperature with { Max = 40 }],
        Output = new("share", "Share of the deficit", Units.One),
        Sources = [Source.FromMemory("UK Water Research Laboratory 1973 after Gameson 1957, aeration at weirs")],
        Confidence = Confidence.Textbook,
        Error = "A half: measured on weirs, not pipes.",
        NotFor = "A pipe that ends under water.",
        Compute = x => Aeration.ByFall(x[0], x[1]),
    };

    public static readonly Formula LightUseOfStand = new()
    {
        Id = "light-use",
        Name = "Dry mass made of light",
        Subject = Subject,
        Equation = "e = e0 / (1 + I/I50)",
        Inputs =
        [
            new("flux", "Photon flux while lit", Units.MicromolePerSquareMetreSecond, 0, 2500),
            new("dim", "In dim light", Units.GramPerMole, 0.3, 1.2, LightUse.Dim, "set by us near the means of Jin et al. 2023"),
            new("half", "Flux at which it is halved", Units.MicromolePerSquareMetreSecond, 200, 5000, LightUse.Half, "set by us near the means of Jin et al. 2023"),
        ],
        Output = new("light-use", "Dry mass for each mole taken up", Units.GramPerMole),
        Sources = [new("our form, set near the means of Jin et al. 2023, Food and Energy Security 12(1)", SourceKind.CommonPractice)],
        Confidence = Confidence.Textbook,
        Error = "A third.",
        NotFor = "Added carbon dioxide, which raises it by a third.",
        Compute = x => LightUse.Saturating(x[0], x[1], x[2]),
    };

    public static readonly Formula LightTakenUp = new()
    {
        Id = "light-taken-up",
        Name = "Share of the light that leaves take up",
        Subject = Subject,
        Equation = "f = 1 - exp(-k L)",
        Inputs = [LeafArea, Extinction],
        Output = new("share", "Share of the light", Units.One),
        Sources = [new("Monsi and Saeki 1953, Japanese Journal of Botany 14, 22-52")],
        Confidence = Confidence.Textbook,
        Error = "That of the leaf area.",
        NotFor = "Plants standing singly.",
        Compute = x => LightUse.MonsiSaeki(x[0], x[1]),
    };

    public static readonly Formula CropTranspiration = new()
    {
        Id = "transpiration",
        Name = "Water given off by leaves",
        Subject = Subject,
        Equation = "E = (0.6 (1 - exp(-k L)) G + 10 min(L, 3) D) / λ",
        Inputs =
        [
            new("radiation", "Short-wave radiation on the stand", Units.WattPerSquareMetre, 0, 1400),
            LeafArea,
            new("deficit", "Vapour pressure deficit of the air", Units.Kilopascal, 0, 12),
            Extinction,
        ],
        Output = new("transpiration", "Water given off", Units.LitrePerSquareMetreHour),
        Sources = [Source.FromMemory("Baille, Baille and Laury 1994, Scientia Horticulturae 59, 217-233")],
        Confidence = Confidence.Textbook,
        Error = "A third.",
        NotFor = "Wilting plants, wind.",
        Compute = x => Transpiration.Baille(x[0], x[1], x[2], x[3]),
    };

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Formula> All { get; } =
    [
        ThermalGrowthWeight, Response, FishRespiration, NitrifierGrowthRate, CarbonicAcid, DissolvedCarbonDioxide, PhFromAlkalinity, AerationByStones,
        AerationByFall, LightUseOfStand, LightTakenUp, CropTranspiration,
    ];
}
