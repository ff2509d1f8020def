using Runnel.Engine.Assess;
using Runnel.Engine.Figures;
using Runnel.Engine.Plan;

namespace Runnel.Screens.Charts;

/// <summary>The layout of twelve stacked columns: which parts have a colour of their own, and where each piece stands.</summary>
/// <param name="Parts">The parts from the bottom up, with what the last gathers.</param>
/// <param name="Months">The columns.</param>
/// <param name="Ticks">Marks of the axis, from zero.</param>
public sealed record MonthColumns(IReadOnlyList<ColumnPart> Parts, IReadOnlyList<MonthColumn> Months, IReadOnlyList<Tick> Ticks)
{
    /// <summary>Height of the drawing in its own units.</summary>
    public const double Height = 1000;

    /// <summary>More colours than these cannot be told apart.</summary>
    private const int OwnColours = 6;

    /// <summary>Lays out the priced lines of a running bill.</summary>
    public static MonthColumns Of(RunBill bill)
    {
        ArgumentNullException.ThrowIfNull(bill);
        var lines = bill.Lines.Where(l => l.Year is not null && l.Months.Count == 12).OrderByDescending(l => l.Year!.Si).ToList();
        var own = lines.Count <= OwnColours + 1 ? lines : lines.Take(OwnColours).ToList();
        var rest = lines.Skip(own.Count).ToList();
        var parts = own.Select((l, i) => new ColumnPart(l.Label, i + 1)).ToList();
        if (rest.Count > 0)
        {
            parts.Add(new("Other: " + string.Join(", ", rest.Select(l => l.Label.ToLowerInvariant())), OwnColours + 1));
        }
        var ticks = Scale(bill.Months.Count == 0 ? 0 : bill.Months.Max(m => m.Si), out var top);
        var months = bill.Months.Select((total, m) =>
        {
            var sizes = own.Select(l => l.Months[m].Si).ToList();
            if (rest.Count > 0)
            {
                sizes.Add(rest.Sum(l => l.Months[m].Si));
            }
            var pieces = new List<ColumnPiece>();
            var bottom = Height;
            for (var i = 0; i < sizes.Count; i++)
            {
                var height = Math.Max(0, sizes[i]) / top * Height;
                bottom -= height;
                pieces.Add(new(parts[i].Colour, bottom, height));
            }
            return new MonthColumn(CalendarDay.MonthNames[m], total, pieces);
        }).ToList();
        return new(parts, months, ticks);
    }

    /// <summary>Four to six round marks that cover a value.</summary>
    internal static IReadOnlyList<Tick> Scale(double highest, out double top)
    {
        var rough = Math.Max(highest, 1e-6) / 4;
        var power = Math.Pow(10, Math.Floor(Math.Log10(rough)));
        var step = new[] { 1, 2, 2.5, 5, 10 }.Select(f => f * power).First(s => s >= rough * 0.999);
        var count = (int)Math.Ceiling(highest / step - 1e-9);
        var end = Math.Max(1, count) * step;
        top = end;
        return [.. Enumerable.Range(0, Math.Max(1, count) + 1).Select(i => new Tick(
            (i * step).ToString(step < 1 ? "0.##" : "#,##0.##"), Height - i * step / end * Height))];
    }
}

/// <summary>One colour of the columns.</summary>
public sealed record ColumnPart(string Label, int Colour);

/// <summary>One month.</summary>
public sealed record MonthColumn(string Name, Figure Total, IReadOnlyList<ColumnPiece> Pieces);

/// <summary>One piece of a column, in the drawing's units from the top.</summary>
public sealed record ColumnPiece(int Colour, double Top, double Height);

/// <summary>A mark of the axis, in the drawing's units from the top.</summary>
public sealed record Tick(string Text, double Top);
