using Runnel.Engine.Crops;
using Runnel.Engine.Water;

namespace Runnel.Engine.Year;

/// <summary>All that one year's run takes: plain numbers, so that anything may fill it in.</summary>
/// <remarks>Hourly arrays hold the calendar year from 1 January, 00:00: 8760 values, each for the hour that begins then. The run starts at
/// <see cref="StartHour"/> and goes round the end of the year.</remarks>
public sealed record YearInput
{
    /// <summary>Hours of a year.</summary>
    public const int HoursOfYear = 8760;

    /// <summary>What it is called in messages.</summary>
    public string Name { get; init; } = "loop";

    /// <summary>Air around the loop, °C, for each hour.</summary>
    public required double[] Air { get; init; }

    /// <summary>Relative humidity around the loop, %, for each hour.</summary>
    public required double[] Humidity { get; init; }

    /// <summary>Hour of the calendar year at which the run starts, 0 to 8759.</summary>
    public int StartHour { get; init; }

    /// <summary>How many hours to run, 1 to 8760.</summary>
    public int Hours { get; init; } = HoursOfYear;

    /// <summary>Steps in each hour. Twice as many make a quarter of the numerical error.</summary>
    public int StepsEachHour { get; init; } = 2;

    public required LoopBody Loop { get; init; }

    public IReadOnlyList<BedPlace> Places { get; init; } = [];

    public IReadOnlyList<FishStock> Fish { get; init; } = [];

    public IReadOnlyList<CropStand> Stands { get; init; } = [];

    public Care Care { get; init; } = new();

    /// <summary>A time without electricity, or null.</summary>
    public PowerCut? Cut { get; init; }
}

/// <summary>The loop as the water meets it. Tank side: fish tank, sump, filter. Bed side: the beds.</summary>
public sealed record LoopBody
{
    /// <summary>Water on the tank side and in the beds when full, m³.</summary>
    public required double TankWater { get; init; }

    /// <inheritdoc cref="TankWater"/>
    public required double BedWater { get; init; }

    /// <summary>Water that stands for the bed side in its own balances, m³: a litre at least, so that a loop without beds has a filter to run through.</summary>
    internal double BedNode => Math.Max(BedWater, 0.001);

    /// <summary>Water that the pump moves round, mean over on and off, m³/h.</summary>
    public required double PumpFlow { get; init; }

    /// <summary>Heat lost for each degree without evaporation, W/K.</summary>
    public required double TankConductance { get; init; }

    /// <inheritdoc cref="TankConductance"/>
    public required double BedConductance { get; init; }

    /// <summary>Heat held besides the water (media, walls), as m³ of water.</summary>
    public double BedHeatStore { get; init; }

    /// <summary>Open water, m².</summary>
    public double TankOpen { get; init; }

    /// <summary>Surface of the beds that evaporates like open water, m².</summary>
    public double BedOpen { get; init; }

    /// <summary>Evaporation, W for each m² and kPa: activity × (0.089 + 0.0782 v) × 1000 after Carrier.</summary>
    public double EvaporationHeat { get; init; } = 48.4;

    /// <summary>Heat from pumps in the water, W.</summary>
    public double PumpHeat { get; init; }

    public double HeaterWatts { get; init; }

    /// <summary>Temperature that the thermostat keeps, °C.</summary>
    public double Keep { get; init; }

    /// <summary>Span of temperature over which a thermostat goes from always on to always off, taken over the hour, K.</summary>
    public double HeaterBand { get; init; } = 0.5;

    /// <summary>Air pressure, kPa.</summary>
    public double Pressure { get; init; } = 101.325;

    /// <summary>Gas transfer of the tank side by bubbles, by falling water and by its surface, m³/h brought to saturation.</summary>
    public double Bubbles { get; init; }

    /// <inheritdoc cref="Bubbles"/>
    public double Falls { get; init; }

    /// <inheritdoc cref="Bubbles"/>
    public double TankSurface { get; init; }

    /// <summary>Gas transfer of the beds while the pump runs, m³/h brought to saturation.</summary>
    public double BedExchange { get; init; }

    /// <summary>Carbon dioxide in the air, µmol/mol.</summary>
    public double CarbonDioxide { get; init; } = 500;

    /// <summary>Surface for bacteria, m².</summary>
    public required double FilterArea { get; init; }

    /// <summary>Share of solids caught and taken out each day, 0 to 0.95.</summary>
    public double SolidsCaught { get; init; }

    /// <summary>Alkalinity of the source water as CaCO3, mg/L, and its temperature, °C.</summary>
    public double SourceAlkalinity { get; init; } = 100;

    /// <inheritdoc cref="SourceAlkalinity"/>
    public double SourceTemperature { get; init; } = 12;

    /// <summary>Share of the full filter's bacteria that are there at the start: 0.3 for a running loop, next to nothing for a new one.</summary>
    public double BacteriaAtStart { get; init; } = 0.3;

    /// <summary>Nitrate at the start, mg N/L.</summary>
    public double NitrateAtStart { get; init; } = 10;
}

/// <summary>A stretch of bed with its own light.</summary>
/// <param name="Name">The bed, in the grower's words.</param>
/// <param name="Area">Planted area, m².</param>
/// <param name="Light">Light on the leaves, mol/m², for each hour of the calendar year.</param>
/// <param name="EnergyEachMole">Short-wave energy that comes with a mole, MJ: about 0.49 for sun, 0.22 for lamps.</param>
/// <param name="WarmingShare">Share of that energy that ends as heat in the bed's water.</param>
public sealed record BedPlace(string Name, double Area, double[] Light, double EnergyEachMole = 0.49, double WarmingShare = 0.1);

/// <summary>A batch of fish, and the numbers of its kind.</summary>
public sealed record FishStock
{
    public required string Name { get; init; }

    public required double Number { get; init; }

    /// <summary>Weight of one when it goes in, g.</summary>
    public required double Weight { get; init; }

    /// <summary>Hours after the start of the run at which it goes in.</summary>
    public int InAfter { get; init; }

    /// <summary>Weight of one at harvest, g; infinite for fish that stay.</summary>
    public double HarvestAt { get; init; } = double.PositiveInfinity;

    /// <summary>Share that dies each day.</summary>
    public double Mortality { get; init; } = 0.0003;

    /// <summary>Thermal growth coefficient at the best temperature.</summary>
    public required double Growth { get; init; }

    /// <summary>Temperature under which it does not feed, at which it grows best, over which it does not feed, °C.</summary>
    public required double Least { get; init; }

    /// <inheritdoc cref="Least"/>
    public required double Best { get; init; }

    /// <inheritdoc cref="Least"/>
    public required double Most { get; init; }

    /// <summary>Temperatures that it survives, °C.</summary>
    public required double SurvivesLow { get; init; }

    /// <inheritdoc cref="SurvivesLow"/>
    public required double SurvivesHigh { get; init; }

    /// <summary>Kilograms of feed for each kilogram gained.</summary>
    public required double FeedConversion { get; init; }

    /// <summary>Protein in the feed, share of mass.</summary>
    public required double Protein { get; init; }

    /// <summary>Oxygen under which it eats less, mg/L.</summary>
    public required double Oxygen { get; init; }

    /// <summary>Oxygen at which it comes to harm, mg/L.</summary>
    public required double CriticalOxygen { get; init; }

    /// <summary>Most feed each day, share of body weight; infinite when it is fed what it will eat.</summary>
    public double MostRation { get; init; } = double.PositiveInfinity;
}

/// <summary>A stand of one crop that is sown and picked together, and the numbers of its kind. Masses are dry, of shoots, g/m².</summary>
public sealed record CropStand
{
    public required string Name { get; init; }

    /// <summary>Which of the places it stands in.</summary>
    public required int Place { get; init; }

    /// <summary>Its own area, m².</summary>
    public required double Area { get; init; }

    /// <summary>Hours after the start of the run at which it is first planted.</summary>
    public int InAfter { get; init; }

    public required Picking Picking { get; init; }

    public required double Least { get; init; }

    public required double Best { get; init; }

    public required double Most { get; init; }

    /// <summary>Dry mass of the young plants, g/m².</summary>
    public required double PlantedAs { get; init; }

    /// <summary>Dry mass at which it is taken or cut, g/m²; for fruit, at which it begins to bear.</summary>
    public required double PickedAt { get; init; }

    /// <summary>Days after which it is cleared, whatever its mass.</summary>
    public required double Stays { get; init; }

    /// <summary>Share of new dry mass that goes into fruit once it bears.</summary>
    public double FruitShare { get; init; }

    /// <summary>Leaf for each dry mass, m²/g.</summary>
    public required double LeafArea { get; init; }

    /// <summary>Nitrogen and water content: share of dry mass, and dry share of fresh.</summary>
    public required double Nitrogen { get; init; }

    /// <inheritdoc cref="Nitrogen"/>
    public required double DryMatter { get; init; }
}

/// <summary>What the grower does.</summary>
public sealed record Care
{
    /// <summary>Hour of the day of the visit: weighs, sets the ration, tops up, doses, picks, sows.</summary>
    public int VisitHour { get; init; } = 8;

    /// <summary>Hours of the day at which fish are fed; each meal takes an hour.</summary>
    public IReadOnlyList<int> Meals { get; init; } = [8, 18];

    /// <summary>Most feed for all fish together, g each day; infinite when they get what they will eat.</summary>
    public double MostFeed { get; init; } = double.PositiveInfinity;

    /// <summary>True if the water is topped up at each visit.</summary>
    public bool TopsUp { get; init; } = true;

    /// <summary>Share of the loop's water thrown away each day with solids and splashes, and replaced.</summary>
    public double Exchange { get; init; } = 0.005;

    /// <summary>Base that is dosed, or null for none.</summary>
    public BaseChemical? Base { get; init; } = BaseChemical.PotassiumBicarbonate;

    /// <summary>Alkalinity under which base is dosed, and up to which, as CaCO3, mg/L; and the most it is raised in a day.</summary>
    public double AlkalinityLow { get; init; } = 50;

    /// <inheritdoc cref="AlkalinityLow"/>
    public double AlkalinityAim { get; init; } = 70;

    /// <inheritdoc cref="AlkalinityLow"/>
    public double MostRise { get; init; } = 20;

    /// <summary>Iron, mg/L, put in every so many days. Rakocy: 2 mg/L every three weeks.</summary>
    public double IronDose { get; init; } = 2;

    /// <inheritdoc cref="IronDose"/>
    public double IronEvery { get; init; } = 21;

    /// <summary>Ammonia nitrogen that is dosed up to at each visit while there are no fish, mg N/L; 0 for none.</summary>
    public double AmmoniaTo { get; init; }

    /// <summary>Nitrite over which no ammonia is dosed until it falls, mg N/L. Common practice: wait while nitrite is off the chart.</summary>
    public double AmmoniaWaitsAt { get; init; } = 5;
}

/// <summary>A time without electricity: no pump, no air, no heat, no lamps' heat, no feed.</summary>
/// <param name="After">Hours after the start of the run.</param>
/// <param name="Lasts">Hours.</param>
public sealed record PowerCut(int After, int Lasts);
