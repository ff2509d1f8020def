using Runnel.Engine.Light;

namespace Runnel.Engine.Sun;

/// <summary>Photons in the sun's radiation.</summary>
public static class Sunlight
{
    /// <summary>Photon flux density of global radiation.</summary>
    /// <param name="radiation">W/m², from 0 to 1500.</param>
    /// <param name="photons">Photons of 400 to 700 nm in it, mol/MJ (which is µmol/J), from 1.5 to 2.6.</param>
    /// <returns>µmol/m²/s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>PPFD = c I. The same factor as <see cref="DailyLight.FromRadiation"/>, whose sources and 10 % error hold here too.</remarks>
    public static double PhotonFluxDensity(double radiation, double photons = DailyLight.UsualPhotons) =>
        Range.Within(radiation, 0, TiltedPlane.MaxRadiation) * Range.Within(photons, DailyLight.MinPhotons, DailyLight.MaxPhotons);
}
