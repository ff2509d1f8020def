namespace Runnel.Engine.Sun;

/// <summary>Radiation on a plane that is not level: a window, a roof.</summary>
public static class TiltedPlane
{
    internal const double MaxRadiation = 1500;

    /// <summary>Angle between the sun and the line square to a plane.</summary>
    /// <param name="zenith">Degrees of the sun from straight above, from 0 to 180.</param>
    /// <param name="azimuth">Degrees of the sun clockwise from north, from 0 to 360.</param>
    /// <param name="tilt">Degrees of the plane from level, from 0 to 180.</param>
    /// <param name="facing">Direction that the plane faces, degrees clockwise from north, from 0 to 360.</param>
    /// <returns>Degrees; above 90 the sun is behind the plane.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>cos θ = cos z cos β + sin z sin β cos(γ_s − γ). Source: geometry; Reda and Andreas 2003, equation 47.</remarks>
    public static double Incidence(double zenith, double azimuth, double tilt, double facing)
    {
        Range.Within(zenith, 0, 180);
        Range.Within(tilt, 0, 180);
        var between = Range.Within(azimuth, 0, 360) - Range.Within(facing, 0, 360);
        var cos = Angle.Cos(zenith) * Angle.Cos(tilt) + Angle.Sin(zenith) * Angle.Sin(tilt) * Angle.Cos(between);
        return Math.Acos(Math.Clamp(cos, -1, 1)) / Angle.Degree;
    }

    /// <summary>Radiation on a tilted plane from the sun, an even sky and the ground before it.</summary>
    /// <param name="direct">Direct radiation square to the sun, W/m², from 0 to 1500.</param>
    /// <param name="diffuse">Diffuse radiation on the level, W/m², from 0 to 1500.</param>
    /// <param name="global">Global radiation on the level, W/m², from 0 to 1500.</param>
    /// <param name="incidence">Angle of the sun to the line square to the plane, degrees, from 0 to 180.</param>
    /// <param name="tilt">Degrees of the plane from level, from 0 to 180.</param>
    /// <param name="albedo">Share that the ground throws back, %, from 0 to 100.</param>
    /// <returns>W/m².</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>I = I_b max(0, cos θ) + I_d (1 + cos β)/2 + I ρ (1 − cos β)/2. Source: Liu and Jordan 1963, The long-term average performance of
    /// flat-plate solar-energy collectors, Solar Energy 7, 53-74 (title from memory). Error: an even sky is too dark around the sun; towards
    /// the sun up to 10 % too little. Not for: a plane shaded by a house or a hedge.</remarks>
    public static double Isotropic(double direct, double diffuse, double global, double incidence, double tilt, double albedo)
    {
        var cosTilt = Angle.Cos(Range.Within(tilt, 0, 180));
        return Range.Within(direct, 0, MaxRadiation) * Math.Max(0, Angle.Cos(Range.Within(incidence, 0, 180)))
            + Range.Within(diffuse, 0, MaxRadiation) * (1 + cosTilt) / 2
            + Range.Within(global, 0, MaxRadiation) * Range.Within(albedo, 0, 100) / 100 * (1 - cosTilt) / 2;
    }
}
