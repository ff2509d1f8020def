namespace Runnel.Engine.Year;

/// <summary>Constants of the year that belong to no single kind of fish or crop, each with its source and span. None is set for a case.</summary>
internal static class YearConstants
{
    /// <summary>Nitrogen in live fish, share. From memory: 2.5 to 2.8 %.</summary>
    public const double FishNitrogen = 0.026;

    /// <summary>Nitrogen in protein: 16 %.</summary>
    public const double ProteinNitrogen = 0.16;

    /// <summary>Share of the nitrogen that fish do not keep which they give off dissolved; the rest is in solids. Timmons and Ebeling 2013: 0.80 excreted.</summary>
    public const double DissolvedShare = 0.80;

    /// <summary>Dry solids for each feed: Timmons and Ebeling 2013, 0.20 to 0.40.</summary>
    public const double SolidsEachFeed = 0.25;

    /// <summary>Share of the solids that bacteria can break down. From memory: 0.5 to 0.7.</summary>
    public const double Degradable = 0.6;

    /// <summary>Breakdown of solids at 20 °C, 1/h, and its ratio for each °C. From memory: aerobic digestion 0.04 to 0.10 per day, 1.02 to 1.09.</summary>
    public const double SolidsDecay = 0.05 / 24;

    /// <inheritdoc cref="SolidsDecay"/>
    public const double SolidsTheta = 1.06;

    /// <summary>Oxygen demand of solids broken down, g/g. From memory: 1.1 to 1.42.</summary>
    public const double SolidsOxygen = 1.2;

    /// <summary>Share of that demand met by nitrate in corners without oxygen. Our choice; loops lose 20 to 50 % of their nitrogen so.</summary>
    public const double AnoxicShare = 0.3;

    /// <summary>Oxygen that a gram of nitrate nitrogen stands for when it is breathed: 2.86, stoichiometry.</summary>
    public const double NitrateOxygen = 2.86;

    /// <summary>Digestion of a meal at the best temperature, 1/h: ammonia peaks within hours of a meal. From memory: 0.1 to 0.3.</summary>
    public const double Digestion = 0.2;

    /// <summary>Oxygen used to digest each gram of feed, g. From memory: a fed fish uses 0.3 to 0.5 g in all for each gram.</summary>
    public const double DigestionOxygen = 0.2;

    /// <summary>Carbon dioxide for each gram of oxygen breathed, g: 44/32, one mole for one mole.</summary>
    public const double CarbonEachOxygen = 1.375;

    /// <summary>Oxygen for each gram of ammonia nitrogen, first step and second. Ebeling et al. 2006: 4.18 with growth, shared 3 to 1.</summary>
    public const double OxygenFirst = 3.135;

    /// <inheritdoc cref="OxygenFirst"/>
    public const double OxygenSecond = 1.045;

    /// <summary>Alkalinity used by the first step, g CaCO3 for each g N. Ebeling et al. 2006: 7.05.</summary>
    public const double AlkalinityFirst = 7.05;

    /// <summary>Alkalinity of one equivalent for each mole of nitrogen, g CaCO3 for each g N: 50.04/14.007. Gained when ammonia is given off
    /// or nitrate is breathed.</summary>
    public const double AlkalinityEachNitrogen = 3.573;

    /// <summary>Share of an equivalent that roots give back for each mole of nitrate, after the cations they take up. From memory: 0.2 to 1.</summary>
    public const double RootAlkalinity = 0.5;

    /// <summary>Half-saturation, mg/L: ammonia and nitrite nitrogen (EPA 1975, 0.7 at 20 °C; textbooks 0.5 to 1; 0.5 to 2), oxygen (Wiesmann 1994, 0.3 and
    /// 1.1), alkalinity (ASM2d, 0.5 mol/m³ = 25 as CaCO3). From memory.</summary>
    public const double HalfAmmonia = 0.7;

    /// <inheritdoc cref="HalfAmmonia"/>
    public const double HalfNitrite = 1.0;

    /// <inheritdoc cref="HalfAmmonia"/>
    public const double HalfOxygenFirst = 0.3;

    /// <inheritdoc cref="HalfAmmonia"/>
    public const double HalfOxygenSecond = 1.1;

    /// <inheritdoc cref="HalfAmmonia"/>
    public const double HalfAlkalinity = 25;

    /// <summary>Half-saturation of other users: oxygen of breakdown, of fish; nitrate of denitrifiers, of roots, mg/L. From memory: 0.2, -, 0.5, 0.1 to 0.5.</summary>
    public const double HalfOxygenSolids = 0.2;

    /// <summary>Fish use less oxygen when there is hardly any: keeps the balance above zero. Our choice.</summary>
    public const double HalfOxygenFish = 0.3;

    /// <inheritdoc cref="HalfOxygenSolids"/>
    public const double HalfNitrateLost = 0.5;

    /// <inheritdoc cref="HalfOxygenSolids"/>
    public const double HalfNitrateRoots = 0.5;

    /// <summary>Hydrogen ions at which nitrifiers work half, mol/L: pH 6.0 and 9.5. Form of Antoniou et al. 1990; values our choice: the EPA 1975 rule
    /// stops at pH 6.0, while a sand-bed loop at pH 5.8 to 6.2 nitrified (McMurtry et al. 1997).</summary>
    public const double AcidHalf = 1e-6;

    /// <inheritdoc cref="AcidHalf"/>
    public const double BasicHalf = 3.16227766016838e-10;

    /// <summary>Un-ionised ammonia at which nitrite oxidisers work half, mg N/L. Anthonisen et al. 1976: 0.1 to 1.0 begins to hold them back.</summary>
    public const double AmmoniaHolds = 1.0;

    /// <summary>Yield, g of cells for each g N, and decay at any temperature, 1/h. Wiesmann 1994: 0.147 and 0.042; decay 0.05 per day (EPA 1975). From memory.</summary>
    public const double YieldFirst = 0.147;

    /// <inheritdoc cref="YieldFirst"/>
    public const double YieldSecond = 0.042;

    /// <inheritdoc cref="YieldFirst"/>
    public const double Decay = 0.05 / 24;

    /// <summary>Ammonia nitrogen that a full film takes up at 20 °C, g/m²/d: 0.2 to 2 published. Nitrite oxidisers half as much again.</summary>
    public const double FilmRate = 1.0;

    /// <inheritdoc cref="FilmRate"/>
    public const double FilmRateSecond = 1.5;

    /// <summary>Bubbles carry off less carbon dioxide than they bring oxygen; surface and falls nearly the same. From memory: Colt 2012, 0.3 to 0.9.</summary>
    public const double StrippingBubbles = 0.4;

    /// <inheritdoc cref="StrippingBubbles"/>
    public const double StrippingSurface = 0.9;

    /// <summary>Heat that warms a cubic metre by one kelvin, Wh.</summary>
    public const double HeatStore = 1163;
}
