using System.Diagnostics;
using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;
using Runnel.Catalogue;
using Runnel.Engine.Assess;
using Runnel.Engine.Year;
using Runnel.Files;

// One year of each example, a thousand years, and SciPy on the same equations: medians and ratios, in one run.
// Usage: dotnet run --project bench/Year -c Release [-- --without-scipy]

var root = Root();
YearInput? indoor = null;
foreach (var name in new[] { "laundry-room.yaml", "lean-to-greenhouse.yaml" })
{
    var plan = PlanFile.Parse(File.ReadAllText(Path.Combine(root, "examples", name)), name).Plan!;
    var input = YearAssessment.Input(plan, Shelves.Standard, YearAir.FromMonths(plan, Shelves.Standard)!)!;
    indoor ??= input;
    var (run, ours) = Time(name, input);
    if (!args.Contains("--without-scipy"))
    {
        Compare(input, ours, run);
    }
}
Thousand(indoor!);

static (double Milliseconds, YearResult Result) Time(string name, YearInput input)
{
    var run = new YearRun(input);
    var result = run.MakeResult();
    for (var i = 0; i < 100; i++)
    {
        run.Run(result);
    }
    var times = new double[200];
    for (var i = 0; i < times.Length; i++)
    {
        var watch = Stopwatch.StartNew();
        run.Run(result);
        times[i] = watch.Elapsed.TotalMilliseconds;
    }
    Array.Sort(times);
    var before = GC.GetAllocatedBytesForCurrentThread();
    run.Run(result);
    Console.WriteLine(
        $"{name}: one year, warm: median {times[100]:F2} ms, fastest {times[0]:F2} ms; {GC.GetAllocatedBytesForCurrentThread() - before} bytes allocated; nitrogen closes to {result.Nitrogen.ClosingError:E1}");
    return (times[100], result);
}

static void Compare(YearInput input, YearResult ours, double milliseconds)
{
    var folder = Directory.CreateTempSubdirectory("runnel-bench-");
    var (source, target) = (Path.Combine(folder.FullName, "input.json"), Path.Combine(folder.FullName, "output.json"));
    File.WriteAllText(source, JsonSerializer.Serialize(input, new JsonSerializerOptions { NumberHandling = JsonNumberHandling.AllowNamedFloatingPointLiterals }));
    var script = Path.Combine(Root(), "tests", "peers", "scipy", "year_peer.py");
    using (var process = Process.Start(new ProcessStartInfo(Environment.GetEnvironmentVariable("RUNNEL_PYTHON") ?? "/usr/bin/python3", [script, source, target]) { UseShellExecute = false })!)
    {
        process.WaitForExit();
        if (process.ExitCode != 0)
        {
            Console.WriteLine("  SciPy did not run: apt-get install -y python3-scipy");
            return;
        }
    }
    using var peer = JsonDocument.Parse(File.ReadAllText(target));
    folder.Delete(recursive: true);
    var seconds = peer.RootElement.GetProperty("seconds").GetDouble();
    Console.WriteLine($"  SciPy LSODA, same equations, whole year: {seconds:F1} s of processor time, {seconds * 1000 / milliseconds:F0} times as long");
    var totals = peer.RootElement.GetProperty("totals");
    foreach (var (key, value) in new (string, double)[]
    {
        ("Feed", ours.Feed), ("FishHarvested", ours.FishHarvested), ("CropPicked", ours.CropPicked), ("ToppedUp", ours.ToppedUp), ("Heat", ours.Heat), ("Base", ours.Base),
        ("TakenUp", ours.Nitrogen.Plants), ("Lost", ours.Nitrogen.Lost),
    })
    {
        var theirs = totals.GetProperty(key).GetDouble();
        Console.WriteLine($"    {key,-14} {value,10:G6} {theirs,10:G6} {100 * (value / theirs - 1),9:F4} %");
    }
    var s = ours.Series;
    foreach (var (key, curve) in new (string, double[])[]
    {
        ("TankTemperature", s.TankTemperature), ("BedTemperature", s.BedTemperature), ("Oxygen", s.Oxygen), ("BedOxygen", s.BedOxygen), ("Ammonia", s.Ammonia), ("Nitrite", s.Nitrite),
        ("Nitrate", s.Nitrate), ("Alkalinity", s.Alkalinity), ("PH", s.PH), ("Solids", s.Solids), ("FishMass", s.FishMass), ("CropMass", s.CropMass),
    })
    {
        double[] theirs = [.. peer.RootElement.GetProperty("curves").GetProperty(key).EnumerateArray().Select(e => e.GetDouble())];
        var off = curve.Zip(theirs, (a, b) => Math.Abs(a - b)).ToArray();
        var range = theirs.Max() - theirs.Min();
        Console.WriteLine($"    {key,-16} worst hour {100 * off.Max() / range,7:F3} % of its range, mean {100 * off.Average() / range:F4} %; {off.Count(o => o > 0.02 * range)} hours over 2 %, the first {Array.FindIndex(off, o => o > 0.02 * range)}");
    }
}

static void Thousand(YearInput input)
{
    const int Years = 1000;
    var feed = new double[Years];
    var done = 0;
    var peak = 0L;
    using var self = Process.GetCurrentProcess();
    var before = self.TotalProcessorTime;
    var watch = Stopwatch.StartNew();
    Parallel.For(0, Years, new ParallelOptions { MaxDegreeOfParallelism = 2 }, () => (YearResult?)null, (i, _, result) =>
    {
        // A thousand different years: warmer and colder, more and fewer fish.
        var other = input with
        {
            Loop = input.Loop with { Keep = input.Loop.Keep + i % 10 * 0.3, FilterArea = input.Loop.FilterArea * (0.5 + i / (double)Years) },
            Fish = [.. input.Fish.Select(f => f with { Number = f.Number * (0.5 + i % 37 / 37.0) })],
        };
        var run = new YearRun(other);
        result ??= run.MakeResult();
        run.Run(result);
        feed[i] = result.Feed;
        var n = Interlocked.Increment(ref done);
        if (n % 100 == 0)
        {
            peak = Math.Max(peak, GC.GetTotalMemory(false));
            Console.Write(string.Create(CultureInfo.InvariantCulture, $"\r  {n} years, {watch.Elapsed.TotalSeconds:F1} s "));
        }
        return result;
    }, _ => { });
    self.Refresh();
    var busy = (self.TotalProcessorTime - before).TotalSeconds;
    Console.WriteLine($"\r{Years} different years on 2 cores: {watch.Elapsed.TotalSeconds:F2} s ({busy:F1} s of processor time); most memory held {peak / 1e6:F0} MB; feed {feed.Min():F1} to {feed.Max():F1} kg");
}

static string Root()
{
    var at = new DirectoryInfo(AppContext.BaseDirectory);
    while (at is not null && !File.Exists(Path.Combine(at.FullName, "Runnel.slnx")))
    {
        at = at.Parent;
    }
    return at?.FullName ?? throw new DirectoryNotFoundException("run it from within the repository");
}
