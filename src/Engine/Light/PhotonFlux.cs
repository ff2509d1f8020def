namespace Runnel.Engine.Light;

/// <summary>Photons of 400 to 700 nm that a lamp gives off, in every direction together.</summary>
public static class PhotonFlux
{
    internal const double MaxLumens = 1e7;
    internal const double MinLuxPerPhoton = 5;
    internal const double MaxLuxPerPhoton = 130;
    internal const double MaxPower = 1e6;
    internal const double MaxEfficacy = 5;

    /// <summary>Photon flux from lumens.</summary>
    /// <param name="lumens">Light of the lamp, lm, from 0 to 10 000 000.</param>
    /// <param name="luxPerPhoton">Lux for each µmol/m²/s of its spectrum, from 5 to 130: see <see cref="LuxPerPhoton"/>.</param>
    /// <returns>Photon flux, µmol/s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>PPF = Φ / K. Source: Thimijan and Heins 1983, HortScience 18(6), 818-822. Error: 5 % with a factor of the right kind of
    /// lamp. Not for: red and blue lamps, whose lumens say nothing; coloured tubes; bulbs sold by the watts that they stand for.</remarks>
    public static double ThimijanHeins(double lumens, double luxPerPhoton) =>
        Range.Within(lumens, 0, MaxLumens) / Range.Within(luxPerPhoton, MinLuxPerPhoton, MaxLuxPerPhoton);

    /// <summary>Photon flux from electric power.</summary>
    /// <param name="power">Electric power drawn, W, from 0 to 1 000 000.</param>
    /// <param name="efficacy">Photons for each joule, µmol/J, from 0 to 5: see <see cref="TypicalEfficacy"/>.</param>
    /// <returns>Photon flux, µmol/s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>PPF = P η. Source: definition of photon efficacy. Not for: watts that a bulb "stands for".</remarks>
    public static double FromPower(double power, double efficacy) =>
        Range.Within(power, 0, MaxPower) * Range.Within(efficacy, 0, MaxEfficacy);
}
