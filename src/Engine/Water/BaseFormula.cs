using Runnel.Engine.Figures;
using Runnel.Engine.Quantities;

namespace Runnel.Engine.Water;

/// <summary>Makes the formulary's entry for a chemical that gives alkalinity back: one each, all alike.</summary>
internal static class BaseFormula
{
    public static Formula Of(BaseChemical chemical) => new()
    {
        Id = $"base-{chemical.Id}",
        Name = $"{chemical.Name} for alkalinity",
        Subject = "Water",
        Equation = $"m = Alk × {chemical.EquivalentWeight:F2} / 50.04 ({chemical.Symbol})",
        Inputs = [new("alkalinity", "Alkalinity to give back", Units.GramCalciumCarbonatePerDay, 0, 1e6)],
        Output = new("mass", $"{chemical.Name}, pure", Units.GramPerDay),
        Sources = [Literature.AtomicWeights],
        Confidence = Confidence.Textbook,
        Error = "None for a pure chemical that dissolves in full; goods are 70 to 99 % pure (common practice, no source).",
        NotFor = $"A dose all at once. {chemical.Caution}",
        Compute = x => BaseDose.ByEquivalentWeight(x[0], chemical),
    };
}
