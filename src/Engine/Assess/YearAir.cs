using Runnel.Engine.Plan;
using Runnel.Engine.Year;

namespace Runnel.Engine.Assess;

/// <summary>Hour by hour what surrounds the loop, for the calendar year from 1 January.</summary>
/// <param name="Air">Air around the loop (in the room or greenhouse), °C.</param>
/// <param name="Humidity">Relative humidity there, %.</param>
/// <param name="Sun">Sun on the beds, mol/m² each hour; null where none gets in.</param>
/// <param name="From">Where this comes from, in words.</param>
public sealed record YearAir(double[] Air, double[] Humidity, double[]? Sun, string From)
{
    /// <summary>Made from the months that the plan or its climate gives: each day of a month like the other, without heat waves or cold nights.</summary>
    /// <returns>Null when the plan does not say how warm the air is.</returns>
    public static YearAir? FromMonths(LoopPlan plan, Shelf shelf)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(shelf);
        var desk = new Desk(plan, shelf, e => e.Likely);
        var vessels = Vessels.Measure(desk);
        var warmth = Warmth.Read(desk, null, vessels);
        if (warmth.Air is not { } air)
        {
            return null;
        }
        Lighting.Read(desk, vessels, Living.Read(desk, vessels), warmth);
        // Days swing more where the sun gets in; half-spans are common practice, no source.
        var swing = plan.Place.Setting switch { Setting.Indoors => 0.5, Setting.Greenhouse => 6, Setting.Outdoors => 4, _ => 0 };
        var latitude = warmth.Climate?.Latitude ?? plan.Place.Latitude?.Likely ?? 45;
        var sun = desk.Book.Find("light.sun.month.1") is null ? null : new double[YearInput.HoursOfYear];
        var (temperature, humidity) = (new double[YearInput.HoursOfYear], new double[YearInput.HoursOfYear]);
        for (var h = 0; h < YearInput.HoursOfYear; h++)
        {
            var month = Months.Of(h);
            temperature[h] = air[month].Si - swing * Math.Cos(2 * Math.PI * (h % 24 - 3) / 24.0);
            humidity[h] = desk.Take(plan.Place.Humidity).Si * 100;
            if (sun is not null)
            {
                var daily = desk.Book[$"light.sun.month.{month + 1}"].Si * 86400;
                sun[h] = daily * ShareOfDay(h, latitude);
            }
        }
        return new(temperature, humidity, sun, "months of the plan or its climate, each day like the other");
    }

    /// <summary>Share of a day's light that falls in an hour: half a sine between sunrise and sunset, which follow from latitude and declination.</summary>
    private static double ShareOfDay(int hour, double latitude)
    {
        var declination = 0.409 * Math.Sin(2 * Math.PI * (hour / 24 + 1) / 365 - 1.39);
        var half = Math.Acos(Math.Clamp(-Math.Tan(latitude * Math.PI / 180) * Math.Tan(declination), -0.99, 0.99)) * 12 / Math.PI;
        double Before(double clock) => 0.5 - 0.5 * Math.Cos(Math.PI * Math.Clamp((clock - 12 + half) / (2 * half), 0, 1));
        return Before(hour % 24 + 1) - Before(hour % 24);
    }
}
