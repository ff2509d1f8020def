namespace Runnel.Engine.Light;

/// <summary>How a lamp spreads its photons: a model of the lamp, without its strength.</summary>
public abstract record Emitter
{
    /// <summary>Share of the lamp's photons that goes below its own level.</summary>
    public abstract double Downward { get; }

    /// <summary>Greatest dimension of the part that shines, m; 0 for a point.</summary>
    public virtual double Size => 0;

    /// <summary>Share of the lamp's photons that falls on each square metre at a place, /m².</summary>
    /// <param name="along">Distance from the foot of the lamp along its length, m.</param>
    /// <param name="across">Distance from the foot of the lamp across its length, m.</param>
    /// <param name="height">Height of the lamp above the place, m, above 0.</param>
    internal abstract double Density(double along, double across, double height);

    private protected static double Sized(double size, string name) => Range.Within(size, DiffuseDisc.MinSize, DiffuseDisc.MaxSize, name);
}

/// <summary>A small lamp that faces down: a bulb in a reflector, a diode, a panel far away. I = I₀ cos^m θ.</summary>
/// <param name="Beam">Angle between the directions of half its greatest intensity, °, from 5 to 170; a matt lamp has 120.</param>
public sealed record SpotEmitter(double Beam = PointSource.CosineBeam) : Emitter
{
    private readonly double exponent = Math.Abs(Beam - PointSource.CosineBeam) < 1e-9 ? 1 : PointSource.BeamExponent(Beam);

    public override double Downward => 1;

    internal override double Density(double along, double across, double height)
    {
        var square = along * along + across * across + height * height;
        var cosines = height * height / square;
        var falling = exponent == 1 ? cosines : Math.Pow(cosines, (exponent + 1) / 2);
        return (exponent + 1) / (2 * Math.PI) * falling / square;
    }
}

/// <summary>A bare bulb that shines alike in all directions: half its photons go up.</summary>
public sealed record BulbEmitter : Emitter
{
    public override double Downward => 0.5;

    internal override double Density(double along, double across, double height)
    {
        var square = along * along + across * across + height * height;
        return PointSource.IsotropicIntensity * height / (square * Math.Sqrt(square));
    }
}

/// <summary>A round matt panel that faces down.</summary>
/// <param name="Radius">Its radius, m, from 0.001 to 100.</param>
public sealed record DiscEmitter(double Radius) : Emitter
{
    private readonly double radius = Sized(Radius, nameof(Radius));

    public override double Downward => 1;

    public override double Size => 2 * radius;

    internal override double Density(double along, double across, double height) =>
        DiffuseDisc.Factor(radius, height, Math.Sqrt(along * along + across * across)) / (Math.PI * radius * radius);
}

/// <summary>A narrow matt strip that faces down: a row of diodes, a tube in its reflector.</summary>
/// <param name="Length">Its length, m, from 0.001 to 100.</param>
public sealed record StripEmitter(double Length) : Emitter
{
    private readonly double length = Sized(Length, nameof(Length));

    public override double Downward => 1;

    public override double Size => length;

    internal override double Density(double along, double across, double height) =>
        height * height * DiffuseLine.Integral(length, height, along, across) / (Math.PI * length);
}

/// <summary>A bare matt tube: half its photons go up.</summary>
/// <param name="Length">Its length, m, from 0.001 to 100.</param>
public sealed record TubeEmitter(double Length) : Emitter
{
    private readonly double length = Sized(Length, nameof(Length));

    public override double Downward => 0.5;

    public override double Size => length;

    internal override double Density(double along, double across, double height) =>
        Math.Sqrt(height * height + across * across) * height * DiffuseLine.Integral(length, height, along, across)
            * PointSource.TubeIntensity / length;
}

/// <summary>A rectangular matt panel that faces down.</summary>
/// <param name="Length">Its length, m, from 0.001 to 100.</param>
/// <param name="Width">Its width, m, from 0.001 to 100.</param>
public sealed record PanelEmitter(double Length, double Width) : Emitter
{
    private readonly double length = Sized(Length, nameof(Length));
    private readonly double width = Sized(Width, nameof(Width));

    public override double Downward => 1;

    public override double Size => Math.Sqrt(length * length + width * width);

    internal override double Density(double along, double across, double height) =>
        DiffuseRectangle.Factor(along - length / 2, along + length / 2, across - width / 2, across + width / 2, height) / (length * width);
}

/// <summary>A lamp by its measured intensities, taken for a point; 0° around lies along its length.</summary>
/// <param name="Table">The table, of a lamp that gives some light.</param>
/// <param name="Across">Greatest dimension of the part that shines, m, if known: nearer than five times that, the map is a guess.</param>
public sealed record TableEmitter(IntensityTable Table, double Across = 0) : Emitter
{
    private const double Degrees = 180 / Math.PI;

    private readonly double flux = Table is { InterpolatedFlux: > 0 }
        ? Table.InterpolatedFlux
        : throw new ArgumentException("a lamp without light has no map", nameof(Table));

    public override double Downward => Table.Downward;

    public override double Size => Across;

    internal override double Density(double along, double across, double height)
    {
        var aside = along * along + across * across;
        var square = aside + height * height;
        var down = Math.Atan2(Math.Sqrt(aside), height) * Degrees;
        var around = 0.0;
        if (Table.Horizontal.Count > 1)
        {
            around = Math.Atan2(across, along) * Degrees;
            around = Math.Min(360, around < 0 ? around + 360 : around);
        }
        return Table.At(down, around) * height / (square * Math.Sqrt(square) * flux);
    }
}
