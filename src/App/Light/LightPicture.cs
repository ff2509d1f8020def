using System.Globalization;
using System.Text;
using Runnel.Engine.Light;
using Runnel.Engine.Quantities;

namespace Runnel.App.Light;

/// <summary>A bed's light as a small picture: characters for a terminal, SVG for a page.</summary>
public static class LightPicture
{
    private const int TextColumns = 48;
    private const int MostTextRows = 24;
    private const string Ramp = " .:-=+*%#@";
    private const double Picture = 640;
    private const double Margin = 16;
    private const double Legend = 150;
    private const double Line = 18;

    // Dark to bright with rising lightness, so that the order is seen without colour vision and in print.
    private static readonly (double R, double G, double B)[] Colours =
        [(22, 26, 66), (34, 82, 120), (54, 137, 123), (140, 185, 92), (240, 214, 96), (255, 248, 214)];

    /// <summary>The map in characters, darkest as a blank, with a legend and the figures that sum it up.</summary>
    /// <param name="map">The map.</param>
    /// <param name="title">What is shown: "Light of four lamps on bed one".</param>
    /// <param name="style">How numbers are written.</param>
    public static string Text(LightMap map, string title, Style style)
    {
        ArgumentNullException.ThrowIfNull(map);
        ArgumentNullException.ThrowIfNull(title);
        ArgumentNullException.ThrowIfNull(style);
        var bands = LightBands.Of(map.Least, map.Greatest);
        // A character is about twice as high as wide.
        var rows = Math.Clamp((int)Math.Round(TextColumns * map.Bed.Width / map.Bed.Length / 2), 1, MostTextRows);
        var text = new StringBuilder().Append(title).Append('\n').Append('+').Append('-', TextColumns).Append("+\n");
        for (var row = 0; row < rows; row++)
        {
            text.Append('|');
            for (var column = 0; column < TextColumns; column++)
            {
                text.Append(Mark(bands, bands.At(map[(2 * column + 1) * map.Columns / (2 * TextColumns), (2 * row + 1) * map.Rows / (2 * rows)])));
            }
            text.Append("|\n");
        }
        text.Append('+').Append('-', TextColumns).Append("+\n");
        for (var band = bands.Count - 1; band >= 0; band--)
        {
            text.Append("  '").Append(Mark(bands, band)).Append("'  ").Append(Between(bands, band)).Append(band == bands.Count - 1 ? " " + Units.MicromolePerSquareMetreSecond.Symbol : "").Append('\n');
        }
        return text.Append(Summary(map, style)).Append('\n').ToString();
    }

    /// <summary>The map as an SVG picture with a title, a description for screen readers, a scale and the lamps.</summary>
    /// <param name="map">The map.</param>
    /// <param name="title">What is shown.</param>
    /// <param name="style">How numbers are written.</param>
    /// <param name="id">A name that no other part of the page has: letters, digits and hyphens.</param>
    /// <param name="lamps">Where lamps hang, to be marked.</param>
    public static string Svg(LightMap map, string title, Style style, string id = "light", IReadOnlyList<LampSpot>? lamps = null)
    {
        ArgumentNullException.ThrowIfNull(map);
        ArgumentNullException.ThrowIfNull(title);
        ArgumentNullException.ThrowIfNull(style);
        if (string.IsNullOrEmpty(id) || !id.All(c => char.IsAsciiLetterOrDigit(c) || c == '-'))
        {
            throw new ArgumentException("letters, digits and hyphens only", nameof(id));
        }
        var bands = LightBands.Of(map.Least, map.Greatest);
        var scale = Picture / Math.Max(map.Bed.Length, map.Bed.Width);
        var (wide, high) = (map.Bed.Length * scale, map.Bed.Width * scale);
        var legendHigh = Line * (bands.Count + 2);
        var (left, top) = (Margin, Margin + 2 * Line);
        var bottom = top + Math.Max(high, legendHigh) + 2.5 * Line;
        var svg = new StringBuilder();
        svg.Append(CultureInfo.InvariantCulture,
            $"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {F(left + wide + Margin + Legend)} {F(bottom)}\" role=\"img\" aria-labelledby=\"{id}-title {id}-desc\" font-family=\"sans-serif\" font-size=\"13\">");
        svg.Append($"<title id=\"{id}-title\">{Escape(title)}</title><desc id=\"{id}-desc\">{Escape(Summary(map, style))}</desc>");
        Label(svg, left, Margin + Line, title, "font-weight=\"bold\"");
        Cells(svg, map, bands, left, top, wide / map.Columns, high / map.Rows);
        svg.Append($"<rect x=\"{F(left)}\" y=\"{F(top)}\" width=\"{F(wide)}\" height=\"{F(high)}\" fill=\"none\" stroke=\"currentColor\"/>");
        foreach (var lamp in lamps ?? [])
        {
            svg.Append($"<circle cx=\"{F(left + lamp.X * scale)}\" cy=\"{F(top + lamp.Y * scale)}\" r=\"4\" fill=\"#fff\" stroke=\"#000\"/>");
        }
        Label(svg, left, top + high + Line, $"{style.Write(new Amount(map.Bed.Length, Units.Metre))} × {style.Write(new Amount(map.Bed.Width, Units.Metre))}{(lamps is { Count: > 0 } ? "; ○ lamp" : "")}");
        Label(svg, left, bottom - 0.5 * Line, Summary(map, style));
        var x = left + wide + Margin;
        Label(svg, x, top + Line, Units.MicromolePerSquareMetreSecond.Symbol);
        for (var band = 0; band < bands.Count; band++)
        {
            var y = top + Line * (bands.Count - band + 0.5);
            svg.Append($"<rect x=\"{F(x)}\" y=\"{F(y)}\" width=\"22\" height=\"{F(Line)}\" fill=\"{Colour(bands.Shade(band))}\" stroke=\"currentColor\" stroke-width=\"0.5\"/>");
            Label(svg, x + 30, y + 0.75 * Line, Between(bands, band));
        }
        return svg.Append("</svg>").ToString();
    }

    /// <summary>The figures that sum a map up, in one line.</summary>
    public static string Summary(LightMap map, Style style)
    {
        ArgumentNullException.ThrowIfNull(map);
        ArgumentNullException.ThrowIfNull(style);
        string Write(double density) => Style.Number(Rounded(density), Units.MicromolePerSquareMetreSecond);
        return $"Mean {Write(map.Mean)}, darkest {Write(map.Least)}, brightest {Write(map.Greatest)} {Units.MicromolePerSquareMetreSecond.Symbol}; "
            + $"evenness {map.Evenness:0.00}; {100 * map.Share:0} % of the lamps' photons reach the bed.";
    }

    private static void Cells(StringBuilder svg, LightMap map, LightBands bands, double left, double top, double wide, double high)
    {
        for (var row = 0; row < map.Rows; row++)
        {
            for (var column = 0; column < map.Columns;)
            {
                var band = bands.At(map[column, row]);
                var end = column + 1;
                while (end < map.Columns && bands.At(map[end, row]) == band)
                {
                    end++;
                }
                // A hair more than its size: else seams shine through between cells.
                svg.Append($"<rect x=\"{F(left + column * wide)}\" y=\"{F(top + row * high)}\" width=\"{F((end - column) * wide + (end < map.Columns ? 0.4 : 0))}\" height=\"{F(high + (row + 1 < map.Rows ? 0.4 : 0))}\" fill=\"{Colour(bands.Shade(band))}\"/>");
                column = end;
            }
        }
    }

    private static char Mark(LightBands bands, int band) => Ramp[(int)Math.Round(bands.Shade(band) * (Ramp.Length - 1))];

    private static string Between(LightBands bands, int band) => $"{bands.From(band):0.####} to {bands.From(band + 1):0.####}";

    // Three figures: the lamps are known no better.
    private static double Rounded(double value)
    {
        if (value == 0)
        {
            return 0;
        }
        var unit = Math.Pow(10, Math.Floor(Math.Log10(Math.Abs(value))) - 2);
        return Math.Round(value / unit) * unit;
    }

    private static void Label(StringBuilder svg, double x, double y, string text, string more = "") =>
        svg.Append($"<text x=\"{F(x)}\" y=\"{F(y)}\" fill=\"currentColor\"{(more.Length > 0 ? " " + more : "")}>{Escape(text)}</text>");

    private static string Colour(double shade)
    {
        var at = Math.Clamp(shade, 0, 1) * (Colours.Length - 1);
        var i = Math.Min((int)at, Colours.Length - 2);
        var (a, b) = (Colours[i], Colours[i + 1]);
        int Mix(double from, double to) => (int)Math.Round(from + (at - i) * (to - from));
        return $"#{Mix(a.R, b.R):x2}{Mix(a.G, b.G):x2}{Mix(a.B, b.B):x2}";
    }

    private static string F(double number) => number.ToString("0.##", CultureInfo.InvariantCulture);

    private static string Escape(string text)
    {
        var safe = new StringBuilder(text.Length);
        foreach (var c in text)
        {
            _ = c switch
            {
                '&' => safe.Append("&amp;"),
                '<' => safe.Append("&lt;"),
                '>' => safe.Append("&gt;"),
                '"' => safe.Append("&quot;"),
                < ' ' or '\uFFFE' or '\uFFFF' => safe.Append(' '),
                _ => safe.Append(c),
            };
        }
        return safe.ToString();
    }
}
