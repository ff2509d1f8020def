using CsCheck;
using Runnel.Engine.Quantities;
using Runnel.Engine.Water;
using static Runnel.Engine.Tests.Formulary;

namespace Runnel.Engine.Tests.Water;

public sealed class WasteFromFeedTests
{
    [Fact]
    [Proof("ammonia-from-feed", Evidence.Published, "Hager and others 2021, Kentucky State University: 2000 g/d of 32 % protein give 58.9 g/d")]
    public void The_manuals_example_comes_out() => Assert.Equal(58.9, AmmoniaFromFeed.TimmonsEbeling(2000, 32), 0.05);

    [Fact]
    [Proof("ammonia-from-feed", Evidence.Published, "Miller, Biofilter decisions, rule of 3 % of the feed; the formula's is 2.6 to 3.3 % for 28 to 36 % protein")]
    public void The_rule_of_three_percent_lies_inside()
    {
        Assert.InRange(3.0, AmmoniaFromFeed.TimmonsEbeling(100, 28), AmmoniaFromFeed.TimmonsEbeling(100, 36));
    }

    [Fact]
    [Proof("ammonia-from-feed", Evidence.Measured, "Rakocy and McGinty: tilapia in tanks gave off 88 to 463 mg for each kg and day; at 1 %/d of 32 % protein")]
    public void Tilapia_in_tanks_gave_off_about_as_much() => Assert.InRange(AmmoniaFromFeed.TimmonsEbeling(10, 32) * 1000, 88, 463);

    [Fact]
    [Proof("ammonia-from-feed", Evidence.Derived, "product of its four shares 0.16 × 0.80 × 0.80 × 0.90")]
    public void Its_factor_is_the_product_of_its_shares() =>
        Assert.Equal(0.16 * 0.80 * 0.80 * 0.90, AmmoniaFromFeed.TimmonsEbeling(1, 50) / 0.5, 0.0003);

    [Fact]
    [Proof("ammonia-from-feed-fao", Evidence.Published, "from memory: FAO Technical Paper 589, appendix 4: 200 g/d give 7.5 g of ammonia")]
    public void The_example_of_the_technical_paper_comes_out() => Assert.Equal(7.5, AmmoniaFromFeed.Fao(200, 32), 0.05);

    [Fact]
    [Proof("ammonia-from-feed", Evidence.Derived, "two independent chains agree once both are counted as nitrogen: 6 %")]
    [Proof("ammonia-from-feed-fao", Evidence.Derived, "two independent chains agree once both are counted as nitrogen: 6 %")]
    public void Both_chains_agree_as_nitrogen() =>
        Gen.Select(Gen.Double[1, 5000], Gen.Double[20, 50]).Sample((feed, protein) =>
            Math.Abs(AmmoniaBasis.ToNitrogen(AmmoniaFromFeed.Fao(feed, protein)) / AmmoniaFromFeed.TimmonsEbeling(feed, protein) - 1) < 0.06);

    [Fact]
    public void Unconverted_they_would_be_a_quarter_apart() =>
        Assert.InRange(AmmoniaFromFeed.Fao(200, 32) / AmmoniaFromFeed.TimmonsEbeling(200, 32), 1.2, 1.3);

    [Fact]
    [Proof("ammonia-from-feed", Evidence.Derived, "balance: less nitrogen comes out as ammonia than went in with protein (16 %)")]
    [Proof("ammonia-from-feed-fao", Evidence.Derived, "balance: less nitrogen comes out as ammonia than went in with protein (16 %)")]
    public void Less_nitrogen_comes_out_than_went_in()
    {
        const double nitrogen = 1000 * 0.32 * 0.16;
        Assert.InRange(AmmoniaFromFeed.TimmonsEbeling(1000, 32), 0.4 * nitrogen, 0.8 * nitrogen);
        Assert.InRange(AmmoniaBasis.ToNitrogen(AmmoniaFromFeed.Fao(1000, 32)), 0.4 * nitrogen, 0.8 * nitrogen);
    }

    [Fact]
    [Proof("ammonia-to-nitrogen", Evidence.Published, "handbooks' factor: ammonia is 1.216 times its nitrogen")]
    [Proof("nitrogen-to-ammonia", Evidence.Published, "handbooks' factor: ammonia is 1.216 times its nitrogen")]
    public void Ammonia_is_1_216_times_its_nitrogen()
    {
        Assert.Equal(1.216, AmmoniaBasis.FromNitrogen(1), 0.0005);
        Assert.Equal(1, AmmoniaBasis.ToNitrogen(1.216), 0.0005);
    }

    [Fact]
    [Proof("ammonia-to-nitrogen", Evidence.Derived, "there and back")]
    [Proof("nitrogen-to-ammonia", Evidence.Derived, "there and back")]
    public void There_and_back_is_the_same() =>
        Gen.Double[0, 1e5].Sample(x => Math.Abs(AmmoniaBasis.FromNitrogen(AmmoniaBasis.ToNitrogen(x)) - x) <= 1e-12 * x);

    [Fact]
    [Proof("oxygen-from-feed", Evidence.Derived,
        "balance: fish 0.25 (from memory, Timmons and Ebeling) and nitrification of feed's ammonia at 4.57 g/g (USEPA 1975) stay under the default")]
    public void The_default_leaves_room_for_fish_nitrifiers_and_solids()
    {
        var fishAndNitrifiers = 250 + 4.57 * AmmoniaFromFeed.TimmonsEbeling(1000, 32);
        Assert.InRange(OxygenFromFeed.Ratio(1000), fishAndNitrifiers, 1.5 * fishAndNitrifiers);
    }

    [Fact]
    [Proof("solids-from-feed", Evidence.Derived, "balance: of feed digested by 80 % (Hager and others 2021) a fifth leaves as solids: the least ratio")]
    public void At_least_what_is_not_digested_is_left()
    {
        Assert.Equal((1 - 0.80) * 1000, SolidsFromFeed.Ratio(1000, 0.2), 1e-9);
        Assert.InRange(SolidsFromFeed.Ratio(1000), 200, 400);
    }

    [Fact]
    public void Figures_in_other_units_give_the_same()
    {
        var feed = Of(1, Units.PoundPerDay);
        Assert.Equal(AmmoniaFromFeed.TimmonsEbeling(453.59237, 32), WaterFormulas.AmmoniaFromFeed.Apply(feed, Of(0.32, Units.One)).Value, 1e-9);
        Assert.Equal(AmmoniaFromFeed.Fao(453.59237, 32), WaterFormulas.AmmoniaFromFeedFao.Apply(feed, Of(32, Units.Percent)).Value, 1e-9);
        Assert.Equal(OxygenFromFeed.Ratio(453.59237), WaterFormulas.OxygenFromFeed.Apply(feed, Of(50, Units.Percent)).Value, 1e-9);
        Assert.Equal(SolidsFromFeed.Ratio(453.59237), WaterFormulas.SolidsFromFeed.Apply(feed, Of(0.25, Units.One)).Value, 1e-9);
    }

    [Fact]
    public void Ammonia_and_nitrogen_do_not_mix()
    {
        var asAmmonia = WaterFormulas.AmmoniaFromFeedFao.Apply(Of(200, Units.GramPerDay), Of(32, Units.Percent));
        var asNitrogen = WaterFormulas.AmmoniaFromFeed.Apply(Of(200, Units.GramPerDay), Of(32, Units.Percent));
        Assert.Throws<UnitMismatchException>(() => asAmmonia + asNitrogen);
        Assert.Throws<UnitMismatchException>(() => asAmmonia / asNitrogen);
        Assert.Throws<UnitMismatchException>(() => WaterFormulas.AlkalinityUsed.Apply(asAmmonia));
        Assert.Equal(asNitrogen.Dimension, WaterFormulas.AmmoniaToNitrogen.Apply(asAmmonia).Dimension);
        Assert.Equal(asAmmonia.Dimension, WaterFormulas.NitrogenToAmmonia.Apply(asNitrogen).Dimension);
    }
}
