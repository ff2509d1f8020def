using Runnel.Engine.Quantities;
using Runnel.Engine.Sun;

namespace Runnel.Engine.Weather;

/// <summary>Hours of radiation made from monthly means: clearness of days, then the course of each day.</summary>
/// <remarks>Days: <see cref="ClearnessOfDays"/> with persistence. Hours: after Collares-Pereira and Rabl 1979, (a + b cos ω) times the mean height of
/// the sun in the hour, divided by the day's sum, so that each day closes. Left out: clouds that come and go within a day, so that single hours
/// are smoother than in nature.</remarks>
internal sealed class RadiationOfHours(double latitude)
{
    private const double MegajoulePerWattHour = 0.0036;
    private const int PerDay = 24;
    private static readonly double[] MiddleCosines = [.. Enumerable.Range(0, PerDay).Select(h => Math.Cos((h - 11.5) * Math.PI / 12))];

    private readonly double[] _above = new double[YearCalendar.Days];
    private readonly List<int> _cut = [];

    /// <summary>Clearness of each day; 0 where there is no sun.</summary>
    public double[] Clearness { get; } = new double[YearCalendar.Days];

    /// <summary>Mean clearness of each month; 0 where there is no sun.</summary>
    public double[] MonthlyClearness { get; } = new double[YearCalendar.Months];

    public double[] Global { get; } = new double[WeatherYear.Hours];

    public double[] Direct { get; } = new double[WeatherYear.Hours];

    public double[] Diffuse { get; } = new double[WeatherYear.Hours];

    public IReadOnlyList<int> Cut => _cut;

    /// <summary>Radiation above the air of a day, MJ/m².</summary>
    public double Above(int day) => _above[day];

    /// <summary>Makes the hours.</summary>
    /// <param name="means">Mean daily radiation of each month, MJ/m²/d.</param>
    /// <param name="days">Normal numbers with persistence, one for each day.</param>
    public void Make(ReadOnlySpan<double> means, ReadOnlySpan<double> days)
    {
        for (var d = 0; d < YearCalendar.Days; d++)
        {
            _above[d] = ExtraterrestrialRadiation.Fao56(latitude, d + 1);
            Clearness[d] = Persistence.ShareBelow(days[d]);
        }
        for (var m = 0; m < YearCalendar.Months; m++)
        {
            var above = _above.AsSpan(YearCalendar.Start[m], YearCalendar.Length[m]);
            var total = 0.0;
            foreach (var day in above)
            {
                total += day;
            }
            var wanted = means[m] * YearCalendar.Length[m];
            if (wanted > ClearnessOfDays.Max * total)
            {
                wanted = ClearnessOfDays.Max * total;
                _cut.Add(m + 1);
            }
            MonthlyClearness[m] = total > 0 ? wanted / total : 0;
            ClearnessOfDays.Fit(Clearness.AsSpan(YearCalendar.Start[m], YearCalendar.Length[m]), above, wanted);
        }
        for (var d = 0; d < YearCalendar.Days; d++)
        {
            if (Clearness[d] * _above[d] > 0)
            {
                Day(d);
            }
        }
    }

    private void Day(int day)
    {
        var declination = DayLength.Declination(day + 1);
        var sunset = DayLength.SunsetAngle(latitude, declination);
        var (up, across) = (Angle.Sin(latitude) * Angle.Sin(declination), Angle.Cos(latitude) * Angle.Cos(declination));
        var shift = Angle.Sin(sunset - 60);
        var (a, b) = (0.409 + 0.5016 * shift, 0.6609 - 0.4767 * shift);
        Span<double> sines = stackalloc double[PerDay];
        Span<double> shares = stackalloc double[PerDay];
        var sum = 0.0;
        for (var h = 0; h < PerDay; h++)
        {
            var from = (h - 12) * 15.0;
            sines[h] = ExtraterrestrialRadiation.MeanSine(sunset, up, across, from, from + 15);
            shares[h] = Math.Max(0, a + b * MiddleCosines[h]) * sines[h];
            sum += shares[h];
        }
        if (sum <= 0)
        {
            return;
        }
        var scale = Clearness[day] * _above[day] / MegajoulePerWattHour / sum;
        var distance = DayLength.InverseDistance(day + 1);
        for (var h = 0; h < PerDay; h++)
        {
            var at = day * PerDay + h;
            Global[at] = scale * shares[h];
            (Direct[at], Diffuse[at]) = SkySplit.Hour(Global[at], sines[h], distance);
        }
    }
}
