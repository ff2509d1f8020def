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
        Assert.All(bars, b => Assert.Equal(b.Reach / b.Fed, b.Beyond ? b.Reach / b.Fed : b.Limit.Allows.Si / plan.Assessment.Balance.Feed!.Si, 1e-9));
    }

    [Fact]
    public void Shares_of_the_year_add_up_to_the_whole()
    {
        using var plan = Plans.Open(Plans.Example("laundry-room.yaml"));

        Assert.Equal(1, RunRow.Of(plan.Assessment!).Sum(r => r.Share?.Si ?? 0), 1e-9);
    }
}
