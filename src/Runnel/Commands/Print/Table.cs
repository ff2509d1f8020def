namespace Runnel.Host.Commands.Print;

/// <summary>A column of a table.</summary>
/// <param name="Title">Its heading.</param>
/// <param name="Right">True for numbers.</param>
/// <param name="Gives">True if its text may be broken over lines when the table is too wide.</param>
internal sealed record Column(string Title, bool Right = false, bool Gives = false);

/// <summary>A table that gives way in its text columns, never over the width.</summary>
internal sealed class Table(int indent, params Column[] columns)
{
    private const int Between = 2;
    private const int Narrowest = 10;
    private const int Hang = 2;

    private readonly List<(string[] Cells, Ink Ink, Kind Kind)> _rows = [];

    private enum Kind
    {
        Row,
        Span,
        Rule,
    }

    public bool IsEmpty => _rows.Count == 0;

    /// <summary>A row.</summary>
    public void Row(params string[] cells) => Row(Ink.Plain, cells);

    /// <summary>A row in a certain ink.</summary>
    public void Row(Ink ink, params string[] cells) => _rows.Add(([.. cells.Select(Cells.Clean)], ink, Kind.Row));

    /// <summary>A line of text across the table.</summary>
    public void Span(string text, Ink ink = Ink.Plain) => _rows.Add(([Cells.Clean(text)], ink, Kind.Span));

    /// <summary>A line above a sum.</summary>
    public void Rule() => _rows.Add(([], Ink.Quiet, Kind.Rule));

    /// <summary>The table's lines for a width.</summary>
    public IEnumerable<(string Text, Ink Ink)> Lines(int width)
    {
        var widths = Fit(width - indent);
        var margin = new string(' ', indent);
        if (columns.Any(c => c.Title.Length > 0))
        {
            foreach (var line in Broken([.. columns.Select(c => c.Title)], widths))
            {
                yield return (margin + line, Ink.Quiet);
            }
        }
        foreach (var (cells, ink, kind) in _rows)
        {
            switch (kind)
            {
                case Kind.Rule:
                    yield return (margin + new string('─', widths.Sum() + Between * (widths.Length - 1)), ink);
                    break;
                case Kind.Span:
                    foreach (var line in Cells.Wrap(cells[0], width - indent, Hang))
                    {
                        yield return (margin + line, ink);
                    }
                    break;
                case Kind.Row:
                    foreach (var line in Broken(cells, widths))
                    {
                        yield return (margin + line, ink);
                    }
                    break;
            }
        }
    }

    private int[] Fit(int room)
    {
        var widths = columns
            .Select((c, i) => Math.Max(Cells.Width(c.Title), _rows.Where(r => r.Kind == Kind.Row).Select(r => Cells.Width(r.Cells[i])).DefaultIfEmpty(0).Max()))
            .ToArray();
        var over = widths.Sum() + Between * (widths.Length - 1) - room;
        while (over > 0)
        {
            // The widest text column gives first; when all are narrow, so must numbers, rather than run over the edge.
            var giving = Widest(widths, i => columns[i].Gives && widths[i] > Narrowest) ?? Widest(widths, i => widths[i] > 1);
            if (giving is not { } column)
            {
                break;
            }
            widths[column]--;
            over--;
        }
        return widths;
    }

    private static int? Widest(int[] widths, Func<int, bool> may)
    {
        int? best = null;
        for (var i = 0; i < widths.Length; i++)
        {
            if (may(i) && (best is null || widths[i] > widths[best.Value]))
            {
                best = i;
            }
        }
        return best;
    }

    private IEnumerable<string> Broken(string[] cells, int[] widths)
    {
        var broken = cells.Select((c, i) =>
        {
            // Spaces in front set a cell in, on all its lines.
            var margin = c[..^c.TrimStart(' ').Length];
            return Cells.Wrap(c, widths[i] - margin.Length, columns[i].Right ? 0 : Hang).Select(l => margin + l).ToList();
        }).ToList();
        for (var line = 0; line < broken.Max(b => b.Count); line++)
        {
            var parts = new List<string>(cells.Length);
            for (var i = 0; i < cells.Length; i++)
            {
                parts.Add(Cells.Pad(line < broken[i].Count ? broken[i][line] : "", widths[i], columns[i].Right));
            }
            yield return string.Join(new string(' ', Between), parts);
        }
    }
}
