namespace Runnel.Engine.Water;

/// <summary>The same ammonia counted by the whole molecule or by the nitrogen in it.</summary>
public static class AmmoniaBasis
{
    private const double NitrogenInAmmonia = AtomicMass.N / (AtomicMass.N + 3 * AtomicMass.H);

    /// <summary>Nitrogen in ammonia.</summary>
    /// <param name="ammonia">Ammonia, g NH3/d, from 0 to 1 000 000.</param>
    /// <returns>The nitrogen in it, g N/d.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Below 0, above 1 000 000, or not a number.</exception>
    /// <remarks>N = NH3 x 14.007 / 17.031. By definition, from standard atomic weights (IUPAC).</remarks>
    public static double ToNitrogen(double ammonia) => Range.Within(ammonia, 0, 1e6) * NitrogenInAmmonia;

    /// <summary>Ammonia that holds some nitrogen.</summary>
    /// <param name="nitrogen">Ammonia nitrogen, g N/d, from 0 to 1 000 000.</param>
    /// <returns>The ammonia, g NH3/d.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Below 0, above 1 000 000, or not a number.</exception>
    /// <remarks>NH3 = N x 17.031 / 14.007. By definition, from standard atomic weights (IUPAC).</remarks>
    public static double FromNitrogen(double nitrogen) => Range.Within(nitrogen, 0, 1e6) / NitrogenInAmmonia;
}
