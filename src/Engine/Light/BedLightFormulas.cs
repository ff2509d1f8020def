using Runnel.Engine.Figures;
using Runnel.Engine.Quantities;

namespace Runnel.Engine.Light;

/// <summary>The formulary's rules about light on a bed: what arrives, what is left of it with the years, what it costs.</summary>
public static class BedLightFormulas
{
    private const string Subject = "Light";

    private static readonly FormulaInput Length = new("length", "Length of the bed", Units.Metre, BedOutline.MinSide, BedOutline.MaxSide);
    private static readonly FormulaInput Width = new("width", "Width of the bed", Units.Metre, BedOutline.MinSide, BedOutline.MaxSide);
    private static readonly FormulaInput Height = new("height", "Height of the lamps above the leaves", Units.Metre, PointSource.MinHeight, PointSource.MaxHeight);
    private static readonly FormulaInput Transmission = new("transmission", "Transmission of the glass", Units.Percent, 0, 100);
    private static readonly FormulaOutput OfDaylight = new("share", "Share of the outdoor light", Units.Percent);

    /// <summary>Share of one lamp on a bed.</summary>
    public static readonly Formula ShareOfOneLamp = new()
    {
        Id = "share-of-one-lamp",
        Name = "Share of a lamp's photons on the bed below it",
        Subject = Subject,
        Equation = "s = 4 F(L/2, W/2, h)",
        Inputs = [Length, Width, Height],
        Output = new("share", "Share that falls on the bed", Units.Percent),
        Sources = [Source.FromMemory("Howell, A catalogue of radiation heat transfer configuration factors, B-4"), Source.Definition("reciprocity of configuration factors")],
        Confidence = Confidence.Textbook,
        Error = "exact for one small matt lamp over the middle",
        NotFor = "several lamps spread over the bed, of which more misses it; bare bulbs, which send half their light up",
        Compute = x => Reaching.OfOne(x[0], x[1], x[2]),
    };

    /// <summary>Share with curtains.</summary>
    public static readonly Formula ShareWithCurtains = new()
    {
        Id = "share-with-curtains",
        Name = "Share of lamps' photons on a bed within white curtains",
        Subject = Subject,
        Equation = "s = s₀ + (1 − s₀) ρ F_wb / (1 − ρ F_ww)",
        Inputs =
        [
            new("direct", "Share that falls on the bed directly", Units.Percent, 0, 100),
            new("reflectance", "Share that the curtains throw back", Units.Percent, 0, Curtains.MaxReflectance, 80, "common practice, no source: white film and paint 75 to 90 %"),
            Length, Width, Height,
        ],
        Output = new("share", "Share that reaches the bed", Units.Percent),
        Sources = [Source.Definition("radiation exchange in enclosures, evenly lit matt walls, dark leaves and open top")],
        Confidence = Confidence.Textbook,
        Error = "2 points against single photons traced between such walls while lamps hang no higher than two thirds of the bed's shorter side; how white and gapless real curtains are matters more",
        NotFor = "lamps hung higher than two thirds of the bed's shorter side, where it promises 4 to 10 points too much; mirror film; curtains with a gap above the leaves or below the lamps",
        Compute = x => Curtains.Share(x[0], x[1], x[2], x[3], x[4]),
    };

    /// <summary>What is left of a lamp's light.</summary>
    public static readonly Formula LightLeft = new()
    {
        Id = "light-left",
        Name = "Share of a lamp's first light left after hours lit",
        Subject = Subject,
        Equation = "Φ/Φ₀ = p^(t/t₁)",
        Inputs =
        [
            new("lit", "Hours lit so far", Units.HourUnit, 0, Ageing.MaxHours),
            new("known", "Hours after which the share is known", Units.HourUnit, Ageing.MinHours, Ageing.MaxHours, 50000,
                "from memory: LED lamps are sold with L70 of 25 000 to 50 000 h and more"),
            new("share", "Share left then", Units.Percent, Ageing.MinShare, 100, 70, "L70: 70 %"),
        ],
        Output = new("left", "Share of its first light left", Units.Percent),
        Sources = [Source.FromMemory("IES TM-21: exp(−αt) fitted to tests; α = ln(1/0.7)/L70")],
        Confidence = Confidence.Textbook,
        Error = "as good as the known point; TM-21 looks no further ahead than six times the hours tested",
        NotFor = "the sudden end of a driver or lamp",
        Compute = x => Ageing.Left(x[0], x[1], x[2]),
    };

    /// <summary>Energy for each mole.</summary>
    public static readonly Formula EnergyOfAMole = new()
    {
        Id = "energy-of-a-mole",
        Name = "Electricity for each mole of photons on the leaves",
        Subject = Subject,
        Equation = "e = P / (3.6 PPF m s)",
        Inputs =
        [
            new("power", "Electric power drawn", Units.Watt, 0.1, PhotonFlux.MaxPower),
            new("photons", "Photons of the lamp when new", Units.MicromolePerSecond, LampOffer.MinPhotons, LightMap.MaxPhotons),
            new("left", "Mean share of its first light over its life", Units.Percent, Ageing.MinShare, 100, 85, "L70 lamps used to their L70"),
            new("reaching", "Share reaching the leaves", Units.Percent, 1, 100, 65,
                "from memory: bare lamp 30 to 50 %, with reflector 60 to 75 %, with white side curtains 80 to 90 %"),
        ],
        Output = new("energy", "Electricity for each mole", Units.KilowattHourPerMole),
        Sources = [Source.Definition("the definitions of mole, joule and kilowatt hour")],
        Confidence = Confidence.Textbook,
        Error = "as good as photons and share",
        NotFor = "the watts that a bulb stands for: take what it draws",
        Compute = x => LampOffer.EnergyOfAMole(x[0], x[1], x[2], x[3]),
    };

    /// <summary>Hours for a wished daily light.</summary>
    public static readonly Formula HoursForLight = new()
    {
        Id = "hours-for-light",
        Name = "Lamp hours for a wished daily light",
        Subject = Subject,
        Equation = "t = (DLI − DLI_sun) / (0.0036 PPFD)",
        Inputs =
        [
            new("wished", "Daily light wished for", Units.MolePerSquareMetreDay, 0, Light.DailyLight.MaxDaily),
            new("sun", "Daily light from the sun", Units.MolePerSquareMetreDay, 0, Light.DailyLight.MaxDaily, 0, "no sun indoors"),
            new("photon-flux", "Photon flux density of the lamps", Units.MicromolePerSquareMetreSecond, LitHours.MinDensity, Light.DailyLight.MaxFluxDensity),
        ],
        Output = new("hours", "Hours lit in each day", Units.HoursPerDay),
        Sources = [Source.Definition("the definition of daily light")],
        Confidence = Confidence.Textbook,
        Error = "exact for steady light; more than 24 h/d says that the lamps are too weak",
        NotFor = "a crop's longest day: many bear no more than 14 to 18 h",
        Compute = x => LitHours.For(x[0], x[1], x[2]),
    };

    /// <summary>Mean daylight factor.</summary>
    public static readonly Formula MeanDaylightFactor = new()
    {
        Id = "mean-daylight-factor",
        Name = "Mean daylight in a room, as a share of outdoors",
        Subject = Subject,
        Equation = "DF = T A_w θ / (A (1 − R²))",
        Inputs =
        [
            Transmission with { Default = 68, DefaultSource = "clean double glass with its frame and dirt (from memory)" },
            new("glass", "Area of glass", Units.SquareMetre, WindowLight.MinArea, WindowLight.MaxArea),
            new("sky", "Angle of sky seen from the window's middle", Units.Degree, 0, 90, 65, "houses opposite up to 25° (from memory)"),
            new("room", "Area of all surfaces of the room", Units.SquareMetre, WindowLight.MinRoom, WindowLight.MaxRoom),
            new("reflectance", "Mean reflectance of those surfaces", Units.Percent, 0, WindowLight.MaxReflectance, 50, "a light room (from memory)"),
        ],
        Output = OfDaylight,
        Sources = [Source.FromMemory("CIBSE and the Building Research Establishment: average daylight factor")],
        Confidence = Confidence.Textbook,
        Error = "a quarter for the mean of an overcast room; half either way for plants in a month with sun",
        NotFor = "one place in the room; the sun's beam",
        Compute = x => WindowLight.MeanFactor(x[0], x[1], x[2], x[3], x[4]),
    };

    /// <summary>Light from the sky near a window.</summary>
    public static readonly Formula WindowSky = new()
    {
        Id = "window-sky",
        Name = "Light from the sky near a window, as a share of outdoors",
        Subject = Subject,
        Equation = "s = T 2 [F(top) − F(foot)], F = (1/2π)[atan(b/c) − c/√(a²+c²) atan(b/√(a²+c²))]",
        Inputs =
        [
            Transmission with { Default = 68, DefaultSource = "clean double glass with its frame and dirt (from memory)" },
            new("width", "Width of the glass", Units.Metre, WindowLight.MinArea, WindowLight.MaxSide),
            new("sill", "Lower edge of the glass above the leaves", Units.Metre, 0, WindowLight.MaxSide, 0, "leaves no lower than the sill"),
            new("glass", "Height of the glass", Units.Metre, WindowLight.MinArea, WindowLight.MaxSide),
            new("distance", "Distance of the leaves from the glass", Units.Metre, WindowLight.MinDistance, WindowLight.MaxDistance),
            new("obstruction", "Houses and trees up to", Units.Degree, 0, WindowLight.MaxObstruction, 0, "nothing opposite"),
        ],
        Output = OfDaylight,
        Sources = [Source.FromMemory("Howell, A catalogue of radiation heat transfer configuration factors, B-5")],
        Confidence = Confidence.Textbook,
        Error = "half either way: evenly bright sky, no sun's beam, nothing thrown back by walls",
        NotFor = "a window toward the sun in winter, which gets much more",
        Compute = x => WindowLight.SkyShare(x[0], x[1], x[2], x[3], x[4], x[5]),
    };

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Formula> All { get; } =
    [
        ShareOfOneLamp, ShareWithCurtains, LightLeft, EnergyOfAMole, HoursForLight, MeanDaylightFactor, WindowSky,
    ];
}
