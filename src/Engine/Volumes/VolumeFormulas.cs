using Runnel.Engine.Figures;
using Runnel.Engine.Quantities;

namespace Runnel.Engine.Volumes;

/// <summary>The formulary's rules about volumes.</summary>
public static class VolumeFormulas
{
    private const string Subject = "Volumes";

    private static readonly Source Geometry = Source.Definition("plane geometry");

    private static readonly Source DrumSizes = new(
        "A drum maker's size table: closed-head steel drum of 55 US gal, 22.5 in wide and 33.5 in high inside (open head 32.8 in)");

    private static readonly FormulaInput Diameter = new("diameter", "Inside diameter", Units.Metre, 0, Volume.MaxLength);
    private static readonly FormulaInput Length = new("length", "Inside length", Units.Metre, 0, Volume.MaxLength);
    private static readonly FormulaInput Depth = new("depth", "Depth of water", Units.Metre, 0, Volume.MaxLength);
    private static readonly FormulaOutput Water = new("volume", "Volume of water", Units.Litre);

    /// <summary>Water in a box.</summary>
    public static readonly Formula BoxVolume = new()
    {
        Id = "box-volume",
        Name = "Water in a box",
        Subject = Subject,
        Equation = "V = L W d",
        Inputs = [Length, new("width", "Inside width", Units.Metre, 0, Volume.MaxLength), Depth],
        Output = Water,
        Sources = [Geometry],
        Confidence = Confidence.Textbook,
        Error = "exact for straight walls; a tape measure on a bulging tank is worth a few percent",
        NotFor = "walls that lean or bulge",
        Compute = x => Volume.Box(x[0], x[1], x[2]),
    };

    /// <summary>Water in an upright round tank.</summary>
    public static readonly Formula CylinderVolume = new()
    {
        Id = "cylinder-volume",
        Name = "Water in a round tank",
        Subject = Subject,
        Equation = "V = π D² d / 4",
        Inputs = [Diameter, Depth],
        Output = Water,
        Sources = [Geometry, new("C. Bell, fluids: general engineering library, worked example of an upright cylindrical tank")],
        Confidence = Confidence.PublishedExample,
        Error = "exact for straight walls",
        NotFor = "tapered tubs, domed bottoms",
        Compute = x => Volume.Cylinder(x[0], x[1]),
    };

    /// <summary>Wetted cross-section of a lying round vessel.</summary>
    public static readonly Formula SegmentArea = new()
    {
        Id = "segment-area",
        Name = "Wetted cross-section of a lying round vessel",
        Subject = Subject,
        Equation = "A = R² acos((R − h)/R) − (R − h) √(2 R h − h²), R = D/2",
        Inputs = [Diameter, Depth],
        Output = new("area", "Wetted cross-section", Units.SquareMetre),
        Sources = [Geometry, new("C. Bell, fluids: general engineering library, worked examples of partly filled circles")],
        Confidence = Confidence.PublishedExample,
        Error = "exact; a depth above the crown counts as full",
        Compute = x => CircularSegment.Area(x[0], x[1]),
    };

    /// <summary>Water in a lying round vessel.</summary>
    public static readonly Formula LyingCylinderVolume = new()
    {
        Id = "lying-cylinder-volume",
        Name = "Water in a lying drum or round channel",
        Subject = Subject,
        Equation = "V = L (R² acos((R − h)/R) − (R − h) √(2 R h − h²)), R = D/2",
        Inputs = [Diameter, Length, Depth],
        Output = Water,
        Sources = [Geometry],
        Confidence = Confidence.Textbook,
        Error = "exact for flat ends and a level vessel; a depth above the crown counts as full",
        NotFor = "domed ends, a vessel that does not lie level",
        Compute = x => CircularSegment.Volume(x[0], x[1], x[2]),
    };

    /// <summary>Inside diameter of a drum.</summary>
    public static readonly Formula DrumDiameter = new()
    {
        Id = "drum-diameter",
        Name = "Inside diameter of a drum",
        Subject = Subject,
        Equation = "D = (4 V / (π s))^(1/3), s = 33.5/22.5",
        Inputs = [new("volume", "What the drum holds to the brim", Units.Litre, Drum.MinVolume, Drum.MaxVolume)],
        Output = new("diameter", "Inside diameter", Units.Metre),
        Sources = [DrumSizes],
        Confidence = Confidence.Textbook,
        Error = "2 % when the volume is the nominal one of 208 L: a real drum holds about 218 L to the brim",
        NotFor = "drums of other proportions: measure them",
        Compute = x => Drum.Diameter(x[0]),
    };

    /// <summary>Inside height of a drum.</summary>
    public static readonly Formula DrumLength = new()
    {
        Id = "drum-length",
        Name = "Inside height of a drum, its length when lying",
        Subject = Subject,
        Equation = "H = s D = s (4 V / (π s))^(1/3), s = 33.5/22.5",
        Inputs = [new("volume", "What the drum holds to the brim", Units.Litre, Drum.MinVolume, Drum.MaxVolume)],
        Output = new("length", "Inside height", Units.Metre),
        Sources = [DrumSizes],
        Confidence = Confidence.Textbook,
        Error = "2 % when the volume is the nominal one of 208 L: a real drum holds about 218 L to the brim",
        NotFor = "drums of other proportions: measure them",
        Compute = x => Drum.Length(x[0]),
    };

    /// <summary>Height of the water in a full tote.</summary>
    public static readonly Formula ToteHeight = new()
    {
        Id = "tote-height",
        Name = "Height of the water in a full tote",
        Subject = Subject,
        Equation = "H = V / (1.2 m × 1.0 m)",
        Inputs = [new("volume", "What the tote holds", Units.Litre, Tote.MinVolume, Tote.MaxVolume)],
        Output = new("height", "Height of the water", Units.Metre),
        Sources = [Source.Practice("a tote stands on a pallet of 1.2 m × 1.0 m"), Geometry],
        Confidence = Confidence.Textbook,
        Error = "about 12 % low: the bottle is narrower than the pallet",
        NotFor = "cutting to a line: measure the bottle",
        Compute = x => Tote.HeightOnPallet(x[0]),
    };

    /// <summary>Bulk volume of media in a bed.</summary>
    public static readonly Formula MediaVolume = new()
    {
        Id = "media-volume",
        Name = "Media in a bed",
        Subject = Subject,
        Equation = "V = A d",
        Inputs =
        [
            new("area", "Area of the bed inside", Units.SquareMetre, 0, Media.MaxArea),
            new("depth", "Depth of media", Units.Metre, 0, Media.MaxDepth),
        ],
        Output = new("volume", "Bulk volume of media", Units.Litre),
        Sources = [Geometry],
        Confidence = Confidence.Textbook,
        Error = "exact before the media settles",
        Compute = x => Media.BulkVolume(x[0], x[1]),
    };

    /// <summary>Water between the grains of flooded media.</summary>
    public static readonly Formula WaterInMedia = new()
    {
        Id = "water-in-media",
        Name = "Water in flooded media",
        Subject = Subject,
        Equation = "V_water = V × voids",
        Inputs =
        [
            new("volume", "Bulk volume of flooded media", Units.Litre, 0, Media.MaxVolume),
            new("voids", "Share between the grains", Units.Percent, 0, 100),
        ],
        Output = Water,
        Sources = [Source.Definition("the definition of porosity")],
        Confidence = Confidence.Textbook,
        Error = "as good as the share of voids: gravel 35 to 45 %, expanded clay 40 to 45 % (from memory)",
        NotFor = "old beds full of roots and dirt; water that stays on the grains when the bed drains",
        Compute = x => Media.WaterVolume(x[0], x[1]),
    };

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Formula> All { get; } =
    [
        BoxVolume, CylinderVolume, SegmentArea, LyingCylinderVolume, DrumDiameter, DrumLength, ToteHeight, MediaVolume, WaterInMedia,
    ];
}
