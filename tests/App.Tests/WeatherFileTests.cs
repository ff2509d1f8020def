using System.Text;

namespace Runnel.App.Tests;

/// <summary>A plan that names a weather file. The file is synthetic: a sine of days, invented.</summary>
public sealed class WeatherFileTests : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("runnel");

    public void Dispose() => _folder.Delete(recursive: true);

    [Fact]
    public void Its_months_are_the_air_of_an_outdoor_loop()
    {
        File.WriteAllText(Path.Combine(_folder.FullName, "town.epw"), Weather(kelvin => kelvin));
        var bench = Open();

        Assert.Empty(bench.WeatherErrors);
        var assessment = bench.Assess(cancel: TestContext.Current.CancellationToken)!;
        // Derived: the mean of 31 whole days of the sine that wrote the file.
        var january = Enumerable.Range(0, 31).Average(day => 10 - 8 * Math.Cos(2 * Math.PI * day / 365));
        Assert.Equal(january, assessment.Figures["water.temperature.month.1"].Value, 0.06);
    }

    [Fact]
    public void A_damaged_one_is_said_and_left_out()
    {
        File.WriteAllText(Path.Combine(_folder.FullName, "town.epw"), Weather(value => "warm"));
        var bench = Open();

        Assert.NotEmpty(bench.WeatherErrors);
        Assert.Contains(bench.Assess(cancel: TestContext.Current.CancellationToken)!.Findings, f => f.Code == "weather.unreadable");
    }

    [Fact]
    public void A_missing_one_is_said() => Assert.Contains(
        Open().Assess(cancel: TestContext.Current.CancellationToken)!.Findings, f => f.Code == "weather.unreadable");

    private Workbench Open()
    {
        var path = Path.Combine(_folder.FullName, "plan.yaml");
        File.WriteAllText(path, Plans.Base.Replace("setting: indoors, air: 18 °C", "setting: outdoors, weather: town.epw"));
        return Workbench.Open(path);
    }

    private static string Weather(Func<string, string> air)
    {
        var text = new StringBuilder(
            "LOCATION,Invented,-,-,synthetic,000000,50.0,10.0,1.0,100.0\nDESIGN CONDITIONS,0\nTYPICAL/EXTREME PERIODS,0\nGROUND TEMPERATURES,0\n"
            + "HOLIDAYS/DAYLIGHT SAVINGS,No,0,0,0\nCOMMENTS 1,invented\nCOMMENTS 2,\nDATA PERIODS,1,1,Data,Sunday,1/1,12/31\n");
        for (var hour = 0; hour < 8760; hour++)
        {
            var day = new DateTime(2025, 1, 1).AddHours(hour);
            var t = (10 - 8 * Math.Cos(2 * Math.PI * (hour / 24) / 365)).ToString("0.0");
            text.Append(
                $"2025,{day.Month},{day.Day},{day.Hour + 1},60,A,{air(t)},5.0,70,100000,0,0,300,0,0,0,0,0,0,0,180,2.0,5,5,20,9999,9,999999999,20,0.1,0,88,0.2,0,1\n");
        }
        return text.ToString();
    }
}
