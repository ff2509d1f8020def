using CsCheck;
using Runnel.Engine.Figures;
using Runnel.Engine.Findings;
using Runnel.Engine.Frame;
using Runnel.Engine.Plan;
using Runnel.Engine.Quantities;

namespace Runnel.Engine.Tests.Frame;

public class StandCheckTests
{
    private const double Psi = 6894.757293168;

    [Fact]
    public void The_bearer_of_a_gravel_bed_by_hand()
    {
        // Derived: one 2x6 spruce-pine-fir bearer of 6 ft under 260 lb/ft, dry, worked by hand: f_b 1857 psi, allowed 1024 when held sideways,
        // f_v 142 against 121.5 psi, sag 0.26 in at first (span/277): it fails in both.
        var stand = Piece("bearer", "2x6", 6 * 0.3048, 1, LumberUse.Rail) with { Wood = Wood.SprucePineFir, Wet = false };
        var mass = 260.0 * 6 * 0.45359237;
        var result = Check(stand, mass);
        var checks = Assert.Single(result.Pieces).Checks.ToDictionary(c => c.Mode);
        // Its own weight comes on top: 2 lb/ft of 260.
        Assert.Equal(1857, checks["bending"].Demand.Si / Psi, 0.01 * 1857);
        Assert.InRange(checks["bending"].Allowed.Si / Psi, 0.9 * 1024, 1024);
        Assert.Equal(142, checks["shear"].Demand.Si / Psi, 0.01 * 142);
        Assert.Equal(121.5, checks["shear"].Allowed.Si / Psi, 0.1);
        var sag = 1.5 * 6 * 0.3048 / 277;
        Assert.InRange(checks["sag"].Demand.Si, sag, 1.12 * sag);
        Assert.Contains(result.Findings, f => f is { Code: "stand.overloaded", Severity: Severity.Grave });
    }

    [Fact]
    public void A_short_leg_of_four_by_four_by_hand()
    {
        // Derived: 4x4 leg of spruce-pine-fir, 36 in, dry, permanent load: 13 534 lb, worked by hand.
        var leg = Piece("leg", "4x4", 36 * 0.0254, 1, LumberUse.Leg) with { Wood = Wood.SprucePineFir, Wet = false };
        var check = Assert.Single(Assert.Single(Check(leg, 500).Pieces).Checks);
        Assert.Equal(13534, check.Allowed.Si / Psi * 12.25, 15.0);
        Assert.Equal(500 / 0.45359237, check.Demand.Si / Psi * 12.25, 0.1);
    }

    [Fact]
    public void The_working_names_every_factor_and_source()
    {
        var check = Check(Piece("rail", "2x8", 1.5, 2, LumberUse.Rail), 200).Pieces[0].Checks.Single(c => c.Mode == "bending");
        var labels = Labels(check.Ratio).ToList();
        foreach (var part in new[] { "Reference value", "C_D", "C_M", "C_F", "C_r", "Pieces of rail that bear all of it" })
        {
            Assert.Contains(labels, l => l.Contains(part, StringComparison.Ordinal));
        }
        Assert.All(Leaves(check.Ratio), f => Assert.NotEmpty(f.How.Sources));
    }

    [Theory]
    [InlineData(1, 1)]
    [InlineData(2, 2)]
    [InlineData(3, 2)]
    [InlineData(4, 2)]
    [InlineData(5, 2)]
    [InlineData(8, 4)]
    public void Half_of_the_pieces_bear_all(double count, double bearing) => Assert.Equal(bearing, StandCheck.PiecesThatBear(count), 12);

    [Fact]
    public void More_load_never_uses_less_and_a_longer_span_is_never_stronger() =>
        Gen.Select(Gen.Double[10, 1500], Gen.Double[1, 1.5], Gen.Double[0.3, 2.5], OneOf("2x4", "2x6", "2x10", "4x4", "45 x 90 mm", "6x6"),
            OneOf(Enum.GetValues<Wood>()), OneOf(LumberUse.Rail, LumberUse.Leg, LumberUse.Joist)).Sample((mass, more, length, size, wood, use) =>
        {
            var piece = Piece("piece", size, length, 4, use) with { Wood = wood };
            var here = Worst(piece, mass);
            Assert.True(Worst(piece, mass * more) >= here - 1e-12);
            // A longer piece spreads the same weight thinner, so the span grows on a piece of one length.
            var longer = use == LumberUse.Leg ? piece with { Length = Of(length * more, "stand/piece/length") } : piece with { Span = Of(length, "stand/piece/span"), Length = Of(4, "stand/piece/length") };
            var shorter = use == LumberUse.Leg ? piece : longer with { Span = Of(length / more, "stand/piece/span") };
            Assert.True(Worst(longer, mass) >= Worst(shorter, mass) - 1e-12);
            Assert.True(Worst(piece with { Wet = false }, mass) <= here + 1e-12);
            Assert.True(Worst(piece with { Wood = Wood.Unknown }, mass) >= here - 1e-12);
        }, iter: 300);

    [Fact]
    public void It_calls_nothing_fine_that_is_used_by_more_than_half() =>
        Gen.Select(Gen.Double[5, 3000], Gen.Double[0.3, 2.4], OneOf("2x4", "2x6", "2x8", "4x4", "38 x 140 mm")).Sample((mass, length, size) =>
        {
            var result = Check(Piece("rail", size, length, 2, LumberUse.Rail), mass);
            var broken = result.Pieces.Select(p => p.Strength!.Ratio.Si).DefaultIfEmpty(double.PositiveInfinity).Max();
            var sag = result.Pieces.SelectMany(p => p.Checks).Where(c => c.Mode == "sag").Select(c => c.Ratio.Si).DefaultIfEmpty(0).Max();
            Assert.Equal(broken > 1, result.Findings.Any(f => f.Severity == Severity.Grave));
            Assert.Equal(broken is > 0.5 and <= 1, result.Findings.Any(f => f.Code == "stand.have-it-checked"));
            Assert.Equal(sag > 1, result.Findings.Any(f => f.Code == "stand.sags"));
            Assert.Contains(result.Findings, f => f.Code == "stand.caution");
        }, iter: 300);

    [Theory]
    [InlineData("a plank", "stand.size-unknown")]
    [InlineData("1x6", "stand.board")]
    public void What_it_cannot_check_it_says(string size, string code)
    {
        var result = Check(Piece("rail", size, 1, 2, LumberUse.Rail), 50);
        Assert.Empty(result.Pieces);
        Assert.Contains(result.Findings, f => f.Code == code && f.Severity == Severity.Warning);
    }

    [Theory]
    [InlineData(LumberUse.Leg, "2x4", 2.5)]
    [InlineData(LumberUse.Rail, "2x14", 8)]
    public void What_buckles_or_topples_is_grave(LumberUse use, string size, double length)
    {
        var result = Check(Piece("long", size, length, 4, use), 20);
        Assert.Contains(result.Findings, f => f is { Severity: Severity.Grave, Code: "stand.too-slender" });
    }

    [Fact]
    public void A_raised_vessel_that_nothing_carries_is_named()
    {
        var plan = PlanWith(Piece("legs", "4x4", 0.9, 4, LumberUse.Leg) with { Carries = [] });
        var result = StandCheck.Check(plan, Masses(300), Figure.Given);
        Assert.Empty(result.Pieces);
        Assert.Null(result.Worst);
        Assert.Contains(result.Findings, f => f.Code == "stand.unchecked" && f.Where == "bed");
        Assert.Contains(result.Findings, f => f.Code == "stand.carries-nothing");
    }

    [Fact]
    public void An_absurd_load_gives_findings_and_no_exception()
    {
        var result = Check(Piece("rail", "2x4", 0.06, 2, LumberUse.Rail), 900000);
        Assert.Contains(result.Findings, f => f.Code == "stand.out-of-range");
        Assert.Contains(Check(Piece("rail", "2x4", 12, 2, LumberUse.Rail), 50000).Findings, f => f.Severity == Severity.Grave);
    }

    private static Gen<T> OneOf<T>(params T[] of) => Gen.Int[0, of.Length - 1].Select(i => of[i]);

    private static double Worst(Lumber piece, double mass) => Check(piece, mass).Worst?.Worst!.Ratio.Si ?? double.PositiveInfinity;

    private static StandResult Check(Lumber piece, double mass) => StandCheck.Check(PlanWith(piece), Masses(mass), Figure.Given);

    private static Dictionary<string, Figure> Masses(double mass) =>
        new(StringComparer.Ordinal) { ["bed"] = Figure.Constant(mass, Units.Kilogram, "bed, full", Source.Definition("a test")) };

    private static LoopPlan PlanWith(Lumber piece) => new()
    {
        Stand = new Dictionary<string, Lumber>(StringComparer.Ordinal) { [piece.Name] = piece },
        Vessels = new Dictionary<string, Vessel>(StringComparer.Ordinal) { ["bed"] = new Vessel { Name = "bed", Role = VesselRole.MediaBed, AboveFloor = Of(0.8, "vessels/bed/above floor") } },
    };

    private static Lumber Piece(string name, string size, double length, double count, LumberUse use) => new()
    {
        Name = name,
        Size = size,
        Use = use,
        Carries = ["bed"],
        Length = Of(length, $"stand/{name}/length"),
        Count = Estimate.Of(count, Units.One, new Origin($"stand/{name}/count", "How many")),
    };

    private static Estimate Of(double metres, string path) => Estimate.Of(metres, Units.Metre, new Origin(path, "a length of a test", OriginKind.Plan, "a test"));

    private static IEnumerable<string> Labels(Figure figure) => All(figure).Where(f => f.Label is not null).Select(f => f.Label!);

    private static IEnumerable<Figure> Leaves(Figure figure) => All(figure).Where(f => f.Parents.Count == 0 && f.How is Fixed);

    private static IEnumerable<Figure> All(Figure figure) => [figure, .. figure.Parents.SelectMany(All)];
}
