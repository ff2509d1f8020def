namespace Runnel.Engine.Flow;

/// <summary>How fast water moves in a pipe that it fills.</summary>
public static class PipeVelocity
{
    /// <summary>Cross-section of a round pipe.</summary>
    /// <param name="diameter">Inside diameter, m, from 0.001 to 2.</param>
    /// <returns>Area, m².</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range, or not a number.</exception>
    public static double Area(double diameter) => Math.PI / 4 * Limits.Diameter(diameter) * diameter;

    /// <summary>Mean velocity in a full round pipe.</summary>
    /// <param name="flow">Flow, m³/s, from −2 to 2.</param>
    /// <param name="diameter">Inside diameter, m, from 0.001 to 2.</param>
    /// <returns>Velocity, m/s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>V = 4 Q/(π D²).</remarks>
    public static double Mean(double flow, double diameter) => Limits.Flow(flow) / Area(diameter);

    /// <summary>Reynolds number of a full round pipe: what inertia is to viscosity.</summary>
    /// <param name="flow">Flow, m³/s, from −2 to 2.</param>
    /// <param name="diameter">Inside diameter, m, from 0.001 to 2.</param>
    /// <param name="viscosity">Kinematic viscosity, m²/s, from 1e-8 to 1e-3.</param>
    /// <returns>Reynolds number, never negative.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or not a number.</exception>
    /// <remarks>Re = V D/ν. Below 2000 water moves in layers, above 4000 in eddies.</remarks>
    public static double Reynolds(double flow, double diameter, double viscosity) =>
        Math.Abs(Mean(flow, diameter)) * diameter / Range.Within(viscosity, Limits.MinViscosity, Limits.MaxViscosity);
}
