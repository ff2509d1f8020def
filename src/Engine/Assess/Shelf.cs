using Runnel.Engine.Crops;
using Runnel.Engine.Filter;
using Runnel.Engine.Fish;
using Runnel.Engine.Heat;

namespace Runnel.Engine.Assess;

/// <summary>The rows of the catalogue that an assessment may use.</summary>
public sealed record Shelf
{
    public required IReadOnlyList<Species> Species { get; init; }

    public required IReadOnlyList<CropKind> Crops { get; init; }

    public required IReadOnlyList<Medium> Media { get; init; }

    public required IReadOnlyList<Climate> Climates { get; init; }

    /// <summary>Parts that may stand for one another, and what is given up.</summary>
    public required IReadOnlyList<Substitute> Substitutes { get; init; }
}

/// <summary>A part that does another's job.</summary>
/// <param name="Of">Last words of the part's name: "tank connector" covers "50 mm PVC tank connector".</param>
/// <param name="Use">Last words of the other's name: "rubber grommet".</param>
/// <param name="GivesUp">What is given up.</param>
/// <param name="Source">Where that is said.</param>
public sealed record Substitute(string Of, string Use, string GivesUp, string Source);
