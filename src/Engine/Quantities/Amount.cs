namespace Runnel.Engine.Quantities;

/// <summary>An SI value (°C for temperatures on a scale) with the metric unit it is best printed in.</summary>
public readonly record struct Amount(double Si, Unit Unit)
{
    /// <summary>A number in a unit.</summary>
    public static Amount Of(double value, Unit unit)
    {
        ArgumentNullException.ThrowIfNull(unit);
        return new(unit.ToSi(value), unit);
    }
}
