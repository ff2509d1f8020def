namespace Runnel.Engine.Volumes;

/// <summary>Inside size of a drum that is known only by its volume.</summary>
/// <remarks>
/// Keeps the proportions of the steel drum of 55 US gal, 22.5 in wide and 33.5 in high inside, and holds to the brim the volume
/// that was given. A real drum is made a little larger than its name: those sizes hold 57.7 gal (218 L), so that sizes from a
/// nominal 55 gal (208 L) come out 1.6 % small and the volume 4.6 % small. Measure the drum when that matters.
/// </remarks>
public static class Drum
{
    /// <summary>Height of the 55 US gal drum for each diameter, inside.</summary>
    internal const double Slenderness = 33.5 / 22.5;

    /// <summary>Least volume that the rule takes, L.</summary>
    internal const double MinVolume = 10;

    /// <summary>Greatest volume that the rule takes, L.</summary>
    internal const double MaxVolume = 1000;

    /// <summary>Inside diameter of a drum.</summary>
    /// <param name="volume">What it holds to the brim, L, from 10 to 1000.</param>
    /// <returns>Diameter, m.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    /// <remarks>D = (4 V / (π 1.489))^(1/3), 1.489 = 33.5/22.5. Source: derived; proportions from a drum maker's size table.</remarks>
    public static double Diameter(double volume) =>
        Math.Cbrt(4 * Range.Within(volume, MinVolume, MaxVolume) / Volume.LitresPerCubicMetre / (Math.PI * Slenderness));

    /// <summary>Inside height of a drum; its length when it lies.</summary>
    /// <param name="volume">What it holds to the brim, L, from 10 to 1000.</param>
    /// <returns>Length, m.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    /// <remarks>H = 1.489 D. Source: as for <see cref="Diameter"/>.</remarks>
    public static double Length(double volume) => Slenderness * Diameter(volume);
}
