using Runnel.Files.Errors;

namespace Runnel.Files.Weather;

/// <summary>The eight lines above the hours.</summary>
internal sealed class EpwHeader(EpwErrors errors, EpwFields fields)
{
    private const string Location = "LOCATION";
    private const string GroundLine = "GROUND TEMPERATURES";
    private const string Holidays = "HOLIDAYS/DAYLIGHT SAVINGS";
    private const string Periods = "DATA PERIODS";
    private const int MostDepths = 12;
    private const int FieldsPerDepth = 16;

    private static readonly string[] Lines =
        [Location, "DESIGN CONDITIONS", "TYPICAL/EXTREME PERIODS", GroundLine, Holidays, "COMMENTS 1", "COMMENTS 2", Periods];

    private readonly List<GroundTemperatures> _ground = [];

    public string City { get; private set; } = "";

    public string Region { get; private set; } = "";

    public string Country { get; private set; } = "";

    public string Data { get; private set; } = "";

    public string Station { get; private set; } = "";

    public double Latitude { get; private set; }

    public double Longitude { get; private set; }

    public double TimeZone { get; private set; }

    public double Elevation { get; private set; }

    public IReadOnlyList<GroundTemperatures> Ground => _ground;

    /// <summary>Reads up to the line DATA PERIODS. False if this is no weather file at all, so that reading on would be of no use.</summary>
    public bool Read(EpwLines lines)
    {
        var wanted = 0;
        while (wanted < Lines.Length)
        {
            if (!lines.Next())
            {
                errors.Add("header", Math.Max(1, lines.Number), 1, "", "", lines.Number == 0 ? "the file is empty" : "the file ends inside its header",
                    $"the line {Lines[wanted]} comes next");
                return false;
            }
            fields.Split(lines.Text, lines.Start, lines.End);
            var word = fields[1];
            var at = Find(word);
            if (at < wanted)
            {
                Wrong(lines.Number, wanted, word, at >= 0);
                if (wanted == 0)
                {
                    return false;
                }
                if (EpwParser.Number(word, out _) && fields.Count >= EpwColumn.FewestFields)
                {
                    return false;
                }
                wanted++;
                continue;
            }
            for (; wanted < at; wanted++)
            {
                errors.Add("header", lines.Number, 1, "header", word, $"the line {Lines[wanted]} is missing",
                    $"the eight header lines are {string.Join(", ", Lines)}, in this order");
            }
            Take(lines.Number, at);
            wanted = at + 1;
        }
        return true;
    }

    private static int Find(ReadOnlySpan<char> word)
    {
        // Both spellings occur in files.
        if (word.Equals("HOLIDAYS/DAYLIGHT SAVING", StringComparison.OrdinalIgnoreCase))
        {
            return Array.IndexOf(Lines, Holidays);
        }
        for (var i = 0; i < Lines.Length; i++)
        {
            if (word.Equals(Lines[i], StringComparison.OrdinalIgnoreCase))
            {
                return i;
            }
        }
        return -1;
    }

    private void Wrong(int line, int wanted, ReadOnlySpan<char> word, bool twice)
    {
        if (wanted == 0)
        {
            errors.Add("header", line, 1, "", word, "this is not an EPW weather file", "its first line begins with LOCATION");
            return;
        }
        var near = Nearest.Of(word.Length > 80 ? "" : word.ToString(), [Lines[wanted]]);
        errors.Add("header", line, 1, "header", word, twice ? "this header line stands here a second time or out of order" : "this is not a header line",
            near is null ? $"{Lines[wanted]} comes here" : $"did you mean {near}?");
    }

    private void Take(int line, int which)
    {
        if (fields.Unclosed)
        {
            errors.Add("quote", line, 1, Lines[which], "", "a quotation mark is never closed", "put a second \" after the quoted text");
            return;
        }
        switch (Lines[which])
        {
            case Location:
                TakeLocation(line);
                break;
            case GroundLine:
                TakeGround(line);
                break;
            case Periods:
                TakePeriods(line);
                break;
            default:
                break;
        }
    }

    private void TakeLocation(int line)
    {
        if (fields.Count < 10)
        {
            errors.Add("location", line, fields.Column(fields.Count + 1), Location, "", $"it has {fields.Count} fields",
                "10 are needed: LOCATION, city, state, country, data, station, latitude, longitude, time zone, elevation");
            return;
        }
        (City, Region, Country) = (fields[2].ToString(), fields[3].ToString(), fields[4].ToString());
        (Data, Station) = (fields[5].ToString(), fields[6].ToString());
        Latitude = Between(line, 7, Location, "latitude", -90, 90, "degrees, north positive");
        Longitude = Between(line, 8, Location, "longitude", -180, 180, "degrees, east positive");
        TimeZone = Between(line, 9, Location, "time zone", -12, 14, "hours ahead of universal time");
        Elevation = Between(line, 10, Location, "elevation", -430, 5500, "metres above sea level");
    }

    private void TakeGround(int line)
    {
        if (fields[2].IsEmpty)
        {
            return;
        }
        if (!EpwParser.Whole(fields[2], out var depths) || depths is < 0 or > MostDepths)
        {
            errors.Add("ground", line, fields.Column(2), GroundLine, fields[2], "this is not the number of depths", $"a whole number from 0 to {MostDepths}");
            return;
        }
        var needed = 2 + depths * FieldsPerDepth;
        if (fields.Count < needed)
        {
            errors.Add("ground", line, fields.Column(fields.Count + 1), GroundLine, "", $"{depths} depths take {needed} fields, but there are {fields.Count}",
                "for each depth: depth, conductivity, density, specific heat, then twelve months");
            return;
        }
        for (var d = 0; d < depths; d++)
        {
            var first = 3 + d * FieldsPerDepth;
            var depth = Between(line, first, GroundLine, "depth", 0, 100, "metres");
            var months = new double[12];
            for (var m = 0; m < months.Length; m++)
            {
                months[m] = Between(line, first + 4 + m, GroundLine, "ground temperature", -60, 60, "°C");
            }
            _ground.Add(new(depth, months));
        }
    }

    private void TakePeriods(int line)
    {
        if (!EpwParser.Whole(fields[2], out var periods) || periods != 1)
        {
            errors.Add("periods", line, fields.Column(2), Periods, fields[2], "only files of one data period are read", "1: the whole year");
        }
        if (!EpwParser.Whole(fields[3], out var perHour) || perHour != 1)
        {
            errors.Add("periods", line, fields.Column(3), Periods, fields[3], "only files of one row an hour are read", "1: one row for each hour");
        }
    }

    private double Between(int line, int field, string where, string name, double min, double max, string unit)
    {
        if (EpwParser.Number(fields[field], out var value) && value >= min && value <= max)
        {
            return value;
        }
        errors.Add(where + name, line, fields.Column(field), $"{where} / {name}", fields[field], fields[field].IsEmpty ? "nothing stands here" : "this cannot be",
            $"a number from {min} to {max}, {unit}");
        return 0;
    }
}
