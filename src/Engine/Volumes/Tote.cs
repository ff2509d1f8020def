namespace Runnel.Engine.Volumes;

/// <summary>Height of the water in a full tote (intermediate bulk container) that is known only by its volume.</summary>
public static class Tote
{
    /// <summary>Length of the pallet under a tote, m.</summary>
    public const double Length = 1.2;

    /// <summary>Width of the pallet under a tote, m.</summary>
    public const double Width = 1.0;

    internal const double MinVolume = 300;
    internal const double MaxVolume = 1500;

    /// <summary>Height that gives the volume on the whole pallet.</summary>
    /// <param name="volume">What it holds when full, L, from 300 to 1500.</param>
    /// <returns>Height, m.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    /// <remarks>
    /// H = V / (1.2 m × 1.0 m). Source: derived. The base is the pallet, which is wider than the bottle by its cage: on a bottle of
    /// 45 in × 37 in (1.07 m²) the same volume stands 12 % higher and its surface is 10 % smaller.
    /// </remarks>
    public static double HeightOnPallet(double volume) =>
        Range.Within(volume, MinVolume, MaxVolume) / Volume.LitresPerCubicMetre / (Length * Width);
}
