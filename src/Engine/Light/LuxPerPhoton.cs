using Runnel.Engine.Plan;
using Runnel.Engine.Quantities;

namespace Runnel.Engine.Light;

/// <summary>Lux for each µmol/m²/s of photons, by kind of lamp and colour temperature: what turns lumens into photons.</summary>
public static class LuxPerPhoton
{
    private const double Spread = 0.05;

    private const string ThimijanHeins =
        "Thimijan and Heins 1983, HortScience 18(6), 818-822, and later measurements published beside it";

    private const string Spectra =
        "integrated from the CIE 015:2018 illuminants with the CIE 1924 eye sensitivity; sources differ by 5 %";

    // Colour temperature, K, and lux for each µmol/m²/s.
    private static readonly (double Kelvin, double Lux)[] WhiteLed =
        [(2733, 67.0), (2998, 67.8), (4103, 69.7), (5109, 71.6), (6598, 69.4)];

    private static readonly (double Kelvin, double Lux)[] Triphosphor = [(2850, 78), (3800, 77), (5000, 74), (6500, 72.6)];

    /// <summary>The factor of a lamp.</summary>
    /// <param name="kind">Kind of lamp.</param>
    /// <param name="colourTemperature">Colour temperature, K, from 1000 to 20 000, or null when it is not known.</param>
    /// <returns>Lux for each µmol/m²/s, as a range with its source.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The colour temperature is outside that range, or not a number.</exception>
    public static Estimate Of(LampKind kind, double? colourTemperature = null)
    {
        var kelvin = colourTemperature is { } k ? Range.Within(k, 1000, 20000) : (double?)null;
        return kind switch
        {
            LampKind.WhiteLed => ByColour(kind, WhiteLed, kelvin, 69),
            LampKind.CompactFluorescent or LampKind.FluorescentTube => ByColour(kind, Triphosphor, kelvin, 76),
            LampKind.RedAndBlueLed => Row(kind, 7, 35, 9,
                "integrated from diodes of 450 nm (7.4) and 660 nm (8.3) with the CIE 1924 eye sensitivity; red of 630 nm gives 34: lumens say nothing here"),
            LampKind.Sodium => Row(kind, 77, 86, 82, ThimijanHeins + "; double-ended lamps 77, CIE HP1 86"),
            LampKind.MetalHalide => Row(kind, 59, 73, 71, ThimijanHeins + "; ceramic lamps 59 to 65"),
            LampKind.Incandescent => Row(kind, 49, 50.2, 50, ThimijanHeins + "; Deitzer 49.0; CIE illuminant A 50.1"),
            _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "no such kind of lamp"),
        };
    }

    private static Estimate ByColour(LampKind kind, (double Kelvin, double Lux)[] table, double? kelvin, double likely)
    {
        if (kelvin is { } k)
        {
            var lux = Interpolate(table, k);
            return Row(kind, lux * (1 - Spread), lux * (1 + Spread), lux, Spectra);
        }
        return Row(kind, table.Min(r => r.Lux) * (1 - Spread), table.Max(r => r.Lux) * (1 + Spread), likely, Spectra);
    }

    // Straight lines between the rows; beyond the ends the last row, since bluer or redder white has not been tabulated.
    private static double Interpolate((double Kelvin, double Lux)[] table, double kelvin)
    {
        if (kelvin <= table[0].Kelvin)
        {
            return table[0].Lux;
        }
        for (var i = 1; i < table.Length; i++)
        {
            if (kelvin <= table[i].Kelvin)
            {
                var share = (kelvin - table[i - 1].Kelvin) / (table[i].Kelvin - table[i - 1].Kelvin);
                return table[i - 1].Lux + share * (table[i].Lux - table[i - 1].Lux);
            }
        }
        return table[^1].Lux;
    }

    private static Estimate Row(LampKind kind, double low, double high, double likely, string source) => Estimate.Of(
        low, high, Units.LuxPerMicromole,
        new Origin($"catalogue:lux-per-photon/{kind}", "Lux for each µmol/m²/s", OriginKind.Catalogue, source), likely);
}
