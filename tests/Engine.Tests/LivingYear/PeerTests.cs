using System.Diagnostics;
using System.Text.Json;
using System.Text.Json.Serialization;
using Runnel.Engine.Year;

namespace Runnel.Engine.Tests.LivingYear;

/// <summary>Derived: the same equations, written a second time and solved by SciPy's LSODA at a tolerance of 1e-7.</summary>
public sealed class PeerTests
{
    private const double OfTotals = 0.005;
    private const double OfRange = 0.02;

    private static readonly JsonSerializerOptions Json = new() { NumberHandling = JsonNumberHandling.AllowNamedFloatingPointLiterals };

    public static TheoryData<string> Loops => ["indoor", "greenhouse", "start"];

    /// <summary>Forty days of each loop; the bench compares the whole year, which takes Python minutes.</summary>
    [Theory]
    [MemberData(nameof(Loops))]
    public void Scipy_gets_the_same_curves_and_totals(string which)
    {
        var input = which switch
        {
            "indoor" => SampleLoops.Indoor with { Hours = 40 * 24, Fish = [SampleLoops.Carp with { Weight = 150, HarvestAt = 190 }] },
            "greenhouse" => SampleLoops.Greenhouse with { Hours = 40 * 24, Fish = [SampleLoops.Tilapia with { Weight = 120 }] },
            _ => SampleLoops.Indoor with { Hours = 40 * 24, Loop = SampleLoops.Indoor.Loop with { BacteriaAtStart = 1e-4, NitrateAtStart = 1 } },
        };
        var ours = YearRun.Of(input);
        using var peer = Solve(input);
        Assert.Equal(input.Hours, ours.HoursRun);

        var totals = peer.RootElement.GetProperty("totals");
        Close("Feed", ours.Feed);
        Close("CropPicked", ours.CropPicked);
        Close("FishHarvested", ours.FishHarvested);
        Close("Base", ours.Base);
        Close("ToppedUp", ours.ToppedUp);
        Close("Heat", ours.Heat);
        Close("Evaporated", ours.Evaporated);
        Close("Transpired", ours.Transpired);
        Close("TakenUp", ours.Nitrogen.Plants);
        Close("Lost", ours.Nitrogen.Lost);
        if (which == "indoor")
        {
            // The case must reach what it is there to compare.
            Assert.True(ours.FishHarvested > 0 && ours.CropPicked > 0 && ours.Heat > 0 && ours.Nitrogen.Lost > 0);
        }

        var curves = peer.RootElement.GetProperty("curves");
        Follow("TankTemperature", ours.Series.TankTemperature);
        Follow("BedTemperature", ours.Series.BedTemperature);
        Follow("Oxygen", ours.Series.Oxygen);
        Follow("BedOxygen", ours.Series.BedOxygen);
        Follow("Ammonia", ours.Series.Ammonia);
        Follow("Nitrite", ours.Series.Nitrite);
        Follow("Nitrate", ours.Series.Nitrate);
        Follow("Alkalinity", ours.Series.Alkalinity);
        Follow("PH", ours.Series.PH);
        Follow("Solids", ours.Series.Solids);
        Follow("Water", ours.Series.Water);
        Follow("FishMass", ours.Series.FishMass);
        Follow("CropMass", ours.Series.CropMass);

        void Close(string name, double value)
        {
            var other = totals.GetProperty(name).GetDouble();
            TestContext.Current.SendDiagnosticMessage($"{which} {name}: {value:G6} {other:G6} {value / other - 1:P4}");
            Assert.True(Math.Abs(value - other) <= OfTotals * Math.Abs(other) + 1e-9, $"{name}: {value} here, {other} there");
        }

        void Follow(string name, double[] curve)
        {
            double[] other = [.. curves.GetProperty(name).EnumerateArray().Select(e => e.GetDouble())];
            var range = other.Max() - other.Min();
            var worst = curve.Zip(other, (a, b) => Math.Abs(a - b)).Max();
            TestContext.Current.SendDiagnosticMessage($"{which} {name}: {worst / range:P4} of {range:G5}");
            Assert.True(worst <= OfRange * range, $"{name}: off by {worst} of a range of {range}");
        }
    }

    private static JsonDocument Solve(YearInput input)
    {
        var script = Path.Combine(Repository.Root, "tests", "peers", "scipy", "year_peer.py");
        var folder = Directory.CreateTempSubdirectory("runnel-year-");
        try
        {
            var (source, target) = (Path.Combine(folder.FullName, "input.json"), Path.Combine(folder.FullName, "output.json"));
            File.WriteAllText(source, JsonSerializer.Serialize(input, Json));
            var start = new ProcessStartInfo(Environment.GetEnvironmentVariable("RUNNEL_PYTHON") ?? "/usr/bin/python3", [script, source, target])
            {
                RedirectStandardError = true,
                UseShellExecute = false,
            };
            using var process = Process.Start(start)!;
            var said = process.StandardError.ReadToEnd();
            process.WaitForExit();
            Assert.True(process.ExitCode == 0,
                $"The second solver did not run. It needs SciPy: apt-get install -y python3-scipy (see tests/peers/scipy/README.md). It said: {said}");
            return JsonDocument.Parse(File.ReadAllText(target));
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
