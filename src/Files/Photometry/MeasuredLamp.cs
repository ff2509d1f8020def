using Runnel.Engine.Light;

namespace Runnel.Files.Photometry;

/// <summary>Edition of LM-63 that a file follows.</summary>
public enum Lm63Edition
{
    Y1986,
    Y1991,
    Y1995,
    Y2002,
    Y2019,
}

/// <summary>A lamp as measured.</summary>
/// <param name="Edition">Edition of the standard.</param>
/// <param name="Keywords">Keywords and what follows them, in the order of the file; label lines of 1986 have an empty name.</param>
/// <param name="Lamps">How many light sources are in it.</param>
/// <param name="LumensEach">Rated lumens of each, lm; null for absolute photometry.</param>
/// <param name="Factor">What the file's intensities were multiplied by: multiplier, ballast factor and, before 2002, ballast-lamp factor.</param>
/// <param name="Watts">Electric power, W; 0 if not told.</param>
/// <param name="Width">Width of the opening, m.</param>
/// <param name="Length">Length of the opening, m.</param>
/// <param name="Height">Height of the opening, m.</param>
/// <param name="IsRound">True if the opening is round.</param>
/// <param name="Table">Intensities all around, cd, multiplied.</param>
/// <param name="Tilt">How it changes when the lamp is tilted, or null.</param>
public sealed record MeasuredLamp(
    Lm63Edition Edition, IReadOnlyList<(string Name, string Text)> Keywords, int Lamps, double? LumensEach, double Factor, double Watts,
    double Width, double Length, double Height, bool IsRound, IntensityTable Table, LampTilt? Tilt)
{
    /// <summary>Light given off, lm: the sum over the table.</summary>
    public double Lumens => Table.Flux;

    /// <summary>Light given off for each watt, lm/W; null if the watts are not told.</summary>
    public double? Efficacy => Watts > 0 ? Lumens / Watts : null;

    /// <summary>Share of the light sources' lumens that leaves the lamp; null for absolute photometry.</summary>
    public double? LetsOut => LumensEach is { } each ? Lumens / (each * Lamps) : null;

    /// <summary>Greatest dimension of the opening, m: five times that is near enough to a point.</summary>
    public double Size => IsRound ? Math.Max(Width, Length) : Math.Sqrt(Width * Width + Length * Length);

    /// <summary>The lamp as a map takes it.</summary>
    /// <exception cref="ArgumentException">It gives no light.</exception>
    public TableEmitter Emitter() => new(Table, Size);
}

/// <summary>How a lamp's light changes with its tilt.</summary>
/// <param name="Geometry">1: base up or down as it hangs straight; 2 and 3: level, turned about its axis or not.</param>
/// <param name="Angles">Tilt, °, rising.</param>
/// <param name="Factors">Share of its light at those.</param>
public sealed record LampTilt(int Geometry, IReadOnlyList<double> Angles, IReadOnlyList<double> Factors)
{
    /// <summary>Share at a tilt, °, straight between the angles, the nearest beyond them. A lamp that hangs straight has its table as it stands.</summary>
    public double At(double angle)
    {
        var i = 0;
        while (i < Angles.Count && Angles[i] < angle)
        {
            i++;
        }
        return i == 0 ? Factors[0]
            : i == Angles.Count ? Factors[^1]
            : Factors[i - 1] + (angle - Angles[i - 1]) / (Angles[i] - Angles[i - 1]) * (Factors[i] - Factors[i - 1]);
    }
}
