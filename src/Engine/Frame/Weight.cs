namespace Runnel.Engine.Frame;

/// <summary>What stands on the stand and on the floor.</summary>
public static class Weight
{
    internal const double MaxMass = 1e6;
    internal const double MaxPieces = 1000;

    /// <summary>Standard gravity, m/s²: exact by definition.</summary>
    public const double Gravity = 9.80665;

    /// <summary>Mass of media whose gaps are full of water: a bed at the height of its flood, or whose drain has stopped.</summary>
    /// <param name="volume">Bulk volume of the media, L, from 0 to 1 000 000.</param>
    /// <param name="density">Bulk density, dry, kg/m³, from 5 to 3000.</param>
    /// <param name="voids">Share between the grains, %, from 0 to 100.</param>
    /// <returns>Mass, kg.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>m = V (ρ + 1000 ε). Source: definition of bulk density and porosity. Not for: porous grains such as expanded clay, which take up
    /// water themselves: add a tenth to a fifth (from memory).</remarks>
    public static double FloodedMedia(double volume, double density, double voids) =>
        Range.Within(volume, 0, 1e6) / 1000 * (Range.Within(density, 5, 3000) + 1000 * Range.Within(voids, 0, 100) / 100);

    /// <summary>Load on each length of the pieces that share a weight.</summary>
    /// <param name="mass">Mass that they carry, kg, from 0 to 1 000 000.</param>
    /// <param name="pieces">How many pieces share it, from 1 to 1000.</param>
    /// <param name="length">Length over which it lies on each, m, from 0.05 to 20.</param>
    /// <returns>Line load, N/m.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>w = m g/(n l).</remarks>
    public static double LineLoad(double mass, double pieces, double length) =>
        Gravity * Range.Within(mass, 0, MaxMass) / Range.Within(pieces, 1, MaxPieces) / Range.Within(length, Beam.MinSpan, Beam.MaxSpan);

    /// <summary>Load on each leg that shares a weight.</summary>
    /// <param name="mass">Mass that they carry, kg, from 0 to 1 000 000.</param>
    /// <param name="legs">How many legs share it, from 1 to 1000.</param>
    /// <returns>Load, N.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>P = m g/n.</remarks>
    public static double LegLoad(double mass, double legs) => Gravity * Range.Within(mass, 0, MaxMass) / Range.Within(legs, 1, MaxPieces);

    /// <summary>Load on each area of floor.</summary>
    /// <param name="mass">Mass, kg, from 0 to 1 000 000.</param>
    /// <param name="area">Floor that it stands on, m², from 0.001 to 10 000.</param>
    /// <returns>Load, kg/m².</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>q = m/A.</remarks>
    public static double FloorLoad(double mass, double area) => Range.Within(mass, 0, MaxMass) / Range.Within(area, 0.001, 1e4);
}
