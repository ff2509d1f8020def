using System.Text;
using CsCheck;
using Runnel.Files.Photometry;

namespace Runnel.Files.Tests;

/// <summary>Photometric files: a lamp worked by hand, every form of the standard, every error with its place.</summary>
public class PhotometryTests
{
    // Invented: a matt lamp of 100 cd straight down, 10 W.
    internal const string Matt = """
        IESNA:LM-63-2002
        [TEST] invented 1
        [TESTLAB] nobody
        [ISSUEDATE] 1 May
        [MANUFAC] nobody
        [LUMINAIRE] matt disc,
        [MORE] white
        TILT=NONE
        1 314.159 1 7 1 1 2 0 0 0
        1 1 10
        0 15 30 45 60 75 90
        0
        100 96.593 86.603 70.711 50 25.882 0

        """;

    [Fact]
    public void A_matt_lamp_has_the_light_worked_by_hand()
    {
        // Derived: 100 π lm on any grid, here within the intensities' own rounding; straight line at 22.5°, lm/W, and 25 lx 1 m aside at 1 m height.
        var lamp = Sound(Matt);
        Assert.Equal(314.159, lamp.Lumens, 3e-3);
        Assert.Equal(91.598, lamp.Table.At(22.5), 5e-4);
        Assert.Equal(31.4, lamp.Efficacy!.Value, 0.02);
        Assert.Equal(1, lamp.LetsOut!.Value, 1e-5);
        Assert.Equal(100, lamp.Table.At(0), 9);
        Assert.Equal(25, lamp.Table.At(45) * Math.Cos(Math.PI / 4) / 2, 1e-3);
        Assert.Equal(10, lamp.Watts);
        Assert.Equal(1, lamp.Table.Downward, 9);
        Assert.Equal(Lm63Edition.Y2002, lamp.Edition);
        Assert.Contains(("LUMINAIRE", "matt disc, white"), lamp.Keywords);
        Assert.Empty(PhotometryFile.Parse(Matt, "a.ies").Remarks);
        Assert.Equal(1, lamp.Emitter().Downward, 9);
    }

    [Theory]
    [InlineData("\r\n")]
    [InlineData("\r")]
    [InlineData("\n\n")]
    public void Lines_may_end_and_wrap_and_be_parted_in_any_way(string end)
    {
        var cut = Matt.IndexOf("1 314", StringComparison.Ordinal);
        var numbers = Matt[cut..].Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries);
        var random = new Random(7);
        var text = new StringBuilder(Matt[..cut].ReplaceLineEndings(end == "\n\n" ? "\n" : end));
        foreach (var number in numbers)
        {
            text.Append(number).Append(random.Next(4) switch { 0 => ", ", 1 => "  ", 2 => end, _ => ",\t" });
        }
        Assert.Equal(314.159, Sound(text.Append('\u001A').ToString()).Lumens, 3e-3);
    }

    [Theory]
    [InlineData("IESNA91", Lm63Edition.Y1991)]
    [InlineData("IESNA:LM-63-1995", Lm63Edition.Y1995)]
    [InlineData("IES:LM-63-2019", Lm63Edition.Y2019)]
    [InlineData("an old lamp, 2 x 32 W", Lm63Edition.Y1986)]
    public void Editions_are_told_by_their_first_line(string first, Lm63Edition edition)
    {
        var lamp = Sound(Matt.Replace("IESNA:LM-63-2002", first));
        Assert.Equal(edition, lamp.Edition);
        Assert.Equal(edition == Lm63Edition.Y1986, lamp.Keywords[0].Text == first);
    }

    [Fact]
    public void Multiplier_and_factors_multiply_the_table()
    {
        var text = Matt.Replace("1 314.159 1 7", "2 157 1.5 7").Replace("1 1 10", "0.9 0.5 10");
        Assert.Equal(1.35 * 314.159, Sound(text).Lumens, 3e-3);
        Assert.Equal(0.675 * 314.159, Sound(text.Replace("LM-63-2002", "LM-63-1995")).Lumens, 3e-3);
        Assert.Equal(1.35, Sound(text).LetsOut!.Value, 0.001);
    }

    [Fact]
    public void Absolute_photometry_and_feet_and_round_openings()
    {
        var lamp = Sound(Matt.Replace("1 314.159 1 7 1 1 2 0 0 0", "1 -1 1 7 1 1 1 -2 -2 0.5"));
        Assert.Null(lamp.LumensEach);
        Assert.Null(lamp.LetsOut);
        Assert.Equal(0.6096, lamp.Width, 9);
        Assert.Equal(0.6096, lamp.Size, 9);
        Assert.True(lamp.IsRound);
        Assert.Equal(0.1524, lamp.Height, 9);
        var oblong = Sound(Matt.Replace("2 0 0 0", "2 0.3 0.4 0"));
        Assert.Equal(0.5, oblong.Size, 9);
        Assert.Equal(0.4, oblong.Length, 9);
    }

    [Theory]
    [InlineData("0 45 90")]
    [InlineData("0 90 180")]
    [InlineData("90 180 270")]
    [InlineData("0 180 360")]
    [InlineData("0 120 240")]
    public void Planes_are_completed_by_their_symmetry(string planes)
    {
        var row = "100 96.593 86.603 70.711 50 25.882 0";
        var lamp = Sound(Matt.Replace("7 1 1 2", "7 3 1 2").Replace("\n0\n100", $"\n{planes}\n100").Replace(row, $"{row}\n{row}\n{row}"));
        Assert.Equal(360, lamp.Table.Horizontal[^1]);
        Assert.Equal(0, lamp.Table.Horizontal[0]);
        Assert.Equal(314.159, lamp.Lumens, 3e-3);
    }

    [Fact]
    public void Tilt_stands_in_the_file_or_beside_it()
    {
        const string Table = "1\n3\n0 45 90\n1 .95 .9\n";
        var included = Sound(Matt.Replace("TILT=NONE\n", "TILT=INCLUDE\n" + Table));
        var beside = PhotometryFile.Parse(Matt.Replace("TILT=NONE", "TILT = lamp.tlt"), "a.ies", name => name == "lamp.tlt" ? Table : null).Lamp!;
        foreach (var lamp in new[] { included, beside })
        {
            Assert.Equal(1, lamp.Tilt!.Geometry);
            Assert.Equal(0.975, lamp.Tilt.At(22.5), 9);
            Assert.Equal(0.9, lamp.Tilt.At(120), 9);
            Assert.Equal(1, lamp.Tilt.At(0), 9);
            Assert.Equal(314.159, lamp.Lumens, 3e-3);
        }
    }

    [Theory]
    [InlineData("7 1 1 2", "7 1 2 2", 9, "type B")]
    [InlineData("7 1 1 2", "7 1 3 2", 9, "type A")]
    [InlineData("7 1 1 2", "7 1 4 2", 9, "1 for type C")]
    [InlineData("7 1 1 2", "7 1 1 3", 9, "1 for feet or 2 for metres")]
    [InlineData("7 1 1 2", "7.5 1 1 2", 9, "whole number")]
    [InlineData("7 1 1 2", "7000 2000 1 2", 9, "whole number")]
    [InlineData("7 1 1 2", "1700 1800 1 2", 9, "more than the rest of the file can hold")]
    [InlineData("1 314.159 1 7", "1 0 1 7", 9, "or -1")]
    [InlineData("1 314.159 1 7", "1 314.159 0 7", 9, "more than 0")]
    [InlineData("1 1 10", "1 1 -10", 10, "0 or more")]
    [InlineData("30 45 60 75", "30 30 60 75", 11, "rising order")]
    [InlineData("75 90\n", "75 85\n", 11, "90 or 180")]
    [InlineData("0 15 30", "5 15 30", 11, "0 or 90")]
    [InlineData("\n0\n100", "\n30\n100", 12, "0")]
    [InlineData("86.603", "86,603x", 13, "a number with a decimal point")]
    [InlineData("86.603", "NaN", 13, "a number with a decimal point")]
    [InlineData("86.603", "1e999", 13, "a number with a decimal point")]
    [InlineData("86.603", "-86.603", 13, "0 or more")]
    [InlineData("25.882 0\n", "25.882\n", 14, "check the counts")]
    [InlineData("25.882 0\n", "25.882 0 7\n", 13, "check the counts")]
    [InlineData("TILT=NONE", "TILT=lamp.tlt", 8, "put it there")]
    [InlineData("TILT=NONE", "TILT=../lamp.tlt", 8, "same folder")]
    [InlineData("TILT=NONE", "TILT=", 8, "TILT=NONE")]
    [InlineData("TILT=NONE\n", "", 13, "a line TILT=NONE")]
    [InlineData("[TEST] invented", "[TEST invented", 2, "[NAME]")]
    [InlineData("LM-63-2002", "LM-63-1066", 1, "IESNA:LM-63-2002")]
    [InlineData("1 314.159 1 7", "1 314.159 1e300 7", 9, "check multiplier")]
    public void An_error_tells_its_line_and_what_would_be_right(string from, string to, int line, string mend)
    {
        Assert.Contains(from, Matt);
        var file = PhotometryFile.Parse(Matt.Replace(from, to), "a.ies");
        Assert.Null(file.Lamp);
        Assert.Contains(file.Errors, e => e.Line == line && (e.Mend + e.Problem).Contains(mend, StringComparison.Ordinal));
    }

    [Fact]
    public void All_errors_come_at_once_in_the_order_of_the_file()
    {
        var file = PhotometryFile.Parse(Matt.Replace("7 1 1 2", "7 1 2 3").Replace("86.603", "many").Replace("75 90\n", "75 80\n"), "a.ies");
        Assert.Equal([9, 9, 11, 13], file.Errors.Select(e => e.Line));
        Assert.Equal("a.ies:13:12: intensity 3 of 7 in plane 1 of 1: read \"many\"; this is no number; write a number with a decimal point, such as 12.5",
            file.Errors[3].ToString());
    }

    [Fact]
    public void A_hundred_errors_are_told_up_to_a_bound()
    {
        var words = string.Join(' ', Enumerable.Repeat("x", 100));
        var file = PhotometryFile.Parse(Matt.Replace("7 1 1 2", "100 1 1 2").Replace("100 96.593", words + " 96.593"), "a.ies");
        Assert.Equal(PhotometryFile.MostErrors + 1, file.Errors.Count);
        Assert.Contains("not told", file.Errors[^1].Problem);
    }

    [Fact]
    public void What_the_standard_asks_for_and_nobody_needs_is_a_remark() =>
        Assert.Contains(PhotometryFile.Parse(Matt.Replace("[MANUFAC] nobody\n", ""), "a.ies").Remarks, r => r.Problem.Contains("[MANUFAC]"));

    [Fact]
    public void A_file_that_is_not_there_or_too_long_is_an_error()
    {
        Assert.Contains("no such file", Assert.Single(PhotometryFile.Read("nowhere.ies").Errors).Problem);
        Assert.Contains("characters", Assert.Single(PhotometryFile.Parse(new(' ', 5_000_000), "a.ies").Errors).Problem);
        Assert.NotEmpty(PhotometryFile.Parse("", "a.ies").Errors);
    }

    [Fact]
    public void A_file_on_disk_is_read_with_the_tilt_beside_it()
    {
        var folder = Directory.CreateTempSubdirectory("photometry");
        try
        {
            File.WriteAllText(Path.Combine(folder.FullName, "lamp.tlt"), "1 2 0 90 1 .9");
            File.WriteAllText(Path.Combine(folder.FullName, "lamp.ies"), Matt.Replace("TILT=NONE", "TILT=lamp.tlt"));
            var file = PhotometryFile.Read(Path.Combine(folder.FullName, "lamp.ies"));
            Assert.Empty(file.Errors);
            Assert.Equal(2, file.Lamp!.Tilt!.Angles.Count);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    [Fact]
    public void Any_table_written_out_is_read_back() =>
        Gen.Select(Gen.Int[2, 12], Gen.Int[1, 5], Gen.Double[0, 5000].Array[60]).Sample((v, h, values) =>
        {
            var down = Enumerable.Range(0, v).Select(i => 180.0 * i / (v - 1));
            var around = Enumerable.Range(0, h).Select(i => h == 1 ? 0 : 360.0 * i / (h - 1)).ToList();
            var text = FormattableString.Invariant($"IESNA91\nTILT=NONE\n1 1000 1 {v} {h} 1 2 0 0 0\n1 1 1\n{string.Join(' ', down)}\n{string.Join(' ', around)}\n{string.Join('\n', values.Take(v * h))}");
            var lamp = Sound(text);
            for (var i = 0; i < v * h; i++)
            {
                Assert.Equal(values[i], lamp.Table.At(180.0 * (i % v) / (v - 1), around[i / v]), 1e-6);
            }
        }, iter: 200);

    private static MeasuredLamp Sound(string text)
    {
        var file = PhotometryFile.Parse(text, "a.ies");
        Assert.Empty(file.Errors);
        return file.Lamp!;
    }
}
