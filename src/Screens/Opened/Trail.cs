using Runnel.App;
using Runnel.Engine.Assess;
using Runnel.Engine.Figures;

namespace Runnel.Screens.Opened;

/// <summary>Which figure is open, and through which figures one came to it.</summary>
/// <remarks>
/// Figures are made anew with every change, so the way is kept as names and found again in the new ones. A step is looked for among the
/// steps of the figure before it: the same name may stand elsewhere for another number, as in the plan assessed without its lamps.
/// </remarks>
public sealed class Trail
{
    private readonly List<Stop> _stops = [];

    /// <summary>Raised when another figure is open, or none.</summary>
    public event EventHandler? Moved;

    /// <summary>The figures on the way, the one first opened first; empty when none is open.</summary>
    public IReadOnlyList<Figure> Figures => [.. _stops.Select(s => s.Figure)];

    /// <summary>The open figure, or null.</summary>
    public Figure? Current => _stops.Count == 0 ? null : _stops[^1].Figure;

    /// <summary>Opens a figure of the page: the way starts here.</summary>
    /// <param name="figure">The figure.</param>
    /// <param name="find">Finds it in later figures when it has no name in the book.</param>
    public void Open(Figure figure, Func<Assessment, Figure?>? find = null)
    {
        ArgumentNullException.ThrowIfNull(figure);
        _stops.Clear();
        _stops.Add(new(figure, 0, find));
        Moved?.Invoke(this, EventArgs.Empty);
    }

    /// <summary>Goes on to one of the steps under the open figure.</summary>
    public void Deeper(Figure step)
    {
        ArgumentNullException.ThrowIfNull(step);
        if (Current is not { } from)
        {
            Open(step);
            return;
        }
        var index = Working.Steps(from).ToList().FindIndex(s => ReferenceEquals(s, step));
        _stops.Add(new(step, index, null));
        Moved?.Invoke(this, EventArgs.Empty);
    }

    /// <summary>Goes back to a figure on the way.</summary>
    public void BackTo(int index)
    {
        _stops.RemoveRange(index + 1, _stops.Count - index - 1);
        Moved?.Invoke(this, EventArgs.Empty);
    }

    /// <summary>Closes.</summary>
    public void Close()
    {
        _stops.Clear();
        Moved?.Invoke(this, EventArgs.Empty);
    }

    /// <summary>Finds the same way in new figures; what is no longer there falls off the end.</summary>
    public void Follow(Assessment? assessment)
    {
        if (_stops.Count == 0)
        {
            return;
        }
        var old = _stops.ToList();
        _stops.Clear();
        if (assessment is null || Root(old[0], assessment) is not { } at)
        {
            return;
        }
        _stops.Add(old[0] with { Figure = at });
        foreach (var stop in old.Skip(1))
        {
            var steps = Working.Steps(at);
            var next = steps.FirstOrDefault(s => s.Id == stop.Figure.Id && s.Label == stop.Figure.Label)
                ?? (stop.Index >= 0 && stop.Index < steps.Count && steps[stop.Index].Dimension == stop.Figure.Dimension ? steps[stop.Index] : null);
            if (next is null)
            {
                return;
            }
            _stops.Add(stop with { Figure = next });
            at = next;
        }
    }

    private static Figure? Root(Stop stop, Assessment assessment) =>
        stop.Find is { } find ? find(assessment)
        : stop.Figure.Id is { } id ? assessment.Figures.Find(id)
        : Search(assessment, stop.Figure);

    private static Figure? Search(Assessment assessment, Figure like)
    {
        var seen = new HashSet<Figure>(ReferenceEqualityComparer.Instance);
        var waiting = new Queue<Figure>(assessment.Figures.All);
        while (waiting.TryDequeue(out var figure))
        {
            if (!seen.Add(figure))
            {
                continue;
            }
            if (figure.Label == like.Label && figure.Dimension == like.Dimension && figure.Id is null)
            {
                return figure;
            }
            foreach (var parent in figure.Parents)
            {
                waiting.Enqueue(parent);
            }
        }
        return null;
    }

    private sealed record Stop(Figure Figure, int Index, Func<Assessment, Figure?>? Find);
}
