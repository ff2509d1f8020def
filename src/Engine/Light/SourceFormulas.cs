using Runnel.Engine.Figures;
using Runnel.Engine.Quantities;

namespace Runnel.Engine.Light;

/// <summary>The formulary's rules about light below one lamp.</summary>
public static class SourceFormulas
{
    private const string Subject = "Light";

    private static readonly Source Howell = Source.FromMemory("Howell, A catalogue of radiation heat transfer configuration factors");
    private static readonly Source Laws = Source.Definition("the inverse-square and cosine laws; Lambert's law for matt sources");

    private static readonly FormulaOutput Illuminance = new("illuminance", "Illuminance", Units.LumenPerSquareMetre);
    private static readonly FormulaInput Height = new("height", "Height above the leaves", Units.Metre, PointSource.MinHeight, PointSource.MaxHeight);

    private static readonly FormulaInput Exitance = new(
        "exitance", "Lumens of each square metre of the panel", Units.LumenPerSquareMetre, 0, DiffuseDisc.MaxExitance);

    /// <summary>Below a point source.</summary>
    public static readonly Formula PointIlluminance = new()
    {
        Id = "point-illuminance",
        Name = "Light below a small lamp of known intensity",
        Subject = Subject,
        Equation = "E = I h / d³",
        Inputs = [new("intensity", "Intensity toward the place", Units.Candela, 0, PointSource.MaxIntensity), Height, Aside("the foot of the lamp")],
        Output = Illuminance,
        Sources = [Laws],
        Confidence = Confidence.Textbook,
        Error = "1 % from five times the lamp's greatest dimension on; 20 % at the dimension itself",
        NotFor = "long tubes and panels close above the leaves",
        Compute = x => PointSource.Illuminance(x[0], x[1], x[2]),
    };

    /// <summary>Below a small matt lamp.</summary>
    public static readonly Formula CosineIlluminance = new()
    {
        Id = "cosine-illuminance",
        Name = "Light below a small matt lamp that faces down",
        Subject = Subject,
        Equation = "E = I₀ cos⁴θ / h²",
        Inputs = [new("intensity", "Intensity straight down", Units.Candela, 0, PointSource.MaxIntensity), Height, Aside("the foot of the lamp")],
        Output = Illuminance,
        Sources = [Laws],
        Confidence = Confidence.Textbook,
        Error = "1 % from five times the lamp's greatest dimension on, if it shines as a matt surface does",
        NotFor = "spot lamps, bare bulbs, long tubes and panels close above the leaves",
        Compute = x => PointSource.CosineLamp(x[0], x[1], x[2]),
    };

    /// <summary>Below a disc.</summary>
    public static readonly Formula DiscIlluminance = new()
    {
        Id = "disc-illuminance",
        Name = "Light below a round matt panel",
        Subject = Subject,
        Equation = "E = M/2 [1 − (s² + h² − r²) / √((s² + h² + r²)² − 4 s² r²)]",
        Inputs =
        [
            Exitance,
            new("radius", "Radius of the panel", Units.Metre, DiffuseDisc.MinSize, DiffuseDisc.MaxSize),
            Height,
            Aside("the foot of its middle"),
        ],
        Output = Illuminance,
        Sources = [Howell],
        Confidence = Confidence.Textbook,
        Error = "exact for a matt panel that faces down",
        Compute = x => DiffuseDisc.Illuminance(x[0], x[1], x[2], x[3]),
    };

    /// <summary>Below a rectangle.</summary>
    public static readonly Formula PanelIlluminance = new()
    {
        Id = "panel-illuminance",
        Name = "Light below a rectangular matt panel",
        Subject = Subject,
        Equation = "E = M F",
        Inputs =
        [
            Exitance,
            new("length", "Length of the panel", Units.Metre, DiffuseDisc.MinSize, DiffuseDisc.MaxSize),
            new("width", "Width of the panel", Units.Metre, DiffuseDisc.MinSize, DiffuseDisc.MaxSize),
            Height,
            new("along", "Distance from below its middle, along it", Units.Metre, 0, PointSource.MaxAside, 0, "below the middle"),
            new("across", "Distance from below its middle, across it", Units.Metre, 0, PointSource.MaxAside, 0, "below the middle"),
        ],
        Output = Illuminance,
        Sources = [Howell],
        Confidence = Confidence.Textbook,
        Error = "exact for a matt panel that faces down",
        Compute = x => DiffuseRectangle.Illuminance(x[0], x[1], x[2], x[3], x[4], x[5]),
    };

    /// <summary>Below a strip.</summary>
    public static readonly Formula StripIlluminance = new()
    {
        Id = "strip-illuminance",
        Name = "Light below a narrow matt strip",
        Subject = Subject,
        Equation = "E = i₀ h² ∫ dx / (x² + h² + s²)²",
        Inputs =
        [
            new("intensity", "Intensity of each metre, straight down", Units.CandelaPerMetre, 0, DiffuseLine.MaxIntensity),
            new("length", "Length of the strip", Units.Metre, DiffuseDisc.MinSize, DiffuseDisc.MaxSize),
            Height,
            new("along", "Distance from below its middle, along it", Units.Metre, 0, PointSource.MaxAside, 0, "below the middle"),
            new("aside", "Distance from the line below it", Units.Metre, 0, PointSource.MaxAside, 0, "below the strip"),
        ],
        Output = Illuminance,
        Sources = [Laws],
        Confidence = Confidence.Textbook,
        Error = "exact for a matt strip that is narrow beside its height",
        NotFor = "bare tubes away from the line below them",
        Compute = x => DiffuseLine.Strip(x[0], x[1], x[2], x[3], x[4]),
    };

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Formula> All { get; } = [PointIlluminance, CosineIlluminance, DiscIlluminance, PanelIlluminance, StripIlluminance];

    private static FormulaInput Aside(string from) =>
        new("aside", $"Distance from {from}", Units.Metre, 0, PointSource.MaxAside, 0, "straight below");
}
