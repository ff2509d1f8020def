using Runnel.Engine.Plan;
using Runnel.Engine.Quantities;

namespace Runnel.Engine.Light;

/// <summary>Photons for each joule of electricity, whole lamp, by kind: for lamps whose box tells neither lumens nor photons.</summary>
public static class TypicalEfficacy
{
    private const string Nelson = "Nelson and Bugbee 2014, PLoS ONE 9(6), e99010";
    private const string LampTable = "a UK table of lamps in lm/W of circuit power, divided by the lux for each µmol/m²/s";

    /// <summary>Typical efficacy of a kind of lamp.</summary>
    /// <param name="kind">Kind of lamp.</param>
    /// <returns>µmol/J, as a range with its source.</returns>
    /// <exception cref="ArgumentOutOfRangeException">No such kind.</exception>
    public static Estimate Of(LampKind kind) => kind switch
    {
        LampKind.WhiteLed => Row(kind, 1.2, 2.2, 1.6, "from memory: household LED lamps of 85 to 140 lm/W, divided by 69 lx for each µmol/m²/s"),
        LampKind.RedAndBlueLed => Row(kind, 0.9, 2.7, 1.7,
            $"{Nelson} (best 1.7; least 0.9 from memory); most products of the survey of Paucek et al. 2020, Sustainability, reach 2 to 3"),
        LampKind.CompactFluorescent => Row(kind, 0.6, 1.1, 0.84, LampTable + ": 47 to 82 lm/W"),
        LampKind.FluorescentTube => Row(kind, 0.7, 1.0, 0.85, $"{Nelson}: best fixture 0.95; {LampTable}, less a tenth to a fifth for the fixture"),
        LampKind.Sodium => Row(kind, 1.0, 1.7, 1.1, $"{Nelson}: mogul base 1.02, double-ended 1.70"),
        LampKind.MetalHalide => Row(kind, 0.8, 1.46, 1.1, $"{Nelson}: best ceramic lamp 1.46; {LampTable}: 86 to 95 lm/W"),
        LampKind.Incandescent => Row(kind, 0.2, 0.34, 0.25, "from memory: 10 to 17 lm/W, divided by 50 lx for each µmol/m²/s"),
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "no such kind of lamp"),
    };

    private static Estimate Row(LampKind kind, double low, double high, double likely, string source) => Estimate.Of(
        low, high, Units.MicromolePerJoule,
        new Origin($"catalogue:photon-efficacy/{kind}", "Photons for each joule", OriginKind.Catalogue, source), likely);
}
