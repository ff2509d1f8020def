namespace Runnel.Engine.Levels;

/// <summary>A loop as its levels need it: vessels, the drains between them and the pumped pipes. Vessels are named by their place in the list.</summary>
public sealed record WaterLoop
{
    public required IReadOnlyList<Basin> Basins { get; init; }

    /// <summary>Water in each vessel while the loop runs, as its grower fills it, m³.</summary>
    public required IReadOnlyList<double> Filled { get; init; }

    public IReadOnlyList<Outlet> Outlets { get; init; } = [];

    public IReadOnlyList<Lift> Lifts { get; init; } = [];
}

/// <summary>A way out of a vessel by gravity: a drain, an overflow, a siphon.</summary>
/// <param name="From">Vessel it leaves.</param>
/// <param name="To">Vessels it reaches, in equal shares.</param>
/// <param name="Mouth">Depth of water in its vessel above which water leaves, m.</param>
/// <param name="Head">How much higher than the mouth water stands while the pump sends water through, m.</param>
/// <param name="Kind">What happens below the mouth.</param>
/// <param name="Bore">Width of the pipe, m, or 0 when unknown.</param>
/// <param name="Pipe">Water in the pipe while it runs full, m³.</param>
public sealed record Outlet(int From, IReadOnlyList<int> To, double Mouth, double Head = 0, OutletKind Kind = OutletKind.Overflow, double Bore = 0, double Pipe = 0);

public enum OutletKind
{
    /// <summary>Water below the mouth stays.</summary>
    Overflow,

    /// <summary>Once full to the mouth, the vessel empties to its bottom while the pump runs on, and when it stops.</summary>
    Siphon,

    /// <summary>Holes at the foot of the standpipe empty the vessel when the pump stops.</summary>
    Holes,
}

/// <summary>A pumped pipe.</summary>
/// <param name="Pump">Name of the pump.</param>
/// <param name="From">Vessel the pump stands in.</param>
/// <param name="To">Vessels it feeds, in equal shares.</param>
/// <param name="Lowest">Depth of water in its vessel at which the pump sucks air or is stopped, m.</param>
/// <param name="Pipe">Water in the pipe, m³.</param>
/// <param name="EndsUnderWater">True if it siphons back when the pump stops.</param>
/// <param name="CheckValve">True if nothing can run back.</param>
public sealed record Lift(string Pump, int From, IReadOnlyList<int> To, double Lowest, double Pipe = 0, bool EndsUnderWater = false, bool CheckValve = false);
