using Runnel.App;
using Runnel.Engine.Assess;
using Runnel.Engine.Quantities;

namespace Runnel.Screens.Charts;

/// <summary>One limit of the loop as a bar: how far it reaches, and where the feed stands on the same scale.</summary>
/// <param name="Limit">The limit.</param>
/// <param name="Reach">Share of the width, 0 to 1, that the allowed feed reaches.</param>
/// <param name="Low">Share at which eight outcomes in ten begin.</param>
/// <param name="High">Share at which they end.</param>
/// <param name="Fed">Share at which the feed stands.</param>
/// <param name="Beyond">True when the bar goes on beyond the drawing.</param>
/// <param name="Margin">"42 % short", "80 % to spare".</param>
public sealed record LimitBar(BalanceLimit Limit, double Reach, double Low, double High, double Fed, bool Beyond, string Margin)
{
    // A limit that is never near would squeeze all others: the drawing ends at this many times the feed.
    private const double Ends = 3;

    /// <summary>True while the limit is overrun.</summary>
    public bool Short => Limit.Margin.Si < 0;

    /// <summary>The bars of a balance, on one scale.</summary>
    public static IReadOnlyList<LimitBar> Of(Balance balance)
    {
        ArgumentNullException.ThrowIfNull(balance);
        var fed = balance.Feed?.Si ?? 0;
        var most = balance.Limits.Count == 0 ? 0 : balance.Limits.Max(l => Math.Max(l.Allows.Si, l.Allows.High));
        var end = fed > 0 ? Math.Min(Math.Max(most, fed * 1.15), fed * Ends) : most;
        if (end <= 0)
        {
            return [];
        }
        double At(double si) => Math.Clamp(si / end, 0, 1);
        return [.. balance.Limits.Select(l => new LimitBar(
            l, At(l.Allows.Si), At(l.Allows.Low), At(l.Allows.High), At(fed), l.Allows.Si > end, Words(l)))];
    }

    private static string Words(BalanceLimit limit)
    {
        var percent = Math.Round(Math.Abs(Units.Percent.FromSi(limit.Margin.Si)));
        var number = Style.Number(percent, Units.Percent);
        return percent is 0 ? "just enough" : limit.Margin.Si < 0 ? $"{number} % short" : $"{number} % to spare";
    }
}
