namespace Runnel.Engine.Numerics;

/// <summary>
/// Seeded, evenly spread draws of many inputs at once: each input's range is cut into as many equal shares as there are draws and every
/// share is drawn from once.
/// </summary>
/// <remarks>Source: McKay, Beckman and Conover 1979, A comparison of three methods for selecting values of input variables,
/// Technometrics 21(2):239-245 (from memory). The generator under it is SplitMix64: integer arithmetic, so the same on every machine.</remarks>
public sealed class LatinHypercube
{
    private readonly double[][] _columns;

    /// <summary>Draws for a number of inputs.</summary>
    public LatinHypercube(int inputs, int draws, ulong seed)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(inputs);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(draws);
        Draws = draws;
        _columns = new double[inputs][];
        var random = new SplitMix64(seed);
        for (var i = 0; i < inputs; i++)
        {
            var column = new double[draws];
            for (var k = 0; k < draws; k++)
            {
                column[k] = (k + random.NextDouble()) / draws;
            }
            for (var k = draws - 1; k > 0; k--)
            {
                var other = random.NextBelow(k + 1);
                (column[k], column[other]) = (column[other], column[k]);
            }
            _columns[i] = column;
        }
    }

    /// <summary>How many draws.</summary>
    public int Draws { get; }

    /// <summary>Share, above 0 and below 1, of an input's distribution in a draw.</summary>
    public double this[int input, int draw] => _columns[input][draw];
}

/// <summary>A small seeded generator of 64 random bits a step.</summary>
/// <remarks>Source: Steele, Lea and Flood 2014, Fast splittable pseudorandom number generators, OOPSLA (constants from memory).</remarks>
public sealed class SplitMix64(ulong seed)
{
    private ulong _state = seed;

    /// <summary>The next 64 bits.</summary>
    public ulong Next()
    {
        _state += 0x9E3779B97F4A7C15;
        var z = _state;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
        return z ^ (z >> 31);
    }

    /// <summary>A number from 0, included, to 1, excluded.</summary>
    public double NextDouble() => (Next() >> 11) * (1.0 / (1UL << 53));

    /// <summary>A whole number from 0 to below a bound.</summary>
    public int NextBelow(int bound) => (int)(NextDouble() * bound);
}
