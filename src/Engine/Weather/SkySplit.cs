using Runnel.Engine.Sun;

namespace Runnel.Engine.Weather;

/// <summary>An hour's global radiation parted into what comes from the sun and what comes from the whole sky.</summary>
public static class SkySplit
{
    private const double LowestSine = 0.02;

    /// <summary>The parts of an hour.</summary>
    /// <param name="global">Global radiation on the level, mean over the hour, W/m², 0 or more.</param>
    /// <param name="sine">Mean sine of the sun's elevation over the hour, night counting as nothing, from 0 to 1.</param>
    /// <param name="inverseDistance">Square of the mean distance of the sun over that of the day: <see cref="DayLength.InverseDistance"/>.</param>
    /// <returns>Direct radiation square to the sun and diffuse on the level, W/m²; direct × sine + diffuse is the global radiation.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>By <see cref="DiffuseShare.Erbs"/>. An hour in which the sun stands under 1° is all diffuse; so is what exceeds the radiation above
    /// the air.</remarks>
    public static (double Direct, double Diffuse) Hour(double global, double sine, double inverseDistance)
    {
        Range.Within(global, 0, 2000);
        Range.Within(sine, 0, 1);
        var above = ExtraterrestrialRadiation.SolarConstant * Range.Within(inverseDistance, 0.9, 1.1) * sine;
        if (sine < LowestSine || global > above)
        {
            return (0, global);
        }
        var diffuse = global * DiffuseShare.Erbs(global / above);
        return ((global - diffuse) / sine, diffuse);
    }
}
