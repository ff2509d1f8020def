namespace Runnel.Engine.Light;

/// <summary>Daylight indoors behind an upright window, as a share of the daylight on open ground.</summary>
/// <remarks>Both rules take the sky for evenly bright and leave the sun's beam out: a window toward the sun gets more, in winter much more, one
/// away from it less. Honest error: half either way, for a month.</remarks>
public static class WindowLight
{
    internal const double MinArea = 0.01;
    internal const double MaxArea = 50;
    internal const double MinRoom = 5;
    internal const double MaxRoom = 10000;
    internal const double MaxReflectance = 95;
    internal const double MinDistance = 0.01;
    internal const double MaxDistance = 30;
    internal const double MaxSide = 30;
    internal const double MaxObstruction = 80;

    /// <summary>Mean daylight factor of a room.</summary>
    /// <param name="transmission">Share that the glass lets pass, %, from 0 to 100.</param>
    /// <param name="area">Area of glass, m², from 0.01 to 50.</param>
    /// <param name="sky">Angle of sky seen from the middle of the window, °, from 0 to 90: 90 with nothing opposite, less by what stands there.</param>
    /// <param name="room">Area of all surfaces of the room, floor and ceiling and window included, m², from 5 to 10 000.</param>
    /// <param name="reflectance">Their mean reflectance, %, from 0 to 95: about 50 in a light room.</param>
    /// <returns>Share of the outdoor light, %.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>DF = T A_w θ / (A (1 − R²)). Source: from memory, CIBSE and the Building Research Establishment (Lynes; Crisp and Littlefair
    /// 1984). Not for: one place in the room: see <see cref="SkyShare"/>; the sun's beam.</remarks>
    public static double MeanFactor(double transmission, double area, double sky, double room, double reflectance)
    {
        var r = Range.Within(reflectance, 0, MaxReflectance) / 100;
        return Range.Within(transmission, 0, 100) / 100 * Range.Within(area, MinArea, MaxArea) * Range.Within(sky, 0, 90)
            / (Range.Within(room, MinRoom, MaxRoom) * (1 - r * r));
    }

    /// <summary>Light straight from the sky on a level bed opposite the middle of a window.</summary>
    /// <param name="transmission">Share that the glass lets pass, %, from 0 to 100.</param>
    /// <param name="width">Width of the glass, m, from 0.01 to 30.</param>
    /// <param name="sill">Height of its lower edge above the leaves, m, from 0 to 30: 0 if the leaves stand higher.</param>
    /// <param name="glass">Height of the glass above that edge, m, from 0.01 to 30.</param>
    /// <param name="distance">Distance of the leaves from the glass, m, from 0.01 to 30.</param>
    /// <param name="obstruction">How far up from the horizon houses and trees stand, °, from 0 to 80.</param>
    /// <returns>Share of the outdoor light, %.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>Configuration factor of an element square to a rectangle, (1/2π)[atan(b/c) − c/√(a²+c²) atan(b/√(a²+c²))], upper edge
    /// less lower edge, both halves (from memory, Howell's catalogue B-5). What walls and ground throw in adds to it. Not for: the
    /// sun's beam; an overcast sky, which is three times darker at the horizon than overhead.</remarks>
    public static double SkyShare(double transmission, double width, double sill, double glass, double distance, double obstruction = 0)
    {
        var c = Range.Within(distance, MinDistance, MaxDistance);
        var b = Range.Within(width, MinArea, MaxSide) / 2;
        var top = Range.Within(sill, 0, MaxSide) + Range.Within(glass, MinArea, MaxSide);
        var foot = Math.Clamp(c * Math.Tan(Range.Within(obstruction, 0, MaxObstruction) * Math.PI / 180), sill, top);
        return Range.Within(transmission, 0, 100) * 2 * (Upright(top, b, c) - Upright(foot, b, c));
    }

    private static double Upright(double a, double b, double c)
    {
        var slant = Math.Sqrt(a * a + c * c);
        return (Math.Atan(b / c) - c / slant * Math.Atan(b / slant)) / (2 * Math.PI);
    }
}
