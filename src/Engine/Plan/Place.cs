using Runnel.Engine.Quantities;

namespace Runnel.Engine.Plan;

/// <summary>Where the loop stands.</summary>
[PlanPart("Place", Help = "Where the loop stands and what the air around it does.")]
public sealed record Place
{
    [Input("setting", "Setting", Required = true, Example = "indoors", Help = "indoors, greenhouse or outdoors.")]
    public Setting Setting { get; init; }

    [Input("latitude", "Latitude", Unit = "°", Min = -90, Max = 90, Help = "Degrees north; south is negative.")]
    public Estimate? Latitude { get; init; }

    [Input("longitude", "Longitude", Unit = "°", Min = -180, Max = 180, Help = "Degrees east; west is negative.")]
    public Estimate? Longitude { get; init; }

    [Input("elevation", "Elevation", Unit = "m", Min = -430, Max = 5500, Default = "0 m", DefaultSource = "sea level",
        Help = "Above sea level: thin air holds less oxygen in the water.")]
    public Estimate Elevation { get; init; } = null!;

    [Input("climate", "Climate", Example = "maritime 52 N", Help = "A name from the catalogue; runnel check lists them when the name is unknown.")]
    public string? Climate { get; init; }

    [Input("weather", "Weather file", Example = "town.epw", Help = "An EPW file beside the plan, used in place of a climate by name.")]
    public string? Weather { get; init; }

    [Input("air", "Air around the loop", Unit = "°C", Min = -40, Max = 50, Example = "15 to 20 °C",
        Help = "One value or range for the whole year, or twelve values from January. Outdoors and in a greenhouse the climate is used when this is left out.")]
    public IReadOnlyList<Estimate> Air { get; init; } = [];

    [Input("humidity", "Relative humidity", Unit = "%", Min = 1, Max = 100, Default = "60 %", DefaultSource = "common practice, no source")]
    public Estimate Humidity { get; init; } = null!;

    [Input("ground", "Ground temperature", Unit = "°C", Min = -30, Max = 40, Help = "Under a vessel that stands on soil or a slab on soil.")]
    public Estimate? Ground { get; init; }

    [Input("room", "Room")]
    public Room? Room { get; init; }

    [Input("cover", "Greenhouse cover")]
    public Cover? Cover { get; init; }
}

/// <summary>Indoors, greenhouse or outdoors.</summary>
public enum Setting
{
    Indoors,
    Greenhouse,
    Outdoors,
}

[PlanPart("Room", Help = "The room of an indoor loop.")]
public sealed record Room
{
    [Input("floor", "Floor", Example = "2.4 m x 1.6 m", Help = "Length x width.")]
    public Extent? Floor { get; init; }

    [Input("height", "Height", Unit = "m", Min = 1.5, Max = 10)]
    public Estimate? Height { get; init; }

    [Input("stands on", "Stands on", Default = "unknown", Help = "slab, timber joists, upper floor or unknown.")]
    public FloorKind StandsOn { get; init; } = FloorKind.Unknown;

    [Input("design load", "Design load of the floor", Unit = "kg/m²", Min = 50, Max = 5000, Help = "From whoever designed it: 40 lb/ft² and 1.9 kPa are 195 kg/m².")]
    public Estimate? DesignLoad { get; init; }
}

public enum FloorKind
{
    Unknown,
    Slab,
    TimberJoists,
    UpperFloor,
}

[PlanPart("Cover", Help = "The glazing of a greenhouse.")]
public sealed record Cover
{
    [Input("glazing", "Glazing", Default = "single glass", Help = "single glass, double glass, twin-wall polycarbonate, single film or double film.")]
    public Glazing Glazing { get; init; }

    [Input("night minimum", "Coldest the greenhouse gets", Unit = "°C", Min = -40, Max = 30, Help = "If you keep it above this; else it follows the climate.")]
    public Estimate? NightMinimum { get; init; }
}

public enum Glazing
{
    SingleGlass,
    DoubleGlass,
    TwinWallPolycarbonate,
    SingleFilm,
    DoubleFilm,
}

[PlanPart("Source water")]
public sealed record SourceWater
{
    [Input("source", "Source", Default = "tap", Help = "tap, rain, well or reverse osmosis.")]
    public WaterSource Source { get; init; }

    [Input("alkalinity", "Alkalinity", Unit = "mg CaCO3/L", Min = 0, Max = 1000, Help = "From the water company's report, as CaCO3; 1 °dKH is 17.85 mg/L.")]
    public Estimate? Alkalinity { get; init; }

    [Input("temperature", "Temperature", Unit = "°C", Min = 0, Max = 40)]
    public Estimate? Temperature { get; init; }

    [Input("ph", "pH", Unit = "", Min = 3, Max = 11, Default = "7", DefaultSource = "common practice, no source: a loop is kept between 6 and 7",
        Help = "pH the loop is kept at.")]
    public Estimate Ph { get; init; } = null!;

    [Input("price", "Price of water", Unit = "money/m³", Min = 0, Max = 1e9, Example = "1.90 EUR per m3")]
    public Estimate? Price { get; init; }

    [Input("use", "Water topped up each day", Unit = "%/d", Min = 0, Max = 20, Default = "1 to 3 % a day, likely 1.5 % a day",
        DefaultSource = "from memory: FAO Technical Paper 589 (2014), section 3.4; 1 %/day measured by Love, Uhl & Genello 2015",
        Help = "Share of the water in the loop that evaporation, plants and splashes take each day.")]
    public Estimate Use { get; init; } = null!;
}

public enum WaterSource
{
    Tap,
    Rain,
    Well,
    ReverseOsmosis,
}

/// <summary>Length and width, m.</summary>
public sealed record Extent(Estimate Length, Estimate Width);
