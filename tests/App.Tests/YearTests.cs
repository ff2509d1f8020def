using Runnel.Catalogue;
using Runnel.Engine.Assess;
using Runnel.Engine.Year;
using Runnel.Files;

namespace Runnel.App.Tests;

/// <summary>The year of whole plans.</summary>
public sealed class YearTests
{
    public static TheoryData<string> Examples => [.. Plans.Examples.Select(p => Path.GetFileName(p))];

    private static YearReport Year(string example)
    {
        var path = Plans.Examples.Single(p => Path.GetFileName(p) == example);
        var plan = PlanFile.Parse(File.ReadAllText(path), example).Plan!;
        return YearAssessment.Of(plan, Shelves.Standard, cancel: TestContext.Current.CancellationToken)!;
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void The_examples_live_through_their_year(string example)
    {
        var year = Year(example);
        TestContext.Current.SendDiagnosticMessage(example + "\n" + string.Join('\n', year.Figures.All.Select(f => $"{f.Id} {f.Value:G5} {f.Unit!.Symbol}"))
            + "\n" + string.Join('\n', year.Findings.Select(f => $"{f.Severity} {f.Code} {f.Where}: {f.Saw.Print(a => $"{a.Unit.FromSi(a.Si):G4} {a.Unit.Symbol}")}")));
        Assert.Null(year.Run.Failure);
        Assert.Equal(YearInput.HoursOfYear, year.Run.HoursRun);
        Assert.True(Math.Abs(year.Run.Nitrogen.ClosingError) < 1e-11);
        Assert.True(year.Run.FishGained > 0 && year.Run.CropPicked > 0);
        // FAO Technical Paper 589, chapter 7: grow-out takes 1 to 2 kg of feed for each kg gained in the kinds of these plans.
        Assert.InRange(year.Run.Feed / year.Run.FishGained, 1.3, 2.2);
        // Few fish under an open surface may breathe on for two days: then there is nothing to say.
        Assert.Equal(year.Cut!.HoursToCritical is not null, year.Findings.Any(f => f.Code == "year.power-cut"));
        Assert.Equal(example == "floods-on-power-loss.yaml", year.Cut.HoursToCritical is null);
        Assert.NotNull(year.Start!.ReadyDay);
    }

    [Fact]
    public void Dates_are_those_of_the_calendar()
    {
        var year = Year("laundry-room.yaml");
        Assert.Equal("1 April", year.Day(0).ToString());
        Assert.Equal("31 March", year.Day(YearInput.HoursOfYear - 24).ToString());
        Assert.Equal("1 April", year.Day(YearInput.HoursOfYear - 8).ToString());
    }

    /// <summary>Half-drawn plans give a report, nothing, or a failure with a date; never an exception or a number that is none.</summary>
    [Theory]
    [InlineData("")]
    [InlineData("fish:\n  - {species: Nile tilapia, number: 900000, weight: 900 g}\npumps:\n  p: {watts: 20 W}\n")]
    [InlineData("fish:\n  - {species: unheard-of fish, number: 9, weight: 90 g}\n")]
    [InlineData("fish:\n  - {species: rainbow trout, number: 9, weight: 90 g, harvest at: 300 g}\ncrops:\n  - {crop: tomato}\nlamps:\n  l: {watts: 300 W, hours: 14 h}\n")]
    public void Poor_plans_end_in_findings(string more)
    {
        var year = YearAssessment.Of(Plans.File(more).Plan!, Shelves.Standard, cancel: TestContext.Current.CancellationToken);
        Assert.True(year is null || year.Run.Failure is null || year.Findings.Any(f => f.Code == "year.failed"));
        Assert.All(year?.Figures.All ?? [], f => Assert.True(double.IsFinite(f.Si)));
    }
}
