namespace Runnel.Engine.Money;

/// <summary>One block of a price: the kilowatt hours of a month up to a limit.</summary>
/// <param name="UpToKwhInMonth">The limit, kWh each month, counted from the first kilowatt hour; infinite for the last block.</param>
/// <param name="PricePerKwh">Money for each kWh in it; may be negative.</param>
public readonly record struct PriceBlock(double UpToKwhInMonth, double PricePerKwh);

/// <summary>What a kilowatt hour costs at one rate: one price, or a price for each block of the month's use.</summary>
public sealed class EnergyPrice
{
    private readonly PriceBlock[] _blocks;

    private EnergyPrice(PriceBlock[] blocks) => _blocks = blocks;

    /// <summary>One price for every kilowatt hour.</summary>
    /// <param name="pricePerKwh">Money/kWh; may be negative.</param>
    public static EnergyPrice Flat(double pricePerKwh) => InBlocks([new(double.PositiveInfinity, pricePerKwh)]);

    /// <summary>Prices in blocks that a month's use fills one after the other.</summary>
    /// <param name="blocks">
    /// At least one. The last has no upper limit, whatever it says. A block whose limit is not above those before it is empty:
    /// limits that were drawn from ranges may cross.
    /// </param>
    /// <exception cref="ArgumentException">No block, a price that is not finite, or a limit that is negative or not a number.</exception>
    public static EnergyPrice InBlocks(IReadOnlyList<PriceBlock> blocks)
    {
        ArgumentNullException.ThrowIfNull(blocks);
        if (blocks.Count == 0)
        {
            throw new ArgumentException("needs at least one block", nameof(blocks));
        }
        foreach (var block in blocks)
        {
            if (!double.IsFinite(block.PricePerKwh) || !(block.UpToKwhInMonth >= 0))
            {
                throw new ArgumentException($"{block} is no block: the price must be finite, the limit 0 or more", nameof(blocks));
            }
        }
        PriceBlock[] copy = [.. blocks];
        copy[^1] = copy[^1] with { UpToKwhInMonth = double.PositiveInfinity };
        return new(copy);
    }

    /// <summary>
    /// Mean price of a month's kilowatt hours that come on top of others: (cost of all − cost of the others) ÷ the kilowatt hours on
    /// top.
    /// </summary>
    /// <param name="othersKwh">What the others use in the month at this rate, kWh.</param>
    /// <param name="onTopKwh">What comes on top, kWh; with 0, the price of the very next bit is given.</param>
    /// <param name="limitShare">Share of each limit that holds in this month, 0 to 1: see <see cref="HourCalendar.LimitShare"/>.</param>
    /// <returns>Money/kWh.</returns>
    public double Marginal(double othersKwh, double onTopKwh, double limitShare = 1)
    {
        var top = othersKwh + onTopKwh;
        var (filled, cost, last) = (0.0, 0.0, _blocks.Length - 1);
        for (var i = 0; i <= last; i++)
        {
            var limit = i == last ? double.PositiveInfinity : _blocks[i].UpToKwhInMonth * limitShare;
            if (limit <= filled)
            {
                continue;
            }
            // Also what keeps a flat price free of rounding: nothing is added up when all lies in one block.
            if (othersKwh >= filled && othersKwh < limit && top <= limit)
            {
                return _blocks[i].PricePerKwh;
            }
            cost += Math.Max(0, Math.Min(top, limit) - Math.Max(othersKwh, filled)) * _blocks[i].PricePerKwh;
            filled = limit;
        }
        return cost / onTopKwh;
    }
}
