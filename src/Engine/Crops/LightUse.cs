namespace Runnel.Engine.Crops;

/// <summary>Dry mass that a stand makes of light.</summary>
public static class LightUse
{
    /// <summary>Shoot dry mass for each mole taken up in dim light, g/mol.</summary>
    public const double Dim = 0.75;

    /// <summary>Photon flux at which that is halved, µmol/m²/s.</summary>
    public const double Half = 1000;

    /// <summary>Extinction of light by leaf area, for most broad-leaved stands. From memory: 0.5 to 0.9.</summary>
    public const double Extinction = 0.7;

    /// <summary>Shoot dry mass made for each mole that the leaves take up.</summary>
    /// <param name="flux">Photon flux on the stand while lit, µmol/m²/s, from 0 to 2500.</param>
    /// <param name="dim">In dim light, g/mol, from 0.3 to 1.2.</param>
    /// <param name="half">Flux at which it is halved, µmol/m²/s, from 200 to 5000.</param>
    /// <returns>Dry mass for each mole, g/mol.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range, or not a number.</exception>
    /// <remarks>e = e0 / (1 + I/I50). Our form and two constants, set so that one curve passes near the means of Jin et al. 2023, Food and Energy Security 12(1),
    /// for lettuce: 0.55 g of shoot for each incident mole in vertical farms (about 225 µmol/m²/s), 0.39 in greenhouses (about 400), 0.23 in fields
    /// (about 1200), with 70 to 80 % of the light taken up. Error: a third. Not for: added carbon dioxide, which raises it by a third.</remarks>
    public static double Saturating(double flux, double dim = Dim, double half = Half) =>
        Range.Within(dim, 0.3, 1.2) / (1 + Range.Within(flux, 0, 2500) / Range.Within(half, 200, 5000));

    /// <summary>Share of the light that a stand takes up.</summary>
    /// <param name="leafArea">Leaf area index, m² of leaf on each m², from 0 to 20.</param>
    /// <param name="extinction">Extinction coefficient, from 0.2 to 1.</param>
    /// <returns>Share from 0 to 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range, or not a number.</exception>
    /// <remarks>f = 1 − exp(−k L). Source: Monsi and Saeki 1953. Not for: plants standing singly, whose leaves are clumped.</remarks>
    public static double MonsiSaeki(double leafArea, double extinction = Extinction) =>
        1 - Math.Exp(-Range.Within(extinction, 0.2, 1) * Range.Within(leafArea, 0, 20));
}
