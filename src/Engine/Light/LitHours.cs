namespace Runnel.Engine.Light;

/// <summary>How long lamps must burn for a wished daily light.</summary>
/// <param name="Hours">Hours lit in each day that would bring it, h/d; may be more than a day has.</param>
/// <param name="Suffices">True if that is no more than the longest day.</param>
/// <param name="DensityNeeded">Photon flux density that would bring it within the longest day, µmol/m²/s.</param>
public sealed record LitHours(double Hours, bool Suffices, double DensityNeeded)
{
    internal const double MinDensity = 1;

    /// <summary>Hours for a wished daily light.</summary>
    /// <param name="wished">Daily light wished for, mol/m²/d, from 0 to 120.</param>
    /// <param name="sun">Daily light that the sun brings, mol/m²/d, from 0 to 120.</param>
    /// <param name="density">Photon flux density of the lamps, µmol/m²/s, from 1 to 100 000.</param>
    /// <returns>Hours, h/d: more than 24 says that the lamps are too weak.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>t = (DLI − DLI_sun) / (0.0036 PPFD), none if the sun suffices. Source: definition.</remarks>
    public static double For(double wished, double sun, double density) =>
        Math.Max(0, Range.Within(wished, 0, DailyLight.MaxDaily) - Range.Within(sun, 0, DailyLight.MaxDaily))
            / (0.0036 * Range.Within(density, MinDensity, DailyLight.MaxFluxDensity));

    /// <summary>Whether lamps suffice within a crop's longest day.</summary>
    /// <param name="wished">Daily light wished for, mol/m²/d, from 0 to 120.</param>
    /// <param name="sun">Daily light that the sun brings, mol/m²/d, from 0 to 120.</param>
    /// <param name="density">Photon flux density of the lamps, µmol/m²/s, from 1 to 100 000.</param>
    /// <param name="longestDay">Longest day that the crop bears, h/d, above 0 (1) to 24.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    public static LitHours Within(double wished, double sun, double density, double longestDay)
    {
        var hours = For(wished, sun, density);
        var needed = Math.Max(0, wished - sun) / (0.0036 * Range.Within(longestDay, 1, 24));
        return new(hours, hours <= longestDay * (1 + 1e-9), needed);
    }
}
