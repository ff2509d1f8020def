namespace Runnel.Engine.Water;

/// <summary>Mass of a pure chemical that gives back some alkalinity.</summary>
public static class BaseDose
{
    private const double EquivalentCalciumCarbonate = (AtomicMass.Ca + AtomicMass.C + 3 * AtomicMass.O) / 2;

    /// <summary>Mass of a pure base for some alkalinity, by equivalent weights.</summary>
    /// <param name="alkalinity">Alkalinity to give back, g CaCO3/d, from 0 to 1 000 000.</param>
    /// <param name="chemical">The chemical.</param>
    /// <returns>Mass of the pure chemical, g/d.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Alkalinity below 0, above 1 000 000, or not a number.</exception>
    /// <remarks>m = Alk E / E(CaCO3), E the equivalent weight: molar mass divided by the acid one mol takes up. Exact, from standard atomic
    /// weights (IUPAC). Not for: impure goods (divide by the share that is pure); a dose all at once.</remarks>
    public static double ByEquivalentWeight(double alkalinity, BaseChemical chemical)
    {
        ArgumentNullException.ThrowIfNull(chemical);
        return Range.Within(alkalinity, 0, 1e6) * chemical.EquivalentWeight / EquivalentCalciumCarbonate;
    }
}

/// <summary>A chemical that raises alkalinity.</summary>
/// <param name="Id">Stable name: <c>calcium-carbonate</c>.</param>
/// <param name="Name">Name in words.</param>
/// <param name="Symbol">Chemical formula.</param>
/// <param name="EquivalentWeight">Mass that takes up one mol of acid, g.</param>
/// <param name="Caution">What to mind when it is dosed.</param>
public sealed record BaseChemical(string Id, string Name, string Symbol, double EquivalentWeight, string Caution)
{
    private const string Little = "Dose a part each day and test pH before and after: a fast rise of pH makes ammonia poisonous.";

    private const string Caustic =
        "Caustic: blinds and burns. Wear goggles and gloves; stir the base into much cold water, never water onto the base; keep it away "
        + "from children and from aluminium; add the solution slowly where flow is strong and no fish swim. Follow the label and safety data "
        + "sheet. " + Little;

    /// <summary>Sodium bicarbonate, baking soda.</summary>
    public static readonly BaseChemical SodiumBicarbonate = new("sodium-bicarbonate", "Sodium bicarbonate", "NaHCO3",
        AtomicMass.Na + AtomicMass.H + AtomicMass.C + 3 * AtomicMass.O,
        "Sodium stays in the loop and harms plants as it builds up: for an emergency, not for each week. " + Little);

    /// <summary>Potassium bicarbonate.</summary>
    public static readonly BaseChemical PotassiumBicarbonate = new("potassium-bicarbonate", "Potassium bicarbonate", "KHCO3",
        AtomicMass.K + AtomicMass.H + AtomicMass.C + 3 * AtomicMass.O, Little);

    /// <summary>Calcium carbonate: limestone, shell grit.</summary>
    public static readonly BaseChemical CalciumCarbonate = new("calcium-carbonate", "Calcium carbonate", "CaCO3",
        (AtomicMass.Ca + AtomicMass.C + 3 * AtomicMass.O) / 2,
        "Dissolves slowly, and hardly at all once pH is above about 7.5: what is not dissolved does not count yet.");

    /// <summary>Calcium hydroxide, hydrated lime.</summary>
    public static readonly BaseChemical CalciumHydroxide = new("calcium-hydroxide", "Calcium hydroxide", "Ca(OH)2",
        (AtomicMass.Ca + 2 * (AtomicMass.O + AtomicMass.H)) / 2, Caustic);

    /// <summary>Potassium hydroxide, caustic potash.</summary>
    public static readonly BaseChemical PotassiumHydroxide = new("potassium-hydroxide", "Potassium hydroxide", "KOH",
        AtomicMass.K + AtomicMass.O + AtomicMass.H, Caustic);

    /// <summary>All of them.</summary>
    public static IReadOnlyList<BaseChemical> All { get; } =
        [SodiumBicarbonate, PotassiumBicarbonate, CalciumCarbonate, CalciumHydroxide, PotassiumHydroxide];
}
