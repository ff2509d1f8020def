namespace Runnel.Files.Weather;

/// <summary>The rows of the hours: each put in its place by month, day and hour.</summary>
internal sealed class EpwRows(EpwErrors errors)
{
    private const int MostRows = EpwCalendar.LeapHours;

    // Places of a year with a 29 February; NaN where the file says that it does not know, or has no row.
    private readonly double[][] _columns = [.. EpwColumn.All.Select(_ => NewColumn())];
    private readonly bool[] _seen = new bool[MostRows];
    private int _rows;
    private int _refused;
    private int _fieldsOfFirst;
    private int _last = -1;

    /// <summary>Line of the first row.</summary>
    public int FirstLine { get; private set; }

    /// <summary>Values of a quantity, NaN where missing; 8784 places, or 8760 after <see cref="Finish"/> found no 29 February.</summary>
    public double[] this[EpwColumn column] => _columns[IndexOf(column)];

    /// <summary>Reads one row.</summary>
    public void Read(int line, EpwFields row)
    {
        _rows++;
        if (_rows == 1)
        {
            (FirstLine, _fieldsOfFirst) = (line, row.Count);
        }
        if (_rows > MostRows)
        {
            errors.Add("rows", line, 1, "", "", $"this is row {_rows:N0}; a year has 8760, or 8784 with a 29 February", "one year in each file");
            return;
        }
        if (row.Unclosed)
        {
            _refused++;
            errors.Add("quote", line, 1, "", "", "a quotation mark is never closed", "rows of hours need no quotation marks");
            return;
        }
        if (row.Count < EpwColumn.FewestFields || row.Count != _fieldsOfFirst)
        {
            _refused++;
            errors.Add("fields", line, row.Column(row.Count + 1), "", row[row.Count], $"this row has {row.Count} fields",
                row.Count < EpwColumn.FewestFields ? "a row of an EPW file has 35 fields" : $"the first row has {_fieldsOfFirst}");
            return;
        }
        if (!Place(line, row, out var at))
        {
            _refused++;
            return;
        }
        for (var c = 0; c < _columns.Length; c++)
        {
            _columns[c][at] = Value(line, row, EpwColumn.All[c]);
        }
    }

    /// <summary>Looks for hours without a row. True if the file has a 29 February.</summary>
    public bool Finish(int lastLine)
    {
        var leap = _seen.AsSpan(EpwCalendar.LeapDayStart, 24).Contains(true);
        if (_rows == 0)
        {
            errors.Add("rows", lastLine, 1, "", "", "there is no row below the header", "8760 rows, one for each hour of a year");
            return leap;
        }
        // Rows refused above are not missing as well.
        var missing = MostRows - (leap ? 0 : 24) - _seen.AsSpan().Count(true);
        for (var at = 0; at < MostRows && missing > _refused; at++)
        {
            if (_seen[at] || (!leap && at == EpwCalendar.LeapDayStart))
            {
                at += !leap && at == EpwCalendar.LeapDayStart ? 23 : 0;
                continue;
            }
            var end = at;
            while (end + 1 < MostRows && !_seen[end + 1])
            {
                end++;
            }
            errors.Add("gaps", lastLine, 1, "", "",
                at == end ? $"the row of {EpwCalendar.Say(at, true)} is missing" : $"the rows from {EpwCalendar.Say(at, true)} to {EpwCalendar.Say(end, true)} are missing",
                "8760 rows are needed, 1 January hour 1 to 31 December hour 24");
            at = end;
        }
        if (!leap)
        {
            for (var c = 0; c < _columns.Length; c++)
            {
                _columns[c] = [.. _columns[c].AsSpan(0, EpwCalendar.LeapDayStart), .. _columns[c].AsSpan(EpwCalendar.LeapDayStart + 24)];
            }
        }
        return leap;
    }

    private static double[] NewColumn()
    {
        var column = new double[MostRows];
        Array.Fill(column, double.NaN);
        return column;
    }

    private static int IndexOf(EpwColumn column)
    {
        for (var i = 0; i < EpwColumn.All.Count; i++)
        {
            if (ReferenceEquals(EpwColumn.All[i], column))
            {
                return i;
            }
        }
        throw new ArgumentOutOfRangeException(nameof(column));
    }

    private bool Place(int line, EpwFields row, out int at)
    {
        at = 0;
        // The year is not kept: typical years mix the months of several.
        var good = Whole(line, row, 2, "month", 1, 12, out var month);
        good &= Whole(line, row, 3, "day", 1, good ? EpwCalendar.Days(month, leap: true) : 31, out var day);
        good &= Whole(line, row, 4, "hour", 1, 24, out var hour);
        good &= Whole(line, row, 5, "minute", 0, 60, out _);
        if (!good)
        {
            return false;
        }
        at = EpwCalendar.Index(month, day, hour, leap: true);
        if (_seen[at])
        {
            errors.Add("twice", line, row.Column(2), "", "", $"{EpwCalendar.Say(at, true)} stands in the file a second time", "one row for each hour");
            return false;
        }
        if (at < _last)
        {
            errors.Add("order", line, row.Column(2), "", "", $"{EpwCalendar.Say(at, true)} comes after {EpwCalendar.Say(_last, true)}", "rows run from 1 January to 31 December");
        }
        _last = at;
        _seen[at] = true;
        return true;
    }

    private bool Whole(int line, EpwFields row, int field, string name, int min, int max, out int value)
    {
        if (EpwParser.Whole(row[field], out value) && value >= min && value <= max)
        {
            return true;
        }
        errors.Add(name, line, row.Column(field), name, row[field], row[field].IsEmpty ? "nothing stands here" : "this cannot be", $"a whole number from {min} to {max}");
        return false;
    }

    private double Value(int line, EpwFields row, EpwColumn column)
    {
        var text = row[column.Field];
        if (text.IsEmpty)
        {
            return double.NaN;
        }
        if (EpwParser.Number(text, out var value))
        {
            if (value >= column.Min && value <= column.Max)
            {
                return value;
            }
            if (value >= column.Missing)
            {
                return double.NaN;
            }
        }
        errors.Add(column.Name, line, row.Column(column.Field), column.Name, text, "this cannot be",
            $"a number from {column.Min} to {column.Max} {column.Unit}, or {column.Missing} for missing");
        return double.NaN;
    }
}
