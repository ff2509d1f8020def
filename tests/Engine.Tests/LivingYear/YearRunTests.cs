using CsCheck;
using Runnel.Engine.Year;

namespace Runnel.Engine.Tests.LivingYear;

public sealed class YearRunTests
{
    public static TheoryData<string> Both => ["indoor", "greenhouse"];

    private static YearInput Sample(string name) => name == "indoor" ? SampleLoops.Indoor : SampleLoops.Greenhouse;

    private static IEnumerable<double[]> Curves(YearSeries s) =>
    [
        s.TankTemperature, s.BedTemperature, s.Oxygen, s.BedOxygen, s.Ammonia, s.Nitrite, s.Nitrate, s.Alkalinity, s.PH, s.FreeAmmonia, s.Solids, s.Water,
        s.FishMass, s.CropMass, s.HeaterPower, s.OxygenDemand,
    ];

    /// <summary>Temperatures may be under nothing when a loop freezes; amounts may not, but for a millionth of a unit where the last cut leaves it.</summary>
    private static void Sound(YearResult result)
    {
        foreach (var curve in Curves(result.Series))
        {
            for (var i = 0; i < result.HoursRun; i++)
            {
                Assert.True(double.IsFinite(curve[i]) && (curve[i] >= -1e-6 || curve == result.Series.TankTemperature || curve == result.Series.BedTemperature), $"hour {i}: {curve[i]}");
            }
        }
        Assert.True(Math.Abs(result.Nitrogen.ClosingError) < 1e-10 || Math.Abs(result.Nitrogen.In) < 1, $"closes to {result.Nitrogen.ClosingError}");
        foreach (var total in new[] { result.Feed, result.CropPicked, result.FishHarvested, result.Heat, result.ToppedUp, result.Base, result.Evaporated })
        {
            Assert.True(double.IsFinite(total) && total >= -0.01, $"total {total}; {result.Failure}");
        }
    }

    [Theory]
    [MemberData(nameof(Both))]
    public void A_year_runs_to_its_end_and_its_nitrogen_closes(string name)
    {
        var result = YearRun.Of(Sample(name));
        Assert.Null(result.Failure);
        Assert.Equal(8760, result.HoursRun);
        Sound(result);
        Assert.InRange(Math.Abs(result.Nitrogen.ClosingError), 0, 1e-12);
        Assert.Equal(result.Heat, result.HeatByMonth.Sum(), 1e-6 * result.Heat);
        Assert.Equal(result.CropPicked, result.Events.Where(e => e.Kind == YearEventKind.Picked).Sum(e => e.Amount), 1e-9);
        Assert.True(result.FishHarvested > 0);
    }

    [Fact]
    public void The_same_input_gives_the_same_bits_again()
    {
        var run = new YearRun(SampleLoops.Indoor);
        var (first, second) = (run.MakeResult(), run.MakeResult());
        run.Run(first, cancel: TestContext.Current.CancellationToken);
        run.Run(second, cancel: TestContext.Current.CancellationToken);
        Assert.Equal(first.Series.Oxygen, second.Series.Oxygen);
        Assert.Equal(first.Nitrogen, second.Nitrogen);
    }

    [Fact]
    public void A_warm_run_allocates_nothing()
    {
        var run = new YearRun(SampleLoops.Greenhouse);
        var result = run.MakeResult();
        run.Run(result, cancel: TestContext.Current.CancellationToken);
        var before = GC.GetAllocatedBytesForCurrentThread();
        run.Run(result, cancel: TestContext.Current.CancellationToken);
        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }

    /// <summary>Twice as many steps make about a quarter of the error: order 2 of the whole, events and all.</summary>
    [Fact]
    public void The_whole_year_has_order_two()
    {
        var input = SampleLoops.Indoor with { Hours = 30 * 24, Fish = [SampleLoops.Carp with { Weight = 150 }] };
        double[] Curve(int steps) => YearRun.Of(input with { StepsEachHour = steps }).Series.Oxygen;
        var fine = Curve(64);
        double Error(int steps) => Curve(steps).Zip(fine, (a, b) => Math.Abs(a - b)).Max();
        Assert.InRange(Math.Log2(Error(4) / Error(8)), 1.7, 2.4);
    }

    /// <summary>Derived: fish in water of constant temperature grow by the coefficient that they were given; what is still in the guts is missing.</summary>
    [Fact]
    public void Fish_grow_by_their_coefficient()
    {
        var input = SampleLoops.Indoor with
        {
            Hours = 120 * 24,
            StartHour = 8,
            Air = SampleLoops.Constant(26.5),
            Humidity = SampleLoops.Constant(100),
            Loop = SampleLoops.Indoor.Loop with { PumpHeat = 0, HeaterWatts = 0, SourceTemperature = 26.5 },
            Fish = [SampleLoops.Carp with { Number = 5, Weight = 100, Mortality = 0, HarvestAt = double.PositiveInfinity }],
            Places = [],
            Stands = [],
        };
        var result = YearRun.Of(input);
        var wanted = Runnel.Engine.Fish.ThermalGrowth.IwamaTautz(100, 0.08, 26.5, 120);
        Assert.Equal(wanted, result.Series.FishMass[^1] * 1000 / 5, 0.015 * wanted);
        Assert.Equal(input.Fish[0].FeedConversion, result.Feed / result.FishGained, 0.02);
    }

    [Fact]
    public void Impossible_loops_fail_with_a_reason()
    {
        FailureKind? Why(YearInput input)
        {
            var result = YearRun.Of(input);
            Sound(result);
            return result.Failure?.Kind;
        }

        var indoor = SampleLoops.Indoor;
        Assert.Equal(FailureKind.NoWater, Why(indoor with { Loop = indoor.Loop with { TankWater = 0 } }));
        Assert.Equal(FailureKind.NoWater, Why(indoor with { Care = indoor.Care with { TopsUp = false, Exchange = 0.02 } }));
        Assert.Equal(FailureKind.LowOxygen, Why(indoor with { Fish = [SampleLoops.Carp with { Number = 5000, Weight = 400, HarvestAt = 1e9 }] }));
        Assert.Equal(FailureKind.Freezing, Why(indoor with { Air = SampleLoops.Constant(-15), Fish = [] }));
        Assert.Equal(FailureKind.TooCold, Why(SampleLoops.Greenhouse with { Loop = SampleLoops.Greenhouse.Loop with { HeaterWatts = 0 } }));
        var gap = SampleLoops.Air(18, 2, 1);
        gap[2500] = double.NaN;
        Assert.Equal(FailureKind.NoWeather, Why(indoor with { Air = gap }));
        Assert.Equal(2500 - indoor.StartHour, YearRun.Of(indoor with { Air = gap }).HoursRun);
    }

    /// <summary>Without a pump no ammonia reaches the bacteria and no water falls: ammonia builds up and nothing is nitrified.</summary>
    [Fact]
    public void A_dead_pump_lets_ammonia_build_up()
    {
        var input = SampleLoops.Indoor with { Loop = SampleLoops.Indoor.Loop with { PumpFlow = 0 }, Hours = 90 * 24 };
        var result = YearRun.Of(input);
        Sound(result);
        Assert.Equal(0, result.Nitrified, 1e-9);
        Assert.Equal(0, result.CropPicked - result.Events.Where(e => e.Kind == YearEventKind.Picked).Sum(e => e.Amount), 1e-9);
        Assert.True(result.Series.Ammonia[result.HoursRun - 1] > 20 * YearRun.Of(SampleLoops.Indoor).Series.Ammonia.Max());
    }

    [Fact]
    public void Any_loop_runs_or_fails_but_never_ends_in_nonsense() =>
        Gen.Select(Gen.Double[0, 3], Gen.Double[0, 3], Gen.Double[0, 5], Gen.Double[0, 400], Gen.Int[0, 3000], Gen.Double[0.5, 800], Gen.Double[-30, 45])
            .Sample((tank, bed, flow, area, number, weight, air) =>
            {
                var loop = SampleLoops.Indoor.Loop with { TankWater = tank, BedWater = bed, PumpFlow = flow, FilterArea = area };
                Sound(YearRun.Of(SampleLoops.Indoor with
                {
                    Loop = loop,
                    Hours = 21 * 24,
                    Air = SampleLoops.Constant(air),
                    Fish = [SampleLoops.Carp with { Number = number, Weight = weight }],
                }));
            }, iter: 300);

    [Fact]
    public void A_power_cut_at_the_worst_hour_is_timed_to_the_minute()
    {
        var input = SampleLoops.Greenhouse with { Fish = [SampleLoops.Tilapia with { Weight = 200, HarvestAt = 600 }] };
        var year = YearRun.Of(input);
        var cut = WorstHours.CutPower(input, year)!;
        var at = cut.Hour - 1;
        // Derived: oxygen in store over its use is the time without any coming in, while the fish slow down little above 2.5 mg/L.
        var simple = (year.Series.Oxygen[at] - 2.5) * input.Loop.TankWater / year.Series.OxygenDemand[at];
        Assert.InRange(cut.HoursToCritical!.Value, 0.85 * simple, 1.6 * simple);
    }

    [Fact]
    public void Alkalinity_runs_out_when_no_base_is_dosed()
    {
        var days = WorstHours.DaysOfAlkalinity(SampleLoops.Indoor);
        Assert.True(days is > 20 and < 365, $"{days}");
    }
}
