using System.Diagnostics;
using System.Text;
using Runnel.Files.Photometry;

namespace Runnel.Files.Tests;

/// <summary>Damaged photometric files end in errors or in a lamp: no exception, and none takes long.</summary>
public class PhotometryDamageTests
{
    private const int Copies = 10_000;
    private const int Seed = 20261125;
    private static readonly string[] Strange =
        ["\0", "\u001A", "\uFEFF", "NaN", "-1", "1e308", "1e-320", "9999999999999999999", "2000", "TILT=INCLUDE\n", "TILT=x", "[", "]", ",", "\r", "\n", "0x10", "½", "-", "360", "270"];

    [Fact]
    public void Ten_thousand_damaged_files_end_in_errors_or_a_lamp()
    {
        const string Row = "100 96.593 86.603 70.711 50 25.882 0";
        string[] whole =
        [
            PhotometryTests.Matt,
            PhotometryTests.Matt.Replace("TILT=NONE\n", "TILT=INCLUDE\n1\n3\n0 45 90\n1 .95 .9\n"),
            PhotometryTests.Matt.Replace("7 1 1 2", "7 3 1 1").Replace("\n0\n100", "\n0 45 90\n100").Replace(Row, $"{Row}\n{Row}\n{Row}"),
            PhotometryTests.Matt.Replace("TILT=NONE", "TILT=lamp.tlt").Replace("IESNA:LM-63-2002", "IESNA91"),
        ];
        var random = new Random(Seed);
        var (broken, sound) = (0, 0);
        for (var i = 0; i < Copies; i++)
        {
            var text = Damage(whole[i % whole.Length], random);
            var begun = Stopwatch.GetTimestamp();
            try
            {
                var file = PhotometryFile.Parse(text, "a.ies", _ => Damage("1\n3\n0 45 90\n1 .95 .9\n", random));
                Assert.Equal(file.Lamp is null, file.Errors.Count > 0);
                Assert.InRange(file.Errors.Count, 0, PhotometryFile.MostErrors + 1);
                Assert.All(file.Errors, e => Assert.True(e.Line >= 1 && e.Column >= 1 && e.Problem.Length > 0 && e.Mend.Length > 0, e.ToString()));
                if (file.Lamp is { } lamp)
                {
                    Assert.True(double.IsFinite(lamp.Lumens) && double.IsFinite(lamp.Table.At(33, 44)) && double.IsFinite(lamp.Tilt?.At(10) ?? 0));
                }
                _ = file.Lamp is null ? ++broken : ++sound;
            }
            catch (Exception e) when (e is not Xunit.Sdk.XunitException)
            {
                Assert.Fail($"copy {i}: {e}\n{text}");
            }
            Assert.True(Stopwatch.GetElapsedTime(begun) < TimeSpan.FromSeconds(2), $"copy {i} hung");
        }
        // The damage must be damage, and must not always be fatal.
        Assert.True(broken > Copies / 10 && sound > Copies / 20, $"{broken} with errors, {sound} without");
    }

    private static string Damage(string whole, Random random)
    {
        var text = new StringBuilder(whole);
        for (var times = random.Next(1, 4); times > 0 && text.Length > 1; times--)
        {
            var at = random.Next(text.Length);
            var length = random.Next(1, Math.Min(30, text.Length - at) + 1);
            switch (random.Next(6))
            {
                case 0:
                    text[at] = (char)(text[at] ^ (1 << random.Next(8)));
                    break;
                case 1:
                    text.Remove(at, length);
                    break;
                case 2:
                    text.Insert(random.Next(text.Length), text.ToString(at, length));
                    break;
                case 3 when random.Next(4) == 0:
                    text.Length = at;
                    break;
                case 4:
                    text.Insert(at, Strange[random.Next(Strange.Length)]);
                    break;
                default:
                    text[at] = (char)random.Next(32, 127);
                    break;
            }
        }
        return text.ToString();
    }
}
