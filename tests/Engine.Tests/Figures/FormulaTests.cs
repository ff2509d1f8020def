using Runnel.Engine.Figures;
using Runnel.Engine.Quantities;
using static Runnel.Engine.Tests.Formulary;

namespace Runnel.Engine.Tests.Figures;

public sealed class FormulaTests
{
    private static readonly Formula Speed = new()
    {
        Id = "speed",
        Name = "Speed",
        Subject = "Tests",
        Equation = "v = s / t",
        Inputs = [new("way", "Way", Units.Foot, 0, 100), new("time", "Time", Units.MinuteUnit, 1, 60)],
        Output = new("speed", "Speed", Units.FootPerSecond),
        Sources = [Source.Definition("speed")],
        Confidence = Confidence.Textbook,
        Error = "none",
        Compute = x => x[0] <= 100 && x[1] >= 1 ? x[0] / (x[1] * 60) : throw new ArgumentOutOfRangeException(nameof(x)),
    };

    [Fact]
    public void It_works_in_its_own_units_whatever_it_is_given_in()
    {
        var speed = Speed.Apply(Of(3.048, Units.Metre), Of(20, Units.HourUnit) / Of(40, Units.One));
        Assert.Equal(10.0 / 1800, speed.Value, 1e-12);
        Assert.Equal(10.0 / 1800 * 0.3048, speed.Si, 1e-12);
        Assert.Same(Units.FootPerSecond, speed.Unit);
        Assert.Equal("Speed", speed.Label);
    }

    [Fact]
    public void The_figure_remembers_formula_arguments_and_sources()
    {
        var (way, time) = (Of(1, Units.Metre), Of(2, Units.MinuteUnit));
        var speed = Speed.Apply(way, time);
        Assert.Same(Speed, Assert.IsType<Applied>(speed.How).Formula);
        Assert.Equal([way, time], speed.Parents);
        Assert.Equal(Speed.Sources, speed.How.Sources);
    }

    [Fact]
    public void Arguments_of_another_kind_or_number_are_refused()
    {
        Assert.Throws<UnitMismatchException>(() => Speed.Apply(Of(1, Units.Litre), Of(1, Units.MinuteUnit)));
        Assert.Throws<UnitMismatchException>(() => Speed.Check(Of(1, Units.Metre), Of(1, Units.Metre)));
        Assert.Throws<ArgumentException>(() => Speed.Apply(Of(1, Units.Metre)));
    }

    [Fact]
    public void Every_argument_out_of_range_is_told()
    {
        var faults = Speed.Check(Of(50, Units.Metre), Of(10, Units.Second));
        Assert.Equal(["way", "time"], faults.Select(f => f.Input.Id));
        Assert.Equal("Speed holds for way from 0 to 100 ft, not 164.042", faults[0].ToString());
        Assert.Empty(Speed.Check(Of(1, Units.Metre), Of(10, Units.MinuteUnit)));
        var e = Assert.Throws<ArgumentOutOfRangeException>(() => Speed.Apply(Of(50, Units.Metre), Of(10, Units.Second)));
        Assert.Contains("way", e.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_limit_given_in_another_unit_still_holds()
    {
        // 30.48 m are 100 ft, but in doubles a hair more or less.
        Assert.Equal(100.0 / 60, Speed.Apply(Of(30.48000000000001, Units.Metre), Of(60, Units.Second)).Value, 1e-9);
        Assert.NotEmpty(Speed.Check(Of(30.4801, Units.Metre), Of(60, Units.Second)));
    }
}
