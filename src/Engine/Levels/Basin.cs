namespace Runnel.Engine.Levels;

/// <summary>A vessel as a relation between depth and volume that never falls. SI: m, m², m³.</summary>
/// <remarks>
/// Straight walls, or a lying cylinder with flat ends; below the top of its media only the voids hold water. Several alike count as one
/// vessel of their volumes together, all at one level. A depth above the rim holds no more than the rim.
/// </remarks>
public sealed record Basin
{
    private const int Steps = 60;

    private Basin(string name, double bottom, double height, double area, double diameter, double length) =>
        (Name, Bottom, Height, Area, Diameter, Length) = (name, bottom, height, area, diameter, length);

    /// <summary>The grower's name.</summary>
    public string Name { get; }

    /// <summary>Height of its bottom above the floor, m.</summary>
    public double Bottom { get; }

    /// <summary>Height of its rim above its bottom, m.</summary>
    public double Height { get; }

    /// <summary>Area of straight walls, m²; 0 for a lying cylinder.</summary>
    public double Area { get; }

    /// <summary>Diameter of a lying cylinder, m; 0 for straight walls.</summary>
    public double Diameter { get; }

    /// <summary>Length of a lying cylinder, m.</summary>
    public double Length { get; }

    /// <summary>How many alike.</summary>
    public double Count { get; init; } = 1;

    /// <summary>Depth of media, m.</summary>
    public double Media { get; init; }

    /// <summary>Share of the media that is water when flooded, from above 0 to 1.</summary>
    public double Voids { get; init; } = 1;

    /// <summary>Height of its rim above the floor, m.</summary>
    public double Rim => Bottom + Height;

    /// <summary>What all alike hold to the brim, m³.</summary>
    public double Capacity => VolumeAt(Height);

    /// <summary>A vessel with straight walls: a box, a round tank, an upright drum, a tote.</summary>
    public static Basin Straight(string name, double area, double height, double bottom = 0) => new(name, bottom, height, area, 0, 0);

    /// <summary>A lying cylinder: a half drum (height is half the diameter) or a channel of pipe (height is the diameter).</summary>
    public static Basin Lying(string name, double diameter, double length, double height, double bottom = 0) => new(name, bottom, height, 0, diameter, length);

    /// <summary>Water in all alike at a depth of water, m³.</summary>
    public double VolumeAt(double depth)
    {
        var d = Math.Clamp(depth, 0, Height);
        var inMedia = Math.Min(d, Media);
        var gross = Gross(d);
        return Count * (inMedia > 0 ? gross - (1 - Voids) * Gross(inMedia) : gross);
    }

    /// <summary>Depth at which all alike hold a volume, m; the height of the rim for more than they hold.</summary>
    public double DepthAt(double volume)
    {
        if (volume <= 0)
        {
            return 0;
        }
        var one = volume / Count;
        if (Media <= 0)
        {
            return Depth(one);
        }
        var solid = Gross(Math.Min(Media, Height));
        return one <= Voids * solid ? Depth(one / Voids) : Depth(one + (1 - Voids) * solid);
    }

    private double Gross(double depth)
    {
        if (Diameter <= 0)
        {
            return Area * depth;
        }
        var (r, h) = (Diameter / 2, Math.Min(depth, Diameter));
        var half = Math.Sqrt(Math.Max(0, h * (2 * r - h)));
        return Length * Math.Max(0, r * r * Math.Atan2(half, r - h) - (r - h) * half);
    }

    private double Depth(double gross)
    {
        if (Diameter <= 0)
        {
            return Math.Min(gross / Area, Height);
        }
        if (gross >= Gross(Height))
        {
            return Height;
        }
        // Newton's steps, kept between bounds that close in: the surface is flat at bottom and crown.
        var (low, high, at) = (0.0, Height, Height / 2);
        for (var i = 0; i < Steps; i++)
        {
            var off = Gross(at) - gross;
            (low, high) = off > 0 ? (low, at) : (at, high);
            var surface = 2 * Length * Math.Sqrt(Math.Max(0, at * (Diameter - at)));
            var next = at - off / surface;
            next = next > low && next < high ? next : (low + high) / 2;
            if (Math.Abs(next - at) <= 1e-13 * Diameter)
            {
                return next;
            }
            at = next;
        }
        return at;
    }
}
