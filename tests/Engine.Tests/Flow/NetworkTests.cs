using CsCheck;
using Runnel.Engine.Flow;

namespace Runnel.Engine.Tests.Flow;

public class NetworkTests
{
    private const double Foot = 0.3048;
    private const double Inch = 0.0254;
    private const double GallonPerMinute = 0.003785411784 / 60;
    private static readonly double Water20 = WaterProperties.KinematicViscosity(20);

    [Fact]
    public void The_published_tutorial_network()
    {
        // Published: EPANET 2.2 User Manual, tutorial: nodes, pipes (C 100), pump of 600 gpm at 150 ft, tank surface at 834 ft, demands halved at
        // hour 0; its table of links.
        static HazenWilliamsLink Pipe(string id, string from, string to, double feet, double inches) =>
            new(id, from, to, inches * Inch, feet * Foot, 100);
        var network = new PipeNetwork(
            [
                new Surface("1", 700 * Foot), new Surface("8", 834 * Foot), new Junction("2"), new Junction("3", 75 * GallonPerMinute),
                new Junction("4", 75 * GallonPerMinute), new Junction("5", 100 * GallonPerMinute), new Junction("6", 75 * GallonPerMinute), new Junction("7"),
            ],
            [
                new PumpLink("9", "1", "2", PumpCurve.FromDesignPoint(600 * GallonPerMinute, 150 * Foot)),
                Pipe("1", "2", "3", 3000, 14), Pipe("2", "3", "7", 5000, 12), Pipe("3", "3", "4", 5000, 8), Pipe("4", "4", "6", 5000, 8),
                Pipe("5", "6", "7", 5000, 8), Pipe("6", "7", "8", 7000, 10), Pipe("7", "4", "5", 5000, 6), Pipe("8", "5", "6", 7000, 6),
            ]);
        var solution = network.Solve(Water20);
        Assert.True(solution.Settled, solution.Why);
        (string Link, double Flow)[] table =
        [
            ("1", 617.42), ("2", 382.51), ("3", 159.91), ("4", 29.34), ("5", -90.09), ("6", 292.42), ("7", 55.58), ("8", -44.42), ("9", 617.42),
        ];
        Assert.All(table, row => Assert.Equal(row.Flow, solution.Flows[row.Link] / GallonPerMinute, 0.002 * Math.Abs(row.Flow) + 0.1));
        Assert.Equal(147.05, (solution.Heads["2"] - solution.Heads["1"]) / Foot, 0.1);
    }

    [Fact]
    public void A_published_loop_by_hand_balances_here_too()
    {
        // Published: Maurer, vignette §7: a pipe of 0.3 m, 250 m, f 0.01879 has K 159.78 s²/m⁵.
        Assert.Equal(159.78, HeadLoss.DarcyWeisbach(0.01879, 250, 0.3, 1), 0.2);
    }

    [Fact]
    public void One_pump_and_one_pipe_meet_at_the_working_point()
    {
        var curve = PumpCurve.Through((2.6, 0), (0, 2400 / 3.6e6));
        var pipe = new FullPipe(0.0216, 4, 6);
        var network = new PipeNetwork(
            [new Surface("sump", 0.3), new FreeOutlet("bed", 1.4), new Junction("outlet of pump")],
            [new PumpLink("pump", "sump", "outlet of pump", curve), new PipeLink("pipe", "outlet of pump", "bed", pipe)]);
        var solution = network.Solve(Water20);
        var (flow, _) = curve.WorkingPoint(q => 1.1 + pipe.HeadFor(q, Water20));
        Assert.True(solution.Settled, solution.Why);
        Assert.Equal(flow, solution.Flows["pump"], 1e-6 * flow);
        Assert.Equal(flow, solution.Flows["pipe"], 1e-6 * flow);
    }

    [Fact]
    public void Like_branches_share_alike_and_a_higher_bed_gets_less()
    {
        PipeNetwork Beds(double second) => new(
            [new Surface("sump", 0), new Junction("tee"), new FreeOutlet("a", 1), new FreeOutlet("b", second)],
            [
                new PumpLink("pump", "sump", "tee", PumpCurve.Through((3, 0), (0, 1e-3))),
                new PipeLink("to a", "tee", "a", new FullPipe(0.02, 1, 3)), new PipeLink("to b", "tee", "b", new FullPipe(0.02, 1, 3)),
            ]);
        var alike = Beds(1).Solve(Water20);
        Assert.Equal(alike.Flows["to a"], alike.Flows["to b"], 1e-12);
        var uneven = Beds(1.2).Solve(Water20);
        Assert.True(uneven.Flows["to b"] < uneven.Flows["to a"]);
    }

    [Fact]
    public void Nothing_runs_back_through_a_check_valve_a_pump_or_a_free_outlet()
    {
        var network = new PipeNetwork(
            [new Surface("low", 0), new Surface("high", 2), new Junction("middle"), new FreeOutlet("mouth", 5)],
            [
                new PipeLink("checked", "low", "middle", new FullPipe(0.02, 3, 2)) { OneWay = true },
                new PipeLink("open", "middle", "high", new FullPipe(0.02, 3, 2)),
                new PumpLink("weak pump", "low", "high", PumpCurve.Through((1, 0), (0, 1e-3))),
                new PipeLink("up", "middle", "mouth", new FullPipe(0.02, 3, 2)),
            ]);
        var solution = network.Solve(Water20);
        Assert.True(solution.Settled, solution.Why);
        Assert.Equal(["checked", "up", "weak pump"], solution.Shut.Order());
        Assert.All(solution.Flows.Values, q => Assert.Equal(0, q, 1e-8));
        Assert.Equal(2, solution.Heads["middle"], 1e-5);
    }

    [Fact]
    public void An_unjoined_part_is_named_and_nothing_is_made_up()
    {
        var solution = new PipeNetwork(
            [new Surface("tank", 1), new Junction("a"), new Junction("lost"), new Junction("also lost")],
            [new PipeLink("p", "tank", "a", new FullPipe(0.02, 1, 0)), new PipeLink("q", "lost", "also lost", new FullPipe(0.02, 1, 0))]).Solve(Water20);
        Assert.False(solution.Settled);
        Assert.Contains("lost", solution.Why);
    }

    [Fact]
    public void Giving_up_says_so_and_hands_over_what_it_had()
    {
        var network = RandomNetwork(new(7)).Network;
        var solution = network.Solve(Water20, 1);
        Assert.False(solution.Settled);
        Assert.NotNull(solution.Why);
        Assert.Equal(1, solution.Iterations);
        Assert.NotEmpty(solution.Flows);
    }

    [Fact]
    public void Wrong_descriptions_are_a_programmers_error()
    {
        Assert.Throws<ArgumentException>(() => new PipeNetwork([new Junction("a"), new Junction("a")], []));
        Assert.Throws<ArgumentException>(() => new PipeNetwork([new Junction("a")], [new FittingLink("f", "a", "b", 0.02, 1)]));
        Assert.Throws<ArgumentOutOfRangeException>(() => new PipeNetwork([new Surface("a", 0)], []).Solve(double.NaN));
    }

    [Fact]
    public void Every_junction_closes_and_head_falls_along_each_pipe() =>
        Gen.Int[0, 1_000_000].Sample(seed =>
        {
            var (network, _, links) = RandomNetwork(new(seed));
            var s = network.Solve(Water20);
            Assert.True(s.Settled, $"seed {seed}: {s.Why} after {s.Iterations}, {s.WorstHead} m");
            Assert.True(s.WorstBalance < 1e-10, $"seed {seed}: {s.WorstBalance}");
            foreach (var pipe in links.OfType<PipeLink>())
            {
                var fall = s.Heads[pipe.From] - s.Heads[pipe.To];
                Assert.True(s.Flows[pipe.Id] == 0 || Math.Abs(s.Flows[pipe.Id]) < 1e-9 || Math.Sign(fall) == Math.Sign(s.Flows[pipe.Id]), $"seed {seed}: {pipe.Id}");
                if (!s.Shut.Contains(pipe.Id))
                {
                    Assert.Equal(pipe.Pipe.HeadFor(s.Flows[pipe.Id], Water20), fall, 1e-5);
                }
            }
        }, iter: 300);

    [Fact]
    public void Order_of_nodes_and_links_changes_nothing() =>
        Gen.Int[0, 1_000_000].Sample(seed =>
        {
            var plain = RandomNetwork(new(seed)).Network.Solve(Water20);
            var mixed = RandomNetwork(new(seed), shuffle: true).Network.Solve(Water20);
            Assert.All(plain.Flows, f => Assert.Equal(f.Value, mixed.Flows[f.Key], 1e-9));
        }, iter: 100);

    /// <summary>A looped network of pipes with a pump, surfaces, an outlet and check valves, from a seed.</summary>
    internal static (PipeNetwork Network, IReadOnlyList<NetworkNode> Nodes, IReadOnlyList<NetworkLink> Links) RandomNetwork(
        Random random, bool shuffle = false)
    {
        double Between(double low, double high) => low + (high - low) * random.NextDouble();
        FullPipe AnyPipe() => new(Between(0.013, 0.05), Between(0.3, 8), Between(0, 8), Between(0, 5e-5));
        var junctions = random.Next(2, 7);
        var nodes = new List<NetworkNode> { new Surface("sump", 0), new Surface("tank", Between(0.3, 1.5)), new FreeOutlet("mouth", Between(0.2, 1.8)) };
        var links = new List<NetworkLink>
        {
            new PumpLink("pump", "sump", "j0", PumpCurve.FromDesignPoint(Between(1000, 3000) / 3.6e6, Between(0.8, 3))),
        };
        for (var i = 0; i < junctions; i++)
        {
            nodes.Add(new Junction($"j{i}"));
            if (i > 0)
            {
                links.Add(new PipeLink($"p{i}", $"j{random.Next(i)}", $"j{i}", AnyPipe()));
            }
        }
        links.Add(new PipeLink("to-tank", $"j{random.Next(junctions)}", "tank", AnyPipe()));
        links.Add(new PipeLink("to-mouth", $"j{random.Next(junctions)}", "mouth", AnyPipe()));
        for (var i = random.Next(3); i > 0; i--)
        {
            var (a, b) = (random.Next(junctions), random.Next(junctions));
            if (a != b)
            {
                links.Add(new PipeLink($"loop{i}", $"j{a}", $"j{b}", AnyPipe()) { OneWay = random.Next(2) == 0 });
            }
        }
        if (shuffle)
        {
            (nodes, links) = ([.. nodes.AsEnumerable().Reverse()], [.. links.OrderBy(l => l.Id.Length).ThenByDescending(l => l.Id)]);
        }
        return (new(nodes, links), nodes, links);
    }
}
