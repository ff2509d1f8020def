namespace Runnel.App.Light;

/// <summary>Round steps that cut the light of a map into bands, so that a picture can be read off.</summary>
/// <param name="Step">Width of a band, µmol/m²/s.</param>
/// <param name="First">Number of the darkest band: it begins at First × Step.</param>
/// <param name="Count">How many bands.</param>
public readonly record struct LightBands(double Step, int First, int Count)
{
    private const int Most = 10;

    /// <summary>Ten bands at most, of 1, 2 or 5 times a power of ten.</summary>
    public static LightBands Of(double least, double greatest)
    {
        var span = Math.Max(greatest - least, 1e-3 * Math.Max(1e-6, Math.Abs(greatest)));
        var power = Math.Pow(10, Math.Floor(Math.Log10(span / Most)));
        foreach (var times in (ReadOnlySpan<double>)[1, 2, 5, 10, 20])
        {
            var step = times * power;
            var first = (int)Math.Floor(least / step + 1e-9);
            var count = (int)Math.Floor(greatest / step + 1e-9) - first + 1;
            if (count <= Most)
            {
                return new(step, first, count);
            }
        }
        return new(100 * power, (int)Math.Floor(least / (100 * power)), 2);
    }

    /// <summary>Which band a value lies in, from 0.</summary>
    public int At(double value) => Math.Clamp((int)Math.Floor(value / Step + 1e-9) - First, 0, Count - 1);

    /// <summary>Where a band begins, µmol/m²/s.</summary>
    public double From(int band) => (First + band) * Step;

    /// <summary>A band's place between dark and bright, from 0 to 1.</summary>
    public double Shade(int band) => Count == 1 ? 0.8 : (double)band / (Count - 1);
}
