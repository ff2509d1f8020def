using System.ComponentModel;
using System.Diagnostics;
using System.Globalization;
using System.Text;
using System.Text.Json;
using Runnel.Engine.Flow;

namespace Runnel.Engine.Tests.Flow;

/// <summary>The network solver against an independent general-purpose hydraulic engine, run by node from tests/peers/epanet.</summary>
public class PeerTests
{
    // What the engine calls water at 20 °C: 1.1e-5 ft²/s.
    private const double PeerViscosity = 1.1e-5 * 0.3048 * 0.3048;
    private const int Networks = 120;

    [Fact]
    public async Task Random_home_networks_flow_as_an_independent_engine_says()
    {
        var networks = Enumerable.Range(1, Networks).Select(seed => NetworkTests.RandomNetwork(new(seed))).ToList();
        var answers = await Ask(networks.Select(n => Input(n.Nodes, n.Links)));
        Assert.Equal(Networks, answers.Count);
        var compared = 0;
        for (var i = 0; i < Networks; i++)
        {
            var ours = networks[i].Network.Solve(PeerViscosity);
            Assert.True(ours.Settled, $"network {i + 1}: {ours.Why}");
            foreach (var (link, flow) in ours.Flows)
            {
                // 0.5 %; below a few litres an hour the engine straightens its curves.
                var theirs = answers[i].GetProperty("flows").GetProperty(link).GetDouble() / 1000;
                Assert.True(Math.Abs(flow - theirs) <= 0.005 * Math.Abs(theirs) + 5e-7, $"network {i + 1}, {link}: {flow:G6}, peer {theirs:G6} m³/s");
                compared++;
            }
        }
        Assert.True(compared > 500);
    }

    [Fact]
    public async Task The_transition_between_laminar_and_turbulent_is_the_engines()
    {
        double[] heads = [0.003, 0.006, 0.008, 0.010, 0.012, 0.014, 0.016, 0.018, 0.03];
        var pipe = new FullPipe(0.020, 2.5, 0);
        var inputs = heads.Select(h => Input(
            [new Surface("s", h), new Surface("e", 0), new Junction("a")],
            [new PipeLink("p1", "s", "a", pipe), new PipeLink("p2", "a", "e", pipe)]));
        var answers = await Ask(inputs);
        for (var i = 0; i < heads.Length; i++)
        {
            var theirs = answers[i].GetProperty("flows").GetProperty("p1").GetDouble() / 1000;
            Assert.Equal(theirs, (pipe with { Length = 5 }).FlowUnder(heads[i], PeerViscosity), 0.002 * theirs);
        }
    }

    private static string Input(IEnumerable<NetworkNode> nodes, IEnumerable<NetworkLink> links)
    {
        var text = new StringBuilder();
        void Write(FormattableString line) => text.AppendLine(line.ToString(CultureInfo.InvariantCulture));
        var (all, parts) = (nodes.ToList(), links.ToList());
        Write($"[TITLE]\ntest\n[JUNCTIONS]");
        all.OfType<Junction>().ToList().ForEach(j => Write($" {j.Id} 0 {j.Demand * 1000:R}"));
        Write($"[RESERVOIRS]");
        all.OfType<Surface>().ToList().ForEach(s => Write($" {s.Id} {s.Head:R}"));
        all.OfType<FreeOutlet>().ToList().ForEach(o => Write($" {o.Id} {o.Height:R}"));
        Write($"[PIPES]");
        foreach (var p in parts.OfType<PipeLink>())
        {
            var oneWay = p.OneWay || all.OfType<FreeOutlet>().Any(o => o.Id == p.To);
            Write($" {p.Id} {p.From} {p.To} {p.Pipe.Length:R} {1000 * p.Pipe.Diameter:R} {1000 * p.Pipe.Roughness:R} {p.Pipe.Loss:R} {(oneWay ? "CV" : "OPEN")}");
        }
        Write($"[PUMPS]");
        parts.OfType<PumpLink>().ToList().ForEach(p => Write($" {p.Id} {p.From} {p.To} HEAD {p.Id}"));
        Write($"[CURVES]");
        parts.OfType<PumpLink>().ToList().ForEach(p => Write($" {p.Id} {500 * p.Curve.FreeFlow:R} {0.75 * p.Curve.ShutOffHead:R}"));
        Write($"[OPTIONS]\n UNITS LPS\n HEADLOSS D-W\n VISCOSITY 1.0\n ACCURACY 0.0000001\n TRIALS 1000\n[END]");
        return text.ToString();
    }

    private static async Task<List<JsonElement>> Ask(IEnumerable<string> inputs)
    {
        var peer = Path.Combine(Repository.Root, "tests", "peers", "epanet");
        Assert.True(Directory.Exists(Path.Combine(peer, "node_modules")),
            "The independent engine is not installed. Run:  npm ci --prefix tests/peers/epanet");
        var start = new ProcessStartInfo("node", "run.js")
        {
            WorkingDirectory = peer,
            UseShellExecute = false,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        try
        {
            using var process = Process.Start(start)!;
            var (output, error) = (process.StandardOutput.ReadToEndAsync(), process.StandardError.ReadToEndAsync());
            await process.StandardInput.WriteAsync(JsonSerializer.Serialize(inputs));
            process.StandardInput.Close();
            await process.WaitForExitAsync(TestContext.Current.CancellationToken);
            Assert.True(process.ExitCode == 0, await error);
            using var answer = JsonDocument.Parse(await output);
            return [.. answer.RootElement.EnumerateArray().Select(e => e.Clone())];
        }
        catch (Win32Exception e)
        {
            Assert.Fail($"node is not installed: {e.Message}. Install Node.js 20 or later, then:  npm ci --prefix tests/peers/epanet");
            throw;
        }
    }
}
