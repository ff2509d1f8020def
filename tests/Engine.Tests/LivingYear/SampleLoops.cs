using Runnel.Engine.Crops;
using Runnel.Engine.Year;

namespace Runnel.Engine.Tests.LivingYear;

/// <summary>Two invented loops for tests and benches: indoors under lamps, and a greenhouse. Weather is made of sines: invented too.</summary>
internal static class SampleLoops
{
    public static double[] Hourly(Func<int, double> of) => [.. Enumerable.Range(0, YearInput.HoursOfYear).Select(of)];

    public static double[] Constant(double value) => Hourly(_ => value);

    /// <summary>Air temperature by season and hour, °C.</summary>
    public static double[] Air(double mean, double season, double day) => Hourly(h =>
        mean - season * Math.Cos(2 * Math.PI * (h / 24.0 - 20) / 365) - day * Math.Cos(2 * Math.PI * (h % 24 - 3) / 24.0));

    /// <summary>Sun on the beds, mol/m² each hour, with cloudy and clear days by turns.</summary>
    public static double[] Sun(double winter, double summer) => Hourly(h =>
    {
        var season = 0.5 - 0.5 * Math.Cos(2 * Math.PI * (h / 24.0 - 355) / 365);
        var daily = (winter + (summer - winter) * season) * (1 + 0.4 * Math.Sin(h / 24 * 2.4));
        var length = 8 + 8 * season;
        var hour = h % 24 + 0.5 - 12;
        return Math.Abs(hour) < length / 2 ? daily * Math.PI / (2 * length) * Math.Cos(Math.PI * hour / length) : 0;
    });

    /// <summary>Lamps that go on for some hours, mol/m² each hour.</summary>
    public static double[] Lamps(double daily, int from, int hours) => Hourly(h => (h % 24 - from + 24) % 24 < hours ? daily / hours : 0);

    public static FishStock Carp => new()
    {
        Name = "common carp",
        Number = 14,
        Weight = 40,
        HarvestAt = 450,
        Growth = 0.08,
        Least = 9,
        Best = 26.5,
        Most = 34,
        SurvivesLow = 4,
        SurvivesHigh = 34,
        FeedConversion = 1.75,
        Protein = 0.35,
        Oxygen = 4,
        CriticalOxygen = 2.5,
    };

    public static FishStock Tilapia => Carp with
    {
        Name = "Nile tilapia",
        Number = 55,
        Weight = 25,
        HarvestAt = 454,
        Growth = 0.107,
        Least = 17,
        Best = 28,
        Most = 36,
        SurvivesLow = 12,
        SurvivesHigh = 36,
        FeedConversion = 1.7,
        Protein = 0.36,
    };

    public static CropStand Lettuce(int place, double area, int after) => new()
    {
        Name = "lettuce",
        Place = place,
        Area = area,
        InAfter = after,
        Picking = Picking.Whole,
        Least = 5,
        Best = 19.5,
        Most = 30,
        PlantedAs = 2.5,
        PickedAt = 170,
        Stays = 70,
        LeafArea = 0.045,
        Nitrogen = 0.043,
        DryMatter = 0.05,
    };

    public static CropStand Basil(int place, double area) => Lettuce(place, area, 0) with
    {
        Name = "basil",
        Picking = Picking.Cut,
        Least = 7,
        Best = 24.75,
        Most = 36,
        PickedAt = 140,
        Stays = 120,
        LeafArea = 0.03,
        Nitrogen = 0.045,
        DryMatter = 0.08,
    };

    public static CropStand Tomato(int place, double area) => Lettuce(place, area, 0) with
    {
        Name = "tomato",
        Picking = Picking.Fruit,
        Least = 7,
        Best = 25,
        Most = 35,
        PickedAt = 150,
        Stays = 180,
        FruitShare = 0.65,
        LeafArea = 0.015,
        Nitrogen = 0.03,
        DryMatter = 0.055,
    };

    public static YearInput Indoor => new()
    {
        Name = "indoor sample",
        Air = Air(18, 2, 1),
        Humidity = Constant(55),
        StartHour = 90 * 24,
        Loop = new()
        {
            TankWater = 0.63,
            BedWater = 0.15,
            PumpFlow = 1.0,
            TankConductance = 8,
            BedConductance = 7,
            BedHeatStore = 0.05,
            TankOpen = 0.3,
            BedOpen = 0.1,
            PumpHeat = 22,
            HeaterWatts = 200,
            Keep = 20,
            Bubbles = 0.15,
            Falls = 0.2,
            TankSurface = 0.03,
            BedExchange = 0.8,
            FilterArea = 110,
            SourceAlkalinity = 120,
            SourceTemperature = 11,
        },
        Places = [new("bed one", 0.77, Lamps(14, 6, 16), 0.22), new("bed two", 0.77, Lamps(14, 6, 16), 0.22)],
        Fish = [Carp],
        Stands = [.. Enumerable.Range(0, 5).Select(i => Lettuce(0, 0.154, i * 168)), Basil(1, 0.77)],
    };

    public static YearInput Greenhouse => new()
    {
        Name = "greenhouse sample",
        Air = Air(15, 9, 5),
        Humidity = Constant(65),
        StartHour = 73 * 24,
        Loop = new()
        {
            TankWater = 1.6,
            BedWater = 1.65,
            PumpFlow = 2.5,
            TankConductance = 14,
            BedConductance = 18,
            TankOpen = 0.2,
            BedOpen = 0.5,
            PumpHeat = 55,
            HeaterWatts = 1500,
            Keep = 22.2,
            Bubbles = 1.4,
            Falls = 0.5,
            TankSurface = 0.05,
            BedExchange = 0.6,
            FilterArea = 60,
            SolidsCaught = 0.5,
            SourceAlkalinity = 180,
            Pressure = 98.2,
        },
        Places = [new("raft bed", 5.9, Sun(6, 24))],
        Fish = [Tilapia],
        Stands = [.. Enumerable.Range(0, 4).Select(i => Lettuce(0, 0.9, i * 192)), Tomato(0, 1.5), Basil(0, 0.8)],
    };
}
