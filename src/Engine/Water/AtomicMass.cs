namespace Runnel.Engine.Water;

/// <summary>Standard atomic weights, g/mol (IUPAC, abridged to five figures).</summary>
internal static class AtomicMass
{
    public const double H = 1.008;
    public const double C = 12.011;
    public const double N = 14.007;
    public const double O = 15.999;
    public const double Na = 22.990;
    public const double K = 39.098;
    public const double Ca = 40.078;
}
