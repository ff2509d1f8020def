using Runnel.Engine.Figures;
using Runnel.Engine.Quantities;

namespace Runnel.Engine.Sun;

/// <summary>The formulary's rules about the sun.</summary>
public static class SunFormulas
{
    private const string Subject = "Sun";
    private const string Pole = "a polar day or night";

    private static readonly Unit Degree = Units.Degree;

    private static readonly Source Fao56 = new(
        "Allen, Pereira, Raes and Smith 1998, Crop evapotranspiration, FAO Irrigation and Drainage Paper 56, equations 21 to 25, 34 and 37");

    private static readonly Source RedaAndreas = new(
        "Reda and Andreas 2003, revised 2008, Solar position algorithm for solar radiation applications, NREL/TP-560-34302");

    private static readonly FormulaInput Latitude = new("latitude", "Latitude, north positive", Degree, -90, 90);
    private static readonly FormulaInput Day = new("day", "Day of the year, 1 for 1 January", Units.One, 1, DayLength.MaxDay);
    private static readonly FormulaInput Tilt = new("tilt", "Tilt of the plane from level", Degree, 0, 180);
    private static readonly FormulaInput Zenith = new("zenith", "Sun from straight above", Degree, 0, 180);

    /// <summary>Declination of the sun.</summary>
    public static readonly Formula SolarDeclination = new()
    {
        Id = "solar-declination",
        Name = "Declination of the sun",
        Subject = Subject,
        Equation = "δ = 0.409 sin(2π J / 365 − 1.39) rad",
        Inputs = [Day],
        Output = new("declination", "Degrees north of the equator", Degree),
        Sources = [Fao56],
        Confidence = Confidence.PublishedExample,
        Error = "up to 1.4° near the equinoxes, 0.3° otherwise",
        NotFor = "pointing at the sun",
        Compute = x => DayLength.Declination(x[0]),
    };

    /// <summary>Day length.</summary>
    public static readonly Formula DayLengthOfDay = new()
    {
        Id = "day-length",
        Name = "Hours from sunrise to sunset, without refraction",
        Subject = Subject,
        Equation = "N = 24 ω_s / π, ω_s = arccos(−tan φ tan δ)",
        Inputs = [Latitude, Day],
        Output = new("day-length", "Hours of day", Units.HoursPerDay),
        Sources = [Fao56],
        Confidence = Confidence.PublishedExample,
        Error = "0.1 h at low latitudes, a quarter of an hour at 52° in March and October; what the eye sees is 0.1 to 0.3 h longer",
        Compute = x => DayLength.Geometric(x[0], x[1]),
    };

    /// <summary>Day length as it is seen.</summary>
    public static readonly Formula DayLengthSeen = new()
    {
        Id = "day-length-seen",
        Name = "Hours from the first to the last sight of the sun",
        Subject = Subject,
        Equation = "N = 2 arccos((sin(−0.8333°) − sin φ sin δ) / (cos φ cos δ)) / 15°",
        Inputs = [Latitude, new("declination", "Declination of the sun", Degree, -DayLength.MaxDeclination, DayLength.MaxDeclination)],
        Output = new("day-length", "Hours of day", Units.HoursPerDay),
        Sources = [RedaAndreas, Source.Definition("the spherical triangle of pole, zenith and sun")],
        Confidence = Confidence.PublishedExample,
        Error = "a minute or two with a good declination; the air and the hills decide the rest",
        NotFor = Pole + " that begins or ends",
        Compute = x => DayLength.WithRefraction(x[0], x[1]),
    };

    /// <summary>Radiation above the air.</summary>
    public static readonly Formula RadiationAboveTheAir = new()
    {
        Id = "extraterrestrial-radiation",
        Name = "Radiation of a day above the air",
        Subject = Subject,
        Equation = "R_a = (24·60/π) 0.0820 d_r (ω_s sin φ sin δ + cos φ cos δ sin ω_s)",
        Inputs = [Latitude, Day],
        Output = new("extraterrestrial", "Radiation above the air on the level", Units.MegajoulePerSquareMetreDay),
        Sources = [Fao56],
        Confidence = Confidence.PublishedExample,
        Error = "1 % in summer, more where the sun is low all day",
        Compute = x => ExtraterrestrialRadiation.Fao56(x[0], x[1]),
    };

    /// <summary>Radiation of a cloudless day.</summary>
    public static readonly Formula ClearDay = new()
    {
        Id = "clear-sky-day",
        Name = "Radiation of a cloudless day",
        Subject = Subject,
        Equation = "R_so = (0.75 + 2·10⁻⁵ z) R_a",
        Inputs =
        [
            new("extraterrestrial", "Radiation above the air on the level", Units.MegajoulePerSquareMetreDay, 0, ClearSky.MaxExtraterrestrial),
            new("elevation", "Height above sea level", Units.Metre, -430, ClearSky.MaxElevation, 0, "sea level"),
        ],
        Output = new("clear-sky", "Global radiation on the level", Units.MegajoulePerSquareMetreDay),
        Sources = [Fao56],
        Confidence = Confidence.PublishedExample,
        Error = "a few percent with the haze of the place",
        Compute = x => ClearSky.Fao56(x[0], x[1]),
    };

    /// <summary>Radiation under a cloudless sky.</summary>
    public static readonly Formula ClearMoment = new()
    {
        Id = "clear-sky",
        Name = "Radiation under a cloudless sky at a moment",
        Subject = Subject,
        Equation = "GHI = 1098 cos z exp(−0.059 / cos z)",
        Inputs = [Zenith],
        Output = new("clear-sky", "Global radiation on the level", Units.WattPerSquareMetre),
        Sources = [new("Haurwitz 1945, Insolation in relation to cloudiness and cloud density, Journal of Meteorology 2, 154-166")],
        Confidence = Confidence.PublishedExample,
        Error = "5 to 10 % with haze and height, neither of which it knows",
        Compute = x => ClearSky.Haurwitz(x[0]),
    };

    /// <summary>Diffuse share of an hour.</summary>
    public static readonly Formula DiffuseOfHour = new()
    {
        Id = "diffuse-share",
        Name = "Share of an hour's radiation that comes from the whole sky",
        Subject = Subject,
        Equation = "k_d = 1 − 0.09 k (k ≤ 0.22); 0.9511 − 0.1604 k + 4.388 k² − 16.638 k³ + 12.336 k⁴ (k ≤ 0.80); 0.165",
        Inputs = [new("clearness", "Global radiation over that above the air", Units.One, 0, DiffuseShare.MaxClearness)],
        Output = new("diffuse-share", "Diffuse share", Units.Percent),
        Sources =
        [
            new("Erbs, Klein and Duffie 1982, Estimation of the diffuse radiation fraction for hourly, daily and monthly-average global radiation, Solar Energy 28, 293-302"),
        ],
        Confidence = Confidence.PublishedExample,
        Error = "models differ by 30 % at one hour",
        NotFor = "whole days or months",
        Compute = x => 100 * DiffuseShare.Erbs(x[0]),
    };

    /// <summary>An hour's share of a day's radiation.</summary>
    public static readonly Formula ShareOfHour = new()
    {
        Id = "hour-of-day-share",
        Name = "Share of a day's radiation that falls in an hour",
        Subject = Subject,
        Equation = "r = (π/24)(a + b cos ω)(cos ω − cos ω_s)/(sin ω_s − ω_s cos ω_s)",
        Inputs =
        [
            new("sunset", "Hour angle of sunset", Degree, HourOfDay.MinSunset, 180),
            new("hour", "Hour angle of the middle of the hour", Degree, -180, 180),
        ],
        Output = new("share", "Share of the day", Units.Percent),
        Sources =
        [
            Source.FromMemory("Collares-Pereira and Rabl 1979, The average distribution of solar radiation, Solar Energy 22, 155-164"),
        ],
        Confidence = Confidence.Textbook,
        Error = "the shares of a day add up to 1 within 1.5 %",
        NotFor = "days of drifting cloud taken hour by hour",
        Compute = x => 100 * HourOfDay.CollaresPereiraRabl(x[0], x[1]),
    };

    /// <summary>Refraction.</summary>
    public static readonly Formula RefractionOfAir = new()
    {
        Id = "refraction",
        Name = "How much higher the sun is seen than it stands",
        Subject = Subject,
        Equation = "R = (P/101)(283/(273 + T)) 1.02 / (60 tan(h + 10.3/(h + 5.11)))",
        Inputs =
        [
            new("elevation", "True elevation of the sun", Degree, Refraction.MinElevation, 90),
            new("pressure", "Air pressure", Units.Kilopascal, Refraction.MinPressure, Refraction.MaxPressure, 101.325, "standard pressure at sea level"),
            new("temperature", "Air temperature", Units.Celsius, Refraction.MinTemperature, Refraction.MaxTemperature, 10, "the temperature of the rule's 283 K"),
        ],
        Output = new("refraction", "Refraction", Degree),
        Sources = [RedaAndreas, Source.FromMemory("Meeus 1998, Astronomical Algorithms, 2nd edition, equation 16.4, after Sæmundsson 1986")],
        Confidence = Confidence.PublishedExample,
        Error = "0.001° above 15°; near the horizon the weather decides",
        Compute = x => Refraction.Saemundsson(x[0], x[1], x[2]),
    };

    /// <summary>Incidence.</summary>
    public static readonly Formula IncidenceOnPlane = new()
    {
        Id = "incidence",
        Name = "Angle of the sun to the line square to a plane",
        Subject = Subject,
        Equation = "cos θ = cos z cos β + sin z sin β cos(γ_s − γ)",
        Inputs =
        [
            Zenith,
            new("azimuth", "Direction of the sun, clockwise from north", Degree, 0, 360),
            Tilt,
            new("facing", "Direction that the plane faces, clockwise from north", Degree, 0, 360),
        ],
        Output = new("incidence", "Angle of incidence", Degree),
        Sources = [RedaAndreas],
        Confidence = Confidence.PublishedExample,
        Error = "exact",
        Compute = x => TiltedPlane.Incidence(x[0], x[1], x[2], x[3]),
    };

    /// <summary>Radiation on a tilted plane.</summary>
    public static readonly Formula RadiationOnPlane = new()
    {
        Id = "tilted-radiation",
        Name = "Radiation on a window or a roof",
        Subject = Subject,
        Equation = "I = I_b max(0, cos θ) + I_d (1 + cos β)/2 + I ρ (1 − cos β)/2",
        Inputs =
        [
            new("direct", "Direct radiation square to the sun", Units.WattPerSquareMetre, 0, TiltedPlane.MaxRadiation),
            new("diffuse", "Diffuse radiation on the level", Units.WattPerSquareMetre, 0, TiltedPlane.MaxRadiation),
            new("global", "Global radiation on the level", Units.WattPerSquareMetre, 0, TiltedPlane.MaxRadiation),
            new("incidence", "Angle of incidence", Degree, 0, 180),
            Tilt,
            new("albedo", "Share that the ground throws back", Units.Percent, 0, 100, 20, "common practice, no source: grass and soil 15 to 25 %, fresh snow 80 %"),
        ],
        Output = new("radiation", "Radiation on the plane", Units.WattPerSquareMetre),
        Sources = [Source.FromMemory("Liu and Jordan 1963, The long-term average performance of flat-plate solar-energy collectors, Solar Energy 7, 53-74")],
        Confidence = Confidence.PublishedExample,
        Error = "up to 10 % too little towards the sun",
        NotFor = "a plane shaded by a house or a hedge",
        Compute = x => TiltedPlane.Isotropic(x[0], x[1], x[2], x[3], x[4], x[5]),
    };

    /// <summary>Photons of the sun.</summary>
    public static readonly Formula PhotonsOfSun = new()
    {
        Id = "photon-flux-of-sun",
        Name = "Light of the sun at a moment",
        Subject = Subject,
        Equation = "PPFD = c I",
        Inputs =
        [
            new("radiation", "Global radiation", Units.WattPerSquareMetre, 0, TiltedPlane.MaxRadiation),
            new("photons", "Photons in it", Units.MolePerMegajoule, Light.DailyLight.MinPhotons, Light.DailyLight.MaxPhotons, Light.DailyLight.UsualPhotons,
                "share of 0.45 of 400 to 700 nm (Akitsu et al.) × 4.57 µmol/J (Thimijan and Heins 1983)"),
        ],
        Output = new("photon-flux", "Photon flux density", Units.MicromolePerSquareMetreSecond),
        Sources = [new("R package bigleaf, Rg.to.PPFD: 500 W/m², 1150 µmol/m²/s"), .. Light.LightFormulas.Daylight.Sources.Take(2)],
        Confidence = Confidence.PublishedExample,
        Error = "10 %: published factors run from 1.94 to 2.3 mol/MJ",
        Compute = x => Sunlight.PhotonFluxDensity(x[0], x[1]),
    };

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Formula> All { get; } =
    [
        SolarDeclination, DayLengthOfDay, DayLengthSeen, RadiationAboveTheAir, ClearDay, ClearMoment, DiffuseOfHour, ShareOfHour, RefractionOfAir,
        IncidenceOnPlane, RadiationOnPlane, PhotonsOfSun,
    ];
}
