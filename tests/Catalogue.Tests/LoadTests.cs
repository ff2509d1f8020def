namespace Runnel.Catalogue.Tests;

public sealed class LoadTests
{
    [Fact]
    public void Every_data_file_loads()
    {
        var shelf = Shelves.Standard;
        Assert.True(shelf.Species.Count >= 10, "species");
        Assert.True(shelf.Crops.Count >= 15, "crops");
        Assert.True(shelf.Media.Count >= 8, "media");
        Assert.True(shelf.Climates.Count >= 15, "climates");
        Assert.True(shelf.Substitutes.Count >= 4, "substitutes");
    }

    [Fact]
    public void It_is_read_once() => Assert.Same(Shelves.Standard, Shelves.Standard);
}
