using Runnel.Engine.Quantities;

namespace Runnel.Engine.Plan;

/// <summary>Anything that takes electricity.</summary>
public abstract record Appliance
{
    /// <summary>Name that the grower gave it: the key in the plan.</summary>
    public string Name { get; init; } = "";

    [Input("count", "How many alike", Unit = "", Min = 1, Max = 1000, Default = "1")]
    public Estimate Count { get; init; } = null!;

    [Input("watts", "Power", Unit = "W", Min = 0, Max = 100000, Required = true, Help = "Of one, drawn while it is on. A plug meter beats the label.")]
    public Estimate Watts { get; init; } = null!;

    [Input("life", "Life", Unit = "year", Min = 0.05, Max = 60, Help = "How long one lasts; what it costs is put aside over that time. For a lamp, hours lit go under life hours.")]
    public Estimate? Life { get; init; }
}

/// <summary>An appliance that runs a number of hours each day.</summary>
public abstract record TimedAppliance : Appliance
{
    [Input("hours", "Hours a day", Unit = "h/d", Min = 0, Max = 24, Default = "24", DefaultSource = "runs day and night")]
    public Estimate Hours { get; init; } = null!;

    [Input("on from", "On from", Default = "00:00", Help = "Clock time at which it goes on; matters for tariffs by time of day.")]
    public TimeOnly OnFrom { get; init; }
}

[PlanPart("Pump")]
public sealed record Pump : TimedAppliance
{
    [Input("curve", "Curve", Example = "[0 m at 2400 L/h, 2.6 m at 0 L/h]", Help = "Points of head and flow from the box or the maker: two are enough.")]
    public IReadOnlyList<CurvePoint> Curve { get; init; } = [];

    [Input("flow", "Flow", Unit = "L/h", Min = 1, Max = 1e6, Help = "What arrives, if you measured it with a bucket and a watch.")]
    public Estimate? Flow { get; init; }

    [Input("lowest level", "Lowest level", Unit = "cm", Min = 0, Max = 500, Default = "5 cm", DefaultSource = "common practice, no source",
        Help = "Depth of water in the vessel it stands in at which it sucks air, or at which a float switch stops it.")]
    public Estimate LowestLevel { get; init; } = null!;
}

/// <summary>One point of a pump curve: head, m, at a flow, m³/s.</summary>
public sealed record CurvePoint(Estimate Head, Estimate Flow);

[PlanPart("Air pump")]
public sealed record AirPump : TimedAppliance
{
    [Input("flow", "Air flow", Unit = "L/min", Min = 0.1, Max = 10000, Help = "At the depth of the stones.")]
    public Estimate? Flow { get; init; }

    [Input("depth", "Depth of the stones", Unit = "cm", Min = 1, Max = 500)]
    public Estimate? Depth { get; init; }

    [Input("stones", "Air stones", Unit = "", Min = 0, Max = 200, Default = "0")]
    public Estimate Stones { get; init; } = null!;
}

[PlanPart("Heater")]
public sealed record Heater : Appliance
{
    [Input("keep", "Keeps the water at", Unit = "°C", Min = 0, Max = 40, Required = true)]
    public Estimate Keep { get; init; } = null!;

    [Input("energy", "Energy in each month", Unit = "kWh", Min = 0, Max = 100000, Example = "[90, 80, 60, 30, 10, 0, 0, 0, 5, 30, 60, 85]",
        Help = "Twelve values from January when you know them from a meter; else worked out from the heat balance.")]
    public IReadOnlyList<Estimate> Energy { get; init; } = [];
}

[PlanPart("Lamp")]
public sealed record Lamp : TimedAppliance
{
    [Input("kind", "Kind of lamp", Default = "white LED", Help = "white LED, red and blue LED, compact fluorescent, fluorescent tube, sodium, metal halide or incandescent.")]
    public LampKind Kind { get; init; }

    [Input("colour", "Colour temperature", Example = "6500 K", Help = "Printed on the lamp: 2700 K is warm, 6500 K daylight.")]
    public string? Colour { get; init; }

    [Input("lumens", "Lumens", Unit = "lm", Min = 1, Max = 1e6, Help = "Of one lamp, from the box.")]
    public Estimate? Lumens { get; init; }

    [Input("photons", "Photons", Unit = "µmol/s", Min = 0.1, Max = 1e5, Help = "Of one lamp, if the maker states it.")]
    public Estimate? Photons { get; init; }

    [Input("efficacy", "Photons per joule", Unit = "µmol/J", Min = 0.1, Max = 4.5, Help = "In place of photons, if the maker states it.")]
    public Estimate? Efficacy { get; init; }

    [Input("reaching", "Share reaching the leaves", Unit = "%", Min = 1, Max = 100, Default = "50 to 80 %, likely 65 %",
        DefaultSource = "common practice, no source: bare lamp 30 to 50 %, with reflector 60 to 75 %, with white side curtains 80 to 90 %")]
    public Estimate Reaching { get; init; } = null!;

    [Input("over", "Over", Help = "Beds under these lamps; all planted beds when left out.")]
    public IReadOnlyList<string> Over { get; init; } = [];

    [Input("height", "Height above the plants", Unit = "cm", Min = 1, Max = 1000)]
    public Estimate? Height { get; init; }

    [Input("life hours", "Life in hours lit", Unit = "h", Min = 100, Max = 200000, Help = "From the box; used with the hours a day in place of life.")]
    public Estimate? LifeHours { get; init; }
}

public enum LampKind
{
    WhiteLed,
    RedAndBlueLed,
    CompactFluorescent,
    FluorescentTube,
    Sodium,
    MetalHalide,
    Incandescent,
}

[PlanPart("Fan")]
public sealed record Fan : TimedAppliance;

[PlanPart("Dehumidifier")]
public sealed record Dehumidifier : TimedAppliance;

[PlanPart("Lumber")]
public sealed record Lumber
{
    /// <summary>Name that the grower gave it: the key in the plan.</summary>
    public string Name { get; init; } = "";

    [Input("size", "Size", Required = true, Example = "45 x 90 mm", Help = "As sold: 45 x 90 mm, 2x4. Its part is named after it: 45 x 90 mm lumber.")]
    public string Size { get; init; } = "";

    [Input("length", "Length of each", Required = true, Unit = "m", Min = 0.01, Max = 20)]
    public Estimate Length { get; init; } = null!;

    [Input("count", "How many", Unit = "", Min = 1, Max = 1000, Default = "1")]
    public Estimate Count { get; init; } = null!;

    [Input("use", "Use", Default = "other", Help = "leg, rail, joist or other: legs are checked as columns, rails and joists as beams on their narrow edge, other not at all.")]
    public LumberUse Use { get; init; } = LumberUse.Other;

    [Input("carries", "Carries", Example = "[bed one, bed two]", Help = "The vessels whose weight these pieces carry. Count only pieces that carry: spreaders and braces go under another name.")]
    public IReadOnlyList<string> Carries { get; init; } = [];

    [Input("span", "Free span", Unit = "m", Min = 0.05, Max = 20, Help = "Of a rail or joist between two supports; the whole length when left out.")]
    public Estimate? Span { get; init; }

    [Input("wood", "Wood", Default = "unknown",
        Help = "Species group of graded No. 2 lumber, or strength class: spruce pine fir, hem fir, douglas fir larch, southern pine, C16, C24 or unknown, for which the weakest values are taken.")]
    public Wood Wood { get; init; } = Wood.Unknown;

    [Input("wet", "Gets wet", Default = "yes", DefaultSource = "splash, spray and damp air: wood beside water counts as wet", Help = "no only for wood that stays dry, under 19 % moisture, for good.")]
    public bool Wet { get; init; } = true;
}

/// <summary>What a piece of the stand does.</summary>
public enum LumberUse
{
    Leg,
    Rail,
    Joist,
    Other,
}

/// <summary>Kind and grade of lumber: North American groups as No. 2, European strength classes.</summary>
public enum Wood
{
    Unknown,
    SprucePineFir,
    HemFir,
    DouglasFirLarch,
    SouthernPine,
    C16,
    C24,
}
