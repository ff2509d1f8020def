using Runnel.Engine.Assess;

namespace Runnel.Catalogue.Tests;

public sealed class NamesTests
{
    private static readonly Shelf Shelf = Shelves.Standard;

    private static string? Fish(string wanted) => Names.Find(Shelf.Species, s => s.Name, s => s.AlsoCalled, wanted)?.Name;

    [Theory]
    [InlineData("Nile tilapia", "Nile tilapia")]
    [InlineData("  nile   TILAPIA ", "Nile tilapia")]
    [InlineData("trout", "rainbow trout")]
    [InlineData("tilapia", null)]
    [InlineData("", null)]
    public void Fish_are_found_by_any_of_their_names(string wanted, string? found) => Assert.Equal(found, Fish(wanted));

    [Theory]
    [InlineData("Amsterdam", "maritime 52 N")]
    [InlineData("maritime 52 n", "maritime 52 N")]
    [InlineData("zürich", "alpine foreland 47 N")]
    public void Climates_are_found_by_town(string wanted, string found) =>
        Assert.Equal(found, Names.Find(Shelf.Climates, c => c.Name, c => c.AlsoCalled, wanted)?.Name);

    [Fact]
    public void A_rows_own_name_goes_before_anothers_other_name()
    {
        (string Name, string[] Also)[] rows = [("one", ["two"]), ("two", [])];
        Assert.Equal("two", Names.Find(rows.Select(r => new Tuple<string, string[]>(r.Name, r.Also)), r => r.Item1, r => r.Item2, "Two")?.Item1);
    }

    [Theory]
    [InlineData("Nile talapia", "Nile tilapia")]
    [InlineData("rainbow truot", "rainbow trout")]
    [InlineData("gold fish", "goldfish")]
    [InlineData("chanel catfish", "channel catfish")]
    public void A_slip_brings_the_name_meant_first(string wanted, string meant) =>
        Assert.Equal(meant, Names.Nearest(wanted, Shelf.Species.Select(s => s.Name))[0]);

    [Fact]
    public void A_word_brings_the_rows_that_hold_it()
    {
        Assert.Equal(["blue tilapia", "Nile tilapia"], Names.Nearest("tilapia", Shelf.Species.Select(s => s.Name)));
        Assert.Equal(["butterhead lettuce", "leaf lettuce", "romaine lettuce"], Names.Nearest("lettuce", Shelf.Crops.Select(c => c.Name)));
    }

    [Theory]
    [InlineData("xqzzy")]
    [InlineData("")]
    public void Nothing_near_brings_nothing(string wanted) => Assert.Empty(Names.Nearest(wanted, Shelf.Species.Select(s => s.Name)));

    [Fact]
    public void No_more_than_asked_for() => Assert.Equal(2, Names.Nearest("gravel", Shelf.Media.Select(m => m.Name), 2).Count);

    /// <summary>Published examples of the measure: kitten and sitting 3, Saturday and Sunday 3 (Levenshtein); a swap counts one (Damerau 1964).</summary>
    [Theory]
    [InlineData("kitten", "sitting", 3)]
    [InlineData("saturday", "sunday", 3)]
    [InlineData("trout", "truot", 1)]
    [InlineData("", "abc", 3)]
    [InlineData("same", "same", 0)]
    public void Distance_between_words(string a, string b, int distance)
    {
        Assert.Equal(distance, Names.Distance(a, b));
        Assert.Equal(distance, Names.Distance(b, a));
    }
}
