using Runnel.Engine.Quantities;

namespace Runnel.Engine.Money;

/// <summary>Something that takes electricity: how much in each month, and at which hours of the day.</summary>
public sealed class Load
{
    private const double HoursInDay = 24;

    private readonly double[] _watts;

    /// <summary>A load that is on at the same hours of every day.</summary>
    /// <param name="id">Its name in the bill.</param>
    /// <param name="wattsWhileOn">Mean power while it is on, W, for each month from January, not negative.</param>
    /// <param name="hoursADay">How long it is on each day, h, 0 to 24.</param>
    /// <param name="onFromHour">When it goes on, hours after midnight, 0 to 24; it may run over midnight.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of range or not a number.</exception>
    public Load(string id, IReadOnlyList<double> wattsWhileOn, double hoursADay = HoursInDay, double onFromHour = 0)
    {
        ArgumentNullException.ThrowIfNull(id);
        ArgumentNullException.ThrowIfNull(wattsWhileOn);
        if (wattsWhileOn.Count != 12)
        {
            throw new ArgumentException($"{id}: needs twelve values from January, not {wattsWhileOn.Count}", nameof(wattsWhileOn));
        }
        Id = id;
        _watts = [.. wattsWhileOn];
        foreach (var watts in _watts)
        {
            Within(watts, 0, double.MaxValue, nameof(wattsWhileOn));
        }
        HoursADay = Within(hoursADay, 0, HoursInDay, nameof(hoursADay));
        OnFromHour = Within(onFromHour, 0, HoursInDay, nameof(onFromHour)) % HoursInDay;
    }

    /// <summary>Its name in the bill.</summary>
    public string Id { get; }

    /// <summary>Mean power while it is on, W, for each month from January.</summary>
    public IReadOnlyList<double> WattsWhileOn => _watts;

    /// <summary>How long it is on each day, h.</summary>
    public double HoursADay { get; }

    /// <summary>When it goes on, hours after midnight, below 24.</summary>
    public double OnFromHour { get; }

    /// <summary>Alike appliances on a timer, the same all year.</summary>
    /// <param name="id">Its name in the bill.</param>
    /// <param name="wattsOfOne">Power of one while it is on, W.</param>
    /// <param name="count">How many alike.</param>
    /// <param name="hoursADay">How long they are on each day, h, 0 to 24.</param>
    /// <param name="onFrom">When they go on.</param>
    public static Load Timed(string id, double wattsOfOne, double count, double hoursADay, TimeOnly onFrom = default)
    {
        var watts = new double[12];
        Array.Fill(watts, wattsOfOne * count);
        return new(id, watts, hoursADay, onFrom.Ticks / (double)TimeSpan.TicksPerHour);
    }

    /// <summary>A load that is spread evenly over the day, such as a heater's thermostat makes it.</summary>
    /// <param name="id">Its name in the bill.</param>
    /// <param name="meanWatts">Mean power over day and night, W, for each month from January.</param>
    public static Load Steady(string id, IReadOnlyList<double> meanWatts) => new(id, meanWatts);

    /// <summary>A load of known energy in each month, spread evenly over it.</summary>
    /// <param name="id">Its name in the bill.</param>
    /// <param name="kwhInMonth">Energy of each month from January, kWh.</param>
    public static Load Metered(string id, IReadOnlyList<double> kwhInMonth)
    {
        ArgumentNullException.ThrowIfNull(kwhInMonth);
        var watts = new double[kwhInMonth.Count];
        for (var month = 0; month < watts.Length; month++)
        {
            watts[month] = kwhInMonth[month] * 1000 / (YearCalendar.Length[month] * HoursInDay);
        }
        return new(id, watts);
    }

    /// <summary>The share of a stretch of the day in which it is on, 0 to 1.</summary>
    /// <param name="fromHour">Beginning, hours after midnight.</param>
    /// <param name="toHour">End, hours after midnight, after the beginning and up to 24.</param>
    public double ShareOn(double fromHour, double toHour)
    {
        var off = OnFromHour + HoursADay;
        var on = Overlap(fromHour, toHour, OnFromHour, off)
            + Overlap(fromHour, toHour, OnFromHour - HoursInDay, off - HoursInDay);
        return Math.Min(1, on / (toHour - fromHour));
    }

    private static double Overlap(double from, double to, double otherFrom, double otherTo) =>
        Math.Max(0, Math.Min(to, otherTo) - Math.Max(from, otherFrom));

    private static double Within(double value, double min, double max, string name) =>
        value >= min && value <= max
            ? value
            : throw new ArgumentOutOfRangeException(name, value, $"must be from {min:G6} to {max:G6}");
}
