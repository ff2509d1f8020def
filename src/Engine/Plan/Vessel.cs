using Runnel.Engine.Quantities;

namespace Runnel.Engine.Plan;

/// <summary>Something that holds water.</summary>
[PlanPart("Vessel")]
public sealed record Vessel
{
    /// <summary>Name that the grower gave it: the key in the plan.</summary>
    public string Name { get; init; } = "";

    [Input("role", "Role", Required = true, Example = "fish tank",
        Help = "fish tank, solids separator, biofilter, sump, media bed, raft bed, channel or header tank.")]
    public VesselRole Role { get; init; }

    [Input("like", "Like", Example = "bed one", Help = "Takes over everything from another vessel; what is written here wins.")]
    public string? Like { get; init; }

    [Input("count", "How many alike", Unit = "", Min = 1, Max = 500, Default = "1")]
    public Estimate Count { get; init; } = null!;

    [Input("shape", "Shape and size", Required = true, Example = "box 110 cm x 70 cm x 32 cm",
        Help = "Inside: box L x W x H · round D x H · drum 208 L upright · drum 208 L lengthwise (cut in half, lying) · tote 1000 L · pipe D x L.")]
    public Shape Shape { get; init; } = null!;

    [Input("level", "Water level", Unit = "cm", Min = 0, Max = 500, Help = "Depth of water when running; four fifths of the height when left out.")]
    public Estimate? Level { get; init; }

    [Input("media", "Media", Example = "expanded clay", Help = "What a media bed or biofilter is filled with: a name from the catalogue.")]
    public string? Media { get; init; }

    [Input("media depth", "Depth of media", Unit = "cm", Min = 1, Max = 300, Help = "For a media bed: 30 cm when left out.")]
    public Estimate? MediaDepth { get; init; }

    [Input("media volume", "Volume of media", Unit = "L", Min = 0, Max = 100000, Help = "For a biofilter with loose media.")]
    public Estimate? MediaVolume { get; init; }

    [Input("wall", "Wall material", Default = "plastic", Help = "plastic, wood, glass, concrete, steel or liner.")]
    public WallMaterial Wall { get; init; }

    [Input("wall thickness", "Thickness of the wall", Unit = "mm", Min = 0.1, Max = 500, Default = "3 mm", DefaultSource = "common practice, no source")]
    public Estimate WallThickness { get; init; } = null!;

    [Input("insulation", "Insulation", Example = "30 mm EPS", Help = "Thickness and kind: EPS, XPS, polyiso, fibreglass.")]
    public Insulation? Insulation { get; init; }

    [Input("lid", "Lid", Default = "no", Help = "yes if the water surface is covered: a lid stops most evaporation.")]
    public bool Lid { get; init; }

    [Input("above floor", "Height above floor", Unit = "cm", Min = -300, Max = 1000, Default = "0 cm", DefaultSource = "stands on the floor")]
    public Estimate AboveFloor { get; init; } = null!;

    [Input("drain", "Drain", Example = "siphon, 32 mm standpipe, 22 cm high",
        Help = "How it empties: siphon, standpipe, standpipe with holes (at its foot, so that it empties when the pump stops) or none; then its bore and how high its mouth stands above the bottom.")]
    public DrainSpec? Drain { get; init; }

    [Input("planted area", "Planted area", Unit = "m²", Min = 0, Max = 10000, Help = "When it differs from the open top of the bed.")]
    public Estimate? PlantedArea { get; init; }

    [Input("part", "Buy as", Help = "Name of the part to buy, when it is not the shape: two half drums come from one drum.")]
    public string? Part { get; init; }
}

public enum VesselRole
{
    FishTank,
    SolidsSeparator,
    Biofilter,
    Sump,
    MediaBed,
    RaftBed,
    Channel,
    HeaderTank,
}

public enum WallMaterial
{
    Plastic,
    Wood,
    Glass,
    Concrete,
    Steel,
    Liner,
}

/// <summary>Shape of a vessel inside. Sizes in SI.</summary>
public abstract record Shape(string Text);

/// <summary>A box: length, width and height inside, m.</summary>
public sealed record BoxShape(string Text, Estimate Length, Estimate Width, Estimate Height) : Shape(Text);

/// <summary>An upright round tank: diameter and height inside, m.</summary>
public sealed record RoundShape(string Text, Estimate Diameter, Estimate Height) : Shape(Text);

/// <summary>A drum by its volume, standing or cut lengthwise and lying; proportions of the 208 L (55 US gal) drum.</summary>
public sealed record DrumShape(string Text, Estimate Volume, bool Lengthwise) : Shape(Text);

/// <summary>A tote (intermediate bulk container) by its volume, m³; base of 1.2 m x 1.0 m.</summary>
public sealed record ToteShape(string Text, Estimate Volume) : Shape(Text);

/// <summary>A lying pipe or channel: diameter and length inside, m.</summary>
public sealed record PipeShape(string Text, Estimate Diameter, Estimate Length) : Shape(Text);

/// <summary>Thickness and kind of insulation.</summary>
public sealed record Insulation(string Text, Estimate Thickness, InsulationKind Kind);

public enum InsulationKind
{
    Eps,
    Xps,
    Polyiso,
    Fibreglass,
}

/// <summary>How a vessel empties, as written: "siphon, 32 mm standpipe, 22 cm high".</summary>
/// <param name="Text">As written.</param>
/// <param name="Kind">What lets the water out.</param>
/// <param name="Bore">Inside width of the standpipe, m, or null when it is not said.</param>
/// <param name="Height">Its mouth above the bottom of the vessel, m, or null when it is not said.</param>
public sealed record DrainSpec(string Text, DrainKind Kind, Estimate? Bore = null, Estimate? Height = null);

public enum DrainKind
{
    Siphon,
    Standpipe,
    StandpipeWithHoles,
    None,
}

[PlanPart("Pipe", Help = "One run of pipe, with what is fitted into it.")]
public sealed record Pipe
{
    [Input("from", "From", Required = true, Help = "Vessel the water leaves, or several.")]
    public IReadOnlyList<string> From { get; init; } = [];

    [Input("to", "To", Required = true, Help = "Vessel the water reaches, or several.")]
    public IReadOnlyList<string> To { get; init; } = [];

    [Input("pumped by", "Pumped by", Help = "Name of the pump; leave out for a gravity drain.")]
    public string? PumpedBy { get; init; }

    [Input("size", "Size", Required = true, Example = "25 mm PVC", Help = "Nominal size and material: 25 mm PVC, 1 in PVC, 3/4 in hose.")]
    public PipeSize Size { get; init; } = null!;

    [Input("length", "Length", Required = true, Unit = "m", Min = 0.01, Max = 1000, Help = "Of all its branches together.")]
    public Estimate Length { get; init; } = null!;

    [Input("rise", "Rise", Unit = "m", Min = -20, Max = 20, Help = "From the lowest to the highest point.")]
    public Estimate? Rise { get; init; }

    [Input("elbows", "Elbows", Unit = "", Min = 0, Max = 500, Default = "0")]
    public Estimate Elbows { get; init; } = null!;

    [Input("tees", "Tees", Unit = "", Min = 0, Max = 500, Default = "0")]
    public Estimate Tees { get; init; } = null!;

    [Input("valves", "Valves", Unit = "", Min = 0, Max = 500, Default = "0")]
    public Estimate Valves { get; init; } = null!;

    [Input("unions", "Unions", Unit = "", Min = 0, Max = 500, Default = "0")]
    public Estimate Unions { get; init; } = null!;

    [Input("tank connectors", "Tank connectors", Unit = "", Min = 0, Max = 500,
        Help = "Where the pipe passes a wall. When left out: one for each vessel that a gravity drain leaves, none for a pumped pipe.")]
    public Estimate? TankConnectors { get; init; }

    [Input("overflow at", "Overflow at", Unit = "cm", Min = 0, Max = 1000, Help = "Height of the drain's mouth above the bottom of the vessel it leaves.")]
    public Estimate? OverflowAt { get; init; }

    [Input("ends under water", "Ends under water", Default = "no",
        Help = "For a pumped pipe: yes when its end lies below the water line. Such an end siphons the vessel back when the pump stops.")]
    public bool EndsUnderWater { get; init; }

    [Input("check valve", "Check valve", Default = "no", Help = "For a pumped pipe: yes when a valve lets the water go one way only.")]
    public bool CheckValve { get; init; }
}

/// <summary>Nominal size and material of a pipe, as written: "25 mm PVC".</summary>
/// <param name="Text">As written, used in the names of its parts.</param>
/// <param name="Nominal">Nominal size, m.</param>
/// <param name="Material">What follows the size: "PVC", "hose".</param>
public sealed record PipeSize(string Text, double Nominal, string Material);
