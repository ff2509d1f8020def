using Runnel.Engine.Figures;
using Runnel.Engine.Quantities;

namespace Runnel.Engine.Light;

/// <summary>The formulary's rules about light.</summary>
public static class LightFormulas
{
    private const string Subject = "Light";

    private static readonly Source Thimijan = new(
        "Thimijan and Heins 1983, Photometric, radiometric, and quantum light units of measure, HortScience 18(6), 818-822, as relayed by later authors");

    private static readonly FormulaOutput Flux = new("photons", "Photon flux", Units.MicromolePerSecond);
    private static readonly FormulaOutput Daily = new("daily-light", "Daily light", Units.MolePerSquareMetreDay);

    /// <summary>Photons from lumens.</summary>
    public static readonly Formula PhotonsFromLumens = new()
    {
        Id = "photons-from-lumens",
        Name = "Photons of a lamp from its lumens",
        Subject = Subject,
        Equation = "PPF = Φ / K",
        Inputs =
        [
            new("lumens", "Light of the lamp", Units.Lumen, 0, PhotonFlux.MaxLumens),
            new("lux-per-photon", "Lux for each µmol/m²/s", Units.LuxPerMicromole, PhotonFlux.MinLuxPerPhoton, PhotonFlux.MaxLuxPerPhoton),
        ],
        Output = Flux,
        Sources = [Thimijan],
        Confidence = Confidence.PublishedExample,
        Error = "5 % with a factor of the right kind of lamp",
        NotFor = "red and blue lamps, coloured tubes; the watts that a bulb stands for",
        Compute = x => PhotonFlux.ThimijanHeins(x[0], x[1]),
    };

    /// <summary>Photons from power.</summary>
    public static readonly Formula PhotonsFromPower = new()
    {
        Id = "photons-from-power",
        Name = "Photons of a lamp from its power",
        Subject = Subject,
        Equation = "PPF = P η",
        Inputs =
        [
            new("power", "Electric power drawn", Units.Watt, 0, PhotonFlux.MaxPower),
            new("efficacy", "Photons for each joule", Units.MicromolePerJoule, 0, PhotonFlux.MaxEfficacy),
        ],
        Output = Flux,
        Sources = [Source.Definition("the definition of photon efficacy")],
        Confidence = Confidence.Textbook,
        Error = "as good as the efficacy: lamps of one kind differ by half",
        NotFor = "the watts that a bulb stands for: take what it draws",
        Compute = x => PhotonFlux.FromPower(x[0], x[1]),
    };

    /// <summary>Mean light on a bed.</summary>
    public static readonly Formula PhotonFluxOnBed = new()
    {
        Id = "photon-flux-on-bed",
        Name = "Mean light of lamps on a bed",
        Subject = Subject,
        Equation = "PPFD = PPF s / A",
        Inputs =
        [
            new("photons", "Photon flux of all lamps", Units.MicromolePerSecond, 0, Light.DailyLight.MaxFlux),
            new("reaching", "Share reaching the leaves", Units.Percent, 0, 100, 65,
                "from memory: bare lamp 30 to 50 %, with reflector 60 to 75 %, with white side curtains 80 to 90 %"),
            new("area", "Area of the bed", Units.SquareMetre, Light.DailyLight.MinArea, Light.DailyLight.MaxArea),
        ],
        Output = new("photon-flux", "Photon flux density", Units.MicromolePerSquareMetreSecond),
        Sources = [Source.Definition("conservation of photons: the lumen method of lighting design")],
        Confidence = Confidence.Textbook,
        Error = "as good as the share reaching the leaves: a third either way when guessed",
        NotFor = "the light at one spot",
        Compute = x => Light.DailyLight.MeanOnBed(x[0], x[1], x[2]),
    };

    /// <summary>Daily light from steady light.</summary>
    public static readonly Formula DailyLight = new()
    {
        Id = "daily-light",
        Name = "Daily light of lamps",
        Subject = Subject,
        Equation = "DLI = 0.0036 PPFD t",
        Inputs =
        [
            new("photon-flux", "Photon flux density", Units.MicromolePerSquareMetreSecond, 0, Light.DailyLight.MaxFluxDensity),
            new("hours", "Hours lit in each day", Units.HoursPerDay, 0, 24, 16, "common practice, no source: leafy plants are lit for 14 to 18 h"),
        ],
        Output = Daily,
        Sources = [new("Palmitessa et al., lettuce trial under 250 µmol/m²/s for 16 h, 340 for 12 h and 170 for 24 h (PMC12995675)")],
        Confidence = Confidence.PublishedExample,
        Error = "exact for steady light",
        Compute = x => Light.DailyLight.Integral(x[0], x[1]),
    };

    /// <summary>Daily light outdoors.</summary>
    public static readonly Formula Daylight = new()
    {
        Id = "daylight",
        Name = "Daily light outdoors",
        Subject = Subject,
        Equation = "DLI = c H",
        Inputs =
        [
            new("radiation", "Global radiation on the level", Units.MegajoulePerSquareMetreDay, 0, Light.DailyLight.MaxRadiation),
            new("photons", "Photons in it", Units.MolePerMegajoule, Light.DailyLight.MinPhotons, Light.DailyLight.MaxPhotons, Light.DailyLight.UsualPhotons,
                "share of 0.45 of 400 to 700 nm (Akitsu et al.) × 4.57 µmol/J (Thimijan and Heins 1983)"),
        ],
        Output = Daily,
        Sources =
        [
            Thimijan,
            new("Szeicz 1974, Journal of Applied Ecology: share 0.50 ± 0.03; Akitsu et al.: 0.41 to 0.48"),
            new("R package bigleaf, Rg.to.PPFD: 500 W/m², 1150 µmol/m²/s"),
        ],
        Confidence = Confidence.PublishedExample,
        Error = "10 %: published factors run from 1.94 to 2.3 mol/MJ",
        Compute = x => Light.DailyLight.FromRadiation(x[0], x[1]),
    };

    /// <summary>Daily light in a greenhouse.</summary>
    public static readonly Formula DaylightUnderCover = new()
    {
        Id = "daylight-under-cover",
        Name = "Daily light in a greenhouse",
        Subject = Subject,
        Equation = "DLI = DLI_out τ (1 − s)",
        Inputs =
        [
            new("outdoors", "Daily light outdoors", Units.MolePerSquareMetreDay, 0, Light.DailyLight.MaxDaily),
            new("transmission", "Transmission of clean glazing", Units.Percent, 0, 100),
            new("shade", "Lost to frame, dirt and slanting sun", Units.Percent, 0, 100, 25, GlazingTransmission.Shade.From.Source),
        ],
        Output = Daily,
        Sources = [Source.Practice("the losses of glazing, frame and dirt multiplied")],
        Confidence = Confidence.Textbook,
        Error = "a third either way: greenhouses pass 35 to 70 %",
        NotFor = "one corner at one hour; a window sill",
        Compute = x => Light.DailyLight.UnderCover(x[0], x[1], x[2]),
    };

    /// <summary>Energy of lamps for a daily light.</summary>
    public static readonly Formula LampEnergyForLight = new()
    {
        Id = "lamp-energy-for-light",
        Name = "Electricity of lamps for a daily light",
        Subject = Subject,
        Equation = "E = DLI / (3.6 η s)",
        Inputs =
        [
            new("daily-light", "Daily light from lamps", Units.MolePerSquareMetreDay, 0, Light.DailyLight.MaxDaily),
            new("efficacy", "Photons for each joule", Units.MicromolePerJoule, Light.DailyLight.MinEfficacy, Light.DailyLight.MaxEfficacy),
            new("reaching", "Share reaching the leaves", Units.Percent, 1, 100, 65,
                "from memory: bare lamp 30 to 50 %, with reflector 60 to 75 %, with white side curtains 80 to 90 %"),
        ],
        Output = new("energy", "Electricity for each square metre", Units.KilowattHourPerSquareMetreDay),
        Sources = [Source.Definition("the definitions of mole, joule and kilowatt hour")],
        Confidence = Confidence.Textbook,
        Error = "as good as efficacy and share",
        Compute = x => Light.DailyLight.LampEnergy(x[0], x[1], x[2]),
    };

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Formula> All { get; } =
    [
        PhotonsFromLumens, PhotonsFromPower, PhotonFluxOnBed, DailyLight, Daylight, DaylightUnderCover, LampEnergyForLight,
        .. SourceFormulas.All, .. BedLightFormulas.All,
    ];
}
