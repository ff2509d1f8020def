namespace Runnel.Engine.Flow;

/// <summary>Head that water loses on its way through pipe and fittings.</summary>
public static class HeadLoss
{
    internal const double MinC = 20;
    internal const double MaxC = 200;
    internal const double MaxFriction = 64 / FrictionFactor.MinReynolds;

    /// <summary>Head lost along a pipe whose friction factor is known.</summary>
    /// <param name="friction">Darcy friction factor, from 0 to 6.4e7.</param>
    /// <param name="length">Length, m, from 0 to 20 000.</param>
    /// <param name="diameter">Inside diameter, m, from 0.001 to 2.</param>
    /// <param name="flow">Flow, m³/s, from −2 to 2.</param>
    /// <returns>Head, m, with the sign of the flow.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>h = f (L/D) V²/2g. Source: Darcy and Weisbach.</remarks>
    public static double DarcyWeisbach(double friction, double length, double diameter, double flow)
    {
        var velocity = PipeVelocity.Mean(flow, diameter);
        return Range.Within(friction, 0, MaxFriction) * Limits.Length(length) / diameter * velocity * Math.Abs(velocity)
            / (2 * WaterProperties.Gravity);
    }

    /// <summary>Head lost along a full pipe at any Reynolds number.</summary>
    /// <param name="flow">Flow, m³/s, from −2 to 2.</param>
    /// <param name="diameter">Inside diameter, m, from 0.001 to 2.</param>
    /// <param name="length">Length, m, from 0 to 20 000.</param>
    /// <param name="roughness">Absolute roughness, m, from 0 to 0.01 and at most a tenth of the diameter.</param>
    /// <param name="viscosity">Kinematic viscosity, m²/s, from 1e-8 to 1e-3.</param>
    /// <returns>Head, m, with the sign of the flow.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>Darcy and Weisbach with the friction factor of <see cref="FrictionFactor.AnyRegime"/>. Not for: a pipe that is not full,
    /// corrugated hose.</remarks>
    public static double Pipe(double flow, double diameter, double length, double roughness, double viscosity)
    {
        Limits.Flow(flow);
        Limits.Diameter(diameter);
        Limits.Length(length);
        Range.Within(roughness, 0, Limits.MaxRoughness);
        var reynolds = PipeVelocity.Reynolds(flow, diameter, viscosity);
        var relative = Range.Within(roughness / diameter, 0, Limits.MaxRelativeRoughness, nameof(roughness));
        if (reynolds < FrictionFactor.MinReynolds)
        {
            return 0;
        }
        return DarcyWeisbach(FrictionFactor.AnyRegime(reynolds, relative), length, diameter, flow);
    }

    /// <summary>Head lost along a full pipe by the older rule of waterworks.</summary>
    /// <param name="flow">Flow, m³/s, from −2 to 2.</param>
    /// <param name="diameter">Inside diameter, m, from 0.001 to 2.</param>
    /// <param name="length">Length, m, from 0 to 20 000.</param>
    /// <param name="c">Coefficient of the pipe, from 20 to 200; plastic 140 to 150.</param>
    /// <returns>Head, m, with the sign of the flow.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>h = 10.67 L Q^1.852/(C^1.852 D^4.8704). Forms in print differ by 1 %. Source: Hazen and Williams, SI form of public texts;
    /// EPANET 2.2 manual, table 3.1. Not for: water far from 15 °C, velocities above 3 m/s, small pipes at low flow, where it runs low.</remarks>
    public static double HazenWilliams(double flow, double diameter, double length, double c) =>
        Math.Sign(Limits.Flow(flow)) * 10.67 * Limits.Length(length) * Math.Pow(Math.Abs(flow) / Range.Within(c, MinC, MaxC), 1.852)
        / Math.Pow(Limits.Diameter(diameter), 4.8704);

    /// <summary>Head lost in a fitting.</summary>
    /// <param name="coefficient">Loss coefficient K, from 0 to 10 000; add up those of fittings in one pipe.</param>
    /// <param name="flow">Flow, m³/s, from −2 to 2.</param>
    /// <param name="diameter">Inside diameter to which K belongs, m, from 0.001 to 2.</param>
    /// <returns>Head, m, with the sign of the flow.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>h = K V²/2g.</remarks>
    public static double Fitting(double coefficient, double flow, double diameter)
    {
        var velocity = PipeVelocity.Mean(flow, diameter);
        return Range.Within(coefficient, 0, Limits.MaxLossCoefficient) * velocity * Math.Abs(velocity) / (2 * WaterProperties.Gravity);
    }
}
