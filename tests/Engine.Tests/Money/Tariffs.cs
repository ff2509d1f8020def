using Runnel.Engine.Money;
using Runnel.Engine.Plan;

namespace Runnel.Engine.Tests.Money;

/// <summary>Invented tariffs for the tests: only when a rate holds matters here, prices are handed to the bill.</summary>
internal static class Tariffs
{
    public const int January = 0, February = 1, March = 2, June = 5, July = 6;

    public static Rate Always { get; } = new();

    public static Rate Rate(
        string? from = null, string? to = null, DayKind days = DayKind.All, CalendarDay? since = null, CalendarDay? until = null) => new()
        {
            Hours = from is null ? null : new HourSpan(TimeOnly.ParseExact(from, "HH:mm"), TimeOnly.ParseExact(to!, "HH:mm")),
            Days = days,
            From = since,
            To = until,
        };

    public static HourCalendar YearOf(int year, params Rate[] rates) => HourCalendar.Of(rates, year);

    /// <summary>Compares with a relative tolerance that leaves room for rounding of sums only.</summary>
    public static void Same(double expected, double actual) =>
        Assert.True(Math.Abs(expected - actual) <= 1e-9 * Math.Max(1, Math.Abs(expected)), $"expected {expected:R}, got {actual:R}");
}
