namespace Runnel.Engine.Light;

/// <summary>Light on a bed: at one moment, and summed over a day (the daily light integral).</summary>
public static class DailyLight
{
    internal const double MaxFlux = 1e7;
    internal const double MaxArea = 10000;
    internal const double MaxFluxDensity = 1e5;
    internal const double MaxRadiation = 46;
    internal const double MinPhotons = 1.5;
    internal const double MaxPhotons = 2.6;
    internal const double MaxDaily = 120;
    internal const double MinEfficacy = 0.05;
    internal const double MaxEfficacy = 5;

    /// <summary>Moles of photons in each megajoule of global radiation: 45 % of it is of 400 to 700 nm, at 4.57 µmol/J.</summary>
    public const double UsualPhotons = 2.06;

    private const double MolesPerHour = 0.0036;

    /// <summary>Mean photon flux density on a bed under lamps.</summary>
    /// <param name="flux">Photon flux of all its lamps, µmol/s, from 0 to 10 000 000.</param>
    /// <param name="reaching">Share that reaches the leaves, %, from 0 to 100.</param>
    /// <param name="area">Area of the bed, m², above 0 (0.0001) to 10 000.</param>
    /// <returns>Photon flux density, µmol/m²/s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>PPFD = PPF s / A. Source: conservation of photons, the lumen method of lighting design. Not for: the light at one spot.</remarks>
    public static double MeanOnBed(double flux, double reaching, double area) =>
        Range.Within(flux, 0, MaxFlux) * Range.Within(reaching, 0, 100) / 100 / Range.Within(area, MinArea, MaxArea);

    internal const double MinArea = 1e-4;

    /// <summary>Daily light integral under steady light.</summary>
    /// <param name="density">Photon flux density, µmol/m²/s, from 0 to 100 000.</param>
    /// <param name="hours">Hours lit, h/d, from 0 to 24.</param>
    /// <returns>Daily light, mol/m²/d.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>DLI = 0.0036 PPFD t. Source: definition.</remarks>
    public static double Integral(double density, double hours) =>
        Range.Within(density, 0, MaxFluxDensity) * Range.Within(hours, 0, 24) * MolesPerHour;

    /// <summary>Daily light outdoors.</summary>
    /// <param name="radiation">Global radiation on the level, MJ/m²/d, from 0 to 46.</param>
    /// <param name="photons">Photons of 400 to 700 nm in it, mol/MJ, from 1.5 to 2.6.</param>
    /// <returns>Daily light, mol/m²/d.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>DLI = c H, c = share × µmol/J. Source: Thimijan and Heins 1983 for 4.57 µmol/J; share 0.45 (Szeicz 1974 gives 0.50, which
    /// makes 2.3 mol/MJ). Error: 10 %.</remarks>
    public static double FromRadiation(double radiation, double photons = UsualPhotons) =>
        Range.Within(radiation, 0, MaxRadiation) * Range.Within(photons, MinPhotons, MaxPhotons);

    /// <summary>Daily light in a greenhouse.</summary>
    /// <param name="outdoors">Daily light outdoors, mol/m²/d, from 0 to 120.</param>
    /// <param name="transmission">Share that clean glazing lets pass, %, from 0 to 100: see <see cref="GlazingTransmission"/>.</param>
    /// <param name="shade">Share of the rest lost to frame, dirt and slanting sun, %, from 0 to 100.</param>
    /// <returns>Daily light, mol/m²/d.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>DLI = DLI_out τ (1 − s). Source: common practice, no source. Not for: one corner at one hour; a window sill.</remarks>
    public static double UnderCover(double outdoors, double transmission, double shade) =>
        Range.Within(outdoors, 0, MaxDaily) * Range.Within(transmission, 0, 100) / 100 * (1 - Range.Within(shade, 0, 100) / 100);

    /// <summary>Electric energy that lamps take for each square metre to give a daily light.</summary>
    /// <param name="daily">Daily light wanted from the lamps, mol/m²/d, from 0 to 120.</param>
    /// <param name="efficacy">Photons for each joule, µmol/J, from 0.05 to 5.</param>
    /// <param name="reaching">Share that reaches the leaves, %, from 1 to 100.</param>
    /// <returns>Energy, kWh/m²/d.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>E = DLI / (3.6 η s). Source: definitions of the mole, the joule and the kilowatt hour.</remarks>
    public static double LampEnergy(double daily, double efficacy, double reaching) =>
        Range.Within(daily, 0, MaxDaily) / (3.6 * Range.Within(efficacy, MinEfficacy, MaxEfficacy) * Range.Within(reaching, 1, 100) / 100);
}
