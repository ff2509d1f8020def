using Runnel.Engine.Plan;

namespace Runnel.Engine.Money;

/// <summary>Hours for which a tariff has no price.</summary>
/// <param name="Month">0 for January.</param>
/// <param name="Days">On which days of that month.</param>
/// <param name="At">From when until when; 00:00 to 00:00 is the whole day.</param>
/// <param name="Hours">How many hours that makes in the month.</param>
public sealed record PriceGap(int Month, DayKind Days, HourSpan At, double Hours)
{
    /// <summary>"weekends 03:00 to 05:00 in July".</summary>
    public override string ToString()
    {
        var days = Days switch
        {
            DayKind.All => "every day",
            DayKind.Weekdays => "weekdays",
            DayKind.Weekends => "weekends",
        };
        var at = At.From == At.To ? "all day" : $"{At.From:HH\\:mm} to {At.To:HH\\:mm}";
        return $"{days} {at} in {CalendarDay.MonthNames[Month]}";
    }
}

/// <summary>Joins slots without a rate into stretches.</summary>
internal sealed class GapFinder(DaySlot[] slots)
{
    private readonly Dictionary<(int Month, HourSpan At), (bool Weekday, bool Weekend, double Hours)> _found = [];

    public void Note(int month, bool isWeekend, int[] rateOfSlot, int none)
    {
        for (var slot = 0; slot < slots.Length; slot++)
        {
            if (rateOfSlot[slot] != none)
            {
                continue;
            }
            var first = slot;
            var hours = 0.0;
            for (; slot < slots.Length && rateOfSlot[slot] == none; slot++)
            {
                hours += slots[slot].Hours;
            }
            var end = slot < slots.Length ? slots[slot].From : TimeOnly.MinValue;
            var key = (month, new HourSpan(slots[first].From, end));
            var before = _found.GetValueOrDefault(key);
            _found[key] = (before.Weekday || !isWeekend, before.Weekend || isWeekend, before.Hours + hours);
        }
    }

    public IReadOnlyList<PriceGap> Found() =>
    [
        .. from gap in _found
           orderby gap.Key.Month, gap.Key.At.From, gap.Key.At.To
           let days = !gap.Value.Weekend ? DayKind.Weekdays : gap.Value.Weekday ? DayKind.All : DayKind.Weekends
           select new PriceGap(gap.Key.Month, days, gap.Key.At, gap.Value.Hours),
    ];
}
