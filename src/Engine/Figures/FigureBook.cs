using Runnel.Engine.Quantities;

namespace Runnel.Engine.Figures;

/// <summary>The named figures of one assessment, in the order in which they were made.</summary>
public sealed class FigureBook
{
    private readonly Dictionary<string, Figure> _byId = new(StringComparer.Ordinal);
    private readonly List<Figure> _inOrder = [];

    /// <summary>All named figures, in order.</summary>
    public IReadOnlyList<Figure> All => _inOrder;

    /// <summary>The figure of that name.</summary>
    /// <exception cref="KeyNotFoundException">None has that name.</exception>
    public Figure this[string id] => _byId[id];

    /// <summary>The figure of that name, or null.</summary>
    public Figure? Find(string id) => _byId.GetValueOrDefault(id);

    /// <summary>Names a figure and keeps it.</summary>
    /// <exception cref="ArgumentException">The name is taken.</exception>
    /// <exception cref="UnitMismatchException">The unit does not measure what the figure is.</exception>
    public Figure Name(Figure figure, string id, string label, Unit unit)
    {
        ArgumentNullException.ThrowIfNull(figure);
        var named = figure.As(id, label, unit);
        if (!_byId.TryAdd(id, named))
        {
            throw new ArgumentException($"two figures are named {id}", nameof(id));
        }
        _inOrder.Add(named);
        return named;
    }
}
