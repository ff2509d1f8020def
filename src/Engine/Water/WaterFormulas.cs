using Runnel.Engine.Figures;
using Runnel.Engine.Quantities;

namespace Runnel.Engine.Water;

/// <summary>The formulary's entries about water: oxygen, ammonia, and what feed does to it.</summary>
public static class WaterFormulas
{
    private const string Subject = "Water";

    private const string FeedError =
        "Not stated by the source; measured excretion differs by a factor of two with species, size, ration and hour.";

    private static readonly FormulaInput Feed = new("feed", "Feed", Units.GramPerDay, 0, 1e6);

    private static readonly FormulaInput Protein = new("protein", "Crude protein in the feed", Units.Percent, 5, 70);

    private static readonly FormulaInput Temperature = new("temperature", "Water temperature", Units.Celsius, 0, 50);

    private static readonly FormulaInput PH = new("ph", "pH", Units.PH, 4, 11);

    private static readonly Source Emerson = new(
        "Emerson, Russo, Lund and Thurston 1975, Aqueous ammonia equilibrium calculations: effect of pH and temperature, Journal of the "
        + "Fisheries Research Board of Canada 32, 2379-2383");

    public static readonly Formula OxygenSaturation = new()
    {
        Id = "oxygen-saturation",
        Name = "Oxygen saturation",
        Subject = Subject,
        Equation =
            "C = C* p (1 - w/p)(1 - θ p) / ((1 - w)(1 - θ)); ln C* = -139.34411 + 1.575701e5/T - 6.642308e7/T² + 1.243800e10/T³ "
            + "- 8.621949e11/T⁴ - S (1.7674e-2 - 10.754/T + 2140.7/T²); ln w = 11.8571 - 3840.70/T - 216961/T²; "
            + "θ = 0.000975 - 1.426e-5 t + 6.436e-8 t²; T = t + 273.15; p = P / 101.325",
        Inputs =
        [
            Temperature with { Max = 40 },
            new("pressure", "Air pressure", Units.Kilopascal, 50, 110, 101.325, "one standard atmosphere, sea level"),
            new("salinity", "Salinity", Units.GramPerKilogram, 0, 40, 0, "fresh water"),
        ],
        Output = new("oxygen", "Dissolved oxygen at saturation", Units.MilligramPerLitre),
        Sources =
        [
            new("Benson and Krause 1984, The concentration and isotopic fractionation of oxygen dissolved in freshwater and seawater in "
                + "equilibrium with the atmosphere, Limnology and Oceanography 29, 620-632"),
            Source.FromMemory("APHA, Standard Methods for the Examination of Water and Wastewater, method 4500-O, for the pressure equation"),
        ],
        Confidence = Confidence.PublishedExample,
        Error = "0.1 % at 101.325 kPa (Benson and Krause); not stated at other pressures.",
        NotFor = "Water under a closed lid or fed with oxygen gas; a barometer reading that was reduced to sea level.",
        Compute = x => Water.OxygenSaturation.BensonKrause(x[0], x[1], x[2]),
    };

    public static readonly Formula PressureAtElevation = new()
    {
        Id = "pressure-at-elevation",
        Name = "Air pressure at an elevation",
        Subject = Subject,
        Equation = "P = 101.325 (1 - 2.25577e-5 h)^5.25588",
        Inputs = [new("elevation", "Elevation", Units.Metre, -430, 5500)],
        Output = new("pressure", "Mean air pressure", Units.Kilopascal),
        Sources = [new("ISO 2533:1975, Standard atmosphere")],
        Confidence = Confidence.PublishedExample,
        Error = "None as a convention; published mean tables differ by 0.5 %, and weather moves the pressure of a place by 2 to 3 %.",
        NotFor = "The pressure on one day: read a barometer that is not reduced to sea level.",
        Compute = x => Water.PressureAtElevation.StandardAtmosphere(x[0]),
    };

    public static readonly Formula UnIonisedAmmoniaShare = new()
    {
        Id = "un-ionised-ammonia-share",
        Name = "Un-ionised share of ammonia",
        Subject = Subject,
        Equation = "pKa = 0.09018 + 2729.92/T; f = 1 / (1 + 10^(pKa - pH)); T = t + 273.15",
        Inputs = [Temperature, PH],
        Output = new("share", "Un-ionised share of total ammonia", Units.Percent),
        Sources = [Emerson],
        Confidence = Confidence.PublishedExample,
        Error = "Other published tables differ by up to 3 % of the value; a pH reading that is 0.1 off moves it by a quarter.",
        NotFor = "Salt water; dissolved salt lowers the share a little.",
        Compute = x => Water.UnIonisedAmmonia.Emerson(x[0], x[1]),
    };

    public static readonly Formula UnIonisedAmmonia = new()
    {
        Id = "un-ionised-ammonia",
        Name = "Un-ionised ammonia",
        Subject = Subject,
        Equation = "NH3-N = f TAN; f = 1 / (1 + 10^(pKa - pH)); pKa = 0.09018 + 2729.92/T; T = t + 273.15",
        Inputs = [new("total", "Total ammonia nitrogen", Units.MilligramNitrogenPerLitre, 0, 1000), Temperature, PH],
        Output = new("un-ionised", "Un-ionised ammonia nitrogen", Units.MilligramNitrogenPerLitre),
        Sources = [Emerson],
        Confidence = Confidence.PublishedExample,
        Error = "Other published tables differ by up to 3 % of the value; home tests of ammonia and pH are coarser than that.",
        NotFor = "Salt water; a test that prints ammonia as NH3 or NH4 and not as nitrogen, before it is converted.",
        Compute = x => Water.UnIonisedAmmonia.FromTotal(x[0], x[1], x[2]),
    };

    public static readonly Formula AmmoniaFromFeed = new()
    {
        Id = "ammonia-from-feed",
        Name = "Ammonia from feed, as nitrogen",
        Subject = Subject,
        Equation = "P = F PC 0.092",
        Inputs = [Feed, Protein],
        Output = new("ammonia", "Total ammonia nitrogen given off", Units.GramNitrogenPerDay),
        Sources = [Literature.Kentucky, Literature.TimmonsEbeling],
        Confidence = Confidence.PublishedExample,
        Error = FeedError,
        NotFor = "Feed that is not eaten: all of its nitrogen ends in the water.",
        Compute = x => Water.AmmoniaFromFeed.TimmonsEbeling(x[0], x[1]),
    };

    public static readonly Formula AmmoniaFromFeedFao = new()
    {
        Id = "ammonia-from-feed-fao",
        Name = "Ammonia from feed, as NH3",
        Subject = Subject,
        Equation = "A = F PC 0.16 × 0.61 × 1.2",
        Inputs = [Feed, Protein with { Default = 32, DefaultSource = "FAO Technical Paper 589, section 8.1: the feed of its ratios" }],
        Output = new("ammonia", "Ammonia given off", Units.GramAmmoniaPerDay),
        Sources = [Literature.FaoAppendix4],
        Confidence = Confidence.Textbook,
        Error = FeedError,
        NotFor = "Comparing with a number as nitrogen before it is converted: NH3 is 1.216 times its nitrogen.",
        Compute = x => Water.AmmoniaFromFeed.Fao(x[0], x[1]),
    };

    public static readonly Formula AmmoniaToNitrogen = new()
    {
        Id = "ammonia-to-nitrogen",
        Name = "Nitrogen in ammonia",
        Subject = Subject,
        Equation = "N = NH3 × 14.007 / 17.031",
        Inputs = [new("ammonia", "Ammonia", Units.GramAmmoniaPerDay, 0, 1e6)],
        Output = new("nitrogen", "Ammonia nitrogen", Units.GramNitrogenPerDay),
        Sources = [Literature.AtomicWeights],
        Confidence = Confidence.Textbook,
        Error = "None to five figures: by definition.",
        Compute = x => AmmoniaBasis.ToNitrogen(x[0]),
    };

    public static readonly Formula NitrogenToAmmonia = new()
    {
        Id = "nitrogen-to-ammonia",
        Name = "Ammonia that holds some nitrogen",
        Subject = Subject,
        Equation = "NH3 = N × 17.031 / 14.007",
        Inputs = [new("nitrogen", "Ammonia nitrogen", Units.GramNitrogenPerDay, 0, 1e6)],
        Output = new("ammonia", "Ammonia", Units.GramAmmoniaPerDay),
        Sources = [Literature.AtomicWeights],
        Confidence = Confidence.Textbook,
        Error = "None to five figures: by definition.",
        Compute = x => AmmoniaBasis.FromNitrogen(x[0]),
    };

    public static readonly Formula OxygenFromFeed = new()
    {
        Id = "oxygen-from-feed",
        Name = "Oxygen used on account of feed",
        Subject = Subject,
        Equation = "O2 = F a",
        Inputs =
        [
            Feed,
            new("ratio", "Oxygen for each mass of feed", Units.KilogramPerKilogram, 0.2, 1, 0.5,
                "from memory: Timmons and Ebeling 2013, whole loop whose solids leave fast; 0.25 fish alone, to 1 where solids stay"),
        ],
        Output = new("oxygen", "Oxygen used, mean over the day", Units.GramPerDay),
        Sources = [Literature.TimmonsEbeling],
        Confidence = Confidence.Textbook,
        Error = "The span of the ratio: half to twice.",
        NotFor = "The hours after a meal, when fish use 1.3 to 1.5 times the mean.",
        Compute = x => Water.OxygenFromFeed.Ratio(x[0], x[1]),
    };

    public static readonly Formula SolidsFromFeed = new()
    {
        Id = "solids-from-feed",
        Name = "Solids from feed, dry",
        Subject = Subject,
        Equation = "S = F a",
        Inputs =
        [
            Feed,
            new("ratio", "Dry solids for each mass of feed", Units.KilogramPerKilogram, 0.2, 0.4, 0.25,
                "from memory: Timmons and Ebeling 2013"),
        ],
        Output = new("solids", "Suspended solids, dry", Units.GramPerDay),
        Sources = [Literature.TimmonsEbeling],
        Confidence = Confidence.Textbook,
        Error = "The span of the ratio: 0.2 to 0.4.",
        NotFor = "Uneaten feed; the mass of wet sludge, which is 50 to 100 times as much.",
        Compute = x => Water.SolidsFromFeed.Ratio(x[0], x[1]),
    };

    public static readonly Formula AlkalinityUsed = new()
    {
        Id = "alkalinity-used",
        Name = "Alkalinity used by nitrification",
        Subject = Subject,
        Equation = "Alk = 7.05 N",
        Inputs = [new("nitrified", "Total ammonia nitrogen nitrified", Units.GramNitrogenPerDay, 0, 1e6)],
        Output = new("alkalinity", "Alkalinity used", Units.GramCalciumCarbonatePerDay),
        Sources =
        [
            Source.FromMemory("Ebeling, Timmons and Bisogni 2006, Aquaculture 257, 346-358"),
            new("Rakocy and McGinty, extension bulletin on tank culture of tilapia: about 7"),
        ],
        Confidence = Confidence.Textbook,
        Error = "1.3 % to the stoichiometry without growth (7.14); attached growth was measured from 6.3 to 7.4 (USEPA 1975).",
        NotFor = "The whole balance of a loop: plants that take up nitrate and denitrification give alkalinity back.",
        Compute = x => Water.AlkalinityUsed.Ebeling(x[0]),
    };

    public static readonly Formula BaseSodiumBicarbonate = BaseFormula.Of(BaseChemical.SodiumBicarbonate);

    public static readonly Formula BasePotassiumBicarbonate = BaseFormula.Of(BaseChemical.PotassiumBicarbonate);

    public static readonly Formula BaseCalciumCarbonate = BaseFormula.Of(BaseChemical.CalciumCarbonate);

    public static readonly Formula BaseCalciumHydroxide = BaseFormula.Of(BaseChemical.CalciumHydroxide);

    public static readonly Formula BasePotassiumHydroxide = BaseFormula.Of(BaseChemical.PotassiumHydroxide);

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Formula> All { get; } =
    [
        OxygenSaturation, PressureAtElevation, UnIonisedAmmoniaShare, UnIonisedAmmonia, AmmoniaFromFeed, AmmoniaFromFeedFao,
        AmmoniaToNitrogen, NitrogenToAmmonia, OxygenFromFeed, SolidsFromFeed, AlkalinityUsed, BaseSodiumBicarbonate, BasePotassiumBicarbonate,
        BaseCalciumCarbonate, BaseCalciumHydroxide, BasePotassiumHydroxide,
    ];
}
