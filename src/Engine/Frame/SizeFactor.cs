namespace Runnel.Engine.Frame;

/// <summary>Size factor C_F of visually graded dimension lumber: narrow pieces are stronger for their size than wide ones.</summary>
/// <remarks>Source: NELMA grading rules, table A (No. 2 and better), which gives the NDS Supplement's factors by nominal width; a width in between counts as
/// the next wider. Not for southern pine, whose values hold it already, nor for posts and timbers.</remarks>
public static class SizeFactor
{
    // Actual inches with a hair for rounding: a piece of 90 mm is sold where a 2x4 of 89 mm is.
    private static readonly (double Depth, double Thin, double Thick, double Compression)[] Table =
    [
        (3.55, 1.5, 1.5, 1.15), (4.55, 1.4, 1.4, 1.1), (5.55, 1.3, 1.3, 1.1), (7.3, 1.2, 1.3, 1.05), (9.3, 1.1, 1.2, 1.0), (11.3, 1.0, 1.1, 1.0),
    ];

    /// <summary>On bending.</summary>
    /// <param name="size">Actual size.</param>
    /// <returns>C_F, from 0.9 to 1.5.</returns>
    public static double Bending(LumberSize size)
    {
        ArgumentNullException.ThrowIfNull(size);
        var thick = size.Thickness > 0.088;
        foreach (var row in Table)
        {
            if (size.Depth / 0.0254 <= row.Depth)
            {
                return thick ? row.Thick : row.Thin;
            }
        }
        return thick ? 1.0 : 0.9;
    }

    /// <summary>On compression along the grain.</summary>
    /// <param name="size">Actual size.</param>
    /// <returns>C_F, from 0.9 to 1.15.</returns>
    public static double Compression(LumberSize size)
    {
        ArgumentNullException.ThrowIfNull(size);
        foreach (var row in Table)
        {
            if (size.Depth / 0.0254 <= row.Depth)
            {
                return row.Compression;
            }
        }
        return 0.9;
    }
}
