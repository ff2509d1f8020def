using Runnel.Engine.Quantities;

namespace Runnel.Engine.Money;

/// <summary>What the electricity of some loads costs in each month of a year. Every amount of money includes the tax on electricity.</summary>
/// <remarks>
/// <para>Energy = power × hours: W × h ÷ 1000 = kWh, summed over the hours of each month at each rate; cost = kWh × price.</para>
/// <para>Blocks: the loads come on top of the other use of the house, so their cost is the bill with them minus the bill without
/// them, and each kilowatt hour of one rate and month costs the same whichever load uses it: no load is "the one" that tips the
/// house into the next block. Each rate with blocks fills blocks of its own with what is used at that rate. The other use is taken
/// to be even over all hours of the month, so that a rate gets its share of it by its hours. Limits are cut by
/// <see cref="HourCalendar.LimitShare"/> in a month that a season enters or leaves.</para>
/// <para>Plain arithmetic without a published source. Hours that no rate fits count as energy and cost nothing:
/// <see cref="HourCalendar.Gaps"/> tells of them.</para>
/// </remarks>
public sealed class ElectricityBill
{
    private readonly double[] _price;
    private readonly int _columns;

    private ElectricityBill(IReadOnlyList<LoadBill> loads, double[] price, int columns, double fixedInMonth, double taxShare)
    {
        Loads = loads;
        _price = price;
        _columns = columns;
        FixedInMonth = fixedInMonth * (1 + taxShare);
        var kwh = new double[12];
        var cost = new double[12];
        var tax = new double[12];
        for (var month = 0; month < 12; month++)
        {
            foreach (var load in loads)
            {
                kwh[month] += load.KwhInMonth[month];
                cost[month] += load.CostInMonth[month];
            }
            cost[month] += FixedInMonth;
            tax[month] = cost[month] - cost[month] / (1 + taxShare);
        }
        (KwhInMonth, CostInMonth, TaxInMonth) = (kwh, cost, tax);
    }

    /// <summary>Each load, in the order given.</summary>
    public IReadOnlyList<LoadBill> Loads { get; }

    /// <summary>Fixed charge of each month.</summary>
    public double FixedInMonth { get; }

    /// <summary>Energy of all loads in each month from January, kWh.</summary>
    public IReadOnlyList<double> KwhInMonth { get; }

    /// <summary>Cost of all loads and the fixed charge in each month from January.</summary>
    public IReadOnlyList<double> CostInMonth { get; }

    /// <summary>Tax contained in <see cref="CostInMonth"/>.</summary>
    public IReadOnlyList<double> TaxInMonth { get; }

    /// <summary>Energy of the year, kWh.</summary>
    public double KwhInYear => LoadBill.Sum(KwhInMonth);

    /// <summary>Cost of the year.</summary>
    public double CostInYear => LoadBill.Sum(CostInMonth);

    /// <summary>
    /// Money/kWh, before tax, that the loads pay in a month at a rate: the rate's price, or with blocks the mean of those they fall in.
    /// </summary>
    /// <param name="month">0 for January.</param>
    /// <param name="rate">Index of the rate; 0 money for <see cref="HourCalendar.Unpriced"/>.</param>
    public double PricePerKwh(int month, int rate) => _price[month * _columns + rate];

    /// <summary>Computes the bill.</summary>
    /// <param name="calendar">Hours of the year by the rates of the tariff.</param>
    /// <param name="loads">What takes electricity.</param>
    /// <param name="prices">Price of each rate, in the order of the tariff.</param>
    /// <param name="otherKwhInMonth">What the house uses besides, kWh each month; matters only for blocks.</param>
    /// <param name="fixedInMonth">Fixed charge that counts as the loop's, money each month, before tax; 0 when the house pays it anyway.</param>
    /// <param name="taxShare">Tax as a share of energy and fixed charge: 0.2 for 20 %.</param>
    /// <exception cref="ArgumentException">Not one price for each rate.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A negative or not finite amount.</exception>
    public static ElectricityBill Compute(
        HourCalendar calendar, IReadOnlyList<Load> loads, IReadOnlyList<EnergyPrice> prices,
        double otherKwhInMonth = 0, double fixedInMonth = 0, double taxShare = 0)
    {
        ArgumentNullException.ThrowIfNull(calendar);
        ArgumentNullException.ThrowIfNull(loads);
        ArgumentNullException.ThrowIfNull(prices);
        if (prices.Count != calendar.RateCount)
        {
            throw new ArgumentException($"{prices.Count} prices for {calendar.RateCount} rates", nameof(prices));
        }
        NotNegative(otherKwhInMonth, nameof(otherKwhInMonth));
        NotNegative(fixedInMonth, nameof(fixedInMonth));
        NotNegative(taxShare, nameof(taxShare));

        var columns = calendar.RateCount + 1;
        var all = new double[12 * columns];
        var ofLoad = new double[loads.Count][];
        for (var i = 0; i < loads.Count; i++)
        {
            ofLoad[i] = Kwh(calendar, loads[i]);
            for (var j = 0; j < all.Length; j++)
            {
                all[j] += ofLoad[i][j];
            }
        }

        var price = new double[12 * columns];
        for (var month = 0; month < 12; month++)
        {
            var hoursInMonth = YearCalendar.Length[month] * 24.0;
            for (var rate = 0; rate < prices.Count; rate++)
            {
                var others = otherKwhInMonth * calendar.Hours(month, rate) / hoursInMonth;
                price[month * columns + rate] =
                    prices[rate].Marginal(others, all[month * columns + rate], calendar.LimitShare(month, rate));
            }
        }

        var bills = new LoadBill[loads.Count];
        for (var i = 0; i < bills.Length; i++)
        {
            bills[i] = new(loads[i].Id, ofLoad[i], price, columns, taxShare);
        }
        return new(bills, price, columns, fixedInMonth, taxShare);
    }

    private static double[] Kwh(HourCalendar calendar, Load load)
    {
        var columns = calendar.RateCount + 1;
        var kwh = new double[12 * columns];
        for (var slot = 0; slot < calendar.Slots.Count; slot++)
        {
            var at = calendar.Slots[slot];
            var share = load.ShareOn(at.FromHour, at.ToHour);
            if (share == 0)
            {
                continue;
            }
            for (var month = 0; month < 12; month++)
            {
                var kilowatts = load.WattsWhileOn[month] / 1000 * share;
                var hours = calendar.HoursByRate(month, slot);
                for (var rate = 0; rate < columns; rate++)
                {
                    kwh[month * columns + rate] += kilowatts * hours[rate];
                }
            }
        }
        return kwh;
    }

    private static void NotNegative(double value, string name)
    {
        if (!(value >= 0 && double.IsFinite(value)))
        {
            throw new ArgumentOutOfRangeException(name, value, "must be 0 or more");
        }
    }
}

/// <summary>What one load's electricity costs; amounts include tax.</summary>
public sealed class LoadBill
{
    private readonly double[] _kwh;
    private readonly int _columns;

    internal LoadBill(string id, double[] kwh, double[] price, int columns, double taxShare)
    {
        Id = id;
        _kwh = kwh;
        _columns = columns;
        var energy = new double[12];
        var cost = new double[12];
        for (var i = 0; i < kwh.Length; i++)
        {
            energy[i / columns] += kwh[i];
            cost[i / columns] += kwh[i] * price[i] * (1 + taxShare);
        }
        (KwhInMonth, CostInMonth) = (energy, cost);
    }

    /// <summary>Name of the load.</summary>
    public string Id { get; }

    /// <summary>Energy of each month from January, kWh.</summary>
    public IReadOnlyList<double> KwhInMonth { get; }

    /// <summary>Cost of each month from January.</summary>
    public IReadOnlyList<double> CostInMonth { get; }

    /// <summary>Energy of the year, kWh.</summary>
    public double KwhInYear => Sum(KwhInMonth);

    /// <summary>Cost of the year.</summary>
    public double CostInYear => Sum(CostInMonth);

    /// <summary>Energy in a month at a rate, kWh; with <see cref="HourCalendar.Unpriced"/>, in hours without a price.</summary>
    /// <param name="month">0 for January.</param>
    /// <param name="rate">Index of the rate.</param>
    public double Kwh(int month, int rate) => _kwh[month * _columns + rate];

    internal static double Sum(IReadOnlyList<double> months)
    {
        var sum = 0.0;
        for (var i = 0; i < months.Count; i++)
        {
            sum += months[i];
        }
        return sum;
    }
}
