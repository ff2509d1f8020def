namespace Runnel.Engine.Quantities;

/// <summary>A unit as it is written, with what turns it into SI (temperatures on a scale into °C).</summary>
/// <param name="Symbol">As printed: "L/h", "kWh", "°C", "EUR/month".</param>
/// <param name="Dimension">What it measures.</param>
/// <param name="Factor">SI value of one unit.</param>
/// <param name="Offset">SI value of zero units: only temperatures on a scale have one.</param>
public sealed record Unit(string Symbol, Dimension Dimension, double Factor, double Offset = 0)
{
    /// <summary>The value in SI (°C for temperatures on a scale) of a number in this unit.</summary>
    public double ToSi(double value) => value * Factor + Offset;

    /// <summary>The number in this unit of an SI value.</summary>
    public double FromSi(double si) => (si - Offset) / Factor;

    /// <summary>A count of things with a name: 18 lamps.</summary>
    public static Unit Count(string things) => new(things, Dimension.None, 1);

    /// <summary>An amount of money, in the currency of the plan.</summary>
    public static Unit Money(string currency) => new(currency, Units.MoneyDimension, 1);

    /// <summary>This unit for each of another: EUR per kWh.</summary>
    public Unit Per(Unit other) => new($"{Symbol}/{other.Symbol}", Dimension / other.Dimension, Factor / other.Factor);

    /// <inheritdoc />
    public override string ToString() => Symbol;
}
