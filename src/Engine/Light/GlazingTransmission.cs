using Runnel.Engine.Plan;
using Runnel.Engine.Quantities;

namespace Runnel.Engine.Light;

/// <summary>Share of daylight that passes a greenhouse's glazing, clean and square to the light.</summary>
public static class GlazingTransmission
{
    /// <summary>What frame, dirt and slanting sun take from the light that clean glazing would pass.</summary>
    public static Estimate Shade { get; } = Estimate.Of(
        15, 40, Units.Percent,
        new Origin("catalogue:transmission/shade", "Lost to frame, dirt and slanting sun", OriginKind.Catalogue,
            "from memory: frame 5 to 15 %, dirt 5 to 10 %, slanting sun; a whole greenhouse passes 35 to 70 % (Torres and Lopez, Purdue HO-238-W)"),
        25);

    /// <summary>Transmission of a glazing.</summary>
    /// <param name="glazing">Kind of glazing.</param>
    /// <returns>Share, %, as a range with its source.</returns>
    /// <exception cref="ArgumentOutOfRangeException">No such kind.</exception>
    public static Estimate Of(Glazing glazing) => glazing switch
    {
        Glazing.SingleGlass => Row(glazing, 85, 91, 88, "National Greenhouse Manufacturers Association, glazing note: 88 %; others 85 to 91 %"),
        Glazing.DoubleGlass => Row(glazing, 70, 80, 77, "National Greenhouse Manufacturers Association, glazing note: 77 %; others 70 to 80 %"),
        Glazing.TwinWallPolycarbonate => Row(glazing, 78, 82, 80, "Sanford, Extension Foundation, greenhouse energy course, unit 2.6: 78 to 82 %"),
        Glazing.SingleFilm => Row(glazing, 80, 90, 87, "grower's guides: 80 to 90 %; from memory NRAES-33: 87 to 90 %"),
        Glazing.DoubleFilm => Row(glazing, 60, 80, 76, "grower's guides: 60 to 80 %; from memory NRAES-33: 75 to 80 %"),
        _ => throw new ArgumentOutOfRangeException(nameof(glazing), glazing, "no such glazing"),
    };

    private static Estimate Row(Glazing glazing, double low, double high, double likely, string source) => Estimate.Of(
        low, high, Units.Percent,
        new Origin($"catalogue:transmission/{glazing}", "Transmission of the glazing", OriginKind.Catalogue, source), likely);
}
