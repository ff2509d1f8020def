namespace Runnel.Engine.Flow;

/// <summary>A point of a network of pipes.</summary>
/// <param name="Id">Its name, one of a kind.</param>
public abstract record NetworkNode(string Id);

/// <summary>A water surface whose height is known: a vessel.</summary>
/// <param name="Id">Its name.</param>
/// <param name="Head">Height of the surface, m, above any level that all nodes share.</param>
public sealed record Surface(string Id, double Head) : NetworkNode(Id);

/// <summary>The end of a pipe in free air: it gives water out and takes none in.</summary>
/// <param name="Id">Its name.</param>
/// <param name="Height">Height of the mouth, m.</param>
public sealed record FreeOutlet(string Id, double Height) : NetworkNode(Id);

/// <summary>A point where pipes meet.</summary>
/// <param name="Id">Its name.</param>
/// <param name="Demand">Water taken out here, m³/s; negative when fed in.</param>
public sealed record Junction(string Id, double Demand = 0) : NetworkNode(Id);

/// <summary>Something that water passes through between two nodes.</summary>
/// <param name="Id">Its name, one of a kind.</param>
/// <param name="From">Node at its beginning.</param>
/// <param name="To">Node at its end.</param>
public abstract record NetworkLink(string Id, string From, string To)
{
    /// <summary>True if it lets nothing back: a check valve sits in it.</summary>
    public bool OneWay { get; init; }

    /// <summary>Head lost from its beginning to its end at a flow, m, and how that rises with flow, m per m³/s.</summary>
    internal abstract (double Loss, double Slope) At(double flow, double viscosity);

    /// <summary>A flow to begin with, m³/s.</summary>
    internal abstract double Guess { get; }
}

/// <summary>A pipe with its fittings.</summary>
public sealed record PipeLink(string Id, string From, string To, FullPipe Pipe) : NetworkLink(Id, From, To)
{
    internal override double Guess => 0.3 * PipeVelocity.Area(Pipe.Diameter);

    internal override (double Loss, double Slope) At(double flow, double viscosity)
    {
        var area = PipeVelocity.Area(Pipe.Diameter);
        var perVelocityHead = Pipe.Length / (Pipe.Diameter * 2 * WaterProperties.Gravity * area * area);
        var fitting = Pipe.Loss / (2 * WaterProperties.Gravity * area * area);
        var size = Math.Abs(flow);
        var reynolds = size / area * Pipe.Diameter / viscosity;
        if (reynolds <= FrictionFactor.MaxLaminar)
        {
            var laminar = 64 * viscosity * area / Pipe.Diameter * perVelocityHead;
            return (flow * (laminar + fitting * size), laminar + 2 * fitting * size);
        }
        var (f, slope) = FrictionFactor.WithSlope(reynolds, Pipe.Roughness / Pipe.Diameter);
        return (flow * size * (f * perVelocityHead + fitting), size * (perVelocityHead * (2 * f + slope * reynolds) + 2 * fitting));
    }
}

/// <summary>A pipe by the rule of Hazen and Williams: for comparing with published networks, not for a home's small pipes.</summary>
public sealed record HazenWilliamsLink(string Id, string From, string To, double Diameter, double Length, double C) : NetworkLink(Id, From, To)
{
    internal override double Guess => 0.3 * PipeVelocity.Area(Diameter);

    internal override (double Loss, double Slope) At(double flow, double viscosity)
    {
        // Straight through nought, where the power law has no slope.
        const double small = 1e-8;
        var size = Math.Abs(flow);
        var loss = HeadLoss.HazenWilliams(Math.Max(size, small), Diameter, Length, C);
        return size < small ? (loss * flow / small, loss / small) : (Math.Sign(flow) * loss, 1.852 * loss / size);
    }
}

/// <summary>A valve or another fitting without length.</summary>
public sealed record FittingLink(string Id, string From, string To, double Diameter, double Loss) : NetworkLink(Id, From, To)
{
    internal override double Guess => 0.3 * PipeVelocity.Area(Diameter);

    internal override (double Loss, double Slope) At(double flow, double viscosity)
    {
        var area = PipeVelocity.Area(Diameter);
        var coefficient = Loss / (2 * WaterProperties.Gravity * area * area);
        return (coefficient * flow * Math.Abs(flow), 2 * coefficient * Math.Abs(flow));
    }
}

/// <summary>A running pump, which lets nothing back. (Stopped, many small pumps let everything back: leave it out and put its pipe in.)</summary>
public sealed record PumpLink : NetworkLink
{
    /// <summary>A pump between two nodes.</summary>
    public PumpLink(string id, string from, string to, PumpCurve curve)
        : base(id, from, to)
    {
        Curve = curve;
        OneWay = true;
    }

    /// <summary>Its curve.</summary>
    public PumpCurve Curve { get; }

    internal override double Guess => Curve.FreeFlow / 2;

    internal override (double Loss, double Slope) At(double flow, double viscosity) => (-Curve.HeadAt(flow), -Curve.SlopeAt(flow));
}
