using Runnel.Engine.Quantities;

namespace Runnel.Engine.Flow;

/// <summary>Roughness of the inside of new pipe, by material.</summary>
public static class Roughness
{
    /// <summary>Hazen and Williams' coefficient of plastic pipe, likely value; sources print 140, 145 and 150.</summary>
    public const double PlasticC = 145;

    private const string Epanet = "EPANET 2.2 User Manual (2020), table 3.2, new pipe";

    /// <summary>Absolute roughness of a material.</summary>
    /// <param name="material">What follows the size in the plan: PVC, hose, PE, steel, concrete; anything else is taken as smooth plastic.</param>
    /// <returns>Roughness. Slime raises it many times within weeks: the estimate is of clean pipe.</returns>
    public static Estimate Of(string material)
    {
        ArgumentNullException.ThrowIfNull(material);
        bool Has(string word) => material.Contains(word, StringComparison.OrdinalIgnoreCase);
        return material switch
        {
            _ when InsideDiameter.IsCorrugated(material) => Wall(0.2, 1, 3, OriginKind.Default,
                "common practice, no source: ribs act as roughness, and head losses of two to four smooth pipes are usual"),
            _ when Has("galvanised") || Has("galvanized") => Wall(0.1524, 0.1524, 0.1524, OriginKind.Catalogue, Epanet),
            _ when Has("steel") => Wall(0.04572, 0.04572, 0.04572, OriginKind.Catalogue, Epanet),
            _ when Has("concrete") => Wall(0.3048, 1, 3.048, OriginKind.Catalogue, Epanet),
            _ when InsideDiameter.IsHose(material) => Wall(0.0015, 0.0015, 0.01, OriginKind.Default,
                $"{Epanet}, as smooth plastic; upper end from memory: tables of smooth rubber hose"),
            _ => Wall(0.0015, 0.0015, 0.0015, OriginKind.Catalogue, Epanet + ", plastic: 0.005 thousandths of a foot"),
        };
    }

    private static Estimate Wall(double low, double likely, double high, OriginKind kind, string source) =>
        new(low / 1000, likely / 1000, high / 1000, Units.Millimetre, new("catalogue:pipes/roughness", "Roughness of the pipe", kind, source));
}
