using CsCheck;
using Runnel.Engine.Levels;

namespace Runnel.Engine.Tests.Levels;

/// <summary>Loops with round numbers, worked out by hand, and random ones.</summary>
internal static class LoopSamples
{
    /// <summary>Two siphon beds of 1 m² and 20 cm over a sump of 1 m² x 50 cm, filled to 20 cm; a 5 L line. Half of each bed is void.</summary>
    public static WaterLoop Beds(double sumpHeight = 0.5, double sumpArea = 1, double sumpWater = 0.2) => new()
    {
        Basins =
        [
            Basin.Straight("sump", sumpArea, sumpHeight),
            Basin.Straight("bed one", 1, 0.3, 1) with { Media = 0.3, Voids = 0.5 },
            Basin.Straight("bed two", 1, 0.3, 1) with { Media = 0.3, Voids = 0.5 },
        ],
        Filled = [sumpWater, 0.1, 0.1],
        Outlets = [new(1, [0], 0.2, 0, OutletKind.Siphon), new(2, [0], 0.2, 0, OutletKind.Siphon)],
        Lifts = [new("pump", 0, [1, 2], 0.05, 0.005)],
    };

    /// <summary>A tank of 1 m² x 1 m on a stand, its mouth at 80 cm with 2 cm of head, over a sump of 0.5 m² x 60 cm filled to 30 cm.</summary>
    public static WaterLoop Tank(bool underWater = false, bool valve = false) => new()
    {
        Basins = [Basin.Straight("tank", 1, 1, 0.2), Basin.Straight("sump", 0.5, 0.6)],
        Filled = [0.82, 0.15],
        Outlets = [new(0, [1], 0.8, 0.02, Pipe: 0.002)],
        Lifts = [new("pump", 1, [0], 0.1, 0.003, underWater, valve)],
    };

    public static readonly Gen<WaterLoop> Any = Gen.Int[1, 6].SelectMany(n => Gen.Select(
        Basins(n).Array[n], Gen.Double[0, 1].Array[n], Outlets(n).Array[0, 7], Lifts(n).Array[0, 3],
        (basins, shares, outlets, lifts) => new WaterLoop
        {
            Basins = basins,
            Filled = [.. basins.Select((b, i) => b.Capacity * shares[i])],
            Outlets = outlets,
            Lifts = lifts,
        }));

    private static Gen<Basin> Basins(int n) => Gen.Select(
        Gen.Int[0, 2], Gen.Double[0.05, 3], Gen.Double[0.05, 1.5], Gen.OneOf(Gen.Const(0.0), Gen.Double[0, 1.5]), Gen.Int[1, 4], Gen.Double[0, 0.4],
        (form, size, height, bottom, count, media) => form switch
        {
            0 => Basin.Straight("v", size, height, bottom) with { Count = count },
            1 => Basin.Straight("v", size, height, bottom) with { Count = count, Media = media, Voids = 0.45 },
            _ => Basin.Lying("v", height, size, height / (1 + count % 2), bottom) with { Count = count },
        }).Select(Gen.Int[0, n], (basin, _) => basin);

    private static Gen<Outlet> Outlets(int n) => Gen.Select(
        Gen.Int[0, n - 1], Gen.Int[0, n - 1].Array[1, 2], Gen.OneOf(Gen.Const(0.0), Gen.Double[0, 1.6]), Gen.Double[0, 0.05], Gen.Enum<OutletKind>(), Gen.Double[0, 0.01],
        (from, to, mouth, head, kind, pipe) => new Outlet(from, [.. to.Distinct()], mouth, head, kind, 0.05, pipe));

    private static Gen<Lift> Lifts(int n) => Gen.Select(
        Gen.Int[0, 1], Gen.Int[0, n - 1], Gen.Int[0, n - 1].Array[1, 3], Gen.Double[0, 0.2], Gen.Double[0, 0.01], Gen.Bool, Gen.Bool,
        (pump, from, to, low, pipe, under, valve) => new Lift(pump == 0 ? "a" : "b", from, [.. to.Distinct()], low, pipe, under, valve));
}
