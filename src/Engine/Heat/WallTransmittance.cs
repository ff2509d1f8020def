namespace Runnel.Engine.Heat;

/// <summary>Heat through a tank wall with insulation.</summary>
public static class WallTransmittance
{
    internal const double MaxThickness = 1000;
    internal const double MinConductivity = 0.01;
    internal const double MaxConductivity = 500;
    internal const double MinFilm = 1;
    internal const double MaxFilm = 10000;

    /// <summary>Film between water and wall, W/m²K: so good that it hardly counts. A round number of textbooks, from memory.</summary>
    public const double UsualInnerFilm = 500;

    /// <summary>Film between an upright wall and still room air, radiation included, W/m²K: ASHRAE's resistance of 0.68 ft²·h·°F/Btu.</summary>
    public const double UsualOuterFilm = 8.3;

    /// <summary>Thermal transmittance (U) of a wall of two layers between water and air.</summary>
    /// <param name="wall">Thickness of the wall, mm, from 0 to 1000.</param>
    /// <param name="wallConductivity">Conductivity of the wall, W/mK, from 0.01 to 500.</param>
    /// <param name="insulation">Thickness of the insulation, mm, from 0 to 1000.</param>
    /// <param name="insulationConductivity">Conductivity of the insulation, W/mK, from 0.01 to 500.</param>
    /// <param name="innerFilm">Coefficient of the film on the inside, W/m²K, from 1 to 10 000.</param>
    /// <param name="outerFilm">Coefficient of the film on the outside, W/m²K, from 1 to 10 000.</param>
    /// <returns>Transmittance, W/m²K.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>1/U = 1/h_i + d_1/k_1 + d_2/k_2 + 1/h_o. Source: ISO 6946, layers in series. Not for: gaps behind loose insulation, wet
    /// insulation, frames that bridge it, ground under a tank.</remarks>
    public static double Iso6946(
        double wall, double wallConductivity, double insulation, double insulationConductivity,
        double innerFilm = UsualInnerFilm, double outerFilm = UsualOuterFilm)
    {
        Range.Within(wall, 0, MaxThickness);
        Range.Within(wallConductivity, MinConductivity, MaxConductivity);
        Range.Within(insulation, 0, MaxThickness);
        Range.Within(insulationConductivity, MinConductivity, MaxConductivity);
        Range.Within(innerFilm, MinFilm, MaxFilm);
        Range.Within(outerFilm, MinFilm, MaxFilm);
        return 1 / (1 / innerFilm + wall / 1000 / wallConductivity + insulation / 1000 / insulationConductivity + 1 / outerFilm);
    }
}
