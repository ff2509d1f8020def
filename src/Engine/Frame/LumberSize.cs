using System.Globalization;
using System.Text.RegularExpressions;

namespace Runnel.Engine.Frame;

/// <summary>Actual size of a piece of lumber, read from the size it is sold by.</summary>
/// <param name="Thickness">The smaller side, m.</param>
/// <param name="Depth">The larger side, m.</param>
/// <param name="Nominal">True if it was sold by a nominal size in inches and the dressed size of PS 20 is taken.</param>
/// <param name="Source">Where the actual size comes from.</param>
public sealed partial record LumberSize(double Thickness, double Depth, bool Nominal, string Source)
{
    private const double Inch = 0.0254;

    // Nominal size, dressed size when dry, inches: lumber under 5 in thick.
    private static readonly Dictionary<double, double> Dressed = new()
    {
        [1] = 0.75,
        [1.25] = 1,
        [2] = 1.5,
        [3] = 2.5,
        [4] = 3.5,
        [5] = 4.5,
        [6] = 5.5,
        [8] = 7.25,
        [10] = 9.25,
        [12] = 11.25,
        [14] = 13.25,
        [16] = 15.25,
    };

    /// <summary>True for boards, which no structural grade covers: under 35 mm thick.</summary>
    public bool IsBoard => Thickness < 0.035;

    /// <summary>True for posts and timbers, 5 in and thicker: graded by rules of their own.</summary>
    public bool IsTimber => Thickness > 0.110;

    /// <summary>The actual size, or null when the text is none.</summary>
    /// <remarks>
    /// "2x4", "2 x 4 in": whole numbers of inches that PS 20 lists are nominal, and the dressed size is taken. "1.5 x 3.5 in", "45 x 90 mm",
    /// "4.5 x 9 cm": as written. Without a unit, numbers over 16 are millimetres.
    /// </remarks>
    public static LumberSize? Read(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (SizePattern().Match(text.Trim()) is not { Success: true } match
            || !double.TryParse(match.Groups["a"].Value, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var a)
            || !double.TryParse(match.Groups["b"].Value, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var b)
            || a <= 0 || b <= 0)
        {
            return null;
        }
        var unit = match.Groups["unit"].Value.ToLowerInvariant();
        var (thin, wide) = (Math.Min(a, b), Math.Max(a, b));
        return unit switch
        {
            "mm" => Written(thin, wide, 0.001),
            "cm" => Written(thin, wide, 0.01),
            "" when thin > 16 => Written(thin, wide, 0.001),
            _ => FromNominal(thin, wide) ?? (unit.Length == 0 ? null : Written(thin, wide, Inch)),
        };
    }

    private static LumberSize? Written(double thin, double wide, double factor) =>
        thin * factor is >= 0.005 && wide * factor is <= 0.6 ? new(thin * factor, wide * factor, false, "actual size as written in the plan") : null;

    private static LumberSize? FromNominal(double thin, double wide)
    {
        if (!Dressed.TryGetValue(thin, out var thickness) || !Dressed.TryGetValue(wide, out var depth))
        {
            return null;
        }
        if (thin >= 5)
        {
            (thickness, depth) = (thin - 0.5, wide - 0.5);
        }
        return new(thickness * Inch, depth * Inch, true, "American Softwood Lumber Standard, PS 20, dressed dry sizes");
    }

    [GeneratedRegex("""^(?<a>\d+(\.\d+)?)\s*(mm|cm|in|"|″)?\s*[x×X*]\s*(?<b>\d+(\.\d+)?)\s*(?<unit>mm|cm|in|"|″)?$""", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant | RegexOptions.IgnoreCase, 1000)]
    private static partial Regex SizePattern();
}
