using System.Globalization;
using Runnel.Engine.Levels;
using Runnel.Engine.Quantities;

namespace Runnel.App.Levels;

/// <summary>The loop seen from the side, heights to scale, as SVG text: vessels, water, media, drains and pumped pipes in one case.</summary>
/// <remarks>
/// Drawn for 360 pixels of width and for black ink: water and media differ by pattern, vessels carry numbers that a list below names with
/// level, volume and free height. Widths are not to scale. Title and description say in words what the drawing shows.
/// </remarks>
public sealed class ElevationDrawing
{
    private const double Line = 13;
    private const double Below = 32;
    private const int LongestName = 46;
    private const int LongestLine = 60;

    private readonly WaterLoop _loop;
    private readonly LevelCase _case;
    private readonly Style _style;
    private readonly ElevationLayout _at;
    private readonly Svg _svg = new();
    private readonly string _id;

    private ElevationDrawing(LevelStudy study, LevelCase one, Style style, string id)
    {
        (_loop, _case, _style, _id) = (study.Loop, one, style, id);
        _at = new(study.Loop, 20);
    }

    /// <summary>The drawing of one case.</summary>
    /// <param name="study">The loop and its cases.</param>
    /// <param name="one">The case.</param>
    /// <param name="style">The reader's units.</param>
    /// <param name="id">Begins the ids inside, so that several drawings may stand on one page: letters, digits, dashes.</param>
    public static string Draw(LevelStudy study, LevelCase one, Style style, string id = "levels")
    {
        ArgumentNullException.ThrowIfNull(study);
        ArgumentNullException.ThrowIfNull(one);
        ArgumentNullException.ThrowIfNull(style);
        return study.Loop.Basins.Count == 0 ? "" : new ElevationDrawing(study, one, style, id).Write();
    }

    /// <summary>What the drawing shows, in words.</summary>
    public static string Describe(LevelCase one, WaterLoop loop, Style style)
    {
        ArgumentNullException.ThrowIfNull(one);
        ArgumentNullException.ThrowIfNull(loop);
        ArgumentNullException.ThrowIfNull(style);
        var vessels = one.Vessels.Select((v, i) => $"{v.Name}: {Stands(v, loop.Basins[i], style)}.");
        return $"{string.Join(' ', vessels)} {Floor(one, style)}";
    }

    private string Write()
    {
        var list = List();
        var tall = _at.Bottom + Below + list.Count * Line + 6;
        _svg.Open("svg", ("xmlns", "http://www.w3.org/2000/svg"), ("viewBox", $"0 0 {Svg.Number(ElevationLayout.Width)} {Svg.Number(tall)}"), ("role", "img"),
            ("aria-labelledby", $"{_id}-title {_id}-desc"), ("font-family", "system-ui, sans-serif"), ("font-size", "10.5"), ("fill", "#111"),
            ("style", "width:100%;max-width:720px;height:auto"));
        _svg.Say("title", Title(), ("id", $"{_id}-title"));
        _svg.Say("desc", Describe(_case, _loop, _style), ("id", $"{_id}-desc"));
        Patterns();
        _svg.Draw("rect", ("width", ElevationLayout.Width), ("height", tall), ("fill", "#fff"));
        Text(6, 14, Short(Title()), ("font-weight", "bold"), ("font-size", "12"));
        Scale();
        Drains();
        Risers();
        foreach (var i in _at.Order)
        {
            Vessel(i);
        }
        Mouths();
        Puddle();
        for (var n = 0; n < list.Count; n++)
        {
            Text(list[n].Indent, _at.Bottom + Below + n * Line, list[n].Text, ("font-weight", list[n].Bold ? "bold" : "normal"));
        }
        return _svg.Close("svg").ToString();
    }

    private string Title() => char.ToUpperInvariant(_case.Label[0]) + _case.Label[1..];

    private void Patterns()
    {
        _svg.Open("defs");
        _svg.Open("pattern", ("id", $"{_id}-water"), ("width", "6"), ("height", "5"), ("patternUnits", "userSpaceOnUse"));
        _svg.Draw("rect", ("width", "6"), ("height", "5"), ("fill", "#d3e9f8"));
        _svg.Draw("path", ("d", "M0 2.5H3.5"), ("stroke", "#5a9cc9"), ("stroke-width", "0.7"));
        _svg.Close("pattern");
        _svg.Open("pattern", ("id", $"{_id}-media"), ("width", "7"), ("height", "7"), ("patternUnits", "userSpaceOnUse"));
        _svg.Draw("circle", ("cx", "2"), ("cy", "2"), ("r", "1.5"), ("fill", "none"), ("stroke", "#7a4b24"), ("stroke-width", "0.8"));
        _svg.Draw("circle", ("cx", "5.5"), ("cy", "5.5"), ("r", "1.5"), ("fill", "none"), ("stroke", "#7a4b24"), ("stroke-width", "0.8"));
        _svg.Close("pattern");
        Arrow("drain", "#111");
        Arrow("riser", "#8a1c1c");
        _svg.Close("defs");
    }

    private void Arrow(string name, string colour)
    {
        _svg.Open("marker", ("id", $"{_id}-{name}"), ("viewBox", "0 0 6 6"), ("refX", "5"), ("refY", "3"), ("markerWidth", "5"), ("markerHeight", "5"), ("orient", "auto"));
        _svg.Draw("path", ("d", "M0 0L6 3L0 6z"), ("fill", colour));
        _svg.Close("marker");
    }

    private void Scale()
    {
        var unit = _style.UnitOf(Units.Centimetre);
        foreach (var height in _at.Ticks(unit))
        {
            var y = _at.Y(height);
            _svg.Draw("path", ("d", $"M{Svg.Number(ElevationLayout.Left - 4)} {Svg.Number(y)}H{Svg.Number(ElevationLayout.Width - 4)}"), ("stroke", "#ddd"), ("stroke-width", "0.6"));
            Text(ElevationLayout.Left - 7, y + 3.5, Math.Round(unit.FromSi(height)).ToString(CultureInfo.InvariantCulture), ("text-anchor", "end"));
        }
        Text(6, _at.Y(_at.High) - 12, unit.Symbol);
        var floor = _at.Y(0);
        _svg.Draw("path", ("d", $"M{Svg.Number(ElevationLayout.Left - 4)} {Svg.Number(floor)}H{Svg.Number(ElevationLayout.Width - 4)}"), ("stroke", "#111"), ("stroke-width", "2"));
        Text(ElevationLayout.Width - 5, _at.Bottom + 19, _at.Low < 0 ? "thick line: floor" : "floor", ("text-anchor", "end"));
    }

    private void Vessel(int i)
    {
        var (basin, vessel) = (_loop.Basins[i], _case.Vessels[i]);
        var (left, wide) = (_at.LeftOf(i), _at.WidthOf(i));
        var (rim, bottom) = (_at.Y(basin.Rim), _at.Y(basin.Bottom));
        Rect(left, rim, wide, bottom - rim, "#fff");
        var water = _at.Y(basin.Bottom + vessel.Level);
        Rect(left, water, wide, bottom - water, $"url(#{_id}-water)");
        if (basin.Media > 0)
        {
            var media = _at.Y(basin.Bottom + Math.Min(basin.Media, basin.Height));
            Rect(left, media, wide, bottom - media, $"url(#{_id}-media)");
        }
        if (vessel.Level > 1e-6)
        {
            _svg.Draw("path", ("d", $"M{Svg.Number(left)} {Svg.Number(water)}h{Svg.Number(wide)}"), ("stroke", "#0b4f80"), ("stroke-width", "1.6"));
            _svg.Draw("path", ("d", $"M{Svg.Number(left + wide - 9)} {Svg.Number(water - 5)}h7l-3.5 5z"), ("fill", "#0b4f80"));
        }
        if (vessel.Peak > vessel.Level + 1e-6)
        {
            var peak = _at.Y(basin.Bottom + vessel.Peak);
            _svg.Draw("path", ("d", $"M{Svg.Number(left)} {Svg.Number(peak)}h{Svg.Number(wide)}"), ("stroke", "#0b4f80"), ("stroke-width", "1.2"), ("stroke-dasharray", "3 2"));
        }
        // Walls and bottom, open at the top.
        _svg.Draw("path", ("d", $"M{Svg.Number(left)} {Svg.Number(rim)}V{Svg.Number(bottom)}H{Svg.Number(left + wide)}V{Svg.Number(rim)}"), ("fill", "none"), ("stroke", "#111"), ("stroke-width", "1.8"));
        if (basin.Bottom > 0.02)
        {
            _svg.Draw("path", ("d", $"M{Svg.Number(left + 3)} {Svg.Number(bottom)}V{Svg.Number(_at.Y(0))}M{Svg.Number(left + wide - 3)} {Svg.Number(bottom)}V{Svg.Number(_at.Y(0))}"), ("stroke", "#aaa"), ("stroke-width", "1"));
        }
        if (vessel.Spilled > 1e-6)
        {
            _svg.Draw("path", ("d", $"M{Svg.Number(left)} {Svg.Number(rim)}q-5 2 -5 12v6M{Svg.Number(left + wide)} {Svg.Number(rim)}q5 2 5 12v6"), ("fill", "none"), ("stroke", "#0b4f80"), ("stroke-width", "2"));
        }
        var y = Math.Max(rim + 12, (rim + bottom) / 2 + 4);
        _svg.Draw("circle", ("cx", left + 9), ("cy", y - 4), ("r", "7"), ("fill", "#fff"), ("stroke", "#111"), ("stroke-width", "0.8"));
        Text(left + 9, y - 0.4, Mark(i), ("text-anchor", "middle"), ("font-weight", "bold"));
    }

    private string Mark(int i) => (_at.Order.ToList().IndexOf(i) + 1).ToString(CultureInfo.InvariantCulture);

    private void Drains()
    {
        for (var o = 0; o < _loop.Outlets.Count; o++)
        {
            var outlet = _loop.Outlets[o];
            var from = _loop.Basins[outlet.From];
            var mouth = Math.Min(from.Rim, from.Bottom + outlet.Mouth);
            var gap = _at.RightOf(outlet.From) + 5 + 3 * (o % 3);
            foreach (var to in outlet.To.Where(t => t != outlet.From))
            {
                var rim = _loop.Basins[to].Rim;
                var entry = _at.LeftOf(to) + _at.WidthOf(to) * 0.35 + 4 * (o % 4);
                var start = $"M{Svg.Number(_at.RightOf(outlet.From))} {Svg.Number(_at.Y(mouth))}H{Svg.Number(gap)}";
                var across = _at.Y(rim) - 9 - 3 * (o % 4);
                var route = mouth > rim && across > _at.Y(mouth)
                    ? $"V{Svg.Number(across)}H{Svg.Number(entry)}V{Svg.Number(_at.Y(rim) - 1)}"
                    : $"H{Svg.Number(entry < gap ? _at.RightOf(to) : _at.LeftOf(to))}";
                _svg.Draw("path", ("d", start + route), ("fill", "none"), ("stroke", "#111"), ("stroke-width", "1.4"), ("marker-end", $"url(#{_id}-drain)"));
            }
        }
    }

    private void Risers()
    {
        for (var l = 0; l < _loop.Lifts.Count; l++)
        {
            var lift = _loop.Lifts[l];
            var foot = _loop.Basins[lift.From].Bottom;
            var out1 = _at.RightOf(lift.From) + _at.Slot * 0.18 + 3 * (l % 3);
            var top = _at.Risers - 4 * (l % 3);
            var start = $"M{Svg.Number(_at.RightOf(lift.From) - 5)} {Svg.Number(_at.Y(foot) - 4)}H{Svg.Number(out1)}V{Svg.Number(top)}";
            foreach (var to in lift.To)
            {
                var basin = _loop.Basins[to];
                var x = _at.RightOf(to) - _at.WidthOf(to) * 0.22;
                var end = lift.EndsUnderWater ? _at.Y(basin.Bottom) - 3 : _at.Y(basin.Rim) - 2;
                _svg.Draw("path", ("d", $"{start}H{Svg.Number(x)}V{Svg.Number(end)}"), ("fill", "none"), ("stroke", "#8a1c1c"), ("stroke-width", "1.4"), ("stroke-dasharray", "5 2"),
                    ("marker-end", $"url(#{_id}-riser)"));
            }
            if (_case.Kind == LevelCaseKind.Broken && _case.Of == lift.Pump)
            {
                Cross(out1, _at.Y(foot) - 14);
            }
        }
    }

    // Over the vessels: pumps, and what is blocked.
    private void Mouths()
    {
        foreach (var lift in _loop.Lifts.DistinctBy(l => l.From))
        {
            var (x, y) = (_at.RightOf(lift.From) - 8, _at.Y(_loop.Basins[lift.From].Bottom) - 7);
            _svg.Draw("circle", ("cx", x), ("cy", y), ("r", "5.5"), ("fill", "#fff"), ("stroke", "#8a1c1c"), ("stroke-width", "1.3"));
            Text(x, y + 3.2, "P", ("text-anchor", "middle"), ("font-size", "9"), ("font-weight", "bold"));
        }
        if (_case.Kind != LevelCaseKind.Blocked)
        {
            return;
        }
        var blocked = _loop.Outlets.Where(o => _loop.Basins[o.From].Name == _case.Of).MinBy(o => o.Mouth);
        if (blocked is not null)
        {
            var basin = _loop.Basins[blocked.From];
            Cross(_at.RightOf(blocked.From) + 2, _at.Y(Math.Min(basin.Rim, basin.Bottom + blocked.Mouth)));
        }
    }

    private void Cross(double x, double y) =>
        _svg.Draw("path", ("d", $"M{Svg.Number(x - 5)} {Svg.Number(y - 5)}l10 10m0 -10l-10 10"), ("stroke", "#c00"), ("stroke-width", "2.6"));

    private void Puddle()
    {
        if (_case.OnFloor <= 1e-6)
        {
            return;
        }
        var y = _at.Y(0);
        _svg.Draw("path", ("d", $"M{Svg.Number(ElevationLayout.Left)} {Svg.Number(y + 3)}q80 7 160 2t{Svg.Number(ElevationLayout.Width - ElevationLayout.Left - 165)} -1"), ("fill", "none"), ("stroke", "#0b4f80"), ("stroke-width", "3.5"));
    }

    private List<(double Indent, string Text, bool Bold)> List()
    {
        var lines = new List<(double, string, bool)>();
        foreach (var i in _at.Order)
        {
            var (basin, vessel) = (_loop.Basins[i], _case.Vessels[i]);
            var many = basin.Count > 1 ? $" ({Style.Number(basin.Count, Units.One)} alike)" : "";
            lines.Add((6, $"{Mark(i)}  {Short(vessel.Name)}{many}", true));
            lines.AddRange(Wrap(Stands(vessel, basin, _style)).Select(l => (18.0, l, false)));
        }
        lines.AddRange(Wrap(Floor(_case, _style)).Select(l => (6.0, l, true)));
        lines.Add((6, "P pump · dashed: pumped · solid: runs by itself", false));
        lines.Add((6, "Circles: media. Heights to scale, widths not.", false));
        return lines;
    }

    private static IEnumerable<string> Wrap(string text)
    {
        var line = "";
        foreach (var word in text.Split(' '))
        {
            if (line.Length > 0 && line.Length + word.Length >= LongestLine)
            {
                yield return line;
                line = "";
            }
            line += line.Length > 0 ? $" {word}" : word;
        }
        yield return line;
    }

    private static string Stands(VesselLevel vessel, Basin basin, Style style)
    {
        var spills = vessel.Spilled > 1e-6 ? $", SPILLS {Volume(vessel.Spilled, style)}" : "";
        var peak = vessel.Peak > vessel.Level + 1e-6 ? $", for a moment up to {Height(vessel.Peak, style)}" : "";
        var stands = basin.Bottom != 0 ? $", surface at {Height(basin.Bottom + vessel.Level, style)}" : "";
        return vessel.Volume <= 1e-6 ? $"empty{spills}{peak}" : $"{Height(vessel.Level, style)} deep{stands}, {Volume(vessel.Volume, style)}, {Height(vessel.Free, style)} free{spills}{peak}";
    }

    private static string Floor(LevelCase one, Style style)
    {
        var dry = one.RanDry.Count > 0 ? $" {string.Join(", ", one.RanDry)}: at the lowest level." : "";
        return (one.OnFloor > 1e-6 ? $"On the floor: {Volume(one.OnFloor, style)}." : "Nothing on the floor.") + dry;
    }

    private static string Height(double si, Style style) => Rounded(si, style.UnitOf(Units.Centimetre), 1);

    private static string Volume(double si, Style style)
    {
        var unit = style.UnitOf(Units.Litre);
        return Rounded(si, unit, unit.FromSi(si) < 20 ? 1 : 0);
    }

    private static string Rounded(double si, Unit unit, int digits) =>
        $"{Math.Round(unit.FromSi(si), digits).ToString(digits == 0 ? "#,##0" : "0.#", CultureInfo.InvariantCulture)} {unit.Symbol}";

    private static string Short(string name) => name.Length <= LongestName ? name : $"{name[..(LongestName - 1)]}…";

    private void Rect(double x, double y, double wide, double tall, string fill) =>
        _svg.Draw("rect", ("x", x), ("y", y), ("width", wide), ("height", Math.Max(0, tall)), ("fill", fill));

    private void Text(double x, double y, string text, params ReadOnlySpan<(string Name, object Value)> more) =>
        _svg.Say("text", text, [("x", x), ("y", y), .. more]);
}
