using System.Globalization;
using System.Text;

namespace Runnel.Files.Tests.Weather;

/// <summary>
/// Writes weather files of places that do not exist: the format is the open EPW's, every number is made up by a rule that tests can repeat.
/// </summary>
internal sealed class InventedEpw
{
    public const int HeaderLines = 8;

    public static readonly int[] Days = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

    public string Location { get; set; } = "LOCATION,Invented Ford,XX,ZZZ,made up for tests,000000,42.0,-88.0,-6.0,200.0";

    public string Ground { get; set; } = "GROUND TEMPERATURES,2,.5,,,,1,2,3,4,5,6,7,8,9,10,11,12,4,1.5,1800,900,6,6,6,7,7,8,9,9,9,8,8,7";

    public string Design { get; set; } = "DESIGN CONDITIONS,0";

    public string Periods { get; set; } = "DATA PERIODS,1,1,Data,Sunday, 1/ 1,12/31";

    public bool Leap { get; set; }

    public int Minute { get; set; }

    public string NewLine { get; set; } = "\r\n";

    /// <summary>Changes the fields of a row; gets the place of the hour in the year, from 0.</summary>
    public Action<int, string[]> Change { get; set; } = static (_, _) => { };

    public static double Air(int hour) => Math.Round(10 - 12 * Math.Cos(2 * Math.PI * hour / 8760) + 4 * Math.Sin(2 * Math.PI * (hour % 24 - 8) / 24), 1);

    public static double Sun(int hour) => Math.Round(Math.Max(0, 400 * Math.Sin(Math.PI * (hour % 24 - 6) / 12)));

    public string Text()
    {
        var text = new StringBuilder();
        string[] header =
        [
            Location, Design, "TYPICAL/EXTREME PERIODS,0", Ground, "HOLIDAYS/DAYLIGHT SAVINGS,No,0,0,0",
            "COMMENTS 1,\"invented, for tests only\"", "COMMENTS 2,", Periods,
        ];
        foreach (var line in header)
        {
            text.Append(line).Append(NewLine);
        }
        var hour = 0;
        for (var m = 0; m < 12; m++)
        {
            for (var d = 1; d <= Days[m] + (Leap && m == 1 ? 1 : 0); d++)
            {
                for (var h = 1; h <= 24; h++)
                {
                    var row = Row(1980 + m, m + 1, d, h, hour);
                    Change(hour, row);
                    if (row.Length > 0)
                    {
                        text.AppendJoin(',', row).Append(NewLine);
                    }
                    hour++;
                }
            }
        }
        return text.ToString();
    }

    private string[] Row(int year, int month, int day, int hour, int at)
    {
        string S(double v) => v.ToString(CultureInfo.InvariantCulture);
        var sun = Sun(at);
        return
        [
            S(year), S(month), S(day), S(hour), S(Minute), "?9?9?9?9E0?9", S(Air(at)), S(Air(at) - 5), "71", "99500", "9999", "9999", "300",
            S(sun), S(sun * 0.6), S(sun * 0.4), "999999", "999999", "999999", "9999", "270", "2.6", "5", "5", "9999", "77777", "9",
            "999999999", "999", ".999", "999", "88", "999", "0.5", "1",
        ];
    }
}
