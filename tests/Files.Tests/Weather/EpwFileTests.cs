using System.Text;
using Runnel.Engine.Quantities;
using Runnel.Files.Weather;

namespace Runnel.Files.Tests.Weather;

/// <summary>
/// Weather files as they are met. No real file may be shipped here, so all are invented; the layout is that of the EnergyPlus documentation,
/// the oddities (quoted commas, minute 0 or 60, mixed years, blank soil properties) those seen in files in circulation.
/// </summary>
public sealed class EpwFileTests
{
    private static EpwFile Good(InventedEpw epw)
    {
        var read = EpwFile.Parse(epw.Text(), "ford.epw");
        Assert.Empty(read.Errors);
        return read.File!;
    }

    [Fact]
    public void The_place_is_read()
    {
        var file = Good(new());
        Assert.Equal(("Invented Ford", "XX", "ZZZ", "made up for tests", "000000"), (file.City, file.Region, file.Country, file.Data, file.Station));
        Assert.Equal((42, -88, -6, 200), (file.Latitude, file.Longitude, file.TimeZone, file.Elevation));
        Assert.False(file.HasLeapDay);
    }

    [Fact]
    public void The_ground_is_read_by_depth_with_blank_soil_properties()
    {
        var file = Good(new());
        Assert.Equal([0.5, 4], file.Ground.Select(g => g.Depth));
        Assert.Equal(Enumerable.Range(1, 12).Select(m => (double)m), file.Ground[0].Months);
        Assert.Equal([6, 6, 6, 7, 7, 8, 9, 9, 9, 8, 8, 7], file.Ground[1].Months);
        Assert.Empty(Good(new() { Ground = "GROUND TEMPERATURES,0" }).Ground);
        Assert.Empty(Good(new() { Ground = "GROUND TEMPERATURES" }).Ground);
    }

    [Theory]
    [InlineData(0, "\n")]
    [InlineData(60, "\r\n")]
    [InlineData(60, "\r")]
    public void The_hours_are_read_whatever_the_minute_and_the_line_ends(int minute, string newLine)
    {
        var hours = Good(new() { Minute = minute, NewLine = newLine }).Hours;
        Assert.Equal(8760, hours.Count);
        for (var h = 0; h < 8760; h++)
        {
            Assert.Equal(InventedEpw.Air(h), hours.DryBulb[h]);
            Assert.Equal(InventedEpw.Sun(h), hours.Global[h]);
        }
        Assert.All(hours.Humidity, v => Assert.Equal(71, v));
        Assert.All(hours.Pressure, v => Assert.Equal(99500, v));
        Assert.All(hours.Wind, v => Assert.Equal(2.6, v));
        Assert.All(hours.Rain!.Value, v => Assert.Equal(0.5, v));
        Assert.All(hours.Infrared!.Value, v => Assert.Equal(300, v));
        Assert.Equal(hours.Global.Sum() * 0.6, hours.Direct!.Value.Sum(), 1e-3);
        Assert.Equal(hours.Global.Sum() * 0.4, hours.Diffuse!.Value.Sum(), 1e-3);
        Assert.Equal(hours.DryBulb[5000] - 5, hours.DewPoint[5000], 1e-9);
    }

    [Fact]
    public void Quoted_commas_do_not_part_fields()
    {
        var file = Good(new()
        {
            Location = "LOCATION,\"Ford, Invented\",XX,ZZZ,\"made up, twice\",000000,42.0,-88.0,-6.0,200.0",
            Design = "DESIGN CONDITIONS,1,\"a handbook, of 2009\",,Heating,1,-20.1",
        });
        Assert.Equal("Ford, Invented", file.City);
        Assert.Equal("made up, twice", file.Data);
        Assert.Equal(42, file.Latitude);
    }

    [Fact]
    public void Both_spellings_of_daylight_saving_pass()
    {
        var text = new InventedEpw().Text().Replace("DAYLIGHT SAVINGS", "DAYLIGHT SAVING");
        Assert.Empty(EpwFile.Parse(text, "f.epw").Errors);
    }

    [Fact]
    public void The_rows_decide_whether_there_is_a_29_February()
    {
        var file = Good(new() { Leap = true });
        Assert.True(file.HasLeapDay);
        Assert.Equal(8784, file.Hours.Count);
        Assert.Equal(InventedEpw.Air(8783), file.Hours.DryBulb[8783]);
    }

    [Fact]
    public void Months_are_summed_up_with_their_own_days()
    {
        foreach (var leap in new[] { false, true })
        {
            var climate = Good(new() { Leap = leap }).ToClimate();
            var hour = 0;
            for (var m = 0; m < 12; m++)
            {
                var days = InventedEpw.Days[m] + (leap && m == 1 ? 1 : 0);
                double air = 0, sun = 0;
                for (var h = 0; h < days * 24; h++, hour++)
                {
                    air += InventedEpw.Air(hour);
                    sun += InventedEpw.Sun(hour);
                }
                Assert.Equal(air / (days * 24), climate.Air[m].Likely, 1e-9);
                Assert.Equal(sun * 0.0036 / days, Units.MegajoulePerSquareMetreDay.FromSi(climate.Radiation[m].Likely), 1e-9);
            }
            Assert.Equal(42, climate.Latitude);
            Assert.Equal("Invented Ford", climate.Name);
        }
    }

    [Fact]
    public void Every_month_says_where_it_comes_from()
    {
        var climate = Good(new()).ToClimate();
        Assert.Equal("place/weather/air/1", climate.Air[0].From.Path);
        Assert.Equal("place/weather/radiation/12", climate.Radiation[11].From.Path);
        Assert.Equal("Daily sun on the level in December, from the weather file", climate.Radiation[11].From.Label);
        Assert.All(climate.Air.Concat(climate.Radiation), e => Assert.Contains("ford.epw", e.From.Source!, StringComparison.Ordinal));
        Assert.Distinct(climate.Air.Concat(climate.Radiation).Select(e => e.From.Path));
    }

    [Fact]
    public void Short_gaps_are_filled_by_straight_line_and_counted()
    {
        var file = Good(new()
        {
            Change = (h, row) =>
            {
                if (h is 100 or 101 or 102 or 5000)
                {
                    row[6] = h == 5000 ? "" : "99.9";
                }
                if (h is 8759 or 0)
                {
                    row[13] = "9999";
                }
            },
        });
        var air = file.Hours.DryBulb;
        for (var k = 1; k <= 3; k++)
        {
            Assert.Equal(InventedEpw.Air(99) + (InventedEpw.Air(103) - InventedEpw.Air(99)) * k / 4, air[99 + k], 1e-9);
        }
        Assert.Equal((InventedEpw.Air(4999) + InventedEpw.Air(5001)) / 2, air[5000], 1e-9);
        Assert.Equal(0, file.Hours.Global[0]);
        Assert.Equal(0, file.Hours.Global[8759]);
        Assert.Equal([new("dry bulb", 4, 3), new("global radiation", 2, 2)], file.Filled);
    }

    [Fact]
    public void What_a_file_leaves_out_is_worked_out_and_said()
    {
        var file = Good(new()
        {
            Change = (_, row) => (row[7], row[9], row[12], row[14], row[15], row[33]) = ("99.9", "999999", "9999", "9999", "9999", "999"),
        });
        Assert.Equal(["pressure", "dew point", "direct radiation", "diffuse radiation", "infrared from the sky", "rain"], file.LeftOut.Select(l => l.Quantity));
        Assert.Null(file.Hours.Direct);
        Assert.Null(file.Hours.Rain);
        // 200 m: 98.94 kPa in printed tables of the standard atmosphere (from memory).
        Assert.Equal(98945, file.Hours.Pressure[0], 10.0);
        // A dew point is where the saturation pressure is the share of that of the air (Magnus in the form of WMO, 17.62 and 243.12).
        static double Es(double t) => Math.Exp(17.62 * t / (243.12 + t));
        for (var h = 0; h < 8760; h += 97)
        {
            Assert.Equal(0.71, Es(file.Hours.DewPoint[h]) / Es(file.Hours.DryBulb[h]), 0.003);
        }
    }

    [Fact]
    public void Humidity_above_all_is_all()
    {
        var file = Good(new() { Change = (h, row) => row[8] = h == 7 ? "104" : "80" });
        Assert.Equal(100, file.Hours.Humidity[7]);
    }

    [Fact]
    public void A_file_is_read_from_disk_in_either_encoding_and_with_a_mark()
    {
        using var folder = new TemporaryFolder();
        var text = new InventedEpw { Location = "LOCATION,Fürd,XX,ZZZ,made up,000000,42.0,-88.0,-6.0,200.0" }.Text();
        File.WriteAllText(folder.At("a.epw"), text, Encoding.Latin1);
        File.WriteAllText(folder.At("b.epw"), text, new UTF8Encoding(true));
        Assert.Equal("Fürd", EpwFile.Read(folder.At("a.epw")).File?.City);
        Assert.Equal("Fürd", EpwFile.Read(folder.At("b.epw")).File?.City);
        Assert.Equal("Fürd", WeatherReader.Beside(folder.At("loop.yaml"), "b.epw").File?.City);
    }
}
