using Runnel.Engine.Assess;

namespace Runnel.Catalogue;

/// <summary>The catalogue that comes with Runnel.</summary>
public static class Shelves
{
    private static readonly Lazy<Shelf> Loaded = new(Load);

    /// <summary>Every row, read once.</summary>
    /// <exception cref="CatalogueException">A data file is wrong.</exception>
    public static Shelf Standard => Loaded.Value;

    private static Shelf Load() => new()
    {
        Species = Loader.Species("species.yaml", Loader.Text("species.yaml")),
        Crops = Loader.Crops("crops.yaml", Loader.Text("crops.yaml")),
        Media = Loader.Media("media.yaml", Loader.Text("media.yaml")),
        Climates = Loader.Climates("climates.yaml", Loader.Text("climates.yaml")),
        Substitutes = Loader.Substitutes("substitutes.yaml", Loader.Text("substitutes.yaml")),
    };
}
