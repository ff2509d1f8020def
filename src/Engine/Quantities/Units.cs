namespace Runnel.Engine.Quantities;

/// <summary>The units that Runnel computes and prints in. Text is read by Files, which knows many more spellings.</summary>
/// <remarks>Factors: exact by definition (SI brochure; NIST SP 811 for the yard, pound, gallon and Btu).</remarks>
public static class Units
{
    private const double Minute = 60;
    private const double Hour = 3600;
    private const double Day = 86400;

    /// <summary>Days in the mean month of a 365-day year.</summary>
    public const double MeanMonthDays = 365.0 / 12;

    private static readonly Dimension LengthD = new(Length: 1);
    private static readonly Dimension AreaD = new(Length: 2);
    private static readonly Dimension VolumeD = new(Length: 3);
    private static readonly Dimension MassD = new(Mass: 1);
    private static readonly Dimension TimeD = new(Time: 1);
    private static readonly Dimension EnergyD = new(Mass: 1, Length: 2, Time: -2);
    private static readonly Dimension PowerD = new(Mass: 1, Length: 2, Time: -3);
    private static readonly Dimension PointD = new(Temperature: 1, Basis: Dimension.PointBasis);

    /// <summary>Dimension of an amount of money.</summary>
    public static readonly Dimension MoneyDimension = new(Money: 1);

    /// <summary>A pure number.</summary>
    public static readonly Unit One = new("", Dimension.None, 1);

    /// <summary>A share, printed in percent.</summary>
    public static readonly Unit Percent = new("%", Dimension.None, 0.01);

    /// <summary>Salt in water by mass.</summary>
    public static readonly Unit GramPerKilogram = new("g/kg", Dimension.None, 0.001);

    /// <summary>One mass for each of another, such as oxygen for feed.</summary>
    public static readonly Unit KilogramPerKilogram = new("kg/kg", Dimension.None, 1);

    /// <summary>A number on the pH scale.</summary>
    public static readonly Unit PH = new("pH", Dimension.None, 1);

    public static readonly Unit Metre = new("m", LengthD, 1);
    public static readonly Unit Centimetre = new("cm", LengthD, 0.01);
    public static readonly Unit Millimetre = new("mm", LengthD, 0.001);
    public static readonly Unit Foot = new("ft", LengthD, 0.3048);
    public static readonly Unit Inch = new("in", LengthD, 0.0254);

    public static readonly Unit SquareMetre = new("m²", AreaD, 1);
    public static readonly Unit SquareFoot = new("ft²", AreaD, 0.3048 * 0.3048);

    public static readonly Unit CubicMetre = new("m³", VolumeD, 1);
    public static readonly Unit Litre = new("L", VolumeD, 0.001);
    public static readonly Unit UsGallon = new("gal", VolumeD, 0.003785411784);
    public static readonly Unit ImperialGallon = new("imp gal", VolumeD, 0.00454609);
    public static readonly Unit CubicFoot = new("ft³", VolumeD, 0.3048 * 0.3048 * 0.3048);
    public static readonly Unit CubicYard = new("yd³", VolumeD, 0.9144 * 0.9144 * 0.9144);

    public static readonly Unit Kilogram = new("kg", MassD, 1);
    public static readonly Unit Gram = new("g", MassD, 0.001);
    public static readonly Unit Milligram = new("mg", MassD, 1e-6);
    public static readonly Unit Pound = new("lb", MassD, 0.45359237);
    public static readonly Unit Ounce = new("oz", MassD, 0.45359237 / 16);

    public static readonly Unit Second = new("s", TimeD, 1);
    public static readonly Unit MinuteUnit = new("min", TimeD, Minute);
    public static readonly Unit HourUnit = new("h", TimeD, Hour);
    public static readonly Unit DayUnit = new("d", TimeD, Day);
    public static readonly Unit Week = new("week", TimeD, 7 * Day);
    public static readonly Unit Month = new("month", TimeD, MeanMonthDays * Day);
    public static readonly Unit Year = new("year", TimeD, 365 * Day);

    /// <summary>Hours in which a thing runs in each day: a share of time, 24 h/d being always.</summary>
    public static readonly Unit HoursPerDay = new("h/d", Dimension.None, Hour / Day);

    public static readonly Unit Celsius = new("°C", PointD, 1);
    public static readonly Unit Fahrenheit = new("°F", PointD, 5.0 / 9, -160.0 / 9);
    public static readonly Unit Kelvin = new("K", new(Temperature: 1), 1);
    public static readonly Unit FahrenheitDifference = new("°F difference", new(Temperature: 1), 5.0 / 9);

    public static readonly Unit Watt = new("W", PowerD, 1);
    public static readonly Unit Kilowatt = new("kW", PowerD, 1000);
    public static readonly Unit WattHour = new("Wh", EnergyD, Hour);
    public static readonly Unit KilowattHour = new("kWh", EnergyD, 1000 * Hour);
    public static readonly Unit KilowattHourPerDay = new("kWh/d", PowerD, 1000 * Hour / Day);
    public static readonly Unit Joule = new("J", EnergyD, 1);
    public static readonly Unit Megajoule = new("MJ", EnergyD, 1e6);
    public static readonly Unit MegajoulePerSquareMetreDay = new("MJ/m²/d", new(Mass: 1, Time: -3), 1e6 / Day);
    public static readonly Unit WattPerSquareMetreKelvin = new("W/m²K", new(Mass: 1, Time: -3, Temperature: -1), 1);
    public static readonly Unit WattPerMetreKelvin = new("W/mK", new(Mass: 1, Length: 1, Time: -3, Temperature: -1), 1);
    public static readonly Unit WattPerKelvin = new("W/K", new(Mass: 1, Length: 2, Time: -3, Temperature: -1), 1);
    public static readonly Unit WattPerFahrenheit = new("W/°F", new(Mass: 1, Length: 2, Time: -3, Temperature: -1), 1.8);
    public static readonly Unit WattPerSquareFootFahrenheit = new("W/ft²/°F", new(Mass: 1, Time: -3, Temperature: -1), 1.8 / (0.3048 * 0.3048));
    public static readonly Unit SquareMetreKelvinPerWatt = new("m²K/W", new(Mass: -1, Time: 3, Temperature: 1), 1);
    public static readonly Unit WattPerSquareMetre = new("W/m²", new(Mass: 1, Time: -3), 1);
    public static readonly Unit KilowattHourPerSquareMetreDay = new("kWh/m²/d", new(Mass: 1, Time: -3), 3.6e6 / Day);
    public static readonly Unit KilojoulePerKilogram = new("kJ/kg", new(Length: 2, Time: -2), 1000);
    public static readonly Unit Ampere = new("A", new(Current: 1), 1);
    public static readonly Unit AmpereHour = new("Ah", new(Current: 1, Time: 1), Hour);
    public static readonly Unit Volt = new("V", new(Mass: 1, Length: 2, Time: -3, Current: -1), 1);

    public static readonly Unit CubicMetrePerSecond = new("m³/s", VolumeD / TimeD, 1);
    public static readonly Unit LitrePerHour = new("L/h", VolumeD / TimeD, 0.001 / Hour);
    public static readonly Unit LitrePerMinute = new("L/min", VolumeD / TimeD, 0.001 / Minute);
    public static readonly Unit LitrePerDay = new("L/d", VolumeD / TimeD, 0.001 / Day);
    public static readonly Unit GallonPerHour = new("gal/h", VolumeD / TimeD, 0.003785411784 / Hour);
    public static readonly Unit GallonPerMinute = new("gal/min", VolumeD / TimeD, 0.003785411784 / Minute);
    public static readonly Unit GallonPerDay = new("gal/d", VolumeD / TimeD, 0.003785411784 / Day);
    public static readonly Unit CubicFootPerMinute = new("ft³/min", VolumeD / TimeD, 0.3048 * 0.3048 * 0.3048 / Minute);
    public static readonly Unit SquareMillimetrePerSecond = new("mm²/s", AreaD / TimeD, 1e-6);
    public static readonly Unit PercentPerMetre = new("%/m", Dimension.None / LengthD, 0.01);
    public static readonly Unit PerHour = new("/h", Dimension.None / TimeD, 1 / Hour);

    public static readonly Unit GramPerDay = new("g/d", MassD / TimeD, 0.001 / Day);
    public static readonly Unit KilogramPerYear = new("kg/year", MassD / TimeD, 1 / (365 * Day));
    public static readonly Unit PoundPerYear = new("lb/year", MassD / TimeD, 0.45359237 / (365 * Day));
    public static readonly Unit GramPerHour = new("g/h", MassD / TimeD, 0.001 / Hour);
    public static readonly Unit OuncePerDay = new("oz/d", MassD / TimeD, 0.45359237 / 16 / Day);
    public static readonly Unit PoundPerDay = new("lb/d", MassD / TimeD, 0.45359237 / Day);
    public static readonly Unit PercentPerDay = new("%/d", Dimension.None / TimeD, 0.01 / Day);
    public static readonly Unit GramPerSquareMetreDay = new("g/m²/d", new(Mass: 1, Length: -2, Time: -1), 0.001 / Day);
    public static readonly Unit OuncePerSquareFootDay = new("oz/ft²/d", new(Mass: 1, Length: -2, Time: -1), 0.45359237 / 16 / (0.3048 * 0.3048) / Day);
    public static readonly Unit MilligramPerLitre = new("mg/L", new(Mass: 1, Length: -3), 0.001);
    public static readonly Unit KilogramPerCubicMetre = new("kg/m³", new(Mass: 1, Length: -3), 1);
    public static readonly Unit PoundPerGallon = new("lb/gal", new(Mass: 1, Length: -3), 0.45359237 / 0.003785411784);
    public static readonly Unit KilogramPerSquareMetre = new("kg/m²", new(Mass: 1, Length: -2), 1);
    public static readonly Unit PerDay = new("/d", Dimension.None / TimeD, 1 / Day);
    public static readonly Unit CubicMetrePerHour = new("m³/h", VolumeD / TimeD, 1 / Hour);
    public static readonly Unit LitrePerSquareMetreHour = new("L/m²/h", new(Length: 1, Time: -1), 0.001 / Hour);
    public static readonly Unit GramPerMole = new("g/mol", new(Mass: 1, Amount: -1), 0.001);
    public static readonly Unit SquareMetrePerKilogram = new("m²/kg", new(Mass: -1, Length: 2), 1);
    public static readonly Unit PoundPerSquareFoot = new("lb/ft²", new(Mass: 1, Length: -2), 0.45359237 / (0.3048 * 0.3048));
    public static readonly Unit MilligramPerKilogramHour = new("mg/kg/h", Dimension.None / TimeD, 1e-6 / Hour);
    public static readonly Unit SquareMetrePerCubicMetre = new("m²/m³", new(Length: -1), 1);
    public static readonly Unit SquareFootPerCubicFoot = new("ft²/ft³", new(Length: -1), 1 / 0.3048);
    public static readonly Unit PerSquareMetre = new("/m²", new(Length: -2), 1);
    public static readonly Unit PerSquareFoot = new("/ft²", new(Length: -2), 1 / (0.3048 * 0.3048));

    /// <summary>Basis of nitrogen compounds counted by their nitrogen.</summary>
    public const string AsNitrogen = "as N";

    /// <summary>Basis of ammonia counted by the whole molecule: 1.216 times the nitrogen in it.</summary>
    public const string AsAmmonia = "as NH3";

    /// <summary>Basis of alkalinity and bases counted as calcium carbonate.</summary>
    public const string AsCalciumCarbonate = "as CaCO3";

    public static readonly Unit GramNitrogenPerDay = new("g N/d", new(Mass: 1, Time: -1, Basis: AsNitrogen), 0.001 / Day);
    public static readonly Unit GramAmmoniaPerDay = new("g NH3/d", new(Mass: 1, Time: -1, Basis: AsAmmonia), 0.001 / Day);
    public static readonly Unit MilligramNitrogenPerLitre = new("mg N/L", new(Mass: 1, Length: -3, Basis: AsNitrogen), 0.001);
    public static readonly Unit GramNitrogenPerSquareMetreDay = new("g N/m²/d", new(Mass: 1, Length: -2, Time: -1, Basis: AsNitrogen), 0.001 / Day);
    public static readonly Unit GramAmmoniaPerSquareMetreDay = new("g NH3/m²/d", new(Mass: 1, Length: -2, Time: -1, Basis: AsAmmonia), 0.001 / Day);
    public static readonly Unit GramAmmoniaPerSquareFootDay = new("g NH3/ft²/d", new(Mass: 1, Length: -2, Time: -1, Basis: AsAmmonia), 0.001 / (0.3048 * 0.3048) / Day);
    public static readonly Unit MilligramCalciumCarbonatePerLitre = new("mg CaCO3/L", new(Mass: 1, Length: -3, Basis: AsCalciumCarbonate), 0.001);
    public static readonly Unit GramCalciumCarbonatePerDay = new("g CaCO3/d", new(Mass: 1, Time: -1, Basis: AsCalciumCarbonate), 0.001 / Day);
    public static readonly Unit GramCalciumCarbonate = new("g CaCO3", new(Mass: 1, Basis: AsCalciumCarbonate), 0.001);

    public static readonly Unit Pascal = new("Pa", new(Mass: 1, Length: -1, Time: -2), 1);
    public static readonly Unit Kilopascal = new("kPa", new(Mass: 1, Length: -1, Time: -2), 1000);
    public static readonly Unit PoundPerSquareInch = new("psi", new(Mass: 1, Length: -1, Time: -2), 6894.757293168);
    public static readonly Unit Megapascal = new("MPa", new(Mass: 1, Length: -1, Time: -2), 1e6);
    public static readonly Unit Newton = new("N", new(Mass: 1, Length: 1, Time: -2), 1);
    public static readonly Unit PoundForce = new("lbf", new(Mass: 1, Length: 1, Time: -2), 4.4482216152605);
    public static readonly Unit NewtonPerMetre = new("N/m", new(Mass: 1, Time: -2), 1);
    public static readonly Unit PoundForcePerFoot = new("lbf/ft", new(Mass: 1, Time: -2), 4.4482216152605 / 0.3048);
    public static readonly Unit SquareCentimetre = new("cm²", AreaD, 1e-4);
    public static readonly Unit SquareInch = new("in²", AreaD, 0.0254 * 0.0254);
    public static readonly Unit CubicCentimetre = new("cm³", VolumeD, 1e-6);
    public static readonly Unit CubicInch = new("in³", VolumeD, 0.0254 * 0.0254 * 0.0254);
    public static readonly Unit CentimetreToTheFourth = new("cm⁴", new(Length: 4), 1e-8);
    public static readonly Unit InchToTheFourth = new("in⁴", new(Length: 4), 0.0254 * 0.0254 * 0.0254 * 0.0254);
    public static readonly Unit MetrePerSecondSquared = new("m/s²", LengthD / (TimeD * TimeD), 1);
    public static readonly Unit SquareMetrePerDay = new("m²/d", AreaD / TimeD, 1 / Day);
    public static readonly Unit MetrePerSecond = new("m/s", LengthD / TimeD, 1);
    public static readonly Unit FootPerSecond = new("ft/s", LengthD / TimeD, 0.3048);
    public static readonly Unit KilogramPerSquareMetreHour = new("kg/m²/h", new(Mass: 1, Length: -2, Time: -1), 1 / Hour);

    public static readonly Unit Lumen = new("lm", new(Light: 1), 1);
    public static readonly Unit LumenPerWatt = new("lm/W", new Dimension(Light: 1) / PowerD, 1);
    public static readonly Unit MicromolePerSecond = new("µmol/s", new(Amount: 1, Time: -1), 1e-6);
    public static readonly Unit MicromolePerSquareMetreSecond = new("µmol/m²/s", new(Amount: 1, Length: -2, Time: -1), 1e-6);
    public static readonly Unit MicromolePerJoule = new("µmol/J", new Dimension(Amount: 1) / EnergyD, 1e-6);
    public static readonly Unit MolePerSquareMetreDay = new("mol/m²/d", new(Amount: 1, Length: -2, Time: -1), 1 / Day);
    public static readonly Unit LuxPerMicromole = new("lx per µmol/m²/s", new(Light: 1, Amount: -1, Time: 1), 1e6);
    public static readonly Unit LumenPerSquareMetre = new("lx", new(Light: 1, Length: -2), 1);
    public static readonly Unit MolePerMegajoule = new("mol/MJ", new Dimension(Amount: 1) / EnergyD, 1e-6);
    public static readonly Unit Candela = new("cd", new(Light: 1), 1);
    public static readonly Unit CandelaPerMetre = new("cd/m", new(Light: 1, Length: -1), 1);
    public static readonly Unit KilowattHourPerMole = new("kWh/mol", EnergyD / new Dimension(Amount: 1), 3.6e6);

    /// <summary>Degree of arc: kept as a plain number of degrees, as plans write latitudes.</summary>
    public static readonly Unit Degree = new("°", Dimension.None, 1);

    /// <summary>The US customary unit that stands for a metric one on screens and in print; the same unit where none does.</summary>
    public static Unit ForUs(Unit metric) => Us.TryGetValue(metric, out var us) ? us : Price(metric, Us);

    /// <summary>The metric unit that stands for a US customary one; the same unit where none does.</summary>
    public static Unit ForMetric(Unit us) => Metric.TryGetValue(us, out var metric) ? metric : Price(us, Metric);

    // A price of an amount goes with the amount: EUR/m beside metres, EUR/ft beside feet.
    private static Unit Price(Unit unit, Dictionary<Unit, Unit> other)
    {
        var slash = unit.Symbol.IndexOf('/', StringComparison.Ordinal);
        if (unit.Dimension.Money != 1 || slash < 0)
        {
            return unit;
        }
        var per = other.Keys.FirstOrDefault(u => u.Symbol == unit.Symbol[(slash + 1)..] && unit.Dimension == MoneyDimension / u.Dimension);
        return per is null ? unit : new($"{unit.Symbol[..slash]}/{other[per].Symbol}", unit.Dimension, unit.Factor * per.Factor / other[per].Factor);
    }

    private static readonly Dictionary<Unit, Unit> Metric = new()
    {
        [Foot] = Metre,
        [Inch] = Centimetre,
        [SquareFoot] = SquareMetre,
        [CubicFoot] = Litre,
        [CubicYard] = CubicMetre,
        [UsGallon] = Litre,
        [Pound] = Kilogram,
        [Ounce] = Gram,
        [Fahrenheit] = Celsius,
        [FahrenheitDifference] = Kelvin,
        [GallonPerHour] = LitrePerHour,
        [GallonPerMinute] = LitrePerMinute,
        [GallonPerDay] = LitrePerDay,
        [CubicFootPerMinute] = LitrePerMinute,
        [OuncePerDay] = GramPerDay,
        [PoundPerDay] = GramPerDay,
        [OuncePerSquareFootDay] = GramPerSquareMetreDay,
        [PoundPerSquareFoot] = KilogramPerSquareMetre,
        [FootPerSecond] = MetrePerSecond,
        [PoundPerSquareInch] = Kilopascal,
    };

    private static readonly Dictionary<Unit, Unit> Us = new()
    {
        [Metre] = Foot,
        [Centimetre] = Inch,
        [Millimetre] = Inch,
        [SquareMetre] = SquareFoot,
        [CubicMetre] = UsGallon,
        [Litre] = UsGallon,
        [Kilogram] = Pound,
        [Gram] = Ounce,
        [Celsius] = Fahrenheit,
        [Kelvin] = FahrenheitDifference,
        [LitrePerHour] = GallonPerHour,
        [LitrePerMinute] = GallonPerMinute,
        [LitrePerDay] = GallonPerDay,
        [GramPerDay] = OuncePerDay,
        [GramPerSquareMetreDay] = OuncePerSquareFootDay,
        [KilogramPerCubicMetre] = PoundPerGallon,
        [KilogramPerSquareMetre] = PoundPerSquareFoot,
        [PerSquareMetre] = PerSquareFoot,
        [MetrePerSecond] = FootPerSecond,
        [Kilopascal] = PoundPerSquareInch,
        [Megapascal] = PoundPerSquareInch,
        [Newton] = PoundForce,
        [NewtonPerMetre] = PoundForcePerFoot,
        [SquareCentimetre] = SquareInch,
        [CubicCentimetre] = CubicInch,
        [CentimetreToTheFourth] = InchToTheFourth,
        [WattPerKelvin] = WattPerFahrenheit,
        [WattPerSquareMetreKelvin] = WattPerSquareFootFahrenheit,
        [GramAmmoniaPerSquareMetreDay] = GramAmmoniaPerSquareFootDay,
        [SquareMetrePerCubicMetre] = SquareFootPerCubicFoot,
        [KilogramPerYear] = PoundPerYear,
    };
}
