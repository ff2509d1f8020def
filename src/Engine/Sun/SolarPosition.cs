namespace Runnel.Engine.Sun;

/// <summary>Where the sun stands.</summary>
/// <param name="Declination">Degrees north of the equator.</param>
/// <param name="RightAscension">Degrees.</param>
/// <param name="EquationOfTime">Sundial ahead of the clock, minutes.</param>
/// <param name="Distance">From the earth, astronomical units.</param>
/// <param name="HourAngle">Degrees past the meridian; negative in the morning.</param>
/// <param name="Azimuth">Degrees clockwise from north.</param>
/// <param name="TrueElevation">Degrees above the horizon, without the air's refraction.</param>
/// <param name="Elevation">Degrees above the horizon, as it is seen.</param>
public readonly record struct SunPlace(
    double Declination, double RightAscension, double EquationOfTime, double Distance, double HourAngle, double Azimuth, double TrueElevation, double Elevation)
{
    /// <summary>Degrees from straight above, as it is seen.</summary>
    public double Zenith => 90 - Elevation;
}

/// <summary>Where the sun stands, seen from a place at a moment.</summary>
public static class SolarPosition
{
    /// <summary>Sun of a moment.</summary>
    /// <param name="julianDay">Julian day, universal time, 1900 to 2099: see <see cref="JulianDay"/>.</param>
    /// <param name="latitude">Degrees north, from −90 to 90.</param>
    /// <param name="longitude">Degrees east, from −180 to 180.</param>
    /// <param name="pressure">Air pressure, kPa, from 40 to 110.</param>
    /// <param name="temperature">Air temperature, °C, from −60 to 60.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>Source: Meeus 1998, Astronomical Algorithms, 2nd edition, chapter 25 (low accuracy), with 12.4 for sidereal time, 13.5 and
    /// 13.6 for the horizon and the parallax of 8.794" (coefficients from memory, proven against the worked example of Reda and Andreas).
    /// Claimed error: 0.01°; found: under 0.002° at that example. The difference between universal and terrestrial time, a minute or so, is
    /// left out: 0.001°.</remarks>
    public static SunPlace Meeus(double julianDay, double latitude, double longitude, double pressure = 101.325, double temperature = 12)
    {
        var sky = SunInSky.At(Range.Within(julianDay, JulianDay.Min, JulianDay.Max));
        Range.Within(latitude, -90, 90);
        Range.Within(longitude, -180, 180);
        Range.Within(pressure, Refraction.MinPressure, Refraction.MaxPressure);
        Range.Within(temperature, Refraction.MinTemperature, Refraction.MaxTemperature);

        var hourAngle = Angle.HalfTurn(sky.SiderealTime + longitude - sky.RightAscension);
        var (sinLatitude, cosLatitude) = Math.SinCos(latitude * Angle.Degree);
        var (sinDeclination, cosDeclination) = Math.SinCos(sky.Declination * Angle.Degree);
        var (sinHour, cosHour) = Math.SinCos(hourAngle * Angle.Degree);
        var sinElevation = Math.Clamp(sinLatitude * sinDeclination + cosLatitude * cosDeclination * cosHour, -1, 1);
        var elevation = Math.Asin(sinElevation) / Angle.Degree;
        elevation -= Parallax / sky.Distance * Angle.Cos(elevation);
        var azimuth = Math.Atan2(sinHour * cosDeclination, cosHour * cosDeclination * sinLatitude - sinDeclination * cosLatitude) / Angle.Degree + 180;
        var seen = elevation >= Refraction.Horizon ? elevation + Refraction.Saemundsson(elevation, pressure, temperature) : elevation;
        return new(sky.Declination, sky.RightAscension, sky.EquationOfTime, sky.Distance, hourAngle, Angle.Turn(azimuth), elevation, seen);
    }

    private const double Parallax = 8.794 / 3600;
}

/// <summary>The sun among the stars, the same for every place.</summary>
internal readonly record struct SunInSky(double Declination, double RightAscension, double SiderealTime, double EquationOfTime, double Distance)
{
    public static SunInSky At(double julianDay)
    {
        var days = julianDay - JulianDay.J2000;
        var t = days / 36525;
        var meanLongitude = 280.46646 + t * (36000.76983 + t * 0.0003032);
        var meanAnomaly = 357.52911 + t * (35999.05029 - t * 0.0001537);
        var eccentricity = 0.016708634 - t * (0.000042037 + t * 0.0000001267);
        var centre = (1.914602 - t * (0.004817 + t * 0.000014)) * Angle.Sin(meanAnomaly)
            + (0.019993 - t * 0.000101) * Angle.Sin(2 * meanAnomaly) + 0.000289 * Angle.Sin(3 * meanAnomaly);
        var node = 125.04 - 1934.136 * t;
        var nutation = -0.00478 * Angle.Sin(node);
        var longitude = meanLongitude + centre - Aberration + nutation;
        var obliquity = 23 + (26 + (21.448 - t * (46.8150 + t * (0.00059 - t * 0.001813))) / 60) / 60 + 0.00256 * Angle.Cos(node);
        var distance = 1.000001018 * (1 - eccentricity * eccentricity) / (1 + eccentricity * Angle.Cos(meanAnomaly + centre));
        var rightAscension = Angle.Turn(Math.Atan2(Angle.Cos(obliquity) * Angle.Sin(longitude), Angle.Cos(longitude)) / Angle.Degree);
        var declination = Math.Asin(Angle.Sin(obliquity) * Angle.Sin(longitude)) / Angle.Degree;
        var ofStars = nutation * Angle.Cos(obliquity);
        var sidereal = Angle.Turn(280.46061837 + 360.98564736629 * days + t * t * (0.000387933 - t / 38710000) + ofStars);
        var equation = 4 * Angle.HalfTurn(meanLongitude - 0.0057183 - rightAscension + ofStars);
        return new(declination, rightAscension, sidereal, equation, distance);
    }

    private const double Aberration = 0.00569;
}
