namespace Runnel.Engine.Light;

/// <summary>Matt white curtains on all four sides of a bed, from the leaves up to the lamps.</summary>
/// <param name="Reflectance">Share of the photons that they throw back, %, from 0 to 98: white film about 85, painted board 80.</param>
/// <remarks>
/// Model: the walls are one matt surface, evenly lit. Light that misses the bed meets them; what they throw back goes to the bed, to the
/// other walls and out at the top by view factors; leaves and ceiling throw nothing back. The closed enclosure gives every place of the
/// bed 1 − F(top) of the walls' light. Source: radiation exchange in enclosures, in every text on heat transfer. Error: tests trace
/// single photons in beds of 0.5 to 3 m and find the share within 2 points while the lamps hang no higher than two thirds of the bed's
/// shorter side (see <see cref="Hold"/>); in a shaft it is too high, by 4 points at one side and 10 at 1.7 sides. How white, wrinkled and gapless a curtain is comes
/// on top. Not for: mirror film; curtains that end above the leaves or below the
/// lamps; telling how the light lies near a wall, which in truth is brighter than the even model says.
/// </remarks>
public sealed record Curtains(double Reflectance)
{
    internal const double MaxReflectance = 98;

    /// <summary>Share of the photons that they throw back, %.</summary>
    public double Reflectance { get; } = Range.Within(Reflectance, 0, MaxReflectance);

    /// <summary>Share of a bed's light with curtains.</summary>
    /// <param name="direct">Share of the lamps' photons that falls on the bed directly, %, from 0 to 100.</param>
    /// <param name="reflectance">Share that the curtains throw back, %, from 0 to 98.</param>
    /// <param name="length">Length of the bed, m, from 0.05 to 100.</param>
    /// <param name="width">Width of the bed, m, from 0.05 to 100.</param>
    /// <param name="height">Height of lamps and curtains above the leaves, m, from 0.01 to 100.</param>
    /// <returns>Share of the lamps' photons that reaches the bed, %.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>s = s₀ + (1 − s₀) ρ F_wb / (1 − ρ F_ww), F_wb = A_b (1 − F_bt) / A_w, F_ww = 1 − 2 F_wb. For lamps whose light all goes
    /// down. See <see cref="Curtains"/> for source and error.</remarks>
    public static double Share(double direct, double reflectance, double length, double width, double height)
    {
        var s = Range.Within(direct, 0, 100);
        var rho = Range.Within(reflectance, 0, MaxReflectance) / 100;
        Range.Within(length, BedOutline.MinSide, BedOutline.MaxSide);
        Range.Within(width, BedOutline.MinSide, BedOutline.MaxSide);
        Range.Within(height, PointSource.MinHeight, PointSource.MaxHeight);
        var toBed = ToBed(length, width, height);
        return Math.Min(100, s + (100 - s) * Thrown(rho, toBed) * toBed);
    }

    /// <summary>Share of the walls' light that meets the bed, which is also what leaves at the top.</summary>
    internal static double ToBed(double length, double width, double height) =>
        Math.Clamp(length * width * (1 - DiffuseRectangle.Facing(length, width, height)) / WallArea(length, width, height), 0, 0.5);

    /// <summary>True while the model holds: lamps no higher than two thirds of the bed's shorter side. Above that it promises too much.</summary>
    public static bool Hold(BedOutline bed, double height)
    {
        ArgumentNullException.ThrowIfNull(bed);
        return height <= 0.67 * Math.Min(bed.Length, bed.Width);
    }

    internal static double WallArea(double length, double width, double height) => 2 * (length + width) * height;

    /// <summary>What walls give off in all, for each photon that first meets them.</summary>
    internal static double Thrown(double rho, double toBed) => rho / (1 - rho * (1 - 2 * toBed));
}
