using System.Xml.Linq;
using Runnel.App.Levels;
using Runnel.Engine.Assess;
using Runnel.Engine.Findings;
using Runnel.Engine.Levels;
using Runnel.Engine.Plan;
using Runnel.Files;

namespace Runnel.App.Tests;

/// <summary>From a plan to levels, findings and the drawing.</summary>
public sealed class LevelTests
{
    // Invented: a tank that a pump keeps full over a sump, all sizes round.
    private const string Tank = """
        runnel: 1
        name: test loop
        currency: USD
        place: {setting: indoors, air: 18 °C}
        vessels:
          fish tank: {role: fish tank, shape: box 100 x 100 x 100 cm, level: 80 cm, above floor: 20 cm, lid: yes}
          sump: {role: sump, shape: box 100 x 50 x 60 cm, level: 30 cm}
        pumps: {riser: {watts: 20 W}}
        pipes:
          - {from: fish tank, to: sump, size: 50 mm PVC, length: 1 m, overflow at: 80 cm}
          - {from: sump, to: fish tank, pumped by: riser, size: 25 mm PVC, length: 2 m}

        """;

    private static Assessment Example(string name, int draws = 0) =>
        Plans.Assess(PlanFile.Read(Path.Combine(HouseTests.Root, "examples", name)), draws);

    private static Finding? Find(Assessment assessment, string code) => assessment.Findings.FirstOrDefault(f => f.Code == code);

    private static Assessment Changed(params (string Old, string New)[] changes)
    {
        var text = Tank.ReplaceLineEndings("\n");
        foreach (var (old, next) in changes)
        {
            Assert.Contains(old, text, StringComparison.Ordinal);
            text = text.Replace(old, next, StringComparison.Ordinal);
        }
        return Plans.Assess("", start: text);
    }

    // Derived by hand: beds 2 × 0.9 m × 0.6 m × 20 cm × 45 % voids = 97.2 L, 2 cm over the mouths of tank and raft 11.0 + 14.4 L, pipes
    // π/4 × (25² × 5 + 32² × 1.6 + 40² × 0.8 + 50² × 1.2) mm² m = 7.10 L; the sump has 13 cm × 0.24 m² = 31.2 L free.
    [Fact]
    public void The_example_that_floods_says_how_many_litres_and_what_mends_it()
    {
        var assessment = Example("floods-on-power-loss.yaml");
        var litres = 97.2 + 11.0 + 14.4 + Math.PI / 4 * (25 * 25 * 5 + 32 * 32 * 1.6 + 40 * 40 * 0.8 + 50 * 50 * 1.2) / 1000 - 31.2;

        Assert.Equal(litres, assessment.Figures["levels.off.floor"].Value, 1e-6);
        var finding = Find(assessment, "levels.power-cut")!;
        Assert.Equal((Severity.Grave, "sump"), (finding.Severity, finding.Where));
        Assert.Contains("98.5 L", new Style().Print(finding.Saw));
        Assert.Contains("108.4 L", new Style().Print(finding.Do));
        Assert.Equal(0, assessment.Figures["levels.off.sump.free"].Value, 1e-9);
    }

    [Fact]
    public void The_mend_in_its_note_mends_it()
    {
        var text = File.ReadAllText(Path.Combine(HouseTests.Root, "examples", "floods-on-power-loss.yaml"));
        const string Larger = "box 90 cm x 60 cm x 50 cm";
        Assert.Contains(Larger[4..], text, StringComparison.Ordinal);
        var mended = Plans.Assess(PlanFile.Parse(text.Replace("sump, shape: box 60 cm x 40 cm x 35 cm", $"sump, shape: {Larger}", StringComparison.Ordinal), "mended.yaml"));

        Assert.Null(Find(mended, "levels.power-cut"));
        Assert.Null(Find(mended, "levels.siphons-together"));
    }

    [Theory]
    [InlineData("laundry-room.yaml")]
    [InlineData("lean-to-greenhouse.yaml")]
    public void The_other_examples_do_not_flood(string example)
    {
        var assessment = Example(example);

        Assert.NotNull(assessment.Levels);
        Assert.Equal("levels.line-broken", Assert.Single(assessment.Findings, f => f.Code.StartsWith("levels.", StringComparison.Ordinal)).Code);
    }

    [Fact]
    public void Levels_are_figures_with_ranges()
    {
        var assessment = Example("laundry-room.yaml", draws: 64);
        foreach (var one in assessment.Levels!.Cases.Where(c => c.Kind is not (LevelCaseKind.Blocked or LevelCaseKind.Broken)))
        {
            var id = one.Kind.ToString().ToLowerInvariant();
            Assert.Equal(one.Vessels[0].Level, assessment.Figures[$"levels.{id}.fish-tank.level"].Si);
            Assert.Equal(one.Vessels[0].Volume, assessment.Figures[$"levels.{id}.fish-tank.litres"].Si);
            Assert.Equal(one.OnFloor, assessment.Figures[$"levels.{id}.floor"].Si);
        }
        Assert.True(assessment.Figures["levels.off.sump.level"].IsRange);
        Assert.NotNull(assessment.Figures.Find("levels.blocked-bed-one.bed-one.free"));
        Assert.NotNull(assessment.Figures.Find("levels.broken-loop-pump.floor"));
    }

    [Fact]
    public void The_water_while_running_is_the_water_of_the_plan()
    {
        // Sump and settler have no overflow whose head would be added.
        var assessment = Example("lean-to-greenhouse.yaml");
        Assert.All(new[] { "round-tank", "settler", "biofilter", "raft-bed", "sump" }, v =>
            Assert.Equal(assessment.Figures[$"vessel.{v}.water"].Si, assessment.Figures[$"levels.running.{v}.litres"].Si, 1e-9));
    }

    [Fact]
    public void A_sound_loop_is_told_only_what_a_broken_line_would_spill()
    {
        Assert.Equal(["levels.line-broken"], Changed().Findings.Select(f => f.Code).Where(c => c.StartsWith("levels.", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("levels.power-cut", "box 100 x 50 x 60 cm, level: 30 cm", "box 100 x 50 x 31 cm, level: 30 cm")]
    [InlineData("levels.power-cut", "length: 2 m", "length: 2 m, ends under water: yes")]
    [InlineData("levels.fish-left", "length: 2 m", "length: 2 m, ends under water: yes")]
    [InlineData("levels.drain-blocked", "80 cm", "95 cm")]
    [InlineData("levels.running-spill", "80 cm", "99 cm")]
    [InlineData("levels.pump-dry", "level: 30 cm", "level: 4 cm")]
    [InlineData("levels.uphill", "above floor: 20 cm", "above floor: -60 cm")]
    public void What_goes_wrong_is_said(string code, string right, string wrong)
    {
        Assert.Null(Find(Changed(), code));
        var finding = Find(Changed((right, wrong)), code);

        Assert.NotNull(finding);
        Assert.All([finding.Saw, finding.Wanted, finding.Do], s => Assert.NotEmpty(new Style().Print(s)));
    }

    [Fact]
    public void Outdoors_a_flood_is_a_warning()
    {
        var finding = Find(Changed(("setting: indoors", "setting: outdoors"), ("50 x 60 cm, level", "50 x 31 cm, level")), "levels.power-cut")!;
        Assert.Equal(Severity.Warning, finding.Severity);
    }

    [Fact]
    public void A_pump_among_the_fish_is_grave()
    {
        var assessment = Changed(
            ("sump: {role: sump, shape: box 100 x 50 x 60 cm, level: 30 cm}", "raft: {role: raft bed, shape: box 100 x 50 x 30 cm, level: 20 cm, above floor: 140 cm}"),
            ("from: fish tank, to: sump, size: 50 mm PVC, length: 1 m, overflow at: 80 cm", "from: raft, to: fish tank, size: 50 mm PVC, length: 1 m"),
            ("from: sump, to: fish tank", "from: fish tank, to: raft"));
        var finding = Find(assessment, "levels.fish-left")!;

        Assert.Equal((Severity.Grave, "fish tank"), (finding.Severity, finding.Where));
        // 5 cm on 1 m².
        Assert.Contains("50 L left", new Style().Print(finding.Saw));
    }

    [Fact]
    public void A_check_valve_is_read() =>
        Assert.Null(Find(Changed(("length: 2 m", "length: 2 m, ends under water: yes, check valve: yes")), "levels.power-cut"));

    public static TheoryData<string> Examples => [.. Plans.Examples.Select(e => Path.GetFileName(e))];

    [Theory]
    [MemberData(nameof(Examples))]
    public void Every_case_is_drawn(string example)
    {
        var assessment = Example(example);
        foreach (var style in new[] { new Style(), new Style(UnitSystem.Us) })
        {
            foreach (var one in assessment.Levels!.Cases)
            {
                var svg = XDocument.Parse(ElevationDrawing.Draw(assessment.Levels, one, style)).Root!;
                var text = Text(svg);
                Assert.Equal("img", svg.Attribute("role")!.Value);
                Assert.Equal(2, svg.Attribute("aria-labelledby")!.Value.Split(' ').Count(id => svg.Descendants().Any(e => e.Attribute("id")?.Value == id)));
                Assert.Contains(style.System == UnitSystem.Us ? " in free" : " cm free", text);
                foreach (var vessel in one.Vessels)
                {
                    var height = style.UnitOf(Engine.Quantities.Units.Centimetre);
                    Assert.Contains(vessel.Name, text);
                    Assert.Contains(vessel.Volume > 1e-6 ? $"{Math.Round(height.FromSi(vessel.Level), 1):0.#} {height.Symbol} deep" : "empty", text);
                }
                Assert.Contains(one.OnFloor > 1e-6 ? "On the floor: " : "Nothing on the floor.", text);
            }
        }
    }

    [Fact]
    public void Everything_is_drawn_inside_the_picture()
    {
        var study = Example("floods-on-power-loss.yaml").Levels!;
        foreach (var one in study.Cases)
        {
            var svg = XDocument.Parse(ElevationDrawing.Draw(study, one, new())).Root!;
            var box = svg.Attribute("viewBox")!.Value.Split(' ').Select(double.Parse).ToArray();
            foreach (var element in svg.Descendants().Where(e => e.Name.LocalName is "text" or "rect" && e.Parent!.Name.LocalName == "svg"))
            {
                Assert.InRange((double?)element.Attribute("x") ?? 0, 0, box[2]);
                Assert.InRange((double?)element.Attribute("y") ?? 0, 0, box[3]);
            }
        }
    }

    [Fact]
    public void Water_is_drawn_to_scale()
    {
        // In the tank loop 1 m of height is the tank: water of 80 cm stands 0.8 as high as its wall.
        var study = Changed().Levels!;
        var svg = XDocument.Parse(ElevationDrawing.Draw(study, study.Find(LevelCaseKind.Rest)!, new())).Root!;
        var water = svg.Elements().Where(e => e.Attribute("fill")?.Value == "url(#levels-water)").Select(e => (double)e.Attribute("height")!).ToList();
        var walls = svg.Elements().Where(e => e.Name.LocalName == "rect" && e.Attribute("fill")?.Value == "#fff").Select(e => (double)e.Attribute("height")!).Skip(1).ToList();

        Assert.Equal(0.8, water[0] / walls[0], 0.005);
        Assert.Equal(0.6, walls[1] / walls[0], 0.005);
    }

    [Fact]
    public void Names_that_mean_something_in_XML_do_no_harm()
    {
        var name = "<script>&\"' \u0001\uD800 bed\u00e9";
        var loop = new WaterLoop { Basins = [Basin.Straight(name, 1, 1)], Filled = [0.5] };
        var study = new LevelStudy(loop, LevelSolver.Solve(loop));
        var svg = XDocument.Parse(ElevationDrawing.Draw(study, study.Cases[0], new())).Root!;

        Assert.Contains("<script>&\"'", Text(svg));
        Assert.DoesNotContain(svg.Descendants(), e => e.Name.LocalName == "script");
    }

    private static string Text(XElement svg) => string.Join(' ', svg.Descendants().Where(e => e.Name.LocalName is "text" or "desc" or "title").Select(e => e.Value));
}
