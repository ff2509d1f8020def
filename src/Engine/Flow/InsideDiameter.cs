using System.Globalization;
using System.Text.RegularExpressions;
using Runnel.Engine.Plan;
using Runnel.Engine.Quantities;

namespace Runnel.Engine.Flow;

/// <summary>The bore behind a pipe's name. "25 mm PVC" is 25 mm outside; "1 in PVC" is neither 25.4 mm outside nor inside; a hose is named by its bore.</summary>
public static partial class InsideDiameter
{
    private const string Schedule40Source =
        "ASTM D1785 schedule 40: from outside diameter and least wall (C. Bell, fluids; Engineering ToolBox), to a pipe maker's average, whose wall "
        + "runs above the least";

    private const string MetricSource =
        "DIN 8062 as transcribed in a public table: outside diameter less twice the least wall, series 5 (about 16 bar) to series 4 (about 10 bar). "
        + "The columns of that copy were lost; check against the pipe";

    // Nominal, inch: outside diameter, least wall and average inside diameter, inch.
    private static readonly (double Nominal, double Outside, double Wall, double Average)[] Schedule40 =
    [
        (0.5, 0.840, 0.109, 0.608),
        (0.75, 1.050, 0.113, 0.810),
        (1, 1.315, 0.133, 1.033),
        (1.25, 1.660, 0.140, 1.364),
        (1.5, 1.900, 0.145, 1.592),
        (2, 2.375, 0.154, 2.049),
        (2.5, 2.875, 0.203, 2.445),
        (3, 3.500, 0.216, 3.042),
        (4, 4.500, 0.237, 3.998),
    ];

    // Outside diameter, wall of series 4 and of series 5, mm. The smallest has one wall.
    private static readonly (double Outside, double Thin, double Thick)[] Metric =
    [
        (20, 1.5, 1.5),
        (25, 1.5, 1.9),
        (32, 1.8, 2.4),
        (40, 1.9, 3.0),
        (50, 2.4, 3.7),
        (63, 3.0, 4.7),
        (75, 3.6, 5.6),
        (90, 4.3, 6.7),
        (110, 5.3, 8.2),
    ];

    /// <summary>Inside diameter of a pipe, with how far it may be off and where that is from.</summary>
    /// <param name="size">Nominal size and material, as the plan gives it.</param>
    /// <returns>Inside diameter. A default where no table knows the pipe: a guess, and it says so.</returns>
    public static Estimate Of(PipeSize size)
    {
        ArgumentNullException.ThrowIfNull(size);
        var inch = InInches().IsMatch(size.Text);
        if (IsHose(size.Material))
        {
            return Bore(size, 0.95 * size.Nominal, size.Nominal, 1.03 * size.Nominal, OriginKind.Catalogue,
                "common practice, no source: a hose is named by its bore; soft hose is pressed oval and stretched over its barbs");
        }
        if (inch && Schedule40.FirstOrDefault(p => Is(size.Nominal, p.Nominal * 0.0254)) is { Nominal: > 0 } us && IsVinyl(size.Material))
        {
            return Bore(size, us.Average * 0.0254, us.Average * 0.0254, MinimumWall(us.Outside, us.Wall), OriginKind.Catalogue, Schedule40Source);
        }
        if (!inch && Metric.FirstOrDefault(p => Is(size.Nominal, p.Outside / 1000)) is { Outside: > 0 } metric && IsVinyl(size.Material))
        {
            var (thick, thin) = ((metric.Outside - 2 * metric.Thick) / 1000, (metric.Outside - 2 * metric.Thin) / 1000);
            return Bore(size, thick, (thick + thin) / 2, thin, OriginKind.Catalogue, MetricSource);
        }
        return inch
            ? Bore(size, 0.95 * size.Nominal, size.Nominal, 1.05 * size.Nominal, OriginKind.Default,
                "common practice, no source: this pipe is in no table here; measure its bore")
            : Bore(size, 0.80 * size.Nominal, 0.86 * size.Nominal, 0.92 * size.Nominal, OriginKind.Default,
                "common practice, no source: this pipe is in no table here, taken as outside size less its wall; measure its bore");
    }

    /// <summary>Schedule 40 inside diameter from outside diameter and least wall, m: the bore that friction tables of that pipe are printed for.</summary>
    /// <param name="nominalInches">Nominal size, inch: 0.5, 0.75, 1, 1.25, 1.5, 2, 2.5, 3 or 4.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such size.</exception>
    public static double Schedule40FromMinimumWall(double nominalInches)
    {
        foreach (var pipe in Schedule40)
        {
            if (Is(nominalInches, pipe.Nominal))
            {
                return MinimumWall(pipe.Outside, pipe.Wall);
            }
        }
        throw new ArgumentOutOfRangeException(nameof(nominalInches), nominalInches, "no such schedule 40 size");
    }

    internal static bool IsHose(string material) =>
        material.Contains("hose", StringComparison.OrdinalIgnoreCase) || material.Contains("tube", StringComparison.OrdinalIgnoreCase)
        || material.Contains("tubing", StringComparison.OrdinalIgnoreCase);

    internal static bool IsCorrugated(string material) =>
        material.Contains("corrugated", StringComparison.OrdinalIgnoreCase) || material.Contains("ribbed", StringComparison.OrdinalIgnoreCase);

    private static bool IsVinyl(string material) =>
        material.Length == 0 || material.Contains("PVC", StringComparison.OrdinalIgnoreCase) || material.Contains("ABS", StringComparison.OrdinalIgnoreCase);

    private static double MinimumWall(double outside, double wall) => Math.Round((outside - 2 * wall) * 0.0254, 7);

    private static bool Is(double value, double table) => Math.Abs(value - table) < 0.004 * table;

    private static Estimate Bore(PipeSize size, double low, double likely, double high, OriginKind kind, string source) =>
        new(low, likely, high, Units.Millimetre,
            new(string.Create(CultureInfo.InvariantCulture, $"catalogue:pipes/{size.Text}"), $"Inside diameter of {size.Text}", kind, source));

    [GeneratedRegex("""(?<=[\d\s])(in|inch|inches)\b|["″”]""", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex InInches();
}
