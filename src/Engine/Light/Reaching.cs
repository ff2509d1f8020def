using Runnel.Engine.Plan;
using Runnel.Engine.Quantities;

namespace Runnel.Engine.Light;

/// <summary>Share of lamps' photons that reaches a bed, worked out from how they hang.</summary>
public static class Reaching
{
    private const int Cells = 24;
    private const double LongestTube = 1.2;

    /// <summary>Share of one small matt lamp over the middle of a bed.</summary>
    /// <param name="length">Length of the bed, m, from 0.05 to 100.</param>
    /// <param name="width">Width of the bed, m, from 0.05 to 100.</param>
    /// <param name="height">Height of the lamp above the leaves, m, from 0.01 to 100.</param>
    /// <returns>Share, %.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>s = 4 F(L/2, W/2, h): what a small matt lamp sends to a rectangle is what it would get from it. Source: reciprocity.</remarks>
    public static double OfOne(double length, double width, double height) =>
        400 * DiffuseRectangle.CornerFactor(
            Range.Within(length, BedOutline.MinSide, BedOutline.MaxSide) / 2,
            Range.Within(width, BedOutline.MinSide, BedOutline.MaxSide) / 2,
            Range.Within(height, PointSource.MinHeight, PointSource.MaxHeight));

    /// <summary>Share for lamps of a known spread.</summary>
    /// <param name="bed">The bed.</param>
    /// <param name="count">How many lamps, from 1 to 1000, spread evenly over it.</param>
    /// <param name="height">Height above the leaves, m: see <see cref="LightMap.CanMap"/>.</param>
    /// <param name="emitter">How a lamp spreads its photons.</param>
    /// <param name="curtains">White curtains on all sides, or null.</param>
    /// <returns>Share, %, from 0 to 100.</returns>
    /// <exception cref="ArgumentException">Outside those ranges, or the bed cannot be mapped.</exception>
    public static double Of(BedOutline bed, int count, double height, Emitter emitter, Curtains? curtains = null) =>
        Math.Clamp(100 * LightMap.Of(new(bed, LampPlacement.Even(bed, count), height, emitter, 1, curtains), Cells, Cells).Share, 0, 100);

    /// <summary>Share for lamps of which only the kind is known, as a range.</summary>
    /// <param name="bed">The bed.</param>
    /// <param name="count">How many lamps, from 1 to 1000, spread evenly over it.</param>
    /// <param name="height">Height above the leaves, m: see <see cref="LightMap.CanMap"/>.</param>
    /// <param name="kind">Kind of lamp.</param>
    /// <param name="bareLamp">True if the photons are those of the bare lamp, as a box's lumens are, so that a fitting takes its part.</param>
    /// <param name="curtains">White curtains on all sides, or null.</param>
    /// <exception cref="ArgumentException">Outside those ranges, or the bed cannot be mapped.</exception>
    /// <remarks>Geometry times what the fitting lets out, for the least, likely and greatest of <see cref="UsualFitting"/>. What it replaces
    /// is a guess for all lamps; what stays a guess is the fitting.</remarks>
    public static Estimate For(BedOutline bed, int count, double height, LampKind kind, bool bareLamp = false, Curtains? curtains = null)
    {
        ArgumentNullException.ThrowIfNull(bed);
        var fittings = UsualFitting(kind, Math.Min(LongestTube, bed.Length));
        var shares = fittings.Select(f => (bareLamp ? f.LetsOut : 1) * Of(bed, count, height, f.Emitter, curtains)).ToList();
        return Estimate.Of(shares.Min(), shares.Max(), Units.Percent,
            new Origin($"catalogue:reaching/{kind}", "Share reaching the leaves", OriginKind.Catalogue,
                $"worked out from bed, lamp count and height, lamps spread evenly{(curtains is null ? "" : ", white curtains")}; "
                + "the kind of fitting is a guess, from a bare or wide lamp to a narrow beam"),
            shares.Order().ElementAt(1));
    }

    /// <summary>How lamps of a kind usually hang: widest, likely, narrowest; and the share of the lamp's light that leaves the fitting.</summary>
    /// <param name="kind">Kind of lamp.</param>
    /// <param name="tube">Length of a tube, m.</param>
    /// <remarks>Source: common practice, no source. Beams of 150, 120 and 90°; reflectors let out 70 to 85 % of a lamp's light.</remarks>
    public static IReadOnlyList<(Emitter Emitter, double LetsOut)> UsualFitting(LampKind kind, double tube = LongestTube) => kind switch
    {
        LampKind.WhiteLed or LampKind.RedAndBlueLed => [(new SpotEmitter(150), 1), (new SpotEmitter(), 1), (new SpotEmitter(90), 1)],
        LampKind.FluorescentTube => [(new TubeEmitter(tube), 1), (new StripEmitter(tube), 0.75), (new StripEmitter(tube), 0.85)],
        LampKind.CompactFluorescent or LampKind.Incandescent or LampKind.Sodium or LampKind.MetalHalide =>
            [(new BulbEmitter(), 1), (new SpotEmitter(), 0.75), (new SpotEmitter(100), 0.85)],
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "no such kind of lamp"),
    };
}
