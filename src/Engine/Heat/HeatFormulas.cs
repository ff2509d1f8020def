using Runnel.Engine.Figures;
using Runnel.Engine.Quantities;

namespace Runnel.Engine.Heat;

/// <summary>The formulary's rules about heat and vapour.</summary>
public static class HeatFormulas
{
    private const string Subject = "Heat";

    private static readonly Source SmithLofJones = new(
        "Smith, Löf and Jones 1998, Rates of evaporation from swimming pools in active use, ASHRAE Transactions 104(1), paper 4146 (abstract)");

    private static readonly FormulaInput Water = new("water", "Temperature of the water", Units.Celsius, 0, Heat.Evaporation.MaxWater);
    private static readonly FormulaInput Air = new("air", "Temperature of the air", Units.Celsius, Heat.Evaporation.MinAir, Heat.Evaporation.MaxAir);
    private static readonly FormulaInput Humidity = new("humidity", "Relative humidity of the air", Units.Percent, 0, 100);
    private static readonly FormulaOutput Rate = new("evaporation", "Evaporation", Units.KilogramPerSquareMetreHour);

    /// <summary>Saturation vapour pressure.</summary>
    public static readonly Formula SaturationVapourPressure = new()
    {
        Id = "saturation-vapour-pressure",
        Name = "Saturation vapour pressure",
        Subject = Subject,
        Equation = "ln p = C8/T + C9 + C10 T + C11 T² + C12 T³ + C13 ln T; over ice below 0 °C with C1 to C7",
        Inputs =
        [
            new("temperature", "Temperature", Units.Celsius, Heat.SaturationVapourPressure.Min, Heat.SaturationVapourPressure.Max),
        ],
        Output = new("pressure", "Saturation vapour pressure", Units.Pascal),
        Sources =
        [
            new("Hyland and Wexler 1983, ASHRAE Transactions 89(2A); ASHRAE Handbook Fundamentals (2017), chapter 1, equations 5 and 6"),
            new("IAPWS values in Huang 2018, Journal of Applied Meteorology and Climatology 57"),
        ],
        Confidence = Confidence.PublishedExample,
        Error = "under 300 ppm of ASHRAE's and IAPWS's tables",
        NotFor = "sea water",
        Compute = x => Heat.SaturationVapourPressure.HylandWexler(x[0]),
    };

    /// <summary>Latent heat of vaporisation.</summary>
    public static readonly Formula LatentHeat = new()
    {
        Id = "latent-heat",
        Name = "Heat that evaporating water takes along",
        Subject = Subject,
        Equation = "L = 2501 − 2.361 T",
        Inputs = [new("water", "Temperature of the water", Units.Celsius, Heat.LatentHeat.Min, Heat.LatentHeat.Max)],
        Output = new("latent-heat", "Latent heat", Units.KilojoulePerKilogram),
        Sources =
        [
            Source.FromMemory("Harrison 1963; FAO Irrigation and Drainage Paper 56 (1998), annex 3"),
            new("Engineering ToolBox, Water: heat of vaporization (steam-table values)"),
        ],
        Confidence = Confidence.PublishedExample,
        Error = "under 0.1 % from 0 to 25 °C",
        NotFor = "boiling water, 2257 kJ/kg",
        Compute = x => Heat.LatentHeat.Harrison(x[0]),
    };

    /// <summary>Transmittance of a tank wall.</summary>
    public static readonly Formula WallTransmittance = new()
    {
        Id = "wall-transmittance",
        Name = "Transmittance of an insulated tank wall",
        Subject = Subject,
        Equation = "1/U = 1/h_i + d_1/k_1 + d_2/k_2 + 1/h_o",
        Inputs =
        [
            new("wall", "Thickness of the wall", Units.Millimetre, 0, Heat.WallTransmittance.MaxThickness),
            new("wall-conductivity", "Conductivity of the wall", Units.WattPerMetreKelvin,
                Heat.WallTransmittance.MinConductivity, Heat.WallTransmittance.MaxConductivity, 0.45,
                "polyethylene: tables print 0.40 to 0.50 W/mK"),
            new("insulation", "Thickness of the insulation", Units.Millimetre, 0, Heat.WallTransmittance.MaxThickness, 0, "bare wall"),
            new("insulation-conductivity", "Conductivity of the insulation", Units.WattPerMetreKelvin,
                Heat.WallTransmittance.MinConductivity, Heat.WallTransmittance.MaxConductivity, 0.0355,
                "expanded polystyrene, ASHRAE Handbook Fundamentals, as tabulated by C. Bell, ht"),
            new("inner-film", "Film on the water side", Units.WattPerSquareMetreKelvin,
                Heat.WallTransmittance.MinFilm, Heat.WallTransmittance.MaxFilm, Heat.WallTransmittance.UsualInnerFilm,
                "from memory: a round number of textbooks, hardly counts"),
            new("outer-film", "Film on the air side", Units.WattPerSquareMetreKelvin,
                Heat.WallTransmittance.MinFilm, Heat.WallTransmittance.MaxFilm, Heat.WallTransmittance.UsualOuterFilm,
                "ASHRAE film resistance of an upright wall, 0.68 ft²·h·°F/Btu, as printed in WAC 51-11-0526"),
        ],
        Output = new("transmittance", "Transmittance", Units.WattPerSquareMetreKelvin),
        Sources = [new("ISO 6946, Building components: thermal resistance and thermal transmittance, layers in series")],
        Confidence = Confidence.Textbook,
        Error = "10 to 30 %: conductivities in print differ by a tenth, and the outer film of a bare wall is nearly all of it",
        NotFor = "gaps behind loose insulation, wet insulation, frames that bridge it, ground under a tank",
        Compute = x => Heat.WallTransmittance.Iso6946(x[0], x[1], x[2], x[3], x[4], x[5]),
    };

    /// <summary>Heat through a wall.</summary>
    public static readonly Formula WallLoss = new()
    {
        Id = "wall-loss",
        Name = "Heat through a wall",
        Subject = Subject,
        Equation = "Q = U A ΔT",
        Inputs =
        [
            new("transmittance", "Transmittance", Units.WattPerSquareMetreKelvin, 0, HeatLoss.MaxTransmittance),
            new("area", "Area", Units.SquareMetre, 0, HeatLoss.MaxArea),
            new("difference", "How much warmer it is inside", Units.Kelvin, -HeatLoss.MaxDifference, HeatLoss.MaxDifference),
        ],
        Output = new("loss", "Heat lost", Units.Watt),
        Sources =
        [
            Source.Definition("the definition of transmittance"),
            new("A greenhouse supplier's worked example: 96 ft², 1.1 Btu/h·ft²·°F, 65 °F, 6864 Btu/h"),
        ],
        Confidence = Confidence.PublishedExample,
        Error = "as good as the transmittance",
        Compute = x => HeatLoss.ThroughWall(x[0], x[1], x[2]),
    };

    /// <summary>Heat from an open surface, evaporation aside.</summary>
    public static readonly Formula SurfaceLoss = new()
    {
        Id = "surface-loss",
        Name = "Heat from an open water surface, evaporation aside",
        Subject = Subject,
        Equation = "Q = h A (T_w − T_a)",
        Inputs =
        [
            new("area", "Open surface", Units.SquareMetre, 0, HeatLoss.MaxArea),
            Water,
            new("air", "Temperature of the air", Units.Celsius, HeatLoss.MinAir, HeatLoss.MaxAir),
            new("coefficient", "Convection and radiation together", Units.WattPerSquareMetreKelvin, 0, HeatLoss.MaxCoefficient,
                HeatLoss.UsualSurfaceCoefficient,
                "ASHRAE film resistance for heat flowing up, 0.61 ft²·h·°F/Btu, as printed in WAC 51-11-0526; ISO 6946 gives 10"),
        ],
        Output = new("loss", "Heat lost", Units.Watt),
        Sources = [new("Newton's law of cooling; film coefficients of ASHRAE Handbook Fundamentals and ISO 6946")],
        Confidence = Confidence.Textbook,
        Error = "20 % in a still room",
        NotFor = "wind, a clear night sky",
        Compute = x => HeatLoss.Newton(x[0], x[1], x[2], x[3]),
    };

    /// <summary>Evaporation by air speed and vapour pressure.</summary>
    public static readonly Formula Evaporation = new()
    {
        Id = "evaporation",
        Name = "Evaporation from open water",
        Subject = Subject,
        Equation = "w = F (p_w − p_a)(0.089 + 0.0782 V)/Y, p in kPa, Y in kJ/kg, w in kg/m²/s",
        Inputs =
        [
            Water,
            Air,
            Humidity,
            new("speed", "Air speed over the water", Units.MetrePerSecond, 0, Heat.Evaporation.MaxSpeed, Heat.Evaporation.UsualSpeed,
                "common practice, no source: air of a closed room"),
            new("activity", "Activity factor", Units.One, Heat.Evaporation.MinActivity, Heat.Evaporation.MaxActivity, Heat.Evaporation.UsualActivity,
                "ASHRAE Handbook HVAC Applications, still water (second hand); measured 0.74 by Smith, Löf and Jones 1998"),
        ],
        Output = Rate,
        Sources =
        [
            new("Carrier 1918 in the SI form of ASHRAE Handbook HVAC Applications, natatoriums, as quoted in public engineering texts"),
            SmithLofJones,
        ],
        Confidence = Confidence.Textbook,
        Error = "published rules differ 2.4 times at one point",
        NotFor = "covered water, spray, trickling water; leaves, which evaporate more than the beds",
        Compute = x => Heat.Evaporation.Carrier(x[0], x[1], x[2], x[3], x[4]),
    };

    /// <summary>Evaporation by rising air.</summary>
    public static readonly Formula EvaporationShah = new()
    {
        Id = "evaporation-shah",
        Name = "Evaporation from open water in a still room",
        Subject = Subject,
        Equation = "the larger of E = 35 ρ_w (ρ_r − ρ_w)^(1/3) (W_w − W_r) and E = 5·10⁻⁵ (p_w − p_r)",
        Inputs = [Water, Air, Humidity],
        Output = Rate,
        Sources =
        [
            new("Shah 2014, ASHRAE Transactions 120(2), SE-14-001, look-up table for undisturbed pools (values at second hand)"),
            Source.FromMemory("the formula itself, Shah 2002, HVAC&R Research 8(1)"),
        ],
        Confidence = Confidence.PublishedExample,
        Error = "its author reports a mean deviation of 18 % from measurements",
        NotFor = "draughts, wind, covered water, high altitude",
        Compute = x => Heat.Evaporation.Shah(x[0], x[1], x[2]),
    };

    /// <summary>Heat that evaporation takes.</summary>
    public static readonly Formula EvaporationHeat = new()
    {
        Id = "evaporation-heat",
        Name = "Heat that evaporation takes",
        Subject = Subject,
        Equation = "Q = w A Y",
        Inputs =
        [
            new("evaporation", "Evaporation", Units.KilogramPerSquareMetreHour, 0, Heat.Evaporation.MaxRate),
            new("area", "Open surface", Units.SquareMetre, 0, Heat.Evaporation.MaxArea),
            Water,
        ],
        Output = new("loss", "Heat lost", Units.Watt),
        Sources = [new("Engineering ToolBox, Water: heat of vaporization (steam-table values)")],
        Confidence = Confidence.PublishedExample,
        Error = "0.1 %, as good as the evaporation otherwise",
        Compute = x => Heat.Evaporation.Heat(x[0], x[1], x[2]),
    };

    /// <summary>Heat for the water added each day.</summary>
    public static readonly Formula MakeUpHeat = new()
    {
        Id = "make-up-heat",
        Name = "Heat that warms the water added each day",
        Subject = Subject,
        Equation = "Q = 1.163 V ΔT / 24",
        Inputs =
        [
            new("water", "Water added", Units.LitrePerDay, 0, WarmingWater.MaxVolume),
            new("rise", "How much warmer the loop is", Units.Kelvin, -WarmingWater.MaxRise, WarmingWater.MaxRise),
        ],
        Output = new("heat", "Mean heat", Units.Watt),
        Sources = [HeatCapacity],
        Confidence = Confidence.Textbook,
        Error = "1 % from 0 to 40 °C",
        Compute = x => WarmingWater.MeanPower(x[0], x[1]),
    };

    /// <summary>Heat that warms water once.</summary>
    public static readonly Formula HeatToWarm = new()
    {
        Id = "heat-to-warm",
        Name = "Heat that warms water once",
        Subject = Subject,
        Equation = "Q = 1.163 V ΔT / 1000",
        Inputs =
        [
            new("volume", "Volume of water", Units.Litre, 0, WarmingWater.MaxVolume),
            new("rise", "By how much", Units.Kelvin, -WarmingWater.MaxRise, WarmingWater.MaxRise),
        ],
        Output = new("heat", "Heat", Units.KilowattHour),
        Sources = [HeatCapacity],
        Confidence = Confidence.Textbook,
        Error = "1 % from 0 to 40 °C",
        NotFor = "what is lost while it warms",
        Compute = x => WarmingWater.Heat(x[0], x[1]),
    };

    /// <summary>What a heater has to add.</summary>
    public static readonly Formula HeaterEnergy = new()
    {
        Id = "heater-energy",
        Name = "Energy a heater takes over a period",
        Subject = Subject,
        Equation = "E = max(0, Q_loss − Q_other) t / 1000",
        Inputs =
        [
            new("loss", "Mean loss", Units.Watt, -Heat.HeaterEnergy.MaxPower, Heat.HeaterEnergy.MaxPower),
            new("other", "Mean heat from other things", Units.Watt, 0, Heat.HeaterEnergy.MaxPower, 0, "none counted"),
            new("hours", "Length of the period", Units.HourUnit, 0, Heat.HeaterEnergy.MaxHours),
        ],
        Output = new("energy", "Energy of the heater", Units.KilowattHour),
        Sources = [Source.Definition("heat balance; heat that is too much is not stored")],
        Confidence = Confidence.Textbook,
        Error = "too low when loss and other heat change sides within the period",
        NotFor = "a whole year from yearly means",
        Compute = x => Heat.HeaterEnergy.Balance(x[0], x[1], x[2]),
    };

    private static Source HeatCapacity => Source.Definition("the British thermal unit (NIST SP 811): 4.1868 kJ warm one kilogram of water by one kelvin");

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Formula> All { get; } =
    [
        SaturationVapourPressure, LatentHeat, WallTransmittance, WallLoss, SurfaceLoss, Evaporation, EvaporationShah, EvaporationHeat,
        MakeUpHeat, HeatToWarm, HeaterEnergy,
    ];
}
