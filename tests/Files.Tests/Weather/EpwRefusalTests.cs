using System.Text;
using CsCheck;
using Runnel.Files.Weather;

namespace Runnel.Files.Tests.Weather;

/// <summary>Damaged weather files: refused with the place of every fault, never by an exception.</summary>
public sealed class EpwRefusalTests
{
    private static IReadOnlyList<PlanError> Refused(string text)
    {
        var read = EpwFile.Parse(text, "f.epw");
        Assert.Null(read.File);
        Assert.NotEmpty(read.Errors);
        Assert.All(read.Errors, e =>
        {
            Assert.Equal("f.epw", e.File);
            Assert.True(e.Line >= 1 && e.Column >= 1);
            Assert.NotEmpty(e.Problem);
        });
        return read.Errors;
    }

    [Theory]
    [InlineData("", "the file is empty")]
    [InlineData("place:\n  setting: indoors\n", "not an EPW weather file")]
    [InlineData("LOCATION,a,b,c,d,e,1,2,3,4\n", "ends inside its header")]
    [InlineData("LOCATION,a\0b", "not a text file")]
    public void Other_files_are_told_apart(string text, string said) => Assert.Contains(said, Refused(text)[0].ToString(), StringComparison.Ordinal);

    [Fact]
    public void A_wrong_value_is_named_with_line_and_column()
    {
        var epw = new InventedEpw { Change = (h, row) => row[6] = h == 10 ? "12,5" : row[6] };
        var error = Assert.Single(Refused(epw.Text()));
        Assert.Equal(InventedEpw.HeaderLines + 11, error.Line);
        Assert.Contains("36 fields", error.Problem, StringComparison.Ordinal);
        Assert.Contains("35", error.Mend, StringComparison.Ordinal);

        epw = new() { Change = (h, row) => row[6] = h == 10 ? "warm" : row[6] };
        error = Assert.Single(Refused(epw.Text()));
        Assert.Equal(("warm", "dry bulb", InventedEpw.HeaderLines + 11), (error.Read, error.Where, error.Line));
        Assert.Equal("1980,1,1,11,0,?9?9?9?9E0?9,".Length + 1, error.Column);
        Assert.Contains("-70 to 70 °C", error.Mend, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(6, "80", "dry bulb")]
    [InlineData(6, "NaN", "dry bulb")]
    [InlineData(6, "1e999", "dry bulb")]
    [InlineData(8, "-1", "relative humidity")]
    [InlineData(9, "995", "pressure")]
    [InlineData(13, "-9999", "global radiation")]
    [InlineData(13, "2500", "global radiation")]
    [InlineData(21, "-3", "wind speed")]
    [InlineData(1, "13", "month")]
    [InlineData(2, "0", "day")]
    [InlineData(3, "25", "hour")]
    [InlineData(3, "0", "hour")]
    [InlineData(4, "75", "minute")]
    public void No_impossible_value_passes(int field, string value, string where)
    {
        var epw = new InventedEpw { Change = (h, row) => row[field] = h == 4000 ? value : row[field] };
        var error = Assert.Single(Refused(epw.Text()));
        Assert.Equal((where, value, InventedEpw.HeaderLines + 4001), (error.Where, error.Read, error.Line));
    }

    [Fact]
    public void All_errors_come_at_once_up_to_a_bound_and_no_kind_hides_another()
    {
        var epw = new InventedEpw
        {
            Location = "LOCATION,Ford,XX,ZZZ,made up,0,95,-88.0,-6.0,200.0",
            Change = (h, row) =>
            {
                row[6] = "hot";
                row[21] = h == 8000 ? "calm" : row[21];
            },
        };
        var errors = Refused(epw.Text());
        Assert.InRange(errors.Count, 4, 30);
        Assert.Contains(errors, e => e.Where == "LOCATION / latitude" && e.Read == "95" && e.Line == 1);
        Assert.Contains(errors, e => e.Read == "calm" && e.Line == InventedEpw.HeaderLines + 8001);
        Assert.Equal("8,756 more errors are not shown", errors[^1].Problem);
        Assert.Equal(errors.OrderBy(e => e.Line).Select(e => e.Line), errors.Select(e => e.Line));
    }

    [Fact]
    public void Missing_rows_are_named()
    {
        var epw = new InventedEpw { Change = (_, _) => { } };
        var lines = epw.Text().Split("\r\n").ToList();
        var cut = lines.Take(InventedEpw.HeaderLines + 8000);
        Assert.Contains("30 November, hour 9 to 31 December, hour 24 are missing", Assert.Single(Refused(string.Join('\n', cut))).Problem, StringComparison.Ordinal);
        lines.RemoveAt(InventedEpw.HeaderLines + 30);
        Assert.Contains("the row of 2 January, hour 7 is missing", Assert.Single(Refused(string.Join('\n', lines))).Problem, StringComparison.Ordinal);
        Assert.Contains("no row below the header", Refused(string.Join('\n', lines.Take(8)))[0].Problem, StringComparison.Ordinal);
    }

    [Fact]
    public void A_row_twice_or_in_the_wrong_order_is_named()
    {
        var lines = new InventedEpw().Text().Split("\r\n").ToList();
        (lines[100], lines[200]) = (lines[200], lines[100]);
        Assert.Contains(Refused(string.Join('\n', lines)), e => e.Problem.Contains("comes after", StringComparison.Ordinal));
        (lines[100], lines[200]) = (lines[200], lines[100]);
        lines.Insert(100, lines[99]);
        Assert.Contains("a second time", Assert.Single(Refused(string.Join('\n', lines))).Problem, StringComparison.Ordinal);
    }

    [Fact]
    public void Half_a_29_February_is_not_a_year()
    {
        var lines = new InventedEpw { Leap = true }.Text().Split("\r\n").ToList();
        lines.RemoveAt(InventedEpw.HeaderLines + (31 + 28) * 24 + 3);
        Assert.Contains("29 February, hour 4", Assert.Single(Refused(string.Join('\n', lines))).Problem, StringComparison.Ordinal);
    }

    [Fact]
    public void Too_much_missing_is_an_error_and_not_a_guess()
    {
        var long7 = new InventedEpw { Change = (h, row) => row[6] = h is >= 300 and < 307 ? "99.9" : row[6] };
        Assert.Contains("7 hours in a row are marked as missing, from 13 January, hour 13", Assert.Single(Refused(long7.Text())).Problem, StringComparison.Ordinal);
        var often = new InventedEpw { Change = (h, row) => row[13] = h % 40 == 0 ? "9999" : row[13] };
        Assert.Contains("219 of 8,760 hours", Assert.Single(Refused(often.Text())).Problem, StringComparison.Ordinal);
        var dry = new InventedEpw { Change = (_, row) => (row[7], row[8]) = ("99.9", "999") };
        Assert.Equal("relative humidity", Assert.Single(Refused(dry.Text())).Where);
    }

    [Fact]
    public void A_damaged_header_is_named_line_by_line()
    {
        var lines = new InventedEpw().Text().Split("\r\n").ToList();
        lines[3] = "GROUND TEMPERATURES,3,.5,,,,1,2";
        lines[7] = "DATA PERIODS,1,4,Data,Sunday, 1/ 1,12/31";
        lines.RemoveAt(5);
        var errors = Refused(string.Join('\n', lines));
        Assert.Contains(errors, e => e.Line == 4 && e.Problem.Contains("3 depths take 50 fields", StringComparison.Ordinal));
        Assert.Contains(errors, e => e.Line == 6 && e.Problem.Contains("COMMENTS 1 is missing", StringComparison.Ordinal));
        Assert.Contains(errors, e => e.Line == 7 && e.Read == "4" && e.Problem.Contains("one row an hour", StringComparison.Ordinal));
        lines[1] = "DESIGN CONDITONS,0";
        Assert.Contains(Refused(string.Join('\n', lines)), e => e.Line == 2 && e.Mend == "did you mean DESIGN CONDITIONS?");
        lines[0] = "LOCATION,\"Ford,XX,ZZZ,made up,0,42,-88.0,-6.0,200.0";
        Assert.Contains(Refused(string.Join('\n', lines)), e => e.Line == 1 && e.Problem.Contains("never closed", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("-50.0,-88.0,-6.0", "June has 10.9 MJ/m²/d of sun, but only 7.")]
    [InlineData("42.0,88.0,-6.0", "before the noon of longitude 88 in time zone -6")]
    [InlineData("42.0,-88.0,6.0", "before the noon of longitude -88 in time zone 6")]
    public void A_sun_that_cannot_be_that_of_the_place_is_refused(string where, string said)
    {
        var epw = new InventedEpw { Location = $"LOCATION,Ford,XX,ZZZ,made up,0,{where},200.0" };
        Assert.Contains(Refused(epw.Text()), e => e.Problem.Contains(said, StringComparison.Ordinal));
    }

    [Fact]
    public void Kilojoules_for_watt_hours_are_found_where_they_are_too_much()
    {
        var epw = new InventedEpw { Change = (_, row) => row[13] = (3.6 * double.Parse(row[13])).ToString() };
        Assert.Contains(Refused(epw.Text()), e => e.Mend.Contains("Wh/m²", StringComparison.Ordinal));
    }

    [Fact]
    public void Sizes_are_bounded_and_huge_rows_do_no_harm()
    {
        Assert.Contains("more than a weather file may have", Refused(new string('x', EpwFile.LargestBytes + 1))[0].Problem, StringComparison.Ordinal);
        var text = new InventedEpw().Text();
        Assert.NotEmpty(Refused(text + new string(',', 5_000_000)));
        var twice = text + text[(text.IndexOf("\n1980,", StringComparison.Ordinal) + 1)..];
        Assert.Contains(Refused(twice), e => e.Problem.Contains("this is row 8,785", StringComparison.Ordinal));
    }

    [Fact]
    public void A_plan_reads_no_weather_outside_its_folder()
    {
        using var folder = new TemporaryFolder();
        var plan = folder.At("loop.yaml");
        foreach (var name in new[] { "../f.epw", "a/../../f.epw", "/f.epw", "C:\\f.epw", "..\\f.epw" })
        {
            Assert.Contains("beside its plan", WeatherReader.Beside(plan, name).Errors[0].Problem, StringComparison.Ordinal);
        }
        Assert.Contains("no such file", WeatherReader.Beside(plan, "none.epw").Errors[0].Problem, StringComparison.Ordinal);
        Assert.Contains("not the name of a file", WeatherReader.Beside(plan, " ").Errors[0].Problem, StringComparison.Ordinal);
        Directory.CreateDirectory(folder.At("sub.epw"));
        Assert.Contains("a folder", WeatherReader.Beside(plan, "sub.epw").Errors[0].Problem, StringComparison.Ordinal);
        File.WriteAllText(folder.At("empty.epw"), "");
        Assert.Contains("empty", WeatherReader.Beside(plan, "empty.epw").Errors[0].Problem, StringComparison.Ordinal);
        if (OperatingSystem.IsLinux())
        {
            Assert.Contains("empty", EpwFile.Read("/dev/zero").Errors[0].Problem, StringComparison.Ordinal);
        }
    }

    /// <summary>Any damage of a few characters gives errors or a weather, never an exception.</summary>
    [Fact]
    public void No_damage_throws()
    {
        var text = new InventedEpw().Text();
        var short1 = text[..(text.IndexOf("\n1980,1,2,", StringComparison.Ordinal) + 1)];
        Gen.Select(Gen.Int[0, short1.Length - 20], Gen.Int[0, 12], Gen.String[Gen.Char["0123456789.,-\"\n\r\0eENaé LOCATIN"], 0, 8]).Sample((at, gone, put) =>
        {
            var read = EpwFile.Parse(string.Concat(short1.AsSpan(0, at), put, short1.AsSpan(at + gone)), "f.epw");
            Assert.True(read.File is null && read.Errors.Count is > 0 and <= 30);
        }, iter: 1500);
        Gen.Select(Gen.Int[0, text.Length - 20], Gen.Int[0, 12], Gen.String[Gen.Char["0123456789.,-\"\n"], 0, 8]).Sample((at, gone, put) =>
        {
            var read = EpwFile.Parse(string.Concat(text.AsSpan(0, at), put, text.AsSpan(at + gone)), "f.epw");
            Assert.True(read.File is null == read.Errors.Count > 0 && read.Errors.Count <= 30);
        }, iter: 60);
    }

    [Fact]
    public void Errors_read_like_those_of_plans()
    {
        var epw = new InventedEpw { Change = (h, row) => row[6] = h == 0 ? "warm" : row[6] };
        Assert.Equal("f.epw:9:27: dry bulb: read \"warm\"; this cannot be; a number from -70 to 70 °C, or 99.9 for missing", Refused(epw.Text())[0].ToString());
    }
}
