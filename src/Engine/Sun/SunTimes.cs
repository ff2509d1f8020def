namespace Runnel.Engine.Sun;

/// <summary>Sunrise, noon and sunset of a day, hours of the place's standard time after midnight of that day.</summary>
/// <param name="Rise">When the upper rim is seen to rise; null in polar day and night.</param>
/// <param name="Transit">When the sun crosses the meridian.</param>
/// <param name="Set">When the upper rim is seen to set; null in polar day and night.</param>
/// <param name="Day">Ordinary, polar day or polar night.</param>
public readonly record struct SunTimes(double? Rise, double Transit, double? Set, PolarDay Day)
{
    private const int Rounds = 6;
    private const double DegreesPerHour = 15;

    /// <summary>Hours between rise and set: 24 in polar day, 0 in polar night.</summary>
    public double Length => Day switch { PolarDay.AlwaysUp => 24, PolarDay.AlwaysDown => 0, _ => Set!.Value - Rise!.Value };

    /// <summary>The times of a day.</summary>
    /// <param name="year">From 1900 to 2098.</param>
    /// <param name="month">From 1 to 12.</param>
    /// <param name="day">From 1 to 31.</param>
    /// <param name="latitude">Degrees north, from −90 to 90.</param>
    /// <param name="longitude">Degrees east, from −180 to 180.</param>
    /// <param name="timeZone">Hours that standard time is ahead of universal time, from −12 to 14.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>The sun's centre stands at −0.8333° (rim and refraction). Each time is found by going back to the sun of that very time, from the
    /// noon of the place, six times. Source: the spherical triangle, cos H = (sin h − sin φ sin δ)/(cos φ cos δ), with the sun of
    /// <see cref="SolarPosition"/>. Error: within 15 s of published times at middle latitudes; minutes in the real air, and more where the sun
    /// hardly rises.</remarks>
    public static SunTimes Of(int year, int month, int day, double latitude, double longitude, double timeZone)
    {
        Range.Within(latitude, -90, 90);
        Range.Within(longitude, -180, 180);
        Range.Within(timeZone, -12, 14);
        Range.Within(year, 1900, 2098);
        var midnight = JulianDay.Of(year, month, day, -timeZone);
        // Mean noon of the day that the clock of the zone calls by this date.
        var noon = 12 - longitude / DegreesPerHour + timeZone;
        noon -= 24 * Math.Floor(noon / 24);
        var transit = noon;
        for (var i = 0; i < Rounds; i++)
        {
            transit = noon - SunInSky.At(midnight + transit / 24).EquationOfTime / 60;
        }
        var rise = Event(midnight, noon, transit, latitude, -1, out var way);
        var set = Event(midnight, noon, transit, latitude, 1, out _);
        return rise is null || set is null ? new(null, transit, null, way) : new(rise, transit, set, PolarDay.RisesAndSets);
    }

    private static double? Event(double midnight, double noon, double transit, double latitude, int side, out PolarDay way)
    {
        way = PolarDay.RisesAndSets;
        var time = transit;
        for (var i = 0; i < Rounds; i++)
        {
            var sun = SunInSky.At(midnight + time / 24);
            var cos = (Angle.Sin(Refraction.Horizon) - Angle.Sin(latitude) * Angle.Sin(sun.Declination)) / (Angle.Cos(latitude) * Angle.Cos(sun.Declination));
            if (!(Math.Abs(cos) <= 1))
            {
                way = cos > 1 ? PolarDay.AlwaysDown : PolarDay.AlwaysUp;
                return null;
            }
            time = noon - sun.EquationOfTime / 60 + side * Math.Acos(cos) / Angle.Degree / DegreesPerHour;
        }
        return time;
    }
}

/// <summary>Whether the sun rises and sets on a day.</summary>
public enum PolarDay
{
    RisesAndSets,
    AlwaysUp,
    AlwaysDown,
}
