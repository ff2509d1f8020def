using Runnel.Screens.Charts;
using Runnel.Screens.Views;

namespace Runnel.Screens.Tests;

public sealed class ChartTests
{
    [Theory]
    [InlineData("laundry-room.yaml")]
    [InlineData("lean-to-greenhouse.yaml")]
    public void Pieces_of_a_column_add_up_to_the_month(string example)
    {
        using var plan = Plans.Open(Plans.Example(example));
        var columns = MonthColumns.Of(plan.Assessment!.Run);

        var top = double.Parse(columns.Ticks[^1].Text, System.Globalization.NumberStyles.Number);
        Assert.Equal(12, columns.Months.Count);
        Assert.All(columns.Months, month =>
            Assert.Equal(month.Total.Si, month.Pieces.Sum(p => p.Height) / MonthColumns.Height * top, month.Total.Si * 1e-9));
        Assert.All(columns.Months, month => Assert.True(month.Pieces[^1].Top >= -1e-9));
        // Each piece stands on the one before it, the first on the axis.
        Assert.All(columns.Months, month =>
        {
            var below = MonthColumns.Height;
            Assert.All(month.Pieces, piece =>
            {
                Assert.Equal(below, piece.Top + piece.Height, 1e-6);
                below = piece.Top;
            });
        });
    }

    [Fact]
    public void Marks_of_the_axis_are_round_and_cover_the_dearest_month()
    {
        using var plan = Plans.Open(Plans.Example("laundry-room.yaml"));
        var columns = MonthColumns.Of(plan.Assessment!.Run);

        Assert.Equal("0", columns.Ticks[0].Text);
        Assert.Equal(MonthColumns.Height, columns.Ticks[0].Top);
        Assert.Equal(0, columns.Ticks[^1].Top, 1e-9);
        Assert.InRange(columns.Ticks.Count, 3, 7);
        Assert.True(double.Parse(columns.Ticks[^1].Text) >= plan.Assessment!.Run.Months.Max(m => m.Si));
    }

    [Fact]
    public void A_bar_stops_short_of_the_feed_when_its_limit_is_overrun()
    {
        using var plan = Plans.Open(Plans.Example("laundry-room.yaml"));
        var bars = LimitBar.Of(plan.Assessment!.Balance);

        Assert.NotEmpty(bars);
        Assert.All(bars, b => Assert.Equal(b.Short, b.Reach < b.Fed));
        Assert.All(bars, b => Assert.EndsWith(b.Short ? "% short" : "% to spare", b.Margin, StringComparison.Ordinal));
        Assert.All(bars, b => Assert.InRange(b.Reach, 0, 1));
        var feed = plan.Assessment.Balance.Feed!.Si;
        Assert.Equal(bars.Where(b => b.Limit.Allows.Si > 3 * feed), bars.Where(b => b.Beyond));
        Assert.Contains(bars, b => b.Beyond);
        Assert.All(bars.Where(b => !b.Beyond), b => Assert.Equal(b.Limit.Allows.Si / feed, b.Reach / b.Fed, 1e-9));
        Assert.All(bars.Where(b => b.Beyond), b => Assert.Equal(1, b.Reach));
    }

    [Fact]
    public void Shares_of_the_year_add_up_to_the_whole()
    {
        using var plan = Plans.Open(Plans.Example("laundry-room.yaml"));

        Assert.Equal(1, RunRow.Of(plan.Assessment!).Sum(r => r.Share?.Si ?? 0), 1e-9);
    }
}
